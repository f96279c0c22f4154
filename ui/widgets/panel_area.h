// A panel that scrolls up and down where the window is low, and is never narrower than what it holds.
#pragma once

#include "ui/widgets/patient_area.h"

namespace ww::ui {

class PanelArea : public PatientArea {
    Q_OBJECT

  public:
    /// Takes `content` over. `width`: as wide as this where the content would do with less,
    /// device-independent pixels.
    PanelArea(QWidget* content, int width, QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    const int m_width;
};

}  // namespace ww::ui
