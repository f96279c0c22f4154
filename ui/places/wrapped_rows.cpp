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
    connect(table.verticalScrollBar(), &QScrollBar::valueChanged, this, &WrappedRows::fitRowsSeen);
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
    fitColumns(m_table, digits, m_filling);
    fitRowsSeen();
}

void WrappedRows::fitRowsSeen() {
    // A row that becomes higher moves the next ones, and may move the bar.
    if (m_isFitting) {
        return;
    }
    m_isFitting = true;
    const int first = std::max(0, m_table.rowAt(0));
    for (int row = first; row < m_table.model()->rowCount(); ++row) {
        m_table.resizeRowToContents(row);
        if (m_table.rowViewportPosition(row) > m_table.viewport()->height()) {
            break;
        }
    }
    m_isFitting = false;
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
