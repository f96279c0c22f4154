// A person picks one side of a conflict that merging left open.
#include <algorithm>
#include <array>

#include "core/project/edit_label.h"
#include "core/project/merge_reason.h"
#include "core/project/names.h"
#include "core/store/raw_rows.h"
#include "core/store/record_reader.h"
#include "core/store/store_messages.h"
#include "core/workbook/edit_rules.h"
#include "core/workbook/kept_designs.h"
#include "core/workbook/merge_settlement.h"
#include "core/workbook/workbook_state.h"

namespace ww::workbook {

namespace {

using base::Done;
using base::Fault;
using base::Outcome;
using base::Result;
using project::AnyRecord;
using project::ChangeSet;
using project::ConflictChoice;
using project::Edit;
using project::MergeConflict;
using project::Project;
using project::ReadingStatus;
using project::RecordKind;
using project::Round;
using store::PlacedRow;
using store::RowField;
using store::TableForm;

/// Fields whose texts may stand one below the other.
constexpr std::array<std::string_view, 12> kTextFields{"note",      "notes",    "reason", "policy_reason",
                                                       "readiness", "serves",   "remedy", "description",
                                                       "caption",   "evidence", "text",   "consequence"};

/// Both sides' rows of a conflict, as they were when it was found.
struct Sides {
    std::vector<PlacedRow> ours;
    std::vector<PlacedRow> theirs;
};

Result<Sides> sidesOf(const store::Database& database, const MergeConflict& conflict) {
    auto statement = database.prepare("SELECT ours, theirs FROM conflict_values WHERE conflict=?");
    if (!statement) {
        return statement.fault();
    }
    statement->bind(1, store::ByteSpan(conflict.id.bytes));
    if (statement->step() != store::Step::Row) {
        return Fault{&kConflictUnknown, conflict.place, {}};
    }
    return Sides{store::unpacked(statement->blob(0)), store::unpacked(statement->blob(1))};
}

/// The round that a conflict is about; null where it is about none.
const Round* roundOf(const Project& project, const MergeConflict& conflict) {
    if (conflict.recordKind == RecordKind::Round) {
        return project.rounds().find(conflict.record);
    }
    if (const auto* reading = project.readings().find(conflict.record)) {
        return project.rounds().find(reading->round);
    }
    const auto* reading = project.pumpReadings().find(conflict.record);
    return reading == nullptr ? nullptr : project.rounds().find(reading->round);
}

/// Exchanges what tells two records of one kind apart. False where either is gone.
template <class Record, class Name>
bool exchangeNames(const project::RecordTable<Record>& table, const MergeConflict& conflict, Name name,
                   Edit& edit) {
    const Record* theirs = table.find(conflict.record);
    const auto ours = std::find_if(table.begin(), table.end(), [&](const Record& record) {
        return name(record) == conflict.ours && record.id != conflict.record;
    });
    if (theirs == nullptr || ours == table.end()) {
        return false;
    }
    Record first = *ours;
    Record second = *theirs;
    if constexpr (requires { first.number; }) {
        std::swap(first.number, second.number);
    } else if constexpr (requires { first.tag; }) {
        std::swap(first.tag, second.tag);
    } else if constexpr (requires { first.model; }) {
        std::swap(first.model, second.model);
    } else {
        std::swap(first.name, second.name);
    }
    edit.put = {first, second};
    return true;
}

bool exchangeNames(const Project& project, const MergeConflict& conflict, Edit& edit) {
    const auto tag = [](const auto& record) { return record.tag; };
    const auto number = [](const auto& record) { return std::to_string(record.number); };
    switch (conflict.recordKind) {
        case RecordKind::Branch:
            return exchangeNames(project.branches(), conflict, tag, edit);
        case RecordKind::Pump:
            return exchangeNames(project.pumps(), conflict, tag, edit);
        case RecordKind::Instrument:
            return exchangeNames(project.instruments(), conflict, tag, edit);
        case RecordKind::Person:
            return exchangeNames(
                project.people(), conflict, [](const auto& person) { return person.name; }, edit);
        case RecordKind::ValveModel:
            return exchangeNames(
                project.valves(), conflict, [](const auto& valve) { return valve.model; }, edit);
        case RecordKind::Round:
            return exchangeNames(project.rounds(), conflict, number, edit);
        case RecordKind::Deficiency:
            return exchangeNames(project.deficiencies(), conflict, number, edit);
        default:
            return false;
    }
}

/// Strikes the readings of the side that was not picked.
void strike(const Project& project, const std::vector<PlacedRow>& rows, const std::string& reason,
            Edit& edit) {
    const auto strikeIn = [&](const auto& table, const PlacedRow& row) {
        const auto id = store::idIn(row.row.front());
        const auto* reading = id ? table.find(*id) : nullptr;
        if (reading != nullptr && reading->status == ReadingStatus::Standing) {
            auto struck = *reading;
            struck.status = ReadingStatus::Struck;
            struck.reason = reason;
            edit.put.emplace_back(std::move(struck));
        }
    };
    for (const PlacedRow& row : rows) {
        row.table == "readings" ? strikeIn(project.readings(), row) : strikeIn(project.pumpReadings(), row);
    }
}

}  // namespace

/// One choice being carried out.
class Workbook::State::Choosing {
  public:
    Choosing(State& state, MergeConflict conflict, ConflictChoice choice)
        : m_state(state), m_conflict(std::move(conflict)), m_choice(choice) {}

