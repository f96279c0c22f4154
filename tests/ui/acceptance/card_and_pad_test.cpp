// The one-valve card of small windows, large targets and their number pad. Sizes of targets: WCAG 2.2, 2.5.8
// asks for 24 px and 2.5.5 for 44 px; 48 px with 8 px between them is common practice for touch.
#include <gtest/gtest.h>

#include <QClipboard>
#include <QMenuBar>
#include <QPushButton>

#include "core/balancing/standing_readings.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/each_page.h"
#include "tests/ui/support/target_faults.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

constexpr QSize kCard(683, 354);  // 1366 x 768 at twice the scale
constexpr QSize kLaptop(1366, 694);

/// The dp typed at valve `i`: plausible against nothing, so that only the keys are tested.
QString typedDp(int i) {
    return QString::number(8 + i) + "." + QString::number(i % 10);
}

void resizeTo(DeskWindow& desk, QSize size) {
    desk.window.resize(size);
    QTest::qWait(30);
    ASSERT_EQ(desk.window.size(), size);
}

void expectAllStored(DeskWindow& desk) {
    EXPECT_EQ(desk.storedCount(), 24);
    for (int i = 1; i <= 24; ++i) {
        EXPECT_EQ(desk.stored(support::walkTag(i)), typedDp(i).toStdString() + " kPa");
    }
}

TEST(ValveCard, takesTwentyFourReadingsWithDigitsAndEnterAlone) {
    for (const int enter : {Qt::Key_Return, Qt::Key_Enter}) {
        DeskWindow desk;
        resizeTo(desk, kCard);
        ASSERT_TRUE(desk.window.walk()->isCard());
        ASSERT_TRUE(desk.window.walk()->card()->dp()->hasFocus());
        for (int i = 1; i <= 24; ++i) {
            desk.type(typedDp(i));
            desk.key(enter);
        }
        expectAllStored(desk);
        EXPECT_EQ(DeskWindow::dialogCount(), 0);
        EXPECT_TRUE(QApplication::focusWidget()->inherits("QPushButton")) << "the hand ends at Close Round";
    }
}

TEST(ValveCard, saysWhatCameOfTheValveBefore) {
    DeskWindow desk;
    resizeTo(desk, kCard);
    const auto* done = support::named<QLabel>(*desk.window.walk()->card(), "Valve stored last");
    ASSERT_NE(done, nullptr);
    EXPECT_FALSE(done->isVisible());
    const QString read = QString::fromStdString(support::walkReadings(desk.project())[0]);
    desk.enter(read);
    ASSERT_TRUE(done->isVisible());
    for (const QString& part :
         {QStringLiteral("B-01: "), read, QStringLiteral("kPa"), QStringLiteral(" % of target, "),
          desk.model().index(0, WalkModel::State).data().toString()}) {
        EXPECT_TRUE(done->text().contains(part)) << done->text().toStdString();
    }
    EXPECT_EQ(done->visibleRegion().boundingRect(), done->rect()) << "in sight";
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_FALSE(done->isVisible()) << "nothing is read there any more";
}

