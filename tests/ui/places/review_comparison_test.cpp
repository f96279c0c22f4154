// The comparison of two rounds on the place Review: what it shows of seeded changes, its order and its room.
// The source of these checks is the interaction design of this project.
#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QScrollArea>
#include <QScrollBar>

#include "tests/ui/support/seeded_rounds.h"
#include "ui/charts/chart_view.h"
#include "ui/places/review/review_place.h"
#include "ui/text/format.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

using support::SeededRounds;

/// The rows that the comparison has to show, one line each, without the column of states.
std::vector<std::string> expectedRows(SeededRounds& desk, bool isChangedOnly) {
    std::vector<std::string> rows;
    const auto add = [&](const QStringList& cells) { rows.push_back(cells.join(" | ").toStdString()); };
    for (int i = 1; i <= 12; ++i) {
        const std::string tag = support::walkTag(i);
        const SeededRounds::Seed& seed = desk.seedOf(tag);
        if (isChangedOnly && !seed.isChanged) {
            continue;
        }
        const QString survey = QString::fromStdString(desk.surveyDp(tag).digits.text());
        add({QString::fromStdString(tag), seed.setting, seed.dp.isEmpty() ? survey : seed.dp,
             SeededRounds::step(desk.ofTarget(tag, false), desk.ofTarget(tag, true)), seed.why,
             desk.whoOf(tag)});
        if (!seed.struckDp.isEmpty()) {
            add({"", "4.0", seed.struckDp, "", "lost a digit", desk.whoOf(tag)});
        }
    }
    return rows;
}

std::vector<std::string> shownRows(const TextTable& comparison) {
    std::vector<std::string> rows;
    for (int i = 0; i < comparison.rowCount(); ++i) {
        QStringList cells = comparison.row(i).cells;
        cells.removeAt(ReviewPlace::State);
        rows.push_back(cells.join(" | ").toStdString());
    }
    return rows;
}

TEST(ReviewPlace, comparesExactlyTheSeededFields) {
    SeededRounds desk;
    ReviewPlace& place = *desk.window.review();
    desk.window.showPlace(MainWindow::Review);
    QCoreApplication::processEvents();
    const TextTable& comparison = *place.comparison();
    EXPECT_EQ(shownRows(comparison), expectedRows(desk, true));
    for (int i = 0; i < comparison.rowCount(); ++i) {
        const QString tag = comparison.row(i).cells[ReviewPlace::Tag];
        const QString state = comparison.row(i).cells[ReviewPlace::State];
        EXPECT_EQ(state.endsWith("Doubtful"), tag == "B-11") << tag.toStdString();
        EXPECT_EQ(comparison.row(i).isStruck, tag.isEmpty()) << "only a correction is struck through";
        EXPECT_EQ(state == "was, corrected", tag.isEmpty()) << tag.toStdString();
    }
    place.findChild<QCheckBox*>()->setChecked(false);
    EXPECT_EQ(shownRows(comparison), expectedRows(desk, false));
    // A valve that cannot be read any more: its flow and with it every share are open.
    ASSERT_TRUE(desk.bridge().storeCannotBeRead(desk.branch("B-12"), "behind a wall").ok());
    QCoreApplication::processEvents();
    const QStringList unread = comparison.row(comparison.rowOf(desk.branch("B-12"))).cells;
    EXPECT_EQ(unread[ReviewPlace::Dp].toStdString(),
              desk.surveyDp("B-12").digits.text() + " → cannot be read");
    EXPECT_EQ(unread[ReviewPlace::Why], "corrected; behind a wall");
    EXPECT_EQ(unread[ReviewPlace::OfTarget], desk.ofTarget("B-12", false) + " → –");
}

