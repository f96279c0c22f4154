// The working order of the place Adjust: which valve is next, what advice says of it. The source of these
// checks is the interaction design of this project.
#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <algorithm>
#include <cmath>

#include "tests/support/whole_job.h"
#include "tests/ui/support/adjust_desk.h"
#include "ui/places/adjust/adjust_words.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

using project::ReadingPurpose;
using support::AdjustDesk;
using support::SolvedJob;

TEST_F(AdjustDesk, theOrderStaysWhileTriesAreLogged) {
    KeptOrder kept(m_desk.bridge(), m_desk.window.advisor());
    const auto before = kept.order();
    const base::Id last = m_desk.project().branches()[before.back()].id;
    place().showBranch(last);
    m_desk.enter("30.0");
    settle();
    const auto after = kept.order();
    // The same valves in the same order; other valves only where a reference changed.
    auto sortedBefore = before;
    auto sortedAfter = after;
    std::sort(sortedBefore.begin(), sortedBefore.end());
    std::sort(sortedAfter.begin(), sortedAfter.end());
    EXPECT_TRUE(sortedBefore != sortedAfter || before == after);
}

TEST_F(AdjustDesk, theOrderIsTheSameAfterTheProgramWasKilled) {
    const base::Id workbook = m_desk.bridge().workbook()->workbookId();
    const auto order = m_desk.preferences.orderIn(workbook);
    ASSERT_TRUE(order) << "it is kept as soon as it is made";
    ASSERT_GT(order->branches.size(), 2U);
    EXPECT_TRUE(order->isAdvised);
    EXPECT_FALSE(order->isChanged);
    place().showBranch(order->branches[1]);
    m_desk.key(Qt::Key_Up, Qt::AltModifier | Qt::ShiftModifier);
    const auto changed = m_desk.preferences.orderIn(workbook);
    ASSERT_TRUE(changed && changed->isChanged);
    EXPECT_EQ(changed->branches[0], order->branches[1]);
    // A window that comes later takes what is kept, whatever the readings since would advise.
    m_desk.enter("30.0");
    settle();
    KeptOrder later(m_desk.bridge(), m_desk.window.advisor());
    later.setKeeping({[&] { return m_desk.preferences.orderIn(workbook); }, {}});
    const auto branches = later.order();
    EXPECT_TRUE(later.isChanged());
    ASSERT_FALSE(branches.empty());
    EXPECT_EQ(m_desk.project().branches()[branches[0]].id, changed->branches[0]);
    // An order of another round is none of this one.
    OrderOfRound other = *changed;
    other.round = m_desk.bridge().newId();
    KeptOrder fresh(m_desk.bridge(), m_desk.window.advisor());
    fresh.setKeeping({[&] { return std::optional(other); }, {}});
    fresh.order();
    EXPECT_FALSE(fresh.isChanged());
}

TEST_F(AdjustDesk, theOrderIsChangedByAPersonAndStaysSo) {
    const auto tags = [&] {
        QStringList all;
        for (int row = 0; row < place().advice()->model()->rowCount(); ++row) {
            all << QString::fromStdString(
                m_desk.project().branches().at(place().advice()->model()->branchAt(row)).tag);
        }
        return all;
    };
    const Commands& commands = m_desk.window.commands();
    const QStringList advised = tags();
    ASSERT_GT(advised.size(), 3);
    EXPECT_FALSE(commands.advisedOrder->isEnabled()) << "it is the advised one";
    EXPECT_EQ(commands.moveUp->text().remove('&'), "Move Valve Up the Working Order");
    place().showBranch(idOf(advised[2].toStdString()));
    m_desk.key(Qt::Key_Up, Qt::AltModifier | Qt::ShiftModifier);
    QStringList changed = advised;
    changed.move(2, 1);
    EXPECT_EQ(tags(), changed);
    EXPECT_TRUE(m_desk.window.notice().contains("number 2 of")) << m_desk.window.notice().toStdString();
    EXPECT_TRUE(place().advice()->words().contains("changed here by hand"));
    // What is held next follows it, and tries leave it as it is.
    place().showBranch(idOf(advised[0].toStdString()));
    m_desk.enter("30.0");
    settle();
    EXPECT_EQ(tags().first(3), changed.first(3));
    place().holdAndNext();
    EXPECT_EQ(place().valve().branch(), idOf(advised[2].toStdString()));
    // In the table the row in hand is moved; the first goes no further.
    place().goToAdvice();
    ASSERT_TRUE(place().advice()->table()->hasFocus());
    place().advice()->table()->setCurrentIndex(place().advice()->model()->index(1, AdviceModel::Tag));
    m_desk.key(Qt::Key_Up, Qt::AltModifier | Qt::ShiftModifier);
    EXPECT_EQ(tags().first(), advised[2]);
    EXPECT_EQ(place().advice()->branchInHand(), idOf(advised[2].toStdString())) << "it stays in hand";
    m_desk.key(Qt::Key_Up, Qt::AltModifier | Qt::ShiftModifier);
    EXPECT_TRUE(m_desk.window.notice().contains("no further")) << m_desk.window.notice().toStdString();
    ASSERT_TRUE(commands.advisedOrder->isEnabled());
    m_desk.key(Qt::Key_B, Qt::ControlModifier | Qt::AltModifier);
    EXPECT_NE(tags().first(), advised[2]);
    EXPECT_FALSE(commands.advisedOrder->isEnabled());
    m_desk.window.showPlace(MainWindow::System);
    EXPECT_EQ(commands.moveUp->text().remove('&'), "Move Branch Up the Route");
}

