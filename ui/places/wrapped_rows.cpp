#include "ui/places/wrapped_rows.h"

#include <QEvent>
#include <QHeaderView>
#include <QScrollBar>
#include <vector>

#include "ui/places/column_fit.h"
#include "ui/widgets/wrapped_head.h"

namespace ww::ui {

WrappedRows::WrappedRows(QTableView& table, int filling, int digits)
    : QObject(&table), m_table(table), m_filling(filling), m_digits(digits) {
    table.setWordWrap(true);
    table.setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table.setHorizontalHeader(new WrappedHead(&table));
    table.horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table.horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    // Columns stay where they are when a bar comes with the last row.
    table.setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    table.viewport()->installEventFilter(this);
    // Later, as a table that is destroyed may clear its model when it is half gone.
    connect(table.model(), &QAbstractItemModel::modelReset, this, &WrappedRows::fit, Qt::QueuedConnection);
    connect(table.verticalScrollBar(), &QScrollBar::valueChanged, this, &WrappedRows::fitSeen);
}

bool WrappedRows::eventFilter(QObject* watched, QEvent* event) {
    const bool isRoom = event->type() == QEvent::Resize || event->type() == QEvent::Show;
    if (isRoom && m_table.isVisible()) {
        fit();
    }
    return QObject::eventFilter(watched, event);
}

void WrappedRows::fit() {
    constexpr int kOfLongTexts = 20;
    std::vector<int> digits(static_cast<std::size_t>(m_table.model()->columnCount()), m_digits);
    digits[static_cast<std::size_t>(m_filling)] = kOfLongTexts;
    const int least = fitLetters(m_table);
    fitColumns(m_table, digits, m_filling);
    leaveRoomFor(m_table, least);
    fitSeen();
}

void WrappedRows::fitSeen() {
    // A row that becomes higher moves the next ones, and may move the bar.
    if (m_isFitting) {
        return;
    }
    m_isFitting = true;
    fitRowsSeen(m_table);
    m_isFitting = false;
}

void fitRowsSeen(QTableView& table) {
    const int first = std::max(0, table.rowAt(0));
    for (int row = first; row < table.model()->rowCount(); ++row) {
        table.resizeRowToContents(row);
        if (table.rowViewportPosition(row) > table.viewport()->height()) {
            break;
        }
    }
}

QTableView* makeReadTable(QAbstractItemModel* model, int filling, const QString& name, QWidget* parent) {
    auto* table = new QTableView(parent);
    table->setModel(model);
    table->setAccessibleName(name);
    new WrappedRows(*table, filling);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setTabKeyNavigation(false);
    table->verticalHeader()->hide();
    return table;
}

}  // namespace ww::ui
