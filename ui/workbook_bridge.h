// The one object that joins the screens to a workbook: intents go in, what changed comes out, by id.
// Not for rules of the trade (balancing/) and not for words (text/).
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/balancing/assess.h"
#include "core/balancing/review_steps.h"
#include "core/balancing/walk.h"
#include "core/balancing/walk_progress.h"
#include "core/pump_room/test_entry.h"
#include "core/workbook/workbook.h"

#include "ui/opening.h"

namespace ww::workbook {
struct SigningRequest;
}

namespace ww::ui {

inline constexpr base::MessageForm kInternalDefect{
    "internal_defect",
    "the program met a defect in itself ({1}); what was stored is safe, close and open the workbook again"};
inline constexpr base::MessageForm kNoRoundOpen{"no_round_open",
                                                "no round is open; open the next round before reading"};
inline constexpr base::MessageForm kRoundNotOpen{
    "round_not_open",
    "round {1} is with the supervisor and takes no more readings here; open the next round"};
inline constexpr base::MessageForm kClosedCorrected{
    "closed_round_corrected",
    "round {1} is closed, so this corrects its reading and the old value stays in the history; for new "
    "readings "
    "take it back (Ctrl+Z) and open the next round (Ctrl+Shift+N)"};
inline constexpr base::MessageForm kBackCorrected{
    "round_back_corrected",
    "round {1} was sent back, so this corrects its reading and the old value stays in the history; say why "
    "in a note (Ctrl+M)"};
inline constexpr base::MessageForm kNobodyChosen{
    "nobody_chosen",
    "no person is chosen at this desk, so readings name nobody; choose one in the menu Round, Person"};
inline constexpr base::MessageForm kNothingToMark{"nothing_to_mark",
                                                  "this valve has no reading in this round; read it first"};
inline constexpr base::MessageForm kNoFixOffered{
    "no_fix_offered", "no other unit or sign would explain this reading; read the valve again"};
inline constexpr base::MessageForm kNoWorkbookOpen{"no_workbook_open",
                                                   "no workbook is open; open one or make a new job"};
inline constexpr base::MessageForm kWorkbookReadOnly{
    "workbook_read_only", "this workbook can only be read here; save a copy and work in that"};

/// Who works at this desk, and where time and ids come from. The references must outlive the bridge.
struct Desk {
    base::Clock& clock;
    base::IdSource& ids;
    std::string person;  ///< name of the account, where nobody of the job is chosen
    std::string machine;
};

/// One workbook at a time. Every intent is on disk when it returns; a refusal is returned and changes
/// nothing.
class WorkbookBridge : public QObject {
    Q_OBJECT

  public:
    explicit WorkbookBridge(Desk desk, QObject* parent = nullptr);
    ~WorkbookBridge() override;

    /// Opens a file in place of the one that is open. Where that fails the open one stays.
    base::Outcome open(const QString& file, workbook::OpenMode mode = workbook::OpenMode::ReadWrite);
    /// The same with one that was begun before.
    base::Outcome open(Opening opening);
    /// How a window waits for work on a large workbook: says the words and does the work.
    /// Without one the work is done at once.
    using Wait = std::function<void(const QString& words, const std::function<void()>& work)>;
    void setWait(Wait wait) { m_wait = std::move(wait); }
    /// Does work that changes nothing of what is shown: the window waits for it where it is long.
    void doWaitedFor(bool isLong, const QString& words, const std::function<void()>& work) const;
    /// Makes a new file and opens it in place of the one that is open.
    base::Outcome create(const QString& file, const project::Edit& content);
    void close();

    bool isOpen() const { return m_workbook != nullptr; }
    /// True where nothing can be stored: no workbook, or one that can only be read.
    bool isReadOnly() const;
    /// Why a workbook opened for writing can only be read; nothing where it can be written.
    std::optional<base::Fault> readOnlyReason() const;
    /// Whether a copy of a workbook that can only be read could be written.
    bool canGoOnInCopy() const;
    QString file() const;
    /// The open workbook; null where none is open.
    const workbook::Workbook* workbook() const { return m_workbook.get(); }

