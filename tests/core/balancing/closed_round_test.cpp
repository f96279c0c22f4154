// What is said of a round that was just closed.
#include "core/balancing/closed_round.h"

#include <gtest/gtest.h>

#include "core/balancing/index_proof.h"
#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

using project::RoundKind;

/// A survey in which C is the index, then a round of this kind with A as the index at 80 % or 99 % of design.
FieldJob surveyed(RoundKind then, project::ReadingPurpose purpose, double ofA) {
    FieldJob job = flatLoop(3);
    job.round(RoundKind::Survey);
    readAs(job, "A", 1.2);
    readAs(job, "B", 1.1);
    readAs(job, "C", 0.7);
    job.round(then);
    for (const auto& [tag, flow] : {std::pair("A", ofA), std::pair("B", 1.0), std::pair("C", 1.01)}) {
        const base::Id reading = readAs(job, tag, flow);
        job.change(job.project().readings().at(reading), [&](project::Reading& r) { r.purpose = purpose; });
    }
    return job;
}

std::string noteOf(const FieldJob& job) {
    const auto note = closedRoundNote(job.project(), assessNewest(job));
    return note ? std::string(note->code()) + ' ' + base::english(*note) : "";
}

TEST(ClosedRound, theMoveOfTheIndexIsTold) {
    const std::string turned = noteOf(surveyed(RoundKind::Adjusting, project::ReadingPurpose::Hold, 0.8));
    EXPECT_EQ(turned.find("turned_round_moved_index"), 0U) << turned;
    EXPECT_NE(turned.find("ends at A now, no more at C"), std::string::npos) << turned;
    const std::string walked = noteOf(surveyed(RoundKind::Final, project::ReadingPurpose::Walk, 0.99));
    EXPECT_EQ(walked.find("index_moved"), 0U) << walked;
}

TEST(ClosedRound, anIndexThatComesBackAfterTurningIsNoMove) {
    FieldJob job = surveyed(RoundKind::Adjusting, project::ReadingPurpose::Hold, 0.8);
    job.round(RoundKind::Final);
    readAs(job, "A", 1.02);
    readAs(job, "B", 1.01);
    readAs(job, "C", 0.99);
    EXPECT_EQ(noteOf(job).find("final_round"), 0U) << noteOf(job);
}

TEST(ClosedRound, afterAFinalRoundTheNextStepIsTold) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Final);
    readAs(job, "A", 1.3);
    readAs(job, "B", 0.7);
    EXPECT_EQ(noteOf(job).find("final_round_off_share"), 0U) << noteOf(job);
    job.round(RoundKind::Final);
    readAs(job, "A", 1.02);
    readAs(job, "B", 1.0);
    const bool isProved = indexProof(job.project(), assessNewest(job)).isProved();
    EXPECT_EQ(noteOf(job).find(isProved ? "final_round_proved" : "final_round_not_proved"), 0U)
        << noteOf(job);
}

TEST(ClosedRound, sharesReadWhileValvesWereTurnedMayChange) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Adjusting);
    readAs(job, "A", 0.8);
    const base::Id reading = readAs(job, "B", 1.2);
    EXPECT_EQ(noteOf(job), "") << "no valve was turned, and no round is before it";
    job.change(job.project().readings().at(reading),
               [](project::Reading& r) { r.purpose = project::ReadingPurpose::Try; });
    EXPECT_EQ(noteOf(job).find("turned_round_closed"), 0U) << noteOf(job);
}

TEST(ClosedRound, whatDoesNotSurpriseIsNotTold) {
    EXPECT_EQ(closedRoundNote(flatLoop(2).project(), Assessment{}), std::nullopt);
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Survey);
    readAs(job, "A", 1.2);
    readAs(job, "B", 0.8);
    EXPECT_EQ(noteOf(job), "");
}

}  // namespace
}  // namespace ww::balancing
