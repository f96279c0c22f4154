// The drawing of a chart figure by Qt Charts, with our own marks and names over it. Part of ChartView.
#pragma once

#include <QChartView>
#include <vector>

#include "ui/charts/chart_painter.h"

class QAreaSeries;
class QLineSeries;
class QValueAxis;

namespace ww::ui::charts {

/// Series and axes are kept and refilled by replace(); a new one is made only when a figure has more lines
/// than before.
class ChartCanvas : public QChartView {
    Q_OBJECT

  public:
    explicit ChartCanvas(QWidget* parent = nullptr);

    void show(const ChartFigure& figure, const theme::Tokens& tokens);

    /// Room for a plot between its scales, which grow with the text; not, as of Qt's own, the size it has.
    QSize sizeHint() const override;

  protected:
    void drawForeground(QPainter* painter, const QRectF& area) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    ChartStyle style() const;
    void styleAxis(QValueAxis* axis, const Axis& figure) const;
    void fillBand();
    void layOut();

    ChartFigure m_figure;
    theme::Tokens m_tokens;
    QValueAxis* m_x = nullptr;
    QValueAxis* m_y = nullptr;
    QLineSeries* m_bandLow = nullptr;
    QLineSeries* m_bandHigh = nullptr;
    QAreaSeries* m_band = nullptr;
    std::vector<QLineSeries*> m_lines;
};

}  // namespace ww::ui::charts
