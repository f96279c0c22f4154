#include "tests/ui/support/target_faults.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QMenuBar>
#include <QTabBar>
#include <QTableView>
#include <algorithm>

#include "tests/ui/support/named_widget.h"

namespace ww::support {
namespace {

bool isTarget(const QWidget& widget) {
    return qobject_cast<const QAbstractButton*>(&widget) || qobject_cast<const QLineEdit*>(&widget) ||
           qobject_cast<const QComboBox*>(&widget);
}

}  // namespace

QStringList targetFaults(const QWidget& window, QSize least, int gap) {
    QStringList faults;
    std::vector<std::pair<QRect, QString>> targets;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->window() != &window) {
            continue;
        }
        const auto add = [&](const QRect& box, const QString& name) {
            if (box.width() < least.width() || box.height() < least.height()) {
                faults << QString("%1: %2x%3").arg(name).arg(box.width()).arg(box.height());
            }
            // What is scrolled out of sight is touched by nobody.
            const QRect seen = box & widget->visibleRegion().boundingRect();
            if (!seen.isEmpty()) {
                targets.emplace_back(QRect(widget->mapTo(&window, seen.topLeft()), seen.size()), name);
            }
        };
        if (isTarget(*widget) && !isInner(*widget)) {
            add(widget->rect(), nameOf(*widget));
        } else if (const auto* menus = qobject_cast<const QMenuBar*>(widget)) {
            for (QAction* action : menus->actions()) {
                const QRect box = menus->actionGeometry(action);
                if (box.height() < least.height() || box.width() < least.width()) {
                    faults
                        << QString("menu %1: %2x%3").arg(action->text()).arg(box.width()).arg(box.height());
                }
            }
        } else if (const auto* tabs = qobject_cast<const QTabBar*>(widget)) {
            for (int tab = 0; tab < tabs->count(); ++tab) {
                if (tabs->tabRect(tab).height() < least.height() ||
                    tabs->tabRect(tab).width() < least.width()) {
                    faults << QString("tab %1: %2x%3")
                                  .arg(tabs->tabText(tab))
                                  .arg(tabs->tabRect(tab).width())
                                  .arg(tabs->tabRect(tab).height());
                }
            }
        } else if (const auto* list = qobject_cast<const QListWidget*>(widget)) {
            for (int row = 0; row < list->count(); ++row) {
                const int height = list->visualItemRect(list->item(row)).height();
                if (height < least.height()) {
                    faults << QString("item %1: height %2").arg(list->item(row)->text()).arg(height);
                }
            }
        } else if (const auto* table = qobject_cast<const QTableView*>(widget);
                   table != nullptr && table->editTriggers() != QAbstractItemView::NoEditTriggers &&
                   table->model()->rowCount() > 0 && table->rowHeight(0) < least.height()) {
            faults << QString("%1: rows of %2").arg(nameOf(*table)).arg(table->rowHeight(0));
        }
    }
    for (std::size_t i = 0; i < targets.size(); ++i) {
        for (std::size_t j = i + 1; j < targets.size(); ++j) {
            const QRect& a = targets[i].first;
            const QRect& b = targets[j].first;
            const int across = std::max(b.left() - a.right(), a.left() - b.right()) - 1;
            const int down = std::max(b.top() - a.bottom(), a.top() - b.bottom()) - 1;
            if (std::max(across, down) < gap) {
                faults << QString("%1 and %2 are %3 apart")
                              .arg(targets[i].second, targets[j].second)
                              .arg(std::max(across, down));
            }
        }
    }
    return faults;
}

}  // namespace ww::support
