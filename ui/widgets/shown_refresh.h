// Refreshes a widget when it can be seen: at once, or when it is shown next. Not for what must be counted or
// said while the widget is hidden.
#pragma once

#include <QWidget>
#include <functional>

namespace ww::ui {

class ShownRefresh : public QObject {
  public:
    /// `widget` is watched and owns this. A widget that was never shown is refreshed when it is shown first.
    ShownRefresh(QWidget* widget, std::function<void()> refresh);

    /// What the widget shows is no longer so. Wanted by the refresh itself, which took a size away from the
    /// widget for example, it is done again behind it.
    void want();
    /// Does now what waits to be shown.
    void catchUp();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QWidget* m_widget;
    std::function<void()> m_refresh;
    bool m_isWanted = true;
    bool m_isShown;
    bool m_isRefreshing = false;
};

}  // namespace ww::ui