TEST(ValveCard, hasTheKeysOfTheGrid) {
    DeskWindow desk;
    resizeTo(desk, kCard);
    const ValveCard& card = *desk.window.walk()->card();
    desk.enter("20.5");
    EXPECT_EQ(desk.currentTag(), "B-02");
    desk.key(Qt::Key_Return, Qt::ShiftModifier);
    EXPECT_EQ(desk.currentTag(), "B-01");
    EXPECT_EQ(card.dp()->text(), "20.5");
    desk.key(Qt::Key_Tab);
    EXPECT_TRUE(card.setting()->hasFocus());
    desk.enter("2.6");
    EXPECT_EQ(desk.currentTag(), "B-02");
    EXPECT_TRUE(card.dp()->hasFocus());
    desk.type("99");
    desk.key(Qt::Key_Escape);
    EXPECT_EQ(card.dp()->text(), "");
    EXPECT_EQ(desk.stored("B-02"), "");
    desk.key(Qt::Key_Down);
    EXPECT_EQ(desk.currentTag(), "B-03");
    desk.type("12");
    desk.key(Qt::Key_Up);
    EXPECT_EQ(desk.stored("B-03"), "12 kPa");
    EXPECT_EQ(desk.currentTag(), "B-02");
    desk.enter("12..4");
    EXPECT_EQ(card.dp()->text(), "12..4") << "a text that is no number stays";
    EXPECT_EQ(card.dp()->selectedText(), "12..4");
    desk.key(Qt::Key_Escape);
    desk.enter("x");
    EXPECT_EQ(desk.currentTag(), "B-03");
    const auto* unread = balancing::countingReading(desk.project(), desk.project().lastRound()->id,
                                                    desk.project().branchTagged("B-02")->id);
    ASSERT_NE(unread, nullptr);
    EXPECT_TRUE(unread->cannotBeRead);
    desk.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(balancing::countingReading(desk.project(), desk.project().lastRound()->id,
                                         desk.project().branchTagged("B-02")->id),
              nullptr);
}

TEST(ValveCard, comesAndGoesWithTheSizeOfTheWindow) {
    DeskWindow desk;
    const struct {
        QSize size;
        bool isCard;
    } kSizes[] = {{{1366, 694}, false}, {{899, 694}, true}, {{900, 520}, false},
                  {{1366, 519}, true},  {{683, 354}, true}, {{1366, 694}, false}};
    for (const auto& [size, isCard] : kSizes) {
        resizeTo(desk, size);
        EXPECT_EQ(desk.window.walk()->isCard(), isCard) << size.width() << " x " << size.height();
        EXPECT_EQ(desk.grid().isVisible(), !isCard);
        EXPECT_EQ(desk.window.walk()->card()->isVisible(), isCard);
        EXPECT_EQ(desk.window.menuBar()->isVisible(), !isCard);
    }
    // The chords work also while the menus are folded away.
    resizeTo(desk, kCard);
    desk.key(Qt::Key_4, Qt::AltModifier);
    EXPECT_EQ(desk.window.place(), MainWindow::Adjust);
}

TEST(ValveCard, aPastedColumnFillsTheRouteAndOneNumberTheField) {
    DeskWindow desk;
    resizeTo(desk, kCard);
    const ValveCard& card = *desk.window.walk()->card();
    desk.enter("20.5");
    QGuiApplication::clipboard()->setText("21.5\n");
    desk.key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(card.dp()->text().trimmed(), "21.5");
    EXPECT_EQ(desk.stored("B-02"), "") << "it waits for Enter";
    // Also while something is typed, which the column takes the place of.
    QGuiApplication::clipboard()->setText("30.1\r\n30.2\r\n\r\n30.4\r\n");
    desk.key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(desk.stored("B-02"), "30.1 kPa");
    EXPECT_EQ(desk.stored("B-03"), "30.2 kPa");
    EXPECT_EQ(desk.stored("B-04"), "");
    EXPECT_EQ(desk.stored("B-05"), "30.4 kPa");
    EXPECT_EQ(desk.currentTag(), "B-06");
    EXPECT_TRUE(card.dp()->hasFocus());
    EXPECT_TRUE(desk.window.walk()->drafts().empty());
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_EQ(desk.storedCount(), 1) << "one step";
    // A column with a value that is none stores nothing and says where.
    desk.window.walk()->showBranch(desk.project().branchTagged("B-02")->id);
    desk.window.walk()->takeFocus();
    QGuiApplication::clipboard()->setText("30.1\n3..2");
    desk.key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(desk.storedCount(), 1);
    EXPECT_TRUE(desk.window.notice().startsWith("B-03")) << desk.window.notice().toStdString();
}

