// A dialog that Tab goes through as it is read. Not for what the dialog asks.
#pragma once

#include <QDialog>

#include "ui/widgets/reading_order.h"

namespace ww::ui {

class OrderedDialog : public QDialog {
    Q_OBJECT

  public:
    using QDialog::QDialog;

  protected:
    bool focusNextPrevChild(bool isForward) override {
        return goToNextStop(*this, isForward) || QDialog::focusNextPrevChild(isForward);
    }
};

}  // namespace ww::ui
