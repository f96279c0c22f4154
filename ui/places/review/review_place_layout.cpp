// How the place Review is laid out: what stands beside what, how wide, and its columns.
#include <QHBoxLayout>
#include <QHeaderView>
#include <QScrollBar>
#include <QSet>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/delegates/fitted_text.h"
#include "ui/places/column_fit.h"
#include "ui/places/review/review_place.h"
#include "ui/widgets/laid_out_later.h"
#include "ui/widgets/text_scale.h"

namespace ww::ui {
namespace {

constexpr int kSideWidth = 200;
constexpr int kMargin = 12;
constexpr int kRoundsWidth = 264;
constexpr int kLeastChartHeight = 190;
/// Between the rows of choices, which take as little as they can from the comparison.
constexpr int kCloseRows = 4;
/// Of the tabs, on both sides.
constexpr int kViewFrame = 4;

/// What the parts of a layout need in one row, whatever way it has now, px.
int rowWidth(const QBoxLayout& parts) {
    int width = (parts.count() - 1) * parts.spacing();
    for (int i = 0; i < parts.count(); ++i) {
        width += parts.itemAt(i)->minimumSize().width();
    }
    return width;
}

}  // namespace

void ReviewPlace::layOut() {
    auto* left = new QVBoxLayout;
    left->addWidget(m_roundTable, 1);
    left->addWidget(m_roundFacts);
    left->addWidget(m_decision);
    m_whole->setContentsMargins(kMargin, 4, kMargin, 6);
    m_whole->setSpacing(14);
    m_roundsSide->setLayout(left);
    left->setContentsMargins(0, 4, 0, 0);
    m_views->setDocumentMode(true);
    m_views->setUsesScrollButtons(false);
    m_views->setElideMode(Qt::ElideNone);
    m_views->addTab(comparisonPage(), tr("Comparison"));
    m_views->addTab(convergencePage(), tr("Convergence"));
    m_whole->addWidget(m_roundsSide);
    m_whole->addWidget(m_views, 1);
    m_whole->addWidget(m_comments);
    setNarrow(false);
    m_content->addWidget(laidOutLater(m_page));
    m_content->addWidget(m_empty);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(m_content);
}

QWidget* ReviewPlace::comparisonPage() {
    auto* page = new QWidget(this);
    auto* compare = new QLabel(tr("&Compare"), page);
    compare->setBuddy(m_before);
    auto* with = new QLabel(tr("&with"), page);
    with->setBuddy(m_after);
    auto* before = new QHBoxLayout;
    before->addWidget(compare);
    before->addWidget(m_before, 1);
    auto* after = new QHBoxLayout;
    after->addWidget(with);
    after->addWidget(m_after, 1);
    auto* compared = new QHBoxLayout;
    compared->addLayout(before, 1);
    compared->addLayout(after, 1);
    auto* shown = new QHBoxLayout;
    shown->addWidget(m_changedOnly);
    auto* order = new QLabel(tr("&Order"), page);
    order->setBuddy(m_order);
    shown->addWidget(order);
    shown->addWidget(m_order, 1);
    m_count->setWordWrap(true);
    m_count->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    auto* shownAndCount = new QHBoxLayout;
    shownAndCount->addLayout(shown, 2);
    shownAndCount->addWidget(m_count, 1);
    m_choices = {compared, shownAndCount};
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, kCloseRows, 0, 0);
    column->setSpacing(kCloseRows);
    for (QBoxLayout* choices : m_choices) {
        choices->setSpacing(kCloseRows);
        column->addLayout(choices);
    }
    column->addWidget(m_table, 1);
    return page;
}

QWidget* ReviewPlace::convergencePage() {
    auto* page = new QWidget(this);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, kCloseRows, 0, 0);
    column->addWidget(m_spread);
    column->addWidget(m_convergence, 1);
    return page;
}

