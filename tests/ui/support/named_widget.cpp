#include "tests/ui/support/named_widget.h"

#include <QAbstractButton>
#include <QLabel>
#include <QMetaObject>

namespace ww::support {

QString nameOf(const QWidget& widget) {
    QString words = widget.accessibleName();
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget); button && words.isEmpty()) {
        words = button->text();
    }
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
        words += " \"" + label->text().left(60) + "\"";
    }
    QString path;
    for (const QWidget* up = widget.parentWidget(); up != nullptr; up = up->parentWidget()) {
        const QString kind = up->metaObject()->className();
        if (kind.startsWith("ww::ui::") && !up->isWindow()) {
            path = " in " + kind.mid(8);
            break;
        }
    }
    return QString("%1 %2%3").arg(widget.metaObject()->className(), words.simplified(), path);
}

bool isInner(const QWidget& widget) {
    const QWidget* parent = widget.parentWidget();
    return parent != nullptr &&
           (parent->inherits("QAbstractItemView") || parent->inherits("QHeaderView") ||
            parent->inherits("QComboBox") || parent->inherits("QLineEdit") || parent->inherits("QTabBar") ||
            parent->inherits("QScrollBar") || parent->inherits("QChartView") ||
            parent->inherits("QGraphicsView") || widget.objectName().startsWith("qt_"));
}

}  // namespace ww::support
