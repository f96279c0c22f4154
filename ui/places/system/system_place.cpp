#include "ui/places/system/system_place.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QVBoxLayout>

#include "core/pump_room/pump_picture.h"
#include "ui/places/column_fit.h"
#include "ui/places/system/branch_edit.h"
#include "ui/text/words.h"
#include "ui/widgets/hinted_field.h"
#include "ui/widgets/laid_out_later.h"
#include "ui/widgets/side_by_side.h"
#include "ui/widgets/text_scale.h"

namespace ww::ui {
namespace {

/// Digits that the column "Serves" has at least.
constexpr int kLeastServes = 9;
constexpr base::MessageForm kNewBranchFlow{
    "new_branch_flow", "its design flow is {1} to begin with; type its own, and by which branch it is fed"};
constexpr int kFindWidth = 180;
constexpr int kLeastFind = 100;

}  // namespace

SystemPlace::SystemPlace(WorkbookBridge& bridge, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_model(new SystemModel(bridge, this)),
      m_table(new EntryTable(this)),
      m_delegate(new BranchDelegate(this)),
      m_content(new CurrentStack(this)),
      m_empty(new QLabel(this)),
      m_drawing(new QWidget(this)),
      m_diagram(new schematic::SchematicView(this)),
      m_key(new schematic::SchematicKey(this)),
      m_bench(new system::WhatIfBench(this)),
      m_splitter(new QSplitter(Qt::Vertical, this)),
      m_whatIf(new QPushButton(tr("&Try What If"), this)),
      m_showValves(new QPushButton(tr("Valve Ta&bles"), this)),
      m_below(new QWidget(this)),
      m_sums(new QLabel(this)),
      m_showWithout(new QPushButton(tr("Show"), this)),
      m_find(new HintedField(tr("tag"), this)),
      m_add(new QPushButton(tr("Add Branch"), this)),
      m_paste(new QPushButton(tr("Paste Table"), this)),
      m_others(new QPushButton(tr("Show Other Columns"), this)) {
    setAccessibleName(tr("System"));
    m_table->setModel(m_model);
    m_table->setItemDelegate(m_delegate);
    m_table->setAccessibleName(tr("Branches"));
    m_table->setAccessibleDescription(tr("Type to change a cell; Enter goes down, Tab goes right"));
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_table->setStore([this](const QModelIndex& cell, const QString& text) { return store(cell, text); });
    m_sums->setTextFormat(Qt::RichText);
    m_sums->setWordWrap(true);
    m_sums->setAccessibleName(tr("Sums of the system"));
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setWordWrap(true);
    m_empty->setObjectName(QStringLiteral("empty_state"));
    m_empty->setAccessibleName(tr("What is missing here"));
    m_content->addWidget(laidOutLater(m_table));
    m_content->addWidget(m_empty);
    m_content->addWidget(m_bench);
    auto* under = new QHBoxLayout;
    under->setContentsMargins(0, 0, 0, 0);
    under->addWidget(m_key, 1, Qt::AlignTop);
    under->addWidget(zoomButtons(), 0, Qt::AlignTop);
    auto* drawing = new QVBoxLayout(m_drawing);
    drawing->setContentsMargins(0, 0, 0, 0);
    drawing->addWidget(m_diagram, 1);
    drawing->addLayout(under);
    m_splitter->addWidget(m_drawing);
    m_splitter->addWidget(m_content);
    m_splitter->setSizes({260, 300});
    m_splitter->setChildrenCollapsible(false);
    m_whatIf->setCheckable(true);
    m_whatIf->setAccessibleName(tr("Try what if"));
    m_showValves->setCheckable(true);

    auto* findLabel = new QLabel(tr("&Find branch"), this);
    findLabel->setBuddy(m_find);
    m_find->setAccessibleName(tr("Find branch"));
    m_others->setCheckable(true);
    m_others->hide();
    connect(m_others, &QPushButton::toggled, this, &SystemPlace::fitColumns);
    const auto lineOf = [this](std::initializer_list<QWidget*> widgets) {
        auto* made = new QWidget(this);
        auto* line = new QHBoxLayout(made);
        line->setContentsMargins(0, 0, 0, 0);
        for (QWidget* widget : widgets) {
            line->addWidget(widget);
        }
        line->addStretch(1);
        return made;
    };
    auto* buttons = new SideBySide({lineOf({m_add, m_paste, m_whatIf}), 0, 0, 0},
                                   {lineOf({m_others, m_showValves}), 0, 1, 0}, this);
    auto* finding = new QWidget(this);
    auto* search = new QHBoxLayout(finding);
    search->setContentsMargins(0, 0, 0, 0);
    search->addStretch(1);
    search->addWidget(findLabel);
    search->addWidget(m_find);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(8, 4, 12, 8);
    layout->addWidget(new SideBySide({buttons, 0, 1, 0}, {finding, kFindWidth, 0, 0}, this));
    layout->addWidget(m_splitter, 1);
    m_whole = layout;
    auto* below = new QHBoxLayout(m_below);
    below->setContentsMargins(0, 0, 0, 0);
    below->addWidget(m_sums, 1);
    below->addWidget(m_showWithout, 0, Qt::AlignBottom);
    m_showWithout->setAccessibleName(tr("Show the first terminal without a valve table"));
    m_showWithout->hide();
    layout->addWidget(m_below);

    connect(m_showWithout, &QPushButton::clicked, this, &SystemPlace::showWithoutTable);
    connect(m_add, &QPushButton::clicked, this, &SystemPlace::addBranch);
    connect(m_find, &QLineEdit::returnPressed, this, &SystemPlace::jump);
    connect(m_whatIf, &QPushButton::toggled, this, &SystemPlace::showWhatIf);
    connect(m_showValves, &QPushButton::toggled, this, &SystemPlace::showValves);
    connect(m_paste, &QPushButton::clicked, this, &SystemPlace::paste);
    connect(&m_bench->model(), &system::WhatIfModel::refused, &bridge,
            [this](const base::Fault& why) { m_bridge.tell(why); });
    connect(m_bench, &system::WhatIfBench::taken, &bridge, &WorkbookBridge::messageCleared);
    connect(m_diagram, &schematic::SchematicView::currentChanged, &bridge, &WorkbookBridge::selectBranch);
    connect(m_diagram, &schematic::SchematicView::activated, this, [this](const base::Id& branch) {
        showBranch(branch);
        (m_whatIf->isChecked() ? static_cast<QWidget*>(m_bench) : m_table)->setFocus(Qt::OtherFocusReason);
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) {
                if (current.isValid() && isVisible()) {
                    m_bridge.selectBranch(m_model->branchAt(current.row()));
                }
            });
    connect(&bridge, &WorkbookBridge::branchSelected, this, [this] {
        if (const auto branch = m_bridge.selectedBranch()) {
            showBranch(*branch);
        }
    });
    connect(m_table, &EntryTable::resized, this, &SystemPlace::fitColumns);
    connect(&bridge, &WorkbookBridge::changed, this, &SystemPlace::refresh);
    refresh();
}

void SystemPlace::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    m_delegate->setTokens(tokens);
    m_diagram->setTokens(tokens);
    m_key->setTokens(tokens);
    if (m_valves != nullptr) {
        m_valves->setTokens(tokens);
    }
    refresh();
}

void SystemPlace::setMetrics(const theme::Metrics& metrics) {
    m_table->verticalHeader()->setMinimumSectionSize(metrics.rowHeight);
    m_table->verticalHeader()->setDefaultSectionSize(metrics.rowHeight);
    m_table->horizontalHeader()->setFixedHeight(
        std::max(metrics.noticeHeight, 2 * m_table->fontMetrics().height() + 8));
    m_sums->setMinimumHeight(metrics.totalsHeight);
    m_find->setMinimumWidth(static_cast<int>(kLeastFind * textScale(font())));
    m_find->setMaximumWidth(static_cast<int>(kFindWidth * textScale(font())));
    for (QPushButton* zoom : m_zooms) {
        zoom->setMinimumWidth(metrics.controlHeight);
    }
    m_metrics = metrics;
    if (m_valves != nullptr) {
        m_valves->setMetrics(metrics);
    }
    fitColumns();
}

void SystemPlace::takeFocus() {
    if (m_showValves->isChecked()) {
        valves()->takeFocus();
        return;
    }
    (m_model->rowCount() > 0 ? static_cast<QWidget*>(m_table) : m_add)->setFocus(Qt::OtherFocusReason);
}

void SystemPlace::fitColumns() {
    constexpr int digits[] = {9, kLeastServes, 6, 12, 11, 6, 8, 10, 7, 8, 8, 8};
    static_assert(std::size(digits) == SystemModel::ColumnCount, "a width for each column");
    const bool areHidden = ui::fitColumnsInTurn(*m_table, digits, SystemModel::Serves, m_others->isChecked());
    m_others->setVisible(areHidden && m_model->rowCount() > 0);
}

void SystemPlace::setNarrow(bool isNarrow) {
    constexpr int kDiagramHeight = 170;
    // The head and some rows.
    const int tableHeight = m_metrics.noticeHeight + 4 * m_metrics.rowHeight;
    m_diagram->setMinimumHeight(isNarrow ? kDiagramHeight : 0);
    m_content->setMinimumHeight(isNarrow ? tableHeight : 0);
}

void SystemPlace::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refreshDiagram();
}

