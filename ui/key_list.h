// The window that lists every command with its keys. Not for what the commands do.
#pragma once

#include "ui/commands.h"
#include "ui/widgets/ordered_dialog.h"

namespace ww::ui {

class KeyList : public OrderedDialog {
    Q_OBJECT

  public:
    KeyList(const Commands& commands, QWidget* parent);
};

}  // namespace ww::ui
