#include "ui/main_window.h"

#include <QApplication>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QScreen>
#include <QVBoxLayout>
#include <utility>

#include "core/balancing/standing_readings.h"

#include "ui/alt_chords.h"
#include "ui/file_messages.h"
#include "ui/merge/merge_messages.h"
#include "ui/mnemonics.h"
#include "ui/places/adjust/adjust_place.h"
#include "ui/places/reading_notice.h"
#include "ui/plain_labels.h"
#include "ui/text/words.h"
#include "ui/top_row_keys.h"
#include "ui/widgets/reading_order.h"

namespace ww::ui {
namespace {

constexpr int kRememberOpenedMilliseconds = 100;
constexpr int kKeepDraftsMilliseconds = 1000;

}  // namespace

MainWindow::MainWindow(Desk desk, Preferences& preferences, QWidget* parent)
    : QMainWindow(parent),
      m_preferences(preferences),
      m_look(applyToProgram(
          lookOf(preferences.display(), preferences.textPoints(), preferences.hasLargeTargets()))),
      m_bridge(std::move(desk)),
      m_assessedRounds(m_bridge),
      m_advisor(m_bridge),
      m_pumpAdvisor(m_bridge, m_advisor),
      m_practice(m_bridge),
      m_commands(new Commands(this)),
      m_strip(new JobStrip(this)),
      m_sideList(new SideList(this)),
      m_stack(new QStackedWidget(this)),
      m_readOnly(new QLabel(this)),
      m_workInCopy(new QPushButton(tr("Work in a Copy and Merge Later…"), this)),
      m_notice(new NoticeLine(this)),
      m_keyLine(new KeyLine(this)),
      m_folded(new QMenu(this)) {
    qApp->installEventFilter(new PlainLabels(this));
    qApp->installEventFilter(new AltChords(this));
    qApp->installEventFilter(new TopRowKeys(this));
    // What is made in the window has its font from the start.
    setFont(m_look.font);
    m_commands->fill(menuBar());
    // Keys work also while the menu bar is folded away.
    addActions(m_commands->all());
    m_folded->addActions(m_commands->places);
    m_folded->addSeparator();
    m_folded->addActions(menuBar()->actions());
    m_menuLetters = settleMenus(*menuBar());
    buildFrame();
    buildShelves();
    connectFileCommands();
    connectEditCommands();
    connectClipboardCommands();
    connectWalkCommands();
    connectAdjustCommands();
    connectViewCommands();
    connectReviewCommands();
    connectPumpCommands();
    connectHelpCommands();
    connectKeyLine();
    connect(&m_bridge, &WorkbookBridge::changed, this, [this](const project::ChangeSet& changes) {
        followOpened();
        endSettledNotice(changes);
        if (changes.isEmpty()) {
            // What is kept of the workbook before stays kept, whatever becomes of its cells here.
            m_draftsOf.reset();
            m_keepingDrafts.stop();
            recallPerson();
        }
        refresh();
    });
    connect(&m_bridge, &WorkbookBridge::reverted, this, &MainWindow::showReverted);
    connect(&m_bridge, &WorkbookBridge::instrumentChanged, this, [this] {
        if (m_isNoticeOfPerson && !m_bridge.isNobodyChosen()) {
            m_notice->clearMessage();
            m_isNoticeOfPerson = false;
        }
        rememberPerson();
        // Who may decide and which meter is overdue is another matter now.
        if (m_isNoticeOfPlace && !m_noticeReading) {
            m_notice->clearMessage();
        }
        if (!m_bridge.isNobodyChosen() &&
            m_notice->message() == text::text(base::Fault{&kNobodyChosen, {}, {}})) {
            m_notice->clearMessage();
        }
        refresh();
    });
    connect(&m_bridge, &WorkbookBridge::messageRaised, this, &MainWindow::raise);
    connect(&m_bridge, &WorkbookBridge::branchSelected, this, &MainWindow::endNoticeOfValve);
    connect(&m_bridge, &WorkbookBridge::messageCleared, m_notice, &NoticeLine::clearMessage);
    m_rememberingOpened.setSingleShot(true);
    m_rememberingOpened.setInterval(kRememberOpenedMilliseconds);
    connect(&m_rememberingOpened, &QTimer::timeout, this, &MainWindow::rememberOpened);
    m_keepingDrafts.setSingleShot(true);
    m_keepingDrafts.setInterval(kKeepDraftsMilliseconds);
    connect(&m_keepingDrafts, &QTimer::timeout, this, &MainWindow::keepDrafts);
    setAcceptDrops(true);
    if (!restoreGeometry(m_preferences.windowGeometry())) {
        constexpr QSize kUsual(1280, 720);
        constexpr QSize kTitleBar(0, 30);
        resize(kUsual.boundedTo(screen()->availableSize() - kTitleBar));
    }
    // Before the look, which needs the fonts: what needs none is made while they are read.
    showPlace(Walk);
    applyLook();
    refreshRecent();
    fillLanguages();
    refresh();
    tellLastJob();
}

MainWindow::~MainWindow() {
    // The places read through the bridge to their end, so they go first.
    delete takeCentralWidget();
}

void MainWindow::buildFrame() {
    m_readOnly->setObjectName(QStringLiteral("read_only_banner"));
    m_readOnly->setAccessibleName(tr("Read-only"));
    m_readOnly->setWordWrap(true);
    m_keyLine->setObjectName(QStringLiteral("key_line"));
    m_keyLine->setAccessibleName(tr("Keys of this place"));

    // The notice has the width of both, so that the place and the pad keep their height.
    m_beside = new QHBoxLayout;
    m_beside->setContentsMargins(0, 0, 0, 0);
    m_beside->setSpacing(0);
    m_beside->addWidget(m_stack, 1);
    auto* right = new QVBoxLayout;
    right->setContentsMargins(0, 0, 0, 0);
    right->setSpacing(0);
    right->addWidget(m_notice);
    right->addLayout(m_beside, 1);
    auto* middle = new QHBoxLayout;
    middle->setContentsMargins(0, 0, 0, 0);
    middle->setSpacing(0);
    middle->addWidget(m_sideList);
    middle->addLayout(right, 1);
    auto* page = new QWidget(this);
    page->setObjectName(QStringLiteral("frame"));
    auto* layout = new QVBoxLayout(page);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(m_strip);
    auto* banner = new QHBoxLayout;
    banner->setSpacing(0);
    banner->addWidget(m_readOnly, 1);
    banner->addWidget(m_workInCopy);
    layout->addLayout(banner);
    layout->addLayout(middle, 1);
    layout->addWidget(m_keyLine);
    setCentralWidget(page);
    connect(m_sideList, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row >= 0 && row != m_stack->currentIndex()) {
            goTo(static_cast<Place>(row));
        }
    });
}

