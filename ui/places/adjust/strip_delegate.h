// Paints the table of neighboring settings: the column of the setting in hand is boxed. Not for numbers.
#pragma once

#include <QStyledItemDelegate>

#include "ui/theme/theme.h"

namespace ww::ui {

class StripDelegate : public QStyledItemDelegate {
    Q_OBJECT

  public:
    explicit StripDelegate(QObject* parent = nullptr);
    void setTokens(const theme::Tokens& tokens) { m_tokens = tokens; }
    void setSoft(bool isSoft) { m_isSoft = isSoft; }
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;

  private:
    theme::Tokens m_tokens;
    bool m_isSoft = false;
};

}  // namespace ww::ui