    Result<ChangeSet> run() {
        auto sides = sidesOf(m_state.database, m_conflict);
        if (!sides) {
            return sides.fault();
        }
        m_sides = std::move(*sides);
        const bool isLate = m_conflict.field == kLateReadingsField;
        const Round* round = roundOf(m_state.project, m_conflict);
        const bool isRoundItself = m_conflict.recordKind == RecordKind::Round;
        if (round != nullptr && isSealed(round->state) && !isRoundItself) {
            return Fault{&kChoiceSealed,
                         m_conflict.place,
                         {std::to_string(round->number), std::string(project::name(round->state))}};
        }
        const bool isOurs = m_choice == ConflictChoice::Ours;
        const std::string label =
            isOurs || m_choice == ConflictChoice::Theirs
                ? project::label(project::labels::kChoice,
                                 {isOurs ? m_conflict.ours : m_conflict.theirs, m_conflict.place})
                : project::label(project::labels::kChoiceBoth, {m_conflict.place});
        const bool isUnsealed = isLate && !isSealingSide();
        const Action action{label, {}, {}, !isUnsealed};
        m_conflict.choice = m_choice;
        m_conflict.decidedBy = m_state.session.person;
        m_conflict.decided = m_state.now();
        return m_state.carryOut(action, nullptr, [&]() -> Outcome {
            auto done = carryOutChoice();
            return done ? m_state.writer.put(m_conflict) : done;
        });
    }

  private:
    const std::vector<PlacedRow>& picked() const {
        return m_choice == ConflictChoice::Ours ? m_sides.ours : m_sides.theirs;
    }
    const std::vector<PlacedRow>& other() const {
        return m_choice == ConflictChoice::Ours ? m_sides.theirs : m_sides.ours;
    }
    /// Of late readings: whether the side that sent or accepted the round was picked.
    bool isSealingSide() const {
        const std::string& text = m_choice == ConflictChoice::Ours ? m_conflict.ours : m_conflict.theirs;
        return text.ends_with("without them");
    }

    Outcome carryOutChoice() {
        const Project& project = m_state.project;
        Edit edit;
        if (m_conflict.field == kSameNameField) {
            if (m_choice == ConflictChoice::Theirs) {
                exchangeNames(project, m_conflict, edit);
            }
            return writeAllowed(edit);
        }
        if (m_conflict.field == kTwoReadingsField) {
            const std::string& text = m_choice == ConflictChoice::Ours ? m_conflict.ours : m_conflict.theirs;
            strike(project, other(), base::filledIn(project::merge_reasons::kNotChosen.text, {text}), edit);
            return write(m_state.writer, edit);
        }
        if (m_conflict.field == kSameRevisionField) {
            const auto id = other().empty() ? std::nullopt : store::idIn(other().front().row.front());
            const auto* report = id ? project.signedReports().find(*id) : nullptr;
            if (report != nullptr) {
                auto withdrawn = *report;
                withdrawn.isWithdrawn = true;
                withdrawn.reason = project::merge_reasons::kSameRevision.text;
                edit.put.emplace_back(std::move(withdrawn));
            }
            return write(m_state.writer, edit);
        }
        if (m_conflict.field == kLateReadingsField) {
            return isSealingSide() ? Outcome(Done{}) : takeLateReadings();
        }
        if (m_conflict.field == kRemovedField) {
            if (picked().empty()) {
                edit.erase.push_back({m_conflict.recordKind, m_conflict.record});
            }
            return writeAllowed(edit);
        }
        return putField();
    }

    Outcome writeAllowed(const Edit& edit) {
        if (auto refused = refusal(m_state.project, edit)) {
            return *refused;
        }
        return write(m_state.writer, edit);
    }

