// The display "Office" has the colors that the desktop has now. Source: the interaction design of this
// project.
#include <gtest/gtest.h>

#include <QApplication>
#include <QProxyStyle>
#include <QStyleFactory>

#include "tests/ui/support/desk_window.h"
#include "ui/theme/control_style.h"

namespace ww::ui {
namespace {

/// A desktop whose colors are dark or light.
class Desktop : public QProxyStyle {
  public:
    explicit Desktop(bool isDark) : QProxyStyle(QStringLiteral("fusion")), m_isDark(isDark) {}

    void polish(QPalette& palette) override {
        palette.setColor(QPalette::Window, m_isDark ? Qt::black : Qt::white);
        palette.setColor(QPalette::WindowText, m_isDark ? Qt::white : Qt::black);
        palette.setResolveMask(0);
    }
    using QProxyStyle::polish;

  private:
    const bool m_isDark;
};

/// The desktop changes its colors, and tells the windows as Qt does.
void change(bool isDark, MainWindow& window) {
    qApp->findChild<theme::ControlStyle*>()->setBaseStyle(new Desktop(isDark));
    if (QApplication::palette().resolveMask() == 0) {
        QApplication::setPalette(QPalette());
    }
    QEvent event(QEvent::ApplicationPaletteChange);
    QApplication::sendEvent(&window, &event);
}

bool isShownDark() {
    return qApp->styleSheet().contains(theme::tokens(theme::Display::PlantRoomDark).paper.name());
}

class DesktopPalette : public testing::Test {
  protected:
    void TearDown() override {
        m_desk.window.setDisplay(theme::Display::Office);
        qApp->findChild<theme::ControlStyle*>()->setBaseStyle(QStyleFactory::create("fusion"));
        QApplication::setPalette(QPalette());
        m_desk.window.setDisplay(theme::Display::Office);
    }

    support::DeskWindow m_desk;
};

TEST_F(DesktopPalette, officeFollowsTheDesktopWhileTheProgramRuns) {
    m_desk.window.setDisplay(theme::Display::Office);
    ASSERT_FALSE(isShownDark());
    change(true, m_desk.window);
    EXPECT_TRUE(isShownDark());
    EXPECT_EQ(QApplication::palette().color(QPalette::Window), QColor(Qt::black));
    change(false, m_desk.window);
    EXPECT_FALSE(isShownDark());
    EXPECT_EQ(QApplication::palette().color(QPalette::Window), QColor(Qt::white));
}

TEST_F(DesktopPalette, aChangeUnderAnotherDisplayIsSeenWhenOfficeComesBack) {
    m_desk.window.setDisplay(theme::Display::Daylight);
    change(true, m_desk.window);
    EXPECT_FALSE(isShownDark()) << "daylight stays as it is";
    m_desk.window.setDisplay(theme::Display::Office);
    EXPECT_TRUE(isShownDark());
    m_desk.window.setDisplay(theme::Display::PlantRoomDark);
    change(false, m_desk.window);
    EXPECT_TRUE(isShownDark());
    m_desk.window.setDisplay(theme::Display::Office);
    EXPECT_FALSE(isShownDark());
}

}  // namespace
}  // namespace ww::ui
