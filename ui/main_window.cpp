#include "ui/main_window.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDir>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>
#include <QMimeData>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

#include "core/exchange/job_folder.h"
#include "ui/job_files.h"
#include "ui/merge/merge_messages.h"
#include "ui/places/adjust/adjust_place.h"
#include "ui/places/job/job_place.h"
#include "ui/places/pump/pump_place.h"
#include "ui/places/report/report_place.h"
#include "ui/places/review/review_place.h"
#include "ui/places/system/system_place.h"
#include "ui/places/walk/walk_place.h"
#include "ui/plain_labels.h"
#include "ui/text/words.h"
#include "ui/window_look.h"

namespace ww::ui {
namespace {

constexpr base::MessageForm kStoredAlready{
    "stored_already", "everything is stored, the newest at {1}; nothing is left to save"};
constexpr base::MessageForm kGoneElsewhere{
    "gone_elsewhere", "all is stored, with the last reading, in {1}; work goes on there"};
constexpr base::MessageForm kCopySaved{"copy_saved",
                                       "a whole copy is at {1}; work goes on in the first file"};
constexpr base::MessageForm kTablesWritten{
    "tables_written", "the tables of this job are in {1}; open them with any spreadsheet"};

/// Numbers of the places' keys: a place keeps its number while its neighbors are not there.
constexpr int kPlaceNumbers[] = {1, 2, 3, 4, 5, 6, 7};

QString folderOf(const QString& file) {
    return file.isEmpty() ? QDir::homePath() : QFileInfo(file).absolutePath();
}

}  // namespace

MainWindow::MainWindow(Desk desk, Preferences& preferences, QWidget* parent)
    : QMainWindow(parent),
      m_preferences(preferences),
      m_bridge(std::move(desk)),
      m_advisor(m_bridge),
      m_pumpAdvisor(m_bridge, m_advisor),
      m_practice(m_bridge),
      m_commands(new Commands(this)),
      m_strip(new JobStrip(this)),
      m_sideList(new SideList(this)),
      m_stack(new QStackedWidget(this)),
      m_readOnly(new QLabel(this)),
      m_notice(new NoticeLine(this)),
      m_keyLine(new QLabel(this)) {
    qApp->installEventFilter(new PlainLabels(this));
    m_commands->fill(menuBar());
    buildFrame();
    buildPlaces();
    // Enter presses the button in hand, as it does in a dialog.
    for (QPushButton* button : findChildren<QPushButton*>()) {
        button->setAutoDefault(true);
    }
    connectFileCommands();
    connectEditCommands();
    connectWalkCommands();
    connectAdjustCommands();
    connectViewCommands();
    connectReviewCommands();
    connectPumpCommands();
    connectHelpCommands();
    connect(&m_bridge, &WorkbookBridge::changed, this, &MainWindow::refresh);
    connect(&m_bridge, &WorkbookBridge::reverted, this, &MainWindow::showReverted);
    connect(&m_bridge, &WorkbookBridge::instrumentChanged, this, &MainWindow::refresh);
    connect(&m_bridge, &WorkbookBridge::messageRaised, this, &MainWindow::raise);
    connect(&m_bridge, &WorkbookBridge::messageCleared, m_notice, &NoticeLine::clearMessage);
    setAcceptDrops(true);
    if (!restoreGeometry(m_preferences.windowGeometry())) {
        resize(1280, 720);
    }
    applyLook();
    refreshRecent();
    refresh();
    showPlace(Walk);
}

MainWindow::~MainWindow() {
    // The places read through the bridge to their end, so they go first.
    delete takeCentralWidget();
}

void MainWindow::buildFrame() {
    m_readOnly->setObjectName(QStringLiteral("read_only_banner"));
    m_readOnly->setAccessibleName(tr("Read-only"));
    m_readOnly->setWordWrap(true);
    m_readOnly->hide();
    m_keyLine->setObjectName(QStringLiteral("key_line"));
    m_keyLine->setAccessibleName(tr("Keys of this place"));
    m_keyLine->setTextFormat(Qt::PlainText);
    m_keyLine->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);

    auto* right = new QVBoxLayout;
    right->setContentsMargins(0, 0, 0, 0);
    right->setSpacing(0);
    right->addWidget(m_notice);
    right->addWidget(m_stack, 1);
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
    layout->addWidget(m_readOnly);
    layout->addLayout(middle, 1);
    layout->addWidget(m_keyLine);
    setCentralWidget(page);
    connect(m_sideList, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row >= 0 && row != m_stack->currentIndex()) {
            showPlace(static_cast<Place>(row));
        }
    });
}

