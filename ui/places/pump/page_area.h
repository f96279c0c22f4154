// What a page of the place Pump stands in: where there is too little height the page scrolls, and what pages
// are chosen with stays in sight. Not for deciding which page is shown (pump_place.h).
#pragma once

#include "ui/places/pump/pump_page.h"
#include "ui/widgets/filled_stack.h"
#include "ui/widgets/patient_area.h"

namespace ww::ui {

class PageArea : public PatientArea {
    Q_OBJECT

  public:
    explicit PageArea(QWidget* parent);

    /// What a page is to be made in.
    QWidget* shelf() const { return m_shelf; }
    /// Shows a page that was made there, at least as high as it needs to be in the width there is.
    void take(PumpPage* page);

    /// As wide as its page needs; low.
    QSize minimumSizeHint() const override;

  private:
    class Holder;
    Holder* m_holder;
    QStackedWidget* m_shelf;
};

}  // namespace ww::ui
