// What schema 2 adds to schema 1: review, readiness, deficiencies, pump tests, and what merging leaves open.
// Never changed once a file was written with it; a later schema has a step of its own (migration.h).
#pragma once

#include <string_view>

namespace ww::store {

/// For MigrationStep{2, ...}. A value that schema 1 has no column for takes the default, which is what it
/// meant.
inline constexpr std::string_view kSchemaTwo = R"sql(
ALTER TABLE job ADD COLUMN practice TEXT NOT NULL DEFAULT '';
ALTER TABLE job ADD COLUMN altitude TEXT;
ALTER TABLE job ADD COLUMN altitude_unit TEXT;
ALTER TABLE job ADD COLUMN fill_pressure TEXT;
ALTER TABLE job ADD COLUMN fill_pressure_unit TEXT;
ALTER TABLE job ADD COLUMN reading_age_limit TEXT;
ALTER TABLE job ADD COLUMN code_form TEXT NOT NULL DEFAULT '';
ALTER TABLE job ADD COLUMN code_edition TEXT NOT NULL DEFAULT '';
ALTER TABLE job ADD COLUMN code_clause TEXT NOT NULL DEFAULT '';
ALTER TABLE job ADD COLUMN code_exception TEXT NOT NULL DEFAULT '';
ALTER TABLE instruments ADD COLUMN resolution TEXT;
ALTER TABLE instruments ADD COLUMN resolution_unit TEXT;
ALTER TABLE instruments ADD COLUMN certificate TEXT NOT NULL DEFAULT '';
ALTER TABLE instruments ADD COLUMN zero_start TEXT;
ALTER TABLE instruments ADD COLUMN zero_start_unit TEXT;
ALTER TABLE instruments ADD COLUMN zero_end TEXT;
ALTER TABLE instruments ADD COLUMN zero_end_unit TEXT;
ALTER TABLE instruments ADD COLUMN overdue_reason TEXT NOT NULL DEFAULT '';
ALTER TABLE people ADD COLUMN role TEXT NOT NULL DEFAULT '';
ALTER TABLE people ADD COLUMN certificate TEXT NOT NULL DEFAULT '';
ALTER TABLE people ADD COLUMN firm TEXT NOT NULL DEFAULT '';
ALTER TABLE branches ADD COLUMN disturbance TEXT NOT NULL DEFAULT '';
ALTER TABLE branches ADD COLUMN elevation TEXT;
ALTER TABLE branches ADD COLUMN elevation_unit TEXT;
ALTER TABLE branches ADD COLUMN policy TEXT NOT NULL DEFAULT '';
ALTER TABLE branches ADD COLUMN policy_reason TEXT NOT NULL DEFAULT '';
ALTER TABLE branches ADD COLUMN notes TEXT NOT NULL DEFAULT '';
ALTER TABLE pumps ADD COLUMN arrangement TEXT NOT NULL DEFAULT 'parallel';
ALTER TABLE pumps ADD COLUMN suction_diameter TEXT;
ALTER TABLE pumps ADD COLUMN suction_diameter_unit TEXT;
ALTER TABLE pumps ADD COLUMN discharge_diameter TEXT;
ALTER TABLE pumps ADD COLUMN discharge_diameter_unit TEXT;
ALTER TABLE pumps ADD COLUMN suction_gauge_height TEXT;
ALTER TABLE pumps ADD COLUMN suction_gauge_height_unit TEXT;
ALTER TABLE pumps ADD COLUMN discharge_gauge_height TEXT;
ALTER TABLE pumps ADD COLUMN discharge_gauge_height_unit TEXT;
ALTER TABLE pumps ADD COLUMN power_factor TEXT;
ALTER TABLE pumps ADD COLUMN power_factor_unit TEXT;
ALTER TABLE pumps ADD COLUMN no_load_amps TEXT;
ALTER TABLE pumps ADD COLUMN no_load_amps_unit TEXT;
ALTER TABLE pumps ADD COLUMN plate_speed TEXT;
ALTER TABLE pumps ADD COLUMN plate_speed_unit TEXT;
ALTER TABLE pumps ADD COLUMN synchronous_speed TEXT;
ALTER TABLE pumps ADD COLUMN synchronous_speed_unit TEXT;
ALTER TABLE pumps ADD COLUMN minimum_speed TEXT;
ALTER TABLE pumps ADD COLUMN minimum_speed_unit TEXT;
ALTER TABLE pumps ADD COLUMN has_drive INTEGER NOT NULL DEFAULT 0;
ALTER TABLE pumps ADD COLUMN is_positive_displacement INTEGER NOT NULL DEFAULT 0;
ALTER TABLE pumps ADD COLUMN guards_source INTEGER NOT NULL DEFAULT 0;
ALTER TABLE rounds ADD COLUMN sent INTEGER;
ALTER TABLE rounds ADD COLUMN sent_zone INTEGER;
ALTER TABLE rounds ADD COLUMN decided INTEGER;
ALTER TABLE rounds ADD COLUMN decided_zone INTEGER;
ALTER TABLE rounds ADD COLUMN sent_by TEXT NOT NULL DEFAULT '';
ALTER TABLE rounds ADD COLUMN decided_by TEXT NOT NULL DEFAULT '';
ALTER TABLE rounds ADD COLUMN reason TEXT NOT NULL DEFAULT '';
ALTER TABLE rounds ADD COLUMN readiness TEXT NOT NULL DEFAULT '';
ALTER TABLE rounds ADD COLUMN sample_seed TEXT;
ALTER TABLE readings ADD COLUMN purpose TEXT NOT NULL DEFAULT 'walk';
ALTER TABLE pump_readings ADD COLUMN point TEXT NOT NULL DEFAULT 'running';
ALTER TABLE pump_readings ADD COLUMN volts_second TEXT;
ALTER TABLE pump_readings ADD COLUMN volts_second_unit TEXT;
ALTER TABLE pump_readings ADD COLUMN volts_third TEXT;
ALTER TABLE pump_readings ADD COLUMN volts_third_unit TEXT;
ALTER TABLE pump_readings ADD COLUMN amps_second TEXT;
ALTER TABLE pump_readings ADD COLUMN amps_second_unit TEXT;
ALTER TABLE pump_readings ADD COLUMN amps_third TEXT;
ALTER TABLE pump_readings ADD COLUMN amps_third_unit TEXT;
ALTER TABLE pump_readings ADD COLUMN power_factor TEXT;
ALTER TABLE pump_readings ADD COLUMN power_factor_unit TEXT;
ALTER TABLE pump_readings ADD COLUMN is_doubtful INTEGER NOT NULL DEFAULT 0;
ALTER TABLE pump_readings ADD COLUMN note TEXT NOT NULL DEFAULT '';
ALTER TABLE pump_readings ADD COLUMN reason TEXT NOT NULL DEFAULT '';
CREATE TABLE job_load_rows(job BLOB NOT NULL REFERENCES job DEFERRABLE INITIALLY DEFERRED, position INTEGER
  NOT NULL, hours TEXT NOT NULL, flow_fraction TEXT NOT NULL, flow_fraction_unit TEXT NOT NULL, PRIMARY
  KEY(job, position)) STRICT, WITHOUT ROWID;
CREATE TABLE round_sample(round BLOB NOT NULL REFERENCES rounds DEFERRABLE INITIALLY DEFERRED, position
  INTEGER NOT NULL, branch BLOB NOT NULL REFERENCES branches DEFERRABLE INITIALLY DEFERRED, PRIMARY
  KEY(round, position)) STRICT, WITHOUT ROWID;
CREATE TABLE set_points(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16), pump BLOB REFERENCES pumps
  DEFERRABLE INITIALLY DEFERRED, sensor TEXT NOT NULL, location TEXT NOT NULL, method TEXT NOT NULL, zero
  TEXT, zero_unit TEXT, dp TEXT, dp_unit TEXT, flow TEXT, flow_unit TEXT, speed TEXT, speed_unit TEXT,
  margin TEXT, margin_unit TEXT, low_limit TEXT, low_limit_unit TEXT, high_limit TEXT, high_limit_unit TEXT,
  reset TEXT NOT NULL, set_by TEXT NOT NULL, time INTEGER, time_zone INTEGER, note TEXT NOT NULL) STRICT;
