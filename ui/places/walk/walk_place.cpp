#include "ui/places/walk/walk_place.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>
#include <algorithm>

#include "core/balancing/walk_forms.h"
#include "ui/charts/chart_view.h"
#include "ui/charts/convergence_chart_data.h"
#include "ui/models/branch_roles.h"
#include "ui/places/reading_fix.h"
#include "ui/places/reading_notice.h"
#include "ui/text/format.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

constexpr base::MessageForm kValveNotFound{
    "valve_not_found", "no valve of the route is called \"{1}\"; type its tag or its number"};
constexpr base::MessageForm kTypeAgain{
    "type_again", "the next value typed is kept beside the first, the mean counts; type it and press Enter"};
constexpr base::MessageForm kTypeOver{
    "type_over", "the next value typed takes the place of the doubtful one; type it and press Enter"};

}  // namespace

WalkPlace::WalkPlace(WorkbookBridge& bridge, const LoopAdvisor& advisor, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_advisor(advisor),
      m_model(new WalkModel(bridge, this)),
      m_grid(new WalkGrid(*m_model, this)),
      m_content(new QStackedWidget(this)),
      m_gridPage(new QWidget(this)),
      m_convergence(new charts::ChartView(this)),
      m_empty(new QLabel(this)),
      m_totals(new QLabel(this)),
      m_find(new QLineEdit(this)),
      m_side(new QStackedWidget(this)),
      m_valve(new ValvePanel(bridge, advisor, this)),
      m_opening(new OpenRoundPanel(bridge, this)),
      m_closing(new CloseRoundPanel(bridge, this)),
      m_roundButton(new QPushButton(this)) {
    setAccessibleName(tr("Walk"));
    buildLayout();
    m_grid->setStore([this](const QModelIndex& cell, const QString& text) { return store(cell, text); });
    connect(m_grid, &EntryTable::enteredAtEnd, this,
            [this] { m_roundButton->setFocus(Qt::OtherFocusReason); });
    connect(m_grid->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current, const QModelIndex& previous) {
                if (current.isValid() && current.row() != previous.row()) {
                    m_bridge.selectBranch(m_model->branchAt(current.row()));
                }
                if (m_repeatBranch && m_repeatBranch != m_bridge.selectedBranch()) {
                    m_repeatBranch.reset();
                }
            });
    connect(&bridge, &WorkbookBridge::changed, this, &WalkPlace::refresh);
    connect(&bridge, &WorkbookBridge::branchSelected, this, [this] {
        const auto branch = m_bridge.selectedBranch();
        if (branch &&
            (!m_grid->currentIndex().isValid() || m_model->branchAt(m_grid->currentRow()) != *branch)) {
            showBranch(*branch);
        }
    });
    connect(&advisor, &LoopAdvisor::changed, this, &WalkPlace::refreshTotals);
    connect(m_find, &QLineEdit::returnPressed, this, &WalkPlace::jump);
    connect(m_valve, &ValvePanel::noteDone, this, &WalkPlace::takeFocus);
    connect(m_roundButton, &QPushButton::clicked, this,
            [this] { m_bridge.openRoundOrNull() != nullptr ? beginClosing() : beginRound(); });
    for (auto signal : {&OpenRoundPanel::opened, &OpenRoundPanel::givenUp}) {
        connect(m_opening, signal, this, [this] {
            showPanel(m_valve);
            showWhatThereIs();
            takeFocus();
        });
    }
    // A walk begins with the first valve of the route.
    connect(m_opening, &OpenRoundPanel::opened, this, [this] { m_grid->goToRow(0, false); });
    for (auto signal : {&CloseRoundPanel::closed, &CloseRoundPanel::givenUp}) {
        connect(m_closing, signal, this, [this] {
            showPanel(m_valve);
            takeFocus();
        });
    }
    connect(m_closing, &CloseRoundPanel::valveWanted, this, [this](const base::Id& branch) {
        showPanel(m_valve);
        showBranch(branch);
        m_grid->setFocus(Qt::OtherFocusReason);
    });
    refresh({});
}

