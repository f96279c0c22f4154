#include "ui/main_window.h"

#include <QApplication>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/file_messages.h"
#include "ui/merge/merge_messages.h"
#include "ui/mnemonics.h"
#include "ui/places/adjust/adjust_place.h"
#include "ui/places/job/job_place.h"
#include "ui/places/pump/pump_place.h"
#include "ui/places/reading_notice.h"
#include "ui/places/report/report_place.h"
#include "ui/places/review/review_place.h"
#include "ui/places/system/system_place.h"
#include "ui/places/walk/walk_place.h"
#include "ui/plain_labels.h"
#include "ui/text/words.h"
#include "ui/widgets/laid_out_later.h"
#include "ui/widgets/place_area.h"
#include "ui/window_look.h"

namespace ww::ui {
namespace {

/// Numbers of the places' keys: a place keeps its number while its neighbors are not there.
constexpr int kPlaceNumbers[] = {1, 2, 3, 4, 5, 6, 7};

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
      m_keyLine(new QLabel(this)),
      m_pad(new NumberPad(this)),
      m_folded(new QMenu(this)) {
    qApp->installEventFilter(new PlainLabels(this));
    // What is made in the window takes its font from the start.
    setFont(
        lookOf(m_preferences.display(), m_preferences.textPoints(), m_preferences.hasLargeTargets()).font);
    m_commands->fill(menuBar());
    // Keys work also while the menu bar is folded away.
    addActions(m_commands->all());
    m_folded->addActions(m_commands->places);
    m_folded->addSeparator();
    m_folded->addActions(menuBar()->actions());
    buildFrame();
    buildPlaces();
    m_menuLetters = settleMenus(*menuBar());
    for (const PlaceEntry& entry : m_places) {
        settle(*entry.widget);
    }
    const auto settleAnew = [this](QWidget* place) {
        settle(*place);
        keepApart(*m_stack, m_metrics.hasLargeTargets ? m_metrics.gap : 0);
    };
    connect(m_pump, &PumpPlace::pageMade, this, [=, this] { settleAnew(m_pump); });
    connect(m_system, &SystemPlace::pageMade, this, [=, this] { settleAnew(m_system); });
    connectFileCommands();
    connectEditCommands();
    connectClipboardCommands();
    connectWalkCommands();
    connectAdjustCommands();
    connectViewCommands();
    connectReviewCommands();
    connectPumpCommands();
    connectHelpCommands();
    connect(&m_bridge, &WorkbookBridge::changed, this, [this](const project::ChangeSet& changes) {
        if (changes.isEmpty()) {
            recallPerson();
        }
        refresh();
    });
    connect(&m_bridge, &WorkbookBridge::reverted, this, &MainWindow::showReverted);
    connect(&m_bridge, &WorkbookBridge::instrumentChanged, this, [this] {
        rememberPerson();
        refresh();
    });
    connect(&m_bridge, &WorkbookBridge::messageRaised, this, &MainWindow::raise);
    connect(&m_bridge, &WorkbookBridge::messageCleared, m_notice, &NoticeLine::clearMessage);
    setAcceptDrops(true);
    if (!restoreGeometry(m_preferences.windowGeometry())) {
        resize(1280, 720);
    }
    applyLook();
    refreshRecent();
    fillLanguages();
    refresh();
    showPlace(Walk);
    tellLastJob();
}

void MainWindow::settle(QWidget& place) {
    settleLetters(place, m_menuLetters);
    // Enter presses the button in hand, as it does in a dialog.
    for (QPushButton* button : place.findChildren<QPushButton*>()) {
        button->setAutoDefault(true);
    }
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
    m_keyLine->setWordWrap(true);
    m_keyLine->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Minimum);

