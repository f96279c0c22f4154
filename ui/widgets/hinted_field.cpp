#include "ui/widgets/hinted_field.h"

#include <QPainter>
#include <QStyle>
#include <QStyleOptionFrame>

#include "ui/text/narrow_letters.h"
#include "ui/text/written_way.h"

namespace ww::ui {

void HintedField::setHint(const QString& hint) {
    m_hint = hint;
    if (accessibleDescription().isEmpty()) {
        setAccessibleDescription(hint);
    }
    setToolTip(hint);
    update();
}

QRect HintedField::hintRect() const {
    constexpr int kBesideText = 2;
    QStyleOptionFrame option;
    initStyleOption(&option);
    return style()
        ->subElementRect(QStyle::SE_LineEditContents, &option, this)
        .marginsRemoved(textMargins())
        .adjusted(kBesideText, 0, -kBesideText, 0);
}

QFont HintedField::hintFont() const {
    const int room = hintRect().width();
    const auto fitting = ui::text::widestThatFits(
        font(), [&](const QFont& tried) { return QFontMetrics(tried).horizontalAdvance(m_hint) <= room; });
    return fitting.value_or(ui::text::narrowest(font()));
}

QString HintedField::shownHint() const {
    const bool fits = QFontMetrics(hintFont()).horizontalAdvance(m_hint) <= hintRect().width();
    return text().isEmpty() && fits ? m_hint : QString();
}

void HintedField::paintEvent(QPaintEvent* event) {
    QLineEdit::paintEvent(event);
    const QString hint = shownHint();
    if (hint.isEmpty()) {
        return;
    }
    QPainter painter(this);
    painter.setFont(hintFont());
    painter.setPen(palette().color(QPalette::PlaceholderText));
    painter.setLayoutDirection(Qt::LayoutDirectionAuto);
    const int flags = int(Qt::AlignLeft) | int(Qt::AlignVCenter) | int(Qt::TextSingleLine);
    painter.drawText(hintRect(), ui::text::writtenFlags(layoutDirection(), flags, hint), hint);
}

}  // namespace ww::ui
