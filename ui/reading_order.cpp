#include "ui/reading_order.h"

#include <QAbstractSpinBox>
#include <QBoxLayout>
#include <QComboBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QScrollArea>
#include <QSet>
#include <QSplitter>
#include <QTabBar>
#include <QTabWidget>
#include <algorithm>
#include <vector>

namespace ww::ui {
namespace {

/// Collects the stops of Tab.
class Reader {
  public:
    void read(QWidget& widget) {
        if (m_seen.contains(&widget)) {
            return;
        }
        m_seen.insert(&widget);
        if ((widget.focusPolicy() & Qt::TabFocus) == Qt::TabFocus && widget.focusProxy() == nullptr) {
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
        } else if (!isWhole(widget)) {
            if (widget.layout() != nullptr) {
                readLayout(*widget.layout());
            }
            for (QWidget* child : widget.findChildren<QWidget*>(Qt::FindDirectChildrenOnly)) {
                if (!child->isWindow()) {
                    read(*child);
                }
            }
        }
    }
    const std::vector<QWidget*>& stops() const { return m_stops; }

  private:
    /// Whether what a widget holds is its own affair.
    static bool isWhole(const QWidget& widget) {
        return qobject_cast<const QComboBox*>(&widget) || qobject_cast<const QAbstractSpinBox*>(&widget) ||
               qobject_cast<const QAbstractScrollArea*>(&widget) || qobject_cast<const QTabBar*>(&widget);
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
        std::vector<int> order(static_cast<std::size_t>(layout.count()));
        for (std::size_t i = 0; i < order.size(); ++i) {
            order[i] = static_cast<int>(i);
        }
        if (auto* grid = qobject_cast<QGridLayout*>(&layout)) {
            sortByPlace(order, [grid](int i) {
                int row = 0;
                int column = 0;
                int rows = 0;
                int columns = 0;
                grid->getItemPosition(i, &row, &column, &rows, &columns);
                return std::pair(row, column);
            });
        } else if (auto* form = qobject_cast<QFormLayout*>(&layout)) {
            sortByPlace(order, [form](int i) {
                int row = 0;
                QFormLayout::ItemRole role{};
                form->getItemPosition(i, &row, &role);
                return std::pair(row, static_cast<int>(role));
            });
        } else if (auto* box = qobject_cast<QBoxLayout*>(&layout);
                   box != nullptr && (box->direction() == QBoxLayout::RightToLeft ||
                                      box->direction() == QBoxLayout::BottomToTop)) {
            std::reverse(order.begin(), order.end());
        }
        for (const int i : order) {
            readItem(layout.itemAt(i));
        }
    }

    template <class PlaceOf>
    static void sortByPlace(std::vector<int>& order, const PlaceOf& placeOf) {
        std::stable_sort(order.begin(), order.end(),
                         [&](int left, int right) { return placeOf(left) < placeOf(right); });
    }

    std::vector<QWidget*> m_stops;
    QSet<const QWidget*> m_seen;
};

}  // namespace

void tabInReadingOrder(QWidget& page) {
    Reader reader;
    reader.read(page);
    const std::vector<QWidget*>& stops = reader.stops();
    for (std::size_t i = 1; i < stops.size(); ++i) {
        QWidget::setTabOrder(stops[i - 1], stops[i]);
    }
}

}  // namespace ww::ui
