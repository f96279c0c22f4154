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

TEST_F(AdjustDesk, takingAdviceStoresNothing) {
    const LoopPicture* picture = m_desk.window.advisor().picture();
    ASSERT_NE(picture, nullptr);
    ASSERT_FALSE(picture->advice.settings.empty());
    EXPECT_TRUE(place().advice()->words().contains("unverified")) << place().advice()->words().toStdString();
    AdviceModel& model = *place().advice()->model();
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    const auto before = support::recordsOf(m_desk.project());
    place().goToAdvice();
    ASSERT_TRUE(place().advice()->table()->hasFocus());
    // The valve that is throttled most: fully open it is far from holding.
    int row = 0;
    for (int i = 1; i < model.rowCount(); ++i) {
        row = model.at(i).setting < model.at(row).setting ? i : row;
    }
    place().advice()->table()->selectRow(row);
    m_desk.key(Qt::Key_Return);
    EXPECT_EQ(place().valve().branch(), model.branchAt(row));
    EXPECT_NEAR(setting(), model.at(row).setting.si(), 1e-9);
    EXPECT_EQ(support::recordsOf(m_desk.project()), before);
    EXPECT_TRUE(place().field()->hasFocus());
}

TEST_F(AdjustDesk, theWordAndTheAdviceNeverContradict) {
    // The throttled valve with the highest advised setting: there a step changes least.
    AdviceModel& model = *place().advice()->model();
    int row = -1;
    for (int i = 0; i < model.rowCount(); ++i) {
        const bool isBetter = row < 0 || model.at(i).setting > model.at(row).setting;
        row = !model.at(i).isFullyOpen && isBetter ? i : row;
    }
    ASSERT_GE(row, 0);
    const base::Id branch = model.branchAt(row);
    const balancing::SettingAdvice advised = model.at(row);
    place().showBranch(branch);
    // One step beside the advised setting, on the side where the exact one lies, read as the loop expects.
    const double step = place().valve().step().si();
    place().stepSetting(static_cast<int>(std::lround((advised.setting.si() - setting()) / step)) +
                        (advised.exact > advised.setting ? 1 : -1));
    const auto& rows = place().valve().rows();
    const auto here = std::find_if(rows.begin(), rows.end(), [&](const balancing::AimRow& each) {
        return std::abs((each.setting - place().valve().setting()).si()) < 1e-9;
    });
    ASSERT_NE(here, rows.end());
    const auto expected = place().valve().expected()[static_cast<std::size_t>(here - rows.begin())];
    ASSERT_TRUE(expected.has_value());
    place().takeFocus();
    m_desk.enter(QString::number(expected->in(quantity::Unit::Kilopascal), 'f', 2));
    settle();
    ASSERT_EQ(place().valve().word(), balancing::AimWord::Hold);
    const auto& beside = place().valve().besideAdvice();
    ASSERT_TRUE(beside.has_value());
    const int now = model.rowOf(branch);
    ASSERT_GE(now, 0);
    const bool isElsewhere = std::abs((model.at(now).setting - place().valve().setting()).si()) >
                             model.at(now).step.si() / 2 + 1e-9;
    EXPECT_EQ(beside->reason.has_value(), isElsewhere);
    const QString remark = model.index(now, AdviceModel::Note).data().toString();
    EXPECT_EQ(remark == "leave it" || remark == "hold for now", isElsewhere) << remark.toStdString();
    EXPECT_NE(model.index(now, AdviceModel::SetTo).data(Qt::FontRole).value<QFont>().bold(), isElsewhere);
    // The line of the next setting names no other one without saying why HOLD stands.
    const QString said = proposalWords(m_desk.bridge(), place().valve());
    EXPECT_TRUE(said.startsWith("On share")) << said.toStdString();
    if (isElsewhere) {
        EXPECT_TRUE(place().advice()->words().contains("On share at"))
            << place().advice()->words().toStdString();
    }
    // The advised setting is not taken while the valve holds at another one, and the menu says so.
    const QAction* take = m_desk.window.commands().takeAdvice;
    EXPECT_EQ(take->isEnabled(), !isElsewhere);
    EXPECT_EQ(take->text().contains("on share"), isElsewhere) << take->text().toStdString();
    const double stands = setting();
    place().takeAdvice();
    EXPECT_EQ(m_desk.window.notice().contains("On share at"), isElsewhere)
        << m_desk.window.notice().toStdString();
    EXPECT_NEAR(setting(), isElsewhere ? stands : model.at(now).setting.si(), 1e-9);
    place().stepSetting(static_cast<int>(std::lround((stands - setting()) / step)));
    place().takeFocus();
    // Once held, the row says so when another valve is in hand.
    place().holdAndNext();
    settle();
    ASSERT_NE(place().valve().branch(), branch);
    const int later = model.rowOf(branch);
    EXPECT_EQ(model.index(later, AdviceModel::Note).data().toString(),
              model.at(later).isSet ? "set" : "held");
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
