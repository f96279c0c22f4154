// Two copies of one workbook come together: the other's later actions, the settling of what both did, and the
// conflicts that are left.
#include <limits>

#include "core/project/edit_label.h"
#include "core/store/merge_history.h"
#include "core/store/migration.h"
#include "core/store/open_file.h"
#include "core/store/record_reader.h"
#include "core/store/replay.h"
#include "core/store/store_messages.h"
#include "core/workbook/conflict_words.h"
#include "core/workbook/merge_settlement.h"
#include "core/workbook/workbook_state.h"

namespace ww::workbook {

namespace {

using base::Done;
using base::Fault;
using base::Outcome;
using base::Result;
using project::MergeConflict;
using project::Project;

/// The other copy: its file for reading, and the job as it stood at the last common record.
struct OtherCopy {
    store::Database file;
    store::Database shadow;
    store::MergeHistory history;
};

Result<store::Database> openOther(const std::filesystem::path& other, const base::Id& workbookId) {
    auto opened = store::openWorkbookFile(other, store::Access::Read);
    if (!opened) {
        return opened.fault();
    }
    if (opened->isNewer) {
        auto needs = store::readMeta(opened->database, kNeedsKey);
        return Fault{&store::kNewerSchema, other.string(), {needs && *needs ? **needs : "?"}};
    }
    // One state of the file, whatever its own program stores meanwhile.
    if (auto begun = opened->database.execute("BEGIN"); !begun) {
        return begun.fault();
    }
    auto id = store::readMeta(opened->database, kIdKey);
    if (!id) {
        return id.fault();
    }
    if (*id != workbookId.text()) {
        return Fault{&kNotACopy, other.string(), {}};
    }
    return std::move(opened->database);
}

Result<OtherCopy> otherCopy(const store::Database& ours, const std::filesystem::path& other,
                            const base::Id& workbookId) {
    auto file = openOther(other, workbookId);
    if (!file) {
        return file.fault();
    }
    auto history = store::mergeHistory(ours, *file);
    if (!history) {
        return history.fault();
    }
    if (history->common == 0) {
        return Fault{&kNotACopy, other.string(), {}};
    }
    auto shadow = store::replayed(*file, history->common);
    if (!shadow) {
        return shadow.fault();
    }
    return OtherCopy{std::move(*file), std::move(*shadow), std::move(*history)};
}

/// Who did what since the last common record, on both sides.
Result<std::pair<store::LastChanges, store::LastChanges>> lastChanges(const store::Database& ours,
                                                                      const store::MergeHistory& history) {
    auto forms = store::tableForms(ours);
    if (!forms) {
        return forms.fault();
    }
    store::LastChanges here(*forms);
    store::LastChanges there(*forms);
    auto walk = store::walkJournal(ours, [&](const store::JournalRecord& record, store::ByteSpan changeset) {
        if (record.sequence > history.common) {
            here.add(record, changeset);
        }
        return true;
    });
    if (!walk) {
        return walk.fault();
    }
    for (const store::IncomingRecord& incoming : history.incoming) {
        there.add(incoming.record, incoming.changeset);
    }
    return std::pair(std::move(here), std::move(there));
}

Result<store::Bytes> packed(const std::vector<project::AnyRecord>& records) {
    auto made = store::emptyInCurrentSchema();
    if (!made) {
        return made.fault();
    }
    store::Database database = std::move(*made);
    if (auto off = database.execute("PRAGMA foreign_keys=OFF"); !off) {
        return off.fault();
    }
    auto recorder = store::ChangeRecorder::start(database);
    if (!recorder) {
        return recorder.fault();
    }
    store::RecordWriter writer(database);
    for (const project::AnyRecord& record : records) {
        if (auto put = writer.put(record); !put) {
            return put.fault();
        }
    }
    return recorder->changes();
}

}  // namespace

/// One merge, from the first record taken over to the settling; inside the caller's transaction.
class Workbook::State::Merging {
  public:
    Merging(State& state, OtherCopy& other) : m_state(state), m_other(other) {}

