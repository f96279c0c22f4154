#include "ui/places/walk/walk_grid.h"

#include <QHeaderView>
#include <QResizeEvent>
#include <QScrollBar>
#include <QTimer>
#include <algorithm>
#include <numeric>

#include "ui/delegates/fitted_text.h"
#include "ui/places/column_fit.h"
#include "ui/text/narrow_letters.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

/// What each column must hold, digits.
constexpr int kWalkDigits[WalkModel::ColumnCount] = {5, 7, 9, 7, 10, 7, 11, 6, 6, 8, 16};
/// Of the route where room is short: as a job has valves, and never fewer.
constexpr int kRouteDigits = 3;

/// The width of any word of a state with its shape, px. A reason given with it may take narrower letters.
int stateWordsWidth(const QFont& font) {
    using balancing::State;
    const QFontMetrics metrics(font);
    int widest = 0;
    for (const State state : {State::NotRead, State::Short, State::Over, State::OnShare, State::Drifted,
                              State::AtStop, State::Doubtful}) {
        for (const bool isOver : {false, true}) {
            widest = std::max(widest, metrics.horizontalAdvance(text::word(state, false, isOver)));
        }
    }
    return widest + 2 * kCellMargin + shapeBesideWords(font) + kBehindShape + 1;
}

}  // namespace

WalkGrid::WalkGrid(WalkModel& model, QWidget* parent)
    : EntryTable(parent),
      m_model(model),
      m_delegate(new BranchDelegate(this)),
      m_columns(new ShownRefresh(this, [this] { fitColumnsNow(); })) {
    setModel(&model);
    setItemDelegate(m_delegate);
    setAutoScroll(false);
    setAccessibleName(tr("Valves in walking order"));
    setAccessibleDescription(
        tr("Type the dp, or the flow where a valve has no table, and press Enter; Ctrl+Tab or F6 leaves the "
           "grid"));
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    // Rows that come anew have the height of all, and may be read in another column.
    connect(&model, &QAbstractItemModel::modelReset, this, &WalkGrid::fitColumns);
}

void WalkGrid::setTokens(const theme::Tokens& tokens, const theme::Metrics& metrics) {
    m_delegate->setTokens(tokens);
    verticalHeader()->setMinimumSectionSize(metrics.rowHeight);
    verticalHeader()->setDefaultSectionSize(metrics.rowHeight);
    horizontalHeader()->setFixedHeight(std::max(metrics.noticeHeight, 2 * fontMetrics().height() + 8));
    fitColumns();
    viewport()->update();
}

void WalkGrid::fitColumns() {
    m_columns->want();
}

std::vector<int> WalkGrid::leastWidths(int headLetters) const {
    std::vector<int> least;
    for (int column = 0; column < WalkModel::ColumnCount; ++column) {
        // What is typed, and words that may yet come, keep their letters.
        const bool isWide = column == WalkModel::Dp ||
                            (column == WalkModel::Flow && m_model.hasFlowEntry()) ||
                            column == WalkModel::State;
        least.push_back(columnWidthFor(*this, column, column == WalkModel::Serves ? 0 : kWalkDigits[column],
                                       {headLetters, isWide ? 100 : text::kLeastStretch}));
    }
    const auto route = static_cast<int>(QString::number(m_model.rowCount()).size());
    least[WalkModel::Route] = columnWidthFor(*this, WalkModel::Route, std::max(kRouteDigits, route),
                                             {headLetters, text::kLeastStretch});
    least[WalkModel::State] = std::min(least[WalkModel::State], stateWordsWidth(font()));
    // Names stay as they are while valves are read.
    least[WalkModel::Tag] =
        std::max(least[WalkModel::Tag], leastColumnWidth(*this, WalkModel::Tag, {headLetters}));
    least[WalkModel::Serves] =
        std::max(least[WalkModel::Serves], twoLinesColumnWidth(*this, WalkModel::Serves, headLetters));
    return least;
}

void WalkGrid::fitColumnsNow() {
    const int room = viewport()->width();
    // Widths by what a column must hold, so that a reading never changes the layout; "Serves" takes what is
    // left.
    std::vector<int> wanted;
    for (int column = 0; column < WalkModel::ColumnCount; ++column) {
        wanted.push_back(columnWidthFor(*this, column, kWalkDigits[column]));
        setColumnHidden(column, false);
    }
    wanted[WalkModel::Serves] =
        std::max(wanted[WalkModel::Serves], wordsColumnWidth(*this, WalkModel::Serves));
    // The words that may take the place of a reading.
    const QModelIndex dp = m_model.index(0, WalkModel::Dp);
    const QFontMetrics letters(cellFont(dp, font(), this));
    wanted[WalkModel::Dp] =
        std::max(wanted[WalkModel::Dp],
                 letters.horizontalAdvance(WalkModel::notReadable()) + besideWords(dp, font()) + 1);
    const auto beyond = [room](const std::vector<int>& widths) {
        return std::accumulate(widths.begin(), widths.end(), -room);
    };
    std::vector<int> least = wanted;
    std::optional<QFont> head = QFont();
    if (beyond(wanted) > 0) {
        // Narrower letters come before a column goes.
        head = text::widestThatFits(QFont(), [&](const QFont& tried) {
            least = leastWidths(text::stretchOf(tried));
            return beyond(least) <= 0;
        });
    }
    setHeadFont(*this, head.value_or(text::narrowest(QFont())));
    // What is left out is said beside the grid; first what is worked out from the rest.
    int missing = beyond(least);
    for (const int column : {WalkModel::Route, WalkModel::Target, WalkModel::Share, WalkModel::Serves,
                             WalkModel::Last, WalkModel::Flow}) {
        if (missing > 0 && !isKept(column)) {
            setColumnHidden(column, true);
            missing -= least[static_cast<std::size_t>(column)];
        }
    }
    std::vector<int> shown;
    std::vector<int> narrowest;
    std::vector<double> wished;
    for (int column = 0; column < WalkModel::ColumnCount; ++column) {
        if (!isColumnHidden(column)) {
            const int narrow = least[static_cast<std::size_t>(column)];
            shown.push_back(column);
            wished.push_back(std::max(narrow, wanted[static_cast<std::size_t>(column)]));
            narrowest.push_back(missing > 0 ? std::min(leastColumnWidth(*this, column, {}), narrow) : narrow);
        }
    }
    const auto serves = std::find(shown.begin(), shown.end(), int(WalkModel::Serves));
    const auto taker = serves != shown.end() ? serves - shown.begin() : std::ssize(shown) - 1;
    const std::vector<int> widths = sharedOut(narrowest, wished, room, static_cast<std::size_t>(taker));
    for (std::size_t i = 0; i < shown.size(); ++i) {
        setColumnWidth(shown[i], widths[i]);
    }
    heightenWhereCut(*this);
    emit columnsFitted();
}

