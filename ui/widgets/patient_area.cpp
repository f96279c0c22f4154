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
    if (isVisible() && !isNewLook) {
        return QScrollArea::event(event);
    }
    if (isVisible()) {
        QCoreApplication::postEvent(this, new QEvent(QEvent::LayoutRequest));
    }
    return QAbstractScrollArea::event(event);
}

void PatientArea::showEvent(QShowEvent* event) {
    QScrollArea::showEvent(event);
    // What it holds may have changed while it was not seen.
    QEvent request(QEvent::LayoutRequest);
    QScrollArea::event(&request);
}

}  // namespace ww::ui
