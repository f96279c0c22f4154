// When a round was walked. Own cases.
#include "core/project/review.h"

#include <gtest/gtest.h>

#include "tests/core/balancing/small_loop.h"

namespace ww::project {
namespace {

using balancing::flatLoop;
using balancing::readAs;
using support::FieldJob;

void setTimes(FieldJob& job, const Id& round, const std::vector<const char*>& times) {
    const std::vector<std::size_t> indices = job.project().readingsOf(round);
    for (std::size_t i = 0; i < indices.size(); ++i) {
        job.change(job.project().readings()[indices[i]],
                   [&](Reading& reading) { reading.time = base::Instant::fromText(times[i]); });
    }
}

TEST(Review, aRoundBeginsWithItsEarliestReadingElseWithItsOpening) {
    FieldJob job = flatLoop(3);
    const Id round = job.round(RoundKind::Survey);
    for (const char* tag : {"A", "B", "C"}) {
        readAs(job, tag, 1.0, "4");
    }
    const auto opened = base::Instant::fromText("2026-03-01T16:30:00");
    job.change(job.project().rounds().at(round), [&](Round& one) { one.opened = opened; });
    setTimes(job, round, {"2026-03-02T09:10:00", "2026-03-02T08:05:00", "2026-03-03T07:00:00"});
    EXPECT_EQ(beginOf(job.project(), round)->text(), "2026-03-02T08:05:00");
    for (const std::size_t index : std::vector<std::size_t>(job.project().readingsOf(round))) {
        job.change(job.project().readings()[index], [](Reading& reading) { reading.time.reset(); });
    }
    EXPECT_EQ(beginOf(job.project(), round), opened);
    job.change(job.project().rounds().at(round), [](Round& one) { one.opened.reset(); });
    EXPECT_FALSE(beginOf(job.project(), round).has_value());
}

}  // namespace
}  // namespace ww::project