    Outcome run() {
        auto merge = store::RowMerge::start(m_state.database, m_other.shadow);
        auto changes = lastChanges(m_state.database, m_other.history);
        if (!merge || !changes) {
            return merge ? changes.fault() : merge.fault();
        }
        m_previous = m_state.entries.back().digest;
        m_sequence = static_cast<std::int64_t>(m_state.entries.size());
        for (const store::IncomingRecord& incoming : m_other.history.incoming) {
            const Outcome done =
                incoming.isNew ? takeOver(*merge, incoming) : merge->follow(incoming.changeset);
            if (!done) {
                return unfit(done.fault());
            }
        }
        // The other copy's tables must be what its journal says, or its journal is not the whole of it.
        auto rows = store::differences(m_other.file, m_other.shadow, 1);
        if (!rows || !rows->empty()) {
            return rows ? rows->front() : rows.fault();
        }
        return finish(*merge, changes->first, changes->second);
    }

    MergeReport report;
    std::vector<JournalEntry> entries;

  private:
    Fault unfit(const Fault& fault) const {
        return fault.is(store::kFileDamaged)
                   ? Fault{&kMergeUnfit, m_other.file.file().string(), {base::english(fault)}}
                   : fault;
    }

    Outcome takeOver(store::RowMerge& merge, const store::IncomingRecord& incoming) {
        store::JournalRecord record = incoming.record;
        record.sequence = ++m_sequence;
        record.undoes.reset();
        record.redoes.reset();
        record.isPartOfMerge = true;
        record.schemaVersion = store::kSchemaVersion;
        report.person = record.person;
        report.machine = record.machine;
        ++report.actions;
        return append(record, [&]() -> Outcome {
            auto isWhole = merge.take(incoming.changeset);
            if (!isWhole) {
                return isWhole.fault();
            }
            auto known = store::mergedRecord(m_other.shadow, incoming.origin);
            if (!known) {
                return known.fault();
            }
            store::MergedRecord origin = known->value_or(
                store::MergedRecord{incoming.origin, incoming.record.sequence, incoming.record.machine,
                                    incoming.record.person, std::nullopt});
            if (!*isWhole && !origin.withheld) {
                origin.withheld = incoming.changeset;
            }
            return store::putMergedRecord(m_state.database, origin);
        });
    }

    Outcome finish(store::RowMerge& merge, const store::LastChanges& here, const store::LastChanges& there) {
        const Action action{
            report.actions == 1
                ? project::label(project::labels::kMergeOne, {report.machine})
                : project::label(project::labels::kMerge, {std::to_string(report.actions), report.machine}),
            {},
            {},
            true};
        const auto record = recordOf(action, ++m_sequence, m_state.session, m_state.now());
        return append(record, [&]() -> Outcome {
            auto fields = merge.settle();
            auto theirs = store::readProject(m_other.shadow);
            auto merged = store::readProject(m_state.database);
            if (!fields || !theirs || !merged) {
                return !fields ? fields.fault() : !theirs ? theirs.fault() : merged.fault();
            }
            const Settlement settlement =
                settle({m_state.project, *theirs, *merged, m_state.session.machine, report.machine});
            report.readingsAdded = settlement.readingsAdded;
            report.readingsIdentical = settlement.readingsIdentical;
            for (const project::AnyRecord& put : settlement.put) {
                if (auto written = m_state.writer.put(put); !written) {
                    return written;
                }
            }
            for (const store::FieldConflict& found : *fields) {
                const MergeConflict conflict = conflictOf(found, *merged, here, there);
                auto ours = store::packed(found.isGoneHere ? std::vector<store::PlacedRow>() : found.ours);
                auto values =
                    store::packed(found.isGoneThere ? std::vector<store::PlacedRow>() : found.theirs);
                if (auto kept = keep(conflict, ours, values); !kept) {
                    return kept;
                }
            }
            for (const KeptConflict& found : settlement.conflicts) {
                if (auto kept = keep(found.conflict, packed(found.ours), packed(found.theirs)); !kept) {
                    return kept;
                }
            }
            return checkReferences();
        });
    }

