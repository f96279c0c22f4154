// Which readings stand and which one counts. Own cases.
#include "core/balancing/standing_readings.h"

#include <gtest/gtest.h>

#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

TEST(StandingReadings, thoseOfAllBranchesAtOnceAreThoseOfEach) {
    FieldJob job = flatLoop(5);
    const Id first = job.round(project::RoundKind::Survey);
    for (const char* tag : {"A", "B", "C", "D"}) {
        readAs(job, tag, 1.0, "3");
    }
    const Id second = job.round(project::RoundKind::Adjusting);
    for (const char* tag : {"A", "B", "C"}) {
        readAs(job, tag, 0.9, "3");
    }
    readAs(job, "A", 1.1, "3");  // a repeated reading: the newest counts
    const auto changeNewest = [&](const char* tag, const auto& how) {
        job.change(*countingReading(job.project(), second, job.idOf(tag)), how);
    };
    changeNewest("B", [](project::Reading& r) { r.status = project::ReadingStatus::Superseded; });
    changeNewest("C", [](project::Reading& r) { r.purpose = project::ReadingPurpose::ShutValve; });
    for (const Id& round : {first, second}) {
        const auto all = countingReadings(job.project(), round);
        ASSERT_EQ(all.size(), job.project().branches().size());
        for (std::size_t i = 0; i < all.size(); ++i) {
            EXPECT_EQ(all[i], countingReading(job.project(), round, job.project().branches()[i].id)) << i;
        }
    }
    const auto now = countingReadings(job.project(), second);
    const auto of = [&](const char* tag) { return now[job.project().branches().indexOf(job.idOf(tag))]; };
    ASSERT_NE(of("A"), nullptr);
    EXPECT_EQ(of("B"), nullptr) << "superseded";
    EXPECT_EQ(of("C"), nullptr) << "of a shut valve";
    EXPECT_EQ(of("D"), nullptr) << "not read in this round";
}

}  // namespace
}  // namespace ww::balancing
