// A choice that a turned wheel never changes by accident. Knows no workbook.
#pragma once

#include <QComboBox>
#include <QWheelEvent>

namespace ww::ui {

class QuietCombo : public QComboBox {
  public:
    using QComboBox::QComboBox;

  protected:
    void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

}  // namespace ww::ui
