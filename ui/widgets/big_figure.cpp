#include "ui/widgets/big_figure.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/text/narrow_letters.h"
#include "ui/text/written_way.h"

namespace ww::ui {

BigFigure::BigFigure(const QString& head, QWidget* parent)
    : QWidget(parent), m_head(head), m_tokens(theme::tokens(theme::Display::Daylight)) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    setAccessibleName(head);
}

void BigFigure::show(const QString& number, const QStringList& notes, bool isSoft) {
    if (number == m_number && notes == m_notes && isSoft == m_isSoft) {
        return;
    }
    m_number = number;
    m_notes = notes;
    m_isSoft = isSoft;
    setAccessibleDescription((QStringList{number} + notes).join(QStringLiteral(", ")));
    update();
}

void BigFigure::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    updateGeometry();
    update();
}

void BigFigure::setSmall(bool isSmall) {
    if (isSmall != m_isSmall) {
        m_isSmall = isSmall;
        updateGeometry();
        update();
    }
}

QFont BigFigure::numberFont(bool isSmall) const {
    QFont made = font();
    made.setWeight(m_tokens.numerals);
    constexpr int kProbe = 1000;
    made.setPixelSize(kProbe);
    const double capHeight = QFontMetricsF(made).capHeight();
    const double wanted = isSmall ? kSmallCapHeight : kCapHeight;
    made.setPixelSize(static_cast<int>(std::ceil((wanted + 0.5) * kProbe / capHeight)));
    return made;
}

QFont BigFigure::fittedFont(const QString& words) const {
    const auto fits = [&](const QFont& tried) {
        return QFontMetrics(tried).horizontalAdvance(words) <= width();
    };
    if (const auto fitting = text::widestThatFits(font(), fits)) {
        return *fitting;
    }
    QFont least = text::narrowest(font());
    const int wide = QFontMetrics(least).horizontalAdvance(words);
    least.setPixelSize(std::max(1, QFontInfo(least).pixelSize() * width() / std::max(1, wide)));
    return least;
}

QSize BigFigure::sizeOf(bool isSmall) const {
    // Four digits and a point, whatever stands there now.
    const int width = QFontMetrics(numberFont(isSmall)).horizontalAdvance(QStringLiteral("88.8"));
    return {width + 8, 3 * fontMetrics().height() + (isSmall ? kSmallCapHeight : kCapHeight) + 22};
}

void BigFigure::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setLayoutDirection(Qt::LayoutDirectionAuto);
    // Words that are longer than the figure is wide are set narrower, then smaller, never cut.
    const auto write = [&](int top, int height, const QString& words) {
        painter.setFont(fittedFont(words));
        const int flags = int(Qt::AlignLeft | Qt::AlignVCenter);
        painter.drawText(QRect(0, top, width(), height), text::writtenFlags(layoutDirection(), flags, words),
                         words);
    };
    const int line = fontMetrics().height();
    painter.setPen(m_tokens.soft);
    write(0, line, m_head);
    const int capHeight = m_isSmall ? kSmallCapHeight : kCapHeight;
    const int baseline = line + 10 + capHeight;
    QFont big = numberFont(m_isSmall);
    // A longer number is set narrower, never cut, and keeps apart from what stands beside it.
    constexpr int kApart = 6;
    const int room = std::max(1, width() - kApart);
    const auto fits = [&](const QFont& tried) {
        return QFontMetrics(tried).horizontalAdvance(m_number) <= room;
    };
    if (const auto fitting = text::widestThatFits(big, fits)) {
        big = *fitting;
    } else {
        big.setStretch(std::max(50, 100 * room / QFontMetrics(big).horizontalAdvance(m_number)));
    }
    const int wide = QFontMetrics(big).horizontalAdvance(m_number);
    painter.setFont(big);
    painter.setPen(m_isSoft ? m_tokens.soft : m_tokens.ink);
    const int beside = layoutDirection() == Qt::RightToLeft ? std::max(0, width() - wide) : 0;
    painter.drawText(QPointF(beside, baseline), m_number);
    painter.setPen(m_tokens.ink);
    int top = baseline + 8;
    for (const QString& note : m_notes) {
        write(top, line, note);
        top += line;
    }
}

}  // namespace ww::ui
