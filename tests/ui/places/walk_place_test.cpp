#include "ui/places/walk/walk_place.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QClipboard>
#include <QElapsedTimer>
#include <QHeaderView>
#include <QLocale>
#include <QPushButton>
#include <QWheelEvent>

#include "core/balancing/standing_readings.h"
#include "tests/support/whole_job.h"
#include "tests/ui/support/desk_window.h"
#include "ui/charts/chart_view.h"
#include "ui/text/format.h"

// The source of these checks is the interaction design of this project: keys, words and counts are its own
// decisions; no outside source.
namespace ww::ui {
namespace {

using support::DeskWindow;
using support::walkTag;

/// A row whose words do not fit becomes high when the grid is seen, not while it is hidden.
TEST(WalkGrid, measuresItsRowsWhenItIsSeen) {
    DeskWindow desk;
    ASSERT_FALSE(desk.grid().isColumnHidden(WalkModel::Serves));
    const int usual = desk.grid().verticalHeader()->defaultSectionSize();
    const auto serve = [&](const char* words) {
        project::Branch branch = *desk.project().branchTagged("B-02");
        branch.serves = words;
        ASSERT_TRUE(desk.bridge().apply({"serves", {branch}, {}, true}).ok());
        QTest::qWait(0);
    };
    desk.window.showPlace(MainWindow::Job);
    QTest::qWait(0);
    ASSERT_FALSE(desk.grid().isVisible());
    serve("the air handling units of the whole north wing, the kitchen behind it and the loading dock");
    EXPECT_EQ(desk.grid().rowHeight(1), usual);
    desk.window.showPlace(MainWindow::Walk);
    QTest::qWait(0);
    EXPECT_GT(desk.grid().rowHeight(1), usual);
    EXPECT_EQ(desk.grid().rowHeight(2), usual);
    serve("Hall");
    EXPECT_EQ(desk.grid().rowHeight(1), usual) << "at once where it is seen";
}

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

TEST(WalkPlace, keepsTheUnitThatWasTypedAndShowsTheUnitOfTheColumn) {
    DeskWindow desk;
    desk.enter("1.8p");
    EXPECT_EQ(desk.stored("B-01"), "1.8 psi");
    EXPECT_EQ(desk.model().index(0, WalkModel::Dp).data().toString(), "12.4");
    EXPECT_EQ(desk.model().index(0, WalkModel::Dp).data(Qt::EditRole).toString(), "1.8 psi");
}

TEST(WalkPlace, aShareShowsOnWhichSideOfTheBandItLies) {
    DeskWindow desk;  // a band of 5 %
    const auto shown = [&](double ofTarget) {
        return text::ofTarget(quantity::Ratio::si(ofTarget), desk.project());
    };
    EXPECT_EQ(shown(0.95), "95.0");
    EXPECT_EQ(shown(0.9496), "94.96");
    EXPECT_EQ(shown(1.0504), "105.04");
    EXPECT_EQ(shown(1.0496), "105.0");
    EXPECT_EQ(shown(0.88), "88.0");
}

TEST(WalkPlace, aRepeatedReadingIsKeptBesideTheFirstAndTheMeanCounts) {
    DeskWindow desk;
    desk.enter("20.0");
    const base::Id branch = desk.project().branchTagged("B-01")->id;
    ASSERT_TRUE(desk.bridge().storeRepeat(branch, "22.0").ok());
    EXPECT_EQ(desk.model().index(0, WalkModel::Dp).data().toString(), "21.0 mean");
    EXPECT_EQ(desk.storedCount(), 2);
}

TEST(WalkPlace, undoAndRedoOfAWholeWalkGiveTheSameJob) {
    DeskWindow desk;
    const auto readings = support::walkReadings(desk.project());
    const auto before = support::recordsOf(desk.project());
    for (const std::string& reading : readings) {
        desk.enter(QString::fromStdString(reading));
        const QString label = desk.bridge().undoLabel();
        EXPECT_TRUE(label.contains(QString::fromStdString(reading))) << label.toStdString();
    }
    const auto after = support::recordsOf(desk.project());
    for (std::size_t i = readings.size(); i > 0; --i) {
        EXPECT_TRUE(desk.bridge().undoLabel().contains(QString::fromStdString(walkTag(static_cast<int>(i)))));
        ASSERT_TRUE(desk.bridge().undo().ok());
    }
    EXPECT_EQ(support::recordsOf(desk.project()), before);
    for (std::size_t i = 0; i < readings.size(); ++i) {
        ASSERT_TRUE(desk.bridge().redo().ok());
    }
    EXPECT_EQ(support::recordsOf(desk.project()), after);
}

TEST(WalkPlace, undoFromAnotherPlaceShowsWhatItChanged) {
    DeskWindow desk;
    desk.enter("20.0");
    desk.enter("21.0");
    desk.window.showPlace(MainWindow::Job);
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_EQ(desk.window.place(), MainWindow::Walk);
    EXPECT_EQ(desk.currentTag(), "B-02");
    desk.grid().goToRow(8, false);
    ASSERT_TRUE(desk.bridge().redo().ok());
    EXPECT_EQ(desk.currentTag(), "B-02");
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
    EXPECT_TRUE(desk.window.notice().contains("B-02")) << desk.window.notice().toStdString();
}

TEST(WalkPlace, aRoundIsClosedWhenEveryItemHasAValueOrAReason) {
    support::WalkJobOptions options;
    options.terminals = 3;
    DeskWindow desk(options);
    const auto readings = support::walkReadings(desk.project());
    desk.enter(QString::fromStdString(readings[0]));
    desk.enter("x");
    desk.key(Qt::Key_Return);  // B-03 is walked past
    desk.window.walk()->beginClosing();
    EXPECT_EQ(DeskWindow::dialogCount(), 0);
    desk.enter("no test points");
    QTest::qWait(0);
    desk.enter("locked room");
    QTest::qWait(0);
    const auto* button = qobject_cast<QPushButton*>(QApplication::focusWidget());
    ASSERT_NE(button, nullptr);
    EXPECT_TRUE(button->isEnabled());
    desk.key(Qt::Key_Space);
    EXPECT_EQ(desk.project().lastRound()->state, project::RoundState::Closed);
}

TEST(WalkGrid, leavesNoStripFreeBesideItsColumns) {
    DeskWindow desk;
    for (const double points : {10.0, 11.0, 12.0, 14.0, 15.0}) {
        desk.window.setTextPoints(points);
        QTest::qWait(0);
        EXPECT_EQ(desk.grid().horizontalHeader()->length(), desk.grid().viewport()->width()) << points;
        EXPECT_FALSE(desk.grid().isColumnHidden(WalkModel::Dp));
    }
}

TEST(WalkPlace, totalsAndClosingAreInSightInLargeText) {
    DeskWindow desk;
    desk.enter("20.0");
    desk.window.setTextPoints(15.0);  // 150 % on a laptop of 1366 x 768
    QTest::qWait(0);
    int seen = 0;
    for (const QWidget* widget : desk.window.walk()->findChildren<QWidget*>()) {
        const auto* button = qobject_cast<const QPushButton*>(widget);
        if (widget->accessibleName() == "Totals of the round" ||
            (button != nullptr && button->text().startsWith("Close Round") && button->isVisible())) {
            EXPECT_EQ(widget->visibleRegion().boundingRect(), widget->rect())
                << widget->accessibleName().toStdString();
            ++seen;
        }
    }
    EXPECT_EQ(seen, 2);
}

TEST(WalkPlace, aSettingIsWrittenInOneWayHoweverItWasTyped) {
    DeskWindow desk;
    const QModelIndex setting = desk.model().index(0, WalkModel::Setting);
    EXPECT_EQ(setting.data().toString(), "4.0") << "carried over from the survey, typed there as 4";
    desk.key(Qt::Key_Tab);
    desk.enter("3");
    desk.key(Qt::Key_Return, Qt::ShiftModifier);
    desk.enter("20.0");
    EXPECT_EQ(setting.data().toString(), "3.0");
    EXPECT_EQ(setting.data(Qt::EditRole).toString(), "3") << "what was typed keeps its digits";
    bool isInPanel = false;
    for (const QLabel* label : desk.window.walk()->findChildren<QLabel*>()) {
        isInPanel = isInPanel || label->text().contains("setting 4.0 of 4.0 turns, fully open");
    }
    EXPECT_TRUE(isInPanel) << "of B-02, which is in hand";
}

TEST(WalkPlace, cellsSpeakTagQuantityValueAndState) {
    DeskWindow desk;
    desk.enter("20.0");
    const QString spoken = desk.model().index(0, WalkModel::Dp).data(Qt::AccessibleTextRole).toString();
    for (const char* part : {"B-01", "DP", "kPa", "20.0", "percent of target"}) {
        EXPECT_TRUE(spoken.contains(part)) << spoken.toStdString();
    }
    EXPECT_TRUE(spoken.contains(desk.model().index(0, WalkModel::State).data().toString()))
        << spoken.toStdString();
}

TEST(WalkPlace, modelKeepsTheRulesOfModels) {
    DeskWindow desk;
    const QAbstractItemModelTester tester(&desk.model(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    desk.enter("20.0");
    ASSERT_TRUE(desk.bridge().undo().ok());
    desk.bridge().close();
    EXPECT_EQ(desk.model().rowCount(), 0);
}

TEST(WalkPlace, aReadingOfAThousandBranchesCostsLittleBesideTheDisk) {
    support::WalkJobOptions options;
    options.terminals = 1000;
    DeskWindow desk(options);
    QElapsedTimer timer;
    // What the screens do after a reading, without the disk: judge the round and repaint what changed.
    desk.enter("20.0");
    timer.start();
    constexpr int kTimes = 20;
    for (int i = 0; i < kTimes; ++i) {
        emit desk.bridge().changed(
            project::ChangeSet{{{project::RecordKind::Reading,
                                 desk.project().readings()[desk.project().readings().size() - 1].id}},
                               {}});
        QCoreApplication::processEvents();
    }
    const double repaint_ms = static_cast<double>(timer.nsecsElapsed()) / 1e6 / kTimes;
    timer.start();
    for (int i = 0; i < kTimes; ++i) {
        (void)balancing::assessLast(desk.project(), {.fillGaps = true});
    }
    const double assess_ms = static_cast<double>(timer.nsecsElapsed()) / 1e6 / kTimes;
    RecordProperty("repaint_ms", std::to_string(repaint_ms));
    RecordProperty("assess_ms", std::to_string(assess_ms));
    std::printf("repaint %.2f ms, assess %.2f ms at 1,000 terminals\n", repaint_ms, assess_ms);
    // Wide of the mark on purpose: a busy machine must not fail the build; the figure is printed.
    EXPECT_LT(repaint_ms, 50.0);
}

TEST(WalkPlace, theKeyLineNamesTheKeysOfThePanelThatIsOpen) {
    DeskWindow desk;
    EXPECT_TRUE(desk.keyLine().contains("next valve"));
    desk.window.walk()->beginClosing();
    QTest::qWait(0);  // the line follows what has the keys
    EXPECT_FALSE(desk.keyLine().contains("reason")) << "nothing is typed yet: " << desk.keyLine().toStdString();
    EXPECT_TRUE(desk.keyLine().contains("Esc back to the grid")) << desk.keyLine().toStdString();
    EXPECT_FALSE(desk.keyLine().contains("next valve"));
    desk.type("blocked");
    QTest::qWait(0);
    EXPECT_TRUE(desk.keyLine().contains("Enter stores the reason")) << desk.keyLine().toStdString();
}

TEST(WalkPlace, theKeyLineOffersOnlyWhatActs) {
    const auto says = [](const DeskWindow& desk, const char* words) {
        return desk.keyLine().contains(words);
    };
    DeskWindow fresh({.hasSurvey = false}, false);
    EXPECT_TRUE(says(fresh, "Ctrl+Shift+N opens round 1")) << fresh.keyLine().toStdString();
    EXPECT_FALSE(says(fresh, "digits")) << fresh.keyLine().toStdString();
    DeskWindow closed(support::WalkJobOptions{}, false);
    EXPECT_TRUE(says(closed, "opens the next round")) << closed.keyLine().toStdString();
    EXPECT_TRUE(says(closed, "correct the reading")) << closed.keyLine().toStdString();
    EXPECT_FALSE(says(closed, "cannot read")) << closed.keyLine().toStdString();
    DeskWindow open;
    EXPECT_TRUE(says(open, "next valve"));
    EXPECT_FALSE(says(open, "Ctrl+R")) << "nothing is read here yet: " << open.keyLine().toStdString();
    EXPECT_FALSE(says(open, "Ctrl+L")) << "no practice job: " << open.keyLine().toStdString();
    open.enter("20.0");
    open.key(Qt::Key_Return, Qt::ShiftModifier);
    EXPECT_TRUE(says(open, "Ctrl+R")) << open.keyLine().toStdString();
    EXPECT_TRUE(says(open, "Ctrl+Z"));
    open.bridge().close();
    EXPECT_TRUE(says(open, "Ctrl+O")) << open.keyLine().toStdString();
    EXPECT_FALSE(says(open, "Ctrl+Z") || says(open, "Ctrl+J")) << open.keyLine().toStdString();
}

TEST(WalkPlace, theKeyLineClosesTheRoundOnceNothingIsOpen) {
    DeskWindow desk({.terminals = 3});
    for (const std::string& reading : support::walkReadings(desk.project())) {
        desk.enter(QString::fromStdString(reading));
    }
    desk.window.walk()->beginClosing();
    QTest::qWait(0);
    EXPECT_TRUE(desk.keyLine().contains("Enter closes the round")) << desk.keyLine().toStdString();
    EXPECT_FALSE(desk.keyLine().contains("reason")) << desk.keyLine().toStdString();
}

TEST(WalkPlace, aNewRoundSaysHowManyReadingsAreCarriedOver) {
    DeskWindow desk;
    const auto isSaid = [&](const QString& words) {
        for (const QLabel* label : desk.window.walk()->findChildren<QLabel*>()) {
            if (label->accessibleName() == "Totals of the round" && label->text().contains(words)) {
                return true;
            }
        }
        return false;
    };
    EXPECT_TRUE(isSaid("24 of 24"));
    desk.enter("20.0");
    EXPECT_TRUE(isSaid("23 of 24"));
}

TEST(WalkPlace, convergenceStandsInPlaceOfTheGridWithItsTable) {
    DeskWindow desk;
    desk.window.walk()->toggleConvergence();
    auto* chart = desk.window.walk()->findChild<charts::ChartView*>();
    ASSERT_TRUE(chart->isVisible());
    EXPECT_FALSE(desk.grid().isVisible());
    EXPECT_FALSE(chart->figure().name.isEmpty());
    EXPECT_FALSE(chart->figure().sentence.isEmpty());
    EXPECT_EQ(chart->figure().tableRows.size(), 25U) << "the terminals and the spread";
    desk.window.walk()->toggleTable();
    EXPECT_TRUE(chart->isTableShown());
    desk.key(Qt::Key_Escape);
    EXPECT_TRUE(desk.grid().hasFocus());
}

}  // namespace
}  // namespace ww::ui
