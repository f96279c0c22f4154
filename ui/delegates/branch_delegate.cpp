#include "ui/delegates/branch_delegate.h"

#include <QAbstractItemView>
#include <QPainter>
#include <QTableView>

#include "ui/delegates/fitted_text.h"
#include "ui/models/branch_roles.h"
#include "ui/theme/state_shape.h"

namespace ww::ui {
namespace {

bool wraps(const QStyleOptionViewItem& option) {
    const auto* table = qobject_cast<const QTableView*>(option.widget);
    return table != nullptr && table->wordWrap();
}

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

    const bool isSoft = index.data(IsSoftRole).toBool() && !isCurrentRow;
    painter->setPen(isFlashed ? m_tokens.paper : isSoft ? m_tokens.soft : m_tokens.ink);
    QRect box = option.rect.adjusted(kCellMargin, 0, -kCellMargin, 0);
    box.setLeft(box.left() + index.data(DepthRole).toInt() * kIndent);
    if (index.data(IsStateCellRole).toBool() && stateData.isValid()) {
        const int size = shapeBesideWords(option.font);
        const QRectF shape(box.left(), box.center().y() - size / 2.0 + 0.5, size, size);
        theme::paintState(*painter, shape, state, isOver, m_tokens);
        box.setLeft(box.left() + size + kBehindShape);
    }
    int alignment = index.data(Qt::TextAlignmentRole).toInt();
    alignment = alignment != 0 ? alignment : int(Qt::AlignVCenter | Qt::AlignLeft);
    const QString whole = index.data(Qt::DisplayRole).toString();
    const bool isWrapped = wraps(option);
    const QFont font = cellFont(index, option.font, option.widget);
    const FittedText fitted =
        isWrapped ? FittedText{font, whole, true, false}
                  : fitText(whole, font, box.size(), columnLetters(option.widget, index.column()));
    painter->setFont(fitted.font);
    // Signs and units stay on their side of the digits in a layout from right to left.
    painter->setLayoutDirection(whole.isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight);
    painter->drawText(box, alignment | (fitted.isWrapped ? int(Qt::TextWordWrap) : 0), fitted.text);

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

QSize BranchDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    if (!wraps(option)) {
        return QStyledItemDelegate::sizeHint(option, index);
    }
    constexpr int kAboveAndBelow = 6;
    constexpr int kMost = 1000;
    const auto* table = qobject_cast<const QTableView*>(option.widget);
    const int shape = index.data(IsStateCellRole).toBool() ? shapeBesideWords(option.font) + kBehindShape : 0;
    const QRect room(0, 0, table->columnWidth(index.column()) - 2 * kCellMargin - shape, kMost);
    const QString words = index.data(Qt::DisplayRole).toString();
    const QRect box =
        QFontMetrics(cellFont(index, option.font, option.widget)).boundingRect(room, Qt::TextWordWrap, words);
    return {box.width() + 2 * kCellMargin + shape, box.height() + kAboveAndBelow};
}

}  // namespace ww::ui