    /// The job; an empty one while no workbook is open.
    const project::Project& project() const;
    /// The last round, or design values alone where there is none; kept until the job changes. The gaps of an
    /// open round are filled with earlier readings. Of the findings only the doubts about single readings,
    /// and no verdict: no key waits for the checks that compare rounds or go through the whole record.
    const balancing::Assessment& assessment() const;
    /// The same with all findings and the verdict, computed at each call.
    balancing::Assessment assessmentInFull() const;
    /// How far the walk of the last round is; of none where there is no round. Kept until the job changes.
    const balancing::WalkProgress& walkProgress() const;
    /// The last round where it is open; null otherwise.
    const project::Round* openRoundOrNull() const;
    /// The last round where what was read in it can still be changed: open, closed, or sent back; null
    /// otherwise.
    const project::Round* roundToCorrectOrNull() const;

    /// Raises the fault of an outcome as a message. Whether there was none.
    bool tell(const base::Outcome& outcome);
    /// The same, and a good outcome ends the message that is shown.
    bool tellOrClear(const base::Outcome& outcome);

    /// Time and label of the newest stored action; nothing while no workbook is open.
    std::optional<workbook::JournalEntry> lastStored() const;
    /// Counts up before changed() is emitted: what was made at the same count was made of the job as it
    /// stands, whoever hears of the change first.
    int changeCount() const { return m_changeCount; }
    /// How many actions were stored since the workbook was opened here.
    int storedCount() const { return m_storedCount; }
    /// The action that could not be stored, until one is stored again.
    const std::optional<base::Fault>& notStored() const { return m_notStored; }
    /// What undo would take back, in the language of the screen; empty where there is nothing to undo.
    QString undoLabel() const;
    QString redoLabel() const;

    /// The branch in hand, shared by all places.
    std::optional<base::Id> selectedBranch() const { return m_selectedBranch; }
    void selectBranch(std::optional<base::Id> branch);
    /// The instrument and the person that go with the next readings.
    std::optional<base::Id> instrument() const;
    std::optional<base::Id> person() const;
    void setInstrument(std::optional<base::Id> instrument);
    /// Whether a reading was taken with another meter than the one chosen: its value read once more is
    /// another reading then.
    bool isWithAnotherMeter(const project::Reading& standing) const;
    /// Readings and journal records name this person from now on; without one readings name nobody, and the
    /// journal the account.
    void setPerson(std::optional<base::Id> person);
    /// Who reads next: the person chosen, unless that one has just decided on the last round; then who read
    /// it.
    std::optional<base::Id> nextReader() const;
    /// Whether the job has people and none of them is chosen here.
    bool isNobodyChosen() const { return !project().people().empty() && !person(); }
    base::Id newId() const { return m_desk.ids.next(); }
    /// The time now, as it is written down in the job (workbook.h); this desk's clock where none is open.
    base::Instant now() const { return m_workbook ? m_workbook->now() : m_desk.clock.now(); }
    /// Who reads with what, and when: for edits that are made outside and carried out by apply().
    balancing::WalkContext context() const;

    /// Carries out any edit; changed() is emitted before it returns.
    base::Outcome apply(const project::Edit& edit);
    base::Outcome undo();
    base::Outcome redo();
    /// Takes over what another copy of this workbook did, as one step for undo; previewMerge() only says what
    /// would come of it.
    base::Result<workbook::MergeReport> merge(const QString& other);
    base::Result<workbook::MergeReport> previewMerge(const QString& other);
    /// Signs a report of this job into a file and notes the signature.
    base::Result<project::SignedReport> signReport(const workbook::SigningRequest& request);
    /// Picks one side of a conflict that merging left open.
    base::Outcome choose(const base::Id& conflict, project::ConflictChoice choice);
    std::vector<project::MergeConflict> openConflicts() const;
    /// The open conflict about two readings of this branch in this round; nothing where there is none.
    std::optional<project::MergeConflict> conflictAt(const base::Id& branch, const base::Id& round) const;
    /// The branch whose record or reading the last undo or redo changed; nothing where it was about something
    /// else.
    std::optional<base::Id> revertedBranch() const { return m_revertedBranch; }

    /// Who acts in a review, and when: the person chosen, else the one whose desk this is.
    balancing::ReviewContext reviewContext() const;

