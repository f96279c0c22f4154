// Paints the cells of branch tables: row tints, the shape and word of a state, soft and strong numbers, the
// cell in hand. Not for editing (EntryTable has its own editor).
#pragma once

#include <QStyledItemDelegate>

#include "ui/theme/theme.h"

namespace ww::ui {

class BranchDelegate : public QStyledItemDelegate {
    Q_OBJECT

  public:
    explicit BranchDelegate(QObject* parent = nullptr);
    void setTokens(const theme::Tokens& tokens) { m_tokens = tokens; }
    /// The row that was just stored; -1: none.
    void setFlashedRow(int row) { m_flashedRow = row; }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    /// In a table that wraps words: the height that they need in their column.
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

  private:
    theme::Tokens m_tokens;
    int m_flashedRow = -1;
};

}  // namespace ww::ui
