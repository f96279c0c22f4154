#include "ui/places/review/review_place.h"

#include <QHeaderView>
#include <algorithm>
#include <utility>

#include "core/project/review.h"
#include "ui/places/review/compared_rows.h"
#include "ui/text/format.h"
#include "ui/text/typed_word.h"
#include "ui/text/words.h"
#include "ui/widgets/focus_ring.h"
#include "ui/widgets/wrapped_head.h"

namespace ww::ui {

using balancing::ComparisonOrder;

namespace {

constexpr int kLeastRoundText = 16;
constexpr int kLeastOrderText = 20;

void makeReadable(QTableView* table, QAbstractItemModel* model, BranchDelegate* delegate) {
    table->setModel(model);
    table->setItemDelegate(delegate);
    table->setTabKeyNavigation(false);
    table->setSelectionBehavior(QAbstractItemView::SelectItems);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table->setShowGrid(false);
    table->verticalHeader()->hide();
    table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table->setHorizontalHeader(new WrappedHead(table));
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
}

QString idText(const base::Id& id) {
    return QString::fromStdString(id.text());
}

/// Fills the room there is, however large its pages would like to be.
class FilledTabs : public QTabWidget {
  public:
    using QTabWidget::QTabWidget;
    bool hasHeightForWidth() const override { return false; }
    QSize sizeHint() const override { return minimumSizeHint(); }
};

}  // namespace

ReviewPlace::ReviewPlace(WorkbookBridge& bridge, AssessedRounds& rounds, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_assessed(rounds),
      m_content(new QStackedWidget(this)),
      m_page(new QWidget(this)),
      m_whole(new QHBoxLayout(m_page)),
      m_roundsSide(new QWidget(m_page)),
      m_empty(new QLabel(this)),
      m_rounds(new TextTable({tr("Round"), tr("State, walked"), tr("On share"), tr("Spread")}, -1, this)),
      m_roundTable(new QTableView(this)),
      m_roundFacts(new WholeLabel(1, this)),
      m_views(new FilledTabs(this)),
      m_before(new QuietCombo(this)),
      m_after(new QuietCombo(this)),
      m_changedOnly(new QCheckBox(tr("Changed &only"), this)),
      m_order(new QuietCombo(this)),
      m_count(new QLabel(this)),
      m_comparison(new TextTable(
          {tr("Tag"), tr("Setting"), tr("DP"), tr("Of target, %"), tr("State"), tr("Why"), tr("Who, when")},
          State, this)),
      m_table(new QTableView(this)),
      m_delegate(new BranchDelegate(this)),
      m_spread(new QLabel(this)),
      m_convergence(new charts::ChartView(this)),
      m_comments(new CommentPanel(bridge, this)),
      m_decision(new DecisionPanel(bridge, this)) {
    setAccessibleName(tr("Review"));
    makeReadable(m_roundTable, m_rounds, m_delegate);
    makeReadable(m_table, m_comparison, m_delegate);
    for (QTableView* table : {m_roundTable, m_table}) {
        table->viewport()->installEventFilter(this);
    }
    m_roundTable->setAccessibleName(tr("Rounds"));
    m_roundFacts->setAccessibleName(tr("How the round was read"));
    m_views->setAccessibleName(tr("Pages of the review"));
    new FocusRing(m_views->tabBar());
    m_table->setAccessibleName(tr("Two rounds compared"));
    m_before->setAccessibleName(tr("Earlier round"));
    m_after->setAccessibleName(tr("Later round"));
    m_changedOnly->setChecked(true);
    m_order->setAccessibleName(tr("Order of the comparison"));
    for (const auto& [words, value] :
         {std::pair(tr("Along the route"), ComparisonOrder::AlongRoute),
          std::pair(tr("Farthest from target first"), ComparisonOrder::FarthestFromTarget),
          std::pair(tr("Largest change first"), ComparisonOrder::LargestChange)}) {
        m_order->addItem(words, static_cast<int>(value));
    }
    // The columns are fitted to what its bar leaves.
    m_table->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    for (QuietCombo* combo : {m_before, m_after, m_order}) {
        // As wide as there is room, never wider than that: the window must fit a small screen.
        combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        combo->setMinimumContentsLength(combo == m_order ? kLeastOrderText : kLeastRoundText);
    }
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setWordWrap(true);
    m_empty->setObjectName(QStringLiteral("empty_state"));

    layOut();
    m_spread->setWordWrap(true);
    m_spread->setTextFormat(Qt::PlainText);
    m_spread->setAccessibleName(tr("Spread and share by round"));

    for (QuietCombo* combo : {m_before, m_after}) {
        connect(combo, &QComboBox::activated, this, [this] {
            refreshComparison();
            showInHand();
            emit roundChosen();
        });
    }
    m_judging.setSingleShot(true);
    m_judging.setInterval(0);
    connect(&m_judging, &QTimer::timeout, this, &ReviewPlace::judgeNext);
    connect(m_changedOnly, &QCheckBox::toggled, this, [this] { refreshComparison(); });
    connect(m_order, &QComboBox::activated, this, [this] { refreshComparison(); });
    connect(m_roundTable->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current) {
                if (!current.isValid()) {
                    return;
                }
                showRound(*m_rounds->row(current.row()).id);
                emit roundChosen();
            });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this, [this] { showInHand(); });
    connect(m_comments, &CommentPanel::branchWanted, this, [this](const base::Id& branch) {
        m_bridge.selectBranch(branch);
        showBranch(branch);
    });
    connect(&bridge, &WorkbookBridge::changed, this, [this](const project::ChangeSet& changes) {
        if (changes.isEmpty()) {
            m_order->setCurrentIndex(0);  // another job begins along its route
        }
    });
    connect(m_decision, &DecisionPanel::decided, this,
            [this] { m_roundTable->setFocus(Qt::OtherFocusReason); });
    connect(&bridge, &WorkbookBridge::changed, m_shown, &ShownRefresh::want);
    connect(&bridge, &WorkbookBridge::instrumentChanged, m_decision, &DecisionPanel::refresh);
}

