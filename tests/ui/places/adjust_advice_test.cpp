// The word of a valve beside its advised setting, its share and its turn in the working order. The rules are
// this program's own decisions; no outside source.
#include <QAbstractItemModelTester>
#include <algorithm>
#include <cmath>

#include "core/balancing/adjusting.h"
#include "core/pump_room/speed_not_read.h"
#include "tests/support/whole_job.h"
#include "tests/ui/support/adjust_desk.h"
#include "ui/models/branch_roles.h"
#include "ui/places/adjust/adjust_words.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

using support::AdjustDesk;
using support::DeskWindow;

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

TEST_F(AdjustDesk, withoutATableOfAdviceNothingIsSaidOfRoom) {
    project::Branch bare = *m_desk.project().branchTagged("T-01");
    bare.valve.reset();
    ASSERT_TRUE(m_desk.bridge().apply({"no valve", {bare}, {}, true}).ok());
    settle();
    place().goToAdvice();
    EXPECT_TRUE(m_desk.window.notice().contains("no table of advice"))
        << m_desk.window.notice().toStdString();
    m_desk.window.commands().places[MainWindow::Pump]->trigger();
    EXPECT_TRUE(m_desk.window.notice().isEmpty()) << m_desk.window.notice().toStdString();
}

// Of the pump it is said what to do; its figures are those of the decision, and stand there alone.
TEST_F(AdjustDesk, thePumpIsToldWithoutFiguresOfItsOwn) {
    EXPECT_FALSE(place().advice()->words().contains("too little")) << place().advice()->words().toStdString();
    project::Edit edit;
    edit.label = "larger flows";
    for (project::Branch branch : std::vector<project::Branch>(m_desk.project().branches().begin(),
                                                               m_desk.project().branches().end())) {
        if (branch.designFlow) {
            branch.designFlow = quantity::measured<quantity::VolumeFlow>(
                base::Decimal::fromNumber(2 * branch.designFlow->digits.value(), 4), branch.designFlow->unit);
            edit.put.emplace_back(branch);
        }
    }
    ASSERT_TRUE(m_desk.bridge().apply(edit).ok());
    settle();
    const LoopPicture* picture = m_desk.window.advisor().picture();
    ASSERT_TRUE(picture != nullptr && picture->advice.pump);
    ASSERT_TRUE(picture->advice.pump->isShort());
    const QString words = place().advice()->words();
    EXPECT_TRUE(words.contains("The pump makes too little")) << words.toStdString();
    EXPECT_TRUE(words.contains("Pump, Decision")) << words.toStdString();
    EXPECT_TRUE(words.contains("strainers and filters are clean")) << words.toStdString();
    EXPECT_FALSE(words.contains("at design flow, ")) << words.toStdString();
}

