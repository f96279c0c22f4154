// Tells something that takes no answer but to be closed. Not for what goes wrong at work, which the notice
// line says.
#pragma once

#include "ui/widgets/ordered_dialog.h"

namespace ww::ui {

class TellDialog : public OrderedDialog {
    Q_OBJECT

  public:
    TellDialog(const QString& title, const QString& words, QWidget* parent = nullptr);
};

}  // namespace ww::ui