TEST(ReviewPlace, reasonsTakeTheRoomThatWrappedReadingsLeave) {
    SeededRounds desk;
    ReviewPlace& place = *desk.window.review();
    desk.window.showPlace(MainWindow::Review);
    ASSERT_TRUE(desk.bridge().storeCannotBeRead(desk.branch("B-12"), "behind a wall, no access").ok());
    QCoreApplication::processEvents();
    const QTableView* table = nullptr;
    for (const QTableView* each : place.findChildren<QTableView*>()) {
        table = each->model() == place.comparison() ? each : table;
    }
    ASSERT_NE(table, nullptr);
    int widest = 0;
    for (int row = 0; row < place.comparison()->rowCount(); ++row) {
        const QString cell = place.comparison()->row(row).cells[ReviewPlace::Dp];
        widest = std::max(widest, table->fontMetrics().horizontalAdvance(cell));
    }
    ASSERT_LT(table->columnWidth(ReviewPlace::Dp), widest) << "readings are wrapped";
    EXPECT_GE(table->columnWidth(ReviewPlace::Why), table->columnWidth(ReviewPlace::Dp));
}

TEST(ReviewPlace, aStateIsWrittenAsItWasAndAsItIs) {
    SeededRounds desk;
    ReviewPlace& place = *desk.window.review();
    desk.window.showPlace(MainWindow::Review);
    QCoreApplication::processEvents();
    place.findChild<QCheckBox*>()->setChecked(false);
    const balancing::Assessment before = balancing::assess(desk.project(), desk.project().rounds()[0].id);
    const balancing::Assessment after = balancing::assess(desk.project(), desk.project().lastRound()->id);
    int changed = 0;
    for (int i = 0; i < place.comparison()->rowCount(); ++i) {
        const TextRow& row = place.comparison()->row(i);
        if (row.isStruck) {
            continue;
        }
        const std::size_t index = desk.project().branches().indexOf(*row.id);
        const project::Branch& branch = desk.project().branches()[index];
        const QString words =
            SeededRounds::step(text::word(before.branches[index]), text::word(after.branches[index]));
        QString shown = row.cells[ReviewPlace::State];
        shown.replace(QChar(QChar::Nbsp), ' ');
        EXPECT_EQ(shown.toStdString(), words.toStdString()) << branch.tag;
        EXPECT_EQ(row.state, static_cast<int>(after.branches[index].state)) << "the later one's shape";
        changed += words.contains("→") ? 1 : 0;
    }
    EXPECT_GT(changed, 0) << "B-11 was marked doubtful";
}

TEST(ReviewPlace, saysHowManyReadingsChanged) {
    SeededRounds desk;
    ReviewPlace& place = *desk.window.review();
    desk.window.showPlace(MainWindow::Review);
    QCoreApplication::processEvents();
    QStringList said;
    for (const QLabel* label : place.findChildren<QLabel*>()) {
        said << label->text();
    }
    EXPECT_TRUE(said.contains("9 of 12 readings changed")) << said.join('\n').toStdString();
}

TEST(ReviewPlace, tellsHowTheRoundInHandWasRead) {
    SeededRounds desk;
    ReviewPlace& place = *desk.window.review();
    desk.window.showPlace(MainWindow::Review);
    QCoreApplication::processEvents();
    const auto* facts = support::named<QLabel>(place, "How the round was read");
    ASSERT_NE(facts, nullptr);
    // Doubtful: one is marked, two have a reason; one slip was corrected.
    EXPECT_EQ(facts->text().toStdString(), "Round 2, by A. Fields, meter M-1, M-2, 3 doubtful, 1 corrected");
    EXPECT_EQ(facts->visibleRegion().boundingRect(), facts->rect()) << "in sight";
    place.showRound(desk.project().rounds()[0].id);
    EXPECT_TRUE(facts->text().startsWith("Round 1, ")) << facts->text().toStdString();
}

