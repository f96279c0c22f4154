// Why no job was made of a folder of tables: each fault with its file, row and column, to be copied. Not for
// rows that are imported into a job (import/import_dialog.h).
#pragma once

#include <QStringList>

#include "ui/widgets/ordered_dialog.h"

namespace ww::ui {

class TableFaultsDialog : public OrderedDialog {
    Q_OBJECT

  public:
    /// `faults`: a line each.
    explicit TableFaultsDialog(const QStringList& faults, QWidget* parent = nullptr);
};

}  // namespace ww::ui
