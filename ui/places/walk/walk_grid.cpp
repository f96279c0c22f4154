#include "ui/places/walk/walk_grid.h"

#include <QHeaderView>
#include <QScrollBar>
#include <QTimer>

#include "ui/places/column_fit.h"
#include "ui/text/narrow_letters.h"

namespace ww::ui {
namespace {

/// What each column must hold, digits.
constexpr int kWalkDigits[WalkModel::ColumnCount] = {5, 7, 9, 7, 9, 7, 11, 6, 6, 8, 15};

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

void WalkGrid::fitColumnsNow() {
    // Widths by what a column must hold, so that a row never changes the layout; "Serves" takes what is left.
    int widths[WalkModel::ColumnCount];
    int left = viewport()->width();
    for (int column = 0; column < WalkModel::ColumnCount; ++column) {
        widths[column] = columnWidthFor(*this, column, kWalkDigits[column]);
        setColumnWidth(column, widths[column]);
        left -= widths[column];
        setColumnHidden(column, false);
    }
    // Where the text is large, what the panel beside the grid says too is left out here, unless what the
    // others left is enough for it.
    for (const int column : {WalkModel::Serves, WalkModel::Route, WalkModel::Target, WalkModel::Share,
                             WalkModel::Last, WalkModel::Flow}) {
        if (left >= 0 || isKept(column)) {
            break;
        }
        setColumnHidden(column, true);
        left += widths[column];
    }
    if (left > 0 && isColumnHidden(WalkModel::Serves) && left >= leastServes()) {
        setColumnHidden(WalkModel::Serves, false);
        widths[WalkModel::Serves] = 0;
    }
    if (left < 0) {
        shrinkKept();
        return;
    }
    // What is left is used: no strip stays free beside the last column.
    const int filling = isColumnHidden(WalkModel::Serves) ? WalkModel::State : WalkModel::Serves;
    setColumnWidth(filling, widths[filling] + left);
    heightenWhereCut(*this);
}

void WalkGrid::shrinkKept() {
    std::vector<int> columns;
    std::vector<int> least;
    std::vector<double> wanted;
    for (int column = 0; column < WalkModel::ColumnCount; ++column) {
        if (isKept(column)) {
            columns.push_back(column);
            wanted.push_back(columnWidth(column));
            least.push_back(std::min(leastColumnWidth(*this, column), columnWidth(column)));
        }
    }
    const std::vector<int> widths = sharedOut(least, wanted, viewport()->width(), columns.size() - 1);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        setColumnWidth(columns[i], widths[i]);
    }
    heightenWhereCut(*this);
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

int WalkGrid::leastServes() const {
    // Two lines, and letters that may be set narrower.
    return std::max(leastColumnWidth(*this, WalkModel::Serves),
                    wordsColumnWidth(*this, WalkModel::Serves) * text::kLeastStretch / 100);
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