TEST_F(AdjustDesk, aSpeedThatWasNotReadIsSaidAtThePump) {
    const auto speed = pump_room::speedNotRead(m_desk.project(), m_desk.bridge().assessment());
    ASSERT_TRUE(speed) << "no round of this job reads one";
    const QString words = place().advice()->words();
    EXPECT_TRUE(words.contains("speed was read in round")) << words.toStdString();
    EXPECT_TRUE(words.contains(text::text(*speed))) << words.toStdString();
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
    EXPECT_FALSE(isElsewhere && model.index(now, AdviceModel::SetTo).data(IsStrongRole).toBool());
    // The line of the next setting names no other one without saying why HOLD stands.
    const QString said = proposalWords(m_desk.bridge(), place().valve(), true);
    EXPECT_TRUE(said.contains(isElsewhere ? " at " : "Leave it")) << said.toStdString();
    if (isElsewhere) {
        EXPECT_TRUE(place().advice()->words().contains(said)) << place().advice()->words().toStdString();
    }
    // The advised setting is not taken while the valve holds at another one, and the menu says so.
    const QAction* take = m_desk.window.commands().takeAdvice;
    EXPECT_EQ(take->isEnabled(), !isElsewhere);
    EXPECT_EQ(take->text().contains("holds"), isElsewhere) << take->text().toStdString();
    const double stands = setting();
    place().takeAdvice();
    EXPECT_EQ(m_desk.window.notice().contains(said), isElsewhere) << m_desk.window.notice().toStdString();
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

TEST_F(AdjustDesk, whatWasNotTriedIsTurnedToItsAdviceFirst) {
    AdviceModel& model = *place().advice()->model();
    int row = 0;
    for (int i = 1; i < model.rowCount(); ++i) {
        row = model.at(i).setting < model.at(row).setting ? i : row;
    }
    const base::Id branch = model.branchAt(row);
    place().showBranch(branch);
    EXPECT_EQ(place().valve().word(), balancing::AimWord::Close) << "fully open, and advised to be throttled";
    const QString note = wordNote(m_desk.bridge(), place().valve());
    EXPECT_TRUE(note.contains("advised")) << note.toStdString();
    const QString said = proposalWords(m_desk.bridge(), place().valve(), true);
    // Two dps for one setting, each with its time.
    EXPECT_TRUE(said.contains("now") && said.contains("once all valves are set")) << said.toStdString();
    EXPECT_TRUE(said.contains(dpNumber(m_desk.bridge(), model.at(row).dp))) << said.toStdString();
    place().takeAdvice();
    const QString there = proposalWords(m_desk.bridge(), place().valve(), true);
    EXPECT_TRUE(there.contains("Read it here") && there.contains("once all valves are set"))
        << there.toStdString();
    EXPECT_FALSE(basisWords(m_desk.bridge(), place().valve()).join(' ').contains("turn"))
        << "what the aim rests on tells the hand nothing";
}

TEST_F(AdjustDesk, noChanceIsCertain) {
    const QString said = place().advice()->words();
    EXPECT_TRUE(said.contains("Once all are set as advised")) << said.toStdString();
    EXPECT_TRUE(said.contains("Working order")) << said.toStdString();
    EXPECT_FALSE(QString(said).replace(QChar(0xA0), ' ').contains("100 %;")) << said.toStdString();
    EXPECT_FALSE(QString(said).replace(QChar(0xA0), ' ').contains("100 %.")) << said.toStdString();
}

TEST_F(AdjustDesk, anAimAboveWhatIsAvailableIsTold) {
    place().readShutValve();
    m_desk.enter("95.0");
    // Nearly shut the aim for the same flow is far above that.
    while (!place().valve().isAimBeyond() && place().valve().setting().si() > 0.2) {
        m_desk.key(Qt::Key_Down);
    }
    ASSERT_TRUE(place().valve().isAimBeyond());
    EXPECT_EQ(place().valve().available()->source, balancing::HeadSource::ShutValve);
    const QString said = proposalWords(m_desk.bridge(), place().valve(), true);
    EXPECT_TRUE(said.contains("Open it first") && said.contains("95.0")) << said.toStdString();
    // Read there, the word and the sentence still say the same.
    m_desk.enter("90.0");
    if (place().valve().word() == balancing::AimWord::Open) {
        EXPECT_TRUE(proposalWords(m_desk.bridge(), place().valve(), true).contains("pen"));
    }
}

TEST_F(AdjustDesk, theBoldSettingIsOneThatEnterTakes) {
    AdviceModel& model = *place().advice()->model();
    const auto bold = [&] {
        std::vector<int> rows;
        for (int row = 0; row < model.rowCount(); ++row) {
            if (model.index(row, AdviceModel::SetTo).data(IsStrongRole).toBool()) {
                rows.push_back(row);
            }
        }
        return rows;
    };
    for (int turn = 0; turn < 4; ++turn) {
        const std::vector<int> offered = bold();
        ASSERT_EQ(offered.size(), 1U) << turn;
        const base::Id branch = model.branchAt(offered.front());
        const double wanted = model.at(offered.front()).setting.si();
        place().goToAdvice();
        place().advice()->table()->selectRow(offered.front());
        m_desk.key(Qt::Key_Return);
        EXPECT_EQ(place().valve().branch(), branch);
        EXPECT_NEAR(setting(), wanted, 1e-9) << "what is bold is taken";
        // Read at its aim and held, the offer goes on.
        m_desk.enter(QString::number(place().valve().row()->dp.in(quantity::Unit::Kilopascal), 'f', 1));
        settle();
        place().holdAndNext();
        settle();
        if (const std::vector<int> next = bold(); turn < 3 && next.size() == 1) {
            EXPECT_EQ(place().valve().branch(), model.branchAt(next.front())) << "what is bold comes next";
        }
    }
}

TEST_F(AdjustDesk, theAdviceStandsInTheWorkingOrder) {
    KeptOrder kept(m_desk.bridge(), m_desk.window.advisor());
    const AdviceModel& model = *place().advice()->model();
    const auto order = kept.order();
    ASSERT_LE(order.size(), static_cast<std::size_t>(model.rowCount()));
    for (int row = 0; row < model.rowCount(); ++row) {
        const bool isOrdered = static_cast<std::size_t>(row) < order.size();
        const QString number = model.index(row, AdviceModel::Order).data().toString();
        EXPECT_EQ(number, isOrdered ? QString::number(row + 1) : QString()) << "the reference has no turn";
        if (isOrdered) {
            EXPECT_EQ(model.at(row).branch, order[static_cast<std::size_t>(row)]);
        }
    }
}

TEST_F(AdjustDesk, holdingAgainstTheWordIsTold) {
    const double survey_kPa = place().valve().last()->dp.in(quantity::Unit::Kilopascal);
    m_desk.enter(QString::number(2 * survey_kPa, 'f', 1));
    ASSERT_EQ(place().valve().word(), balancing::AimWord::Close);
    place().holdAndNext();
    const QString told = m_desk.window.notice();
    EXPECT_TRUE(told.contains("T-01") && told.contains("CLOSE")) << told.toStdString();
    EXPECT_EQ(DeskWindow::dialogCount(), 0);
    EXPECT_TRUE(balancing::isHeld(m_desk.project(), idOf("T-01")));
    ASSERT_TRUE(m_desk.bridge().undo().ok());
    EXPECT_FALSE(balancing::isHeld(m_desk.project(), idOf("T-01"))) << "the hold is taken back";
    // A HOLD says nothing.
    place().showBranch(idOf("T-01"));
    place().takeFocus();
    m_desk.enter(QString::number(place().valve().row()->dp.in(quantity::Unit::Kilopascal), 'f', 1));
    settle();
    if (place().valve().word() == balancing::AimWord::Hold) {
        place().holdAndNext();
        EXPECT_FALSE(m_desk.window.notice().contains("although")) << m_desk.window.notice().toStdString();
    }
}

TEST_F(AdjustDesk, theKeyLineNamesNoNextWhereThereIsNone) {
    for (int held = 0; held < 6 && !m_desk.window.notice().contains("every valve"); ++held) {
        m_desk.enter(QString::number(place().valve().row()->dp.in(quantity::Unit::Kilopascal), 'f', 1));
        EXPECT_TRUE(m_desk.keyLine().contains("Ctrl+Enter")) << m_desk.keyLine().toStdString();
        place().holdAndNext();
    }
    bool isSaid = false;
    for (const QLabel* label : place().findChildren<QLabel*>()) {
        isSaid = isSaid || label->text().contains("no valve is left");
    }
    ASSERT_TRUE(isSaid);
    EXPECT_FALSE(m_desk.keyLine().contains("Ctrl+Enter")) << m_desk.keyLine().toStdString();
    EXPECT_FALSE(proposalWords(m_desk.bridge(), place().valve(), false).contains("next valve"));
    m_desk.type("30");
    EXPECT_TRUE(m_desk.keyLine().contains("Ctrl+Enter hold")) << m_desk.keyLine().toStdString();
    EXPECT_FALSE(m_desk.keyLine().contains("next")) << m_desk.keyLine().toStdString();
}

TEST_F(AdjustDesk, theReferenceIsOpenedAndThenLeftWhateverItsShare) {
    const LoopPicture* picture = m_desk.window.advisor().picture();
    ASSERT_TRUE(picture != nullptr && picture->advice.isReady());
    const auto& settings = picture->advice.settings;
    const auto reference =
        std::find_if(settings.begin(), settings.end(), [](const auto& each) { return each.isReference; });
    ASSERT_NE(reference, settings.end());
    place().showBranch(m_desk.project().branches()[reference->branch].id);
    place().takeFocus();
    ASSERT_DOUBLE_EQ(setting(), 4.0);
    EXPECT_EQ(place().valve().word(), balancing::AimWord::Hold) << "as read in the survey, fully open";
    const QString said = stateWords(m_desk.bridge(), place().valve());
    EXPECT_TRUE(said.contains("stop")) << said.toStdString();
    EXPECT_FALSE(said.contains("leave it")) << "the word says what to do, once: " << said.toStdString();
    EXPECT_TRUE(wordNote(m_desk.bridge(), place().valve()).contains("leave it"));
    EXPECT_TRUE(proposalWords(m_desk.bridge(), place().valve(), true).contains("fully open"));
    m_desk.key(Qt::Key_PageDown);
    m_desk.enter(QString::number(place().valve().row()->dp.in(quantity::Unit::Kilopascal), 'f', 1));
    EXPECT_EQ(place().valve().word(), balancing::AimWord::Open) << "whatever its dp says";
    EXPECT_TRUE(wordNote(m_desk.bridge(), place().valve()).contains("open it fully"));
    EXPECT_FALSE(m_desk.window.notice().contains("index circuit")) << "its word says it";
}

/// A solved loop of 30 terminals of which 10 were read.
project::Edit partlyRead() {
    project::Edit content = support::SolvedJob(30).content();
    constexpr int kRead = 10;
    int readings = 0;
    std::erase_if(content.put, [&](const auto& record) {
        return std::holds_alternative<project::Reading>(record) && ++readings > kRead;
    });
    return content;
}

void waitForAdvice(const LoopAdvisor& advisor) {
    QElapsedTimer time;
    time.start();
    while (advisor.isComputing() && time.elapsed() < 60'000) {
        QTest::qWait(5);
    }
}

TEST(AdvicePanel, adviceThatIsNotReadyShowsNoSettingAndMovesNoHandle) {
    DeskWindow desk(partlyRead(), false);
    desk.window.showPlace(MainWindow::Adjust);
    waitForAdvice(desk.window.advisor());
    AdjustPlace& place = *desk.window.adjust();
    const LoopPicture* picture = desk.window.advisor().picture();
    ASSERT_TRUE(picture != nullptr && !picture->advice.isReady() && !picture->advice.settings.empty());
    const AdviceModel& model = *place.advice()->model();
    ASSERT_GT(model.rowCount(), 0);
    for (int row = 0; row < model.rowCount(); ++row) {
        for (const int column :
             {AdviceModel::SetTo, AdviceModel::AimDp, AdviceModel::AsRead, AdviceModel::InTruth}) {
            EXPECT_EQ(model.index(row, column).data().toString(), "") << row << ' ' << column;
        }
    }
    EXPECT_FALSE(place.advice()->words().contains("Once all are set"))
        << place.advice()->words().toStdString();
    const double before = place.valve().setting().si();
    desk.window.commands().takeAdvice->trigger();
    EXPECT_EQ(place.valve().setting().si(), before);
    EXPECT_TRUE(desk.window.notice().contains("Nothing was read here")) << desk.window.notice().toStdString();
}

TEST_F(AdjustDesk, untilAReadingIsLearnedFromTheAdviceIsOfThoseBefore) {
    EXPECT_FALSE(place().advice()->words().startsWith("Advice of earlier readings"));
    m_desk.type("30.0");
    m_desk.key(Qt::Key_Return);
    ASSERT_TRUE(m_desk.window.advisor().isComputing());
    EXPECT_TRUE(place().advice()->words().startsWith("Advice of earlier readings"))
        << place().advice()->words().toStdString();
    settle();
    QCoreApplication::processEvents();
    EXPECT_FALSE(place().advice()->words().startsWith("Advice of earlier readings"));
}

TEST(AdvicePanel, ofManyThatSayAlikeSomeStandAndTheRestIsCounted) {
    DeskWindow desk(partlyRead(), false);
    desk.window.showPlace(MainWindow::Adjust);
    waitForAdvice(desk.window.advisor());
    const LoopPicture* picture = desk.window.advisor().picture();
    ASSERT_NE(picture, nullptr);
    ASSERT_GE(picture->advice.whyNot.size(), 20U);
    const QString words = desk.window.adjust()->advice()->words();
    EXPECT_GE(words.count("nothing was read here", Qt::CaseInsensitive), 5) << words.toStdString();
    EXPECT_LE(words.count("nothing was read here", Qt::CaseInsensitive), 8) << words.toStdString();
    EXPECT_TRUE(words.contains(QString("and %1 more").arg(picture->advice.whyNot.size() - 7)))
        << words.toStdString();
}

}  // namespace
}  // namespace ww::ui