void MainWindow::buildPlaces() {
    m_job = new JobPlace(m_bridge, this);
    m_system = new SystemPlace(m_bridge, this);
    m_walk = new WalkPlace(m_bridge, m_advisor, this);
    m_adjust = new AdjustPlace(m_bridge, m_advisor, this);
    m_pump = new PumpPlace(m_bridge, m_pumpAdvisor, this);
    m_review = new ReviewPlace(m_bridge, this);
    m_report = new ReportPlace(m_bridge, this);
    m_report->setPumpAdvisor(m_pumpAdvisor);
    const auto always = [](const QString& hint) { return [hint] { return hint; }; };
    m_places = {
        {m_job, [this](const theme::Tokens& tokens) { m_job->setTokens(tokens); },
         [this] { m_job->takeFocus(); }, always(tr("Enter stores   |   Esc restores   |   Tab next field"))},
        {m_system, [this](const theme::Tokens& tokens) { m_system->setTokens(tokens); },
         [this] { m_system->takeFocus(); },
         always(tr("type to change a cell   |   Enter down   |   Tab right   |   Ctrl+J find   |   F6 leaves "
                   "the table"))},
        {m_walk, [this](const theme::Tokens& tokens) { m_walk->setTokens(tokens); },
         [this] { m_walk->takeFocus(); }, [this] { return m_walk->hint(); }},
        {m_adjust, [this](const theme::Tokens& tokens) { m_adjust->setTokens(tokens); },
         [this] { m_adjust->takeFocus(); }, [this] { return m_adjust->hint(); }},
        {m_pump, [this](const theme::Tokens& tokens) { m_pump->setTokens(tokens); },
         [this] { m_pump->takeFocus(); },
         always(tr("Ctrl+Alt+1 to 0, Ctrl+Alt+Z pages   |   Ctrl+T numbers as a table   |   Enter stores"))},
        {m_review, [this](const theme::Tokens& tokens) { m_review->setTokens(tokens); },
         [this] { m_review->takeFocus(); },
         always(tr("Ctrl+Alt+C comment on the cell   |   Ctrl+H its history   |   Ctrl+Shift+Down next open "
                   "item"))},
        {m_report, [this](const theme::Tokens& tokens) { m_report->setTokens(tokens); },
         [this] { m_report->takeFocus(); }, always(tr("Up, Down pages   |   Ctrl+P export as PDF"))},
    };
    connect(m_walk, &WalkPlace::hintChanged, this, &MainWindow::refreshCommands);
    connect(m_adjust, &AdjustPlace::hintChanged, this, &MainWindow::refreshCommands);
    const QString names[] = {tr("Job"),  tr("System"), tr("Walk"),  tr("Adjust"),
                             tr("Pump"), tr("Review"), tr("Report")};
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        m_stack->addWidget(m_places[i].widget);
        m_sideList->addPlace(kPlaceNumbers[i], names[i]);
        connect(m_commands->places[static_cast<qsizetype>(i)], &QAction::triggered, this,
                [this, i] { showPlace(static_cast<Place>(i)); });
    }
}

void MainWindow::showPlace(Place place) {
    const auto index = static_cast<std::size_t>(place);
    if (index >= m_places.size()) {
        return;
    }
    m_stack->setCurrentIndex(place);
    m_sideList->setCurrentRow(place);
    for (int i = 0; i < m_commands->places.size(); ++i) {
        m_commands->places[i]->setChecked(i == place);
    }
    m_places[index].takeFocus();
    refreshCommands();
}

MainWindow::Place MainWindow::place() const {
    return static_cast<Place>(m_stack->currentIndex());
}

bool MainWindow::openFile(const QString& file) {
    const base::Outcome opened = m_bridge.open(file);
    if (!opened) {
        raiseWithAdvice(opened.fault(), file);
        return false;
    }
    m_notice->clearMessage();
    m_preferences.rememberFile(file);
    refreshRecent();
    showPlace(m_bridge.project().branches().empty() ? Job : Walk);
    return true;
}