TEST(ReviewPlace, aCommentOnARoundAsAWholeIsFoundToo) {
    SeededRounds desk;
    balancing::CommentPlace whole;
    whole.round = desk.project().rounds()[0].id;
    ASSERT_TRUE(desk.bridge()
                    .apply(balancing::addComment(desk.project(), whole, "Which meter?",
                                                 desk.bridge().reviewContext()))
                    .ok());
    project::Round closed = *desk.project().lastRound();
    closed.state = project::RoundState::Closed;
    ASSERT_TRUE(desk.bridge().apply({"close", {closed}, {}, true}).ok());
    const auto* places = desk.window.findChild<QListWidget*>("side_list");
    ASSERT_NE(places, nullptr);
    EXPECT_EQ(places->item(MainWindow::Review)->text(), "6  Review 1");
    desk.window.commands().nextOpen->trigger();
    EXPECT_EQ(desk.window.place(), MainWindow::Review);
    EXPECT_EQ(desk.window.review()->round(), desk.project().rounds()[0].id);
    EXPECT_TRUE(desk.window.notice().contains("Which meter?")) << desk.window.notice().toStdString();
    const base::Id comment = desk.project().comments()[0].id;
    ASSERT_TRUE(
        desk.bridge()
            .apply(balancing::resolveComment(desk.project(), comment, true, desk.bridge().reviewContext()))
            .ok());
    EXPECT_EQ(places->item(MainWindow::Review)->text(), "6  Review") << "nothing waits any more";
}

TEST(ReviewPlace, aSettingBeforeAndAfterStandsOnOneLine) {
    SeededRounds desk;
    ReviewPlace& place = *desk.window.review();
    desk.window.showPlace(MainWindow::Review);
    QTest::qWait(20);
    const auto* table = support::named<QTableView>(place, "Two rounds compared");
    ASSERT_NE(table, nullptr);
    for (int row = 0; row < table->model()->rowCount(); ++row) {
        const QString words = table->model()->index(row, ReviewPlace::Setting).data().toString();
        EXPECT_GT(table->columnWidth(ReviewPlace::Setting), table->fontMetrics().horizontalAdvance(words))
            << words.toStdString();
    }
}

TEST(ReviewPlace, aTimeOfAnotherDayThanTheRoundsHasItsDate) {
    SeededRounds desk;
    ReviewPlace& place = *desk.window.review();
    desk.window.showPlace(MainWindow::Review);
    QCoreApplication::processEvents();
    desk.clock.advance(std::chrono::hours(24));
    ASSERT_TRUE(desk.bridge().storeDp(desk.branch("B-03"), "33.3").ok());
    QCoreApplication::processEvents();
    const TextTable& comparison = *place.comparison();
    const auto whoOf = [&](const char* tag) {
        return comparison.row(comparison.rowOf(desk.branch(tag))).cells[ReviewPlace::Who].toStdString();
    };
    EXPECT_EQ(whoOf("B-03"), "A. Fields 2026-03-03 10:12");
    EXPECT_EQ(whoOf("B-02"), desk.whoOf("B-02").toStdString()) << "of the round's own day: the time alone";
    const auto* rounds = support::named<QTableView>(place, "Rounds");
    ASSERT_NE(rounds, nullptr);
    const int last = rounds->model()->rowCount() - 1;
    EXPECT_EQ(rounds->model()->index(last, 1).data().toString().toStdString(), "open\n2026-03-02")
        << "the day on which its walk began";
}

/// Rows that stand whole between the head of the table and its lower edge.
int rowsInSight(const QTableView& table) {
    int count = 0;
    for (int row = 0; row < table.model()->rowCount(); ++row) {
        const QRect cell = table.visualRect(table.model()->index(row, 0));
        count += !cell.isEmpty() && table.viewport()->rect().contains(cell) ? 1 : 0;
    }
    return count;
}

TEST(ReviewPlace, nineRowsAreInSightOnTheSmallestScreenInDaylight) {
    SeededRounds desk;
    desk.window.setDisplay(theme::Display::Daylight);
    ReviewPlace& place = *desk.window.review();
    desk.window.showPlace(MainWindow::Review);
    place.findChild<QCheckBox*>()->setChecked(false);
    QTest::qWait(50);
    ASSERT_EQ(desk.window.size(), QSize(1366, 694)) << "of a screen of 1366 by 768";
    ASSERT_GE(place.comparison()->rowCount(), 12);
    EXPECT_GE(rowsInSight(*place.table()), 9) << "of two lines each";
    EXPECT_EQ(place.table()->verticalScrollBar()->value(), 0);
}

