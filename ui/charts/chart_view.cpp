#include "ui/charts/chart_view.h"

#include <QHeaderView>
#include <QLabel>
#include <QStackedLayout>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/charts/chart_canvas.h"

namespace ww::ui::charts {

ChartView::ChartView(QWidget* parent)
    : QWidget(parent),
      m_stack(new QStackedLayout),
      m_table(new QTableWidget(this)),
      m_sentence(new QLabel(this)) {
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->verticalHeader()->hide();
    m_table->setTabKeyNavigation(false);
    m_sentence->setWordWrap(true);
    m_sentence->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_stack->addWidget(m_table);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    layout->addLayout(m_stack, 1);
    layout->addWidget(m_sentence);
    setFocusProxy(m_table);
}

void ChartView::makeCanvas() {
    m_canvas = new ChartCanvas(this);
    m_stack->insertWidget(0, m_canvas);
    m_stack->setCurrentWidget(m_canvas);
    setFocusProxy(m_canvas);
    draw();
}

void ChartView::draw() {
    if (m_canvas != nullptr) {
        m_canvas->show(m_figure, m_tokens);
        m_canvas->setAccessibleName(m_figure.name);
        m_canvas->setAccessibleDescription(m_figure.sentence);
    }
}

void ChartView::showEvent(QShowEvent* event) {
    if (m_canvas == nullptr) {
        makeCanvas();
    }
    QWidget::showEvent(event);
}

bool ChartView::isTableShown() const {
    return m_canvas != nullptr && m_stack->currentWidget() == m_table;
}

void ChartView::toggleTable() {
    if (m_canvas == nullptr) {
        makeCanvas();
    }
    const bool hadFocus = m_canvas->hasFocus() || m_table->hasFocus();
    m_stack->setCurrentWidget(isTableShown() ? static_cast<QWidget*>(m_canvas) : m_table);
    setFocusProxy(m_stack->currentWidget());
    if (hadFocus) {
        m_stack->currentWidget()->setFocus(Qt::OtherFocusReason);
    }
}

void ChartView::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    draw();
}

void ChartView::setFigure(ChartFigure figure) {
    m_figure = std::move(figure);
    draw();
    m_table->setAccessibleName(tr("%1, as a table").arg(m_figure.name));
    m_table->setAccessibleDescription(m_figure.sentence);
    m_sentence->setText(m_figure.sentence);
    fillTable();
}

void ChartView::fillTable() {
    m_table->clear();
    m_table->setColumnCount(static_cast<int>(m_figure.tableHeads.size()));
    m_table->setRowCount(static_cast<int>(m_figure.tableRows.size()));
    m_table->setHorizontalHeaderLabels(m_figure.tableHeads);
    for (int row = 0; row < m_table->rowCount(); ++row) {
        const QStringList& cells = m_figure.tableRows[static_cast<std::size_t>(row)];
        for (int column = 0; column < cells.size(); ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            item->setTextAlignment(column == 0 ? Qt::AlignLeft | Qt::AlignVCenter
                                               : Qt::AlignRight | Qt::AlignVCenter);
            m_table->setItem(row, column, item);
        }
    }
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
}

}  // namespace ww::ui::charts
