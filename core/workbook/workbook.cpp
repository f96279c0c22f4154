#include "core/workbook/workbook.h"

#include <fcntl.h>
#include <unistd.h>

#include <algorithm>
#include <unordered_set>

#include "core/base/term.h"
#include "core/store/changeset_form.h"
#include "core/store/file_steps.h"
#include "core/store/migration.h"
#include "core/store/open_file.h"
#include "core/store/record_reader.h"
#include "core/store/replay.h"
#include "core/store/schema.h"
#include "core/store/store_messages.h"
#include "core/workbook/edit_rules.h"
#include "core/workbook/kept_designs.h"
#include "core/workbook/workbook_state.h"

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

bool canWrite(const std::filesystem::path& file) {
    const std::filesystem::path folder = file.parent_path().empty() ? "." : file.parent_path();
    const auto may = [](const std::filesystem::path& path) {
        return ::faccessat(AT_FDCWD, path.c_str(), W_OK, AT_EACCESS) == 0;
    };
    return may(file) && may(folder);
}

/// The tables, the facts about the file, the content, and the first journal record.
Outcome fill(store::Database& database, const Edit& content, const Session& session) {
    if (auto made = store::createCurrentSchema(database); !made) {
        return made;
    }
    store::Transaction transaction(database);
    if (!transaction.begun()) {
        return transaction.begun();
    }
    store::RecordWriter writer(database);
    const std::string id = session.ids.next().text();
    const auto change = [&]() -> Outcome {
        if (auto put = writer.putMeta(kIdKey, id); !put) {
            return put;
        }
        if (auto put = writer.putMeta(kNeedsKey, store::kSchemaNeeds); !put) {
            return put;
        }
        return write(writer, content);
    };
    store::Bytes bytes;
    // A workbook without its job is none, so its first record cannot be taken back.
    const Action action{content.label, {}, {}, false};
    auto record =
        recorded(database, recordOf(action, 1, session, session.clock.now()), base::Digest{}, change, bytes);
    if (!record) {
        return record.fault();
    }
    return transaction.commit();
}

}  // namespace

Workbook::Workbook(std::unique_ptr<State> state) : m_state(std::move(state)) {}
Workbook::~Workbook() = default;

Result<std::unique_ptr<Workbook>> Workbook::create(const std::filesystem::path& file, const Edit& content,
                                                   Session session) {
    if (auto refused = refusalOfContent(content)) {
        return *refused;
    }
    std::error_code ignored;
    if (std::filesystem::exists(file, ignored)) {
        return Fault{&store::kFileExists, file.string(), {}};
    }
    // Made whole under another name, so that whatever happens no half workbook has this one.
    const auto part = store::nameBeside(file);
    const auto make = [&]() -> Outcome {
        auto database = store::Database::open(part, store::Access::Create);
        return database ? fill(*database, content, session) : Outcome(database.fault());
    };
    Outcome made = make();
    made = made ? store::moveToNewName(part, file) : made;
    if (!made) {
        store::removeDatabaseFile(part);
        Fault fault = made.fault();
        // The name beside means nothing to the person.
        fault.subject = fault.subject == part.string() ? file.string() : fault.subject;
        return fault;
    }
    return open(file, OpenMode::ReadWrite, std::move(session));
}

