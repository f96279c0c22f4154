// The top row of a keyboard that writes digits with Shift only: its keys are pressed by their place. The
// numbers of places and letters are those of the French layout "fr" of the X keyboard files.
#include "ui/top_row_keys.h"

#include <gtest/gtest.h>

#include "tests/ui/support/desk_window.h"

namespace ww::ui {
namespace {

/// Presses a key of the top row; `code` is where it stands, `letter` what it writes.
bool press(quint32 code, char16_t letter, Qt::KeyboardModifiers held) {
    QWidget* receiver = QApplication::focusWidget();
    QKeyEvent down(QEvent::KeyPress, letter, held, code, letter, 0, QString(QChar(letter)));
    QApplication::sendEvent(receiver, &down);
    return down.isAccepted();
}

TEST(TopRowKeys, showThePlacesWithoutShift) {
    support::DeskWindow desk;
    constexpr char16_t kRow[] = u"&\u00E9\"'(-\u00E8";
    for (int place = MainWindow::Job; place <= MainWindow::Report; ++place) {
        press(10 + static_cast<quint32>(place), kRow[place], Qt::AltModifier);
        EXPECT_EQ(desk.window.place(), place);
    }
}

TEST(TopRowKeys, areNotTakenFromTypingNorFromOtherKeys) {
    support::DeskWindow desk;
    desk.window.showPlace(MainWindow::Walk);
    press(11, u'\u00E9', Qt::NoModifier);
    press(24, u'a', Qt::AltModifier);
    press(11, u'\u00E9', Qt::GroupSwitchModifier);
    EXPECT_EQ(desk.window.place(), MainWindow::Walk);
}

}  // namespace
}  // namespace ww::ui