std::optional<base::Id> ReviewPlace::chosenRound(const QuietCombo* combo) const {
    const auto id = base::Id::fromText(combo->currentData().toString().toStdString());
    return id && m_bridge.project().rounds().contains(*id) ? id : std::nullopt;
}

void ReviewPlace::refresh() {
    const project::Project& project = m_bridge.project();
    if (!m_bridge.isOpen() || project.rounds().empty()) {
        m_empty->setText(m_bridge.isOpen()
                             ? tr("Nothing to review yet. Read and close a round on the place Walk (Alt+3).")
                             : tr("No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N)."));
        m_content->setCurrentWidget(m_empty);
        return;
    }
    m_content->setCurrentWidget(m_page);
    fillChoices();
    const std::vector<base::Id> rounds = compared();
    m_isComparisonWaiting =
        isLarge() && std::none_of(rounds.begin(), rounds.end(),
                                  [this](const base::Id& id) { return m_assessed.isJudged(id); });
    if (m_isComparisonWaiting) {
        m_comparison->setRows({});
        m_count->setText(tr("Judging the rounds…"));
    } else {
        refreshComparison();
    }
    refreshRounds();
    m_comments->refresh();
    showInHand();
}

void ReviewPlace::fillChoices() {
    const project::Project& project = m_bridge.project();
    const auto keptBefore = chosenRound(m_before);
    const auto keptAfter = chosenRound(m_after);
    const bool isAnother = m_after->count() != static_cast<int>(project.rounds().size());
    for (QuietCombo* combo : {m_before, m_after}) {
        combo->clear();
        for (const std::size_t index : project.roundsByNumber()) {
            const project::Round& round = project.rounds()[index];
            combo->addItem(tr("Round %1, %2").arg(QString::number(round.number), text::nameOf(round.kind)),
                           idText(round.id));
        }
    }
    const int last = m_after->count() - 1;
    const auto select = [](QuietCombo* combo, const std::optional<base::Id>& kept, int otherwise) {
        const int found = kept ? combo->findData(idText(*kept)) : -1;
        combo->setCurrentIndex(found >= 0 ? found : otherwise);
    };
    select(m_after, isAnother ? std::nullopt : keptAfter, last);
    select(m_before, isAnother ? std::nullopt : keptBefore, std::max(0, last - 1));
}

void ReviewPlace::toggleTable() {
    m_views->setCurrentIndex(1);
    m_convergence->toggleTable();
}

