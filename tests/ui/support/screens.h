// The screens that the program is made for, and a window on one of them, as a rule with a job of thirty
// valves. The sizes are those of two common laptop screens (1366 x 768 and 1920 x 1080) divided by the scale
// of the desktop, less a title bar and, at full scale, a panel.
#pragma once

#include <QApplication>
#include <QFont>
#include <algorithm>
#include <array>

#include "core/exchange/job_folder.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/each_page.h"
#include "tests/ui/support/layout_faults.h"

namespace ww::support {

struct Screen {
    const char* name;
    int width;          ///< device-independent pixels
    int height;         ///< device-independent pixels
    double textPoints;  ///< the program's own text size
    bool hasLargeTargets;
    double desktopPoints;  ///< the size of the desktop's font; 0: as the tests find it
};

inline constexpr std::array<Screen, 8> kScreens{
    {{"laptop", 1366, 694, 10.0, false, 0},
     {"laptopAt125Percent", 1093, 577, 10.0, false, 0},
     {"laptopAt150Percent", 911, 482, 10.0, false, 0},
     {"laptopAt200Percent", 683, 354, 10.0, false, 0},
     {"deskAt200Percent", 960, 510, 10.0, false, 0},
     {"laptopAt20Points", 1366, 694, 20.0, false, 0},
     {"laptopWithDesktopFontOf14Points", 1366, 694, 0, false, 14.0},
     {"laptopWithLargeTargets", 1366, 694, 10.0, true, 0}}};

/// The least room with the largest controls.
inline constexpr Screen kSmallestForGloves{"laptopAt200PercentWithLargeTargets", 683, 354, 10.0, true, 0};

inline constexpr std::array<ui::theme::Display, 3> kDisplays{
    ui::theme::Display::Office, ui::theme::Display::Daylight, ui::theme::Display::PlantRoomDark};

/// The font of the desktop for as long as this stands; 0: as it is.
class DesktopFont {
  public:
    explicit DesktopFont(double points) : m_before(QApplication::font()) {
        if (points > 0) {
            QFont font = m_before;
            font.setPointSizeF(points);
            QApplication::setFont(font);
        }
    }
    ~DesktopFont() { QApplication::setFont(m_before); }
    DesktopFont(const DesktopFont&) = delete;
    DesktopFont& operator=(const DesktopFont&) = delete;

  private:
    const QFont m_before;
};

/// A window of the size of one screen. Throws where the job of thirty valves cannot be read.
class ScreenWindow {
  public:
    explicit ScreenWindow(const Screen& screen) : ScreenWindow(screen, job().edit) {}
    ScreenWindow(const Screen& screen, const project::Edit& content)
        : m_font(screen.desktopPoints),
          m_size(screen.width, screen.height),
          desk(content, false, std::max<double>(screen.desktopPoints, ui::Preferences::kLeastPoints)) {
        if (screen.textPoints > 0) {
            desk.window.setTextPoints(screen.textPoints);
        }
        if (screen.hasLargeTargets) {
            desk.window.commands().largeTargets->trigger();
        }
    }

    /// Shows a display at the size of the screen; false where the window does not become as small.
    bool show(ui::theme::Display display) {
        desk.window.setDisplay(display);
        desk.window.resize(m_size);
        // A window manager takes its time.
        const bool fits = QTest::qWaitFor([&] { return desk.window.size() == m_size; }, 3000);
        QTest::qWait(50);
        return fits;
    }

    /// Layout faults of every page of every place in the display that is shown, a line each.
    QString faults() {
        QString all;
        eachPage(desk.window, [&](const QString& page) {
            for (const QString& fault : settledFaults(desk.window)) {
                all += QString("\n%1: %2").arg(page, fault);
            }
        });
        return all;
    }

  private:
    static exchange::ImportPlan job() {
        CountingIds ids;
        exchange::ImportPlan plan =
            exchange::readJobFolder(WW_SOURCE_DIR "/sample_projects/clinic_cooling", ids);
        if (!plan.isAcceptable()) {
            throw std::runtime_error("the sample job is not acceptable");
        }
        return plan;
    }

    const DesktopFont m_font;
    const QSize m_size;

  public:
    DeskWindow desk;
};

}  // namespace ww::support
