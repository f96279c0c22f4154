#include "core/store/row_name.h"

#include <algorithm>
#include <array>

#include "core/base/id.h"

namespace ww::store {

namespace {

/// How a row of a table is named: SQL that gives one text for the key in ?1 (and ?2).
struct NamePattern {
    std::string_view table;
    const char* sql;
};
constexpr std::array kPatterns{
    NamePattern{"job", "SELECT 'job ' || name FROM job WHERE id=?1"},
    NamePattern{"valves", "SELECT 'valve ' || model || ' ' || size FROM valves WHERE id=?1"},
    NamePattern{"valve_rows",
                "SELECT 'row ' || (?2+1) || ' of valve ' || model || ' ' || size FROM valves WHERE id=?1"},
    NamePattern{"instruments", "SELECT 'instrument ' || tag FROM instruments WHERE id=?1"},
    NamePattern{"people", "SELECT 'person ' || name FROM people WHERE id=?1"},
    NamePattern{"branches", "SELECT 'branch ' || tag FROM branches WHERE id=?1"},
    NamePattern{"pumps", "SELECT 'pump ' || tag FROM pumps WHERE id=?1"},
    NamePattern{"pump_rows", "SELECT 'row ' || (?2+1) || ' of pump ' || tag FROM pumps WHERE id=?1"},
    NamePattern{"rounds", "SELECT 'round ' || number FROM rounds WHERE id=?1"},
    NamePattern{
        "readings",
        "SELECT 'reading ' || r.sequence || ' of branch ' || coalesce(b.tag,'?') || ' in round ' || "
        "coalesce(o.number,'?') FROM readings r LEFT JOIN branches b ON b.id=r.branch LEFT JOIN rounds o ON "
        "o.id=r.round WHERE r.id=?1"},
    NamePattern{
        "pump_readings",
        "SELECT 'reading ' || r.sequence || ' of pump ' || coalesce(p.tag,'?') || ' in round ' || "
        "coalesce(o.number,'?') FROM pump_readings r LEFT JOIN pumps p ON p.id=r.pump LEFT JOIN rounds o ON "
        "o.id=r.round WHERE r.id=?1"},
    NamePattern{"job_load_rows", "SELECT 'load row ' || (?2+1) || ' of job ' || name FROM job WHERE id=?1"},
    NamePattern{"round_sample",
                "SELECT 'sample row ' || (?2+1) || ' of round ' || number FROM rounds WHERE id=?1"},
    NamePattern{"earlier_designs",
                "SELECT 'earlier design ' || (?2+1) || ' of branch ' || tag FROM branches WHERE id=?1"},
    NamePattern{"set_points", "SELECT 'set-point of sensor ' || sensor FROM set_points WHERE id=?1"},
    NamePattern{"readiness", "SELECT 'readiness line ' || (position+1) FROM readiness WHERE id=?1"},
    NamePattern{"deficiencies", "SELECT 'deficiency ' || number FROM deficiencies WHERE id=?1"},
    NamePattern{"comments", "SELECT 'comment of ' || person FROM comments WHERE id=?1"},
    NamePattern{"attachments", "SELECT 'attachment ' || name FROM attachments WHERE id=?1"},
    NamePattern{"finding_reasons",
                "SELECT 'reason for ' || code || ' ' || subject FROM finding_reasons WHERE id=?1"},
    NamePattern{"signed_reports",
                "SELECT 'signed report, revision ' || revision FROM signed_reports WHERE id=?1"},
    NamePattern{"merge_conflicts", "SELECT 'merge conflict ' || place FROM merge_conflicts WHERE id=?1"},
    NamePattern{"clock_offsets", "SELECT 'clock of ' || machine FROM clock_offsets WHERE id=?1"},
};

std::string keyOf(const Statement& row) {
    const ByteSpan key = row.blob(0);
    base::Id id;
    if (row.type(0) != CellType::Blob || key.size() != id.bytes.size()) {
        return std::string(row.text(0));
    }
    std::copy(key.begin(), key.end(), id.bytes.begin());
    return id.text();
}

}  // namespace

std::string nameOfRow(const Database& database, const RecordedTable& table, const Statement& row) {
    const auto pattern = std::find_if(kPatterns.begin(), kPatterns.end(), [&](const NamePattern& candidate) {
        return candidate.table == table.name;
    });
    if (pattern != kPatterns.end()) {
        auto statement = database.prepare(pattern->sql);
        if (statement) {
            statement->bind(1, row.blob(0));
            if (table.keyColumns == 2) {
                statement->bind(2, row.integer(1));
            }
            if (statement->step() == Step::Row) {
                return std::string(statement->text(0));
            }
        }
    }
    return std::string(table.name) + " " + keyOf(row);
}

}  // namespace ww::store
