// The ring of ink around what has the keys, for widgets whose frame no style draws. Knows no workbook.
#pragma once

#include <QWidget>

namespace ww::ui {

class FocusRing : public QWidget {
    Q_OBJECT

  public:
    /// Lies over `around`, is seen while that has the keys, and takes nothing from the mouse.
    explicit FocusRing(QWidget* around);

    /// Device-independent pixels.
    static constexpr int kWidth = 3;

  protected:
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace ww::ui
