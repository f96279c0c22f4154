// What is typed into a test sheet: one reading a point, completed in an open round, superseded when
// corrected.

#include "core/pump_room/test_entry.h"

#include <gtest/gtest.h>

#include "core/balancing/assess.h"
#include "core/balancing/system_curve.h"
#include "tests/support/counting_ids.h"
#include "tests/support/demo_project.h"

namespace ww::pump_room {
namespace {

using project::PumpPoint;
using project::PumpReading;

class TestEntry : public testing::Test {
  protected:
    TestEntry() : m_project(support::demoProject()) {
        project::Round round = *m_project.lastRound();
        round.state = project::RoundState::Open;
        m_project.put(round);
        m_round = round.id;
        m_pump = m_project.pumps()[0].id;
    }

    balancing::WalkContext context() {
        return {{}, {}, m_ids, *base::Instant::fromText("2026-03-05T10:00:00Z")};
    }
    void carryOut(const project::Edit& edit) {
        for (const project::AnyRecord& record : edit.put) {
            m_project.put(std::get<PumpReading>(record));
        }
    }
    PumpReading typeRise(PumpPoint point, const char* kilopascals, bool isAdded) {
        PumpReading reading = testReadingToFill(m_project, m_round, m_pump, point, context());
        reading.gaugeRise = quantity::measured<quantity::PressureDifference>(
            *base::Decimal::parse(kilopascals), quantity::Unit::Kilopascal);
        carryOut(storeTestReading(m_project, reading, isAdded, {"rise", "100 kPa"}, context()));
        return *testReading(m_project, m_round, m_pump, point);
    }

    support::CountingIds m_ids{5000};
    project::Project m_project;
    base::Id m_round;
    base::Id m_pump;
};

TEST_F(TestEntry, aNewPointTakesTheGaugeOfThePump) {
    const PumpReading stored = typeRise(PumpPoint::Shutoff, "117", true);
    EXPECT_EQ(m_project.instruments().at(*stored.instrument).tag, "G-1");
    EXPECT_EQ(stored.time->date(), "2026-03-05");
    EXPECT_EQ(stored.status, project::ReadingStatus::Standing);
}

TEST_F(TestEntry, theSpeedLastReadIsThatOfAPumpAsItRuns) {
    const auto rpm = [](const char* digits) {
        return quantity::measured<quantity::RotationalSpeed>(*base::Decimal::parse(digits),
                                                             quantity::Unit::RevolutionPerMinute);
    };
    for (const PumpReading& reading :
         std::vector<PumpReading>(m_project.pumpReadings().begin(), m_project.pumpReadings().end())) {
        PumpReading changed = reading;
        changed.speed.reset();
        m_project.put(changed);
    }
    EXPECT_EQ(lastRunningSpeed(m_project, m_pump), m_project.pumps()[0].speed) << "nobody read one: rated";
    const auto type = [&](PumpPoint point, const char* digits) {
        PumpReading reading = testReadingToFill(m_project, m_round, m_pump, point, context());
        reading.speed = rpm(digits);
        carryOut(storeTestReading(m_project, reading, true, {"speed", digits}, context()));
    };
    type(PumpPoint::Running, "1300");
    type(PumpPoint::Shutoff, "1400");
    EXPECT_EQ(lastRunningSpeed(m_project, m_pump), rpm("1300"));
}

TEST_F(TestEntry, speedsReadWhileARoundIsOpenedAreOneStepWithIt) {
    project::Round last = *m_project.lastRound();
    last.state = project::RoundState::Closed;
    m_project.put(last);
    auto edit = balancing::openRound(m_project, project::RoundKind::Adjusting, context());
    ASSERT_TRUE(edit.ok());
    const auto speed = quantity::measured<quantity::RotationalSpeed>(*base::Decimal::parse("1350"),
                                                                     quantity::Unit::RevolutionPerMinute);
    addSpeeds(m_project, *edit, {{m_pump, speed}}, context());
    for (const project::AnyRecord& record : edit->put) {
        std::visit([&](const auto& value) { m_project.put(value); }, record);
    }
    const PumpReading* stored = testReading(m_project, m_project.lastRound()->id, m_pump, PumpPoint::Running);
    ASSERT_NE(stored, nullptr);
    EXPECT_EQ(stored->speed, speed);
    EXPECT_FALSE(stored->gaugeRise.has_value());
    EXPECT_EQ(stored->time->date(), "2026-03-05");
    EXPECT_EQ(edit->label, "open round " + std::to_string(m_project.lastRound()->number));
}

TEST_F(TestEntry, addingCompletesAndChangingSupersedes) {
    const PumpReading first = typeRise(PumpPoint::FullOpen, "90", true);
    PumpReading more = testReadingToFill(m_project, m_round, m_pump, PumpPoint::FullOpen, context());
    more.amps = quantity::measured<quantity::Current>(*base::Decimal::parse("1.4"), quantity::Unit::Ampere);
    carryOut(storeTestReading(m_project, more, true, {"amps", "3 A"}, context()));
    EXPECT_EQ(testReading(m_project, m_round, m_pump, PumpPoint::FullOpen)->id, first.id);
    const PumpReading corrected = typeRise(PumpPoint::FullOpen, "91", false);
    EXPECT_EQ(corrected.supersedes, first.id);
    EXPECT_EQ(corrected.amps->text(), "1.4 A");
    EXPECT_EQ(m_project.pumpReadings().at(first.id).status, project::ReadingStatus::Superseded);
}

TEST_F(TestEntry, aValueThatIsEmptiedIsSaidToBeRemoved) {
    PumpReading emptied = typeRise(PumpPoint::FullOpen, "90", true);
    emptied.gaugeRise.reset();
    const project::Edit edit = storeTestReading(m_project, emptied, false, {"rise", ""}, context());
    EXPECT_TRUE(edit.label.ends_with(": rise removed")) << edit.label;
}

TEST_F(TestEntry, aClosedRoundTakesCorrectionsOnly) {
    const PumpReading first = typeRise(PumpPoint::FullOpen, "90", true);
    project::Round round = m_project.rounds().at(m_round);
    round.state = project::RoundState::Closed;
    m_project.put(round);
    const PumpReading corrected = typeRise(PumpPoint::FullOpen, "91", true);
    EXPECT_EQ(corrected.supersedes, first.id);
}

TEST_F(TestEntry, pointsOfATestAreNoDuty) {
    // Against a shut valve, at rest or throttled the pump does not run in the loop as it stands.
    const auto before = balancing::systemCurve(m_project, balancing::assess(m_project, m_round));
    typeRise(PumpPoint::Static, "0", true);
    typeRise(PumpPoint::Shutoff, "117", true);
    typeRise(PumpPoint::ThrottledToDesign, "100", true);
    const auto after = balancing::systemCurve(m_project, balancing::assess(m_project, m_round));
    ASSERT_TRUE(before && after);
    EXPECT_EQ(before->head, after->head);
    // What the gauges differ by at rest comes off every head (Karassik et al., Pump Handbook, pump testing).
    typeRise(PumpPoint::Static, "1", false);
    const auto zeroed = balancing::systemCurve(m_project, balancing::assess(m_project, m_round));
    EXPECT_NEAR((before->head - zeroed->head).si(),
                m_project.fluid().head(quantity::PressureDifference::si(1000)).si(), 1e-9);
    typeRise(PumpPoint::Final, "80", true);
    EXPECT_NE(before->head, balancing::systemCurve(m_project, balancing::assess(m_project, m_round))->head);
}

}  // namespace
}  // namespace ww::pump_room