Result<std::unique_ptr<Workbook>> Workbook::open(const std::filesystem::path& file, OpenMode mode,
                                                 Session session) {
    std::error_code ignored;
    if (!std::filesystem::is_regular_file(file, ignored)) {
        const bool isThere = std::filesystem::exists(file, ignored);
        return Fault{isThere ? &store::kNotAWorkbook : &store::kFileMissing, file.string(), {}};
    }
    std::optional<store::OwnerLock> lock;
    std::optional<ReadOnlyReason> reason;
    if (mode == OpenMode::ReadWrite) {
        if (!canWrite(file)) {
            reason = ReadOnlyReason{{&store::kFolderUnwritable, file.string(), {}}, true};
        } else if (auto taken = store::OwnerLock::take(
                       file, {session.person, session.machine, ::getpid(), session.clock.now()});
                   taken) {
            lock.emplace(std::move(*taken));
        } else {
            reason = ReadOnlyReason{taken.fault(), true};
        }
    }
    auto opened = store::openWorkbookFile(file, lock ? store::Access::Write : store::Access::Read);
    if (!opened) {
        return opened.fault();
    }
    auto state = std::make_unique<State>(std::move(session), file, std::move(opened->database));
    if (auto loaded = state->load(); !loaded) {
        return loaded.fault();
    }
    if (opened->isNewer) {
        auto needs = store::readMeta(state->database, kNeedsKey);
        const std::string version = needs && *needs ? **needs : "?";
        lock.reset();
        if (mode == OpenMode::ReadWrite) {
            reason = ReadOnlyReason{{&store::kNewerSchema, file.string(), {version}}};
        }
    }
    state->isReadOnly = !lock;
    state->lock = std::move(lock);
    state->reason = std::move(reason);
    return std::unique_ptr<Workbook>(new Workbook(std::move(state)));
}

const Project& Workbook::project() const {
    return m_state->project;
}

const std::filesystem::path& Workbook::file() const {
    return m_state->file;
}

bool Workbook::isReadOnly() const {
    return m_state->isReadOnly;
}

const std::optional<ReadOnlyReason>& Workbook::readOnlyReason() const {
    return m_state->reason;
}

Result<ChangeSet> Workbook::apply(const Edit& edit) {
    if (m_state->isReadOnly) {
        return m_state->readOnlyFault();
    }
    if (edit.isEmpty()) {
        return ChangeSet{};
    }
    if (auto refused = refusal(m_state->project, edit)) {
        return *refused;
    }
    const Action action{edit.label, {}, {}, edit.canUndo && !movesReview(m_state->project, edit)};
    const std::optional<Edit> kept = withKeptDesigns(m_state->project, edit);
    const Edit& whole = kept ? *kept : edit;
    return m_state->carryOut(action, &whole, [&] { return write(m_state->writer, whole); });
}

Result<ChangeSet> Workbook::undo() {
    if (m_state->isReadOnly) {
        return m_state->readOnlyFault();
    }
    const auto sequence = m_state->undo.toUndo();
    if (!sequence) {
        return Fault{&kNothingToUndo, m_state->file.string(), {}};
    }
    return m_state->takeBack(*sequence, false);
}

Result<ChangeSet> Workbook::redo() {
    if (m_state->isReadOnly) {
        return m_state->readOnlyFault();
    }
    const auto sequence = m_state->undo.toRedo();
    if (!sequence) {
        return Fault{&kNothingToRedo, m_state->file.string(), {}};
    }
    return m_state->takeBack(*sequence, true);
}

std::optional<std::string> Workbook::undoLabel() const {
    const auto sequence = m_state->undo.toUndo();
    return sequence ? std::optional(m_state->labelOf(*sequence)) : std::nullopt;
}

std::optional<std::string> Workbook::redoLabel() const {
    const auto sequence = m_state->undo.toRedo();
    return sequence ? std::optional(m_state->labelOf(*sequence)) : std::nullopt;
}

void Workbook::setPerson(std::string person) {
    m_state->session.person = std::move(person);
}

const std::vector<JournalEntry>& Workbook::journal() const {
    return m_state->entries;
}

const JournalEntry& Workbook::newestEntry() const {
    return m_state->entries.back();
}

Id Workbook::workbookId() const {
    return m_state->workbookId;
}

