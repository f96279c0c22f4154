#include "ui/places/walk/walk_place.h"

#include <gtest/gtest.h>

#include <QClipboard>
#include <QLocale>
#include <QPushButton>
#include <QWheelEvent>

#include "core/balancing/standing_readings.h"
#include "tests/support/whole_job.h"
#include "tests/ui/support/desk_window.h"

// The source of these checks is the interaction design of this project: keys, words and counts are its own
// decisions; no outside source.
namespace ww::ui {
namespace {

using support::DeskWindow;
using support::walkTag;

TEST(WalkPlace, storesTwentyFourReadingsWithDigitsAndEnterAlone) {
    DeskWindow desk;
    const auto readings = support::walkReadings(desk.project());
    ASSERT_EQ(readings.size(), 24U);
    int keysBeyondDigits = 0;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        EXPECT_EQ(desk.currentTag(), walkTag(static_cast<int>(i) + 1));
        EXPECT_EQ(desk.currentColumn(), WalkModel::Dp);
        desk.type(QString::fromStdString(readings[i]));
        desk.key(i % 2 == 0 ? Qt::Key_Return : Qt::Key_Enter,
                 i % 2 == 0 ? Qt::NoModifier : Qt::KeypadModifier);
        ++keysBeyondDigits;
    }
    EXPECT_EQ(keysBeyondDigits, 24);
    EXPECT_EQ(desk.storedCount(), 24);
    for (std::size_t i = 0; i < readings.size(); ++i) {
        EXPECT_EQ(desk.stored(walkTag(static_cast<int>(i) + 1)), readings[i] + " kPa");
    }
    EXPECT_EQ(DeskWindow::dialogCount(), 0);
    // The last Enter lands on closing the round.
    const auto* button = qobject_cast<QPushButton*>(QApplication::focusWidget());
    ASSERT_NE(button, nullptr);
    EXPECT_TRUE(button->text().startsWith("Close Round"));
}

TEST(WalkPlace, survivesABurstOfQueuedKeys) {
    DeskWindow desk;
    const auto readings = support::walkReadings(desk.project());
    // All keys stand in the event queue before the first is handled, addressed as they are taken out: this is
    // what a source without pauses does.
    QString keys;
    for (const std::string& reading : readings) {
        keys += QString::fromStdString(reading) + '\r';
    }
    class Pump : public QObject {
      public:
        bool event(QEvent* event) override {
            if (event->type() != QEvent::User) {
                return QObject::event(event);
            }
            const QChar c = keys[at++];
            const int code = c == '\r' ? int(Qt::Key_Return) : c.toLatin1();
            QWidget* target = QApplication::focusWidget();
            QKeyEvent press(QEvent::KeyPress, code, Qt::NoModifier, c == '\r' ? QString("\r") : QString(c));
            QApplication::sendEvent(target, &press);
            QKeyEvent release(QEvent::KeyRelease, code, Qt::NoModifier);
            QApplication::sendEvent(target, &release);
            return true;
        }
        QString keys;
        qsizetype at = 0;
    } pump;
    pump.keys = keys;
    for (qsizetype i = 0; i < keys.size(); ++i) {
        QCoreApplication::postEvent(&pump, new QEvent(QEvent::User));
    }
    QCoreApplication::processEvents();
    EXPECT_EQ(desk.storedCount(), 24);
    for (std::size_t i = 0; i < readings.size(); ++i) {
        EXPECT_EQ(desk.stored(walkTag(static_cast<int>(i) + 1)), readings[i] + " kPa");
    }
}

TEST(WalkPlace, tabGoesToTheSettingAndEnterFromThereToTheNextValve) {
    DeskWindow desk;
    desk.enter("20.1");
    EXPECT_EQ(desk.currentTag(), "B-02");
    desk.key(Qt::Key_Tab);
    EXPECT_EQ(desk.currentColumn(), WalkModel::Setting);
    EXPECT_EQ(desk.currentTag(), "B-02");
    desk.enter("2.5");
    EXPECT_EQ(desk.currentTag(), "B-03");
    EXPECT_EQ(desk.currentColumn(), WalkModel::Dp);
    EXPECT_EQ(balancing::standingSetting(desk.project(), desk.project().lastRound()->id,
                                         desk.project().branchTagged("B-02")->id)
                  ->text(),
              "2.5");
    desk.key(Qt::Key_Return, Qt::ShiftModifier);
    EXPECT_EQ(desk.currentTag(), "B-02");
    EXPECT_EQ(desk.currentColumn(), WalkModel::Dp);
    // A reading at the wrong setting keeps its value when the setting is corrected.
    desk.enter("31.5");
    EXPECT_EQ(desk.stored("B-02"), "31.5 kPa");
    EXPECT_EQ(desk.stored("B-01"), "20.1 kPa");
}

TEST(WalkPlace, readsPointAndCommaTheSameInEveryLocale) {
    const QLocale before;
    for (const char* name : {"C", "en_GB", "de_DE", "fr_FR", "es_ES"}) {
        QLocale::setDefault(QLocale(name));
        DeskWindow desk;
        desk.enter("12.5");
        desk.enter("12,5");
        desk.enter("1.250");
        desk.enter("1,250");
        const auto value = [&](const char* tag) {
            return balancing::countingReading(desk.project(), desk.project().lastRound()->id,
                                              desk.project().branchTagged(tag)->id)
                ->dp->value.in(quantity::Unit::Kilopascal);
        };
        EXPECT_DOUBLE_EQ(value("B-01"), 12.5) << name;
        EXPECT_DOUBLE_EQ(value("B-02"), 12.5) << name;
        EXPECT_DOUBLE_EQ(value("B-03"), 1.25) << name;
        EXPECT_DOUBLE_EQ(value("B-04"), 1.25) << name;
    }
    QLocale::setDefault(before);
}

TEST(WalkPlace, neverClampsWhatIsTyped) {
    DeskWindow desk;
    desk.enter("250");
    EXPECT_EQ(desk.stored("B-01"), "250 kPa");
    desk.key(Qt::Key_Tab);
    desk.enter("250");
    // Refused in place: the valve stops at 4, the text stays selected, nothing is stored.
    EXPECT_TRUE(desk.grid().isEditing());
    EXPECT_EQ(desk.grid().editor()->text(), "250");
    EXPECT_EQ(desk.grid().editor()->selectedText(), "250");
    EXPECT_EQ(desk.currentTag(), "B-02");
    EXPECT_FALSE(desk.window.notice().isEmpty());
}

TEST(WalkPlace, refusesOnlyWhatIsNoNumberAndKeepsItInPlace) {
    DeskWindow desk;
    desk.enter("12..4");
    EXPECT_TRUE(desk.grid().isEditing());
    EXPECT_EQ(desk.currentTag(), "B-01");
    EXPECT_EQ(desk.grid().editor()->selectedText(), "12..4");
    EXPECT_TRUE(desk.window.notice().contains("12..4"));
    EXPECT_EQ(DeskWindow::dialogCount(), 0);
    desk.enter("12.4");
    EXPECT_EQ(desk.stored("B-01"), "12.4 kPa");
    EXPECT_EQ(desk.currentTag(), "B-02");
}

TEST(WalkPlace, aRefusedTextKeepsTheHandAtItsValve) {
    DeskWindow desk;
    desk.enter("a");
    ASSERT_TRUE(desk.grid().isEditing());
    EXPECT_TRUE(desk.keyLine().contains("Esc restores")) << desk.keyLine().toStdString();
    EXPECT_FALSE(desk.keyLine().contains("F6")) << "the grid is not left with a refused text";
    desk.grid().goToRow(3, false);
    QTest::qWait(20);
    EXPECT_EQ(desk.currentTag(), "B-01") << "row, panel and editor are of one valve";
    desk.enter("20.1");
    EXPECT_TRUE(desk.keyLine().contains("F6")) << desk.keyLine().toStdString();
    EXPECT_EQ(desk.stored("B-01"), "20.1 kPa");
    EXPECT_EQ(desk.currentTag(), "B-02");
}

TEST(WalkPlace, aRefusedTextStaysInItsCellHoweverThePlaceIsLeft) {
    DeskWindow desk;
    const auto goTo = [&](MainWindow::Place place) { desk.window.commands().places[place]->trigger(); };
    desk.enter("20.0");
    desk.type("12..4");
    goTo(MainWindow::Job);
    ASSERT_EQ(desk.window.place(), MainWindow::Job);
    const QString told = desk.window.notice();
    EXPECT_TRUE(told.contains("12..4") && told.contains("B-02")) << told.toStdString();
    // What else changes meanwhile, also where it fills the grid anew, takes nothing away.
    project::Branch branch = *desk.project().branchTagged("B-07");
    branch.serves = "Hall";
    ASSERT_TRUE(desk.bridge().apply({"serves", {branch}, {}, true}).ok());
    goTo(MainWindow::Walk);
    EXPECT_TRUE(desk.grid().editor()->hasFocus());
    EXPECT_EQ(desk.grid().editor()->selectedText(), "12..4");
    EXPECT_EQ(desk.currentTag(), "B-02");
    EXPECT_TRUE(desk.window.notice().contains("12..4")) << desk.window.notice().toStdString();
    EXPECT_EQ(DeskWindow::dialogCount(), 0);
    desk.enter("12.4");
    EXPECT_EQ(desk.stored("B-02"), "12.4 kPa");
    EXPECT_EQ(desk.currentTag(), "B-03");
    EXPECT_EQ(desk.storedCount(), 2);
}

TEST(WalkPlace, aClickElsewhereLeavesARefusedTextInItsCell) {
    DeskWindow desk;
    desk.type("12..4");
    const auto click = [&](int row) {
        QTest::mouseClick(desk.grid().viewport(), Qt::LeftButton, {},
                          desk.grid().visualRect(desk.model().index(row, WalkModel::Dp)).center());
    };
    click(3);
    EXPECT_EQ(desk.currentTag(), "B-01");
    EXPECT_TRUE(desk.grid().editor()->hasFocus());
    EXPECT_EQ(desk.grid().editor()->text(), "12..4");
    EXPECT_TRUE(desk.window.notice().contains("12..4"));
    desk.key(Qt::Key_Escape);
    click(3);
    EXPECT_EQ(desk.currentTag(), "B-04");
    EXPECT_FALSE(desk.grid().isEditing());
}

TEST(WalkPlace, theCardKeepsARefusedTextWithItsValve) {
    DeskWindow desk;
    desk.window.commands().largeTargets->trigger();
    ASSERT_TRUE(desk.window.walk()->isCard());
    const auto select = [&](const char* tag) {
        desk.bridge().selectBranch(desk.project().branchTagged(tag)->id);
    };
    const auto dp = [&] { return desk.window.walk()->card()->dp()->text(); };
    desk.enter("12..4");
    EXPECT_EQ(dp(), "12..4");
    select("B-05");
    EXPECT_EQ(dp(), "");
    select("B-01");
    EXPECT_EQ(dp(), "12..4");
    desk.window.commands().places[MainWindow::Job]->trigger();
    desk.window.commands().places[MainWindow::Walk]->trigger();
    EXPECT_EQ(dp(), "12..4");
    desk.enter("12.4");
    EXPECT_EQ(desk.stored("B-01"), "12.4 kPa");
    EXPECT_EQ(desk.storedCount(), 1);
}

TEST(WalkPlace, aRefusedTextKeepsTheWindowOpenAndIsShown) {
    DeskWindow desk;
    desk.type("12..4");
    desk.window.commands().places[MainWindow::Report]->trigger();
    EXPECT_FALSE(desk.window.storeTyped());
    EXPECT_EQ(desk.window.place(), MainWindow::Walk);
    EXPECT_TRUE(desk.grid().editor()->hasFocus());
    EXPECT_TRUE(desk.window.notice().contains("12..4")) << desk.window.notice().toStdString();
    desk.key(Qt::Key_Escape);
    EXPECT_TRUE(desk.window.storeTyped());
    EXPECT_EQ(desk.stored("B-01"), "");
}

TEST(WalkPlace, aWheelChangesNoValue) {
    DeskWindow desk;
    desk.enter("20.0");
    const auto before = support::recordsOf(desk.project());
    for (int place = 0; place < 3; ++place) {
        desk.window.showPlace(static_cast<MainWindow::Place>(place));
        for (QWidget* widget : desk.window.findChildren<QWidget*>()) {
            QWheelEvent wheel({5, 5}, widget->mapToGlobal(QPointF(5, 5)), {}, {0, 120}, Qt::NoButton,
                              Qt::NoModifier, Qt::NoScrollPhase, false);
            QApplication::sendEvent(widget, &wheel);
        }
    }
    EXPECT_EQ(support::recordsOf(desk.project()), before);
}

TEST(WalkPlace, aDigitOnAReadOnlyCellEditsTheDpOfItsRow) {
    DeskWindow desk;
    for (const int column : {WalkModel::Tag, WalkModel::Flow, WalkModel::State}) {
        desk.grid().setCurrentIndex(desk.model().index(6, column));
        desk.type("3");
        EXPECT_EQ(desk.grid().currentRow(), 6);
        EXPECT_EQ(desk.currentColumn(), WalkModel::Dp);
        EXPECT_EQ(desk.grid().editor()->text(), "3");
        desk.key(Qt::Key_Escape);
    }
    EXPECT_EQ(desk.stored("B-07"), "");
}

TEST(WalkPlace, escapeRestoresAndOnAnUneditedCellDoesNothing) {
    DeskWindow desk;
    desk.enter("20.0");
    desk.key(Qt::Key_Return, Qt::ShiftModifier);
    desk.type("99");
    desk.key(Qt::Key_Escape);
    EXPECT_FALSE(desk.grid().isEditing());
    EXPECT_EQ(desk.model().index(0, WalkModel::Dp).data().toString(), "20.0");
    desk.key(Qt::Key_Escape);
    EXPECT_TRUE(desk.window.isVisible());
    EXPECT_EQ(desk.currentTag(), "B-01");
    EXPECT_EQ(desk.stored("B-01"), "20.0 kPa");
}

TEST(WalkPlace, anEmptyEnterWalksPastAndXRecordsThatItCannotBeRead) {
    DeskWindow desk;
    desk.key(Qt::Key_Return);
    EXPECT_EQ(desk.currentTag(), "B-02");
    EXPECT_EQ(desk.stored("B-01"), "");
    desk.enter("x");
    EXPECT_EQ(desk.currentTag(), "B-03");
    const project::Reading* reading = balancing::countingReading(
        desk.project(), desk.project().lastRound()->id, desk.project().branchTagged("B-02")->id);
    ASSERT_NE(reading, nullptr);
    EXPECT_TRUE(reading->cannotBeRead);
    EXPECT_EQ(DeskWindow::dialogCount(), 0);
}

TEST(WalkPlace, arrowsStoreAndMove) {
    DeskWindow desk;
    desk.type("21.0");
    desk.key(Qt::Key_Down);
    EXPECT_EQ(desk.stored("B-01"), "21.0 kPa");
    EXPECT_EQ(desk.currentTag(), "B-02");
    desk.type("22.0");
    desk.key(Qt::Key_Up);
    EXPECT_EQ(desk.stored("B-02"), "22.0 kPa");
    EXPECT_EQ(desk.currentTag(), "B-01");
}

TEST(WalkPlace, afterAJumpEnterGoesToTheNextUnreadValve) {
    DeskWindow desk;
    desk.enter("20.0");
    desk.grid().goToRow(9, false);
    desk.enter("25.0");  // B-10 is read before
    desk.window.walk()->findValve();
    desk.enter("9");
    EXPECT_EQ(desk.currentTag(), "B-09");
    desk.enter("30.0");
    EXPECT_EQ(desk.stored("B-09"), "30.0 kPa");
    EXPECT_EQ(desk.currentTag(), "B-11");
    desk.enter("30.0");
    EXPECT_EQ(desk.currentTag(), "B-12");
}

TEST(WalkPlace, aPastedColumnIsOneStep) {
    DeskWindow desk;
    QApplication::clipboard()->setText("20.1\n20,2\n\n20.4p\n");
    desk.window.walk()->paste();
    EXPECT_EQ(desk.stored("B-01"), "20.1 kPa");
    EXPECT_EQ(desk.stored("B-02"), "20.2 kPa");
    EXPECT_EQ(desk.stored("B-03"), "");
    EXPECT_EQ(desk.stored("B-04"), "20.4 psi");
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_EQ(desk.storedCount(), 0);
    QApplication::clipboard()->setText("20.1\nabc\n");
    desk.grid().goToRow(0, false);
    desk.window.walk()->paste();
    EXPECT_EQ(desk.storedCount(), 0);
    EXPECT_TRUE(desk.window.notice().startsWith("B-02: Nothing was pasted: \"abc\" "))
        << desk.window.notice().toStdString();
}

TEST(WalkPlace, aPastedXSaysThatAValveCannotBeRead) {
    DeskWindow desk;
    QApplication::clipboard()->setText("20.1\nX\n20.3\n");
    desk.window.walk()->paste();
    const project::Reading* reading = balancing::countingReading(
        desk.project(), desk.project().lastRound()->id, desk.project().branchTagged("B-02")->id);
    ASSERT_NE(reading, nullptr);
    EXPECT_TRUE(reading->cannotBeRead);
    EXPECT_EQ(desk.stored("B-03"), "20.3 kPa");
}

}  // namespace
}  // namespace ww::ui
