#include "core/store/schema.h"

#include <array>
#include <map>
#include <string>

#include "core/base/digest.h"
#include "core/store/migration.h"
#include "core/store/store_messages.h"

namespace ww::store {

namespace {

using project::RecordKind;

constexpr std::array kTables{
    RecordedTable{"meta", std::nullopt},
    RecordedTable{"job", RecordKind::Job},
    RecordedTable{"valves", RecordKind::ValveModel},
    RecordedTable{"valve_rows", RecordKind::ValveModel, true, 2},
    RecordedTable{"instruments", RecordKind::Instrument},
    RecordedTable{"people", RecordKind::Person},
    RecordedTable{"branches", RecordKind::Branch},
    RecordedTable{"pumps", RecordKind::Pump},
    RecordedTable{"pump_rows", RecordKind::Pump, true, 2},
    RecordedTable{"rounds", RecordKind::Round},
    RecordedTable{"readings", RecordKind::Reading},
    RecordedTable{"pump_readings", RecordKind::PumpReading},
    RecordedTable{"job_load_rows", RecordKind::Job, true, 2},
    RecordedTable{"round_sample", RecordKind::Round, true, 2},
    RecordedTable{"earlier_designs", RecordKind::Branch, true, 2},
    RecordedTable{"set_points", RecordKind::SetPoint},
    RecordedTable{"readiness", RecordKind::ReadinessLine},
    RecordedTable{"deficiencies", RecordKind::Deficiency},
    RecordedTable{"comments", RecordKind::Comment},
    RecordedTable{"attachments", RecordKind::Attachment},
    RecordedTable{"finding_reasons", RecordKind::FindingReason},
    RecordedTable{"signed_reports", RecordKind::SignedReport},
    RecordedTable{"merge_conflicts", RecordKind::MergeConflict},
    RecordedTable{"clock_offsets", RecordKind::ClockOffset},
    RecordedTable{"merged_records", std::nullopt},
    RecordedTable{"conflict_values", std::nullopt},
};

// A value as entered takes two columns: digits, and the unit's symbol. Moments take two: seconds since 1970,
// and minutes of the zone where one was written. Uniqueness of tags and numbers is held by the workbook and
// not by an index: two records may exchange their tags in one edit, which a replay does row by row.
constexpr std::string_view kSchemaOne = R"sql(
CREATE TABLE meta(key TEXT PRIMARY KEY NOT NULL, value TEXT NOT NULL) STRICT;
CREATE TABLE job(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16), name TEXT NOT NULL, site TEXT NOT NULL,
  client TEXT NOT NULL, units TEXT NOT NULL, fluid TEXT NOT NULL,
  concentration TEXT NOT NULL, concentration_unit TEXT NOT NULL, temperature TEXT NOT NULL,
  temperature_unit TEXT NOT NULL, tolerance_low TEXT NOT NULL, tolerance_low_unit TEXT NOT NULL,
  tolerance_high TEXT NOT NULL, tolerance_high_unit TEXT NOT NULL, matching_band TEXT NOT NULL,
  matching_band_unit TEXT NOT NULL, power_price TEXT, currency TEXT NOT NULL, hours_per_year TEXT) STRICT;
CREATE TABLE valves(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16), model TEXT NOT NULL, size TEXT NOT NULL,
  scale TEXT NOT NULL, coefficient_unit TEXT NOT NULL, minimum_dp TEXT, minimum_dp_unit TEXT, maximum_dp TEXT,
  maximum_dp_unit TEXT, accuracy TEXT, accuracy_unit TEXT) STRICT;
CREATE TABLE valve_rows(valve BLOB NOT NULL REFERENCES valves DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL, setting TEXT NOT NULL, coefficient TEXT NOT NULL,
  PRIMARY KEY(valve, position)) STRICT, WITHOUT ROWID;
CREATE TABLE instruments(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16), tag TEXT NOT NULL, kind TEXT NOT NULL,
  serial TEXT NOT NULL, range TEXT, range_unit TEXT, accuracy TEXT, accuracy_unit TEXT, accuracy_floor TEXT,
  accuracy_floor_unit TEXT, calibrated INTEGER, calibrated_zone INTEGER, due INTEGER, due_zone INTEGER) STRICT;
CREATE TABLE people(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16), name TEXT NOT NULL) STRICT;
CREATE TABLE branches(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16),
  parent BLOB REFERENCES branches DEFERRABLE INITIALLY DEFERRED, position INTEGER NOT NULL, tag TEXT NOT NULL,
  serves TEXT NOT NULL, kind TEXT NOT NULL, design_flow TEXT, design_flow_unit TEXT, run_loss TEXT,
  run_loss_unit TEXT, circuit_loss TEXT, circuit_loss_unit TEXT,
  valve BLOB REFERENCES valves DEFERRABLE INITIALLY DEFERRED, setting TEXT, side TEXT NOT NULL,
  upstream_diameters TEXT, downstream_diameters TEXT, returns TEXT NOT NULL) STRICT;
CREATE TABLE pumps(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16), position INTEGER NOT NULL, tag TEXT NOT NULL,
  is_running INTEGER NOT NULL, speed TEXT, speed_unit TEXT, impeller TEXT, impeller_unit TEXT,
  impeller_minimum TEXT, impeller_minimum_unit TEXT, motor_power TEXT, motor_power_unit TEXT,
  motor_efficiency TEXT, motor_efficiency_unit TEXT, volts TEXT, volts_unit TEXT, amps TEXT, amps_unit TEXT,
  service_factor TEXT, throttle_tag TEXT NOT NULL) STRICT;