TEST(ValveCard, leadsToAdjustWithTheValveInHand) {
    DeskWindow desk;
    resizeTo(desk, kCard);
    desk.enter("20.5");
    QPushButton* adjust = nullptr;
    for (QPushButton* button : desk.window.walk()->card()->findChildren<QPushButton*>()) {
        adjust = button->text().remove('&') == "Adjust" ? button : adjust;
    }
    ASSERT_NE(adjust, nullptr);
    EXPECT_EQ(adjust->visibleRegion().boundingRect(), adjust->rect()) << "in sight";
    adjust->click();
    EXPECT_EQ(desk.window.place(), MainWindow::Adjust);
    EXPECT_EQ(desk.bridge().selectedBranch(), desk.project().branchTagged("B-02")->id);
}

TEST(LargeTargets, thePadWritesANoteAndLeadsBackToAdjust) {
    DeskWindow desk;
    desk.window.commands().largeTargets->trigger();
    resizeTo(desk, kLaptop);
    desk.enter("20.5");
    desk.key(Qt::Key_Return, Qt::ShiftModifier);
    for (const auto place : {MainWindow::Walk, MainWindow::Adjust}) {
        desk.window.showPlace(place);
        QTest::qWait(30);
        ASSERT_TRUE(desk.window.pad()->isVisible());
        QTest::mouseClick(desk.window.pad()->keyOf("Write a note"), Qt::LeftButton);
        ASSERT_EQ(QApplication::focusWidget()->accessibleName(), "Note to this reading");
        desk.enter(place == MainWindow::Walk ? "lagging off" : "tight handle");
        EXPECT_EQ(desk.window.place(), place) << "where it was begun";
    }
    const auto* reading = balancing::countingReading(desk.project(), desk.project().lastRound()->id,
                                                     desk.project().branchTagged("B-01")->id);
    EXPECT_EQ(reading->note, "tight handle");
}

