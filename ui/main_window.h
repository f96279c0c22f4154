// The window of one workbook: places at the side, menus, the job strip, the reserved line and the key line.
// Holds no rule of the trade.
#pragma once

#include <QLabel>
#include <QMainWindow>
#include <QPushButton>
#include <QSet>
#include <QStackedWidget>
#include <QTimer>
#include <array>
#include <filesystem>
#include <functional>
#include <vector>

#include "ui/assessed_rounds.h"
#include "ui/commands.h"
#include "ui/import/import_source.h"
#include "ui/loop_advisor.h"
#include "ui/merge/merge_dialog.h"
#include "ui/practice/practice_desk.h"
#include "ui/preferences.h"
#include "ui/pump_advisor.h"
#include "ui/widgets/job_strip.h"
#include "ui/widgets/key_line.h"
#include "ui/widgets/notice_line.h"
#include "ui/widgets/number_pad.h"
#include "ui/widgets/side_list.h"
#include "ui/window_look.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

class AdjustPlace;
class DecisionPanel;
class HandbookWindow;
class JobPlace;
class PumpPlace;
class ReadyList;
class ReportPlace;
class ReviewPlace;
class SystemPlace;
class WalkPlace;

class MainWindow : public QMainWindow {
    Q_OBJECT

  public:
    /// The places in the order of the side list.
    enum Place { Job, System, Walk, Adjust, Pump, Review, Report };

    /// `preferences` must outlive the window.
    MainWindow(Desk desk, Preferences& preferences, QWidget* parent = nullptr);
    ~MainWindow() override;

    WorkbookBridge& bridge() { return m_bridge; }
    const Commands& commands() const { return *m_commands; }
    /// A place, made when it is first wanted: a window opens with one and most days need few.
    JobPlace* job();
    SystemPlace* system();
    WalkPlace* walk();
    AdjustPlace* adjust();
    PumpPlace* pump();
    ReviewPlace* review();
    ReportPlace* report();
    LoopAdvisor& advisor() { return m_advisor; }

    /// Opens a workbook in this window; a refusal is shown in the reserved line.
    bool openFile(const QString& file);
    /// The same with one that was begun before.
    bool openFile(Opening opening);
    /// Opens a workbook that the last session left open, and says what was stored in it last. One that is
    /// gone, or that can only be read as another program holds it, is told in the reserved line, and no
    /// workbook is open then.
    bool reopenFile(Opening opening);
    /// Shows what merging another copy would do, and does it when that is wanted.
    void mergeFile(const QString& copy);
    /// Looks at a CSV or XLSX file and brings a table of it into the job.
    void importFile(const QString& file);
    void showPlace(Place place);
    Place place() const;
    void setDisplay(theme::Display display);
    void setTextPoints(double points);
    /// Stores what is typed but not entered yet as Enter does, before the window or the session ends. False:
    /// a text was refused; its field is shown with it and has the keys.
    bool storeTyped();
    /// Made when it is first asked for.
    NumberPad* pad();
    /// Whether the side list and the menus are folded into a button, for want of room.
    bool isSmall() const { return m_isSmall; }
    QString notice() const { return m_notice->message(); }

  signals:
    /// Another workbook is wanted while this window already has one.
    void anotherWindowWanted(const QString& file);

  protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;
    /// Tab goes through the window as it is read, whatever was made first.
    bool focusNextPrevChild(bool isForward) override;

  private:
    static constexpr int kPlaces = 7;
    /// A place as the window handles it; empty until it is made.
    struct PlaceEntry {
        QWidget* widget = nullptr;
        std::function<void(const Look&)> setLook;
        std::function<void()> takeFocus;
        std::function<KeyHints(const QWidget* inHand)> hint;
    };