    Outcome keep(const MergeConflict& conflict, const Result<store::Bytes>& ours,
                 const Result<store::Bytes>& theirs) {
        if (!ours || !theirs) {
            return ours ? theirs.fault() : ours.fault();
        }
        report.conflicts.push_back(conflict);
        if (auto put = m_state.writer.put(conflict); !put) {
            return put;
        }
        auto statement = m_state.database.prepare(
            "INSERT INTO conflict_values(conflict,ours,theirs) VALUES(?,?,?) ON CONFLICT(conflict) DO UPDATE "
            "SET ours=excluded.ours, theirs=excluded.theirs");
        if (!statement) {
            return statement.fault();
        }
        statement->bind(1, store::ByteSpan(conflict.id.bytes));
        statement->bind(2, store::ByteSpan(*ours));
        statement->bind(3, store::ByteSpan(*theirs));
        return statement->step() == store::Step::Done ? Outcome(Done{}) : Outcome(m_state.database.fault());
    }

    /// Nothing may refer to a record that is not there.
    Outcome checkReferences() const {
        auto statement = m_state.database.prepare("PRAGMA foreign_key_check");
        if (!statement) {
            return statement.fault();
        }
        if (statement->step() != store::Step::Row) {
            return Done{};
        }
        return Fault{&kMergeUnfit,
                     m_other.file.file().string(),
                     {"a row of " + std::string(statement->text(0)) + " refers to one of " +
                      std::string(statement->text(2)) + " that is not there"}};
    }

    /// One journal record and what it leaves in memory.
    Outcome append(const store::JournalRecord& wanted, const std::function<Outcome()>& change) {
        store::Bytes bytes;
        auto record = recorded(m_state.database, wanted, m_previous, change, bytes, true);
        if (!record) {
            return record.fault();
        }
        m_previous = (*record)->digest;
        entries.push_back(entryOf(**record));
        const project::ChangeSet changes = store::changeSetOf(bytes);
        report.changes.put.insert(report.changes.put.end(), changes.put.begin(), changes.put.end());
        report.changes.erased.insert(report.changes.erased.end(), changes.erased.begin(),
                                     changes.erased.end());
        return Done{};
    }

    State& m_state;
    OtherCopy& m_other;
    base::Digest m_previous;
    std::int64_t m_sequence = 0;
};

/// A merge that is carried out in the file's transaction, and not yet in memory.
struct Workbook::State::PreparedMerge {
    std::optional<OtherCopy> copy;
    std::optional<store::Transaction> transaction;
    std::optional<Merging> merging;  ///< nothing where the other copy has no news
    std::optional<Project> merged;
};

Outcome Workbook::State::prepareMerge(const std::filesystem::path& other, PreparedMerge& merge) {
    auto copy = otherCopy(database, other, workbookId);
    if (!copy) {
        return copy.fault();
    }
    merge.copy.emplace(std::move(*copy));
    if (!merge.copy->history.hasNews()) {
        return Done{};
    }
    merge.transaction.emplace(database);
    if (!merge.transaction->begun()) {
        return merge.transaction->begun().fault();
    }
    merge.merging.emplace(*this, *merge.copy);
    if (auto done = merge.merging->run(); !done) {
        return done.fault();
    }
    auto merged = store::readProject(database);
    if (!merged) {
        return merged.fault();
    }
    merge.merged = std::move(*merged);
    return Done{};
}

Result<MergeReport> Workbook::State::merge(const std::filesystem::path& other, bool isPreview,
                                           const WorkRunner& run) {
    if (isReadOnly) {
        return readOnlyFault();
    }
    std::error_code ignored;
    if (std::filesystem::equivalent(other, file, ignored)) {
        return Fault{&kMergeWithItself, other.string(), {}};
    }
    PreparedMerge merge;
    Outcome prepared = Done{};
    run([&] {
        const std::lock_guard held(inUse);
        prepared = prepareMerge(other, merge);
    });
    if (!prepared) {
        return prepared.fault();
    }
    if (!merge.merging) {
        return MergeReport{};
    }
    if (isPreview) {
        return std::move(merge.merging->report);
    }
    if (auto committed = merge.transaction->commit(); !committed) {
        return committed.fault();
    }
    project = std::move(*merge.merged);
    for (JournalEntry& entry : merge.merging->entries) {
        undo.add(entry);
        entries.push_back(std::move(entry));
    }
    return std::move(merge.merging->report);
}

Result<MergeReport> Workbook::merge(const std::filesystem::path& other, const WorkRunner& run) {
    return m_state->merge(other, false, run);
}

Result<MergeReport> Workbook::previewMerge(const std::filesystem::path& other, const WorkRunner& run) {
    return m_state->merge(other, true, run);
}

}  // namespace ww::workbook
