// Asks for one thing: words that say what for, a field or a choice, a verb. Not for more than one.
#pragma once

#include "ui/widgets/ordered_dialog.h"

namespace ww::ui {

class AskDialog : public OrderedDialog {
    Q_OBJECT

  public:
    /// Takes `field` over; `name` is what it is called, with its letter, `verb` what accepting does.
    AskDialog(const QString& title, const QString& words, const QString& name, QWidget* field,
              const QString& verb, QWidget* parent = nullptr);
};

}  // namespace ww::ui
