// A counted number that a turned wheel never changes by accident. Not for readings, which are typed as text.
// Knows no workbook.
#pragma once

#include <QSpinBox>
#include <QWheelEvent>

namespace ww::ui {

class QuietSpinBox : public QSpinBox {
  public:
    using QSpinBox::QSpinBox;

  protected:
    void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

}  // namespace ww::ui