bool MainWindow::focusNextPrevChild(bool isForward) {
    return goToNextStop(*this, isForward) || QMainWindow::focusNextPrevChild(isForward);
}

void MainWindow::refresh() {
    const project::Project& project = m_bridge.project();
    const project::Round* round = project.lastRound();
    const QString job = QString::fromStdString(project.job().name);
    QString title = m_bridge.isOpen() ? job : QStringLiteral("Waterwright");
    // A copy is told from its job by the name of the file.
    const QString file = QFileInfo(m_bridge.file()).completeBaseName();
    if (m_bridge.isOpen() && file != job) {
        title += QStringLiteral(" (%1)").arg(file);
    }
    if (round != nullptr) {
        title += tr(" — Round %1").arg(round->number);
    }
    setWindowFilePath(m_bridge.file());
    setWindowTitle(title + QStringLiteral("[*]"));
    setWindowModified(m_bridge.notStored().has_value());
    refreshReadOnly();
    refreshStrip();
    countOpenComments();
    refreshCommands();
    refreshPeopleAndMeters();
}

void MainWindow::refreshCommands() {
    const bool isWritable = m_bridge.isOpen() && !m_bridge.isReadOnly();
    const bool isRoundOpen = isWritable && m_bridge.openRoundOrNull() != nullptr;
    const QString undo = m_bridge.undoLabel();
    const QString redo = m_bridge.redoLabel();
    m_commands->undo->setText(undo.isEmpty() ? tr("&Undo") : tr("&Undo %1").arg(withoutLetter(undo)));
    m_commands->redo->setText(redo.isEmpty() ? tr("&Redo") : tr("&Redo %1").arg(withoutLetter(redo)));
    // Where it cannot undo it says what to do instead.
    m_commands->undo->setEnabled(!undo.isEmpty() || isReviewStepNewest());
    m_commands->redo->setEnabled(!redo.isEmpty());
    m_commands->adjustOrHold->setText(place() == Adjust ? tr("&Hold Here, Go to Next Valve")
                                                        : tr("A&djust This Valve"));
    for (QAction* action : {m_commands->takeFix, m_commands->adjustOrHold, m_commands->readReference,
                            m_commands->readShutValve}) {
        action->setEnabled(isWritable);
    }
    const auto* adjusting = place() == Adjust ? there<AdjustPlace>(Adjust) : nullptr;
    const bool isHeld = adjusting != nullptr && adjusting->holdsAgainstAdvice();
    m_commands->takeAdvice->setText(isHeld ? tr("Take Advised Sett&ing (the valve holds)")
                                           : tr("Take Advised Sett&ing"));
    m_commands->takeAdvice->setEnabled(isWritable && !isHeld);
    m_commands->moveUp->setText(adjusting != nullptr ? tr("Move Valve U&p the Working Order")
                                                     : tr("Move Branch U&p the Route"));
    m_commands->moveDown->setText(adjusting != nullptr ? tr("Move Valve Do&wn the Working Order")
                                                       : tr("Move Branch Do&wn the Route"));
    m_commands->advisedOrder->setEnabled(adjusting != nullptr && adjusting->isOrderChanged());
    m_commands->tableTwin->setEnabled(place() == Pump || place() == Walk || place() == Review ||
                                      place() == System);
    for (QAction* action : {m_commands->readAgain, m_commands->doubtful, m_commands->cannotRead}) {
        action->setEnabled(isRoundOpen);
    }
    m_commands->closeRound->setEnabled(m_bridge.roundToCorrectOrNull() != nullptr);
    m_commands->notTurned->setEnabled(isRoundOpen &&
                                      m_bridge.openRoundOrNull()->kind == project::RoundKind::Adjusting);
    m_commands->note->setEnabled(isWritable && !m_bridge.project().branches().empty());
    m_commands->newRound->setEnabled(isWritable && !m_bridge.project().branches().empty());
    for (QAction* action : {m_commands->addBranch, m_commands->moveUp, m_commands->moveDown}) {
        action->setEnabled(isWritable);
    }
    m_commands->mergeCopy->setEnabled(isWritable);
    m_commands->setClock->setEnabled(isWritable);
    m_commands->decideConflicts->setEnabled(isWritable && !m_bridge.openConflicts().empty());
    m_commands->comment->setEnabled(isWritable && !m_bridge.project().rounds().empty());
    m_commands->deficiency->setEnabled(isWritable);
    refreshReviewCommands();
    for (QAction* action :
         {m_commands->history, m_commands->journal, m_commands->nextOpen, m_commands->previousOpen}) {
        action->setEnabled(m_bridge.isOpen());
    }
    refreshPracticeCommands();
    m_commands->importTable->setEnabled(isWritable);
    m_commands->valveTables->setEnabled(m_bridge.isOpen());
    m_commands->exportAs->setEnabled(m_bridge.isOpen());
    for (QAction* action : {m_commands->printWalkSheet, m_commands->saveWalkSheet, m_commands->tryWhatIf}) {
        action->setEnabled(m_bridge.isOpen() && !m_bridge.project().branches().empty());
    }
    for (QAction* action : {m_commands->save, m_commands->saveCopy, m_commands->exportCsv,
                            m_commands->exportSpreadsheet, m_commands->exportJson, m_commands->close,
                            m_commands->exportReport, m_commands->findValve, m_commands->signReport}) {
        action->setEnabled(m_bridge.isOpen());
    }
    refreshKeyLine();
}

