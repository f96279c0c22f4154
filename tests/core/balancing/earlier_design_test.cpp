// Rounds judged by the design of their closing, and what the loop learns of a branch that came later. Own
// cases.
#include "core/project/earlier_design.h"

#include <gtest/gtest.h>

#include "core/balancing/design_changes.h"
#include "core/balancing/history.h"
#include "core/balancing/ready_to_sign.h"
#include "core/balancing/share_count.h"
#include "core/balancing/stale_reference.h"
#include "core/balancing/walk_progress.h"
#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

using project::RoundKind;

/// A later branch: it was not there in any round that is closed now.
void addLater(FieldJob& job, std::string_view tag, std::string_view parent, std::string_view design) {
    const base::Id id = job.branch(tag, parent, design, job.project().valves()[0].id);
    job.change(job.project().branches().at(id), [&](project::Branch& branch) {
        for (const project::Round& round : job.project().rounds()) {
            branch.earlierDesigns.push_back({round.id, false, std::nullopt});
        }
    });
}

TEST(EarlierDesign, aLaterBranchIsNoPartOfTheRound) {
    FieldJob job = rivalLoop(project::RoundState::Accepted, 1.03);
    const Assessment before = assessNewest(job);
    addLater(job, "E", "R1", "4");
    const Assessment after = assessNewest(job);
    EXPECT_EQ(after.verdict, before.verdict);
    EXPECT_EQ(after.reasons, before.reasons);
    EXPECT_EQ(after.terminalCount, 4u);
    EXPECT_EQ(after.onShareCount, before.onShareCount);
    EXPECT_EQ(after.spread, before.spread);
    EXPECT_EQ(after.findings.size(), before.findings.size());
    const BranchResult& later = resultOf(job, after, "E");
    EXPECT_FALSE(later.isInLoop);
    EXPECT_FALSE(later.isTerminal);
    EXPECT_EQ(later.branch, job.indexOf("E"));
    EXPECT_EQ(after.branches.size(), 7u) << "in the order of the branches of today";
    const ShareCount count = shareCount(after);
    EXPECT_EQ(count.all, 4u);
}

TEST(EarlierDesign, theWalkOfTheRoundDoesNotAskForALaterBranch) {
    FieldJob job = rivalLoop(project::RoundState::Accepted, 1.03);
    const auto progress = [&] { return walkProgress(job.project(), *job.project().lastRound()); };
    const WalkProgress before = progress();
    addLater(job, "E", "R1", "4");
    EXPECT_EQ(progress().all, before.all);
    EXPECT_EQ(progress().read, before.read);
    EXPECT_EQ(progress().unread, before.unread);
    job.round(RoundKind::Adjusting, project::RoundState::Open);
    EXPECT_EQ(progress().all, before.all + 1) << "it belongs to the next round";
}

TEST(EarlierDesign, aTerminalThatBecameAGroupLaterIsOneStill) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Survey);
    readAs(job, "A", 1.0);
    readAs(job, "B", 1.0);
    addLater(job, "A1", "A", "1");
    addLater(job, "A2", "A", "3");
    const Assessment round = assessNewest(job);
    EXPECT_TRUE(resultOf(job, round, "A").isTerminal);
    EXPECT_EQ(round.terminalCount, 2u);
    job.round(RoundKind::Adjusting, project::RoundState::Open);
    EXPECT_FALSE(resultOf(job, assessNewest(job), "A").isTerminal);
}

TEST(EarlierDesign, theRoundBeforeIsComparedByItsOwnDesign) {
    FieldJob job = flatLoop(3);
    job.round(RoundKind::Adjusting);
    for (const char* tag : {"A", "B", "C"}) {
        readAs(job, tag, 1.0);
    }
    const base::Id first = job.newestRound();
    job.change(job.project().branches().at(job.idOf("A")), [&](project::Branch& branch) {
        branch.earlierDesigns = {{first, true, branch.designFlow}};
        branch.designFlow = job.flowOf("6");
    });
    job.round(RoundKind::Adjusting, project::RoundState::Open);
    for (const char* tag : {"A", "B", "C"}) {
        readAs(job, tag, 1.0, tag[0] == 'C' ? "4" : "3");
    }
    RoundMemory memory;
    AssessOptions options;
    for (RoundMemory* kept : {static_cast<RoundMemory*>(nullptr), &memory}) {
        options.memory = kept;
        const Assessment now = assessNewest(job, options);
        // C stood open in both rounds and was on its share of the first design.
        EXPECT_EQ(resultOf(job, now, "C").state, State::Drifted);
        EXPECT_EQ(resultOf(job, now, "A").state, State::Short);
        EXPECT_NEAR(now.totalDesign.in(quantity::Unit::CubicMetrePerHour), 14, 1e-9);
    }
    EXPECT_NEAR(assess(job.project(), first).totalDesign.in(quantity::Unit::CubicMetrePerHour), 12, 1e-9);
    EXPECT_EQ(assess(job.project(), first).onShareCount, 3u);
}

TEST(EarlierDesign, signingAsksWhyWhatCameLaterIsNotRead) {
    FieldJob job = rivalLoop(project::RoundState::Accepted, 1.03);
    const auto lineOf = [&](const base::MessageForm& form) -> std::optional<SignState> {
        for (const SignLine& line : readyToSign(job.project(), assessNewest(job))) {
            if (line.text.is(form)) {
                return line.state;
            }
        }
        return std::nullopt;
    };
    EXPECT_EQ(lineOf(kBranchesAdded), std::nullopt);
    addLater(job, "E", "R1", "4");
    EXPECT_EQ(lineOf(kSignRead), SignState::Good);
    EXPECT_EQ(lineOf(kBranchesAdded), SignState::NeedsReason);
    job.round(RoundKind::Final, project::RoundState::Open);
    EXPECT_EQ(lineOf(kBranchesAdded), std::nullopt) << "the new round knows it";
    EXPECT_EQ(lineOf(kSignUnread), SignState::Blocks);
}

TEST(EarlierDesign, theHistoryHasALaterBranchShutUntilItBelongs) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Survey);
    readAs(job, "A", 1.0);
    readAs(job, "B", 1.0);
    addLater(job, "C", "", "4");
    const base::Id later = job.idOf("C");
    const auto isClosed = [&](const LoopState& state) {
        return std::count(state.closed.begin(), state.closed.end(), later) == 1;
    };
    History told = history(job.project());
    EXPECT_TRUE(isClosed(stateAfter(job.project(), told, told.readings.front().movesBefore)));
    EXPECT_FALSE(isClosed(stateAfter(job.project(), told, told.moves.size()))) << "it is there now";
    const auto stale = staleReference(job.project(), told, job.indexOf("A"), std::nullopt);
    ASSERT_EQ(stale.size(), 1u);
    EXPECT_EQ(base::english(stale[0]), "C was added after the reference was read; read the reference again");
    job.round(RoundKind::Adjusting, project::RoundState::Open);
    readAs(job, "C", 1.0);
    told = history(job.project());
    EXPECT_TRUE(isClosed(stateAfter(job.project(), told, told.readings.front().movesBefore)));
    EXPECT_FALSE(isClosed(stateAfter(job.project(), told, told.readings.back().movesBefore)));
    EXPECT_EQ(
        std::count_if(told.moves.begin(), told.moves.end(), [](const Move& move) { return move.isJoining; }),
        1);
}

}  // namespace
}  // namespace ww::balancing
