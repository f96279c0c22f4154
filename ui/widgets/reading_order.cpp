#include "ui/widgets/reading_order.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QBoxLayout>
#include <QButtonGroup>
#include <QComboBox>
#include <QFormLayout>
#include <QGraphicsView>
#include <QGridLayout>
#include <QScrollArea>
#include <QSet>
#include <QSplitter>
#include <QTabBar>
#include <QTabWidget>
#include <algorithm>
#include <iterator>

namespace ww::ui {
namespace {

constexpr const char* kStopBefore = "stop_before";

/// The buttons of which one alone is checked, this one among them; empty where it stands for itself.
QList<QAbstractButton*> exclusiveGroup(const QAbstractButton& button) {
    if (!button.isCheckable()) {
        return {};
    }
    if (const QButtonGroup* group = button.group()) {
        return group->exclusive() ? group->buttons() : QList<QAbstractButton*>();
    }
    QList<QAbstractButton*> all;
    if (button.autoExclusive() && button.parentWidget() != nullptr) {
        for (auto* other :
             button.parentWidget()->findChildren<QAbstractButton*>(Qt::FindDirectChildrenOnly)) {
            if (other->autoExclusive() && other->group() == nullptr) {
                all << other;
            }
        }
    }
    return all;
}

/// Whether Tab may stop at a widget once it is seen and enabled. Qt takes the wish for Tab from a button when
/// another of its group is checked.
bool isKindOfStop(const QWidget& widget) {
    if (widget.focusProxy() != nullptr || widget.focusPolicy() == Qt::NoFocus) {
        return false;
    }
    const auto* button = qobject_cast<const QAbstractButton*>(&widget);
    return (widget.focusPolicy() & Qt::TabFocus) == Qt::TabFocus ||
           (button != nullptr && !exclusiveGroup(*button).isEmpty());
}

/// Collects the stops of a page, seen or not.
class Reader {
  public:
    void read(QWidget& widget) {
        if (m_seen.contains(&widget)) {
            return;
        }
        m_seen.insert(&widget);
        if (isKindOfStop(widget)) {
            m_stops.push_back(&widget);
        }
        if (auto* tabs = qobject_cast<QTabWidget*>(&widget)) {
            read(*tabs->tabBar());
            for (int page = 0; page < tabs->count(); ++page) {
                read(*tabs->widget(page));
            }
        } else if (auto* splitter = qobject_cast<QSplitter*>(&widget)) {
            for (int part = 0; part < splitter->count(); ++part) {
                read(*splitter->widget(part));
            }
        } else if (auto* area = qobject_cast<QScrollArea*>(&widget)) {
            if (area->widget() != nullptr) {
                read(*area->widget());
            }
        } else if (auto* view = qobject_cast<QAbstractItemView*>(&widget)) {
            readByPlace(*view->viewport());
        } else if (!isWhole(widget)) {
            if (widget.layout() != nullptr) {
                readLayout(*widget.layout());
            }
            readByPlace(widget);
        }
    }

    /// In reading order, but for those that are to follow another.
    std::vector<QWidget*> stops() const {
        std::vector<QWidget*> ordered = m_stops;
        for (QWidget* stop : m_stops) {
            auto* before = qobject_cast<QWidget*>(stop->property(kStopBefore).value<QObject*>());
            if (before == nullptr || std::find(ordered.begin(), ordered.end(), before) == ordered.end()) {
                continue;
            }
            ordered.erase(std::find(ordered.begin(), ordered.end(), stop));
            ordered.insert(std::find(ordered.begin(), ordered.end(), before) + 1, stop);
        }
        return ordered;
    }

  private:
    /// Whether what a widget holds is its own affair.
    static bool isWhole(const QWidget& widget) {
        return qobject_cast<const QComboBox*>(&widget) || qobject_cast<const QAbstractSpinBox*>(&widget) ||
               qobject_cast<const QAbstractScrollArea*>(&widget) || qobject_cast<const QTabBar*>(&widget);
    }

    /// What no layout places, by where it stands.
    void readByPlace(const QWidget& parent) {
        QList<QWidget*> children = parent.findChildren<QWidget*>(Qt::FindDirectChildrenOnly);
        const bool isMirrored = parent.layoutDirection() == Qt::RightToLeft;
        std::stable_sort(children.begin(), children.end(), [&](const QWidget* a, const QWidget* b) {
            return a->y() != b->y() ? a->y() < b->y() : (a->x() < b->x()) != isMirrored && a->x() != b->x();
        });
        for (QWidget* child : children) {
            if (!child->isWindow()) {
                read(*child);
            }
        }
    }

    void readItem(QLayoutItem* item) {
        if (item == nullptr) {
            return;
        }
        if (item->widget() != nullptr) {
            read(*item->widget());
        } else if (item->layout() != nullptr) {
            readLayout(*item->layout());
        }
    }

    void readLayout(QLayout& layout) {
        if (layout.menuBar() != nullptr) {
            read(*layout.menuBar());
        }
        for (const int i : readingOrder(layout)) {
            readItem(layout.itemAt(i));
        }
    }

