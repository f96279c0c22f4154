// What schema 5 adds: that a person set the clock of a machine right for the job.
// Never changed once a file was written with it; a later schema has a step of its own (migration.h).
#pragma once

#include <string_view>

namespace ww::store {

/// For MigrationStep{5, ...}.
inline constexpr std::string_view kSchemaFive = R"sql(
CREATE TABLE clock_offsets(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16), machine TEXT NOT NULL,
  own INTEGER, own_zone INTEGER, showed INTEGER, showed_zone INTEGER, stated INTEGER, stated_zone INTEGER,
  uncertain_since INTEGER, uncertain_since_zone INTEGER, person TEXT NOT NULL) STRICT;
)sql";

}  // namespace ww::store
