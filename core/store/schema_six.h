// What schema 6 adds: the design and the limits by which a closed round is judged, where they are others
// today. Never changed once a file was written with it; a later schema has a step of its own (migration.h).
#pragma once

#include <string_view>

namespace ww::store {

/// For MigrationStep{6, ...}. A round without a value is judged by the job as it stands, as before.
inline constexpr std::string_view kSchemaSix = R"sql(
CREATE TABLE earlier_designs(branch BLOB NOT NULL REFERENCES branches DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL, round BLOB NOT NULL REFERENCES rounds DEFERRABLE INITIALLY DEFERRED,
  is_in_loop INTEGER NOT NULL, design_flow TEXT, design_flow_unit TEXT,
  PRIMARY KEY(branch, position)) STRICT, WITHOUT ROWID;
ALTER TABLE rounds ADD COLUMN tolerance_low TEXT;
ALTER TABLE rounds ADD COLUMN tolerance_low_unit TEXT;
ALTER TABLE rounds ADD COLUMN tolerance_high TEXT;
ALTER TABLE rounds ADD COLUMN tolerance_high_unit TEXT;
ALTER TABLE rounds ADD COLUMN matching_band TEXT;
ALTER TABLE rounds ADD COLUMN matching_band_unit TEXT;
)sql";

}  // namespace ww::store
