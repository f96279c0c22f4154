// The window that lists every command with its keys. Not for what the commands do.
#pragma once

#include <QDialog>

#include "ui/commands.h"

namespace ww::ui {

class KeyList : public QDialog {
    Q_OBJECT

  public:
    KeyList(const Commands& commands, QWidget* parent);
};

}  // namespace ww::ui