void MainWindow::connectFileCommands() {
    connect(m_commands->newJob, &QAction::triggered, this, &MainWindow::newJob);
    connect(m_commands->newFromFolder, &QAction::triggered, this, &MainWindow::newJobFromTables);
    connectPracticeCommands();
    connect(m_commands->open, &QAction::triggered, this, [this] {
        const QString file = askWorkbookToOpen(this, folderOf(m_bridge.file()));
        if (!file.isEmpty()) {
            canTake(file) ? static_cast<void>(openFile(file)) : emit anotherWindowWanted(file);
        }
    });
    connect(m_commands->save, &QAction::triggered, this, [this] {
        if (const auto stored = m_bridge.lastStored()) {
            raise(base::Fault{&kStoredAlready, {}, {stored->time.timeOfDay()}});
        }
    });
    connect(m_commands->saveCopy, &QAction::triggered, this, &MainWindow::saveCopy);
    connect(m_commands->mergeCopy, &QAction::triggered, this, &MainWindow::mergeCopy);
    connect(m_commands->decideConflicts, &QAction::triggered, this, &MainWindow::decideConflicts);
    connect(m_strip, &JobStrip::conflictsWanted, m_commands->decideConflicts, &QAction::trigger);
    connect(m_strip, &JobStrip::copyElsewhereWanted, this, &MainWindow::saveElsewhere);
    connect(m_commands->exportCsv, &QAction::triggered, this, &MainWindow::exportTables);
    connect(m_commands->close, &QAction::triggered, this, [this] {
        m_notice->clearMessage();
        m_bridge.close();
    });
    connect(m_commands->quit, &QAction::triggered, qApp, &QApplication::closeAllWindows);
}

void MainWindow::connectEditCommands() {
    const auto step = [this](base::Outcome (WorkbookBridge::*action)()) {
        m_notice->clearMessage();
        const base::Outcome done = (m_bridge.*action)();
        if (!done) {
            raise(done.fault());
        }
    };
    connect(m_commands->undo, &QAction::triggered, this, [step] { step(&WorkbookBridge::undo); });
    connect(m_commands->redo, &QAction::triggered, this, [step] { step(&WorkbookBridge::redo); });
    connect(m_commands->findValve, &QAction::triggered, this, [this] {
        if (place() == System) {
            m_system->findBranch();
        } else if (place() == Adjust) {
            m_adjust->findValve();
        } else {
            showPlace(Walk);
            m_walk->findValve();
        }
    });
    connect(m_commands->addBranch, &QAction::triggered, this, [this] {
        showPlace(System);
        m_system->addBranch();
    });
}

void MainWindow::onWalk(QAction* action, void (WalkPlace::*slot)()) {
    connect(action, &QAction::triggered, this, [this, slot] {
        if (place() != Walk) {
            showPlace(Walk);
        }
        (m_walk->*slot)();
    });
}

void MainWindow::connectWalkCommands() {
    onWalk(m_commands->newRound, &WalkPlace::beginRound);
    onWalk(m_commands->closeRound, &WalkPlace::beginClosing);
    onWalk(m_commands->note, &WalkPlace::editNote);
    onWalk(m_commands->cannotRead, &WalkPlace::recordNotReadable);
    onWalk(m_commands->convergence, &WalkPlace::toggleConvergence);
}

void MainWindow::connectAdjustCommands() {
    // Some keys mean the same at a valve in hand and in the walk.
    const auto onBoth = [this](QAction* action, void (WalkPlace::*walking)(),
                               void (AdjustPlace::*adjusting)()) {
        connect(action, &QAction::triggered, this, [this, walking, adjusting] {
            if (place() == Adjust) {
                (m_adjust->*adjusting)();
                return;
            }
            showPlace(Walk);
            (m_walk->*walking)();
        });
    };
    onBoth(m_commands->readAgain, &WalkPlace::readAgain, &AdjustPlace::readAgain);
    onBoth(m_commands->takeFix, &WalkPlace::takeFix, &AdjustPlace::takeFix);
    onBoth(m_commands->doubtful, &WalkPlace::toggleDoubtful, &AdjustPlace::toggleDoubtful);
    connect(m_commands->adjustOrHold, &QAction::triggered, this,
            [this] { place() == Adjust ? m_adjust->holdAndNext() : showPlace(Adjust); });
    const auto onAdjust = [this](QAction* action, void (AdjustPlace::*slot)()) {
        connect(action, &QAction::triggered, this, [this, slot] {
            if (place() != Adjust) {
                showPlace(Adjust);
            }
            (m_adjust->*slot)();
        });
    };
    onAdjust(m_commands->readReference, &AdjustPlace::readReference);
    onAdjust(m_commands->readShutValve, &AdjustPlace::readShutValve);
    onAdjust(m_commands->takeAdvice, &AdjustPlace::takeAdvice);
    onAdjust(m_commands->advice, &AdjustPlace::goToAdvice);
    connect(m_commands->tableTwin, &QAction::triggered, this, [this] {
        place() == Pump     ? m_pump->toggleTable()
        : place() == Review ? m_review->toggleTable()
                            : m_walk->toggleTable();
    });
}

