#include "core/workbook/workbook_state.h"

#include <algorithm>
#include <limits>
#include <unordered_map>

#include "core/project/clock_offset.h"
#include "core/store/migration.h"
#include "core/store/record_reader.h"
#include "core/store/replay.h"
#include "core/store/schema.h"
#include "core/store/store_messages.h"

namespace ww::workbook {

namespace {

using base::Done;
using base::Fault;
using base::Outcome;
using base::Result;
using project::AnyRecord;
using project::ChangeSet;
using project::Edit;
using project::Id;
using project::Project;
using project::RecordKind;

/// Taking more records than this out of memory one by one costs more than reading the whole job again.
constexpr std::size_t kManyErased = 200;

void eraseFrom(Project& project, const project::RecordRef& record) {
    switch (record.kind) {
        case RecordKind::Job:
            base::breach("a workbook keeps its job", __FILE__, __LINE__);
        case RecordKind::ValveModel:
            return project.eraseValve(record.id);
        case RecordKind::Branch:
            return project.eraseBranch(record.id);
        case RecordKind::Pump:
            return project.erasePump(record.id);
        case RecordKind::Instrument:
            return project.eraseInstrument(record.id);
        case RecordKind::Person:
            return project.erasePerson(record.id);
        case RecordKind::Round:
            return project.eraseRound(record.id);
        case RecordKind::Reading:
            return project.eraseReading(record.id);
        case RecordKind::PumpReading:
            return project.erasePumpReading(record.id);
        case RecordKind::SetPoint:
            return project.eraseSetPoint(record.id);
        case RecordKind::ReadinessLine:
            return project.eraseReadinessLine(record.id);
        case RecordKind::Deficiency:
            return project.eraseDeficiency(record.id);
        case RecordKind::Comment:
            return project.eraseComment(record.id);
        case RecordKind::Attachment:
            return project.eraseAttachment(record.id);
        case RecordKind::FindingReason:
            return project.eraseFindingReason(record.id);
        case RecordKind::SignedReport:
            return project.eraseSignedReport(record.id);
        case RecordKind::MergeConflict:
            return project.eraseMergeConflict(record.id);
        case RecordKind::ClockOffset:
            return project.eraseClockOffset(record.id);
    }
}

/// What memory takes over from the file after a commit: single records, or the whole job.
struct Refresh {
    std::vector<AnyRecord> put;
    std::optional<Project> whole;

