#include "ui/widgets/ladder.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

namespace ww::ui {
namespace {

/// Half of the scale in heights of the band: what lies farther is drawn at the end, with an arrow.
constexpr double kHalfScaleInBands = 1.6;
constexpr int kBarWidth = 26;

}  // namespace

Ladder::Ladder(QWidget* parent) : QWidget(parent), m_tokens(theme::tokens(theme::Display::Daylight)) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
    setMinimumHeight(160);
    setAccessibleName(tr("Ladder of dp"));
}

void Ladder::show(std::optional<LadderMarks> marks, const QString& head, const QString& sentence) {
    m_marks = std::move(marks);
    m_head = head;
    setAccessibleDescription(sentence);
    update();
}

void Ladder::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    update();
}

void Ladder::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    // A scale is not mirrored: its words stay at their side of it.
    painter.setLayoutDirection(Qt::LayoutDirectionAuto);
    painter.setRenderHint(QPainter::Antialiasing);
    const int line = fontMetrics().height();
    painter.setPen(m_tokens.soft);
    painter.drawText(QRect(0, 0, width(), line), int(Qt::AlignHCenter | Qt::AlignVCenter), m_head);
    const QRectF scale(width() / 2.0 - kBarWidth / 2.0, line + 8, kBarWidth, height() - line - 10);
    painter.setPen(QPen(m_tokens.rule, 1));
    painter.setBrush(m_tokens.paper);
    painter.drawRect(scale);
    if (!m_marks || m_marks->high.at <= m_marks->low.at) {
        return;
    }
    const LadderMarks& marks = *m_marks;
    const double half = kHalfScaleInBands * (marks.high.at - marks.low.at);
    const auto y = [&](double at) {
        return scale.center().y() - std::clamp((at - marks.aim.at) / half, -1.0, 1.0) * scale.height() / 2;
    };
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_tokens.tintCurrent);
    painter.drawRect(
        QRectF(QPointF(scale.left(), y(marks.high.at)), QPointF(scale.right(), y(marks.low.at))));
    const QColor ink = marks.isSoft ? m_tokens.soft : m_tokens.ink;
    painter.setPen(QPen(ink, m_tokens.isDaylight ? 3 : 2));
    for (const LadderMark* edge : {&marks.high, &marks.low}) {
        painter.drawLine(QPointF(scale.left() - 4, y(edge->at)), QPointF(scale.right(), y(edge->at)));
    }
    QPen aimPen(ink, m_tokens.isDaylight ? 4 : 3);
    aimPen.setDashPattern({2.0, 1.0});
    painter.setPen(aimPen);
    painter.drawLine(QPointF(scale.left() - 8, y(marks.aim.at)), QPointF(scale.right(), y(marks.aim.at)));
    painter.setPen(ink);
    for (const LadderMark* mark : {&marks.high, &marks.aim, &marks.low}) {
        painter.drawText(QRectF(0, y(mark->at) - line / 2.0, scale.left() - 12, line),
                         int(Qt::AlignRight | Qt::AlignVCenter), mark->words);
    }
    // The newest try stands alone in ink; those before it are smaller in weight, and never hide it.
    double taken = -1e9;
    for (std::size_t i = marks.tries.size(); i > 0; --i) {
        const LadderMark& mark = marks.tries[i - 1];
        const double at = y(mark.at);
        const bool isNewest = i == marks.tries.size();
        painter.setPen(QPen(isNewest ? m_tokens.ink : m_tokens.rule, isNewest ? 3 : 2));
        painter.drawLine(QPointF(scale.left(), at), QPointF(scale.right() + 8, at));
        if (!isNewest && std::abs(at - taken) < line) {
            continue;
        }
        const double off = (mark.at - marks.aim.at) / half;
        const QString arrow = off > 1    ? QString(QChar(0x2191))
                              : off < -1 ? QString(QChar(0x2193))
                                         : QString();
        painter.setPen(isNewest ? m_tokens.ink : m_tokens.soft);
        const double top = std::clamp(at - line / 2.0, scale.top(), scale.bottom() - line);
        painter.drawText(QRectF(scale.right() + 12, top, width() - scale.right() - 12, line),
                         int(Qt::AlignLeft | Qt::AlignVCenter), mark.words + arrow);
        if (isNewest) {
            taken = at;
        }
    }
}

}  // namespace ww::ui
