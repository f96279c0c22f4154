// What a dialog holds above its buttons: it scrolls up and down where the screen is low, and is never
// narrower than what it holds. Not for places (place_area.h).
#pragma once

#include "ui/widgets/place_area.h"

namespace ww::ui {

class DialogArea : public PlaceArea {
    Q_OBJECT

  public:
    /// Takes `content` over.
    explicit DialogArea(QWidget* content, QWidget* parent = nullptr);

    QSize minimumSizeHint() const override;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace ww::ui
