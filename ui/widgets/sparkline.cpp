#include "ui/widgets/sparkline.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

namespace ww::ui {

Sparkline::Sparkline(QWidget* parent) : QWidget(parent), m_tokens(theme::tokens(theme::Display::Daylight)) {
    setMinimumHeight(64);
}

void Sparkline::setRatios(std::vector<std::optional<double>> ratios, double bandFraction) {
    m_ratios = std::move(ratios);
    m_bandFraction = bandFraction;
    update();
}

void Sparkline::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    update();
}

void Sparkline::paintEvent(QPaintEvent*) {
    double reach = 2.0 * m_bandFraction;
    for (const auto& ratio : m_ratios) {
        if (ratio) {
            reach = std::max(reach, std::abs(*ratio - 1.0) * 1.15);
        }
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF area = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
    painter.fillRect(area, m_tokens.paper);
    const auto y = [&](double ratio) {
        return area.center().y() - (ratio - 1.0) / reach * area.height() / 2.0;
    };
    painter.fillRect(
        QRectF(QPointF(area.left(), y(1.0 + m_bandFraction)), QPointF(area.right(), y(1.0 - m_bandFraction))),
        m_tokens.tintCurrent);
    painter.setPen(QPen(m_tokens.rule, 1));
    painter.drawLine(QPointF(area.left(), y(1.0)), QPointF(area.right(), y(1.0)));
    painter.drawRect(area);
    const double step = area.width() / static_cast<double>(std::max<std::size_t>(1, m_ratios.size()));
    std::optional<QPointF> before;
    for (std::size_t i = 0; i < m_ratios.size(); ++i) {
        if (!m_ratios[i]) {
            before.reset();
            continue;
        }
        const QPointF point(area.left() + (static_cast<double>(i) + 0.5) * step, y(*m_ratios[i]));
        painter.setPen(QPen(m_tokens.ink, 1.6));
        if (before) {
            painter.drawLine(*before, point);
        }
        painter.setBrush(m_tokens.ink);
        painter.drawEllipse(point, 2.6, 2.6);
        before = point;
    }
}

}  // namespace ww::ui
