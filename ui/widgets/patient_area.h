// An area that measures what it holds while it is seen, and once for all that a change of look does to it.
// Not for where what has the keys is scrolled to (place_area.h).
#pragma once

#include <QScrollArea>

namespace ww::ui {

class PatientArea : public QScrollArea {
    Q_OBJECT

  public:
    using QScrollArea::QScrollArea;

  protected:
    bool event(QEvent* event) override;
    /// Home and End lead to the ends, beside the keys that every area has.
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;
};

}  // namespace ww::ui
