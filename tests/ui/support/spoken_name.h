// The name that a screen reader says of a control. Not for where a fault lies (named_widget.h).
#pragma once

#include <QAbstractButton>
#include <QString>

namespace ww::support {

inline QString spokenName(const QWidget& widget) {
    const auto* button = qobject_cast<const QAbstractButton*>(&widget);
    QString name =
        widget.accessibleName().isEmpty() && button != nullptr ? button->text() : widget.accessibleName();
    return name.remove('&').simplified();
}

}  // namespace ww::support
