// What a place stands in: where the window is too low for it, it scrolls up and down, never sideways.
#pragma once

#include <QScrollArea>

namespace ww::ui {

class PlaceArea : public QScrollArea {
    Q_OBJECT

  public:
    /// Takes `place` over.
    PlaceArea(QWidget* place, QWidget* parent);

    QSize minimumSizeHint() const override { return {240, 120}; }
};

}  // namespace ww::ui
