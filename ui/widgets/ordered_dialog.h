// A dialog that Tab goes through as it is read and that the screen has room for. Not for what it asks.
#pragma once

#include <QDialog>
#include <QLayout>

namespace ww::ui {

class OrderedDialog : public QDialog {
    Q_OBJECT

  public:
    using QDialog::QDialog;

  protected:
    /// Lays out what the dialog holds above its buttons. Where the screen has less room than that takes, it
    /// scrolls; the buttons stay in sight.
    void layOut(QLayout* content, QWidget* buttons);
    /// Takes a size that suits the usual text, larger with the text, and never more than the screen has.
    void resizeWithText(int width, int height);
    /// The same with the height of what was laid out, words wrapped in that width.
    void resizeToWords(int width);

    bool focusNextPrevChild(bool isForward) override;
    /// Letters under Alt mean one thing each; the keys begin at the first stop of what was laid out, not at a
    /// button below it.
    void showEvent(QShowEvent* event) override;

  private:
    QWidget* m_content = nullptr;
    QWidget* m_buttons = nullptr;
};

}  // namespace ww::ui
