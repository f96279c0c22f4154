#include "ui/charts/chart_view.h"

#include <QHeaderView>
#include <QLabel>
#include <QStackedLayout>
#include <QTableView>
#include <QVBoxLayout>

#include "ui/charts/chart_canvas.h"
#include "ui/charts/figure_table.h"

namespace ww::ui::charts {

ChartView::ChartView(QWidget* parent)
    : QWidget(parent),
      m_stack(new QStackedLayout),
      m_cells(new FigureTable(this)),
      m_table(new QTableView(this)),
      m_sentence(new QLabel(this)) {
    m_table->setModel(m_cells);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->verticalHeader()->hide();
    m_table->setTabKeyNavigation(false);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
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
    m_empty = new QLabel(m_canvas);
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setWordWrap(true);
    m_empty->setObjectName(QStringLiteral("empty_state"));
    (new QVBoxLayout(m_canvas))->addWidget(m_empty);
    placeSentence();
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

/// Of a figure with nothing to draw the sentence stands in its place.
void ChartView::placeSentence() {
    const bool isEmpty = m_figure.isEmpty();
    m_sentence->setVisible(!isEmpty || isTableShown());
    if (m_empty != nullptr) {
        m_empty->setVisible(isEmpty);
        m_empty->setText(isEmpty ? m_figure.sentence : QString());
    }
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
    placeSentence();
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
    placeSentence();
    m_cells->show(m_figure.tableHeads, m_figure.tableRows);
}

}  // namespace ww::ui::charts
