// Names in a list or a tree: wrapped to its width, in narrower letters where a word has no room, never cut.
// Not for cells of tables (branch_delegate.h).
#pragma once

#include <QStyledItemDelegate>

namespace ww::ui {

class WrappedItem : public QStyledItemDelegate {
    Q_OBJECT

  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    /// As wide as the view is, as high as the name needs in that width.
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace ww::ui
