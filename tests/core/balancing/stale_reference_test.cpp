// Which reference is stale, and how valves stood at a reading (common practice, no source; 30 minutes and the
// matching band are the job's own limits).
#include "core/balancing/stale_reference.h"

#include <gtest/gtest.h>

#include "tests/support/field_job.h"

namespace ww::balancing {
namespace {

/// Three circuits on one riser, one on another.
support::FieldJob fourInARow() {
    support::FieldJob job;
    const base::Id valve = job.valve({{"0", "0"}, {"1", "1"}, {"4", "10"}});
    job.branch("R1", "", "");
    job.branch("R2", "", "");
    job.branch("A", "R1", "1", valve);
    job.branch("B", "R1", "1", valve);
    job.branch("C", "R2", "1", valve);
    job.pump("P-1", {{"0", "10"}, {"5", "8"}});
    return job;
}

TEST(History, knowsWhereEveryValveStoodAtEveryReading) {
    support::FieldJob job = fourInARow();
    job.round(project::RoundKind::Survey);
    job.dp("A", "10.0", "4");
    job.dp("B", "11.0", "4");
    job.round(project::RoundKind::Adjusting);
    job.dp("A", "14.0", "2");
    job.dp("B", "15.0", "3");
    const auto at = [&](const History& record, std::size_t reading, const char* tag) {
        const LoopState state = stateAfter(job.project(), record, record.readings[reading].movesBefore);
        return state.settings.at(job.idOf(tag)).si();
    };
    const History asRead = history(job.project());
    EXPECT_EQ(at(asRead, 2, "A"), 2);
    EXPECT_EQ(at(asRead, 2, "B"), 4);
    EXPECT_EQ(at(asRead, 3, "B"), 3);
    const RoundOrder orders[] = {RoundOrder::SetBefore, RoundOrder::SetBefore};
    const History setBefore = history(job.project(), orders);
    EXPECT_EQ(at(setBefore, 2, "B"), 3);
    EXPECT_EQ(setBefore.readings[2].movesBefore, setBefore.readings[3].movesBefore);
}

TEST(History, aStruckReadingMovesNothing) {
    support::FieldJob job = fourInARow();
    job.round(project::RoundKind::Adjusting);
    const base::Id reading = job.dp("A", "10.0", "2");
    job.change(job.project().readings().at(reading),
               [](project::Reading& record) { record.status = project::ReadingStatus::Struck; });
    const History record = history(job.project());
    EXPECT_TRUE(record.moves.empty());
    EXPECT_TRUE(record.readings.empty());
}

TEST(History, aValveShutForAMomentStandsWhereItStood) {
    support::FieldJob job = fourInARow();
    job.round(project::RoundKind::Survey);
    job.dp("A", "10.0", "4");
    const base::Id reading = job.dp("A", "35.0", "0");
    job.change(job.project().readings().at(reading),
               [](project::Reading& record) { record.purpose = project::ReadingPurpose::ShutValve; });
    job.dp("B", "11.0", "4");
    const History record = history(job.project());
    EXPECT_TRUE(record.moves.empty());
    ASSERT_EQ(record.readings.size(), 3U);
    EXPECT_TRUE(record.readings[1].isShutForMoment);
}

TEST(History, aRoundWithTriesWasReadValveByValve) {
    support::FieldJob job = fourInARow();
    const base::Id round = job.round(project::RoundKind::Final);
    job.dp("A", "10.0", "4");
    const base::Id reading = job.dp("B", "11.0", "3");
    EXPECT_FALSE(isReadValveByValve(job.project(), job.project().rounds().at(round)));
    job.change(job.project().readings().at(reading),
               [](project::Reading& record) { record.purpose = project::ReadingPurpose::Try; });
    EXPECT_TRUE(isReadValveByValve(job.project(), job.project().rounds().at(round)));
    EXPECT_EQ(history(job.project()).orders.front(), RoundOrder::AsRead);
}

TEST(History, aPumpReadAgainstAShutValveIsNoStateOfTheLoop) {
    support::FieldJob job = fourInARow();
    job.round(project::RoundKind::Survey);
    const base::Id reading = job.pumpRise("9.5", "1750");
    EXPECT_EQ(history(job.project()).pumpReadings.size(), 1U);
    job.change(job.project().pumpReadings().at(reading),
               [](project::PumpReading& record) { record.point = project::PumpPoint::Shutoff; });
    EXPECT_TRUE(history(job.project()).pumpReadings.empty());
}

TEST(History, zeroAndAZeroCoefficientCountAsShut) {
    support::FieldJob job = fourInARow();
    const project::Branch& branch = job.project().branches().at(job.idOf("A"));
    EXPECT_TRUE(isShutSetting(job.project(), branch, Setting::si(0)));
    EXPECT_FALSE(isShutSetting(job.project(), branch, Setting::si(1)));
}

TEST(StaleReference, isOldAfterItsLimit) {
    support::FieldJob job = fourInARow();
    job.round(project::RoundKind::Survey);
    EXPECT_TRUE(staleReference(job.project(), history(job.project()), job.indexOf("A"), std::nullopt)
                    .front()
                    .is(kReferenceUnread));
    const base::Id reading = job.dp("A", "10.0", "4");
    const base::Instant read = *job.project().readings().at(reading).time;
    const auto after = [&](int minutes) {
        return staleReference(job.project(), history(job.project()), job.indexOf("A"),
                              base::Instant{read.seconds + 60 * minutes, {}});
    };
    EXPECT_TRUE(after(30).empty());
    ASSERT_EQ(after(31).size(), 1U);
    EXPECT_TRUE(after(31).front().is(kReferenceOld));
    EXPECT_EQ(after(31).front().arguments, (std::vector<std::string>{"31 min ago", "30 min"}));
    EXPECT_EQ(base::english(after(129600).front()),
              "the reference was read 3 months ago, the limit is 30 min; read it again");
}

TEST(StaleReference, isStaleOnceAValveOfItsGroupMoved) {
    support::FieldJob job = fourInARow();
    job.round(project::RoundKind::Survey);
    job.dp("A", "10.0", "4");
    job.round(project::RoundKind::Adjusting);
    job.settingOnly("C", "3");
    // A valve in another riser's group moves both neighbours alike.
    EXPECT_TRUE(
        staleReference(job.project(), history(job.project()), job.indexOf("A"), std::nullopt).empty());
    job.settingOnly("B", "3");
    const auto found = staleReference(job.project(), history(job.project()), job.indexOf("A"), std::nullopt);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_TRUE(found.front().is(kReferenceMovedOver));
    EXPECT_EQ(found.front().arguments.front(), "B");
}

TEST(StaleReference, saysWhenTheReferenceItselfDrifted) {
    support::FieldJob job = fourInARow();
    job.round(project::RoundKind::Survey);
    job.dp("A", "10.0", "4");
    job.round(project::RoundKind::Adjusting);
    job.dp("A", "10.5");  // 2.5 % more flow
    const auto stale = [&] {
        return staleReference(job.project(), history(job.project()), job.indexOf("A"), std::nullopt);
    };
    EXPECT_TRUE(stale().empty());
    job.dp("A", "12.0");  // 6.9 % more
    ASSERT_EQ(stale().size(), 1U);
    EXPECT_TRUE(stale().front().is(kReferenceDrifted));
}

}  // namespace
}  // namespace ww::balancing