CREATE TABLE pump_rows(pump BLOB NOT NULL REFERENCES pumps DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL, impeller TEXT, impeller_unit TEXT, flow TEXT NOT NULL, flow_unit TEXT NOT NULL,
  head TEXT NOT NULL, head_unit TEXT NOT NULL, efficiency TEXT, efficiency_unit TEXT, power TEXT, power_unit TEXT,
  npsh_required TEXT, npsh_required_unit TEXT, PRIMARY KEY(pump, position)) STRICT, WITHOUT ROWID;
CREATE TABLE rounds(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16), number INTEGER NOT NULL, kind TEXT NOT NULL,
  state TEXT NOT NULL, opened INTEGER, opened_zone INTEGER, closed INTEGER, closed_zone INTEGER) STRICT;
CREATE TABLE readings(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16),
  round BLOB NOT NULL REFERENCES rounds DEFERRABLE INITIALLY DEFERRED,
  branch BLOB NOT NULL REFERENCES branches DEFERRABLE INITIALLY DEFERRED, sequence INTEGER NOT NULL,
  time INTEGER, time_zone INTEGER, setting TEXT, dp TEXT, dp_unit TEXT, flow TEXT, flow_unit TEXT,
  instrument BLOB REFERENCES instruments DEFERRABLE INITIALLY DEFERRED,
  person BLOB REFERENCES people DEFERRABLE INITIALLY DEFERRED, note TEXT NOT NULL, status TEXT NOT NULL,
  supersedes BLOB REFERENCES readings DEFERRABLE INITIALLY DEFERRED, is_repeat INTEGER NOT NULL,
  cannot_be_read INTEGER NOT NULL, is_doubtful INTEGER NOT NULL, reason TEXT NOT NULL) STRICT;
CREATE TABLE pump_readings(id BLOB PRIMARY KEY NOT NULL CHECK(length(id)=16),
  round BLOB NOT NULL REFERENCES rounds DEFERRABLE INITIALLY DEFERRED,
  pump BLOB NOT NULL REFERENCES pumps DEFERRABLE INITIALLY DEFERRED, sequence INTEGER NOT NULL,
  time INTEGER, time_zone INTEGER, suction TEXT, suction_unit TEXT, discharge TEXT, discharge_unit TEXT,
  gauge_rise TEXT, gauge_rise_unit TEXT, speed TEXT, speed_unit TEXT, throttle TEXT, flow TEXT, flow_unit TEXT,
  volts TEXT, volts_unit TEXT, amps TEXT, amps_unit TEXT, power TEXT, power_unit TEXT,
  instrument BLOB REFERENCES instruments DEFERRABLE INITIALLY DEFERRED,
  person BLOB REFERENCES people DEFERRABLE INITIALLY DEFERRED, status TEXT NOT NULL,
  supersedes BLOB REFERENCES pump_readings DEFERRABLE INITIALLY DEFERRED) STRICT;
CREATE TABLE journal(sequence INTEGER PRIMARY KEY NOT NULL, utc INTEGER NOT NULL, person TEXT NOT NULL,
  machine TEXT NOT NULL, label TEXT NOT NULL, undoes INTEGER, redoes INTEGER, can_undo INTEGER NOT NULL,
  schema_version INTEGER NOT NULL, changeset BLOB NOT NULL, digest BLOB NOT NULL) STRICT;
)sql";

/// Name of every table, index, view and trigger with its SQL.
using Definitions = std::map<std::string, std::string>;

base::Result<Definitions> definitionsOf(const Database& database) {
    auto statement = database.prepare("SELECT type || ' ' || name, coalesce(sql, '') FROM sqlite_schema");
    if (!statement) {
        return statement.fault();
    }
    Definitions definitions;
    Step step = statement->step();
    for (; step == Step::Row; step = statement->step()) {
        definitions.emplace(statement->text(0), statement->text(1));
    }
    if (step == Step::Failed) {
        return database.fault();
    }
    return definitions;
}

std::string digestOf(const Definitions& definitions) {
    base::Digester digester;
    for (const auto& [name, sql] : definitions) {
        digester.addText(name);
        digester.addText(sql);
    }
    return digester.finish().text();
}

}  // namespace

std::span<const RecordedTable> recordedTables() {
    return kTables;
}

const RecordedTable* recordedTable(std::string_view name) {
    for (const RecordedTable& table : kTables) {
        if (table.name == name) {
            return &table;
        }
    }
    return nullptr;
}

base::Outcome createSchemaOne(Database& database) {
    return database.execute("PRAGMA application_id=" + std::to_string(kApplicationId) +
                            "; PRAGMA user_version=1;" + std::string(kSchemaOne));
}

base::Result<std::string> schemaDigest(const Database& database) {
    const auto definitions = definitionsOf(database);
    return definitions ? base::Result<std::string>(digestOf(*definitions)) : definitions.fault();
}

base::Outcome checkSchema(const Database& database) {
    const auto found = definitionsOf(database);
    if (!found) {
        return found.fault();
    }
    if (digestOf(*found) == kCurrentSchemaDigest) {
        return base::Done{};
    }
    // Which table differs is told by one that is made here.
    auto expected = emptyInCurrentSchema();
    if (!expected) {
        return expected.fault();
    }
    const auto wanted = definitionsOf(*expected);
    if (!wanted) {
        return wanted.fault();
    }
    const auto refuse = [&](const std::string& what) {
        return base::Fault{&kSchemaUnexpected, database.file().string(), {what}};
    };
    for (const auto& [name, sql] : *wanted) {
        const auto same = found->find(name);
        if (same == found->end()) {
            return refuse("missing " + name);
        }
        if (same->second != sql) {
            return refuse("different " + name);
        }
    }
    for (const auto& [name, sql] : *found) {
        if (!wanted->contains(name)) {
            return refuse("unknown " + name);
        }
    }
    return base::Done{};
}

}  // namespace ww::store
