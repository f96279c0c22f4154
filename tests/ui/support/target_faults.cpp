#include "tests/ui/support/target_faults.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QMainWindow>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QTabBar>
#include <QTableView>
#include <QToolButton>
#include <QTreeWidget>
#include <algorithm>

#include "tests/ui/support/named_widget.h"

namespace ww::support {
namespace {

/// What is touched as a whole, and where it is in sight in the window.
struct Target {
    const QWidget* widget;
    QRect seen;
};

bool isTarget(const QWidget& widget) {
    return qobject_cast<const QAbstractButton*>(&widget) || qobject_cast<const QLineEdit*>(&widget) ||
           qobject_cast<const QComboBox*>(&widget) || qobject_cast<const QPlainTextEdit*>(&widget);
}

/// Whether a touch of a row does something.
bool takesTouches(const QTableView& table) {
    const bool isBesideMainWindow = qobject_cast<const QMainWindow*>(table.window()) == nullptr;
    return table.editTriggers() != QAbstractItemView::NoEditTriggers ||
           (isBesideMainWindow && table.selectionMode() != QAbstractItemView::NoSelection);
}

QString tooSmall(const QString& name, const QSize& size, const QSize& least) {
    const bool isSmall = size.width() < least.width() || size.height() < least.height();
    return isSmall ? QString("%1: %2x%3").arg(name).arg(size.width()).arg(size.height()) : QString();
}

/// The parts of a widget that are touched by themselves.
QStringList partFaults(const QWidget& widget, const QSize& least) {
    QStringList faults;
    if (const auto* menus = qobject_cast<const QMenuBar*>(&widget)) {
        for (QAction* action : menus->actions()) {
            faults << tooSmall("menu " + action->text(), menus->actionGeometry(action).size(), least);
        }
    } else if (const auto* tabs = qobject_cast<const QTabBar*>(&widget)) {
        for (int tab = 0; tab < tabs->count(); ++tab) {
            faults << tooSmall("tab " + tabs->tabText(tab), tabs->tabRect(tab).size(), least);
        }
    } else if (const auto* list = qobject_cast<const QListWidget*>(&widget)) {
        for (int row = 0; row < list->count(); ++row) {
            const QSize size = list->visualItemRect(list->item(row)).size();
            faults << tooSmall("item " + list->item(row)->text(), size, least);
        }
    } else if (const auto* tree = qobject_cast<const QTreeWidget*>(&widget)) {
        for (int row = 0; row < tree->topLevelItemCount(); ++row) {
            // What opens and closes a branch is as wide as its items stand in.
            const QSize size(tree->indentation(), tree->visualItemRect(tree->topLevelItem(row)).height());
            faults << tooSmall("item " + tree->topLevelItem(row)->text(0), size, least);
        }
    } else if (const auto* table = qobject_cast<const QTableView*>(&widget);
               table != nullptr && takesTouches(*table)) {
        for (int row = std::max(0, table->rowAt(0)); row < table->model()->rowCount(); ++row) {
            if (table->rowViewportPosition(row) > table->viewport()->height()) {
                break;
            }
            faults << tooSmall(QString("%1: row %2").arg(nameOf(*table)).arg(row),
                               {least.width(), table->rowHeight(row)}, least);
        }
    } else if (const auto* combo = qobject_cast<const QComboBox*>(&widget); combo && combo->count() > 0) {
        faults << tooSmall(nameOf(*combo) + ": a choice", {least.width(), combo->view()->sizeHintForRow(0)},
                           least);
    } else if (const auto* field = qobject_cast<const QLineEdit*>(&widget);
               field != nullptr && field->isClearButtonEnabled()) {
        faults << tooSmall(nameOf(*field) + ": what clears it", field->findChild<QToolButton*>()->size(),
                           least);
    }
    faults.removeAll(QString());
    return faults;
}

/// How far two targets are from one another.
int between(const QRect& a, const QRect& b) {
    const int across = std::max(b.left() - a.right(), a.left() - b.right()) - 1;
    const int down = std::max(b.top() - a.bottom(), a.top() - b.bottom()) - 1;
    return std::max(across, down);
}

}  // namespace

QStringList targetFaults(const QWidget& window, QSize least, int gap) {
    QStringList faults;
    std::vector<Target> targets;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->window() != &window || isInner(*widget)) {
            continue;
        }
        faults << partFaults(*widget, least);
        if (!isTarget(*widget)) {
            continue;
        }
        if (const QString fault = tooSmall(nameOf(*widget), widget->size(), least); !fault.isEmpty()) {
            faults << fault;
        }
        // What is scrolled out of sight is touched by nobody.
        const QRect seen = widget->visibleRegion().boundingRect();
        if (!seen.isEmpty()) {
            targets.push_back({widget, QRect(widget->mapTo(&window, seen.topLeft()), seen.size())});
        }
    }
    for (std::size_t i = 0; i < targets.size(); ++i) {
        for (std::size_t j = i + 1; j < targets.size(); ++j) {
            if (const int apart = between(targets[i].seen, targets[j].seen); apart < gap) {
                faults << QString("%1 and %2 are %3 apart")
                              .arg(nameOf(*targets[i].widget), nameOf(*targets[j].widget))
                              .arg(apart);
            }
        }
    }
    return faults;
}

}  // namespace ww::support
