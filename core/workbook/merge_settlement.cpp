#include "core/workbook/merge_settlement.h"

#include <algorithm>
#include <map>
#include <set>
#include <unordered_map>
#include <unordered_set>

#include "core/base/digest.h"
#include "core/workbook/conflict_parts.h"
#include "core/workbook/kept_designs.h"
#include "core/workbook/merge_readings.h"

namespace ww::workbook {

namespace {

using project::AnyRecord;
using project::Branch;
using project::Id;
using project::Project;
using project::RecordTable;
using project::Round;

/// Records whose names must differ within their kind. `name` gives a reference to it.
template <class Visit>
void eachNamedTable(const Project& project, Visit visit) {
    visit(
        project.branches(), [](auto& branch) -> auto& { return branch.tag; });
    visit(
        project.pumps(), [](auto& pump) -> auto& { return pump.tag; });
    visit(
        project.instruments(), [](auto& meter) -> auto& { return meter.tag; });
    visit(
        project.people(), [](auto& person) -> auto& { return person.name; });
    visit(
        project.valves(), [](auto& valve) -> auto& { return valve.model; });
}

/// What of a record besides the name tells it from others of its kind.
std::string restOfName(const project::ValveModel& valve) {
    return '\x1F' + valve.size;
}
template <class Record>
std::string restOfName(const Record&) {
    return {};
}

template <class Record>
const RecordTable<Record>& sameTable(const Project& project, const RecordTable<Record>&) {
    if constexpr (std::is_same_v<Record, Branch>) {
        return project.branches();
    } else if constexpr (std::is_same_v<Record, project::Pump>) {
        return project.pumps();
    } else if constexpr (std::is_same_v<Record, project::Instrument>) {
        return project.instruments();
    } else if constexpr (std::is_same_v<Record, project::Person>) {
        return project.people();
    } else if constexpr (std::is_same_v<Record, project::ValveModel>) {
        return project.valves();
    } else if constexpr (std::is_same_v<Record, Round>) {
        return project.rounds();
    } else {
        return project.deficiencies();
    }
}

class Settling {
  public:
    explicit Settling(const MergeSides& sides) : m_sides(sides), m_after(sides.merged) {}

    Settlement run() {
        ReadingSettlement readings(m_sides, m_after);
        readings.run();
        m_settlement = readings.take();
        for (const AnyRecord& record : m_settlement.put) {
            note(record);
        }
        m_settlement.put.clear();
        eachNamedTable(m_sides.merged, [&](const auto& table, auto name) { settleNames(table, name); });
        settleNumbers(m_sides.merged.rounds());
        settleNumbers(m_sides.merged.deficiencies());
        settleRevisions();
        openRings();
        for (const AnyRecord& record : keptOfSides(m_sides.ours, m_sides.theirs, m_after)) {
            note(record);
        }
        for (auto& [id, record] : m_put) {
            m_settlement.put.push_back(std::move(record));
        }
        return std::move(m_settlement);
    }

  private:
    void note(const AnyRecord& record) {
        std::visit([&](const auto& value) { m_after.put(value); }, record);
        m_put[project::idOf(record)] = record;
    }

    /// A conflict about two records, ours and the incoming one.
    void conflictOf(const AnyRecord& ours, const AnyRecord& theirs, std::string_view field,
                    const std::string& ourText, const std::string& theirText) {
        KeptConflict kept;
        project::MergeConflict& conflict = kept.conflict;
        conflict.recordKind = project::kindOf(theirs);
        conflict.record = project::idOf(theirs);
        conflict.field = field;
        conflict.place = project::nameOf(ours);
        conflict.ours = ourText;
        conflict.theirs = theirText;
        conflict.id = conflictId(conflict.recordKind, {}, field, project::idOf(ours).text(),
                                 project::idOf(theirs).text());
        kept.ours = {ours};
        kept.theirs = {theirs};
        m_settlement.conflicts.push_back(std::move(kept));
    }

    template <class Record, class Name>
    void settleNames(const RecordTable<Record>& table, Name name) {
        std::map<std::string, std::vector<Id>> byName;
        std::set<std::string> taken;
        for (const Record& record : table) {
            if (!name(record).empty()) {
                byName[name(record) + restOfName(record)].push_back(record.id);
                taken.insert(name(record) + restOfName(record));
            }
        }
        const auto isOurs = [&](const Id& id) {
            const Record* before = sameTable(m_sides.ours, table).find(id);
            return before != nullptr && name(*before) == name(table.at(id));
        };
        for (auto& [full, ids] : byName) {
            std::stable_partition(ids.begin(), ids.end(), isOurs);
            for (std::size_t i = 1; i < ids.size(); ++i) {
                const Record ours = table.at(ids[0]);
                Record theirs = table.at(ids[i]);
                const std::string first = name(theirs) + " (" + m_sides.theirMachine + ")";
                name(theirs) = first;
                for (int n = 2; !taken.insert(name(theirs) + restOfName(theirs)).second; ++n) {
                    name(theirs) = first + " " + std::to_string(n);
                }
                note(theirs);
                conflictOf(ours, theirs, kSameNameField, name(ours), name(theirs));
            }
        }
    }

