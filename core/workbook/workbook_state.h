// An open workbook from inside: the file, the job in memory, and how an action goes into both at once.
// Not for what is asked of it from outside (workbook.h).
#pragma once

#include <functional>
#include <mutex>

#include "core/store/changeset.h"
#include "core/store/database.h"
#include "core/store/journal.h"
#include "core/store/owner_lock.h"
#include "core/store/record_writer.h"
#include "core/store/schema.h"
#include "core/workbook/undo_state.h"
#include "core/workbook/workbook.h"

namespace ww::workbook {

/// Facts about the file that its table meta keeps.
inline constexpr std::string_view kIdKey = store::kWorkbookIdKey;
inline constexpr std::string_view kNeedsKey = "needs_version";

/// What is written into a journal record beside the changes.
struct Action {
    std::string label;
    std::optional<std::int64_t> undoes;
    std::optional<std::int64_t> redoes;
    bool canUndo = true;
};

/// A journal record without its changes, as people see it.
JournalEntry entryOf(const store::JournalRecord& record);

/// A journal record of the action by the session's person; its digest is not set yet.
store::JournalRecord recordOf(const Action& action, std::int64_t sequence, const Session& session,
                              const base::Instant& time);

/// Changes the tables as `change` says and writes the journal record of it, inside a transaction that is
/// open. `bytes` are the changes then. Nothing where nothing changed, unless a record without changes is
/// wanted.
base::Result<std::optional<store::JournalRecord>> recorded(store::Database& database,
                                                           store::JournalRecord record,
                                                           const base::Digest& previous,
                                                           const std::function<base::Outcome()>& change,
                                                           store::Bytes& bytes, bool mayBeEmpty = false);

/// Carries an edit out in the tables: what goes first, then what comes.
base::Outcome write(store::RecordWriter& writer, const project::Edit& edit);

struct Workbook::State {
    State(Session s, std::filesystem::path f, store::Database d)
        : session(std::move(s)), file(std::move(f)), database(std::move(d)), writer(database) {}

    Session session;
    std::filesystem::path file;
    std::optional<store::OwnerLock> lock;
    store::Database database;
    /// Held while the database is used: a window may ask for a history while its merge or its copy is made on
    /// another thread.
    mutable std::recursive_mutex inUse;
    store::RecordWriter writer;
    project::Project project;
    std::vector<JournalEntry> entries;
    UndoState undo;
    base::Id workbookId;
    bool isReadOnly = false;
    std::optional<ReadOnlyReason> reason;

    /// Takes entries, records and identity from the file; checks the chain on the way.
    base::Outcome load();
    /// The rows must follow from the journal; else the first that does not. A newer schema is not checked.
    base::Outcome checkRows() const;
    /// One transaction: the change, its journal record, and memory after it. `edit` is what `change` writes,
    /// where it is an edit.
    base::Result<project::ChangeSet> carryOut(const Action& action, const project::Edit* edit,
                                              const std::function<base::Outcome()>& change);
    /// Takes back the changes of a journal record, or applies them again, as a new record.
    base::Result<project::ChangeSet> takeBack(std::int64_t sequence, bool isRedo);
    base::Result<MergeReport> merge(const std::filesystem::path& other, bool isPreview,
                                    const WorkRunner& run);
    class Merging;
    struct PreparedMerge;
    base::Outcome prepareMerge(const std::filesystem::path& other, PreparedMerge& merge);
    class Choosing;
    /// The first record of the step that this record ends: itself, or the first that a merge took over.
    std::int64_t firstOf(std::int64_t sequence) const;
    const std::string& labelOf(std::int64_t sequence) const {
        return entries[static_cast<std::size_t>(sequence - 1)].label;
    }
    /// The one place that gives the time: the machine's clock and what this job adds to it.
    base::Instant now() const;
    base::Fault readOnlyFault() const {
        return reason ? reason->fault : base::Fault{&kOpenedForReading, file.string(), {}};
    }
};

}  // namespace ww::workbook
