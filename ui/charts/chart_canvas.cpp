#include "ui/charts/chart_canvas.h"

#include <QAreaSeries>
#include <QChart>
#include <QEvent>
#include <QFontMetricsF>
#include <QGraphicsLayout>
#include <QLegend>
#include <QLineSeries>
#include <QList>
#include <QValueAxis>
#include <algorithm>

#include "ui/widgets/focus_ring.h"
#include "ui/widgets/text_scale.h"

namespace ww::ui::charts {

ChartCanvas::ChartCanvas(QWidget* parent) : QChartView(parent) {
    auto* plot = new QChart;
    plot->setAnimationOptions(QChart::NoAnimation);
    plot->legend()->hide();
    plot->setBackgroundRoundness(0);
    plot->setMargins(QMargins());
    plot->layout()->setContentsMargins(0, 0, 0, 0);
    m_x = new QValueAxis;
    m_y = new QValueAxis;
    plot->addAxis(m_x, Qt::AlignBottom);
    plot->addAxis(m_y, Qt::AlignLeft);
    m_bandLow = new QLineSeries(this);
    m_bandHigh = new QLineSeries(this);
    m_band = new QAreaSeries(m_bandHigh, m_bandLow);
    plot->addSeries(m_band);
    m_band->attachAxis(m_x);
    m_band->attachAxis(m_y);
    setChart(plot);
    setFrameShape(QFrame::NoFrame);
    setRenderHint(QPainter::Antialiasing);
    setFocusPolicy(Qt::StrongFocus);
    setMinimumSize(220, 160);
    new FocusRing(this);
}

QSize ChartCanvas::sizeHint() const {
    return minimumSize() * textScale(font());
}

ChartStyle ChartCanvas::style() const {
    QFont textFont = font();
    textFont.setPixelSize(std::max(11, QFontInfo(font()).pixelSize()));
    return {m_tokens, textFont, 1.0};
}

void ChartCanvas::styleAxis(QValueAxis* axis, const Axis& figure) const {
    // A new range with the old interval could mean ticks without number.
    axis->setTickType(QValueAxis::TicksFixed);
    axis->setRange(figure.least, figure.most);
    axis->setTickAnchor(figure.least);
    axis->setTickInterval(figure.step);
    axis->setTickType(QValueAxis::TicksDynamic);
    axis->setLinePen(QPen(m_tokens.rule, 1.2));
    axis->setGridLinePen(QPen(m_tokens.rule, 0.4));
    // Numbers and titles are painted with the names, so that paper and screen look alike.
    axis->setLabelsVisible(false);
    axis->setTitleVisible(false);
}

void ChartCanvas::show(const ChartFigure& figure, const theme::Tokens& tokens) {
    m_figure = figure;
    m_tokens = tokens;
    chart()->setBackgroundBrush(tokens.paper);
    chart()->setPlotAreaBackgroundVisible(false);
    setBackgroundBrush(tokens.paper);
    styleAxis(m_x, figure.x);
    styleAxis(m_y, figure.y);
    m_x->setGridLineVisible(false);
    fillBand();
    while (m_lines.size() < figure.lines.size()) {
        auto* series = new QLineSeries;
        chart()->addSeries(series);
        series->attachAxis(m_x);
        series->attachAxis(m_y);
        m_lines.push_back(series);
    }
    for (std::size_t i = 0; i < m_lines.size(); ++i) {
        const bool isUsed = i < figure.lines.size();
        m_lines[i]->setVisible(isUsed);
        if (isUsed) {
            m_lines[i]->setPen(penOf(figure.lines[i].role, style()));
            m_lines[i]->setPointsVisible(hasDots(figure.lines[i].role));
            m_lines[i]->replace(QList<QPointF>(figure.lines[i].points.begin(), figure.lines[i].points.end()));
        }
    }
    layOut();
    viewport()->update();
}

void ChartCanvas::fillBand() {
    m_band->setVisible(m_figure.band.has_value());
    if (!m_figure.band) {
        return;
    }
    m_bandLow->replace(
        QList<QPointF>{{m_figure.x.least, m_figure.band->low}, {m_figure.x.most, m_figure.band->low}});
    m_bandHigh->replace(
        QList<QPointF>{{m_figure.x.least, m_figure.band->high}, {m_figure.x.most, m_figure.band->high}});
    m_band->setBrush(m_tokens.panel);
    m_band->setPen(penOf(LineRole::Limit, style()));
}

void ChartCanvas::layOut() {
    const QRectF box(QPointF(0, 0), QSizeF(viewport()->size()));
    if (!m_figure.isEmpty() && box.width() > 150 && box.height() > 100) {
        chart()->setPlotArea(plotArea(box.adjusted(4, 4, -4, -4), m_figure, style()));
        // The axes follow at once, not with the next event: labels and grid are drawn by different hands.
        chart()->layout()->invalidate();
        chart()->layout()->activate();
    }
}

void ChartCanvas::drawForeground(QPainter* painter, const QRectF& area) {
    QChartView::drawForeground(painter, area);
    if (m_figure.isEmpty()) {
        return;
    }
    paintScales(*painter, chart()->plotArea(), m_figure, style());
    paintMarksAndNames(*painter, chart()->plotArea(), m_figure, style());
}

void ChartCanvas::resizeEvent(QResizeEvent* event) {
    QChartView::resizeEvent(event);
    layOut();
}

void ChartCanvas::changeEvent(QEvent* event) {
    QChartView::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        updateGeometry();
        layOut();
    }
}

}  // namespace ww::ui::charts
