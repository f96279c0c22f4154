// For what stands in a stack and is not seen yet.
#pragma once

#include <QWidget>

namespace ww::ui {

/// The same widget, which a stack does not measure when it is put there: it is laid out when it is shown.
template <class Widget>
Widget* laidOutLater(Widget* widget) {
    widget->setAttribute(Qt::WA_Resized);
    return widget;
}

}  // namespace ww::ui