    void carryOut(Project& project, const ChangeSet& changes) {
        if (whole) {
            project = std::move(*whole);
            return;
        }
        for (const project::RecordRef& record : changes.erased) {
            eraseFrom(project, record);
        }
        // The job comes last: with a new fluid it resolves the heads of all other records again.
        for (const bool isJobsTurn : {false, true}) {
            for (AnyRecord& record : put) {
                if (std::holds_alternative<project::Job>(record) == isJobsTurn) {
                    std::visit([&](auto& r) { project.put(std::move(r)); }, record);
                }
            }
        }
    }
};

/// Reads what changed from the file itself, so that memory holds what is stored and nothing else. Records of
/// the edit are taken as they are: they were just written.
Result<Refresh> refreshAfter(const store::Database& database, const Project& project,
                             const ChangeSet& changes, const Edit* edit) {
    Refresh refresh;
    if (changes.erased.size() > kManyErased) {
        auto whole = store::readProject(database);
        if (!whole) {
            return whole.fault();
        }
        refresh.whole = std::move(*whole);
        return refresh;
    }
    std::unordered_map<Id, const AnyRecord*> written;
    if (edit != nullptr) {
        for (const AnyRecord& record : edit->put) {
            written[project::idOf(record)] = &record;
        }
    }
    for (const project::RecordRef& record : changes.put) {
        if (const auto found = written.find(record.id); found != written.end()) {
            refresh.put.push_back(*found->second);
            continue;
        }
        auto read = store::readRecord(database, record, project.fluid().density());
        if (!read) {
            return read.fault();
        }
        if (*read) {
            refresh.put.push_back(std::move(**read));
        }
    }
    return refresh;
}

}  // namespace

JournalEntry entryOf(const store::JournalRecord& record) {
    return {record.sequence, record.time,   record.person,  record.machine,       record.label,
            record.undoes,   record.redoes, record.canUndo, record.isPartOfMerge, record.digest};
}

store::JournalRecord recordOf(const Action& action, std::int64_t sequence, const Session& session,
                              const base::Instant& time) {
    store::JournalRecord record;
    record.sequence = sequence;
    record.time = time;
    record.person = session.person;
    record.machine = session.machine;
    record.label = action.label;
    record.undoes = action.undoes;
    record.redoes = action.redoes;
    record.canUndo = action.canUndo;
    record.schemaVersion = store::kSchemaVersion;
    return record;
}

/// Changes the tables as `change` says and writes the journal record of it, inside a transaction that is
/// open. Nothing where nothing changed.
Result<std::optional<store::JournalRecord>> recorded(store::Database& database, store::JournalRecord record,
                                                     const base::Digest& previous,
                                                     const std::function<Outcome()>& change,
                                                     store::Bytes& bytes, bool mayBeEmpty) {
    auto recorder = store::ChangeRecorder::start(database);
    if (!recorder) {
        return recorder.fault();
    }
    if (auto changed = change(); !changed) {
        return changed.fault();
    }
    auto changes = recorder->changes();
    if (!changes) {
        return changes.fault();
    }
    bytes = std::move(*changes);
    if (bytes.empty() && !mayBeEmpty) {
        return std::optional<store::JournalRecord>();
    }
    record.digest = store::digestOf(record, bytes, previous);
    if (auto appended = store::appendToJournal(database, record, bytes); !appended) {
        return appended.fault();
    }
    return std::optional(std::move(record));
}

Outcome write(store::RecordWriter& writer, const Edit& edit) {
    for (const project::RecordRef& record : edit.erase) {
        if (auto erased = writer.erase(record); !erased) {
            return erased;
        }
    }
    for (const AnyRecord& record : edit.put) {
        if (auto put = writer.put(record); !put) {
            return put;
        }
    }
    return Done{};
}

Outcome Workbook::State::load() {
    // One reading transaction: another program may store in between.
    if (auto begun = database.execute("BEGIN"); !begun) {
        return begun;
    }
    auto walk = store::walkJournal(database, [&](const store::JournalRecord& record, store::ByteSpan) {
        entries.push_back(entryOf(record));
        undo.add(entries.back());
        return true;
    });
    if (!walk) {
        return walk.fault();
    }
    if (walk->firstBroken || walk->records == 0) {
        return Fault{&store::kChainBroken, file.string(), {std::to_string(walk->firstBroken.value_or(1))}};
    }
    auto read = store::readProject(database);
    if (!read) {
        return read.fault();
    }
    project = std::move(*read);
    auto id = store::readMeta(database, kIdKey);
    if (!id) {
        return id.fault();
    }
    const auto parsed = id->has_value() ? Id::fromText(**id) : std::nullopt;
    if (!parsed) {
        return Fault{&store::kRowUnreadable, file.string(), {"meta", std::string(kIdKey)}};
    }
    workbookId = *parsed;
    if (auto sound = checkRows(); !sound) {
        return sound;
    }
    return database.execute("COMMIT");
}

Outcome Workbook::State::checkRows() const {
    auto version = store::schemaVersionOf(database);
    if (!version) {
        return version.fault();
    }
    if (*version > store::kSchemaVersion) {
        return Done{};
    }
    if (store::isAsRecorded(database)) {
        return Done{};
    }
    auto expected = store::replayedAtOnce(database);
    if (!expected) {
        return expected.fault();
    }
    auto rows = store::differences(database, *expected, 1);
    if (!rows) {
        return rows.fault();
    }
    return rows->empty() ? Outcome(Done{}) : Outcome(rows->front());
}

Result<ChangeSet> Workbook::State::carryOut(const Action& action, const Edit* edit,
                                            const std::function<Outcome()>& change) {
    const std::lock_guard held(inUse);
    store::Transaction transaction(database);
    if (!transaction.begun()) {
        return transaction.begun().fault();
    }
    store::Bytes bytes;
    const auto sequence = static_cast<std::int64_t>(entries.size()) + 1;
    auto record =
        recorded(database, recordOf(action, sequence, session, now()), entries.back().digest, change, bytes);
    if (!record) {
        return record.fault();
    }
    if (!record->has_value()) {
        return ChangeSet{};
    }
    ChangeSet changes = store::changeSetOf(bytes);
    // Read before the commit: what cannot be read back is not stored either.
    auto refresh = refreshAfter(database, project, changes, edit);
    if (!refresh) {
        return refresh.fault();
    }
    if (auto committed = transaction.commit(); !committed) {
        return committed.fault();
    }
    refresh->carryOut(project, changes);
    entries.push_back(entryOf(**record));
    undo.add(entries.back());
    return changes;
}

base::Instant Workbook::State::now() const {
    base::Instant time = session.clock.now();
    time.seconds += project::addedNow_s(project, session.machine);
    return time;
}

std::int64_t Workbook::State::firstOf(std::int64_t sequence) const {
    while (sequence > 1 && entries[static_cast<std::size_t>(sequence - 2)].isPartOfMerge) {
        --sequence;
    }
    return sequence;
}

Result<ChangeSet> Workbook::State::takeBack(std::int64_t sequence, bool isRedo) {
    const std::lock_guard held(inUse);
    // A merge is several records and one step.
    std::vector<store::Bytes> steps;
    for (std::int64_t at = firstOf(sequence); at <= sequence; ++at) {
        auto bytes = store::changesetOf(database, at);
        if (bytes && !isRedo) {
            bytes = store::inverted(*bytes);
        }
        if (!bytes) {
            return bytes.fault();
        }
        steps.push_back(std::move(*bytes));
    }
    if (!isRedo) {
        std::reverse(steps.begin(), steps.end());
    }
    Action action{labelOf(sequence), {}, {}, true};
    (isRedo ? action.redoes : action.undoes) = sequence;
    return carryOut(action, nullptr, [&]() -> Outcome {
        for (const store::Bytes& step : steps) {
            if (auto applied = store::applyChangeset(database, step); !applied) {
                return applied;
            }
        }
        return Done{};
    });
}

}  // namespace ww::workbook
