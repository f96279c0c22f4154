// The classical predictions, against a loop of square laws computed by hand (H = k Q^2, ft and gpm; own
// derivation): circuits T2 15 ft at 30 gpm with Cv 20, T3 10 ft at 25 gpm, reference T4 25 gpm.
#include "core/balancing/advice/predictors.h"

#include <gtest/gtest.h>

#include "core/balancing/assess.h"
#include "core/curve/valve_flow.h"
#include "tests/support/field_job.h"
#include "tests/support/small_loop.h"

namespace ww::balancing {
namespace {

using quantity::Unit;
using support::kFeetPerPsi;

// Any density does: the laws know only ratios. One foot counts as one kilopascal here.
PressureDifference feet(double number) {
    return PressureDifference::from(number, Unit::Kilopascal);
}
VolumeFlow gpm(double number) {
    return VolumeFlow::from(number, Unit::GallonPerMinute);
}
Resistance feetPerGpmSquared(double number) {
    return Resistance::si(feet(number).si() / (gpm(1).si() * gpm(1).si()));
}
double inFeetPerGpmSquared(Resistance resistance) {
    return resistance.si() / feetPerGpmSquared(1).si();
}
Resistance ofCv(double cv) {
    return feetPerGpmSquared(kFeetPerPsi / (cv * cv));
}
double cvOf(Resistance resistance) {
    return std::sqrt(kFeetPerPsi / inFeetPerGpmSquared(resistance));
}

TEST(Predictors, theNodeDpOfASurveyTellsWhatMustBeAdded) {
    // Survey: T3 takes 32.891 gpm through 0.016, the reference stands at 1.0091 of design.
    const PressureDifference node = feet(0.016 * 32.891 * 32.891);
    EXPECT_NEAR(node.in(Unit::Kilopascal), 17.309, 1e-3);
    const Resistance whole = resistanceToMatch(node, Ratio::si(1.0091), gpm(25));
    EXPECT_NEAR(inFeetPerGpmSquared(whole) - 0.016, 0.0112, 5e-6);
}

TEST(Predictors, twoTriesTellThePathAndTheSetting) {
    const MatchTry first{ofCv(20), gpm(38.17), gpm(26.886)};
    const MatchTry second{ofCv(15), gpm(34.67), gpm(27.51)};
    const auto path = pathFromTwoTries(first, second);
    ASSERT_TRUE(path.has_value());
    EXPECT_NEAR(inFeetPerGpmSquared(*path), 0.01089, 5e-5);
    const auto valve = valveToMatch(first, second, gpm(30), gpm(25));
    ASSERT_TRUE(valve.has_value());
    EXPECT_NEAR(cvOf(*valve), 13.62, 0.01);
}

TEST(Predictors, theRuleOfThumbClosesTooLittle) {
    const FlowCoefficient naive =
        coefficientAtConstantDrop(FlowCoefficient::from(20, Unit::Cv), Ratio::si(1.0755 / 1.2725));
    EXPECT_NEAR(naive.in(Unit::Cv), 16.90, 0.005);
}

TEST(Predictors, tryingTheSameSettingTwiceTellsNothing) {
    const MatchTry one{ofCv(20), gpm(38), gpm(27)};
    EXPECT_FALSE(pathFromTwoTries(one, one).has_value());
    // Closing that raises the own flow contradicts itself.
    EXPECT_FALSE(pathFromTwoTries(one, {ofCv(15), gpm(39), gpm(27)}).has_value());
}

TEST(Predictors, theSpeedFollowsFromTheMatchedGroup) {
    EXPECT_NEAR(speedRatioAfterMatching(Ratio::si(1.15470)).si(), 0.86603, 1e-5);
}

TEST(Predictors, anUpstreamReferenceIsReplacedByTheLastMember) {
    support::FieldJob job(project::UnitSystem::US);
    const base::Id valve = job.valve({{"1", "1"}, {"4", "10"}});
    for (const char* tag : {"T1", "T2", "T3"}) {
        job.branch(tag, "", "10", valve);
    }
    job.round(project::RoundKind::Survey);
    job.dp("T1", "1.0", "4");
    job.dp("T2", "2.0", "4");
    job.dp("T3", "3.0", "4");
    const Assessment assessment = assess(job.project(), job.newestRound());
    ASSERT_EQ(assessment.groups.front().reference, 0U);
    EXPECT_EQ(workingReference(assessment, assessment.groups.front()), 2U);
    job.round(project::RoundKind::Adjusting);
    job.dp("T1", "3.0", "4");
    job.dp("T2", "2.0", "4");
    job.dp("T3", "1.0", "4");
    const Assessment later = assess(job.project(), job.newestRound());
    EXPECT_FALSE(workingReference(later, later.groups.front()).has_value());
}

}  // namespace
}  // namespace ww::balancing
