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
    /// Qt lays out anew for each size of what it holds. Words that need less height beside the bar than
    /// without it would bring the bar and take it away for ever.
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    int m_inTurn = 0;
};

}  // namespace ww::ui