void MainWindow::connectViewCommands() {
    connect(m_commands->nextDisplay, &QAction::triggered, this,
            [this] { setDisplay(theme::next(m_preferences.display())); });
    const auto resizeText = [this](double points) {
        m_preferences.setTextPoints(points);
        applyLook();
        refreshStrip();
    };
    connect(m_commands->largerText, &QAction::triggered, this,
            [=, this] { resizeText(m_preferences.textPoints() + 1.0); });
    connect(m_commands->smallerText, &QAction::triggered, this,
            [=, this] { resizeText(m_preferences.textPoints() - 1.0); });
    connect(m_commands->normalText, &QAction::triggered, this, [=] { resizeText(10.0); });
    connect(m_commands->fullScreen, &QAction::triggered, this,
            [this](bool isFull) { isFull ? showFullScreen() : showNormal(); });
    connectReportCommands();
    // F6 and Ctrl+Tab lead from a grid to the next field; from everywhere else F6 leads back to the place.
    auto* back = new QShortcut(QKeySequence(Qt::Key_F6), this);
    connect(back, &QShortcut::activated, this, [this] { m_places[place()].takeFocus(); });
}

void MainWindow::setDisplay(theme::Display display) {
    m_preferences.setDisplay(display);
    applyLook();
    refreshStrip();
}

void MainWindow::applyLook() {
    m_isApplyingLook = true;
    const Look look = lookOf(m_preferences.display(), m_preferences.textPoints());
    applyToProgram(look);
    m_strip->setTokens(look.tokens, look.metrics);
    m_sideList->setFixedWidth(look.metrics.sideListWidth);
    m_keyLine->setFixedHeight(look.metrics.keyLineHeight);
    m_notice->setFixedHeight(std::max(34, 2 * QFontMetrics(look.font).height() + 4));
    m_job->setMetrics(look.metrics);
    m_system->setMetrics(look.metrics);
    m_walk->setMetrics(look.metrics);
    m_adjust->setMetrics(look.metrics);
    m_pump->setMetrics(look.metrics);
    m_review->setMetrics(look.metrics);
    for (const PlaceEntry& entry : m_places) {
        entry.setTokens(look.tokens);
    }
    m_isApplyingLook = false;
}

bool MainWindow::event(QEvent* event) {
    // The desktop changed its own colors: the display "Office" follows.
    if (event->type() == QEvent::ApplicationPaletteChange && !m_isApplyingLook &&
        m_preferences.display() == theme::Display::Office) {
        applyLook();
    }
    return QMainWindow::event(event);
}

void MainWindow::refresh() {
    const project::Project& project = m_bridge.project();
    const project::Round* round = project.lastRound();
    const QString job = QString::fromStdString(project.job().name);
    QString title = m_bridge.isOpen() ? job : QStringLiteral("Waterwright");
    if (round != nullptr) {
        title += tr(" — Round %1").arg(round->number);
    }
    setWindowFilePath(m_bridge.file());
    setWindowTitle(title + QStringLiteral("[*]"));
    setWindowModified(m_bridge.notStored().has_value());
    const auto reason = m_bridge.readOnlyReason();
    m_readOnly->setText(reason ? tr("Read-only. %1").arg(text::sentence(*reason)) : QString());
    m_readOnly->setVisible(reason.has_value());
    refreshStrip();
    refreshCommands();
    refreshPeopleAndMeters();
}

