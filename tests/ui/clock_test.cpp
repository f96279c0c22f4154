// A laptop whose clock is wrong: the notice that offers to set it, the dialog, and the times after it.
#include <gtest/gtest.h>

#include <QDateTime>
#include <QTimer>

#include "core/project/clock_offset.h"
#include "tests/ui/support/desk_window.h"
#include "ui/clock_dialog.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

QString hereAndNow(const base::Instant& time) {
    return QDateTime::fromSecsSinceEpoch(time.seconds).toString("yyyy-MM-dd HH:mm");
}

QLineEdit* timeField(ClockDialog& dialog) {
    return dialog.findChild<QLineEdit*>();
}

QString resultOf(ClockDialog& dialog) {
    return dialog.findChild<QLabel*>("clock_result")->text();
}

QPushButton* clockButton(ClockDialog& dialog, const QString& text) {
    for (QPushButton* button : dialog.findChildren<QPushButton*>()) {
        if (QString(button->text()).remove('&') == text) {
            return button;
        }
    }
    return nullptr;
}

/// Carries out the command with what a hand does in its dialog.
void setClock(DeskWindow& desk, const std::function<void(ClockDialog&)>& hand) {
    QTimer::singleShot(0, qApp, [hand] {
        auto* dialog = qobject_cast<ClockDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(dialog, nullptr);
        hand(*dialog);
    });
    desk.window.commands().setClock->trigger();
}

TEST(ClockOnTheDesk, theNoticeOffersToSetItAndSaysNothingOnceItIsSet) {
    DeskWindow desk;
    const QString file = desk.bridge().file();
    desk.bridge().close();
    desk.clock.advance(std::chrono::minutes(-185));
    ASSERT_TRUE(desk.window.openFile(file));
    EXPECT_TRUE(desk.window.notice().contains("3 h 5 min before")) << desk.window.notice().toStdString();
    EXPECT_TRUE(desk.window.notice().contains("Ctrl+Alt+O"));
    EXPECT_EQ(desk.window.commands().setClock->shortcut(), QKeySequence("Ctrl+Alt+O"));

    setClock(desk, [](ClockDialog& dialog) {
        EXPECT_EQ(timeField(dialog)->text(), hereAndNow(*base::Instant::fromText("2026-03-02T10:00:00Z")))
            << "begins with the time of the last action";
        EXPECT_EQ(resultOf(dialog), "This laptop's clock is 3 h 5 min behind.");
        clockButton(dialog, "Set Offset")->click();
    });
    EXPECT_EQ(desk.bridge().now().text(), "2026-03-02T10:00:00Z");
    EXPECT_EQ(desk.project().clockOffsets().size(), 1u);
    EXPECT_EQ(desk.project().clockOffsets()[0].machine, "LT-1");
    EXPECT_TRUE(desk.window.notice().contains("+3 h 5 min")) << desk.window.notice().toStdString();
    desk.clock.advance(std::chrono::minutes(2));
    ASSERT_TRUE(desk.bridge().storeDp(desk.project().branchTagged("B-01")->id, "65.3").ok());
    const auto& readings = desk.project().readingsOf(desk.project().lastRound()->id);
    EXPECT_EQ(desk.project().readings()[readings.back()].time->text(), "2026-03-02T10:02:00Z");
    EXPECT_EQ(desk.bridge().lastStored()->time.text(), "2026-03-02T10:02:00Z");

    desk.bridge().close();
    ASSERT_TRUE(desk.window.openFile(file));
    EXPECT_TRUE(desk.window.notice().contains("+3 h 5 min are added")) << desk.window.notice().toStdString();
}

TEST(ClockOnTheDesk, undoTakesItBackAndTheNoticeComesAgain) {
    DeskWindow desk;
    desk.clock.advance(std::chrono::minutes(-60));
    setClock(desk, [](ClockDialog& dialog) { clockButton(dialog, "Set Offset")->click(); });
    ASSERT_EQ(desk.project().clockOffsets().size(), 1u);
    desk.window.commands().undo->trigger();
    EXPECT_TRUE(desk.project().clockOffsets().empty());
    EXPECT_TRUE(desk.window.notice().contains("1 h 0 min before")) << desk.window.notice().toStdString();
}

TEST(ClockOnTheDesk, theOwnClockAgainRemovesIt) {
    DeskWindow desk;
    setClock(desk, [](ClockDialog& dialog) {
        EXPECT_FALSE(clockButton(dialog, "Set Offset")->isEnabled()) << "the clock is right as it is";
        timeField(dialog)->setText("yesterday");
        EXPECT_FALSE(clockButton(dialog, "Set Offset")->isEnabled());
        EXPECT_TRUE(resultOf(dialog).contains("2026-03-02 14:05"));
        timeField(dialog)->setText("2026-03-02");
        EXPECT_FALSE(clockButton(dialog, "Set Offset")->isEnabled()) << "a day alone";
        timeField(dialog)->setText(hereAndNow(*base::Instant::fromText("2026-03-02T08:30:00Z")));
        EXPECT_EQ(resultOf(dialog), "This laptop's clock is 1 h 30 min ahead.");
        clockButton(dialog, "Set Offset")->click();
    });
    EXPECT_EQ(desk.bridge().now().text(), "2026-03-02T08:30:00Z");
    EXPECT_TRUE(desk.window.notice().contains("-1 h 30 min")) << desk.window.notice().toStdString();
    setClock(desk, [](ClockDialog& dialog) {
        clockButton(dialog, "Use Own Clock")->click();
        EXPECT_TRUE(resultOf(dialog).contains("own clock is right")) << resultOf(dialog).toStdString();
        clockButton(dialog, "Set Offset")->click();
    });
    EXPECT_EQ(desk.bridge().now().text(), "2026-03-02T10:00:00Z");
    EXPECT_EQ(project::addedNow_s(desk.project(), "LT-1"), 0);
    EXPECT_EQ(desk.project().clockOffsets().size(), 2u) << "the record keeps both";
}

TEST(ClockOnTheDesk, nothingIsStoredWhereTheDialogIsLeft) {
    DeskWindow desk;
    const auto before = desk.bridge().workbook()->journal().size();
    desk.clock.advance(std::chrono::minutes(-60));
    setClock(desk, [](ClockDialog& dialog) { dialog.reject(); });
    EXPECT_EQ(desk.bridge().workbook()->journal().size(), before);
}

}  // namespace
}  // namespace ww::ui