    // The notice has the width of both, so that the place and the pad keep their height.
    auto* content = new QHBoxLayout;
    content->setContentsMargins(0, 0, 0, 0);
    content->setSpacing(0);
    content->addWidget(m_stack, 1);
    content->addWidget(m_pad, 0, Qt::AlignTop);
    auto* right = new QVBoxLayout;
    right->setContentsMargins(0, 0, 0, 0);
    right->setSpacing(0);
    right->addWidget(m_notice);
    right->addLayout(content, 1);
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
            goTo(static_cast<Place>(row));
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
    m_placeNames = {tr("Job"),  tr("System"), tr("Walk"),  tr("Adjust"),
                    tr("Pump"), tr("Review"), tr("Report")};
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        m_stack->addWidget(laidOutLater(new PlaceArea(m_places[i].widget, m_stack)));
        m_sideList->addPlace(kPlaceNumbers[i], m_placeNames[static_cast<qsizetype>(i)]);
        connect(m_commands->places[static_cast<qsizetype>(i)], &QAction::triggered, this,
                [this, i] { goTo(static_cast<Place>(i)); });
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
    if (m_bridge.isOpen()) {
        m_preferences.rememberPlace(m_bridge.workbook()->workbookId(), place);
    }
    arrange();
    m_places[index].takeFocus();
    refreshCommands();
}

void MainWindow::goTo(Place to) {
    if (to != place() && m_isNoticeOfPlace) {
        m_notice->clearMessage();
    }
    showPlace(to);
}

MainWindow::Place MainWindow::place() const {
    return static_cast<Place>(m_stack->currentIndex());
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
    // Where it cannot undo it says what to do instead.
    m_commands->undo->setEnabled(!undo.isEmpty() || isReviewStepNewest());
    m_commands->redo->setEnabled(!redo.isEmpty());
    m_commands->adjustOrHold->setText(place() == Adjust ? tr("&Hold Here, Go to Next Valve")
                                                        : tr("A&djust This Valve"));
    for (QAction* action : {m_commands->takeFix, m_commands->adjustOrHold, m_commands->readReference,
                            m_commands->readShutValve, m_commands->takeAdvice}) {
        action->setEnabled(isWritable);
    }
    m_commands->tableTwin->setEnabled(place() == Pump || place() == Walk || place() == Review ||
                                      place() == System);
    for (QAction* action :
         {m_commands->readAgain, m_commands->doubtful, m_commands->cannotRead, m_commands->closeRound}) {
        action->setEnabled(isRoundOpen);
    }
    m_commands->note->setEnabled(isWritable && !m_bridge.project().branches().empty());
    m_commands->newRound->setEnabled(isWritable && !m_bridge.project().branches().empty());
    for (QAction* action : {m_commands->addBranch, m_commands->moveUp, m_commands->moveDown}) {
        action->setEnabled(isWritable);
    }
    m_commands->mergeCopy->setEnabled(isWritable);
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
    for (QAction* action : {m_commands->printWalkSheet, m_commands->saveWalkSheet}) {
        action->setEnabled(m_bridge.isOpen() && !m_bridge.project().branches().empty());
    }
    for (QAction* action : {m_commands->save, m_commands->saveCopy, m_commands->exportCsv,
                            m_commands->exportSpreadsheet, m_commands->exportJson, m_commands->close,
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
    // In as many words as there is room for.
    for (const auto length :
         {StripLength::Full, StripLength::Middle, StripLength::Short, StripLength::Least}) {
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

void MainWindow::raise(const base::Fault& fault) {
    const bool isGood = fault.is(kCheckpointStored) || fault.is(kCopySaved) || fault.is(kGoneElsewhere) ||
                        fault.is(kFileWritten) || fault.is(kImported) || fault.is(kMerged) ||
                        fault.is(kNothingNew) || fault.is(kGaugesRead) || fault.is(kAllReadByMeter) ||
                        fault.is(kRoundOpenedByTry) || fault.is(kUndone) || fault.is(kDoneAgain) ||
                        fault.is(kLastJob);
    m_isNoticeOfPlace = !m_bridge.notStored() && !fault.is(kNobodyChosen) && !fault.is(kClockBehind);
    m_notice->showMessage(text::text(fault), !isGood);
    refreshStrip();
    setWindowModified(m_bridge.notStored().has_value());
}

}  // namespace ww::ui
