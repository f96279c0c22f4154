// The energy code's test: boundaries, what is missing, and its words.

#include "core/energy/code_test.h"

#include <gtest/gtest.h>

#include "tests/support/faults.h"
#include "tests/support/us_units.h"

namespace ww::energy {
namespace {

using support::ft;
using support::gpm;
using support::has;
using support::hp;
using support::kTradeWater;

CodeTestInput throttledBy(double excess_ft, double plate_hp) {
    CodeTestInput input;
    input.flow = gpm(1000);
    input.headThrottled = ft(60 + excess_ft);
    input.headNeeded = ft(60);
    input.density = kTradeWater;
    input.efficiency = Ratio::si(0.8);
    input.plate = hp(plate_hp);
    return input;
}

TEST(CodeTestTest, floorAndShareMeetAt60hp) {
    // Computed by hand: 5 % of 60 hp is 3 hp; above it the share governs.
    EXPECT_NEAR(
        codeTest(throttledBy(1, 60), percentOrFloorThresholds()).limit->in(quantity::Unit::Horsepower), 3.0,
        1e-9);
    EXPECT_NEAR(
        codeTest(throttledBy(1, 61), percentOrFloorThresholds()).limit->in(quantity::Unit::Horsepower), 3.05,
        1e-9);
}

TEST(CodeTestTest, atTheLimitIsExempt) {
    CodeTestInput input = throttledBy(1, 30);
    const Power one = codeTest(input, percentOrFloorThresholds()).excess.value();
    input.headThrottled = ft(60) + ft(1) * (hp(3) / one);
    EXPECT_EQ(codeTest(input, percentOrFloorThresholds()).decision, CodeDecision::ExemptSmallExcess);
    input.headThrottled = input.headThrottled + ft(0.001);
    EXPECT_EQ(codeTest(input, percentOrFloorThresholds()).decision, CodeDecision::MustReduce);
}

TEST(CodeTestTest, metricPlates) {
    CodeTestInput input = throttledBy(20, 30);
    input.plate = Power::si(7500);
    EXPECT_EQ(codeTest(input, percentOrFloorThresholds(true)).decision, CodeDecision::ExemptSmallMotor);
    EXPECT_EQ(codeTest(input, percentOrFloorThresholds(false)).decision, CodeDecision::MustReduce)
        << "10.06 hp";
    input.plate = Power::si(3700);
    EXPECT_EQ(codeTest(input, percentOnlyThresholds(true)).decision, CodeDecision::ExemptSmallMotor);
}

TEST(CodeTestTest, ownEfficiencies) {
    // Computed by hand: 1000 gpm, 80 ft at 80 % and 60 ft at 76 %: 25.253 - 19.936 = 5.316 hp.
    CodeTestInput input = throttledBy(20, 30);
    input.efficiencyReduced = Ratio::si(0.76);
    EXPECT_NEAR(codeTest(input, percentOrFloorThresholds()).excess->in(quantity::Unit::Horsepower), 5.316,
                0.006);
}

TEST(CodeTestTest, whatIsMissing) {
    CodeTestInput input = throttledBy(20, 30);
    input.plate.reset();
    const CodeTest noPlate = codeTest(input, percentOrFloorThresholds());
    EXPECT_FALSE(noPlate.decision.has_value());
    EXPECT_TRUE(has(noPlate.findings, kCodePlateUnknown) && has(noPlate.findings, kCodeNotNamed));
    input = throttledBy(20, 30);
    input.efficiency.reset();
    const CodeTest noEfficiency = codeTest(input, percentOrFloorThresholds());
    EXPECT_FALSE(noEfficiency.decision.has_value());
    EXPECT_FALSE(noEfficiency.excess.has_value());
    EXPECT_TRUE(has(noEfficiency.findings, kCodeEfficiencyUnknown));
    input.plate = hp(5);
    EXPECT_EQ(codeTest(input, percentOrFloorThresholds()).decision, CodeDecision::ExemptSmallMotor)
        << "a small motor needs no efficiency";
}

TEST(CodeTestTest, basisNamesEditionClauseAndClaim) {
    CodeTestInput input = throttledBy(20, 30);
    input.edition = "State Energy Code 2024";
    input.clause = "4.7.2";
    input.exceptionClaimed = "none";
    const CodeTest test = codeTest(input, percentOrFloorThresholds());
    EXPECT_TRUE(test.findings.empty());
    std::string words;
    for (const base::Fault& line : test.basis) {
        words += base::english(line) + "\n";
    }
    EXPECT_NE(words.find("State Energy Code 2024"), std::string::npos);
    EXPECT_NE(words.find("4.7.2"), std::string::npos);
    EXPECT_TRUE(has(test.basis, kCodeMustReduce) && has(test.basis, kCodeFormula) &&
                has(test.basis, kCodeClaimed));
}

}  // namespace
}  // namespace ww::energy