TEST(LargeTargets, areLargeAndApartOnEveryPage) {
    DeskWindow desk;
    desk.key(Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(desk.preferences.hasLargeTargets());
    resizeTo(desk, kLaptop);
    support::eachPage(desk.window, [&](const QString& page) {
        QTest::qWait(30);
        const QStringList faults = support::targetFaults(desk.window, {48, 48}, 8);
        EXPECT_TRUE(faults.isEmpty()) << page.toStdString() << "\n" << faults.join('\n').toStdString();
    });
    desk.window.showPlace(MainWindow::Walk);
    desk.key(Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_FALSE(desk.preferences.hasLargeTargets());
    EXPECT_FALSE(desk.window.walk()->isCard());
    EXPECT_FALSE(desk.window.pad()->isVisible());
}

TEST(LargeTargets, cardAndPadStandBesideOneAnotherInTheSmallestWindow) {
    DeskWindow desk;
    desk.window.commands().largeTargets->trigger();
    resizeTo(desk, kCard);
    const ValveCard& card = *desk.window.walk()->card();
    const auto isWhole = [&](const QWidget& widget) {
        return desk.window.rect().contains(QRect(widget.mapTo(&desk.window, QPoint(0, 0)), widget.size())) &&
               widget.visibleRegion().boundingRect() == widget.rect();
    };
    ASSERT_TRUE(QTest::qWaitFor([&] { return isWhole(*desk.window.pad()) && isWhole(*card.dp()); }, 3000));
    const auto keys = desk.window.pad()->findChildren<QPushButton*>();
    EXPECT_EQ(keys.size(), 17);
    for (const QPushButton* key : keys) {
        if (key->text() == "note") {
            EXPECT_FALSE(key->isVisible()) << "the card has it";
            continue;
        }
        EXPECT_TRUE(isWhole(*key)) << key->text().toStdString();
        EXPECT_GE(key->width(), 48) << key->text().toStdString();
        EXPECT_GE(key->height(), 48) << key->text().toStdString();
        EXPECT_LE(key->fontMetrics().horizontalAdvance(key->text()), key->width())
            << key->text().toStdString();
    }
    EXPECT_TRUE(isWhole(*card.setting()));
    // The card turns its buttons below one another where they have no room in a line.
    QStringList faults;
    static_cast<void>(QTest::qWaitFor(
        [&] {
            faults = support::targetFaults(desk.window, {48, 48}, 8);
            return faults.isEmpty();
        },
        3000));
    EXPECT_TRUE(faults.isEmpty()) << faults.join('\n').toStdString();
}

// A value typed for another valve than the one at hand is stored there: what the field belongs to is seen.
TEST(LargeTargets, theTagOfTheValveIsSeenWithItsFields) {
    DeskWindow desk(support::WalkJobOptions{}, false);
    desk.window.commands().largeTargets->trigger();
    resizeTo(desk, kCard);
    desk.window.commands().newRound->trigger();
    QTest::qWait(30);
    desk.key(Qt::Key_Return);
    ASSERT_NE(desk.bridge().openRoundOrNull(), nullptr);
    const auto* tag = support::named<QLabel>(*desk.window.walk()->card(), "Tag");
    ASSERT_NE(tag, nullptr);
    for (const int key : {Qt::Key_Return, Qt::Key_Tab, Qt::Key_Return}) {
        QTest::qWait(30);
        EXPECT_EQ(tag->visibleRegion().boundingRect(), tag->rect()) << tag->text().toStdString();
        desk.key(key);
    }
}

TEST(LargeTargets, aWholeRoundIsReadOnThePadAlone) {
    for (const QSize size : {kLaptop, kCard}) {
        DeskWindow desk;
        desk.window.commands().largeTargets->trigger();
        resizeTo(desk, size);
        ASSERT_TRUE(desk.window.pad()->isVisible());
        // A hand comes later than the layout of a window that changed its size.
        const NumberPad* pad = desk.window.pad();
        ASSERT_TRUE(QTest::qWaitFor(
            [&] {
                return desk.window.rect().contains(
                    QRect(pad->mapTo(&desk.window, QPoint(0, 0)), pad->size()));
            },
            3000));
        const auto touch = [&](const QString& text) {
            QPushButton* key = desk.window.pad()->keyOf(text);
            ASSERT_NE(key, nullptr) << text.toStdString();
            ASSERT_TRUE(
                desk.window.rect().contains(QRect(key->mapTo(&desk.window, QPoint(0, 0)), key->size())))
                << text.toStdString() << " is outside the window";
            QTest::mouseClick(key, Qt::LeftButton);
        };
        for (int i = 1; i <= 24; ++i) {
            for (const QChar digit : typedDp(i)) {
                touch(digit);
            }
            touch("Store and go on");
        }
        expectAllStored(desk);
    }
}

TEST(LargeTargets, thePadStepsTheSettingAndTakesBackADigit) {
    DeskWindow desk;
    desk.window.commands().largeTargets->trigger();
    resizeTo(desk, kLaptop);
    const auto touch = [&](const QString& name) {
        QTest::mouseClick(desk.window.pad()->keyOf(name), Qt::LeftButton);
    };
    touch("1");
    touch("2");
    touch("Delete last digit");
    EXPECT_EQ(desk.window.walk()->card()->dp()->text(), "1");
    // B-01 stands at 4 of 4 turns: the step up ends at the stop.
    touch("Setting one step down");
    EXPECT_EQ(desk.window.walk()->card()->setting()->text(), "3.9");
    EXPECT_EQ(desk.window.walk()->card()->dp()->text(), "1") << "what is being typed stays";
    touch("Setting one step up");
    touch("Setting one step up");
    EXPECT_EQ(desk.window.walk()->card()->setting()->text(), "4.0");
    touch("Delete last digit");
    touch("Cannot be read");
    touch("Store and go on");
    EXPECT_EQ(desk.currentTag(), "B-02");
}

}  // namespace
}  // namespace ww::ui
