#include "ui/widgets/side_list.h"

#include <algorithm>

#include "ui/widgets/focus_ring.h"

namespace ww::ui {
namespace {

/// What an item says while nothing waits there, on the screen and to a screen reader.
constexpr int kPlain = Qt::UserRole;
constexpr int kPlainSpoken = Qt::UserRole + 1;
/// Whether it ever says how much waits.
constexpr int kIsCounted = Qt::UserRole + 2;

}  // namespace

SideList::SideList(QWidget* parent) : QListWidget(parent) {
    setObjectName(QStringLiteral("side_list"));
    setAccessibleName(tr("Places"));
    setAccessibleDescription(tr("Alt and the number opens a place"));
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFrameShape(NoFrame);
    setUniformItemSizes(true);
    new FocusRing(this);
}

void SideList::addPlace(int number, const QString& name, bool isCounted) {
    auto* item = new QListWidgetItem(QStringLiteral("%1  %2").arg(number).arg(name), this);
    item->setData(Qt::AccessibleTextRole, tr("%1, Alt+%2").arg(name).arg(number));
    item->setData(kIsCounted, isCounted);
    item->setData(kPlain, item->text());
    item->setData(kPlainSpoken, item->data(Qt::AccessibleTextRole));
}

int SideList::wantedWidth() const {
    int widest = sizeHintForColumn(0);
    for (int row = 0; row < count(); ++row) {
        if (item(row)->data(kIsCounted).toBool()) {
            const QString longest = item(row)->data(kPlain).toString() + " 0";
            const int beside = sizeHintForIndex(indexFromItem(item(row))).width() -
                               fontMetrics().horizontalAdvance(item(row)->text());
            widest = std::max(widest, beside + fontMetrics().horizontalAdvance(longest));
        }
    }
    return widest;
}

bool SideList::setWaiting(int row, int count, const QString& spoken) {
    QListWidgetItem& place = *item(row);
    const QString plain = place.data(kPlain).toString();
    const QString plainSpoken = place.data(kPlainSpoken).toString();
    const QString words = count > 0 ? QStringLiteral("%1 %2").arg(plain).arg(count) : plain;
    if (words == place.text()) {
        return false;
    }
    place.setText(words);
    place.setData(Qt::AccessibleTextRole,
                  count > 0 ? QStringLiteral("%1, %2").arg(plainSpoken, spoken) : plainSpoken);
    return true;
}

}  // namespace ww::ui