void WalkPlace::buildLayout() {
    auto* gridLayout = new QVBoxLayout(m_gridPage);
    gridLayout->setContentsMargins(0, 0, 0, 0);
    gridLayout->setSpacing(4);
    gridLayout->addWidget(m_grid, 1);
    gridLayout->addWidget(m_totals);
    m_totals->setTextFormat(Qt::RichText);
    m_totals->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_totals->setAccessibleName(tr("Totals of the round"));
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setWordWrap(true);
    m_empty->setObjectName(QStringLiteral("empty_state"));
    m_empty->setAccessibleName(tr("What is missing here"));
    m_content->addWidget(m_gridPage);
    m_content->addWidget(m_empty);
    m_content->addWidget(m_convergence);

    auto* findLabel = new QLabel(tr("&Find valve"), this);
    findLabel->setBuddy(m_find);
    m_find->setAccessibleName(tr("Find valve"));
    m_find->setPlaceholderText(tr("tag or number"));
    auto* findLine = new QHBoxLayout;
    findLine->addWidget(findLabel);
    findLine->addWidget(m_find, 1);
    for (QWidget* panel : std::initializer_list<QWidget*>{m_valve, m_opening, m_closing}) {
        m_side->addWidget(panel);
    }
    m_side->setFixedWidth(248);
    m_find->setFixedWidth(160);
    auto* side = new QVBoxLayout;
    side->setSpacing(10);
    side->addLayout(findLine);
    side->addWidget(m_side, 1);
    side->addWidget(m_roundButton);

    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(8, 4, 12, 8);
    layout->setSpacing(16);
    layout->addWidget(m_content, 1);
    layout->addLayout(side);
    // A field that is left with Escape hands the keys back to the grid.
    auto* escape = new QShortcut(QKeySequence(Qt::Key_Escape), m_find, nullptr, nullptr, Qt::WidgetShortcut);
    connect(escape, &QShortcut::activated, this, &WalkPlace::takeFocus);
    auto* back = new QShortcut(QKeySequence(Qt::Key_Escape), m_convergence, nullptr, nullptr,
                               Qt::WidgetWithChildrenShortcut);
    connect(back, &QShortcut::activated, this, &WalkPlace::toggleConvergence);
    auto* pasting = new QShortcut(QKeySequence::Paste, m_grid, nullptr, nullptr, Qt::WidgetShortcut);
    connect(pasting, &QShortcut::activated, this, &WalkPlace::paste);
}

void WalkPlace::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    m_grid->setTokens(tokens, m_metrics);
    m_valve->setTokens(tokens, m_metrics);
    m_convergence->setTokens(tokens);
    refreshTotals();
}

void WalkPlace::setMetrics(const theme::Metrics& metrics) {
    m_metrics = metrics;
    m_totals->setFixedHeight(metrics.totalsHeight);
    const int width = static_cast<int>(248.0 * std::min(1.6, metrics.textPoints / 10.0));
    m_side->setFixedWidth(width);
    m_find->setFixedWidth(width * 2 / 3 - 8);
    m_grid->setTokens(m_tokens, metrics);
    m_valve->setTokens(m_tokens, metrics);
}

void WalkPlace::takeFocus() {
    if (m_side->currentWidget() == m_opening) {
        m_opening->begin();
    } else if (m_content->currentWidget() == m_gridPage) {
        m_grid->setFocus(Qt::OtherFocusReason);
    } else if (isConvergenceShown()) {
        m_convergence->setFocus(Qt::OtherFocusReason);
    }
}

void WalkPlace::refresh(const project::ChangeSet& changes) {
    if (changes.isEmpty()) {
        m_repeatBranch.reset();
        showPanel(m_valve);
    }
    if (changes.isEmpty() || !m_grid->currentIndex().isValid()) {
        const auto selected = m_bridge.selectedBranch();
        const int row = selected ? m_model->rowOf(*selected) : 0;
        m_grid->goToRow(std::max(0, row), false);
    }
    showWhatThereIs();
    refreshTotals();
}

