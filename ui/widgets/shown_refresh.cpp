#include "ui/widgets/shown_refresh.h"

#include <QEvent>
#include <utility>

namespace ww::ui {

ShownRefresh::ShownRefresh(QWidget* widget, std::function<void()> refresh)
    : QObject(widget), m_widget(widget), m_refresh(std::move(refresh)) {
    widget->installEventFilter(this);
}

void ShownRefresh::want() {
    m_isWanted = true;
    if (m_widget->isVisible()) {
        catchUp();
    }
}

void ShownRefresh::catchUp() {
    if (std::exchange(m_isWanted, false)) {
        m_refresh();
    }
}

bool ShownRefresh::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Show) {
        catchUp();
    }
    return QObject::eventFilter(watched, event);
}

}  // namespace ww::ui
