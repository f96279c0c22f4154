// What the card of the valve in hand says of the valve before it.
#include "ui/places/walk/valve_card.h"

namespace ww::ui {

void ValveCard::showDone() {
    const int row = m_stored ? m_grid.rows().rowOf(*m_stored) : -1;
    const bool isTold = row >= 0 && row != m_grid.currentRow() && !m_grid.rows().isUnread(row);
    m_done->setVisible(isTold);
    if (!isTold) {
        return;
    }
    const auto words = [&](WalkModel::Column column) {
        return m_grid.model()->index(row, column).data().toString();
    };
    const WalkModel::Column entry = m_grid.rows().entryColumn(row);
    QStringList parts;
    // A value that is none, as "not readable", has no unit.
    const QString value = words(entry);
    bool isNumber = false;
    value.toDouble(&isNumber);
    const QStringList head =
        m_grid.model()->headerData(entry, Qt::Horizontal, Qt::DisplayRole).toString().split('\n');
    parts << (isNumber ? value + QChar(QChar::Nbsp) + head.back() : value);
    if (const QString share = words(WalkModel::OfTarget); !share.isEmpty()) {
        parts << tr("%1 % of target").arg(share);
    }
    parts << words(WalkModel::State);
    m_done->setText(QStringLiteral("%1: %2").arg(words(WalkModel::Tag), parts.join(QStringLiteral(", "))));
}

}  // namespace ww::ui
