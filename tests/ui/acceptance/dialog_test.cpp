// Every dialog at the sizes, scales, text sizes and languages that the program is made for: the screen has
// room for it, nothing in it is cut, nothing but a table of many columns is scrolled sideways, large targets
// are large and apart.
#include <gtest/gtest.h>

#include <QDialog>
#include <QRegularExpression>
#include <QScreen>
#include <QTableView>
#include <vector>

#include "tests/ui/support/each_dialog.h"
#include "tests/ui/support/screens.h"
#include "tests/ui/support/spoken.h"
#include "tests/ui/support/target_faults.h"
#include "tests/ui/support/written_runs.h"
#include "ui/handbook/handbook_window.h"
#include "ui/import/import_dialog.h"
#include "ui/widgets/dialog_area.h"
#include "ui/widgets/reading_order.h"

namespace ww::ui {
namespace {

using support::DialogKind;

std::vector<support::Screen> dialogScreens() {
    std::vector<support::Screen> all(support::kScreens.begin(), support::kScreens.end());
    all.push_back(support::kSmallestForGloves);
    return all;
}

class Dialogs : public testing::TestWithParam<std::tuple<support::Screen, const char*>> {
  protected:
    Dialogs()
        : m_spoken(std::get<1>(GetParam())),
          m_screen(std::get<0>(GetParam())),
          m_shown(m_screen, support::jobForDialogs()) {}

    void lookAtAll(DialogKind kind, theme::Display display) {
        ASSERT_TRUE(m_shown.show(display));
        support::eachDialog(m_shown.desk, kind, std::get<1>(GetParam()),
                            [this](QWidget& dialog) { look(dialog); });
    }

  private:
    /// A dialog's faults at the size that it takes, and where it is given all of the screen.
    void look(QWidget& dialog) const {
        constexpr QSize kFrame(24, 30);
        const QSize room = QSize(m_screen.width, m_screen.height) - kFrame;
        const std::string title = dialog.windowTitle().toStdString();
        for (const DialogArea* area : dialog.findChildren<DialogArea*>()) {
            const QWidget* keys = dialog.focusWidget();
            EXPECT_TRUE(!area->isVisible() || stopsInReadingOrder(*area->widget()).empty() ||
                        area->isAncestorOf(keys))
                << title << ": the keys begin at "
                << (keys != nullptr ? keys->accessibleName().toStdString() : "-");
        }
        for (const QSize& size : {dialog.size().boundedTo(room), room}) {
            dialog.resize(size);
            QStringList faults = support::settledFaults(dialog);
            if (const auto* import = qobject_cast<const ImportDialog*>(&dialog)) {
                // Of a person's table any number of columns may be taken.
                const QString rows = import->findChild<QTableView*>()->accessibleName();
                faults =
                    faults.filter(QRegularExpression("^(?!QTableView " + rows + ".*: scrolls sideways)"));
            }
            if (m_screen.hasLargeTargets) {
                faults << support::targetFaults(dialog, {48, 48}, 8);
            }
            EXPECT_TRUE(faults.isEmpty()) << title << '\n' << faults.join('\n').toStdString();
            // On a real screen a size comes when the window manager answers.
            EXPECT_TRUE(QTest::qWaitFor(
                [&] { return dialog.width() <= room.width() && dialog.height() <= room.height(); }, 2000))
                << title << ": " << dialog.width() << 'x' << dialog.height();
        }
        if (const auto* handbook = qobject_cast<const HandbookWindow*>(&dialog)) {
            constexpr QChar kDots(0x2026);
            const QStringList cut = support::writtenRuns(*handbook->contents()).filter(kDots);
            EXPECT_TRUE(cut.isEmpty()) << cut.join(" | ").toStdString();
        }
    }

    const support::Spoken m_spoken;
    const support::Screen m_screen;
    support::ScreenWindow m_shown;
};

TEST_P(Dialogs, ofTheRecordAreWhole) {
    lookAtAll(DialogKind::TellsOfTheRecord, theme::Display::Office);
}

TEST_P(Dialogs, thatAskAreWhole) {
    lookAtAll(DialogKind::Asks, theme::Display::Daylight);
}

TEST_P(Dialogs, thatBringSomethingInAreWhole) {
    lookAtAll(DialogKind::BringsSomethingIn, theme::Display::Office);
}

TEST_P(Dialogs, thatShowWhatWasFoundAreWhole) {
    lookAtAll(DialogKind::ShowsWhatWasFound, theme::Display::PlantRoomDark);
}

// Also one of Qt's own: what asks for a file, a printer, or only says something.
TEST(AnyDialog, isShownNoLargerThanTheScreen) {
    const support::DeskWindow desk;
    QDialog dialog;
    dialog.resize(3000, 3000);
    dialog.show();
    const QSize screen = dialog.screen()->availableSize();
    EXPECT_EQ(dialog.size(), dialog.size().boundedTo(screen)) << dialog.width() << 'x' << dialog.height();
}

INSTANTIATE_TEST_SUITE_P(Screens, Dialogs,
                         testing::Combine(testing::ValuesIn(dialogScreens()),
                                          testing::Values("en", "de", "es", "fr")),
                         [](const auto& info) {
                             return std::string(std::get<0>(info.param).name) + '_' + std::get<1>(info.param);
                         });

}  // namespace
}  // namespace ww::ui