    /// The round goes back to be looked at again, with what it had not seen.
    Outcome takeLateReadings() {
        Edit edit;
        const Round* round = m_state.project.rounds().find(m_conflict.record);
        if (round == nullptr) {
            return Fault{&kConflictUnknown, m_conflict.place, {}};
        }
        if (isSealed(round->state)) {
            Round opened = *round;
            opened.state = project::RoundState::SentBack;
            opened.decided = m_conflict.decided;
            opened.decidedBy = m_conflict.decidedBy;
            opened.reason = project::merge_reasons::kLateReadings.text;
            edit.put.emplace_back(std::move(opened));
        }
        if (auto written = write(m_state.writer, edit); !written) {
            return written;
        }
        auto forms = store::tableForms(m_state.database);
        if (!forms) {
            return forms.fault();
        }
        store::RawRows rows(m_state.database);
        for (const PlacedRow& late : picked()) {
            const auto form = std::find_if(forms->begin(), forms->end(), [&](const TableForm& candidate) {
                return candidate.table->name == late.table;
            });
            for (const RowField& field : form->fields) {
                if (field.name == "sequence") {
                    continue;
                }
                const auto cells = store::cellsOf(late.row, field);
                if (auto set = rows.setField(*form, form->keyOf(late.row), field, cells); !set) {
                    return set;
                }
            }
        }
        return Done{};
    }

    /// A column, or a table of rows that belong to the record.
    Outcome putField() {
        auto forms = store::tableForms(m_state.database);
        if (!forms) {
            return forms.fault();
        }
        store::RawRows rows(m_state.database);
        const store::Row key{store::cellOf(m_conflict.record)};
        for (const TableForm& form : *forms) {
            if (form.table->kind != m_conflict.recordKind) {
                continue;
            }
            const bool isRows = form.table->holdsRowsOfOwner;
            const RowField* field = isRows ? nullptr : form.field(m_conflict.field);
            if (isRows && form.table->name == m_conflict.field) {
                return replaceRows(rows, form, key);
            }
            if (field != nullptr && !picked().empty() && !other().empty()) {
                store::Row cells = store::cellsOf(picked().front().row, *field);
                if (m_choice == ConflictChoice::Both) {
                    cells = {m_conflict.ours + "\n" + m_conflict.theirs};
                }
                const auto set = rows.setField(form, key, *field, cells);
                return set ? checkRecord() : set;
            }
        }
        return Fault{&kConflictUnknown, m_conflict.place, {}};
    }

    Outcome replaceRows(store::RawRows& rows, const TableForm& form, const store::Row& key) {
        auto now = rows.where(form, 0, key[0]);
        if (!now) {
            return now.fault();
        }
        for (const store::Row& row : *now) {
            if (auto erased = rows.erase(form, form.keyOf(row)); !erased) {
                return erased;
            }
        }
        for (const PlacedRow& row : picked()) {
            if (auto put = rows.insert(form, row.row); !put) {
                return put;
            }
        }
        return checkRecord();
    }

    /// Whether the job holds together with the value picked. Locks and steps of a review do not hold here:
    /// what is picked was read, or done, on the other side in its time.
    Outcome checkRecord() {
        auto record = store::readRecord(m_state.database, {m_conflict.recordKind, m_conflict.record},
                                        m_state.project.fluid().density());
        if (!record) {
            return record.fault();
        }
        if (!*record) {
            return Done{};
        }
        Edit edit;
        edit.put.push_back(std::move(**record));
        const auto refused = refusal(m_state.project, edit);
        const bool isBroken = refused && (refused->is(kReferenceMissing) || refused->is(kNameTaken) ||
                                          refused->is(kRoundNumberTaken) || refused->is(kSequenceTaken) ||
                                          refused->is(kFedFromItself));
        if (isBroken) {
            return *refused;
        }
        const std::optional<Edit> kept = withKeptDesigns(m_state.project, edit);
        return kept ? write(m_state.writer, *kept) : Outcome(Done{});
    }

    State& m_state;
    MergeConflict m_conflict;
    ConflictChoice m_choice;
    Sides m_sides;
};

bool canKeepBoth(const MergeConflict& conflict) {
    return std::find(kTextFields.begin(), kTextFields.end(), conflict.field) != kTextFields.end();
}

Result<ChangeSet> Workbook::choose(const base::Id& conflict, ConflictChoice choice) {
    EXPECTS(choice != ConflictChoice::Open);
    if (m_state->isReadOnly) {
        return m_state->readOnlyFault();
    }
    const MergeConflict* found = m_state->project.mergeConflicts().find(conflict);
    if (found == nullptr) {
        return Fault{&kConflictUnknown, "", {}};
    }
    if (choice == ConflictChoice::Both && !canKeepBoth(*found)) {
        return Fault{&kCannotKeepBoth, found->place, {}};
    }
    const std::lock_guard held(m_state->inUse);
    return State::Choosing(*m_state, *found, choice).run();
}

}  // namespace ww::workbook
