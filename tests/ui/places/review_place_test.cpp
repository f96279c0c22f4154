// The place Review and its comments. The source of these checks is the
// interaction design of this project.
#include "ui/places/review/review_place.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <cmath>
#include <map>

#include "core/balancing/walk_forms.h"
#include "core/project/review.h"
#include "tests/support/full_disk.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/pump_rig.h"
#include "ui/charts/chart_view.h"
#include "ui/text/format.h"

namespace ww::ui {
namespace {

using project::RoundState;
using support::DeskWindow;

/// A desk whose second round was read, closed and sent, and a supervisor in the job.
class ReviewDesk : public DeskWindow {
  public:
    explicit ReviewDesk(bool isSent = true) : DeskWindow({.terminals = 6}) {
        project::Person boss;
        boss.id = bridge().newId();
        boss.name = "K. Moor";
        boss.role = project::PersonRole::Supervisor;
        EXPECT_TRUE(bridge().apply({"supervisor", {boss}, {}, true}).ok());
        m_boss = boss.id;
        int index = 0;
        for (const project::Reading& reading :
             std::vector<project::Reading>(project().readings().begin(), project().readings().end())) {
            // Two valves read otherwise than in the survey, the rest digit for digit the same.
            const bool isChanged = index == 1 || index == 4;
            const double dp = reading.dp->digits.value() * (isChanged ? 1.1 : 1.0);
            const std::string digits =
                isChanged ? base::Decimal::fromNumber(dp, 1).text() : reading.dp->digits.text();
            EXPECT_TRUE(bridge().storeDp(reading.branch, QString::fromStdString(digits)).ok());
            ++index;
        }
        EXPECT_TRUE(bridge().closeRound().ok());
        if (isSent) {
            send();
        }
    }
    void send() {
        actAs(false);
        const auto edit =
            balancing::sendRound(project(), project().lastRound()->id, bridge().reviewContext());
        ASSERT_TRUE(edit.ok());
        ASSERT_TRUE(bridge().apply(*edit).ok());
    }
    void actAs(bool isSupervisor) {
        bridge().setPerson(isSupervisor ? std::optional(m_boss) : std::optional(project().people()[0].id));
    }
    ReviewPlace& review() {
        window.showPlace(MainWindow::Review);
        QCoreApplication::processEvents();
        return *window.findChild<ReviewPlace*>();
    }
    QPushButton* button(const QString& text) {
        for (QPushButton* found : window.findChildren<QPushButton*>()) {
            if (found->text() == text && found->isVisible()) {
                return found;
            }
        }
        ADD_FAILURE() << "no button " << text.toStdString();
        return nullptr;
    }
    RoundState state() { return project().lastRound()->state; }
    base::Id branch(const std::string& tag) { return project().branchTagged(tag)->id; }
    void comment(const std::string& tag, const QString& text) {
        ReviewPlace& place = review();
        place.showBranch(branch(tag));
        key(Qt::Key_C, Qt::ControlModifier | Qt::AltModifier);
        type(text);
        key(Qt::Key_Return);
    }

