#include "ui/widgets/focus_ring.h"

#include <QEvent>
#include <QPainter>

namespace ww::ui {

FocusRing::FocusRing(QWidget* around) : QWidget(around) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFocusPolicy(Qt::NoFocus);
    around->installEventFilter(this);
    follow();
    setVisible(around->hasFocus());
}

FocusRing::FocusRing(QTabBar* around) : FocusRing(static_cast<QWidget*>(around)) {
    connect(around, &QTabBar::currentChanged, this, &FocusRing::follow);
}

void FocusRing::follow() {
    const auto* tabs = qobject_cast<const QTabBar*>(parentWidget());
    setGeometry(tabs != nullptr ? tabs->tabRect(tabs->currentIndex()) : parentWidget()->rect());
}

bool FocusRing::eventFilter(QObject* watched, QEvent* event) {
    switch (event->type()) {
        case QEvent::FocusIn:
            follow();
            raise();
            show();
            break;
        case QEvent::FocusOut:
            hide();
            break;
        case QEvent::Resize:
        case QEvent::LayoutRequest:
            follow();
            break;
        default:
            break;
    }
    return QWidget::eventFilter(watched, event);
}

void FocusRing::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(
        QPen(palette().color(QPalette::WindowText), kWidth, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    const double inset = kWidth / 2.0;
    painter.drawRect(QRectF(rect()).adjusted(inset, inset, -inset, -inset));
}

}  // namespace ww::ui