void SystemPlace::showWhatIf(bool isShown) {
    m_whatIf->setChecked(isShown);
    refresh();
    if (isShown && isVisible()) {
        m_bench->setFocus(Qt::OtherFocusReason);
    }
}

void SystemPlace::tryWhatIf() {
    m_showValves->setChecked(false);
    showWhatIf(true);
}

void SystemPlace::toggleWhatIf() {
    if (m_showValves->isChecked() || !m_whatIf->isChecked()) {
        tryWhatIf();
    } else {
        showWhatIf(false);
        takeFocus();
    }
}

ValvePage* SystemPlace::valves() {
    if (m_valves == nullptr) {
        m_valves = new ValvePage(m_bridge, this);
        m_valves->hide();
        m_whole->insertWidget(m_whole->indexOf(m_below), m_valves, 1);
        m_valves->setTokens(m_tokens);
        m_valves->setMetrics(m_metrics);
        connect(m_valves, &ValvePage::tablePasted, this,
                [this](const QString& text) { emit tablePasted(QStringLiteral("valves.csv"), text); });
        emit pageMade();
    }
    return m_valves;
}

void SystemPlace::showValves(bool isShown) {
    m_showValves->setChecked(isShown);
    m_splitter->setVisible(!isShown);
    m_below->setVisible(!isShown);
    if (isShown || m_valves != nullptr) {
        valves()->setVisible(isShown);
    }
    refresh();
    if (isVisible()) {
        takeFocus();
    }
}