  private:
    base::Id m_boss;
};

TEST(ReviewPlace, sendBackWaitsForACommentAndTheTechnicianFindsItAtItsCell) {
    ReviewDesk desk;
    desk.actAs(true);
    desk.review();
    QPushButton* sendBack = desk.button("Send Back");
    EXPECT_FALSE(sendBack->isEnabled());
    EXPECT_FALSE(sendBack->accessibleDescription().isEmpty()) << "it says what it waits for";
    desk.comment("B-05", "Meter zeroed?");
    ASSERT_EQ(desk.project().comments().size(), 1U);
    EXPECT_EQ(desk.project().comments()[0].branch, desk.branch("B-05"));
    EXPECT_EQ(desk.project().comments()[0].field, "dp");
    EXPECT_EQ(desk.project().comments()[0].person, "K. Moor");
    EXPECT_TRUE(sendBack->isEnabled());
    sendBack->click();
    EXPECT_EQ(desk.state(), RoundState::SentBack);
    EXPECT_EQ(desk.project().lastRound()->decidedBy, "K. Moor");

    // The technician opens a copy of it on his own laptop.
    const QString copy = QString::fromStdString(desk.folder.file("back.wwj"));
    ASSERT_TRUE(desk.bridge().saveCopy(copy).ok());
    MainWindow technician(Desk{desk.clock, desk.ids, "A. Fields", "LT-2"}, desk.preferences);
    technician.resize(1366, 694);
    technician.show();
    technician.activateWindow();
    ASSERT_TRUE(technician.openFile(copy));
    technician.showPlace(MainWindow::Walk);
    QTest::qWait(0);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(technician.bridge().selectedBranch(), desk.branch("B-05"));
    EXPECT_TRUE(technician.notice().contains("Meter zeroed?")) << technician.notice().toStdString();
    WalkModel& model = *technician.walk()->model();
    const int row = model.rowOf(desk.branch("B-05"));
    EXPECT_TRUE(model.index(row, WalkModel::Dp)
                    .data(Qt::AccessibleTextRole)
                    .toString()
                    .contains("comment: Meter zeroed?"));
    EXPECT_TRUE(model.index(row, WalkModel::Route).data().toString().endsWith("!"));
    // He reads the valve again: a correction, the old value stays.
    EXPECT_TRUE(technician.bridge().storeDp(desk.branch("B-05"), "33.3").ok());
    EXPECT_FALSE(technician.bridge().storeDp(desk.branch("B-05"), "not a number").ok());
}

TEST(ReviewPlace, onlyASupervisorAcceptsAndWithdrawingNeedsAReason) {
    ReviewDesk desk;
    desk.review();
    desk.actAs(false);
    desk.button("Accept Round")->click();
    EXPECT_EQ(desk.state(), RoundState::Sent) << "the sender does not accept";
    desk.actAs(true);
    desk.button("Accept Round")->click();
    EXPECT_EQ(desk.state(), RoundState::Accepted);
    const base::Outcome refused = desk.bridge().storeDp(desk.branch("B-01"), "20");
    ASSERT_FALSE(refused.ok());
    EXPECT_TRUE(refused.fault().is(balancing::kRoundAccepted));
    EXPECT_FALSE(desk.bridge().undoLabel().contains("accept"));
    QPushButton* withdraw = desk.button("Withdraw");
    EXPECT_FALSE(withdraw->isEnabled());
    auto* reason = desk.window.findChild<DecisionPanel*>()->findChild<QLineEdit*>();
    reason->setText("wrong meter");
    EXPECT_TRUE(withdraw->isEnabled());
    withdraw->click();
    EXPECT_EQ(desk.state(), RoundState::Sent);
    EXPECT_EQ(desk.project().lastRound()->reason, "wrong meter");
}

TEST(ReviewPlace, comparesExactlyTheChangedRowsAndStrikesCorrections) {
    ReviewDesk desk(false);
    desk.send();
    ReviewPlace& place = desk.review();
    const auto tags = [&] {
        QStringList tags;
        for (int row = 0; row < place.comparison()->rowCount(); ++row) {
            tags << place.comparison()->row(row).cells.value(ReviewPlace::Tag);
        }
        return tags;
    };
    // A state may follow from another valve's reading; digits are what was seeded.
    QStringList changedDps;
    for (int row = 0; row < place.comparison()->rowCount(); ++row) {
        if (place.comparison()->row(row).cells.value(ReviewPlace::Dp).contains("→")) {
            changedDps << place.comparison()->row(row).cells.value(ReviewPlace::Tag);
        }
    }
    EXPECT_EQ(changedDps, (QStringList{"B-02", "B-05"}));
    place.findChild<QCheckBox*>()->setChecked(false);
    EXPECT_EQ(tags().size(), 6);
    // A correction in the sent-back round: the old value struck through, with who, when and why.
    desk.actAs(true);
    desk.comment("B-02", "Once more, please");
    desk.button("Send Back")->click();
    desk.actAs(false);
    const std::string old = desk.stored("B-02");
    ASSERT_TRUE(desk.bridge().storeDp(desk.branch("B-02"), "31.7").ok());
    QCoreApplication::processEvents();
    const int row = place.comparison()->rowOf(desk.branch("B-02"));
    const TextRow struck = place.comparison()->row(row + 1);
    EXPECT_TRUE(struck.isStruck);
    EXPECT_TRUE(struck.cells.value(ReviewPlace::Dp).startsWith(QString::fromStdString(old).left(4)));
    EXPECT_TRUE(struck.cells.value(ReviewPlace::Who).contains("A. Fields"));
    EXPECT_TRUE(place.comparison()->row(row).cells.value(ReviewPlace::Why).contains("corrected"));
    const QVariant font = place.comparison()->index(row + 1, ReviewPlace::Dp).data(Qt::FontRole);
    EXPECT_TRUE(font.value<QFont>().strikeOut());
    const QAbstractItemModelTester tester(place.comparison());
}

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
            m_seeds[tag] = {.dp = QString::fromStdString(digits + " → " + other) + QChar(0xA0) + "kPa",
                            .dp_kPa = std::stod(other)};
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
        m_seeds[tag] = {.dp = text::entered(std::optional(surveyDp(tag))) + " → " +
                              QString::fromStdString(psi) + QChar(0xA0) + "psi",
                        .dp_kPa = std::stod(psi) * 6.894757};
    }
    /// A slip in the second round that was corrected to what the survey read, with the reason.
    void seedSlip(const std::string& tag) {
        const std::string digits = surveyDp(tag).digits.text();
        const std::string slip = times(1.05, digits);
        store(tag, slip);
        store(tag, digits);
        EXPECT_TRUE(bridge().giveReason(counting(tag).id, "lost a digit").ok());
        m_seeds[tag] = {.why = "corrected; lost a digit",
                        .struckDp = QString::fromStdString(slip) + QChar(0xA0) + "kPa"};
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
        const QString survey = text::entered(std::optional(desk.surveyDp(tag)));
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
        EXPECT_EQ(state == "Doubtful", tag == "B-11") << tag.toStdString();
        EXPECT_EQ(comparison.row(i).isStruck, tag.isEmpty()) << "only a correction is struck through";
        EXPECT_EQ(state == "was, corrected", tag.isEmpty()) << tag.toStdString();
    }
    place.findChild<QCheckBox*>()->setChecked(false);
    EXPECT_EQ(shownRows(comparison), expectedRows(desk, false));
    // A valve that cannot be read any more: its flow and with it every share are open.
    ASSERT_TRUE(desk.bridge().storeCannotBeRead(desk.branch("B-12"), "behind a wall").ok());
    QCoreApplication::processEvents();
    const QStringList unread = comparison.row(comparison.rowOf(desk.branch("B-12"))).cells;
    EXPECT_EQ(unread[ReviewPlace::Dp],
              text::entered(std::optional(desk.surveyDp("B-12"))) + " → cannot be read");
    EXPECT_EQ(unread[ReviewPlace::Why], "corrected; behind a wall");
    EXPECT_EQ(unread[ReviewPlace::OfTarget], desk.ofTarget("B-12", false) + " → –");
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

TEST(ReviewPlace, ofManyRowsTheLongestTagStandsWhole) {
    DeskWindow desk({.terminals = 400, .adjustingRounds = 1}, false);
    project::Branch named = *desk.project().branchTagged("B-350");
    named.tag = "B-350 N";
    ASSERT_TRUE(desk.bridge().apply({"tag", {named}, {}, true}).ok());
    desk.window.showPlace(MainWindow::Review);
    QCoreApplication::processEvents();
    const ReviewPlace& place = *desk.window.review();
    ASSERT_GT(place.comparison()->rowOf(named.id), 200) << "beyond the rows that others are measured by";
    EXPECT_GT(place.table()->columnWidth(ReviewPlace::Tag),
              place.table()->fontMetrics().horizontalAdvance("B-350 N"));
}

TEST(ReviewPlace, aRoundByItselfIsNotCompared) {
    DeskWindow desk({.terminals = 6});
    desk.window.showPlace(MainWindow::Review);
    QCoreApplication::processEvents();
    auto* place = desk.window.findChild<ReviewPlace*>();
    place->showRound(desk.project().rounds()[0].id);
    EXPECT_EQ(place->comparison()->rowCount(), 0);
    EXPECT_TRUE(support::textsOf(*place).contains("nothing to compare"));
    place->findChild<QCheckBox*>()->setChecked(false);
    EXPECT_EQ(place->comparison()->rowCount(), 6) << "its readings can still be seen and commented on";
}

TEST(ReviewPlace, tagsStandWhole) {
    ReviewDesk desk;
    ReviewPlace& place = desk.review();
    place.findChild<QCheckBox*>()->setChecked(false);
    QCoreApplication::processEvents();
    const QString tag = place.comparison()->row(0).cells.value(ReviewPlace::Tag);
    EXPECT_GT(place.table()->columnWidth(ReviewPlace::Tag),
              place.table()->fontMetrics().horizontalAdvance(tag));
}

TEST(ReviewPlace, aRoundIsSentAndAcceptedFromTheMenuAndWithdrawnNotUndone) {
    ReviewDesk desk(false);
    desk.actAs(false);
    desk.window.showPlace(MainWindow::Walk);
    const Commands& commands = desk.window.commands();
    EXPECT_TRUE(commands.sendRound->isEnabled());
    EXPECT_FALSE(commands.acceptRound->isEnabled());
    commands.sendRound->trigger();
    EXPECT_EQ(desk.state(), RoundState::Sent);
    EXPECT_EQ(desk.window.place(), MainWindow::Review) << "where it can be seen";
    EXPECT_FALSE(commands.sendRound->isEnabled());
    ASSERT_TRUE(commands.undo->isEnabled()) << "it has something to say";
    commands.undo->trigger();
    EXPECT_EQ(desk.state(), RoundState::Sent);
    EXPECT_TRUE(desk.window.notice().contains("withdraw")) << desk.window.notice().toStdString();
    commands.acceptRound->trigger();
    EXPECT_TRUE(desk.window.notice().contains("K. Moor"))
        << "who may: " << desk.window.notice().toStdString();
    desk.actAs(true);
    commands.acceptRound->trigger();
    EXPECT_EQ(desk.state(), RoundState::Accepted);
    EXPECT_FALSE(commands.acceptRound->isEnabled());
}

TEST(ReviewPlace, commentsAreAnsweredAndResolved) {
    ReviewDesk desk;
    desk.actAs(true);
    desk.comment("B-03", "Which meter?");
    auto* panel = desk.window.findChild<CommentPanel*>();
    auto* field = panel->findChild<QLineEdit*>();
    desk.actAs(false);
    field->setText("M-1, as before");
    desk.button("Answer")->click();
    ASSERT_EQ(desk.project().comments().size(), 2U);
    EXPECT_EQ(desk.project().comments()[1].answers, desk.project().comments()[0].id);
    EXPECT_EQ(desk.project().comments()[1].person, "A. Fields");
    EXPECT_TRUE(panel->list()->item(0)->text().contains("M-1, as before"));
    desk.actAs(true);
    desk.button("Resolve")->click();
    EXPECT_TRUE(desk.project().comments()[0].isResolved);
    EXPECT_EQ(desk.project().comments()[0].resolvedBy, "K. Moor");
    EXPECT_TRUE(project::openComments(desk.project(), desk.project().lastRound()->id).empty());
    EXPECT_TRUE(desk.bridge().undo().ok());
    EXPECT_FALSE(desk.project().comments()[0].isResolved) << "a review action is undone as any other";
}

TEST(Review, showsHowTheSharesCameTogether) {
    DeskWindow desk({.terminals = 6});
    desk.window.showPlace(MainWindow::Review);
    auto* place = desk.window.findChild<ReviewPlace*>();
    auto* chart = place->findChild<charts::ChartView*>();
    ASSERT_NE(chart, nullptr);
    EXPECT_FALSE(chart->figure().isEmpty());
    EXPECT_EQ(chart->figure().tableHeads.size(), 3) << "tag and two rounds";
    const bool wasTable = chart->isTableShown();
    desk.window.commands().tableTwin->trigger();
    EXPECT_NE(chart->isTableShown(), wasTable);
    bool isSaid = false;
    for (const QLabel* label : place->findChildren<QLabel*>()) {
        isSaid = isSaid || label->text().startsWith("Spread, %: R1 ");
    }
    EXPECT_TRUE(isSaid);
}

// A full disk stands for any file that takes nothing more.
TEST(Desk, whatCouldNotBeStoredGoesAlongWhenACopyIsSavedElsewhere) {
    DeskWindow desk({.terminals = 6});
    const base::Id first = desk.project().branchTagged("B-01")->id;
    const base::Id second = desk.project().branchTagged("B-02")->id;
    auto* button = desk.window.findChild<QPushButton*>("save_elsewhere");
    ASSERT_NE(button, nullptr);
    EXPECT_FALSE(button->isVisible());
    {
        const support::FullDisk full(4096);
        EXPECT_FALSE(desk.bridge().storeDp(first, "20.1").ok());
        EXPECT_FALSE(desk.bridge().storeDp(second, "30.2").ok());
    }
    ASSERT_TRUE(desk.bridge().notStored().has_value());
    desk.window.showPlace(MainWindow::Walk);
    emit desk.bridge().messageRaised(*desk.bridge().notStored());
    EXPECT_TRUE(button->isVisible());
    EXPECT_TRUE(desk.window.notice().contains("only in memory")) << desk.window.notice().toStdString();
    EXPECT_TRUE(desk.window.notice().contains("Save a Copy Elsewhere"));
    bool isInStrip = false;
    for (const QLabel* label : desk.window.findChildren<QLabel*>()) {
        isInStrip =
            isInStrip || (label->accessibleName() == "Stored" && label->text().startsWith("Not stored"));
    }
    EXPECT_TRUE(isInStrip);
    support::TemporaryFolder elsewhere;
    ASSERT_TRUE(desk.bridge().goOnIn(QString::fromStdString(elsewhere.file("copy.wwj"))).ok());
    EXPECT_EQ(desk.bridge().file().toStdString(), elsewhere.file("copy.wwj"));
    EXPECT_EQ(desk.stored("B-01"), "20.1 kPa");
    EXPECT_EQ(desk.stored("B-02"), "30.2 kPa");
    EXPECT_FALSE(desk.bridge().notStored().has_value());
    EXPECT_TRUE(workbook::verify(elsewhere.file("copy.wwj"))->isIntact);
}

TEST(Review, aValveReadTwiceCanBeCorrectedInAClosedRound) {
    DeskWindow desk({.terminals = 2});
    const base::Id branch = desk.project().branchTagged("B-01")->id;
    ASSERT_TRUE(desk.bridge().storeDp(branch, "20.1").ok());
    ASSERT_TRUE(desk.bridge().storeRepeat(branch, "20.5").ok());
    ASSERT_TRUE(desk.bridge().storeDp(desk.project().branchTagged("B-02")->id, "22").ok());
    const base::Id round = desk.project().lastRound()->id;
    project::Round closed = *desk.project().lastRound();
    closed.state = project::RoundState::Closed;
    ASSERT_TRUE(desk.bridge().apply({"close", {closed}, {}, true}).ok());
    const auto dp = quantity::measured<quantity::PressureDifference>(*base::Decimal::parse("21.7"),
                                                                     quantity::Unit::Kilopascal);
    const auto edit =
        balancing::storeDp(desk.project(), round, branch, dp, std::nullopt, desk.bridge().context());
    ASSERT_TRUE(edit.ok()) << base::english(edit.fault());
    const base::Outcome done = desk.bridge().apply(*edit);
    ASSERT_TRUE(done.ok()) << base::englishWithSubject(done.fault());
    EXPECT_EQ(desk.stored("B-01"), "21.7 kPa");
    EXPECT_EQ(desk.storedCount(), 2) << "both readings are superseded";
}

}  // namespace
}  // namespace ww::ui