CREATE TABLE readiness(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16), position INTEGER NOT NULL, text
  TEXT NOT NULL, is_mandatory INTEGER NOT NULL, state TEXT NOT NULL, owner TEXT NOT NULL, date INTEGER,
  date_zone INTEGER, evidence TEXT NOT NULL) STRICT;
CREATE TABLE deficiencies(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16), number INTEGER NOT NULL, branch
  BLOB REFERENCES branches DEFERRABLE INITIALLY DEFERRED, pump BLOB REFERENCES pumps DEFERRABLE INITIALLY
  DEFERRED, location TEXT NOT NULL, description TEXT NOT NULL, consequence TEXT NOT NULL, trade TEXT NOT
  NULL, remedy TEXT NOT NULL, reading BLOB REFERENCES readings DEFERRABLE INITIALLY DEFERRED, status TEXT
  NOT NULL, raised INTEGER, raised_zone INTEGER, raised_by TEXT NOT NULL, retested INTEGER, retested_zone
  INTEGER, retest_reading BLOB REFERENCES readings DEFERRABLE INITIALLY DEFERRED, retest_result TEXT NOT
  NULL) STRICT;
CREATE TABLE comments(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16), round BLOB REFERENCES rounds
  DEFERRABLE INITIALLY DEFERRED, branch BLOB REFERENCES branches DEFERRABLE INITIALLY DEFERRED, pump BLOB
  REFERENCES pumps DEFERRABLE INITIALLY DEFERRED, field TEXT NOT NULL, answers BLOB REFERENCES comments
  DEFERRABLE INITIALLY DEFERRED, text TEXT NOT NULL, person TEXT NOT NULL, time INTEGER, time_zone INTEGER,
  is_resolved INTEGER NOT NULL, resolved_by TEXT NOT NULL, resolved INTEGER, resolved_zone INTEGER) STRICT;
