#include "ui/places/adjust/strip_delegate.h"

#include <QPainter>

#include "ui/models/branch_roles.h"
#include "ui/text/written_way.h"

namespace ww::ui {

StripDelegate::StripDelegate(QObject* parent)
    : QStyledItemDelegate(parent), m_tokens(theme::tokens(theme::Display::Daylight)) {}

void StripDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    const bool isInHand = index.data(IsStrongRole).toBool();
    painter->save();
    painter->fillRect(option.rect, isInHand ? m_tokens.tintCurrent : m_tokens.paper);
    QFont font = option.font;
    font.setBold(isInHand || index.row() == 0);
    painter->setFont(font);
    painter->setPen(m_isSoft && index.row() > 0 && !isInHand ? m_tokens.soft : m_tokens.ink);
    const QString words = index.data(Qt::DisplayRole).toString();
    painter->drawText(option.rect, text::writtenFlags(option.direction, int(Qt::AlignCenter), words), words);
    if (isInHand) {
        // The box goes round the whole column: each cell draws its part.
        painter->setPen(QPen(m_tokens.ink, 2));
        const QRect box = option.rect.adjusted(1, 1, -1, -1);
        painter->drawLine(box.topLeft(), box.bottomLeft());
        painter->drawLine(box.topRight(), box.bottomRight());
        if (index.row() == 0) {
            painter->drawLine(box.topLeft(), box.topRight());
        }
        if (index.row() == index.model()->rowCount() - 1) {
            painter->drawLine(box.bottomLeft(), box.bottomRight());
        }
    }
    painter->restore();
}

}  // namespace ww::ui
