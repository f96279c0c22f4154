#include "ui/places/section_table.h"

#include <QEvent>
#include <QHeaderView>
#include <numeric>

#include "ui/report/page_builder.h"
#include "ui/text/words.h"

namespace ww::ui {

namespace {

/// More rows are scrolled through inside the table.
constexpr int kMostRows = 60;
/// What a style may take of the width of a head beside its words.
constexpr int kHeadMargins = 20;

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
    setAccessibleName(report::words(table.title));
    setColumnCount(static_cast<int>(table.columns.size()));
    setRowCount(static_cast<int>(table.rows.size()));
    m_shares.clear();
    for (int column = 0; column < columnCount(); ++column) {
        const ww::report::Column& shown = table.columns[static_cast<std::size_t>(column)];
        QString title = report::words(shown.heading);
        if (!shown.unit.empty()) {
            title += '\n' + text::term(shown.unit);
        }
        const Qt::Alignment side =
            shown.alignment == ww::report::Alignment::Right ? Qt::AlignRight : Qt::AlignLeft;
        auto* head = new QTableWidgetItem(title);
        head->setTextAlignment(side | Qt::AlignBottom | Qt::Alignment(int(Qt::TextWordWrap)));
        setHorizontalHeaderItem(column, head);
        m_shares.push_back(shown.widthShare);
        for (int row = 0; row < rowCount(); ++row) {
            const auto& cells = table.rows[static_cast<std::size_t>(row)];
            const std::size_t at = static_cast<std::size_t>(column);
            auto* item = new QTableWidgetItem(at < cells.size() ? report::words(cells[at]) : QString());
            item->setTextAlignment(side | Qt::AlignVCenter);
            setItem(row, column, item);
        }
    }
    fit();
}

void SectionTable::fit() {
    if (m_isFitting || m_shares.empty()) {
        return;
    }
    m_isFitting = true;
    const double sum = std::accumulate(m_shares.begin(), m_shares.end(), 0.0);
    int left = width() - 2 * frameWidth() - (rowCount() > kMostRows ? 18 : 0);
    const double each = left / sum;
    int headHeight = 0;
    const QFontMetrics metrics(horizontalHeader()->font());
    for (int column = 0; column < columnCount(); ++column) {
        const bool isLast = column + 1 == columnCount();
        const int wide = isLast ? left : static_cast<int>(each * m_shares[static_cast<std::size_t>(column)]);
        setColumnWidth(column, wide);
        left -= wide;
        const QRect needed = metrics.boundingRect(QRect(0, 0, wide - kHeadMargins, 1000), Qt::TextWordWrap,
                                                  horizontalHeaderItem(column)->text());
        headHeight = std::max(headHeight, needed.height());
    }
    horizontalHeader()->setFixedHeight(headHeight + 8);
    resizeRowsToContents();
    int high = horizontalHeader()->height() + 2 * frameWidth();
    for (int row = 0; row < std::min(rowCount(), kMostRows); ++row) {
        high += rowHeight(row);
    }
    setFixedHeight(high);
    m_isFitting = false;
}

void SectionTable::resizeEvent(QResizeEvent* event) {
    QTableWidget::resizeEvent(event);
    fit();
}

void SectionTable::changeEvent(QEvent* event) {
    QTableWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        fit();
    }
}

}  // namespace ww::ui
