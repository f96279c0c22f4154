// What a place stands in: where the window is too low for it, it scrolls up and down, never sideways.
#pragma once

#include "ui/widgets/patient_area.h"

namespace ww::ui {

class PlaceArea : public PatientArea {
    Q_OBJECT

  public:
    /// An empty area.
    explicit PlaceArea(QWidget* parent);

    /// Takes `place` over, to be laid out when it is shown.
    void take(QWidget* place);

    QSize minimumSizeHint() const override { return {240, 120}; }

  private:
    /// Scrolls this area and those within it until a control is in sight.
    void showInAll(const QWidget& control);
};

/// Where both have room, `words` are in sight with the control that has the keys.
void seeTogether(QWidget& control, QWidget& words);

}  // namespace ww::ui