    /// The items of a layout as they are read. Lines from right to left are read from the right, where
    /// layouts place what comes first.
    static std::vector<int> readingOrder(const QLayout& layout) {
        std::vector<int> order(static_cast<std::size_t>(layout.count()));
        for (std::size_t i = 0; i < order.size(); ++i) {
            order[i] = static_cast<int>(i);
        }
        if (const auto* grid = qobject_cast<const QGridLayout*>(&layout)) {
            sortByPlace(order, [grid](int i) {
                int row = 0;
                int column = 0;
                int rows = 0;
                int columns = 0;
                grid->getItemPosition(i, &row, &column, &rows, &columns);
                return std::pair(row, column);
            });
        } else if (const auto* form = qobject_cast<const QFormLayout*>(&layout)) {
            sortByPlace(order, [form](int i) {
                int row = 0;
                QFormLayout::ItemRole role{};
                form->getItemPosition(i, &row, &role);
                return std::pair(row, static_cast<int>(role));
            });
        } else if (const auto* box = qobject_cast<const QBoxLayout*>(&layout);
                   box != nullptr && (box->direction() == QBoxLayout::RightToLeft ||
                                      box->direction() == QBoxLayout::BottomToTop)) {
            std::reverse(order.begin(), order.end());
        }
        return order;
    }

    template <class PlaceOf>
    static void sortByPlace(std::vector<int>& order, const PlaceOf& placeOf) {
        std::stable_sort(order.begin(), order.end(),
                         [&](int left, int right) { return placeOf(left) < placeOf(right); });
    }

    std::vector<QWidget*> m_stops;
    QSet<const QWidget*> m_seen;
};

/// Tells of the stops of a page which can be reached now.
class Reach {
  public:
    Reach(const QWidget& page, const std::vector<QWidget*>& all) : m_page(page), m_all(all) {}

    bool isReached(const QWidget& stop) const {
        const auto* button = qobject_cast<const QAbstractButton*>(&stop);
        return isReady(stop) && (button == nullptr || standsForGroup(*button));
    }

  private:
    bool isReady(const QWidget& stop) const { return stop.isEnabled() && stop.isVisibleTo(&m_page); }

    bool standsForGroup(const QAbstractButton& button) const {
        const QList<QAbstractButton*> group = exclusiveGroup(button);
        const QAbstractButton* first = &button;
        bool isFirstFound = false;
        for (const QWidget* stop : m_all) {
            const auto* other = qobject_cast<const QAbstractButton*>(stop);
            const bool isOfGroup = other != nullptr && group.contains(other);
            if (!isOfGroup || !isReady(*other)) {
                continue;
            }
            if (other->isChecked()) {
                return other == &button;
            }
            first = isFirstFound ? first : other;
            isFirstFound = true;
        }
        return first == &button;
    }

    const QWidget& m_page;
    const std::vector<QWidget*>& m_all;
};

std::vector<QWidget*> allStops(QWidget& page) {
    Reader reader;
    reader.read(page);
    return reader.stops();
}

/// Where a widget, or the innermost stop that holds it, stands in a list; its end where it does not.
std::vector<QWidget*>::const_iterator placeOf(const std::vector<QWidget*>& stops, QWidget* widget) {
    for (; widget != nullptr; widget = widget->parentWidget()) {
        const auto found = std::find(stops.begin(), stops.end(), widget);
        if (found != stops.end()) {
            return found;
        }
    }
    return stops.end();
}

}  // namespace

std::vector<QWidget*> stopsInReadingOrder(QWidget& page) {
    const std::vector<QWidget*> all = allStops(page);
    const Reach reach(page, all);
    std::vector<QWidget*> stops;
    std::copy_if(all.begin(), all.end(), std::back_inserter(stops),
                 [&](const QWidget* stop) { return reach.isReached(*stop); });
    return stops;
}

bool goToNextStop(QWidget& window, bool isForward) {
    // What has the keys may be hidden or disabled at this moment: its place still says what follows.
    const std::vector<QWidget*> all = allStops(window);
    const Reach reach(window, all);
    const auto count = static_cast<std::ptrdiff_t>(all.size());
    const auto now = placeOf(all, window.focusWidget());
    const std::ptrdiff_t from = now != all.end() ? now - all.begin() : isForward ? -1 : count;
    for (std::ptrdiff_t step = 1; step <= count; ++step) {
        const std::ptrdiff_t at = (from + (isForward ? step : -step) + 2 * count) % count;
        QWidget* stop = all[static_cast<std::size_t>(at)];
        if (at != from && reach.isReached(*stop)) {
            stop->setFocus(isForward ? Qt::TabFocusReason : Qt::BacktabFocusReason);
            return true;
        }
    }
    return false;
}

bool goToNextPart(QWidget& page) {
    const std::vector<QWidget*> all = allStops(page);
    const Reach reach(page, all);
    const auto now = placeOf(all, page.window()->focusWidget());
    if (now == all.end()) {
        return false;
    }
    const auto next = std::find_if(now + 1, all.end(), [&](const QWidget* stop) {
        const bool isPart = qobject_cast<const QAbstractItemView*>(stop) != nullptr ||
                            qobject_cast<const QGraphicsView*>(stop) != nullptr ||
                            qobject_cast<const QTabBar*>(stop) != nullptr;
        return isPart && reach.isReached(*stop);
    });
    if (next == all.end()) {
        return false;
    }
    (*next)->setFocus(Qt::ShortcutFocusReason);
    return true;
}

void stopAfter(QWidget& first, QWidget& second) {
    second.setProperty(kStopBefore, QVariant::fromValue<QObject*>(&first));
}

}  // namespace ww::ui
