#include "ui/widgets/patient_area.h"

#include <QCoreApplication>
#include <QEvent>

namespace ww::ui {

/// Qt measures at once, also what is hidden, and for a new style sheet while half of the widgets have the old
/// one.
bool PatientArea::event(QEvent* event) {
    const bool isNewLook = event->type() == QEvent::StyleChange;
    if (!isNewLook && event->type() != QEvent::LayoutRequest) {
        return QScrollArea::event(event);
    }
    if (!isVisible()) {
        m_isBehind = true;
        return QAbstractScrollArea::event(event);
    }
    if (isNewLook) {
        QCoreApplication::postEvent(this, new QEvent(QEvent::LayoutRequest));
        return QAbstractScrollArea::event(event);
    }
    return QScrollArea::event(event);
}

void PatientArea::showEvent(QShowEvent* event) {
    QScrollArea::showEvent(event);
    if (m_isBehind) {
        m_isBehind = false;
        QEvent request(QEvent::LayoutRequest);
        QScrollArea::event(&request);
    }
}

}  // namespace ww::ui