void MainWindow::refreshStrip() {
    const bool isFolded = m_isSmall || m_preferences.hasLargeTargets();
    ShownStrip wanted{stripText(m_bridge, m_preferences.display(), StripLength::Full), width(),
                      isFolded ? m_stack->currentIndex() : -1, m_isSmall};
    if (m_shownStrip == wanted) {
        return;
    }
    m_shownStrip = std::move(wanted);
    // In as many words as there is room for.
    for (const auto length : {StripLength::Full, StripLength::Middle, StripLength::RoundInWords,
                              StripLength::Short, StripLength::Least}) {
        if (m_isSmall && length < StripLength::Short) {
            continue;
        }
        m_strip->show(stripText(m_bridge, m_preferences.display(), length));
        if (m_strip->wantedWidth() <= width()) {
            break;
        }
    }
}

void MainWindow::refreshPeopleAndMeters() {
    const auto fill = [this](QMenu* menu, const auto& records, const std::optional<base::Id>& chosen,
                             const auto& name, void (WorkbookBridge::*set)(std::optional<base::Id>)) {
        menu->clear();
        for (const auto& record : records) {
            QAction* action = menu->addAction(withoutLetter(QString::fromStdString(name(record))));
            action->setCheckable(true);
            action->setChecked(chosen == record.id);
            connect(action, &QAction::triggered, this, [this, set, id = record.id] { (m_bridge.*set)(id); });
        }
        menu->setEnabled(!records.empty());
    };
    const project::Project& project = m_bridge.project();
    fill(
        m_commands->meter, project.instruments(), m_bridge.instrument(),
        [](const project::Instrument& meter) { return meter.tag; }, &WorkbookBridge::setInstrument);
    fill(
        m_commands->person, project.people(), m_bridge.person(),
        [](const project::Person& person) { return person.name; }, &WorkbookBridge::setPerson);
}

