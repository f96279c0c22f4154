// The ring of ink around what has the keys, for widgets whose frame no style draws. Knows no workbook.
#pragma once

#include <QTabBar>
#include <QWidget>

namespace ww::ui {

class FocusRing : public QWidget {
    Q_OBJECT

  public:
    /// Lies over `around`, is seen while that has the keys, and takes nothing from the mouse.
    explicit FocusRing(QWidget* around);
    /// Lies over the tab in hand while the bar has the keys.
    explicit FocusRing(QTabBar* around);

    /// Device-independent pixels.
    static constexpr int kWidth = 3;

  protected:
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void follow();
};

}  // namespace ww::ui