void MainWindow::refreshCommands() {
    const bool isWritable = m_bridge.isOpen() && !m_bridge.isReadOnly();
    const bool isRoundOpen = isWritable && m_bridge.openRoundOrNull() != nullptr;
    const QString undo = m_bridge.undoLabel();
    const QString redo = m_bridge.redoLabel();
    m_commands->undo->setText(undo.isEmpty() ? tr("&Undo") : tr("&Undo %1").arg(undo));
    m_commands->redo->setText(redo.isEmpty() ? tr("&Redo") : tr("&Redo %1").arg(redo));
    m_commands->undo->setEnabled(!undo.isEmpty());
    m_commands->redo->setEnabled(!redo.isEmpty());
    m_commands->adjustOrHold->setText(place() == Adjust ? tr("&Hold Here, Go to Next Valve")
                                                        : tr("&Adjust This Valve"));
    for (QAction* action : {m_commands->takeFix, m_commands->adjustOrHold, m_commands->readReference,
                            m_commands->readShutValve, m_commands->takeAdvice}) {
        action->setEnabled(isWritable);
    }
    m_commands->tableTwin->setEnabled(place() == Pump || place() == Walk || place() == Review);
    for (QAction* action : {m_commands->readAgain, m_commands->doubtful, m_commands->cannotRead,
                            m_commands->note, m_commands->closeRound}) {
        action->setEnabled(isRoundOpen);
    }
    m_commands->newRound->setEnabled(isWritable && !m_bridge.project().branches().empty());
    m_commands->addBranch->setEnabled(isWritable);
    m_commands->mergeCopy->setEnabled(isWritable);
    m_commands->decideConflicts->setEnabled(isWritable && !m_bridge.openConflicts().empty());
    m_commands->comment->setEnabled(isWritable && !m_bridge.project().rounds().empty());
    m_commands->deficiency->setEnabled(isWritable);
    for (QAction* action :
         {m_commands->history, m_commands->journal, m_commands->nextOpen, m_commands->previousOpen}) {
        action->setEnabled(m_bridge.isOpen());
    }
    refreshPracticeCommands();
    for (QAction* action : {m_commands->save, m_commands->saveCopy, m_commands->exportCsv, m_commands->close,
                            m_commands->exportReport, m_commands->findValve, m_commands->signReport}) {
        action->setEnabled(m_bridge.isOpen());
    }
    const QString back = undo.isEmpty() ? QString() : tr("   |   Ctrl+Z undo %1").arg(undo);
    const std::size_t index = static_cast<std::size_t>(std::max(0, m_stack->currentIndex()));
    const QString meter =
        m_commands->takeMeter->isEnabled() ? tr("Ctrl+L takes the meter's value   |   ") : QString();
    m_keyLine->setText(meter + m_places[index].hint() + back);
}

void MainWindow::refreshStrip() {
    m_strip->show(stripText(m_bridge, m_preferences.display()));
}

