#include "ui/main_window.h"

#include <QApplication>
#include <QCloseEvent>
#include <QMenu>
#include <QMenuBar>
#include <QPointer>
#include <QPushButton>
#include <QTabWidget>
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
#include "ui/widgets/entry_field.h"
#include "ui/widgets/entry_table.h"
#include "ui/widgets/laid_out_later.h"
#include "ui/widgets/note_field.h"
#include "ui/widgets/place_area.h"
#include "ui/window_look.h"

namespace ww::ui {
namespace {

/// Numbers of the places' keys: a place keeps its number while its neighbors are not there.
constexpr int kPlaceNumbers[] = {1, 2, 3, 4, 5, 6, 7};

constexpr base::MessageForm kUndone{"undone", "undone: {1}; Ctrl+Shift+Z does it again"};
constexpr base::MessageForm kDoneAgain{"done_again", "done again: {1}; Ctrl+Z takes it back"};

/// Stores what is typed in all fields of a kind; false at the first that refuses and that `show` can show.
template <class Field>
bool storeAll(const QWidget& parent, bool (Field::*store)(), const std::function<bool(QWidget*)>& show) {
    QList<QPointer<Field>> fields;
    for (Field* field : parent.findChildren<Field*>()) {
        fields << field;
    }
    for (const QPointer<Field>& field : fields) {
        // Storing one may take the page of others away.
        if (field && !(field->*store)() && field && show(field)) {
            return false;
        }
    }
    return true;
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
      m_keyLine(new QLabel(this)),
      m_pad(new NumberPad(this)),
      m_folded(new QMenu(this)) {
    qApp->installEventFilter(new PlainLabels(this));
    // What is made in the window takes its font from the start.
    setFont(lookOf(m_preferences.display(), m_preferences.textPoints(), m_preferences.hasLargeTargets()).font);
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
    middle->addWidget(m_pad, 0, Qt::AlignTop);
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
    m_placeNames = {tr("Job"),  tr("System"), tr("Walk"),  tr("Adjust"),
                    tr("Pump"), tr("Review"), tr("Report")};
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        m_stack->addWidget(laidOutLater(new PlaceArea(m_places[i].widget, m_stack)));
        m_sideList->addPlace(kPlaceNumbers[i], m_placeNames[static_cast<qsizetype>(i)]);
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
    if (m_bridge.isOpen()) {
        m_preferences.rememberPlace(m_bridge.workbook()->workbookId(), place);
    }
    arrange();
    m_places[index].takeFocus();
    refreshCommands();
}

MainWindow::Place MainWindow::place() const {
    return static_cast<Place>(m_stack->currentIndex());
}

void MainWindow::connectEditCommands() {
    connect(m_commands->undo, &QAction::triggered, this, [this] {
        m_bridge.undoLabel().isEmpty() ? tellOfWithdrawing()
                                       : revert(&WorkbookBridge::undo, kUndone, m_bridge.undoLabel());
    });
    connect(m_commands->redo, &QAction::triggered, this,
            [this] { revert(&WorkbookBridge::redo, kDoneAgain, m_bridge.redoLabel()); });
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
    connect(m_commands->valveTables, &QAction::triggered, this, [this] {
        showPlace(System);
        m_system->showValves(true);
    });
    connect(m_commands->addBranch, &QAction::triggered, this, [this] {
        showPlace(System);
        m_system->addBranch();
    });
    for (const auto& [action, steps] :
         {std::pair(m_commands->moveUp, -1), std::pair(m_commands->moveDown, 1)}) {
        connect(action, &QAction::triggered, this, [this, steps = steps] {
            showPlace(System);
            m_system->moveBranch(steps);
        });
    }
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
    for (const auto length : {StripLength::Full, StripLength::Middle, StripLength::Short}) {
        if (m_isSmall && length != StripLength::Short) {
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

void MainWindow::revert(base::Outcome (WorkbookBridge::*step)(), const base::MessageForm& done,
                        const QString& label) {
    m_notice->clearMessage();
    const Place before = place();
    const base::Outcome outcome = (m_bridge.*step)();
    if (!outcome) {
        raise(outcome.fault());
    } else if (place() != before) {
        raise(base::Fault{&done, {}, {label.toStdString()}});
    }
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
    } else if (shown == Walk && changes.touches(RecordKind::Attachment) &&
               !changes.touches(RecordKind::Deficiency)) {
        // The photos of a valve are shown beside its readings.
    } else if (changes.touches(RecordKind::Reading) || changes.touches(RecordKind::Round) ||
               (shown == Walk && changes.touches(RecordKind::Branch))) {
        shown = Walk;
    } else if (changes.touches(RecordKind::Pump) || changes.touches(RecordKind::SetPoint) ||
               (changes.touches(RecordKind::PumpReading) && shown != Walk)) {
        shown = Pump;
    } else if (changes.touches(RecordKind::Branch) || changes.touches(RecordKind::ValveModel)) {
        shown = System;
    } else if (changes.touches(RecordKind::Job) || changes.touches(RecordKind::Instrument) ||
               changes.touches(RecordKind::Person) || changes.touches(RecordKind::ReadinessLine) ||
               changes.touches(RecordKind::Deficiency) || changes.touches(RecordKind::Attachment)) {
        shown = Job;
    }
    if (shown != place()) {
        showPlace(shown);
        if (shown == Job) {
            m_job->showChanged(changes);
        }
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
    const bool isGood = fault.is(kCheckpointStored) || fault.is(kCopySaved) || fault.is(kGoneElsewhere) ||
                        fault.is(kFileWritten) || fault.is(kImported) || fault.is(kMerged) ||
                        fault.is(kNothingNew) || fault.is(kGaugesRead) || fault.is(kAllReadByMeter) ||
                        fault.is(kRoundOpenedByTry) || fault.is(kUndone) || fault.is(kDoneAgain) ||
                        fault.is(kLastJob);
    m_notice->showMessage(text::text(fault), !isGood);
    refreshStrip();
    setWindowModified(m_bridge.notStored().has_value());
}

bool MainWindow::storeTyped() {
    const auto show = [this](QWidget* field) { return showRefused(field); };
    if (!storeAll(*this, &EntryTable::commitEdit, show) || !storeAll(*this, &EntryField::commit, show) ||
        !storeAll(*this, &NoteField::commit, show)) {
        return false;
    }
    QWidget* refused = m_adjust->storeFields();
    if (refused != nullptr && showRefused(refused)) {
        return false;
    }
    if (QWidget* field = focusWidget()) {
        // Other fields store when they are left.
        field->clearFocus();
    }
    return true;
}

bool MainWindow::showRefused(QWidget* field) {
    const QString why = m_notice->message();
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        if (m_places[i].widget->isAncestorOf(field) && place() != static_cast<Place>(i)) {
            showPlace(static_cast<Place>(i));
        }
    }
    for (QWidget* at = field; at->parentWidget() != nullptr; at = at->parentWidget()) {
        auto* tabs = qobject_cast<QTabWidget*>(at->parentWidget()->parentWidget());
        if (tabs != nullptr && tabs->indexOf(at) >= 0) {
            tabs->setCurrentWidget(at);
        }
    }
    // A panel that was left keeps no window open: what it refused was told when it was left.
    if (!field->isVisible()) {
        return false;
    }
    if (auto* line = qobject_cast<QLineEdit*>(field)) {
        line->setFocus(Qt::OtherFocusReason);
        line->selectAll();
    } else if (auto* note = qobject_cast<NoteField*>(field)) {
        note->setFocus(Qt::OtherFocusReason);
    }
    m_notice->showMessage(why, true);
    return true;
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!storeTyped()) {
        event->ignore();
        return;
    }
    m_preferences.setWindowGeometry(saveGeometry());
    QMainWindow::closeEvent(event);
}

}  // namespace ww::ui
