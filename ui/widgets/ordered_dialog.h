// A dialog that Tab goes through as it is read. Not for what the dialog asks.
#pragma once

#include <QDialog>
#include <QLayout>
#include <QScreen>

#include "ui/widgets/reading_order.h"
#include "ui/widgets/text_scale.h"

namespace ww::ui {

class OrderedDialog : public QDialog {
    Q_OBJECT

  public:
    using QDialog::QDialog;

  protected:
    /// Takes a size that suits the usual text, larger with the text, and never more than the screen has.
    void resizeWithText(int width, int height) {
        constexpr int kFrame = 60;
        const QSize most = screen()->availableSize() - QSize(kFrame, kFrame);
        resize((QSize(width, height) * textScale(font())).boundedTo(most));
    }
    /// The same with the height of what it holds, words wrapped in that width.
    void resizeToWords(int width) {
        resizeWithText(width, 0);
        resize(this->width(), layout()->totalHeightForWidth(this->width()));
    }
    bool focusNextPrevChild(bool isForward) override {
        return goToNextStop(*this, isForward) || QDialog::focusNextPrevChild(isForward);
    }
};

}  // namespace ww::ui
