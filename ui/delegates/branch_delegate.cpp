#include "ui/delegates/branch_delegate.h"

#include <QAbstractItemView>
#include <QPainter>

#include "ui/models/branch_roles.h"
#include "ui/theme/state_shape.h"

namespace ww::ui {
namespace {

constexpr int kMargin = 6;
constexpr int kIndent = 16;

}  // namespace

BranchDelegate::BranchDelegate(QObject* parent)
    : QStyledItemDelegate(parent), m_tokens(theme::tokens(theme::Display::Daylight)) {}

void BranchDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const {
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    const QModelIndex current = view != nullptr ? view->currentIndex() : QModelIndex();
    const bool isCurrentRow = current.isValid() && current.row() == index.row();
    const QVariant stateData = index.data(StateRole);
    const auto state = static_cast<balancing::State>(stateData.toInt());
    const bool isOver = index.data(IsOverRole).toBool();

    painter->save();
    QColor background = stateData.isValid() ? theme::stateTint(state, isOver, m_tokens) : m_tokens.paper;
    if (isCurrentRow) {
        background = m_tokens.tintCurrent;
    }
    const bool isFlashed = index.row() == m_flashedRow;
    painter->fillRect(option.rect, isFlashed ? m_tokens.ink : background);

    QFont font = option.font;
    if (index.data(IsStrongRole).toBool()) {
        font.setWeight(QFont::DemiBold);
    }
    painter->setFont(font);
    const bool isSoft = index.data(IsSoftRole).toBool() && !isCurrentRow;
    painter->setPen(isFlashed ? m_tokens.paper : isSoft ? m_tokens.soft : m_tokens.ink);
    QRect box = option.rect.adjusted(kMargin, 0, -kMargin, 0);
    box.setLeft(box.left() + index.data(DepthRole).toInt() * kIndent);
    if (index.data(IsStateCellRole).toBool() && stateData.isValid()) {
        const int size = std::max(16, option.fontMetrics.height() - 1);
        const QRectF shape(box.left(), box.center().y() - size / 2.0 + 0.5, size, size);
        theme::paintState(*painter, shape, state, isOver, m_tokens);
        box.setLeft(box.left() + size + 8);
    }
    const int alignment = index.data(Qt::TextAlignmentRole).toInt();
    const QString text =
        QFontMetrics(font).elidedText(index.data(Qt::DisplayRole).toString(), Qt::ElideRight, box.width());
    // Signs and units stay on their side of the digits in a layout from right to left.
    painter->setLayoutDirection(text.isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight);
    painter->drawText(box, alignment != 0 ? alignment : int(Qt::AlignVCenter | Qt::AlignLeft), text);

    if (index == current) {
        // Thick while the table has the keys, thin while another field has them.
        const int width = view->hasFocus() ? 3 : 1;
        painter->setPen(QPen(m_tokens.ink, width, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        painter->setBrush(Qt::NoBrush);
        const double inset = width / 2.0;
        painter->drawRect(QRectF(option.rect).adjusted(inset, inset, -inset - 1, -inset - 1));
    }
    painter->restore();
}

}  // namespace ww::ui
