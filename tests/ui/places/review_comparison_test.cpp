// The comparison of two rounds on the place Review: what it shows of seeded changes, its order and its room.
// The source of these checks is the interaction design of this project.
#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QScrollArea>
#include <QScrollBar>
#include <cmath>
#include <map>

#include "tests/ui/support/desk_window.h"
#include "ui/charts/chart_view.h"
#include "ui/places/review/review_place.h"
#include "ui/text/format.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

/// A second round of twelve valves with one thing changed at each of nine, and what Compare has to show of
/// it.
class SeededRounds : public DeskWindow {
  public:
    /// What Compare says of a branch where something was seeded.
    struct Seed {
        QString setting = "4.0";
        QString dp = {};  ///< empty: as in the survey
        QString why = {};
        double kv = 5.2;                    ///< of the valve table, at the setting that it stands at
        std::optional<double> dp_kPa = {};  ///< nothing: as in the survey
        QString struckDp = {};              ///< in the row below it; empty: there is none
        bool isChanged = true;
    };

    SeededRounds() : DeskWindow({.terminals = 12}) {
        project::Instrument meter = project().instruments()[0];
        m_usual = meter.id;
        meter.id = bridge().newId();
        meter.tag = "M-2";
        EXPECT_TRUE(bridge().apply({"meter", {meter}, {}, true}).ok());
        m_other = meter.id;
        for (int i = 1; i <= 12; ++i) {
            clock.advance(std::chrono::minutes(1));
            seed(support::walkTag(i));
            m_times[support::walkTag(i)] = QString::fromStdString(clock.now().timeOfDay()).left(5);
        }
    }

    const Seed& seedOf(const std::string& tag) { return m_seeds[tag]; }
    QString whoOf(const std::string& tag) { return "A. Fields " + m_times[tag]; }
    /// What a cell of Compare says of one value that became another.
    static QString step(const QString& before, const QString& after) {
        return before == after ? after : before + " → " + after;
    }
    base::Id branch(const std::string& tag) { return project().branchTagged(tag)->id; }
    const quantity::Measured<quantity::PressureDifference>& surveyDp(const std::string& tag) {
        return *balancing::countingReading(project(), project().rounds()[0].id, branch(tag))->dp;
    }
    /// Percent of target from the valve table and the digits alone: flows are Kv sqrt(dp), shares and target
    /// shares those of the terminals that were read.
    QString ofTarget(const std::string& tag, bool isAfter) {
        double flows = 0;
        double designs = 0;
        double ratio = 0;
        for (int i = 1; i <= 12; ++i) {
            const std::string other = support::walkTag(i);
            const Seed& seed = seedOf(other);
            const double dp_kPa = isAfter && seed.dp_kPa ? *seed.dp_kPa : surveyDp(other).digits.value();
            const double flow = (isAfter ? seed.kv : 5.2) * std::sqrt(dp_kPa);
            const double design = project().branchTagged(other)->designFlow->digits.value();
            flows += flow;
            designs += design;
            ratio = other == tag ? flow / design : ratio;
        }
        return QString::number(100 * ratio * designs / flows, 'f', 1);
    }

