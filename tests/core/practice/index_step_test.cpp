// What a balanced round lacks to prove its index circuit, on simulated buildings whose handles stop at marks.
#include "core/balancing/advice/index_step.h"

#include <gtest/gtest.h>

#include <functional>

#include "core/balancing/assess.h"
#include "core/balancing/index_proof.h"
#include "core/balancing/share_count.h"
#include "tests/support/guided_practice.h"

namespace ww::practice {
namespace {

using balancing::Assessment;
using balancing::IndexStep;
using project::RoundKind;

std::size_t onShareOf(const Assessment& round) {
    return balancing::shareCount(round).onShare.value_or(0);
}

TEST(IndexStepTest, aRiserOpenedByMarksLiftsItsTerminalAboveTheIndex) {
    int named = 0;
    int lifted = 0;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        SCOPED_TRACE(seed);
        const Building building(planOf(Difficulty::Steady), seed);
        support::GuidedPractice technician(building);
        technician.walk(RoundKind::Survey);
        for (int round = 0; round < 2; ++round) {
            technician.set(technician.advise(technician.learn()));
            technician.walk(RoundKind::Final);
        }
        const Assessment before = balancing::assessLast(technician.project());
        const auto advice = technician.advise(technician.learn());
        const auto proof = balancing::indexProof(technician.project(), before);
        if (advice.status != balancing::AdviceStatus::Verified || proof.isProved()) {
            EXPECT_TRUE(advice.indexSteps.empty());
            continue;
        }
        if (advice.indexSteps.empty()) {
            continue;  // no mark would keep every share within the band
        }
        const IndexStep step = advice.indexSteps.front();
        ++named;
        ASSERT_TRUE(step.why.is(balancing::kOpensForIndex)) << base::englishWithSubject(step.why);
        EXPECT_GT(step.setting, *before.branches[step.branch].setting);
        EXPECT_EQ(balancing::indexStepAt(advice, step.branch)->setting, step.setting);
        ASSERT_TRUE(advice.next.has_value());
        EXPECT_EQ(advice.next->branch, step.branch) << "the next move";
        const std::size_t rival = technician.project().branches().indexOf(
            technician.project().branchTagged(step.why.arguments[2])->id);
        technician.turn(step.branch, step.setting);
        technician.walk(RoundKind::Final);
        const Assessment after = balancing::assessLast(technician.project());
        EXPECT_GE(onShareOf(after) + 1, onShareOf(before));
        const auto lift = [&](const Assessment& round) {
            return *round.branches[rival].ofDesign - *round.branches[*before.index.terminal].ofDesign;
        };
        EXPECT_GT(lift(after), lift(before));
        lifted += lift(after).si() >= 0 ? 1 : 0;
    }
    EXPECT_GE(named, 3);
    EXPECT_GE(2 * lifted, named) << "most are then read above the index";
}

/// The first building of these seeds whose final round names at least two valves.
std::optional<std::uint64_t> seedWithTwoSteps(const std::function<bool(support::GuidedPractice&)>& use) {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const Building building(planOf(Difficulty::Steady), seed);
        support::GuidedPractice technician(building);
        technician.walk(RoundKind::Survey);
        for (int round = 0; round < 2; ++round) {
            technician.set(technician.advise(technician.learn()));
            technician.walk(RoundKind::Final);
        }
        if (use(technician)) {
            return seed;
        }
    }
    return std::nullopt;
}

// The second is still named in the round in which the first was turned; another valve turned ends it.
TEST(IndexStepTest, whatIsLeftIsNamedUntilAllAreTurned) {
    const auto found = seedWithTwoSteps([](support::GuidedPractice& technician) {
        const balancing::Advice advice = technician.advise(technician.learn());
        if (advice.indexSteps.size() < 2) {
            return false;
        }
        const project::Project& project = technician.project();
        const IndexStep& first = advice.indexSteps.front();
        const auto learned = technician.learn();
        std::vector<quantity::Setting> steps(project.branches().size(),
                                             technician.building().plan().settingStep);
        const auto left = [&](std::size_t branch, quantity::Setting setting) {
            balancing::LoopState present = learned.present;
            present.settings[project.branches()[branch].id] = setting;
            return balancing::indexStepsLeft(project, present, learned.resistances, steps);
        };
        const auto after = left(first.branch, first.setting);
        EXPECT_EQ(after.size() + 1, advice.indexSteps.size());
        EXPECT_EQ(after.front().branch, advice.indexSteps[1].branch);
        const std::size_t other = project.tree().terminals().front();
        EXPECT_TRUE(left(other, quantity::Setting::si(1.05)).empty());
        return true;
    });
    EXPECT_TRUE(found.has_value()) << "no building of these lacks two";
}

}  // namespace
}  // namespace ww::practice
