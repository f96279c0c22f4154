#include "ui/widgets/notice_line.h"

#include <QAccessible>
#include <QStyle>

namespace ww::ui {

NoticeLine::NoticeLine(QWidget* parent) : QLabel(parent) {
    setObjectName(QStringLiteral("notice_line"));
    setAccessibleName(tr("Notice"));
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    setAlignment(Qt::AlignVCenter | Qt::AlignLeft);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    setProperty("urgent", false);
}

void NoticeLine::showMessage(const QString& message, bool isUrgent) {
    m_message = message;
    if (property("urgent").toBool() != (isUrgent && !message.isEmpty())) {
        setProperty("urgent", isUrgent && !message.isEmpty());
        style()->unpolish(this);
        style()->polish(this);
    }
    fit();
    setAccessibleDescription(message);
    if (!message.isEmpty()) {
        QAccessibleEvent event(this, QAccessible::Alert);
        QAccessible::updateAccessibility(&event);
    }
}

void NoticeLine::resizeEvent(QResizeEvent* event) {
    QLabel::resizeEvent(event);
    fit();
}

void NoticeLine::fit() {
    setText(m_message);
    // Two lines have room; a longer message is whole in the tooltip.
    setToolTip(m_message);
}

}  // namespace ww::ui