  private:
    void store(const std::string& tag, const std::string& typed) {
        EXPECT_TRUE(bridge().storeDp(branch(tag), QString::fromStdString(typed)).ok()) << tag;
    }
    const project::Reading& counting(const std::string& tag) {
        return *balancing::countingReading(project(), project().lastRound()->id, branch(tag));
    }
    static std::string times(double factor, const std::string& digits) {
        return base::Decimal::fromNumber(factor * std::stod(digits), 1).text();
    }
    /// Reads one valve of the second round. B-01, B-07 and B-12 read as in the survey.
    void seed(const std::string& tag) {
        const std::string digits = surveyDp(tag).digits.text();
        if (tag == "B-02") {
            seedSetting(tag);
        } else if (tag == "B-03") {
            // Makes up for the flow that B-02 lost, so that no state of another valve follows.
            const std::string other = times(1.7, digits);
            store(tag, other);
            m_seeds[tag] = {.dp = QString::fromStdString(digits + " → " + other), .dp_kPa = std::stod(other)};
        } else if (tag == "B-05") {
            bridge().setInstrument(m_other);
            store(tag, digits);
            bridge().setInstrument(m_usual);
            m_seeds[tag] = {.why = "meter M-1 → M-2"};
        } else if (tag == "B-06") {
            seedUnit(tag);
        } else if (tag == "B-10") {
            seedSlip(tag);
        } else {
            store(tag, digits);
            seedWords(tag);
        }
    }
    /// Another setting with the same dp, as a try is stored.
    void seedSetting(const std::string& tag) {
        project::Reading reading =
            *balancing::countingReading(project(), project().rounds()[0].id, branch(tag));
        reading.id = bridge().newId();
        reading.round = project().lastRound()->id;
        reading.sequence = 900;
        reading.time = clock.now();
        reading.person = bridge().person();
        reading.setting = *base::Decimal::parse("3");
        EXPECT_TRUE(bridge().apply({"try", {reading}, {}, true}).ok());
        m_seeds[tag] = {.setting = "4.0 → 3.0", .why = "adjusted", .kv = 4.1};
    }
    /// What stands beside the digits: a note, a mark, a reason.
    void seedWords(const std::string& tag) {
        if (tag == "B-08") {
            // Doubtful in the survey, as it stands out there; the same reading again confirms it.
            m_seeds[tag] = {};
        } else if (tag == "B-04") {
            EXPECT_TRUE(bridge().setNote(branch(tag), "lagging off").ok());
            m_seeds[tag] = {.why = "lagging off"};
        } else if (tag == "B-11") {
            EXPECT_TRUE(bridge().toggleDoubtful(branch(tag)).ok());
            m_seeds[tag] = {};
        } else if (tag == "B-09") {
            EXPECT_TRUE(bridge().giveReason(counting(tag).id, "read twice").ok());
            m_seeds[tag] = {.why = "read twice"};
        } else {
            m_seeds[tag] = {.isChanged = false};
        }
    }
    /// The same pressure, near enough, but typed in another unit.
    void seedUnit(const std::string& tag) {
        const std::string psi = base::Decimal::fromNumber(surveyDp(tag).digits.value() / 6.894757, 2).text();
        store(tag, psi + "p");
        m_seeds[tag] = {
            .dp = QString::fromStdString(surveyDp(tag).digits.text() + " → " + psi) + QChar(0xA0) + "psi",
            .dp_kPa = std::stod(psi) * 6.894757};
    }
    /// A slip in the second round that was corrected to what the survey read, with the reason.
    void seedSlip(const std::string& tag) {
        const std::string digits = surveyDp(tag).digits.text();
        const std::string slip = times(1.05, digits);
        store(tag, slip);
        store(tag, digits);
        EXPECT_TRUE(bridge().giveReason(counting(tag).id, "lost a digit").ok());
        m_seeds[tag] = {.why = "corrected; lost a digit", .struckDp = QString::fromStdString(slip)};
    }

    base::Id m_usual;
    base::Id m_other;
    std::map<std::string, QString> m_times;
    std::map<std::string, Seed> m_seeds;
};

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
            add({"", "4.0", seed.struckDp, "", "", desk.whoOf(tag)});
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
    const QTableView* rounds = nullptr;
    for (const QTableView* table : place.findChildren<QTableView*>()) {
        rounds = table->accessibleName() == "Rounds" ? table : rounds;
    }
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

QComboBox* orderOf(const ReviewPlace& place) {
    for (QComboBox* combo : place.findChildren<QComboBox*>()) {
        if (combo->accessibleName() == "Order of the comparison") {
            return combo;
        }
    }
    return nullptr;
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
    QComboBox* order = orderOf(place);
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