namespace {

using Versions = std::vector<std::pair<project::RecordRef, RecordVersion>>;

/// Every version of the records of a kind, without what they refer to.
Result<Versions> versionsOf(const store::Database& database, quantity::Density density,
                            project::RecordKind kind) {
    auto made = store::emptyInCurrentSchema();
    if (!made) {
        return made.fault();
    }
    store::Database copy = std::move(*made);
    if (auto off = copy.execute("PRAGMA foreign_keys=OFF"); !off) {
        return off.fault();
    }
    // A changeset names its tables: most records are of others, and are not read.
    std::string named;
    for (const store::RecordedTable& table : store::recordedTables()) {
        if (table.kind == kind) {
            named += (named.empty() ? "" : " OR ") + std::string("instr(changeset, CAST('") +
                     std::string(table.name) + "' AS BLOB)) > 0";
        }
    }
    auto journal =
        database.prepare("SELECT sequence, changeset FROM journal WHERE " + named + " ORDER BY sequence");
    if (!journal) {
        return journal.fault();
    }
    Versions versions;
    store::Step step = journal->step();
    for (; step == store::Step::Row; step = journal->step()) {
        const auto changeset = store::changesOfTables(journal->blob(1), [&](std::string_view name) {
            const store::RecordedTable* table = store::recordedTable(name);
            return table != nullptr && table->kind == kind;
        });
        std::vector<project::RecordRef> touched;
        std::unordered_set<Id> seen;
        store::ChangesetReader reader(changeset);
        while (reader.next()) {
            if (const auto id = reader.recordId(); id && seen.insert(*id).second) {
                touched.push_back({kind, *id});
            }
        }
        if (touched.empty()) {
            continue;
        }
        if (auto applied = store::applyWhatFits(copy, changeset); !applied) {
            return applied.fault();
        }
        for (const project::RecordRef& ref : touched) {
            auto read = store::readRecord(copy, ref, density);
            if (!read) {
                return read.fault();
            }
            versions.push_back({ref, {journal->integer(0), std::move(*read)}});
        }
    }
    if (step == store::Step::Failed) {
        return database.fault();
    }
    return versions;
}

}  // namespace

Result<Versions> Workbook::historyOfAll(project::RecordKind kind) const {
    const std::lock_guard held(m_state->inUse);
    return versionsOf(m_state->database, m_state->project.fluid().density(), kind);
}

Result<Project> Workbook::asItStoodAfter(std::int64_t sequence) const {
    EXPECTS(sequence >= 1 && sequence <= static_cast<std::int64_t>(m_state->entries.size()));
    const std::lock_guard held(m_state->inUse);
    auto copy = store::replayed(m_state->database, sequence);
    if (!copy) {
        return copy.fault();
    }
    return store::readProject(*copy);
}

Outcome Workbook::saveCopy(const std::filesystem::path& file) const {
    std::error_code ignored;
    if (std::filesystem::equivalent(file, m_state->file, ignored)) {
        return Fault{&kCopyOntoItself, file.string(), {}};
    }
    // A workbook that is open somewhere is not replaced under its program.
    auto lock = store::OwnerLock::take(
        file, {m_state->session.person, m_state->session.machine, ::getpid(), m_state->session.clock.now()});
    if (!lock) {
        return lock.fault().is(store::kHeldElsewhere) ? lock.fault()
                                                      : Fault{&store::kFileUnwritable,
                                                              file.string(),
                                                              {base::term("its folder cannot be written")}};
    }
    const std::lock_guard held(m_state->inUse);
    const auto part = store::nameBeside(file);
    Outcome copied = m_state->database.copyInto(part);
    copied = copied ? store::moveReplacing(part, file) : copied;
    if (!copied) {
        store::removeDatabaseFile(part);
    }
    return copied;
}

base::IdSource& Workbook::ids() const {
    return m_state->session.ids;
}

base::Instant Workbook::now() const {
    return m_state->now();
}

base::Instant Workbook::ownClock() const {
    return m_state->session.clock.now();
}

const std::string& Workbook::machine() const {
    return m_state->session.machine;
}

}  // namespace ww::workbook
