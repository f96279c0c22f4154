#include "ui/widgets/notice_line.h"

#include <QAccessible>
#include <QResizeEvent>
#include <QStyle>
#include <algorithm>

#include "ui/text/narrow_letters.h"

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
    if (event->size().width() != event->oldSize().width()) {
        fit();
    }
}

void NoticeLine::setReserved(int height) {
    m_reserved = height;
    setFixedHeight(height);
    fit();
}

bool NoticeLine::isWhole() const {
    return m_message.isEmpty() || heightForWidth(width()) <= m_reserved;
}

void NoticeLine::fit() {
    // A label needs at least the height that it was given.
    setMinimumHeight(std::min(minimumHeight(), m_reserved));
    setText(m_message);
    setToolTip(m_message);
    // Of the font only the width of its letters is its own.
    const auto write = [this](const QFont& letters) {
        if (text::stretchOf(font()) != text::stretchOf(letters)) {
            setFont(letters);
        }
        return isWhole();
    };
    if (!text::widestThatFits(QFont(), write)) {
        write(QFont());
    }
    const int needed = isWhole() ? m_reserved : heightForWidth(width());
    setFixedHeight(needed);
}

}  // namespace ww::ui
