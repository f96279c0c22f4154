// What schema 7 adds: indices by which a row that is taken back is looked for where rows may refer to it.
// Without them each of 10,000 readings that are taken back at once walks all readings. Never changed once a
// file was written with it; a later schema has a step of its own (migration.h).
#pragma once

#include <string_view>

namespace ww::store {

/// For MigrationStep{7, ...}. Only tables of which thousands of rows come in one action, and refer to each
/// other, have one.
inline constexpr std::string_view kSchemaSeven = R"sql(
CREATE INDEX readings_by_superseded ON readings(supersedes) WHERE supersedes IS NOT NULL;
CREATE INDEX branches_by_parent ON branches(parent);
)sql";

}  // namespace ww::store