void WalkPlace::showWhatThereIs() {
    const project::Project& project = m_bridge.project();
    const project::Round* last = project.lastRound();
    const bool isOpen = m_bridge.openRoundOrNull() != nullptr;
    QString missing;
    if (!m_bridge.isOpen()) {
        missing =
            tr("No workbook is open. Open one (Ctrl+O), make a new job (Ctrl+N), or practice on a "
               "simulated building (Ctrl+Shift+P). F1 shows the handbook.");
    } else if (m_model->rowCount() == 0) {
        missing = tr("No valve to read yet. Add the branches in System (Alt+2).");
    } else if (last == nullptr) {
        missing = tr("No round yet. Open Round 1 (Ctrl+Shift+N).");
    }
    m_empty->setText(missing);
    if (!missing.isEmpty() || !isConvergenceShown()) {
        m_content->setCurrentWidget(missing.isEmpty() ? static_cast<QWidget*>(m_gridPage) : m_empty);
    } else {
        showConvergence();
    }
    m_roundButton->setText(isOpen            ? tr("Close Round %1…").arg(last->number)
                           : last == nullptr ? tr("Open Round 1…")
                                             : tr("Open Round %1…").arg(last->number + 1));
    m_roundButton->setEnabled(!m_bridge.isReadOnly() && m_model->rowCount() > 0);
    m_roundButton->setVisible(m_side->currentWidget() == m_valve);
    m_find->setEnabled(missing.isEmpty());
}

void WalkPlace::showPanel(QWidget* panel) {
    m_side->setCurrentWidget(panel);
    m_roundButton->setVisible(panel == m_valve);
    emit hintChanged();
}

QString WalkPlace::hint() const {
    if (isConvergenceShown()) {
        return tr("Ctrl+T numbers as a table   |   Ctrl+G back to the grid");
    }
    if (m_side->currentWidget() == m_opening) {
        return tr("Enter opens the round   |   Tab next choice   |   Esc back to the grid");
    }
    if (m_side->currentWidget() == m_closing) {
        return tr("Enter stores the reason   |   Tab next item   |   Esc back to the grid");
    }
    if (m_bridge.isOpen() && m_model->rowCount() > 0 && m_bridge.openRoundOrNull() == nullptr) {
        return tr(
            "Ctrl+Shift+N opens the next round   |   Alt+4 adjust   |   Ctrl+J find   |   Ctrl+G "
            "convergence");
    }
    return tr(
        "digits Enter next valve   |   Tab setting   |   x cannot read   |   Ctrl+J find   |   "
        "Ctrl+R again   |   F6 leaves the grid");
}

void WalkPlace::refreshTotals() {
    const balancing::Assessment& all = m_bridge.assessment();
    const project::Project& project = m_bridge.project();
    // Figures that rest partly on an earlier round are marked and drawn soft.
    const QString about = all.isComplete ? QString() : QStringLiteral("~");
    const QString color = (all.isComplete ? m_tokens.ink : m_tokens.soft).name();
    QStringList parts;
    const auto part = [&](const QString& label, const QString& value) {
        parts << QStringLiteral("%1 <b style='color:%2'>%3</b>").arg(label.toHtmlEscaped(), color, value);
    };
    if (all.totalFlow) {
        part(tr("total"), about + text::flow(*all.totalFlow, project) + QChar(0xA0) +
                              text::symbol(text::flowUnit(project)));
        if (all.totalDesign.si() > 0.0) {
            part(tr("of design"),
                 about + text::percent(quantity::Ratio::si(*all.totalFlow / all.totalDesign)) + tr(" %"));
        }
    }
    if (all.round) {
        part(tr("on share"), QStringLiteral("%1/%2").arg(all.onShareCount).arg(all.terminalCount));
    }
    const auto carried = std::count_if(
        all.branches.begin(), all.branches.end(),
        [](const balancing::BranchResult& branch) { return branch.isTerminal && branch.isFromEarlierRound; });
    if (carried > 0) {
        part(tr("carried over"), tr("%1 of %2").arg(carried).arg(all.terminalCount));
    }
    if (all.spread) {
        part(tr("spread"), about + text::percent(*all.spread) + tr(" %"));
    }
    const LoopPicture* picture = m_advisor.picture();
    if (picture != nullptr && !picture->learned.doubtful.empty()) {
        part(tr("doubts"), QString::number(picture->learned.doubtful.size()));
    }
    if (all.oldestReading && m_bridge.openRoundOrNull() != nullptr) {
        part(tr("oldest reading"), text::age(*all.oldestReading, m_bridge.now()));
    }
    m_totals->setText(parts.join(QStringLiteral("&nbsp;&nbsp; ")));
}

