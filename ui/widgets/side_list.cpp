#include "ui/widgets/side_list.h"

#include "ui/widgets/focus_ring.h"

namespace ww::ui {

SideList::SideList(QWidget* parent) : QListWidget(parent) {
    setObjectName(QStringLiteral("side_list"));
    setAccessibleName(tr("Places"));
    setAccessibleDescription(tr("Alt and the number opens a place"));
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFrameShape(NoFrame);
    setUniformItemSizes(true);
    new FocusRing(this);
}

void SideList::addPlace(int number, const QString& name) {
    auto* item = new QListWidgetItem(QStringLiteral("%1  %2").arg(number).arg(name), this);
    item->setData(Qt::AccessibleTextRole, tr("%1, Alt+%2").arg(name).arg(number));
}

}  // namespace ww::ui
