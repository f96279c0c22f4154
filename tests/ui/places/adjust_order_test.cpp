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