void ReviewPlace::setNarrow(bool isNarrow) {
    constexpr int kTableHeight = 150;
    // Leaves the words above and below the chart their lines.
    constexpr int kViewsHeight = 340;
    m_whole->setDirection(isNarrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    // In an area that scrolls the place may still be wider than what is seen of it.
    const int seen = parentWidget() != nullptr ? std::min(width(), parentWidget()->width()) : width();
    for (QBoxLayout* choices : m_choices) {
        const bool isBroken = isNarrow && rowWidth(*choices) > seen - 2 * kMargin - kViewFrame;
        choices->setDirection(isBroken ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    }
    // As wide as their buttons need, in whatever text and language.
    for (QWidget* side : {m_roundsSide, static_cast<QWidget*>(m_comments)}) {
        const int least = sideWidth(*side);
        side->setMinimumWidth(isNarrow ? 0 : least);
        side->setMaximumWidth(isNarrow ? QWIDGETSIZE_MAX : least);
    }
    const double scale = textScale(font());
    m_table->setMinimumHeight(isNarrow ? static_cast<int>(kTableHeight * scale) : 0);
    constexpr int kLeastRounds = 48;
    // Beside the others the rounds take what is left: the buttons below them stay where they are.
    m_roundTable->setSizePolicy(QSizePolicy::Expanding,
                                isNarrow ? QSizePolicy::Expanding : QSizePolicy::Ignored);
    m_roundTable->setMinimumHeight(isNarrow ? roundsHeight() : kLeastRounds);
    m_convergence->setMinimumHeight(static_cast<int>(kLeastChartHeight * scale));
    m_views->setMinimumHeight(isNarrow ? static_cast<int>(kViewsHeight * scale) : 0);
}

/// Where the whole place scrolls, a few rounds need not within it.
int ReviewPlace::roundsHeight() const {
    constexpr int kMostSeen = 6;
    int height = m_roundTable->horizontalHeader()->sizeHint().height() + 2 * m_roundTable->frameWidth();
    for (int row = 0; row < std::min(kMostSeen, m_roundTable->model()->rowCount()); ++row) {
        height += m_roundTable->rowHeight(row);
    }
    return height;
}

void ReviewPlace::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    setNarrow(width() < wantedWidth());
}

/// A display with thicker frames leaves the tables less room, in a place of the same size.
bool ReviewPlace::eventFilter(QObject* watched, QEvent* event) {
    const bool isTaken = QWidget::eventFilter(watched, event);
    if (event->type() == QEvent::Resize) {
        watched == m_table->viewport() ? fitComparison() : fitRounds();
    }
    return isTaken;
}

bool ReviewPlace::event(QEvent* event) {
    const bool isTaken = QWidget::event(event);
    if (event->type() == QEvent::LayoutRequest) {
        setNarrow(width() < wantedWidth());
    }
    return isTaken;
}

QSize ReviewPlace::minimumSizeHint() const {
    const int narrow =
        std::max({m_roundsSide->layout()->minimumSize().width(), m_comments->layout()->minimumSize().width(),
                  m_views->minimumSizeHint().width()});
    return {narrow + 2 * kMargin, QWidget::minimumSizeHint().height()};
}

int ReviewPlace::sideWidth(const QWidget& side) const {
    const int least = &side == m_roundsSide ? std::max(kRoundsWidth, m_roundsNeed) : kSideWidth;
    return std::max(least, side.layout()->minimumSize().width());
}

int ReviewPlace::wantedWidth() const {
    int views = std::max(m_views->minimumSizeHint().width(), m_comparisonNeeds);
    for (const QBoxLayout* choices : m_choices) {
        views = std::max(views, rowWidth(*choices));
    }
    return sideWidth(*m_roundsSide) + sideWidth(*m_comments) + views + 2 * m_whole->spacing() + 2 * kMargin;
}

void ReviewPlace::fitComparison() {
    if (m_fittedTo == m_table->viewport()->width()) {
        return;
    }
    m_fittedTo = m_table->viewport()->width();
    const int digits[ColumnCount] = {6, 8, 18, 13, 14, 12, 16};
    m_comparisonNeeds = fitWrapped(*m_table, digits, Why);
    // A tag is known by its end and a state by both its words; the readings are wrapped instead.
    int reading = 0;
    for (QString cell : longestCells(Dp)) {
        // The arrow stays on the line of the first.
        cell.replace(QStringLiteral(" →"), QChar(QChar::Nbsp) + QStringLiteral("→"));
        reading = std::max(reading, widestWord(m_table->fontMetrics(), cell));
    }
    // The line between two columns takes one pixel.
    reading += besideWords(m_comparison->index(0, Dp), m_table->font()) + 1;
    takeFor(Dp, reading, Who);
    takeFor(State, stateWidth(), Who);
    // A setting before and after are one step; Why is often empty.
    takeFor(Setting, wholeWidth(Setting), Who);
    // A head of one line leaves its height to the rows.
    takeFor(OfTarget, columnWidthFor(*m_table, OfTarget, 0), Who);
    give(OfTarget, wholeWidth(OfTarget), State, stateWidth());
    give(Tag, tagWidth(), Dp, reading);
    // Readings that are wrapped all the same leave the rest to the reasons, which are whole sentences.
    if (m_table->columnWidth(Dp) < wholeWidth(Dp)) {
        give(Why, wordsColumnWidth(*m_table, Why), Dp, reading);
    }
    if (m_table->wordWrap()) {
        m_table->resizeRowsToContents();
    }
}

void ReviewPlace::fitRounds() {
    const int digits[] = {5, 10, 8, 6};
    m_roundsNeed = fitWrapped(*m_roundTable, digits, 1);
    if (m_roundTable->wordWrap()) {
        m_roundTable->resizeRowsToContents();
    }
    if (m_whole->direction() == QBoxLayout::TopToBottom) {
        m_roundTable->setMinimumHeight(roundsHeight());
    }
    m_roundTable->scrollTo(m_roundTable->currentIndex());
}

void ReviewPlace::takeFor(Column column, int least, Column other) {
    const int lacking = least - m_table->columnWidth(column);
    const int giver = m_table->columnWidth(other) > m_table->columnWidth(Why) ? other : Why;
    const int spare = m_table->columnWidth(giver) - leastColumnWidth(*m_table, giver);
    if (const int more = std::min(lacking, spare); more > 0) {
        m_table->setColumnWidth(giver, m_table->columnWidth(giver) - more);
        m_table->setColumnWidth(column, m_table->columnWidth(column) + more);
    }
}

void ReviewPlace::give(Column column, int wanted, Column giver, int least) {
    const int lacking = wanted - m_table->columnWidth(column);
    const int spare = m_table->columnWidth(giver) - std::max(least, leastColumnWidth(*m_table, giver));
    if (const int more = std::min(spare, lacking); more > 0) {
        m_table->setColumnWidth(giver, m_table->columnWidth(giver) - more);
        m_table->setColumnWidth(column, m_table->columnWidth(column) + more);
    }
}

int ReviewPlace::wholeWidth(Column column) const {
    int widest = 0;
    for (const QString& cell : longestCells(column)) {
        widest = std::max(widest, m_table->fontMetrics().horizontalAdvance(cell));
    }
    // The line between two columns takes one pixel.
    return widest + besideWords(m_comparison->index(0, column), m_table->font()) + 1;
}

int ReviewPlace::stateWidth() const {
    // Thousands of rows say few things.
    QSet<QString> steps;
    QModelIndex stated;
    for (int row = 0; row < m_comparison->rowCount(); ++row) {
        if (m_comparison->row(row).state) {
            stated = m_comparison->index(row, State);
            steps.insert(m_comparison->row(row).cells.value(State));
        }
    }
    int widest = 0;
    for (const QString& step : steps) {
        for (const QString& word : step.split(QStringLiteral(" → "))) {
            // The arrow stays on the line of the first.
            widest = std::max(widest, m_table->fontMetrics().horizontalAdvance(word + QStringLiteral(" →")));
        }
    }
    return stated.isValid() ? widest + besideWords(stated, m_table->font()) + 1 : 0;
}

int ReviewPlace::tagWidth() const {
    constexpr int kPadding = 14;
    int widest = 0;
    for (const QString& tag : longestCells(Tag)) {
        widest = std::max(widest, m_table->fontMetrics().horizontalAdvance(tag) + kPadding);
    }
    return std::min(widest, m_table->viewport()->width() / 4);
}

QStringList ReviewPlace::longestCells(Column column) const {
    constexpr qsizetype kMostMeasured = 200;
    QStringList cells;
    cells.reserve(m_comparison->rowCount());
    for (int row = 0; row < m_comparison->rowCount(); ++row) {
        cells << m_comparison->row(row).cells.value(column);
    }
    if (cells.size() > kMostMeasured) {
        const auto isLonger = [](const QString& a, const QString& b) { return a.size() > b.size(); };
        std::nth_element(cells.begin(), cells.begin() + kMostMeasured, cells.end(), isLonger);
        cells.resize(kMostMeasured);
    }
    return cells;
}

/// Cells are wrapped to columns that are narrow; the rows of many terminals stay in one line, for speed.
int ReviewPlace::fitWrapped(QTableView& table, std::span<const int> digits, int filling) {
    constexpr int kMostWrapped = 200;
    table.setWordWrap(table.model()->rowCount() <= kMostWrapped);
    const int least = fitLetters(table);
    ui::fitColumns(table, digits, filling);
    // On the smallest screen the largest letters leave no room for all columns: there the table scrolls.
    constexpr int kWidestLeast = 520;
    leaveRoomFor(table, std::min(least, kWidestLeast));
    int usual = 2 * table.frameWidth() + table.verticalScrollBar()->sizeHint().width();
    for (int column = 0; column < table.model()->columnCount(); ++column) {
        usual += leastColumnWidth(table, column, {});
    }
    return usual;
}

}  // namespace ww::ui