TEST_F(AdjustDesk, afterARoundTheFirstOfTheOrderIsInHand) {
    m_desk.window.showPlace(MainWindow::Walk);
    ASSERT_TRUE(m_desk.bridge().openRound(project::RoundKind::Adjusting).ok());
    for (int i = 1; i <= 6; ++i) {
        const std::string tag = SolvedJob::tagOf(i);
        ASSERT_TRUE(m_desk.bridge().storeDp(idOf(tag), QString::fromStdString(m_job.readAt({}, tag))).ok());
    }
    m_desk.bridge().selectBranch(idOf("T-06"));
    ASSERT_TRUE(m_desk.bridge().closeRound().ok());
    settle();
    KeptOrder kept(m_desk.bridge(), m_desk.window.advisor());
    const base::Id first = m_desk.project().branches()[kept.order().front()].id;
    m_desk.window.showPlace(MainWindow::Adjust);
    EXPECT_EQ(place().valve().branch(), first);
    // A valve that is chosen afterwards stays.
    m_desk.window.showPlace(MainWindow::Walk);
    m_desk.bridge().selectBranch(idOf("T-06"));
    m_desk.window.showPlace(MainWindow::Adjust);
    EXPECT_EQ(place().valve().branch(), idOf("T-06"));
}

TEST_F(AdjustDesk, holdsAndGoesToTheNextOfTheWorkingOrder) {
    m_desk.enter("30.0");
    settle();
    place().holdAndNext();
    EXPECT_EQ(newest()->purpose, ReadingPurpose::Hold);
    EXPECT_EQ(m_desk.project().branches().at(newest()->branch).tag, "T-01");
    EXPECT_NE(place().valve().branch(), idOf("T-01"));
    EXPECT_EQ(m_desk.bridge().selectedBranch(), place().valve().branch());
    EXPECT_TRUE(place().field()->hasFocus());
    // Nothing was read at the next valve: it cannot be held.
    const auto second = place().valve().branch();
    place().holdAndNext();
    EXPECT_EQ(place().valve().branch(), second);
    EXPECT_FALSE(m_desk.window.notice().isEmpty());
    // Digits and Ctrl+Enter in one go.
    m_desk.type("28.0");
    place().holdAndNext();
    EXPECT_EQ(newest()->purpose, ReadingPurpose::Hold);
    EXPECT_EQ(newest()->branch, *second);
}

// A round that was read in Walk has no tries: what fits there is left, and the way goes on.
TEST_F(AdjustDesk, whatWasReadInAWalkAndFitsIsLeftForTheNext) {
    ASSERT_TRUE(m_desk.bridge().openRound(project::RoundKind::Adjusting).ok());
    ASSERT_TRUE(place().valve().row().has_value());
    const QString aim = QString::number(place().valve().row()->dp.si() / 1000, 'f', 2);
    ASSERT_TRUE(m_desk.bridge().storeDp(idOf("T-01"), aim).ok());
    settle();
    ASSERT_EQ(place().valve().branch(), idOf("T-01"));
    ASSERT_EQ(place().valve().word(), balancing::AimWord::Hold);
    const std::size_t stored = m_desk.project().readings().size();
    place().holdAndNext();
    EXPECT_NE(place().valve().branch(), idOf("T-01"));
    EXPECT_FALSE(m_desk.window.notice().contains("nothing was read")) << m_desk.window.notice().toStdString();
    EXPECT_EQ(m_desk.project().readings().size(), stored);
}

