#include "ui/widgets/hinted_field.h"

#include <QKeyEvent>
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

QColor HintedField::hintColor() const {
    // A style sheet makes the color of placeholders half transparent, which nobody reads in glare. Where the
    // field is off its text is soft already.
    constexpr float kText = 0.78F;
    const QColor text = palette().color(QPalette::Text);
    const QColor paper = palette().color(QPalette::Base);
    const auto mixed = [&](float one, float other) { return kText * one + (1 - kText) * other; };
    return isEnabled()
               ? QColor::fromRgbF(mixed(text.redF(), paper.redF()), mixed(text.greenF(), paper.greenF()),
                                  mixed(text.blueF(), paper.blueF()))
               : text;
}

QString HintedField::shownHint() const {
    const bool fits = QFontMetrics(hintFont()).horizontalAdvance(m_hint) <= hintRect().width();
    return text().isEmpty() && fits ? m_hint : QString();
}

bool HintedField::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip && toolTip() == m_hint && !shownHint().isEmpty()) {
        return true;  // It would say again what is read already.
    }
    if (event->type() == QEvent::ShortcutOverride) {
        const auto& key = *static_cast<QKeyEvent*>(event);
        if ((key.matches(QKeySequence::Undo) && !undoesItsOwn()) ||
            (key.matches(QKeySequence::Redo) && !redoesItsOwn())) {
            event->ignore();
            return true;
        }
    }
    return QLineEdit::event(event);
}

void HintedField::paintEvent(QPaintEvent* event) {
    QLineEdit::paintEvent(event);
    const QString hint = shownHint();
    if (hint.isEmpty()) {
        return;
    }
    QPainter painter(this);
    painter.setFont(hintFont());
    painter.setPen(hintColor());
    painter.setLayoutDirection(Qt::LayoutDirectionAuto);
    const int flags = int(Qt::AlignLeft) | int(Qt::AlignVCenter) | int(Qt::TextSingleLine);
    painter.drawText(hintRect(), ui::text::writtenFlags(layoutDirection(), flags, hint), hint);
}

}  // namespace ww::ui
