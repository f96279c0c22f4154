#include "ui/widgets/patient_area.h"

#include <QCoreApplication>
#include <QEvent>
#include <QKeyEvent>
#include <QScopedValueRollback>
#include <QScrollBar>

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

void PatientArea::keyPressEvent(QKeyEvent* event) {
    QScrollBar* bar = verticalScrollBar();
    const bool isToEnd = event->key() == Qt::Key_End;
    if ((isToEnd || event->key() == Qt::Key_Home) && event->modifiers() == Qt::NoModifier) {
        bar->setValue(isToEnd ? bar->maximum() : bar->minimum());
        event->accept();
        return;
    }
    QScrollArea::keyPressEvent(event);
}

bool PatientArea::eventFilter(QObject* watched, QEvent* event) {
    constexpr int kMostInTurn = 4;
    if (m_inTurn >= kMostInTurn) {
        return false;
    }
    const QScopedValueRollback<int> inTurn(m_inTurn, m_inTurn + 1);
    return QScrollArea::eventFilter(watched, event);
}

void PatientArea::showEvent(QShowEvent* event) {
    QScrollArea::showEvent(event);
    // What it holds may have changed while it was not seen.
    QEvent request(QEvent::LayoutRequest);
    QScrollArea::event(&request);
}

}  // namespace ww::ui