// The way along valves that fit as they were read comes to an end, and does not begin anew.
TEST_F(AdjustDesk, whatIsLeftAsReadIsNotComeBackTo) {
    ASSERT_TRUE(m_desk.bridge().openRound(project::RoundKind::Adjusting).ok());
    std::vector<base::Id> taken;
    while (taken.size() < 12) {
        taken.push_back(*place().valve().branch());
        ASSERT_TRUE(place().valve().row().has_value());
        const QString aim = QString::number(place().valve().row()->dp.si() / 1000, 'f', 2);
        ASSERT_TRUE(m_desk.bridge().storeDp(taken.back(), aim).ok());
        settle();
        ASSERT_EQ(place().valve().word(), balancing::AimWord::Hold) << taken.size();
        place().holdAndNext();
        settle();
        if (place().valve().branch() == taken.back()) {
            break;
        }
        EXPECT_EQ(std::find(taken.begin(), taken.end(), place().valve().branch()), taken.end());
    }
    EXPECT_LE(taken.size(), 6U);
    EXPECT_TRUE(m_desk.window.notice().contains("very valve of the working order"))
        << m_desk.window.notice().toStdString();
    // Read again, a valve is asked for again.
    ASSERT_GE(taken.size(), 2U);
    ASSERT_TRUE(m_desk.bridge().storeDp(taken.front(), QStringLiteral("60")).ok());
    settle();
    place().showBranch(taken.back());
    place().takeFocus();
    place().holdAndNext();
    EXPECT_EQ(place().valve().branch(), taken.front());
}

// What is not read yet is named as Go to Next Open Item reaches it: on along the route.
TEST_F(AdjustDesk, theNextUnreadIsNamedAlongTheRoute) {
    for (int held = 0; held < 6 && !m_desk.window.notice().contains("every valve"); ++held) {
        m_desk.enter(QString::number(place().valve().row()->dp.in(quantity::Unit::Kilopascal), 'f', 1));
        settle();
        place().holdAndNext();
        settle();
    }
    const auto unread = m_desk.bridge().walkProgress().unread;
    ASSERT_FALSE(unread.empty());
    const QString told = m_desk.window.notice();
    m_desk.window.commands().nextOpen->trigger();
    EXPECT_EQ(m_desk.window.place(), MainWindow::Walk);
    const base::Id there = *m_desk.bridge().selectedBranch();
    const QString tag = QString::fromStdString(m_desk.project().branches().at(there).tag);
    EXPECT_TRUE(told.contains("the next along the route is " + tag)) << told.toStdString();
}

TEST_F(AdjustDesk, readsTheReferenceOnceAndReturns) {
    place().readReference();
    m_desk.enter("22.2");
    EXPECT_EQ(newest()->purpose, ReadingPurpose::Reference);
    EXPECT_NE(newest()->branch, idOf("T-01"));
    EXPECT_EQ(place().valve().branch(), idOf("T-01"));
    m_desk.enter("30.0");
    EXPECT_EQ(newest()->purpose, ReadingPurpose::Try);
    EXPECT_EQ(newest()->branch, idOf("T-01"));
    place().readReference();
    m_desk.key(Qt::Key_Escape);
    m_desk.enter("30.5");
    EXPECT_EQ(newest()->purpose, ReadingPurpose::Try);
}

TEST_F(AdjustDesk, theHandThatTypesIsNotDisturbedByWhatIsLearned) {
    m_desk.enter("300");
    m_desk.type("4");
    settle();
    EXPECT_EQ(place().field()->text(), "4");
    m_desk.key(Qt::Key_Escape);
    EXPECT_TRUE(place().field()->text().isEmpty());
    EXPECT_TRUE(m_desk.window.advisor().isCurrent());
}

}  // namespace
}  // namespace ww::ui