CREATE TABLE attachments(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16), branch BLOB REFERENCES branches
  DEFERRABLE INITIALLY DEFERRED, deficiency BLOB REFERENCES deficiencies DEFERRABLE INITIALLY DEFERRED, name
  TEXT NOT NULL, media_type TEXT NOT NULL, caption TEXT NOT NULL, person TEXT NOT NULL, time INTEGER,
  time_zone INTEGER, content BLOB NOT NULL) STRICT;
CREATE TABLE finding_reasons(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16), code TEXT NOT NULL, subject
  TEXT NOT NULL, reason TEXT NOT NULL, person TEXT NOT NULL, time INTEGER, time_zone INTEGER) STRICT;
CREATE TABLE signed_reports(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16), revision INTEGER NOT NULL,
  role TEXT NOT NULL, signer TEXT NOT NULL, certificate TEXT NOT NULL, is_self_made INTEGER NOT NULL, time
  INTEGER, time_zone INTEGER, file_name TEXT NOT NULL, file_digest TEXT NOT NULL, journal_sequence TEXT NOT
  NULL, journal_digest TEXT NOT NULL, is_withdrawn INTEGER NOT NULL, reason TEXT NOT NULL) STRICT;
CREATE TABLE merge_conflicts(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16), record_kind TEXT NOT NULL,
  record BLOB NOT NULL, field TEXT NOT NULL, place TEXT NOT NULL, ours TEXT NOT NULL, theirs TEXT NOT NULL,
  our_person TEXT NOT NULL, their_person TEXT NOT NULL, our_time INTEGER, our_time_zone INTEGER, their_time
  INTEGER, their_time_zone INTEGER, our_instrument TEXT NOT NULL, their_instrument TEXT NOT NULL, choice
  TEXT NOT NULL, decided_by TEXT NOT NULL, decided INTEGER, decided_zone INTEGER) STRICT;
)sql";

}  // namespace ww::store
