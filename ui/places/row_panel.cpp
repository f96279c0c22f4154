#include "ui/places/row_panel.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>
#include <vector>

#include "ui/places/column_fit.h"
#include "ui/places/row_removal.h"

namespace ww::ui {

RowPanel::RowPanel(WorkbookBridge& bridge, Content content, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_content(std::move(content)),
      m_title(new QLabel(m_content.title, this)),
      m_model(new RecordTableModel(bridge, m_content.table, this)),
      m_table(new EntryTable(this)),
      m_delegate(new BranchDelegate(this)),
      m_remove(new QPushButton(m_content.removeWords, this)) {
    m_title->setObjectName(QStringLiteral("panel_title"));
    setUpEntry(*m_table, *m_model, *m_delegate, bridge, m_content.title);
    m_table->setEntersByRow(true);
    auto* top = new QHBoxLayout;
    top->addWidget(m_title, 1);
    top->addWidget(m_remove);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(top);
    column->addWidget(m_table, 1);
    connect(m_table, &EntryTable::resized, this, &RowPanel::fit);
    connect(m_remove, &QPushButton::clicked, this, &RowPanel::takeOut);
    connect(m_table, &EntryTable::enteredAtEnd, this, &RowPanel::finishRow);
    connect(m_table, &EntryTable::editChanged, this, &RowPanel::refresh);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& now, const QModelIndex& before) {
                // Not where the rows of another record came here.
                if (now.isValid() && before.isValid() && before.row() + 1 == m_model->rowCount()) {
                    tellBegun();
                }
            });
    connect(qApp, &QApplication::focusChanged, this, [this](const QWidget* before, const QWidget* now) {
        if (now != nullptr && m_table->isAncestorOf(before) && !isAncestorOf(now)) {
            tellBegun();
        }
    });
    connect(m_model, &QAbstractItemModel::modelReset, this, &RowPanel::refresh);
    connect(&bridge, &WorkbookBridge::changed, this, &RowPanel::refresh);
    refresh();
}

/// Says that a row was begun and is not stored; false where none was, or more of it is being typed.
bool RowPanel::tellBegun() {
    const auto fault = m_table->isEditing() ? std::nullopt : m_content.faultOfBegun();
    if (fault) {
        m_bridge.tell(*fault);
    }
    return fault.has_value();
}

/// Behind the last cell comes what the row begun still lacks.
void RowPanel::finishRow() {
    if (tellBegun()) {
        m_table->setCurrentIndex(m_model->index(m_model->rowCount() - 1, m_content.missing()));
    }
}

void RowPanel::takeOut() {
    const QModelIndex cell = m_table->currentIndex();
    if (!cell.isValid() || !m_content.holds(cell.row())) {
        m_bridge.tell(base::Fault{&kNoRowInHand, {}, {}});
        return;
    }
    const int row = cell.row();
    const int column = cell.column();
    m_bridge.tellOrClear(m_content.remove(row));
    m_table->setCurrentIndex(m_model->index(std::min(row, m_model->rowCount() - 1), column));
    m_table->viewport()->update();
    refresh();
}

void RowPanel::refresh() {
    offerRemoval(*m_remove, !m_bridge.isReadOnly(), m_content.holds(0));
}

void RowPanel::fit() {
    constexpr int kDigits = 10;
    const std::vector<int> digits(static_cast<std::size_t>(m_model->columnCount()), kDigits);
    if (!digits.empty()) {
        fitColumns(*m_table, digits, static_cast<int>(digits.size()) - 1);
    }
}

void RowPanel::renew() {
    m_model->renew();
    fit();
}

void RowPanel::setTokens(const theme::Tokens& tokens) {
    m_delegate->setTokens(tokens);
    m_table->viewport()->update();
}

void RowPanel::setMetrics(const theme::Metrics& metrics) {
    setRowHeight(*m_table, metrics);
    fit();
}

}  // namespace ww::ui
