// One opened job: the project in memory, its file, and the only door through which the job changes.
// Not for rules of the trade beyond the locks of rounds.
#pragma once

#include <filesystem>
#include <functional>
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
    bool helpsToCopy = false;  ///< a copy elsewhere could be written: all but the newer schema
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
    bool isPartOfMerge = false;  ///< taken over from another laptop; undone with the merge that follows
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

inline constexpr base::MessageForm kNotACopy{
    "merge_not_a_copy",
    "this is not a copy of the open workbook: their journals have no record in common; choose the file that "
    "the other laptop worked in"};
inline constexpr base::MessageForm kMergeWithItself{
    "merge_with_itself",
    "a workbook cannot be merged with itself; choose the copy that the other laptop worked in"};
inline constexpr base::MessageForm kMergeUnfit{
    "merge_unfit",
    "the changes of the other copy do not fit together ({1}), so nothing was taken over; verify both files"};
inline constexpr base::MessageForm kConflictUnknown{
    "conflict_unknown", "this conflict is not in the job any more; look at the list again"};
inline constexpr base::MessageForm kCannotKeepBoth{"conflict_not_both",
                                                   "both values cannot stand here; choose one of them"};
inline constexpr base::MessageForm kChoiceSealed{
    "choice_in_sealed_round",
    "round {1} is {2w}, so nothing in it is chosen; withdraw that first, with a reason"};

/// Does a long work and comes back when it is done: at once, or on another thread for which this one waits.
using WorkRunner = std::function<void(const std::function<void()>& work)>;
inline void runAtOnce(const std::function<void()>& work) {
    work();
}

/// What came of merging another copy.
struct MergeReport {
    std::string person;       ///< who did the newest action there
    std::string machine;      ///< and on which machine
    std::size_t actions = 0;  ///< journal records taken over; 0: the other copy had nothing new
    std::size_t readingsAdded = 0;
    std::size_t readingsIdentical = 0;              ///< places read on both sides with the same values
    std::vector<project::MergeConflict> conflicts;  ///< new ones, all open
    project::ChangeSet changes;
};

/// Whether both texts of a conflict about this field can stand together: notes and reasons.
bool canKeepBoth(const project::MergeConflict& conflict);

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
    /// Opens a file after checking its integrity, its whole journal chain, and that every row follows from
    /// the journal. A damaged or changed file is refused with what was found; it is never opened half.
    static base::Result<std::unique_ptr<Workbook>> open(const std::filesystem::path& file, OpenMode mode,
                                                        Session session);

    /// The job as it stands; changed only by apply(), undo(), redo(), a merge and a choice.
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

    /// Takes over what another copy of this workbook did since both were one: each of its actions as a record
    /// of its own that keeps person, machine and time, all of them one step for undo. Of a field that both
    /// changed ours stands, both values are kept as a MergeConflict, and a person picks with choose(). The
    /// other file is only read. Fails, changing nothing, where it is no copy of this workbook (kNotACopy), is
    /// damaged, or was written by a newer program.
    /// `run` is given the long part, which changes nothing of what project() and journal() show.
    base::Result<MergeReport> merge(const std::filesystem::path& other, const WorkRunner& run = runAtOnce);
    /// What merge() would do; nothing is stored.
    base::Result<MergeReport> previewMerge(const std::filesystem::path& other,
                                           const WorkRunner& run = runAtOnce);
    /// Puts one side's value of a conflict, or both texts one below the other, as one action; the other value
    /// stays in the conflict and in the journal. Fails where the conflict is not there, both cannot stand, or
    /// the value would break a rule of the job.
    base::Result<project::ChangeSet> choose(const base::Id& conflict, project::ConflictChoice choice);

    /// Who is written into the journal records from now on.
    void setPerson(std::string person);

    /// All journal entries, oldest first. Good until the next change.
    const std::vector<JournalEntry>& journal() const;
    /// The newest entry: its time and label are what "last stored" shows.
    const JournalEntry& newestEntry() const;
    /// The identity of this workbook, the same in all its copies.
    base::Id workbookId() const;

    /// Every version of all records of a kind that there ever were, undone ones too, in the journal's order.
    /// Values of heads are those under the present fluid.
    base::Result<std::vector<std::pair<project::RecordRef, RecordVersion>>> historyOfAll(
        project::RecordKind kind) const;
    /// The job as it stood after a journal entry; the entry must exist.
    base::Result<project::Project> asItStoodAfter(std::int64_t sequence) const;

    /// Writes a whole copy under another name: temporary name, synced, then renamed. The open workbook stays.
    base::Outcome saveCopy(const std::filesystem::path& file) const;

    base::IdSource& ids() const;
    /// The time now: the machine's own clock, and what was set to be added to it for this job. Whatever is
    /// written down in a job takes its time from here.
    base::Instant now() const;
    /// The machine's own clock as it stands.
    base::Instant ownClock() const;
    /// The name of this machine in the journal.
    const std::string& machine() const;
    /// The edit that sets this machine's clock for this job: `stated` is the true time now. The difference is
    /// kept to the whole minute; less than half a minute adds nothing and takes back what was added before.
    /// It names the times in the journal that the wrong clock wrote, as far as they can be told; they stay.
    project::Edit settingOfClock(const base::Instant& stated) const;

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