QStringList WalkGrid::leftOut() const {
    QStringList all;
    for (int column = 0; column < WalkModel::ColumnCount; ++column) {
        const QString value = m_model.index(currentRow(), column).data().toString();
        if (isColumnHidden(column) && column != WalkModel::Serves && !value.isEmpty()) {
            // The second line of a head is the unit.
            const QStringList head =
                m_model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().split('\n');
            all << (QStringList{head.front(), value} + head.mid(1)).join(QChar(QChar::Nbsp));
        }
    }
    return all;
}

bool WalkGrid::isKept(int column) const {
    return column == WalkModel::Tag || column == WalkModel::Setting || column == WalkModel::Dp ||
           column == WalkModel::OfTarget || column == WalkModel::State ||
           (column == WalkModel::Flow && m_model.hasFlowEntry());
}

int WalkGrid::leastWidth() const {
    int width = 2 * frameWidth() + verticalScrollBar()->sizeHint().width();
    for (int column = 0; column < WalkModel::ColumnCount; ++column) {
        width += isKept(column) ? columnWidthFor(*this, column, kWalkDigits[column]) : 0;
    }
    return width;
}

int WalkGrid::leastHeight() const {
    constexpr int kRows = 5;
    return 2 * frameWidth() + horizontalHeader()->height() + kRows * verticalHeader()->defaultSectionSize();
}

void WalkGrid::resizeEvent(QResizeEvent* event) {
    EntryTable::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) {
        fitColumns();
    }
}

void WalkGrid::goToRow(int row, bool isJump) {
    if (row < 0 || row >= m_model.rowCount()) {
        return;
    }
    setCurrentIndex(m_model.entryCell(row));
    m_isAfterJump = isJump;
}

bool WalkGrid::goOn() {
    const QModelIndex next = cellAfterEnter(currentIndex());
    if (next.isValid()) {
        setCurrentIndex(next);
    }
    return next.isValid();
}

void WalkGrid::flash(int row) {
    constexpr int kFlashMilliseconds = 150;
    m_delegate->setFlashedRow(row);
    viewport()->update();
    emit stored(row);
    QTimer::singleShot(kFlashMilliseconds, this, [this] {
        m_delegate->setFlashedRow(-1);
        viewport()->update();
    });
}

QString WalkGrid::rowKey(const QModelIndex& cell) const {
    return QString::fromStdString(m_model.branchAt(cell.row()).text());
}

int WalkGrid::rowWithKey(const QString& key, int) const {
    const auto branch = base::Id::fromText(key.toStdString());
    return branch ? m_model.rowOf(*branch) : -1;
}

QModelIndex WalkGrid::typingCell(const QModelIndex& current) const {
    if (!current.isValid() || current.column() == WalkModel::Setting) {
        return current;
    }
    return m_model.entryCell(current.row());
}

QModelIndex WalkGrid::cellAfterEnter(const QModelIndex& cell) {
    int row = cell.row() + 1;
    if (m_isAfterJump) {
        m_isAfterJump = false;
        const int unread = m_model.unreadAfter(cell.row());
        row = unread >= 0 ? unread : row;
    }
    return m_model.entryCell(row);
}

QModelIndex WalkGrid::cellBeforeEnter(const QModelIndex& cell) {
    return m_model.entryCell(cell.row() - 1);
}

QModelIndex WalkGrid::cellAfterTab(const QModelIndex& cell) const {
    return cell.column() == WalkModel::Setting ? m_model.entryCell(cell.row() + 1)
                                               : cell.siblingAtColumn(WalkModel::Setting);
}

QModelIndex WalkGrid::cellBeforeTab(const QModelIndex& cell) const {
    return cell.column() == WalkModel::Setting ? m_model.entryCell(cell.row())
                                               : m_model.index(cell.row() - 1, WalkModel::Setting);
}

void WalkGrid::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    EntryTable::currentChanged(current, previous);
    if (current.isValid()) {
        keepInMiddleThird(current.row());
    }
}

void WalkGrid::keepInMiddleThird(int row) {
    const int height = verticalHeader()->defaultSectionSize();
    const int shown = std::max(1, viewport()->height() / std::max(1, height));
    QScrollBar* bar = verticalScrollBar();
    const int first = bar->value();
    if (row < first + shown / 3) {
        bar->setValue(row - shown / 3);
    } else if (row > first + 2 * shown / 3) {
        bar->setValue(row - 2 * shown / 3);
    }
}

}  // namespace ww::ui
