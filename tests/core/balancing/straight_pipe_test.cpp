// Straight pipe against need, and what a lack of it does to the flow's uncertainty. The lengths are common
// practice, no source.

#include "core/balancing/straight_pipe.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/balancing/assess.h"
#include "tests/support/field_job.h"

namespace ww::balancing {
namespace {

project::Branch withPipe(const char* before, const char* behind) {
    project::Branch branch;
    branch.upstreamDiameters = support::FieldJob::decimal(before);
    branch.downstreamDiameters = support::FieldJob::decimal(behind);
    return branch;
}

TEST(StraightPipeTest, needAndLack) {
    EXPECT_FALSE(straightPipe({}).isRecorded);
    EXPECT_EQ(straightPipe({}).addedUncertainty.si(), 0);
    const StraightPipe enough = straightPipe(withPipe("5", "2"));
    EXPECT_TRUE(enough.isRecorded);
    EXPECT_FALSE(enough.isShort);
    EXPECT_EQ(straightPipe(withPipe("4", "2")).addedUncertainty.si(), 0.03);
    EXPECT_EQ(straightPipe(withPipe("2", "2")).addedUncertainty.si(), 0.05);
    project::Branch behindPump = withPipe("6", "2");
    behindPump.disturbance = project::Disturbance::Pump;
    EXPECT_EQ(straightPipe(behindPump).upstreamNeed.si(), 10);
    EXPECT_TRUE(straightPipe(behindPump).isShort);
    project::Branch meter = withPipe("9", "5");
    meter.kind = project::BranchKind::Orifice;
    EXPECT_EQ(straightPipe(meter).upstreamNeed.si(), 10);
    EXPECT_EQ(straightPipe(meter).addedUncertainty.si(), 0.03);
}

TEST(StraightPipeTest, flowIsLessCertainReadingIsNot) {
    support::FieldJob job;
    const base::Id valve = job.valve({{"0", "0"}, {"4", "10"}});
    job.branch("B-1", "", "5", valve);
    job.branch("B-2", "", "5", valve);
    job.round(project::RoundKind::Survey);
    job.dp("B-1", "20.0", "4");
    job.dp("B-2", "20.0", "4");
    const Assessment before = assessLast(job.project());
    project::Branch tight = job.project().branches()[0];
    tight.upstreamDiameters = support::FieldJob::decimal("4");
    tight.downstreamDiameters = support::FieldJob::decimal("2");
    job.project().put(tight);
    const Assessment after = assessLast(job.project());
    const double flow_m3s = before.branches[0].flow->si();
    EXPECT_EQ(after.branches[0].flow->si(), flow_m3s);
    // In quadrature: the valve's 5 % becomes sqrt(5^2 + 3^2) % and the dp's part stays.
    const double was = before.branches[0].flowUncertainty->si() / flow_m3s;
    EXPECT_NEAR(after.branches[0].flowUncertainty->si() / flow_m3s, std::hypot(was, 0.03), 1e-9);
    EXPECT_EQ(after.branches[0].readingUncertainty->si(), before.branches[0].readingUncertainty->si());
    EXPECT_EQ(after.branches[1].flowUncertainty->si(), before.branches[1].flowUncertainty->si());
}

}  // namespace
}  // namespace ww::balancing
