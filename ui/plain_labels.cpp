#include "ui/plain_labels.h"

#include <QEvent>
#include <QLabel>

namespace ww::ui {
namespace {

bool showsWhole(const QLabel& label) {
    const QSize least = label.sizeHint();
    return label.wordWrap() ? label.heightForWidth(label.width()) <= label.height()
                            : least.width() <= label.width() && least.height() <= label.height();
}

}  // namespace

bool PlainLabels::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Polish) {
        auto* label = qobject_cast<QLabel*>(watched);
        if (label != nullptr && label->textFormat() == Qt::AutoText) {
            label->setTextFormat(Qt::PlainText);
        }
    }
    if (event->type() == QEvent::ToolTip) {
        const auto* label = qobject_cast<QLabel*>(watched);
        // It would say again what is read already.
        if (label != nullptr && label->toolTip() == label->text() && showsWhole(*label)) {
            return true;
        }
    }
    return QObject::eventFilter(watched, event);
}

}  // namespace ww::ui
