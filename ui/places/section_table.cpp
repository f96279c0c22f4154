#include "ui/places/section_table.h"

#include <QEvent>
#include <QHeaderView>
#include <QResizeEvent>
#include <QScrollBar>
#include <algorithm>
#include <numeric>

#include "ui/places/column_fit.h"
#include "ui/report/page_builder.h"
#include "ui/text/words.h"

namespace ww::ui {

namespace {

/// More rows are scrolled through inside the table.
constexpr int kMostRows = 60;
/// What a style may take of the width of a column beside its words.
constexpr int kMargins = 14;

}  // namespace

SectionTable::SectionTable(QWidget* parent) : QTableWidget(parent) {
    setEditTriggers(NoEditTriggers);
    setSelectionBehavior(SelectRows);
    setTabKeyNavigation(false);
    setWordWrap(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    verticalHeader()->hide();
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setHighlightSections(false);
}

void SectionTable::show(const ww::report::Table& table) {
    m_table = table;
    m_isFilled = false;
    setAccessibleName(report::words(table.title));
    fit();
}

QString SectionTable::headOf(const ww::report::Column& column, QChar between) {
    QString title = report::words(column.heading);
    if (!column.unit.empty()) {
        title += between + text::term(column.unit);
    }
    return title;
}

void SectionTable::fillUpright() {
    horizontalHeader()->show();
    setColumnCount(static_cast<int>(m_table.columns.size()));
    setRowCount(static_cast<int>(m_table.rows.size()));
    for (int column = 0; column < columnCount(); ++column) {
        const auto at = static_cast<std::size_t>(column);
        const ww::report::Column& shown = m_table.columns[at];
        const Qt::Alignment side =
            shown.alignment == ww::report::Alignment::Right ? Qt::AlignRight : Qt::AlignLeft;
        auto* head = new QTableWidgetItem(headOf(shown, QChar('\n')));
        head->setTextAlignment(side | Qt::AlignBottom | Qt::Alignment(int(Qt::TextWordWrap)));
        setHorizontalHeaderItem(column, head);
        for (int row = 0; row < rowCount(); ++row) {
            const auto& cells = m_table.rows[static_cast<std::size_t>(row)];
            auto* item = new QTableWidgetItem(at < cells.size() ? report::words(cells[at]) : QString());
            item->setTextAlignment(side | Qt::AlignVCenter);
            setItem(row, column, item);
        }
    }
}

/// Each row becomes a block of lines, a head and its value in each.
void SectionTable::fillAsLines() {
    horizontalHeader()->hide();
    const auto columns = static_cast<int>(m_table.columns.size());
    setColumnCount(2);
    setRowCount(columns * static_cast<int>(m_table.rows.size()));
    int line = 0;
    for (const auto& cells : m_table.rows) {
        for (std::size_t column = 0; column < m_table.columns.size(); ++column, ++line) {
            auto* head = new QTableWidgetItem(headOf(m_table.columns[column], QChar(' ')));
            auto* item =
                new QTableWidgetItem(column < cells.size() ? report::words(cells[column]) : QString());
            if (column == 0) {
                QFont bold = font();
                bold.setBold(true);
                head->setFont(bold);
                item->setFont(bold);
            }
            setItem(line, 0, head);
            setItem(line, 1, item);
        }
    }
}

/// What each column needs so that no word of it is cut.
std::vector<int> SectionTable::leastWidths() const {
    std::vector<int> least;
    const QFontMetrics ofHead(horizontalHeader()->font());
    for (std::size_t column = 0; column < m_table.columns.size(); ++column) {
        int width = widestWord(ofHead, headOf(m_table.columns[column], QChar('\n')));
        for (const auto& cells : m_table.rows) {
            if (column < cells.size()) {
                width = std::max(width, widestWord(fontMetrics(), report::words(cells[column])));
            }
        }
        least.push_back(width + kMargins);
    }
    return least;
}

void SectionTable::fit() {
    if (m_isFitting || m_table.columns.empty()) {
        return;
    }
    m_isFitting = true;
    const int bar = verticalScrollBar()->sizeHint().width();
    const int room = maximumViewportSize().width() - (int(m_table.rows.size()) > kMostRows ? bar : 0);
    const std::vector<int> least = leastWidths();
    const int spare = room - std::accumulate(least.begin(), least.end(), 0);
    // Before it is shown it has no width yet.
    const bool isAsLines = isVisible() && spare < 0 && least.size() > 2;
    if (!m_isFilled || isAsLines != m_isAsLines) {
        clear();
        isAsLines ? fillAsLines() : fillUpright();
        m_isFilled = true;
        m_isAsLines = isAsLines;
    }
    if (isAsLines) {
        setColumnWidth(0, room * 2 / 5);
        setColumnWidth(1, room - room * 2 / 5);
    } else {
        shareOut(least, std::max(0, spare));
    }
    resizeRowsToContents();
    int high = (isAsLines ? 0 : horizontalHeader()->height()) + 2 * frameWidth();
    for (int row = 0; row < std::min(rowCount(), kMostRows); ++row) {
        high += rowHeight(row);
    }
    setFixedHeight(high);
    m_isFitting = false;
}

/// Columns above what they need take what is left, each towards its share of the whole.
void SectionTable::shareOut(const std::vector<int>& least, int spare) {
    const int room = std::accumulate(least.begin(), least.end(), spare);
    double sum = 0;
    for (const ww::report::Column& column : m_table.columns) {
        sum += column.widthShare;
    }
    std::vector<double> wanted;
    for (std::size_t i = 0; i < least.size(); ++i) {
        wanted.push_back(std::max<double>(least[i], room * m_table.columns[i].widthShare / sum));
    }
    const std::vector<int> widths = sharedOut(least, wanted, room, least.size() - 1);
    int headHeight = 0;
    const QFontMetrics metrics(horizontalHeader()->font());
    for (int column = 0; column < columnCount(); ++column) {
        const int wide = widths[static_cast<std::size_t>(column)];
        setColumnWidth(column, wide);
        const QRect needed = metrics.boundingRect(QRect(0, 0, wide - kMargins, 1000), Qt::TextWordWrap,
                                                  horizontalHeaderItem(column)->text());
        headHeight = std::max(headHeight, needed.height());
    }
    horizontalHeader()->setFixedHeight(headHeight + 8);
}

void SectionTable::resizeEvent(QResizeEvent* event) {
    QTableWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) {
        fit();
    }
}

void SectionTable::showEvent(QShowEvent* event) {
    QTableWidget::showEvent(event);
    fit();
}

void SectionTable::changeEvent(QEvent* event) {
    QTableWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        fit();
    }
}

}  // namespace ww::ui
