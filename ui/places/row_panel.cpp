#include "ui/places/row_panel.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <vector>

#include "ui/places/column_fit.h"

namespace ww::ui {

RowPanel::RowPanel(WorkbookBridge& bridge, Content content, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_removeRow(std::move(content.remove)),
      m_title(new QLabel(content.title, this)),
      m_model(new RecordTableModel(bridge, std::move(content.table), this)),
      m_table(new EntryTable(this)),
      m_delegate(new BranchDelegate(this)),
      m_remove(new QPushButton(content.removeWords, this)) {
    m_title->setObjectName(QStringLiteral("panel_title"));
    setUpEntry(*m_table, *m_model, *m_delegate, bridge, content.title);
    auto* top = new QHBoxLayout;
    top->addWidget(m_title, 1);
    top->addWidget(m_remove);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(top);
    column->addWidget(m_table, 1);
    connect(m_table, &EntryTable::resized, this, &RowPanel::fit);
    connect(m_remove, &QPushButton::clicked, this, [this] {
        if (m_table->currentIndex().isValid()) {
            m_bridge.tellOrClear(m_removeRow(m_table->currentIndex().row()));
            m_table->viewport()->update();
        }
    });
    connect(&bridge, &WorkbookBridge::changed, this,
            [this] { m_remove->setEnabled(!m_bridge.isReadOnly()); });
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
