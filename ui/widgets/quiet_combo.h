// A choice that a turned wheel never changes by accident. Knows no workbook.
#pragma once

#include <QComboBox>
#include <QWheelEvent>

namespace ww::ui {

class QuietCombo : public QComboBox {
  public:
    using QComboBox::QComboBox;

    /// The frame of a style sheet takes more from the words than the hint of Qt's counts.
    QSize sizeHint() const override { return QComboBox::sizeHint() + QSize(kMoreFrame, 0); }
    QSize minimumSizeHint() const override { return QComboBox::minimumSizeHint() + QSize(kMoreFrame, 0); }

  protected:
    void wheelEvent(QWheelEvent* event) override { event->ignore(); }

  private:
    static constexpr int kMoreFrame = 2;
};

}  // namespace ww::ui
