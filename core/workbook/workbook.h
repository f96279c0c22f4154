// One opened job: the project in memory, its file, and the only door through which the job changes.
// Not for rules of the trade beyond the locks of rounds.
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/base/digest.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::workbook {

/// Who works on the file and where time and ids come from. The references must outlive the workbook.
struct Session {
    base::Clock& clock;
    base::IdSource& ids;
    std::string person;   ///< written into every journal record
    std::string machine;  ///< likewise
};

enum class OpenMode {
    ReadWrite,  ///< takes the owner lock; falls back to reading only where another program holds it
    ReadOnly,
};

/// Why a workbook that was opened for writing can only be read.
struct ReadOnlyReason {
    base::Fault fault;  ///< open elsewhere (holder, machine, since when), folder not writable, newer schema
};

/// One line of the journal, without its changes.
struct JournalEntry {
    std::int64_t sequence = 0;
    base::Instant time;
    std::string person;
    std::string machine;
    std::string label;
    std::optional<std::int64_t> undoes;  ///< the record whose changes this one takes back
    std::optional<std::int64_t> redoes;  ///< the record whose changes this one applies again
    bool canUndo = true;
    base::Digest digest;
};

/// A record as one journal entry left it.
struct RecordVersion {
    std::int64_t sequence = 0;                 ///< of the journal entry
    std::optional<project::AnyRecord> record;  ///< nothing: erased
};

inline constexpr base::MessageForm kOpenedForReading{
    "opened_for_reading",
    "this job was opened for reading only, so nothing was stored; open it for changes first"};
inline constexpr base::MessageForm kNothingToUndo{
    "nothing_to_undo", "there is no action that can be taken back; go on with the work"};
inline constexpr base::MessageForm kNothingToRedo{
    "nothing_to_redo", "no action was taken back last; there is nothing to do again"};
inline constexpr base::MessageForm kCopyOntoItself{
    "copy_onto_itself", "a workbook cannot be copied onto itself; choose another name"};

/// An open workbook. Every change is on disk when apply(), undo() or redo() returns.
class Workbook {
  public:
    ~Workbook();
    Workbook(const Workbook&) = delete;
    Workbook& operator=(const Workbook&) = delete;

    /// Makes a new file holding what `content` puts (exactly one Job among it). Fails, leaving nothing
    /// behind, where the file exists or cannot be written.
    static base::Result<std::unique_ptr<Workbook>> create(const std::filesystem::path& file,
                                                          const project::Edit& content, Session session);
    /// Opens a file after checking its integrity and its whole journal chain. A damaged file is refused with
    /// what was found; it is never opened half.
    static base::Result<std::unique_ptr<Workbook>> open(const std::filesystem::path& file, OpenMode mode,
                                                        Session session);

    const project::Project& project() const;
    const std::filesystem::path& file() const;
    bool isReadOnly() const;
    /// Set where writing was asked for and could not be had.
    const std::optional<ReadOnlyReason>& readOnlyReason() const;

    /// Carries out an edit as one transaction and one journal record. An edit that changes nothing leaves no
    /// record. Refused where it would touch a locked round (a closed round takes only superseding readings,
    /// an accepted one none), break a reference, repeat a tag or a round number, or the file cannot be
    /// written.
    base::Result<project::ChangeSet> apply(const project::Edit& edit);
    /// Takes back the newest action that is not yet taken back, as a new journal record. Fails where there is
    /// none.
    base::Result<project::ChangeSet> undo();
    /// Applies again what was last undone, as a new journal record. Fails where there is none.
    base::Result<project::ChangeSet> redo();
    /// Label of the action that undo() would take back; nothing where there is none.
    std::optional<std::string> undoLabel() const;
    std::optional<std::string> redoLabel() const;

    /// All journal entries, oldest first.
    std::vector<JournalEntry> journal() const;
    /// The newest entry: its time and label are what "last stored" shows.
    const JournalEntry& newestEntry() const;
    /// The identity of this workbook, the same in all its copies.
    base::Id workbookId() const;

    /// Every version of one record, oldest first; empty where there never was one. Values of heads are those
    /// under the present fluid.
    base::Result<std::vector<RecordVersion>> historyOf(const project::RecordRef& record) const;
    /// The job as it stood after a journal entry; the entry must exist.
    base::Result<project::Project> asItStoodAfter(std::int64_t sequence) const;

    /// Writes a whole copy under another name: temporary name, synced, then renamed. The open workbook stays.
    base::Outcome saveCopy(const std::filesystem::path& file) const;

    base::IdSource& ids() const;
    base::Clock& clock() const;

  private:
    struct State;
    explicit Workbook(std::unique_ptr<State> state);
    std::unique_ptr<State> m_state;
};

/// What verifying a workbook found (contract: `verify FILE.wwj`).
struct Verification {
    bool isIntact = false;
    std::int64_t journalRecords = 0;
    std::optional<std::int64_t> firstBadRecord;
    std::vector<base::Fault> findings;
};

/// Checks file integrity and the chain, replays the journal into an empty database and compares every table:
/// a row that does not follow from the journal is named. Fails only where the file cannot be read at all.
base::Result<Verification> verify(const std::filesystem::path& file);

}  // namespace ww::workbook
