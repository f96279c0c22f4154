// The dp set-point: reset laws, circuits that call alone, and its checks.

#include "core/energy/dp_set_point.h"

#include <gtest/gtest.h>

#include "tests/support/faults.h"
#include "tests/support/us_units.h"

namespace ww::energy {
namespace {

using quantity::Unit;
using support::gpm;
using support::has;

PressureDifference psid(double number) {
    return PressureDifference::from(number, Unit::Psi);
}

TEST(DpSetPoint, resetLaws) {
    // US DOE/FEMP, Continuous Commissioning Guidebook, 2002, chapter 5: 10 psi at 275 gpm, margin 2 psi,
    // limits 5 and 15 psi. The formula is squared; the printed example (5.64, 12.0, 14.73) is linear.
    DpResetLaw law;
    law.form = ResetLaw::Square;
    law.dpAtReference = psid(10);
    law.reference = gpm(275);
    law.margin = psid(2);
    law.low = psid(5);
    law.high = psid(15);
    EXPECT_NEAR(dpAtFlow(law, gpm(100)).setPoint.in(Unit::Psi), 5.0, 1e-9);
    EXPECT_NEAR(dpAtFlow(law, gpm(100)).computed.in(Unit::Psi), 3.32, 0.005);
    EXPECT_NEAR(dpAtFlow(law, gpm(275)).setPoint.in(Unit::Psi), 12.0, 1e-9);
    EXPECT_NEAR(dpAtFlow(law, gpm(350)).setPoint.in(Unit::Psi), 15.0, 1e-9);
    EXPECT_NEAR(dpAtFlow(law, gpm(350)).computed.in(Unit::Psi), 18.2, 0.005);
    law.form = ResetLaw::Linear;
    EXPECT_NEAR(dpAtFlow(law, gpm(100)).setPoint.in(Unit::Psi), 5.64, 0.005);
    EXPECT_NEAR(dpAtFlow(law, gpm(275)).setPoint.in(Unit::Psi), 12.0, 1e-9);
    EXPECT_NEAR(dpAtFlow(law, gpm(350)).setPoint.in(Unit::Psi), 14.73, 0.005);
    law.form = ResetLaw::None;
    EXPECT_NEAR(dpAtFlow(law, gpm(100)).setPoint.in(Unit::Psi), 10.0, 1e-9);
}

TEST(DpSetPoint, checks) {
    SetPointCheckInput good;
    good.setPoint = psid(10);
    good.zero = psid(0.05);
    good.accuracy = psid(0.1);
    good.need = psid(9.5);
    good.indexOfDesign = Ratio::si(1.02);
    const auto calm = setPointFindings(good);
    ASSERT_EQ(calm.size(), 1U);
    EXPECT_TRUE(calm[0].is(kSetPointVariable)) << "the warning that holds for every variable-flow loop";
    SetPointCheckInput bad = good;
    bad.zero = psid(-0.3);
    bad.need = psid(9.0);
    bad.indexOfDesign = Ratio::si(0.85);
    bad.low = psid(12);
    bad.high = psid(11);
    const auto findings = setPointFindings(bad);
    EXPECT_TRUE(has(findings, kSetPointZero) && has(findings, kSetPointTooHigh) &&
                has(findings, kSetPointIndex) && has(findings, kSetPointLimits));
    bad.zero.reset();
    EXPECT_TRUE(has(setPointFindings(bad), kSetPointZeroMissing));
    // 110 % of the need is still good (ASHRAE/IES 90.1, from memory).
    good.need = good.setPoint / 1.10;
    EXPECT_FALSE(has(setPointFindings(good), kSetPointTooHigh));
}

}  // namespace
}  // namespace ww::energy