    void buildFrame();
    /// What stands ready for each place until it is made: its name, its key, an area of the stack.
    void buildShelves();
    /// The place, made and fitted in where it is not there yet.
    QWidget* made(Place place);
    PlaceEntry newPlace(Place place, QWidget* shelf);
    /// Puts what holds a place where the stack kept room for it; what is shown stays.
    void putOnShelf(Place place, QWidget* area);
    template <class Widget>
    PlaceEntry entryOf(Widget* widget, std::function<KeyHints(const QWidget*)> hint);
    /// The place if it is made, else null.
    template <class Widget>
    Widget* there(Place place) const {
        return static_cast<Widget*>(m_places[place].widget);
    }
    /// What is done once for all that a place holds: letters under Alt, Enter on buttons, gaps.
    void settle(QWidget& place);
    /// Large targets stand apart.
    void keepGaps();
    void connectFileCommands();
    void connectEditCommands();
    void connectWalkCommands();
    void connectAdjustCommands();
    void connectViewCommands();
    void connectReviewCommands();
    void connectPumpCommands();
    void connectReportCommands();
    /// A line of what is missing before signing leads to its place.
    void connectReadyList(const ReadyList& ready);
    void connectHelpCommands();
    void goToOpenItem(bool isForward);
    /// Says how many comments are open, and which key leads to the first; nothing where none is.
    void tellOpenComments();
    /// Goes to what a comment is about, and shows it.
    void showComment(const project::Comment& comment);
    /// The side list says how many comments are open.
    void countOpenComments();
    /// Where nothing waits: what comes next.
    void sayNextStep();
    /// Says that a valve is not read in the open round, where it is not.
    void tellUnread(const base::Id& branch);
    void connectClipboardCommands();
    void showPreferences();
    void showHistory();
    void listDeficiency();
    /// The round that sending and accepting act on: the one that Review shows, elsewhere the newest.
    const project::Round* roundToDecide() const;
    /// Brings that round to the place Review and does there what the button does.
    void onDecision(QAction* action, void (DecisionPanel::*step)());
    void refreshReviewCommands();
    /// Whether the newest action is one of a review, which is withdrawn and not undone.
    bool isReviewStepNewest() const;
    void tellOfWithdrawing();
    void onWalk(QAction* action, void (WalkPlace::*slot)());
    /// The same after what is typed is stored; where that is refused its field is shown instead.
    void onWalkOnceStored(QAction* action, void (WalkPlace::*slot)());
    void refresh();
    void refreshCommands();
    void refreshKeyLine();
    /// The keys that act in a place that has no say of its own in them, while this control has them.
    KeyHints usualHint(Place place, const QWidget* inHand) const;
    /// The line of keys follows what has them and what is typed there.
    void connectKeyLine();
    /// Whether the key that takes the practice meter's value acts where the place stands.
    bool takesMeter() const;
    void refreshStrip();
    void refreshRecent();
    void fillLanguages();
    void followLanguage();
    void refreshPeopleAndMeters();
    void applyLook();
    /// As wide as its longest item needs.
    void fitSideList();
    void setLargeTargets(bool isLarge);
    /// Folds the side list and the menus away where the window is small or targets are large.
    void arrange();
    /// What the pad types goes to the field in hand.
    void typeFromPad(int key, const QString& text);
    void showReverted(const project::ChangeSet& changes);
    /// Takes back or does again, and says what it was where that is seen in another place.
    void revert(base::Outcome (WorkbookBridge::*step)(), const base::MessageForm& done, const QString& label);
    /// Says what was typed in a place that was left and is not stored: it stays there to be mended.
    void tellLeftBehind(const QWidget& place);
    /// Goes to a field whose text was refused; false where it cannot be seen any more.
    bool showRefused(QWidget* field);
    /// Who works in this workbook here, as the desk remembers it.
    void recallPerson();
    void rememberPerson();
    /// Keeps at the desk what is typed in the walk and not entered, and forgets it once nothing is.
    void followTyped();
    void keepDrafts();
    /// What was typed in this workbook before and never entered stands in its cells again. It is no reading
    /// until a person enters it.
    void offerDrafts();
    /// Says which job was open here last, while none is.
    void tellLastJob();
    /// Keeps in the preferences that the workbook of this window is open for changes, and which no more.
    void followOpened();
    /// Shows what was opened from a file, or why nothing was. Whether it was.
    bool followOpening(const QString& file, const base::Outcome& opened);
    void rememberOpened();
    void rememberClosed();
    /// That the clock stands before what was stored last, or that something is added to it, where that is so.
    void tellClock();
    void connectClockCommand();
    /// Shows a message in the reserved line. It goes when a person goes to another place, unless it is about
    /// storing, the clock or who works here.
    void raise(const base::Fault& fault);
    bool isNoticeOfOtherValve() const;
    void endNoticeOfValve();
    /// What counts at the valve that the message is about; nothing where it is about none.
    std::optional<project::Reading> readingOfNotice() const;
    /// Ends the message in the reserved line where what it speaks of is settled by a change: a reading is no
    /// longer the one that was spoken of, the round is another one or in another state.
    void endSettledNotice(const project::ChangeSet& changes);
    /// What to do about an action that the file did not take.
    static base::Fault onlyInMemory(const base::Fault& fault);
    void refreshReadOnly();
    /// A person goes to a place.
    void goTo(Place place);
    bool canTake(const QString& file) const;
    void newJob();
    void newJobFromTables();
    void storeCheckpoint(const QString& name);
    void newJobFromSample();
    void createFrom(const QString& folder, const QString& file);
    void newPracticeJob();
    void connectPracticeCommands();
    void refreshPracticeCommands();
    void takeMeter();
    void showTruth();
    void connectTableCommands();
    void exportTables();
    /// Writes a file out of the job; of a large one the window waits for it and says so.
    base::Outcome writtenOut(const QString& file, const std::function<base::Outcome()>& write);
    /// Asks for a file name with this ending and writes what `write` does.
    void exportFile(const QString& title, const QString& filter, const QString& ending,
                    const std::function<base::Outcome(const std::filesystem::path&)>& write);
    void printWalkSheet();
    void importPasted(const QString& table, const QString& text);
    void runImport(base::Result<ImportSource> source, const QString& table);
    void saveCopy();
    void saveElsewhere();
    void showJournal();
    /// Says too which sound copy lies beside a damaged file.
    void raiseWithAdvice(const base::Fault& fault, const QString& file);
    void mergeCopy();
    void decideConflicts();
    bool storeChoices(const MergeDialog::Choices& choices);
    /// The handbook's window, shown and in front; null where no handbook is installed, which is said.
    HandbookWindow* showHandbook();
    void showAbout();