void ReviewPlace::showRound(base::Id round) {
    m_shown->catchUp();
    const int chosen = m_after->findData(idText(round));
    if (chosen < 0) {
        return;
    }
    m_after->setCurrentIndex(chosen);
    m_before->setCurrentIndex(std::max(0, chosen - 1));
    refreshComparison();
    showInHand();
}

balancing::ComparisonOrder ReviewPlace::order() const {
    return static_cast<ComparisonOrder>(m_order->currentData().toInt());
}

void ReviewPlace::refreshComparison() {
    m_isComparisonWaiting = false;
    const auto before = chosenRound(m_before);
    const auto after = chosenRound(m_after);
    if (!before || !after) {
        m_comparison->setRows({});
        return;
    }
    const bool isOne = before == after;
    // The first round has none before it: what was read in it is all there is to review.
    const bool isFirst = isOne && m_after->currentIndex() == 0;
    const bool isChangedOnly = m_changedOnly->isChecked() && !isFirst;
    if (isOne && isChangedOnly) {
        m_comparison->setRows({});
        m_count->setText(tr("The same round twice: nothing to compare"));
        fitAnew();
        return;
    }
    const auto inHand = m_table->currentIndex();
    const auto kept = inHand.isValid() ? m_comparison->row(inHand.row()).id : m_bridge.selectedBranch();
    const project::Project& project = m_bridge.project();
    const auto compared = balancing::inOrder(
        balancing::compareRounds(project, m_assessed.shown(*before), m_assessed.shown(*after)), order());
    const quantity::Unit dpUnit = text::dpUnit(project, m_bridge.instrument());
    m_comparison->setTitle(Dp, tr("DP, %1").arg(text::symbol(dpUnit)));
    m_comparison->setRows(
        comparedRows(project, compared, isChangedOnly, dpUnit, project::beginOf(project, *after)));
    const auto changed = std::count_if(compared.begin(), compared.end(),
                                       [](const auto& branch) { return branch.isChanged(); });
    m_count->setText(isFirst ? tr("The first round: all its rows")
                     : isOne ? QString()
                             : tr("%1 of %2 readings changed").arg(changed).arg(compared.size()));
    const int row = kept ? m_comparison->rowOf(*kept) : -1;
    if (m_comparison->rowCount() > 0) {
        m_table->setCurrentIndex(
            m_comparison->index(std::max(0, row), inHand.isValid() ? inHand.column() : Dp));
    }
    fitAnew();
}

void ReviewPlace::showInHand() {
    const QModelIndex cell = m_table->currentIndex();
    balancing::CommentPlace place;
    place.round = chosenRound(m_after);
    if (cell.isValid()) {
        place.branch = m_comparison->row(cell.row()).id;
        place.field = cell.column() == Dp ? "dp" : cell.column() == Setting ? "setting" : "";
        m_bridge.selectBranch(place.branch);
    }
    m_comments->setPlace(place);
    m_decision->setRound(place.round);
    showRoundFacts();
    emit roundShown();
}

void ReviewPlace::showBranch(const base::Id& branch) {
    m_shown->catchUp();
    m_views->setCurrentIndex(0);
    if (m_isComparisonWaiting) {
        refreshComparison();
    }
    if (m_comparison->rowOf(branch) < 0) {
        m_changedOnly->setChecked(false);
    }
    const int row = m_comparison->rowOf(branch);
    if (row >= 0) {
        m_table->setCurrentIndex(m_comparison->index(row, Dp));
    }
}

void ReviewPlace::comment() {
    if (const auto branch = m_bridge.selectedBranch()) {
        showBranch(*branch);
    }
    m_comments->write();
}

void ReviewPlace::takeFocus() {
    (isComparing() ? static_cast<QWidget*>(m_table) : m_convergence)->setFocus(Qt::OtherFocusReason);
}

void ReviewPlace::setTokens(const theme::Tokens& tokens) {
    m_delegate->setTokens(tokens);
    m_convergence->setTokens(tokens);
    m_table->viewport()->update();
    m_roundTable->viewport()->update();
}

void ReviewPlace::setMetrics(const theme::Metrics& metrics) {
    for (QTableView* table : {m_table, m_roundTable}) {
        table->verticalHeader()->setMinimumSectionSize(metrics.rowHeight);
        table->verticalHeader()->setDefaultSectionSize(metrics.rowHeight);
    }
    setNarrow(width() < wantedWidth());
    fitAnew();
    fitRounds();
}

}  // namespace ww::ui
