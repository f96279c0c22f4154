// What schema 3 adds: which actions merges took over from other copies, and both values of what they left to
// decide. Never changed once a file was written with it; a later schema has a step of its own (migration.h).
#pragma once

#include <string_view>

namespace ww::store {

/// For MigrationStep{3, ...}. `digest` and `sequence` are those of the record in the copy where the action
/// was first made; `withheld` holds all its changes where not all could be taken over. `ours` and `theirs`
/// are changesets that insert the rows of either side.
inline constexpr std::string_view kSchemaThree = R"sql(
CREATE TABLE merged_records(digest BLOB PRIMARY KEY NOT NULL CHECK(length(digest)=32), sequence INTEGER NOT NULL,
  machine TEXT NOT NULL, person TEXT NOT NULL, withheld BLOB) STRICT;
CREATE TABLE conflict_values(conflict BLOB PRIMARY KEY NOT NULL CHECK(length(conflict)=16), ours BLOB NOT NULL,
  theirs BLOB NOT NULL) STRICT;
)sql";

}  // namespace ww::store