    Preferences& m_preferences;
    Look m_look;  ///< the program has it before the first widget is made
    WorkbookBridge m_bridge;
    AssessedRounds m_assessedRounds;
    LoopAdvisor m_advisor;
    PumpAdvisor m_pumpAdvisor;
    PracticeDesk m_practice;
    Commands* m_commands;
    JobStrip* m_strip;
    /// What the words of the strip were chosen for: choosing them again costs more than looking.
    struct ShownStrip {
        StripText whole;
        int width;
        int folded;  ///< the place whose name stands on the button; -1: none
        bool isSmall;
        bool operator==(const ShownStrip&) const = default;
    };
    std::optional<ShownStrip> m_shownStrip;
    SideList* m_sideList;
    QStackedWidget* m_stack;
    QLabel* m_readOnly;
    QPushButton* m_workInCopy;  ///< beside it
    NoticeLine* m_notice;
    KeyLine* m_keyLine;
    QTimer m_followingKeys;  ///< runs until the line of keys is that of what has them
    QMetaObject::Connection m_typedInHand;
    QMetaObject::Connection m_backFromNote;  ///< to the place that it was written from
    NumberPad* m_pad = nullptr;              ///< made when it is first shown
    QHBoxLayout* m_beside = nullptr;         ///< the place, and the pad where there is one
    QSet<QChar> m_menuLetters;               ///< under Alt
    QMenu* m_folded;                         ///< the places and all menus, behind one button
    HandbookWindow* m_handbook = nullptr;
    std::array<PlaceEntry, kPlaces> m_places;
    QStringList m_placeNames;
    QString m_opened;            ///< the file that the preferences hold as open in this window; empty: none
    QTimer m_rememberingOpened;  ///< runs until they do
    QTimer m_keepingDrafts;      ///< runs while something is typed that is not kept yet
    std::optional<base::Id> m_draftsOf;  ///< the workbook for which something typed is kept
    bool m_isApplyingLook = false;
    bool m_isDressed = false;  ///< places that are made get the look at once
    bool m_isSmall = false;
    bool m_isNoticeOfPlace = false;     ///< what the notice says is done with when its place is left
    bool m_isNoticeOfPerson = false;    ///< it is done with when a person is chosen
    bool m_isFirstCommentNext = false;  ///< the next open item gone to is the first open comment
    bool m_isNoticeLeft = false;        ///< another valve is in hand than the one the notice is about
    std::string m_noticeTag;            ///< of the valve that the notice is about; empty: of none
    std::optional<project::Reading> m_noticeReading;  ///< what counted there when it was raised
    std::optional<std::pair<base::Id, project::RoundState>> m_roundSeen;
};

}  // namespace ww::ui
