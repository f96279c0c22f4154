#include "ui/widgets/panel_area.h"

#include <QEvent>
#include <QScrollBar>
#include <algorithm>

#include "ui/widgets/laid_out_later.h"

namespace ww::ui {

PanelArea::PanelArea(QWidget* content, int width, QWidget* parent) : PatientArea(parent), m_width(width) {
    setWidget(laidOutLater(content));
    setWidgetResizable(true);
    setFrameShape(NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Expanding);
}

QSize PanelArea::sizeHint() const {
    return {minimumSizeHint().width(), widget() != nullptr ? widget()->sizeHint().height() : 0};
}

QSize PanelArea::minimumSizeHint() const {
    constexpr int kLeastHeight = 80;
    const int content = widget() != nullptr ? widget()->minimumSizeHint().width() : 0;
    return {std::max(m_width, content + verticalScrollBar()->sizeHint().width()), kLeastHeight};
}

bool PanelArea::eventFilter(QObject* watched, QEvent* event) {
    if (watched == widget() && event->type() == QEvent::LayoutRequest) {
        updateGeometry();
    }
    return PatientArea::eventFilter(watched, event);
}

}  // namespace ww::ui
