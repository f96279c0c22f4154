// A field for one value of a walk, outside a grid: it stores as EntryField does and says where the hand goes
// next. Knows no workbook.
#pragma once

#include "ui/widgets/blind_typing.h"
#include "ui/widgets/entry_field.h"

namespace ww::ui {

class WalkField : public EntryField {
    Q_OBJECT

  public:
    /// Where the hand goes once the value is stored.
    enum class Way { Next, Back, Up, Down, Across, LeaveOn, LeaveBack };

    using EntryField::EntryField;

    /// Whether a text has several lines: the values of several valves.
    static bool isColumn(const QString& text);

  signals:
    /// The value is stored, or nothing was typed: the hand goes this way.
    void gone(ww::ui::WalkField::Way way);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

  private:
    BlindTyping m_blind;
};

}  // namespace ww::ui