    /// Opens the next round; a witness round draws its sample by chance. `readiness`: "name: reason" for a
    /// survey that begins before the loop is ready. `speeds`: read at the pumps as it is opened.
    base::Outcome openRound(project::RoundKind kind, const QString& readiness = {},
                            const std::vector<pump_room::ReadSpeed>& speeds = {});
    base::Outcome closeRound();
    /// Stores what was typed as the dp of a branch in the open round: digits with an optional unit. Only text
    /// that is no number is refused. Nothing typed, or the value that stands already, changes nothing.
    base::Outcome storeDp(const base::Id& branch, const QString& text);
    /// The same for the flow of a branch that was measured otherwise than by the dp of its valve.
    base::Outcome storeFlow(const base::Id& branch, const QString& text);
    /// Stores what was typed as a second reading beside the first: the mean counts.
    base::Outcome storeRepeat(const base::Id& branch, const QString& text);
    base::Outcome storeSetting(const base::Id& branch, const QString& text);
    /// The valve cannot be read; a reason given at once needs no second question when the round is closed.
    base::Outcome storeCannotBeRead(const base::Id& branch, const QString& reason = {});
    /// The branches of the open round that balancing::notTurned() names; none without an open round.
    std::vector<base::Id> notTurned() const;
    /// Gives all of them this reason as one action.
    base::Outcome storeNotTurned();
    /// Stores a column of typed values at these branches as one action, a dp or, where a dp gives no flow,
    /// the flow; the first that is no number refuses all.
    base::Outcome storeColumn(const std::vector<base::Id>& branches, const QStringList& texts);
    base::Outcome giveReason(const base::Id& reading, const QString& reason);
    /// Marks the counting reading of a branch doubtful, or takes the mark back.
    base::Outcome toggleDoubtful(const base::Id& branch);
    base::Outcome setNote(const base::Id& branch, const QString& note);
    /// Takes the offered fix of the counting reading of a branch.
    base::Outcome takeOfferedFix(const base::Id& branch);
    /// The fix that takeOfferedFix() would take; nothing where nothing fits.
    std::optional<balancing::OfferedFix> offeredFix(const base::Id& branch) const;

    /// Writes a whole copy under another name; the open workbook stays.
    base::Outcome saveCopy(const QString& file) const;
    /// Writes a whole copy, goes on in it, and stores there what could not be stored here.
    base::Outcome goOnIn(const QString& file);

  signals:
    /// What changed in the job. Empty lists mean: everything (another workbook).
    void changed(const ww::project::ChangeSet& changes);
    /// After changed(): this came from undo or redo, so that a place can show it.
    void reverted(const ww::project::ChangeSet& changes);
    void branchSelected();
    void instrumentChanged();
    /// A message to be shown in the reserved line, and the end of one.
    void messageRaised(const ww::base::Fault& fault);
    void messageCleared();

  private:
    using Made = base::Result<project::Edit>;

    balancing::Assessment assessed(bool isNumbersOnly) const;
    base::Outcome guarded(const std::function<base::Outcome()>& action) const;
    base::Outcome applyMade(const std::function<Made(const project::Round&)>& make);
    base::Outcome took(const base::Result<project::ChangeSet>& result, bool isReverted);
    base::Outcome revert(base::Result<project::ChangeSet> (workbook::Workbook::*step)());
    base::Outcome editReading(const base::Id& branch,
                              const std::function<Made(const project::Reading&)>& make);
    base::Result<const project::Round*> roundForReadings() const;
    /// What was typed as a dp, or as a flow in the unit that the job shows.
    base::Result<quantity::Measured<quantity::PressureDifference>> typedDp(const QString& text) const;
    base::Result<quantity::Measured<quantity::VolumeFlow>> typedFlow(const QString& text) const;
    /// The edit that stores what was typed at a branch of `after`: a dp or, where a dp gives no flow, the
    /// flow.
    Made readingTyped(const project::Project& after, const project::Round& round, const base::Id& branch,
                      const QString& text) const;
    /// The window waits for what a merge with that copy reads.
    workbook::WorkRunner runnerOfMerge(const QString& other) const;
    void takeOver(std::unique_ptr<workbook::Workbook> workbook);
    /// The journal names who is chosen, by the name that the job gives now.
    void followPerson();

    Desk m_desk;
    Wait m_wait;
    std::unique_ptr<workbook::Workbook> m_workbook;
    project::Project m_none;
    mutable std::optional<balancing::Assessment> m_assessment;
    mutable std::optional<balancing::WalkProgress> m_walkProgress;
    mutable balancing::RoundMemory m_roundMemory;
    std::optional<base::Fault> m_notStored;
    std::vector<project::Edit> m_unstored;  ///< since m_notStored was set
    std::optional<base::Id> m_selectedBranch;
    std::optional<base::Id> m_instrument;
    std::optional<base::Id> m_person;
    std::optional<base::Id> m_revertedBranch;
    int m_storedCount = 0;
    int m_changeCount = 0;
};

}  // namespace ww::ui
