// The tables of a job by groups, as CSV, with the files that belong to them.
#pragma once

#include <utility>
#include <vector>

#include "core/exchange/write_cells.h"

namespace ww::exchange {

using NamedTable = std::pair<const char*, CsvTable>;

/// Every table, also those without rows.
std::vector<NamedTable> reviewTables(const project::Project& project, FilesBeside& files);

/// valves.csv, branches.csv, pumps.csv, pump_curve.csv and instruments.csv.
std::vector<NamedTable> systemTables(const project::Project& project);

/// The cells of the columns that an older table gained.
template <class Record>
void addGained(CsvTable& table, const project::Project& project, const Record& record) {
    FilesBeside none;
    WriteCells io(table, project, none);
    columns(io, record);
}

}  // namespace ww::exchange
