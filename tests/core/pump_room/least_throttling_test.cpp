// The proof of least throttling: what proves it and what stands against it.

#include "core/pump_room/least_throttling.h"

#include <gtest/gtest.h>

#include "core/balancing/assess.h"
#include "core/pump_room/device_list.h"
#include "tests/support/faults.h"
#include "tests/support/pump_loop.h"

namespace ww::pump_room {
namespace {

using project::Project;
using quantity::Unit;
using support::has;
using support::typedAs;

/// One round at these settings with these dp (psi) on T1 to T4.
Project withRound(const std::vector<std::string>& settings, const std::vector<std::string>& dps) {
    Project project = support::pumpLoop();
    project::Round round;
    round.id = support::idOf(7);
    round.number = 1;
    round.kind = project::RoundKind::Final;
    project.put(round);
    for (std::size_t i = 0; i < 4; ++i) {
        project::Reading reading;
        reading.id = support::idOf(static_cast<std::uint8_t>(30 + i));
        reading.round = round.id;
        reading.branch = project.branches()[i].id;
        reading.sequence = static_cast<int>(i);
        reading.setting = *base::Decimal::parse(settings[i]);
        reading.dp = typedAs<quantity::PressureDifference>(dps[i].c_str(), Unit::Psi);
        project.put(reading);
    }
    return project;
}

/// The four circuits in proportion, T4 open: settings where ln Cv stands for Cv 6.897, 13.624 and 10.686.
Project inProportion() {
    return withRound({"3.639", "3.750", "3.737", "4"}, {"8.408", "4.849", "5.473", "3.189"});
}

void readThrottle(Project& project, const char* throttle,
                  project::PumpPoint point = project::PumpPoint::Final) {
    project::PumpReading reading;
    reading.id = support::idOf(60);
    reading.round = project.rounds()[0].id;
    reading.pump = project.pumps()[0].id;
    reading.throttle = *base::Decimal::parse(throttle);
    reading.point = point;
    project.put(reading);
    project::Pump pump = project.pumps()[0];
    pump.throttleTag = "DV-1";
    project.put(pump);
}

ThrottlingProof proofOf(const Project& project, bool isExceptionClaimed = false) {
    return proveLeastThrottling(project, balancing::assessLast(project), isExceptionClaimed);
}

TEST(LeastThrottlingTest, indexOpenAndPumpValveOpen) {
    Project project = inProportion();
    const ThrottlingProof noValve = proofOf(project);
    EXPECT_TRUE(has(noValve.notes, kProofNoThrottle));
    readThrottle(project, "100");
    const ThrottlingProof proof = proofOf(project);
    ASSERT_EQ(proof.indexPath.size(), 1U);
    for (const base::Fault& failure : proof.failures) {
        EXPECT_TRUE(failure.is(kProofRivalUndecided)) << base::englishWithSubject(failure);
    }
}

TEST(LeastThrottlingTest, throttledPumpNeedsAClaim) {
    Project project = inProportion();
    readThrottle(project, "60");
    EXPECT_TRUE(has(proofOf(project).failures, kProofThrottle));
    EXPECT_FALSE(proofOf(project).isProved);
    EXPECT_FALSE(has(proofOf(project, true).failures, kProofThrottle));
    // A test throttled to design flow is no final state.
    Project tested = inProportion();
    readThrottle(tested, "60", project::PumpPoint::ThrottledToDesign);
    EXPECT_TRUE(has(proofOf(tested).failures, kProofThrottleUnread));
}

TEST(LeastThrottlingTest, nothingOpenInTheGroup) {
    const Project project = withRound({"3", "3", "3", "3"}, {"8", "5", "5", "3"});
    const ThrottlingProof proof = proofOf(project);
    EXPECT_TRUE(has(proof.failures, kProofIndexThrottled));
    EXPECT_TRUE(has(proof.failures, kProofGroupThrottled));
}

TEST(LeastThrottlingTest, noReadingsNoProof) {
    EXPECT_TRUE(has(proofOf(support::pumpLoop()).failures, kProofNoIndex));
}

TEST(DeviceListTest, whatIsMissingWhere) {
    Project project = support::pumpLoop();
    project::Branch bare = project.branches()[1];
    bare.kind = project::BranchKind::None;
    bare.valve.reset();
    project.put(bare);
    project::Branch tight = project.branches()[2];
    tight.side = project::Side::Return;
    tight.upstreamDiameters = *base::Decimal::parse("6");
    tight.downstreamDiameters = *base::Decimal::parse("2");
    tight.disturbance = project::Disturbance::Pump;
    project.put(tight);
    project::Branch left = project.branches()[3];
    left.policy = project::BalancingPolicy::NotBalanced;
    project.put(left);
    const std::vector<DeviceRow> rows = deviceList(project);
    ASSERT_EQ(rows.size(), 5U) << "four terminals and the pump";
    EXPECT_TRUE(has(rows[0].missing, kDeviceStraightUnknown) && has(rows[0].missing, kDeviceNoSide));
    EXPECT_TRUE(has(rows[1].missing, kDeviceMissing));
    // Common practice, no source: 5 diameters, doubled behind a pump.
    EXPECT_TRUE(has(rows[2].missing, kDeviceStraightShort));
    EXPECT_TRUE(has(rows[3].missing, kDevicePolicyReason));
    EXPECT_FALSE(rows[3].needsDevice);
    EXPECT_TRUE(has(rows[4].missing, kDevicePumpThrottle));
    EXPECT_EQ(policyOf(project, 0).policy, project::BalancingPolicy::Proportional);
}

}  // namespace
}  // namespace ww::pump_room
