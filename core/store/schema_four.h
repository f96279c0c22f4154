// What schema 4 adds: how much more a valve's table errs towards shut.
// Never changed once a file was written with it; a later schema has a step of its own (migration.h).
#pragma once

#include <string_view>

namespace ww::store {

/// For MigrationStep{4, ...}. Without a value the table states nothing, as before.
inline constexpr std::string_view kSchemaFour = R"sql(
ALTER TABLE valves ADD COLUMN accuracy_shut TEXT;
ALTER TABLE valves ADD COLUMN accuracy_shut_unit TEXT;
)sql";

}  // namespace ww::store
