#include "ui/widgets/quiet_combo.h"

#include <QHelpEvent>
#include <QStyleOptionComboBox>
#include <QStylePainter>
#include <QToolTip>

#include "ui/text/narrow_letters.h"

namespace ww::ui {

QuietCombo::Writing QuietCombo::writing() const {
    // A style may keep so much beside the words itself.
    constexpr int kBesideWords = 4;
    QStyleOptionComboBox option;
    initStyleOption(&option);
    const int room =
        style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this).width() -
        kBesideWords;
    const auto fitting = text::widestThatFits(font(), [&](const QFont& tried) {
        return QFontMetrics(tried).horizontalAdvance(currentText()) <= room;
    });
    if (fitting) {
        return {*fitting, currentText()};
    }
    const QFont least = text::narrowest(font());
    return {least, QFontMetrics(least).elidedText(currentText(), Qt::ElideRight, room)};
}

void QuietCombo::paintEvent(QPaintEvent*) {
    const Writing shown = writing();
    QStylePainter painter(this);
    QStyleOptionComboBox option;
    initStyleOption(&option);
    painter.drawComplexControl(QStyle::CC_ComboBox, option);
    painter.setFont(shown.font);
    option.currentText = shown.text;
    painter.drawControl(QStyle::CE_ComboBoxLabel, option);
}

bool QuietCombo::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip && toolTip().isEmpty() && writing().text != currentText()) {
        QToolTip::showText(static_cast<QHelpEvent*>(event)->globalPos(), currentText(), this);
        return true;
    }
    return QComboBox::event(event);
}

}  // namespace ww::ui
