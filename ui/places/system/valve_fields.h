// What is known of a valve model, as fields for typing. Not for its table of points (valve_page.h).
#pragma once

#include "ui/models/record_field.h"

namespace ww::ui {

/// Model, size, scale, coefficient, range of dp, accuracies.
std::vector<RecordField<project::ValveModel>> valveFields();

/// Points of a table from pasted text: two columns, setting and coefficient; a first row of words is passed
/// over. A fault names the line; the whole must be a table that can be used.
base::Result<std::vector<project::ValveTableRow>> pastedPoints(const QString& text,
                                                               const project::ValveModel& valve);

}  // namespace ww::ui
