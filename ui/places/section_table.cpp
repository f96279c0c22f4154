#include "ui/places/section_table.h"

#include <QEvent>
#include <QHeaderView>
#include <QResizeEvent>
#include <QScrollBar>
#include <QTimer>
#include <algorithm>
#include <numeric>
#include <utility>

#include "ui/delegates/fitted_text.h"
#include "ui/places/column_fit.h"
#include "ui/report/page_builder.h"

namespace ww::ui {

namespace {

/// More rows are scrolled through inside the table.
constexpr int kMostRows = 60;
/// What a style may take of the width of a column beside its words.
constexpr int kMargins = 14;

}  // namespace

SectionTable::SectionTable(QWidget* parent) : QTableView(parent), m_model(new SectionTableModel(this)) {
    setModel(m_model);
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
    connect(verticalScrollBar(), &QScrollBar::valueChanged, this, &SectionTable::fitRowsSeen);
}

void SectionTable::show(ww::report::Table table) {
    setAccessibleName(report::words(table.title));
    m_model->show(std::move(table));
    m_least.clear();
    forgetHeights();
    fit();
}

/// What each column needs so that no word of it is cut.
const std::vector<int>& SectionTable::leastWidths() {
    if (m_least.empty()) {
        m_least = m_model->widestWords(QFontMetrics(horizontalHeader()->font()),
                                       QFontMetrics(numeralFont(font(), this)));
        for (int& width : m_least) {
            width += kMargins;
        }
    }
    return m_least;
}

int SectionTable::roomFor(int rows) const {
    const int bar = rows > kMostRows ? verticalScrollBar()->sizeHint().width() : 0;
    return maximumViewportSize().width() - bar;
}

void SectionTable::fit() {
    if (m_isFitting || m_model->table().columns.empty()) {
        return;
    }
    m_isFitting = true;
    const std::vector<int>& least = leastWidths();
    const int needed = std::accumulate(least.begin(), least.end(), 0);
    const int spare = roomFor(static_cast<int>(m_model->table().rows.size())) - needed;
    // Before it is shown it has no width yet.
    const bool isAsLines = isVisible() && spare < 0 && least.size() > 2;
    if (isAsLines != m_model->isAsLines()) {
        m_model->setAsLines(isAsLines);
        forgetHeights();
    }
    horizontalHeader()->setVisible(!isAsLines);
    if (isAsLines) {
        const int room = roomFor(m_model->rowCount());
        const int widest = m_model->widestHead(QFontMetrics(horizontalHeader()->font())) + kMargins;
        const int heads = std::clamp(widest, room * 2 / 5, room * 3 / 5);
        setWidths({heads, room - heads});
    } else {
        setWidths(sharedWidths(least, std::max(0, spare)));
        fitHead();
    }
    fitHeight();
    m_isFitting = false;
    fitRowsSeen();
}

/// Columns above what they need take what is left, each towards its share of the whole.
std::vector<int> SectionTable::sharedWidths(const std::vector<int>& least, int spare) const {
    const std::vector<ww::report::Column>& columns = m_model->table().columns;
    const int room = std::accumulate(least.begin(), least.end(), spare);
    const double sum = std::accumulate(
        columns.begin(), columns.end(), 0.0,
        [](double before, const ww::report::Column& column) { return before + column.widthShare; });
    std::vector<double> wanted;
    for (std::size_t i = 0; i < least.size(); ++i) {
        wanted.push_back(std::max<double>(least[i], room * columns[i].widthShare / sum));
    }
    return sharedOut(least, wanted, room, least.size() - 1);
}

/// Words that are wrapped to other widths need other heights.
void SectionTable::setWidths(const std::vector<int>& widths) {
    for (std::size_t i = 0; i < widths.size(); ++i) {
        const auto column = static_cast<int>(i);
        if (columnWidth(column) != widths[i]) {
            setColumnWidth(column, widths[i]);
            forgetHeights();
        }
    }
}

void SectionTable::fitHead() {
    int headHeight = 0;
    const QFontMetrics metrics(horizontalHeader()->font());
    for (int column = 0; column < m_model->columnCount(); ++column) {
        const QRect room(0, 0, columnWidth(column) - kMargins, 1000);
        const QString words = m_model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
        headHeight = std::max(headHeight, metrics.boundingRect(room, Qt::TextWordWrap, words).height());
    }
    horizontalHeader()->setFixedHeight(headHeight + 8);
}

void SectionTable::forgetHeights() {
    m_isFit.assign(static_cast<std::size_t>(m_model->rowCount()), false);
}

void SectionTable::fitRow(int row) {
    if (!m_isFit[static_cast<std::size_t>(row)]) {
        m_isFit[static_cast<std::size_t>(row)] = true;
        resizeRowToContents(row);
    }
}

void SectionTable::fitHeight() {
    const int rows = m_model->rowCount();
    const int shown = std::min(rows, kMostRows);
    int high = (m_model->isAsLines() ? 0 : horizontalHeader()->height()) + 2 * frameWidth();
    for (int row = 0; row < shown; ++row) {
        // A long table is laid out in the width that it is shown in, no other.
        if (isVisible() || rows <= kMostRows) {
            fitRow(row);
        }
        high += rowHeight(row);
    }
    setFixedHeight(high);
}

/// The rows in sight and those of a page below them, and the last page, by which the way to the end is told.
void SectionTable::fitRowsSeen() {
    const int rows = m_model->rowCount();
    if (m_isFitting || !isVisible() || rows <= kMostRows) {
        return;
    }
    m_isFitting = true;
    const int page = viewport()->height();
    int high = 0;
    for (int row = std::max(0, rowAt(0)); row < rows && high < 2 * page; ++row) {
        fitRow(row);
        high += rowHeight(row);
    }
    high = 0;
    for (int row = rows - 1; row >= 0 && high < page; --row) {
        fitRow(row);
        high += rowHeight(row);
    }
    m_isFitting = false;
}

void SectionTable::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) {
        fit();
    }
}

void SectionTable::showEvent(QShowEvent* event) {
    QTableView::showEvent(event);
    fit();
}

void SectionTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        m_least.clear();
        forgetHeights();
        fitLater();
    }
}

/// Once for all that a change of look does; a table that is not seen is fitted when it is shown.
void SectionTable::fitLater() {
    if (!isVisible() || m_isFitWanted) {
        return;
    }
    m_isFitWanted = true;
    QTimer::singleShot(0, this, [this] {
        m_isFitWanted = false;
        if (isVisible()) {
            fit();
        }
    });
}

}  // namespace ww::ui