void MainWindow::recallPerson() {
    const workbook::Workbook* open = m_bridge.workbook();
    const auto person = open != nullptr ? m_preferences.personIn(open->workbookId()) : std::nullopt;
    if (person && m_bridge.project().people().contains(*person)) {
        m_bridge.setPerson(person);
    }
}

void MainWindow::rememberPerson() {
    if (const auto person = m_bridge.person()) {
        m_preferences.rememberPerson(m_bridge.workbook()->workbookId(), *person);
    }
}

std::optional<project::Reading> MainWindow::readingOfNotice() const {
    const project::Project& project = m_bridge.project();
    const project::Branch* branch = m_noticeTag.empty() ? nullptr : project.branchTagged(m_noticeTag);
    const project::Round* round = project.lastRound();
    const project::Reading* reading = branch != nullptr && round != nullptr
                                          ? balancing::countingReading(project, round->id, branch->id)
                                          : nullptr;
    return reading != nullptr ? std::optional(*reading) : std::nullopt;
}

void MainWindow::endSettledNotice(const project::ChangeSet& changes) {
    const project::Round* round = m_bridge.project().lastRound();
    const auto now = round != nullptr ? std::optional(std::pair(round->id, round->state)) : std::nullopt;
    const bool isOtherRound = std::exchange(m_roundSeen, now) != now;
    if (m_notice->message().isEmpty()) {
        return;
    }
    if (changes.isEmpty() || (m_isNoticeOfPlace && (isOtherRound || readingOfNotice() != m_noticeReading))) {
        m_notice->clearMessage();
        m_isNoticeOfPerson = false;
    }
}

bool MainWindow::isNoticeOfOtherValve() const {
    const project::Branch* about =
        m_noticeTag.empty() ? nullptr : m_bridge.project().branchTagged(m_noticeTag);
    return about != nullptr && about->id != m_bridge.selectedBranch();
}

/// Enter goes on at once: what was said of a valve is read while the next one is in hand, and no longer.
void MainWindow::endNoticeOfValve() {
    if (!isNoticeOfOtherValve()) {
        return;
    }
    if (m_isNoticeLeft && m_isNoticeOfPlace) {
        m_notice->clearMessage();
    }
    m_isNoticeLeft = true;
}

void MainWindow::raise(const base::Fault& fault) {
    const bool isGood = fault.is(kCheckpointStored) || fault.is(kCopySaved) || fault.is(kGoneElsewhere) ||
                        fault.is(kWorkInCopy) || fault.is(kFileWritten) || fault.is(kImported) ||
                        fault.is(kMerged) || fault.is(kNothingNew) || fault.is(kGaugesRead) ||
                        fault.is(kAllReadByMeter) || fault.is(kRoundOpenedByTry) || fault.is(kUndone) ||
                        fault.is(kDoneAgain) || fault.is(kJobBack) || fault.is(kLastJob) ||
                        fault.is(kClockAdded) || fault.is(kClockOwn) || fault.is(kMovedInOrder) ||
                        fault.is(kOrderRestored);
    m_isNoticeOfPerson = fault.is(kNobodyChosen);
    m_noticeTag = fault.subject;
    m_isNoticeLeft = isNoticeOfOtherValve();
    m_noticeReading = readingOfNotice();
    m_isNoticeOfPlace = !m_bridge.notStored() && !fault.is(kNobodyChosen) && !fault.is(kClockBehind) &&
                        !fault.is(kClockAdded);
    const auto& lost = m_bridge.notStored();
    const bool isOnlyInMemory = lost && fault.form == lost->form && fault.arguments == lost->arguments;
    m_notice->showMessage(isOnlyInMemory ? text::sentence(onlyInMemory(fault)) : text::text(fault), !isGood);
    refreshStrip();
    setWindowModified(m_bridge.notStored().has_value());
}

}  // namespace ww::ui
