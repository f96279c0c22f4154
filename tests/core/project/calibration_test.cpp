// The day on which an instrument falls due still counts; after it, its readings are overdue. Our own rule, as
// dates on certificates are read by common practice.
#include "core/project/calibration.h"

#include <gtest/gtest.h>

namespace ww::project {
namespace {

Instrument dueOn(const char* date) {
    Instrument instrument;
    instrument.due = Instant::fromText(date);
    return instrument;
}

TEST(Calibration, holdsToTheEndOfTheDayOnWhichItFallsDue) {
    const Instrument meter = dueOn("2026-03-02");
    EXPECT_FALSE(isOverdue(meter, Instant::fromText("2026-03-01T23:59:59")));
    EXPECT_FALSE(isOverdue(meter, Instant::fromText("2026-03-02T00:00:00")));
    EXPECT_FALSE(isOverdue(meter, Instant::fromText("2026-03-02T23:59:59")));
    EXPECT_TRUE(isOverdue(meter, Instant::fromText("2026-03-03T00:00:00")));
    EXPECT_EQ(daysSinceDue(meter, Instant::fromText("2026-03-02T23:59:59")), 0);
    EXPECT_EQ(daysSinceDue(meter, Instant::fromText("2026-03-01")), -1);
    EXPECT_EQ(daysSinceDue(meter, Instant::fromText("2026-04-02T08:00:00")), 31);
}

TEST(Calibration, isJudgedByTheDateThatWasWritten) {
    const Instrument meter = dueOn("2026-03-02");
    // Half past midnight on the 3rd where it was read, still the 2nd in UTC; and the other way round.
    EXPECT_TRUE(isOverdue(meter, Instant::fromText("2026-03-03T00:30:00+02:00")));
    EXPECT_FALSE(isOverdue(meter, Instant::fromText("2026-03-02T22:00:00-05:00")));
}

TEST(Calibration, isOverdueWithoutAReasonOrWithOne) {
    Instrument meter = dueOn("2026-03-02");
    EXPECT_FALSE(isOverdueUnexplained(meter, Instant::fromText("2026-03-02")));
    EXPECT_TRUE(isOverdueUnexplained(meter, Instant::fromText("2026-03-03")));
    meter.overdueReason = "checked against M-3 that day";
    EXPECT_FALSE(isOverdueUnexplained(meter, Instant::fromText("2026-03-03")));
    EXPECT_TRUE(isOverdue(meter, Instant::fromText("2026-03-03"))) << "all the same";
}

TEST(Calibration, isNotJudgedWithoutADate) {
    EXPECT_FALSE(isOverdue(Instrument{}, Instant::fromText("2026-03-02")));
    EXPECT_FALSE(isOverdue(dueOn("2026-03-02"), std::nullopt));
    EXPECT_FALSE(daysSinceDue(Instrument{}, Instant::fromText("2026-03-02")).has_value());
}

TEST(Calibration, daysAreThoseOfTheDates) {
    EXPECT_EQ(Instant::fromText("1970-01-01")->dateNumber(), 0);
    EXPECT_EQ(Instant::fromText("1969-12-31T23:00:00")->dateNumber(), -1);
    EXPECT_EQ(Instant::fromText("2000-03-01")->dateNumber() - Instant::fromText("2000-02-28")->dateNumber(),
              2);
    EXPECT_EQ(Instant::fromText("1970-01-01T23:30:00Z")->date(), "1970-01-01");
}

}  // namespace
}  // namespace ww::project