std::optional<base::Id> WalkPlace::branchInHand() const {
    const int row = m_grid->currentRow();
    return row >= 0 ? std::optional(m_model->branchAt(row)) : std::nullopt;
}

bool WalkPlace::store(const QModelIndex& cell, const QString& text) {
    const base::Id branch = m_model->branchAt(cell.row());
    if (text.trimmed().isEmpty()) {
        return true;  // Enter alone walks past
    }
    if (cell.column() == WalkModel::Setting) {
        if (!m_bridge.tell(m_bridge.storeSetting(branch, text))) {
            return false;
        }
    } else if (text.trimmed().compare(QStringLiteral("x"), Qt::CaseInsensitive) == 0) {
        if (!m_bridge.tell(m_bridge.storeCannotBeRead(branch))) {
            return false;
        }
    } else {
        const bool isRepeat = m_repeatBranch == branch;
        if (!m_bridge.tell(isRepeat ? m_bridge.storeRepeat(branch, text) : m_bridge.storeDp(branch, text))) {
            return false;
        }
        m_repeatBranch.reset();
    }
    m_grid->flash(cell.row());
    tellDoubt(m_bridge, branch);
    return true;
}

void WalkPlace::findValve() {
    m_find->setFocus(Qt::ShortcutFocusReason);
    m_find->selectAll();
}

void WalkPlace::jump() {
    const int row = m_model->rowFound(m_find->text());
    if (row < 0) {
        emit m_bridge.messageRaised(base::Fault{&kValveNotFound, {}, {m_find->text().toStdString()}});
        m_find->selectAll();
        return;
    }
    m_find->clear();
    m_grid->goToRow(row, true);
    m_grid->setFocus(Qt::OtherFocusReason);
}

void WalkPlace::editNote() {
    showPanel(m_valve);
    m_valve->editNote();
}

void WalkPlace::beginRound() {
    if (const project::Round* open = m_bridge.openRoundOrNull()) {
        emit m_bridge.messageRaised(
            base::Fault{&balancing::kAnotherRoundOpen, {}, {std::to_string(open->number)}});
        return;
    }
    showPanel(m_opening);
    m_opening->begin();
}

void WalkPlace::beginClosing() {
    if (m_bridge.openRoundOrNull() == nullptr) {
        emit m_bridge.messageRaised(base::Fault{&kNoRoundOpen, {}, {}});
        return;
    }
    showPanel(m_closing);
    m_closing->begin();
}

void WalkPlace::readAgain() {
    const auto branch = branchInHand();
    if (!branch) {
        return;
    }
    // A doubtful value must not enter a mean: what is typed now takes its place.
    const balancing::DoubtfulReading* doubtful = doubtfulAt(m_advisor, m_bridge.project(), *branch);
    const project::Round* round = m_bridge.openRoundOrNull();
    const project::Reading* counting =
        round != nullptr ? balancing::countingReading(m_bridge.project(), round->id, *branch) : nullptr;
    const bool isDoubted = m_model->index(m_grid->currentRow(), WalkModel::State).data(StateRole).toInt() ==
                               static_cast<int>(balancing::State::Doubtful) ||
                           (doubtful != nullptr && counting != nullptr &&
                            std::find(doubtful->readings.begin(), doubtful->readings.end(), counting->id) !=
                                doubtful->readings.end());
    const std::string tag = m_bridge.project().branches().at(*branch).tag;
    if (!isDoubted) {
        m_repeatBranch = branch;
    }
    emit m_bridge.messageRaised(base::Fault{isDoubted ? &kTypeOver : &kTypeAgain, tag, {}});
    const QString nothing;
    m_grid->beginEdit(m_model->index(m_grid->currentRow(), WalkModel::Dp), &nothing);
}

