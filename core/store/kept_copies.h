// The copies of a workbook that the program keeps by itself, before it brings a file to a newer schema.
// Not for copies that a person makes and names: those are never touched.
#pragma once

#include <cstdint>
#include <filesystem>

#include "core/store/database.h"

namespace ww::store {

/// So many of them stay beside a workbook.
inline constexpr std::size_t kMostKeptCopies = 10;

/// "job.wwj" of schema 1 is kept as "job.schema-1.wwj".
std::filesystem::path keptCopyOf(const std::filesystem::path& file, std::int64_t version);

/// Removes the kept copies beside the file of the database that are older than the newest kMostKeptCopies.
/// Only a file that keptCopyOf() names so and that holds the same workbook counts as one. What cannot be read
/// or removed stays.
void removeOldKeptCopies(const Database& database);

}  // namespace ww::store