void SystemPlace::watch(const LoopAdvisor& advisor) {
    m_advisor = &advisor;
    connect(&advisor, &LoopAdvisor::changed, this, &SystemPlace::teachBench);
}

/// The learned loop where it fits the readings, else the design: the bench says which.
void SystemPlace::teachBench() {
    if (m_advisor == nullptr || !m_whatIf->isChecked() || !isVisible()) {
        return;
    }
    const LoopPicture* picture = m_advisor->picture();
    if (picture == nullptr) {
        m_bench->setLearned({}, 1);
        return;
    }
    m_bench->setLearned(pump_room::usableResistances(m_bridge.project(), picture->learned),
                        picture->learned.present.pumpCurveFactor);
}

void SystemPlace::refresh() {
    const bool hasBranches = m_model->rowCount() > 0;
    m_add->setEnabled(!m_bridge.isReadOnly());
    m_paste->setEnabled(m_bridge.isOpen() && !m_bridge.isReadOnly());
    m_find->setEnabled(hasBranches);
    m_empty->setText(
        m_bridge.isOpen()
            ? tr("Add the first branch (Ctrl+Shift+A), paste a branch table (Ctrl+V), or make the job "
                 "from tables (Ctrl+Shift+I).")
            : tr("No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N)."));
    m_whatIf->setEnabled(hasBranches && !m_showValves->isChecked());
    m_showValves->setEnabled(m_bridge.isOpen());
    QWidget* const full = m_whatIf->isChecked() ? static_cast<QWidget*>(m_bench) : m_table;
    m_content->setCurrentWidget(hasBranches ? full : m_empty);
    refreshDiagram();
    refreshSums();
    if (hasBranches && !m_table->currentIndex().isValid()) {
        const auto selected = m_bridge.selectedBranch();
        const int row = selected ? m_model->rowOf(*selected) : 0;
        m_table->setCurrentIndex(m_model->index(std::max(0, row), SystemModel::Tag));
    }
}