    template <class Record>
    void settleNumbers(const RecordTable<Record>& table) {
        std::map<int, std::vector<Id>> byNumber;
        int highest = 0;
        for (const Record& record : table) {
            byNumber[record.number].push_back(record.id);
            highest = std::max(highest, record.number);
        }
        const auto isOurs = [&](const Id& id) {
            const Record* before = sameTable(m_sides.ours, table).find(id);
            return before != nullptr && before->number == table.at(id).number;
        };
        for (auto& [number, ids] : byNumber) {
            std::stable_partition(ids.begin(), ids.end(), isOurs);
            for (std::size_t i = 1; i < ids.size(); ++i) {
                const Record ours = table.at(ids[0]);
                Record theirs = table.at(ids[i]);
                theirs.number = ++highest;
                note(theirs);
                conflictOf(ours, theirs, kSameNameField, std::to_string(number),
                           std::to_string(theirs.number));
            }
        }
    }

    void settleRevisions() {
        for (const project::SignedReport& theirs : m_sides.theirs.signedReports()) {
            if (m_sides.ours.signedReports().contains(theirs.id) || theirs.isWithdrawn) {
                continue;
            }
            for (const project::SignedReport& ours : m_sides.ours.signedReports()) {
                const bool isSame = ours.revision == theirs.revision && ours.role == theirs.role &&
                                    ours.fileDigest != theirs.fileDigest && !ours.isWithdrawn &&
                                    !m_sides.theirs.signedReports().contains(ours.id);
                if (isSame) {
                    conflictOf(ours, theirs, kSameRevisionField, ours.signer, theirs.signer);
                    auto& conflict = m_settlement.conflicts.back().conflict;
                    conflict.place = conflictText(conflict_forms::kSignedReport) + ", " +
                                     conflictText(conflict_forms::kRevision, {std::to_string(ours.revision)});
                    conflict.ourTime = ours.time;
                    conflict.theirTime = theirs.time;
                }
            }
        }
    }

    /// The branch that closes a ring through its parents; null where there is none.
    const Branch* onRing(const Branch& start) const {
        std::unordered_set<Id> seen;
        const Branch* at = &start;
        while (at->parent) {
            at = m_after.branches().find(*at->parent);
            if (at == nullptr || at->id == start.id) {
                return at;
            }
            if (!seen.insert(at->id).second) {
                return nullptr;
            }
        }
        return nullptr;
    }

    void openRings() {
        for (const Branch& merged : m_sides.merged.branches()) {
            const Branch* before = m_sides.ours.branches().find(merged.id);
            const bool isMoved = before != nullptr && before->parent != merged.parent;
            if (!isMoved || onRing(m_after.branches().at(merged.id)) == nullptr) {
                continue;
            }
            const Branch theirs = m_after.branches().at(merged.id);
            Branch ours = theirs;
            ours.parent = before->parent;
            note(ours);
            conflictOf(ours, theirs, "parent", parentOf(ours), parentOf(theirs));
            m_settlement.conflicts.back().conflict.place =
                ours.tag + ", " + conflictText(conflict_forms::kFedFrom);
        }
    }
    std::string parentOf(const Branch& branch) const {
        const Branch* parent = branch.parent ? m_after.branches().find(*branch.parent) : nullptr;
        return parent == nullptr ? conflictText(conflict_forms::kThePump) : parent->tag;
    }

    const MergeSides& m_sides;
    Project m_after;
    Settlement m_settlement;
    std::unordered_map<Id, AnyRecord> m_put;
};

}  // namespace

Settlement settle(const MergeSides& sides) {
    return Settling(sides).run();
}

Id conflictId(project::RecordKind kind, const Id& record, std::string_view field, std::string first,
              std::string second) {
    if (second < first) {
        std::swap(first, second);
    }
    base::Digester digester;
    digester.addNumber(static_cast<std::int64_t>(kind));
    digester.add(record.bytes);
    digester.addText(field);
    digester.addText(first);
    digester.addText(second);
    const base::Digest digest = digester.finish();
    Id id;
    std::copy_n(digest.bytes.begin(), id.bytes.size(), id.bytes.begin());
    return id;
}

bool isSealed(project::RoundState state) {
    return state == project::RoundState::Sent || state == project::RoundState::Accepted;
}

}  // namespace ww::workbook
