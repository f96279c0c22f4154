#include "ui/widgets/dialog_area.h"

#include <QEvent>
#include <QScrollBar>

namespace ww::ui {

DialogArea::DialogArea(QWidget* content, QWidget* parent) : PlaceArea(parent) {
    setWidget(content);
}

QSize DialogArea::minimumSizeHint() const {
    constexpr int kLeastHeight = 80;
    const int content = widget() != nullptr ? widget()->minimumSizeHint().width() : 0;
    return {content + verticalScrollBar()->sizeHint().width(), kLeastHeight};
}

bool DialogArea::eventFilter(QObject* watched, QEvent* event) {
    if (watched == widget() && event->type() == QEvent::LayoutRequest) {
        updateGeometry();
    }
    return PlaceArea::eventFilter(watched, event);
}

}  // namespace ww::ui
