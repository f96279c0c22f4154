// The fields of a pump's plate and data, for a table.
#pragma once

#include <vector>

#include "ui/models/record_field.h"

namespace ww::ui {

std::vector<RecordField<project::Pump>> pumpFields();

}  // namespace ww::ui
