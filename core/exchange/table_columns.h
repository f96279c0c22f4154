// The columns of the tables that can be added to a job: what a reader asks for and what a person's own
// columns are matched with.
#pragma once

#include <string_view>
#include <vector>

#include "core/exchange/table_reader.h"

namespace ww::exchange {

/// The columns of valves.csv, branches.csv, pumps.csv, pump_curve.csv, instruments.csv, readings.csv and
/// pump_readings.csv, by the name of the file; none for any other.
std::vector<ColumnSpec> columnsOfTable(std::string_view file);

}  // namespace ww::exchange