void SystemPlace::paste() {
    if (m_showValves->isChecked()) {
        valves()->paste();
    } else {
        emit tablePasted(QStringLiteral("branches.csv"), QApplication::clipboard()->text());
    }
}

void SystemPlace::moveBranch(int steps) {
    if (const auto branch = m_bridge.selectedBranch()) {
        const auto moved = movedBranch(m_bridge.project(), *branch, steps);
        if (m_bridge.tellOrClear(moved ? m_bridge.apply(*moved) : base::Outcome(moved.fault()))) {
            showBranch(*branch);
        }
    }
}

void SystemPlace::findBranch() {
    m_showValves->setChecked(false);
    m_find->setFocus(Qt::ShortcutFocusReason);
    m_find->selectAll();
}

void SystemPlace::jump() {
    const QString wanted = m_find->text().trimmed();
    for (int row = 0; row < m_model->rowCount() && !wanted.isEmpty(); ++row) {
        const QModelIndex cell = m_model->index(row, SystemModel::Tag);
        if (cell.data().toString().contains(wanted, Qt::CaseInsensitive)) {
            m_table->setCurrentIndex(cell);
            m_table->setFocus(Qt::OtherFocusReason);
            m_find->setText(QString());
            return;
        }
    }
    m_find->selectAll();
}

void SystemPlace::addBranch() {
    m_showValves->setChecked(false);
    if (!m_table->settleEdit()) {
        return;  // A new row would be beside the text that still waits to be mended.
    }
    const base::Id id = m_bridge.newId();
    const base::Outcome done = m_bridge.apply(newBranch(m_bridge.project(), m_bridge.selectedBranch(), id));
    if (!done) {
        emit m_bridge.messageRaised(done.fault());
        return;
    }
    const project::Project& project = m_bridge.project();
    const project::Branch& made = project.branches().at(id);
    if (made.designFlow) {
        emit m_bridge.messageRaised(base::Fault{&kNewBranchFlow, made.tag, {made.designFlow->text()}});
    }
    m_bridge.selectBranch(id);
    m_table->setFocus(Qt::OtherFocusReason);
}

void SystemPlace::showBranch(const base::Id& branch) {
    const int row = m_model->rowOf(branch);
    if (row >= 0 && row != m_table->currentIndex().row()) {
        const int column = std::max(0, m_table->currentIndex().column());
        m_table->setCurrentIndex(m_model->index(row, column));
    }
    m_diagram->setCurrent(branch);
    m_bench->setCurrent(branch);
}

bool SystemPlace::store(const QModelIndex& cell, const QString& text) {
    const auto edit = branchEdit(m_bridge.project(), m_model->branchAt(cell.row()),
                                 static_cast<SystemModel::Column>(cell.column()), text);
    if (!edit) {
        emit m_bridge.messageRaised(edit.fault());
        return false;
    }
    const base::Outcome done = edit->isEmpty() ? base::Outcome(base::Done{}) : m_bridge.apply(*edit);
    if (!done) {
        emit m_bridge.messageRaised(done.fault());
        return false;
    }
    emit m_bridge.messageCleared();
    return true;
}

}  // namespace ww::ui
