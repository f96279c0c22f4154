// The line of keys at the bottom of the window: one line in every width, so that nothing above it moves. Not
// for which keys are shown (key_hints.h).
#pragma once

#include <QLabel>

#include "ui/widgets/key_hints.h"

namespace ww::ui {

class KeyLine : public QLabel {
    Q_OBJECT

  public:
    explicit KeyLine(QWidget* parent = nullptr);

    /// As many of these keys as have room, the first ones.
    void show(const KeyHints& keys);

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void fit();

    KeyHints m_keys;
};

}  // namespace ww::ui