TEST(ReviewPlace, theChartStandsBesideTheComparisonAndComesWithItsKey) {
    SeededRounds desk;
    ReviewPlace& place = *desk.window.review();
    desk.window.showPlace(MainWindow::Review);
    QCoreApplication::processEvents();
    auto* chart = place.findChild<charts::ChartView*>();
    ASSERT_NE(chart, nullptr);
    EXPECT_TRUE(place.table()->isVisible());
    EXPECT_FALSE(chart->isVisible());
    desk.window.commands().tableTwin->trigger();
    EXPECT_TRUE(chart->isVisible());
    desk.window.commands().tableTwin->trigger();
    QTest::qWait(20);
    const QScrollArea* area = nullptr;
    for (const QWidget* up = place.parentWidget(); area == nullptr; up = up->parentWidget()) {
        ASSERT_NE(up, nullptr);
        area = qobject_cast<const QScrollArea*>(up);
    }
    EXPECT_EQ(area->verticalScrollBar()->maximum(), 0) << "nothing is scrolled away for it";
    place.takeFocus();
    EXPECT_TRUE(chart->isAncestorOf(QApplication::focusWidget()));
    // What is asked of the comparison brings it back.
    place.showBranch(desk.branch("B-05"));
    EXPECT_TRUE(place.table()->isVisible());
    EXPECT_FALSE(chart->isVisible());
}

/// Tags of the rows in order; a correction has none.
QStringList tagsOf(const TextTable& comparison) {
    QStringList tags;
    for (int row = 0; row < comparison.rowCount(); ++row) {
        tags << comparison.row(row).cells[ReviewPlace::Tag];
    }
    return tags;
}

void choose(QComboBox& combo, int index) {
    combo.setCurrentIndex(index);
    emit combo.activated(index);
}

TEST(ReviewPlace, theComparisonIsPutInAnotherOrderAndKeepsTheBranchInHand) {
    SeededRounds desk;
    ReviewPlace& place = *desk.window.review();
    desk.window.showPlace(MainWindow::Review);
    QCoreApplication::processEvents();
    place.findChild<QCheckBox*>()->setChecked(false);
    const TextTable& comparison = *place.comparison();
    const QStringList route = tagsOf(comparison);
    const std::vector<std::string> along = shownRows(comparison);
    QComboBox* order = support::named<QComboBox>(place, "Order of the comparison");
    ASSERT_NE(order, nullptr);
    EXPECT_NE(order->focusPolicy() & Qt::TabFocus, 0) << "it is reached without a mouse";
    place.showBranch(desk.branch("B-05"));
    choose(*order, 1);
    double before = 1000;
    for (const QString& tag : tagsOf(comparison)) {
        if (tag.isEmpty()) {
            continue;
        }
        const double far = std::abs(desk.ofTarget(tag.toStdString(), true).toDouble() - 100);
        EXPECT_LE(far, before + 0.101) << tag.toStdString();  // each as rounded on screen
        before = far;
    }
    EXPECT_NE(tagsOf(comparison), route);
    const int slip = comparison.rowOf(desk.branch("B-10"));
    EXPECT_TRUE(comparison.row(slip + 1).isStruck) << "a correction stays below its branch";
    EXPECT_EQ(comparison.row(place.table()->currentIndex().row()).id, desk.branch("B-05"));
    EXPECT_EQ(desk.bridge().selectedBranch(), desk.branch("B-05"));
    choose(*order, 2);
    before = 1000;
    for (const QString& tag : tagsOf(comparison)) {
        if (!tag.isEmpty()) {
            const double change = std::abs(desk.ofTarget(tag.toStdString(), true).toDouble() -
                                           desk.ofTarget(tag.toStdString(), false).toDouble());
            EXPECT_LE(change, before + 0.21) << tag.toStdString();
            before = change;
        }
    }
    choose(*order, 0);
    EXPECT_EQ(shownRows(comparison), along);
    // Another job begins along its route.
    choose(*order, 2);
    const std::string other = desk.folder.file("other.wwj");
    ASSERT_TRUE(desk.bridge().create(QString::fromStdString(other), support::walkJob({.terminals = 4})).ok());
    EXPECT_EQ(order->currentIndex(), 0);
}

}  // namespace
}  // namespace ww::ui
