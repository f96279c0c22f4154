// The columns of the tables that can be added to a job: what a reader asks for and what a person's own
// columns are matched with.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "core/exchange/table_reader.h"

namespace ww::exchange {

/// The columns of valves.csv, branches.csv, pumps.csv, pump_curve.csv, instruments.csv, readings.csv and
/// pump_readings.csv, by the name of the file; none for any other.
std::vector<ColumnSpec> columnsOfTable(std::string_view file);

/// The column of readings.csv that a walk sheet shows and no other table has.
inline constexpr std::string_view kWalkSheetColumn = "setting_now";
/// The columns that a person fills in on a walk sheet: a row of it in which all are empty is passed over.
std::span<const std::string_view> filledInColumns();

}  // namespace ww::exchange
