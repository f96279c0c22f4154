// What is typed on the pages Test and Pump Data: which cells a closed round opens, the units of a head, and
// what is refused. The source of these checks is the interaction design of this project.
#include <gtest/gtest.h>

#include <QTest>

#include "core/project/review.h"
#include "tests/ui/support/pump_pages.h"
#include "ui/places/pump/data_page.h"
#include "ui/places/pump/test_page.h"

namespace ww::ui {
namespace {

using project::PumpPoint;
using support::PumpPages;
using support::textsOf;

constexpr int kRiseRow = 2;
constexpr int kSpeedRow = 3;
constexpr int kFullOpenColumn = 3;
constexpr int kFinalColumn = 5;
constexpr int kFlowOfCurve = 1;
constexpr int kHeadOfCurve = 2;
constexpr int kEfficiencyOfCurve = 3;

/// The page Test, of whose round one point is read, and what is said.
class PumpTyping : public PumpPages {
  protected:
    void SetUp() override {
        PumpPages::SetUp();
        m_test = &page<TestPage>(PumpPlace::Test);
        QObject::connect(&m_rig.bridge, &WorkbookBridge::messageRaised, m_test,
                         [this](const base::Fault& fault) { m_said.push_back(base::english(fault)); });
        ASSERT_TRUE(m_test->model()->store(cell(kRiseRow, kFullOpenColumn), "90").ok());
    }
    void become(project::RoundState state) {
        project::Round last = *job().lastRound();
        last.state = state;
        last.sentBy = "A. Fields";
        last.decidedBy = state == project::RoundState::Accepted ? "B. Other" : "";
        ASSERT_TRUE(m_rig.bridge.apply({"round", {last}, {}, true}).ok());
        ASSERT_EQ(job().lastRound()->state, state);
        m_test->show(nullptr);
    }
    QModelIndex cell(int row, int column) { return m_test->model()->index(row, column); }
    void typeAt(int row, int column, const char* text) {
        m_said.clear();
        m_test->table()->setFocus();
        m_test->table()->setCurrentIndex(cell(row, column));
        QTest::keyClicks(m_test->table(), text);
    }
    bool isSaid(const char* part) const {
        return std::any_of(m_said.begin(), m_said.end(),
                           [part](const std::string& each) { return each.find(part) != std::string::npos; });
    }

    TestPage* m_test = nullptr;
    std::vector<std::string> m_said;
};

TEST_F(PumpTyping, aClosedRoundOpensTheCellsOfPointsThatWereReadAlone) {
    EXPECT_TRUE(cell(kRiseRow, kFinalColumn).flags().testFlag(Qt::ItemIsEditable));
    become(project::RoundState::Closed);
    EXPECT_TRUE(textsOf(*m_test).contains("need the next round")) << textsOf(*m_test).toStdString();
    EXPECT_FALSE(cell(kRiseRow, kFinalColumn).flags().testFlag(Qt::ItemIsEditable));
    typeAt(kRiseRow, kFinalColumn, "9");
    EXPECT_FALSE(m_test->table()->isEditing()) << "it is said before anything is typed";
    EXPECT_TRUE(isSaid("has no reading of this point; open the next round"));
    // What was read is corrected as in the walk.
    typeAt(kRiseRow, kFullOpenColumn, "8");
    ASSERT_TRUE(m_test->table()->isEditing());
    QTest::keyClicks(m_test->table()->editor(), "8");
    EXPECT_TRUE(m_test->table()->commitEdit());
    EXPECT_TRUE(reading(PumpPoint::FullOpen)->supersedes.has_value());
    EXPECT_TRUE(isSaid("is closed, so this corrects its reading"));
    // A value that was missing corrects the reading of its point too.
    typeAt(kSpeedRow, kFullOpenColumn, "1");
    QTest::keyClicks(m_test->table()->editor(), "450");
    EXPECT_TRUE(m_test->table()->commitEdit());
    ASSERT_TRUE(reading(PumpPoint::FullOpen)->speed.has_value());
    EXPECT_EQ(reading(PumpPoint::FullOpen)->speed->text(), "1450 rpm");
}

TEST_F(PumpPages, aHeadIsTypedAsAPressureToo) {
    RecordTableModel& curve = *page<DataPage>(PumpPlace::PumpData).curve()->model();
    const auto head = [&](const char* text) {
        EXPECT_TRUE(curve.store(curve.index(0, kHeadOfCurve), text).ok()) << text;
        return job().pumps()[0].rows[0].head;
    };
    const double perMetre_Pa = job().fluid().density().si() * 9.80665;
    EXPECT_EQ(head("98.0 kPa").text(), "98.0 kPa");
    EXPECT_NEAR(job().pumps()[0].rows[0].head.value.si(), 98'000 / perMetre_Pa, 1e-9);
    EXPECT_EQ(head("97.5").text(), "97.5 kPa") << "digits alone keep the unit that stood there";
    EXPECT_EQ(head("9.9 m").text(), "9.9 m");
    EXPECT_NEAR(job().pumps()[0].rows[0].head.value.si(), 9.9, 1e-12) << "behind a head m is a metre";
    EXPECT_EQ(head("14 psi").text(), "14 psi");
    EXPECT_FALSE(curve.store(curve.index(0, kHeadOfCurve), "14 rpm").ok());
    EXPECT_FALSE(curve.store(curve.index(0, kHeadOfCurve), "-1 kPa").ok());
}

TEST_F(PumpPages, anEfficiencyAboveAWholeIsRefused) {
    RecordTableModel& curve = *page<DataPage>(PumpPlace::PumpData).curve()->model();
    const auto before = job().pumps()[0].rows[0].efficiency;
    const base::Outcome refused = curve.store(curve.index(0, kEfficiencyOfCurve), "130");
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(base::english(refused.fault()).find("130 %"), std::string::npos)
        << base::english(refused.fault());
    EXPECT_EQ(job().pumps()[0].rows[0].efficiency, before);
    EXPECT_TRUE(curve.store(curve.index(0, kEfficiencyOfCurve), "100").ok());
}

TEST_F(PumpPages, theLettersOfAFlowAreTakenInEveryTable) {
    RecordTableModel& curve = *page<DataPage>(PumpPlace::PumpData).curve()->model();
    ASSERT_TRUE(curve.store(curve.index(0, kFlowOfCurve), "0.1l").ok());
    EXPECT_EQ(job().pumps()[0].rows[0].flow.text(), "0.1 L/s");
}

}  // namespace
}  // namespace ww::ui
