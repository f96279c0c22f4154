#include "ui/widgets/shown_refresh.h"

#include <QEvent>
#include <utility>

namespace ww::ui {

ShownRefresh::ShownRefresh(QWidget* widget, std::function<void()> refresh)
    : QObject(widget), m_widget(widget), m_refresh(std::move(refresh)), m_isShown(widget->isVisible()) {
    widget->installEventFilter(this);
}

void ShownRefresh::want() {
    m_isWanted = true;
    if (m_isShown) {
        catchUp();
    }
}

void ShownRefresh::catchUp() {
    if (std::exchange(m_isWanted, false)) {
        m_refresh();
    }
}

bool ShownRefresh::eventFilter(QObject* watched, QEvent* event) {
    // A widget that is about to be shown is still given its size, part by part.
    if (event->type() == QEvent::Show) {
        m_isShown = true;
        catchUp();
    } else if (event->type() == QEvent::Hide && !m_widget->isVisible()) {
        m_isShown = false;
    }
    return QObject::eventFilter(watched, event);
}

}  // namespace ww::ui
