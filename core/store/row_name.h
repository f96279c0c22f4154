// A row of a table by the name that people know it by. Not for records in memory (project::nameOf).
#pragma once

#include <string>

#include "core/store/database.h"
#include "core/store/schema.h"

namespace ww::store {

/// "branch B-05", "reading 7 of branch B-05 in round 2", "row 3 of valve X 25" for the row that `row` stands
/// on; its columns are all those of the table, in order. Where nothing better is found, the id in hexadecimal
/// digits.
std::string nameOfRow(const Database& database, const RecordedTable& table, const Statement& row);

}  // namespace ww::store