void MainWindow::refreshPeopleAndMeters() {
    const auto fill = [this](QMenu* menu, const auto& records, const std::optional<base::Id>& chosen,
                             const auto& name, void (WorkbookBridge::*set)(std::optional<base::Id>)) {
        menu->clear();
        for (const auto& record : records) {
            QAction* action = menu->addAction(QString::fromStdString(name(record)));
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

void MainWindow::refreshRecent() {
    QMenu* menu = m_commands->openRecent;
    menu->clear();
    for (const QString& file : m_preferences.recentFiles()) {
        if (QFileInfo::exists(file)) {
            QAction* action = menu->addAction(QFileInfo(file).fileName());
            action->setToolTip(file);
            connect(action, &QAction::triggered, this, [this, file] {
                canTake(file) ? static_cast<void>(openFile(file)) : emit anotherWindowWanted(file);
            });
        } else {
            QMenu* missing = menu->addMenu(tr("%1 (missing)").arg(QFileInfo(file).fileName()));
            QAction* gone = missing->addAction(file);
            gone->setEnabled(false);
            connect(missing->addAction(tr("Remove from List")), &QAction::triggered, this, [this, file] {
                m_preferences.forgetFile(file);
                refreshRecent();
            });
        }
    }
    menu->setEnabled(!menu->isEmpty());
}

void MainWindow::showReverted(const project::ChangeSet& changes) {
    using project::RecordKind;
    Place shown = place();
    if (changes.touches(RecordKind::Comment)) {
        shown = Review;
    } else if (shown == Adjust && changes.touches(RecordKind::Reading)) {
        // The valve in hand shows its readings as well as the walk does.
    } else if (shown == Pump && !changes.touches(RecordKind::Reading) &&
               !changes.touches(RecordKind::Round)) {
        // Its pages show the job's facts, branches and pumps as well as the other places do.
    } else if (changes.touches(RecordKind::Reading) || changes.touches(RecordKind::Round)) {
        shown = Walk;
    } else if (changes.touches(RecordKind::Pump) || changes.touches(RecordKind::SetPoint) ||
               (changes.touches(RecordKind::PumpReading) && shown != Walk)) {
        shown = Pump;
    } else if (changes.touches(RecordKind::Branch)) {
        shown = System;
    } else if (changes.touches(RecordKind::Job) || changes.touches(RecordKind::Instrument) ||
               changes.touches(RecordKind::Person) || changes.touches(RecordKind::ReadinessLine) ||
               changes.touches(RecordKind::Deficiency) || changes.touches(RecordKind::Attachment)) {
        shown = Job;
    }
    if (shown != place()) {
        showPlace(shown);
    }
    if (const auto branch = m_bridge.revertedBranch()) {
        m_bridge.selectBranch(branch);
        shown == System ? m_system->showBranch(*branch) : m_walk->showBranch(*branch);
        if (shown == Adjust) {
            m_adjust->showBranch(*branch);
        }
    }
}

void MainWindow::raise(const base::Fault& fault) {
    const bool isGood = fault.is(kStoredAlready) || fault.is(kCopySaved) || fault.is(kGoneElsewhere) ||
                        fault.is(kTablesWritten) || fault.is(kMerged) || fault.is(kNothingNew) ||
                        fault.is(kGaugesRead);
    m_notice->showMessage(text::text(fault), !isGood);
    refreshStrip();
    setWindowModified(m_bridge.notStored().has_value());
}

bool MainWindow::canTake(const QString& file) const {
    return !m_bridge.isOpen() || QFileInfo(file) == QFileInfo(m_bridge.file());
}

void MainWindow::newJob() {
    const QString file =
        askWorkbookToWrite(this, tr("Make a New Job"), folderOf(m_bridge.file()) + tr("/new_job.wwj"));
    if (file.isEmpty()) {
        return;
    }
    const base::Outcome made =
        m_bridge.create(file, emptyJob(m_bridge.newId(), QFileInfo(file).completeBaseName()));
    if (!made) {
        raise(made.fault());
        return;
    }
    m_preferences.rememberFile(file);
    refreshRecent();
    showPlace(Job);
}

void MainWindow::newJobFromTables() {
    const QString folder =
        askFolder(this, tr("Folder with the Tables of the Job"), folderOf(m_bridge.file()));
    if (folder.isEmpty()) {
        return;
    }
    const QString file =
        askWorkbookToWrite(this, tr("Write the New Workbook"), folder + QStringLiteral(".wwj"));
    if (!file.isEmpty()) {
        createFrom(folder, file);
    }
}

void MainWindow::exportTables() {
    const QString folder = askFolder(this, tr("Folder for the Tables"), folderOf(m_bridge.file()));
    if (folder.isEmpty()) {
        return;
    }
    const base::Outcome done = exchange::writeJobFolder(m_bridge.project(), folder.toStdString());
    raise(done ? base::Fault{&kTablesWritten, {}, {folder.toStdString()}} : done.fault());
}

void MainWindow::saveCopy() {
    const QFileInfo file(m_bridge.file());
    const QString proposal =
        file.absolutePath() + QStringLiteral("/") + tr("%1 copy.wwj").arg(file.completeBaseName());
    const QString copy = askWorkbookToWrite(this, tr("Save a Copy"), proposal);
    if (!copy.isEmpty()) {
        const base::Outcome done = m_bridge.saveCopy(copy);
        raise(done ? base::Fault{&kCopySaved, {}, {copy.toStdString()}} : done.fault());
    }
}

void MainWindow::saveElsewhere() {
    const QString file = askWorkbookToWrite(this, tr("Save a Copy Elsewhere and Go On There"),
                                            QDir::homePath() + '/' + QFileInfo(m_bridge.file()).fileName());
    if (file.isEmpty()) {
        return;
    }
    const base::Outcome done = m_bridge.goOnIn(file);
    if (done) {
        m_preferences.rememberFile(file);
        refreshRecent();
    }
    raise(done ? base::Fault{&kGoneElsewhere, {}, {file.toStdString()}} : done.fault());
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    const QList<QUrl> urls = event->mimeData()->urls();
    if (urls.size() == 1 && urls.front().toLocalFile().endsWith(QStringLiteral(".wwj"))) {
        event->acceptProposedAction();
    }
}

void MainWindow::dropEvent(QDropEvent* event) {
    const QList<QUrl> urls = event->mimeData()->urls();
    if (urls.size() != 1) {
        return;
    }
    const QString file = urls.front().toLocalFile();
    event->acceptProposedAction();
    canTake(file) ? static_cast<void>(openFile(file)) : emit anotherWindowWanted(file);
}

void MainWindow::closeEvent(QCloseEvent* event) {
    m_preferences.setWindowGeometry(saveGeometry());
    QMainWindow::closeEvent(event);
}

}  // namespace ww::ui