void WalkPlace::takeFix() {
    // The fix belongs to the valve in hand or, right after Enter, to the one just left.
    for (const int row : {m_grid->currentRow(), m_grid->currentRow() - 1}) {
        if (row < 0) {
            continue;
        }
        const base::Id branch = m_model->branchAt(row);
        if (const auto taken = takeFixOf(m_bridge, m_advisor, branch)) {
            if (m_bridge.tell(*taken)) {
                m_grid->flash(row);
                tellDoubt(m_bridge, branch);
            }
            return;
        }
    }
    emit m_bridge.messageRaised(base::Fault{&kNoFixOffered, {}, {}});
}

bool WalkPlace::isConvergenceShown() const {
    return m_content->currentWidget() == m_convergence;
}

void WalkPlace::showConvergence() {
    const project::Project& project = m_bridge.project();
    std::vector<balancing::Assessment> rounds;
    for (const std::size_t i : project.roundsByNumber()) {
        rounds.push_back(m_bridge.assessmentOf(project.rounds()[i].id));
    }
    m_convergence->setFigure(charts::convergenceChart(project, rounds, m_bridge.selectedBranch()));
}

void WalkPlace::toggleConvergence() {
    if (isConvergenceShown()) {
        m_content->setCurrentWidget(m_gridPage);
    } else if (m_content->currentWidget() == m_gridPage) {
        showConvergence();
        m_content->setCurrentWidget(m_convergence);
    }
    takeFocus();
    emit hintChanged();
}

void WalkPlace::toggleTable() {
    if (isConvergenceShown()) {
        m_convergence->toggleTable();
    }
}

void WalkPlace::toggleDoubtful() {
    if (const auto branch = branchInHand()) {
        m_bridge.tell(m_bridge.toggleDoubtful(*branch));
    }
}

void WalkPlace::recordNotReadable() {
    if (const auto branch = branchInHand()) {
        m_bridge.tell(m_bridge.storeCannotBeRead(*branch));
    }
}

void WalkPlace::paste() {
    const QStringList lines = QApplication::clipboard()->text().trimmed().split('\n');
    std::vector<base::Id> branches;
    for (int row = std::max(0, m_grid->currentRow()); row < m_model->rowCount(); ++row) {
        branches.push_back(m_model->branchAt(row));
    }
    const int from = m_grid->currentRow();
    if (m_bridge.tell(m_bridge.storeColumn(branches, lines))) {
        m_grid->goToRow(std::min(from + static_cast<int>(lines.size()), m_model->rowCount() - 1), false);
    }
}

void WalkPlace::takeMeter(PracticeDesk& desk) {
    const auto branch = branchInHand();
    if (!branch) {
        return;
    }
    const auto taken = desk.takeDp(*branch, m_repeatBranch == branch);
    if (!taken) {
        emit m_bridge.messageRaised(taken.fault());
        return;
    }
    m_repeatBranch.reset();
    const int row = m_grid->currentRow();
    m_grid->flash(row);
    tellDoubt(m_bridge, *branch);
    if (*taken) {
        emit m_bridge.messageRaised(**taken);
    }
    m_grid->goToRow(std::min(row + 1, m_model->rowCount() - 1), false);
}

void WalkPlace::showBranch(const base::Id& branch) {
    m_grid->goToRow(m_model->rowOf(branch), false);
}

}  // namespace ww::ui
