// A laptop's clock that is wrong, set right for the job: times from then on, the record of it, and what is
// said of the times before. Own cases; the format is this program's.
#include <gtest/gtest.h>

#include "core/project/clock_offset.h"
#include "core/workbook/workbook.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/two_laptops.h"
#include "tests/support/whole_job.h"

namespace ww::workbook {
namespace {

using std::chrono::minutes;

base::Instant moment(std::string_view text) {
    return *base::Instant::fromText(text);
}

class ClockSetting : public testing::Test {
  protected:
    ClockSetting() {
        auto made = Workbook::create(m_folder.file("job.wwj"), support::wholeJob(),
                                     {m_clock, m_ids, "A. Fields", "LT-1"});
        EXPECT_TRUE(made.ok());
        m_job = std::move(*made);
    }
    void reopenOn(const std::string& machine) {
        m_job.reset();
        auto opened = Workbook::open(m_folder.file("job.wwj"), OpenMode::ReadWrite,
                                     {m_clock, m_ids, "A. Fields", machine});
        ASSERT_TRUE(opened.ok());
        m_job = std::move(*opened);
    }
    /// A reading now; its time as the journal has it.
    std::string read() {
        project::Reading reading =
            support::wholeJobReading(m_ids.next(), ++m_sequence, support::WholeJobIds{}.near, "31.0");
        reading.time = m_job->now();
        EXPECT_TRUE(m_job->apply({"DP", {reading}, {}, true}).ok());
        m_last = reading.id;
        return m_job->newestEntry().time.text();
    }
    bool isLastUncertain() const {
        const project::Project& project = m_job->project();
        return project::uncertainTime(project, *project.readings().at(m_last).time) != nullptr;
    }
    void set(std::string_view stated) {
        const auto done = m_job->apply(m_job->settingOfClock(moment(stated)));
        ASSERT_TRUE(done.ok()) << base::english(done.fault());
    }

    support::TemporaryFolder m_folder;
    support::FixedClock m_clock{"2026-03-02T12:00:00Z"};
    support::CountingIds m_ids{support::kFirstFreeId};
    std::unique_ptr<Workbook> m_job;
    base::Id m_last;
    int m_sequence = 10;
};

TEST_F(ClockSetting, whatIsWrittenAfterItCarriesTheTrueTimeAndNothingBeforeIsRewritten) {
    m_clock.advance(minutes(-181));
    EXPECT_EQ(read(), "2026-03-02T08:59:00Z");
    m_clock.advance(minutes(10));
    set("2026-03-02T12:10:20Z");
    const project::ClockOffset offset = m_job->project().clockOffsets()[0];
    EXPECT_EQ(project::added_s(offset), 181 * 60) << "to the nearest minute";
    EXPECT_EQ(offset.machine, "LT-1");
    EXPECT_EQ(offset.person, "A. Fields");
    EXPECT_EQ(offset.showed->text(), "2026-03-02T09:09:00Z");
    EXPECT_EQ(offset.stated->text(), "2026-03-02T12:10:00Z");
    EXPECT_EQ(m_job->newestEntry().label, "clock of LT-1, +3 h 1 min added");
    EXPECT_TRUE(isLastUncertain());
    m_clock.advance(minutes(1));
    EXPECT_EQ(read(), "2026-03-02T12:11:00Z");
    EXPECT_FALSE(isLastUncertain());
    const auto journal = m_job->journal();
    EXPECT_EQ(journal[1].time.text(), "2026-03-02T08:59:00Z");

    reopenOn("LT-1");
    EXPECT_EQ(m_job->now().text(), "2026-03-02T12:11:00Z");
    reopenOn("LT-2");
    EXPECT_EQ(m_job->now().text(), "2026-03-02T09:10:00Z") << "another laptop has a clock of its own";
    EXPECT_TRUE(verify(m_folder.file("job.wwj"))->isIntact);
}

TEST_F(ClockSetting, undoTakesItBackAndRedoPutsItThereAgain) {
    m_clock.advance(minutes(-60));
    set("2026-03-02T12:00:00Z");
    EXPECT_EQ(m_job->undoLabel(), "clock of LT-1, +1 h 0 min added");
    ASSERT_TRUE(m_job->undo().ok());
    EXPECT_EQ(m_job->now().text(), "2026-03-02T11:00:00Z");
    ASSERT_TRUE(m_job->redo().ok());
    EXPECT_EQ(m_job->now().text(), "2026-03-02T12:00:00Z");
}

TEST_F(ClockSetting, theOwnTimeAgainRemovesItAndNoChangeLeavesNoRecord) {
    EXPECT_TRUE(m_job->settingOfClock(moment("2026-03-02T12:00:29Z")).isEmpty()) << "less than half a minute";
    set("2026-03-02T13:00:00Z");
    EXPECT_TRUE(m_job->settingOfClock(moment("2026-03-02T13:00:10Z")).isEmpty()) << "as it is set already";
    set("2026-03-02T12:00:00Z");
    EXPECT_EQ(m_job->now().text(), "2026-03-02T12:00:00Z");
    EXPECT_EQ(m_job->newestEntry().label, "clock of LT-1, nothing added");
    EXPECT_EQ(m_job->project().clockOffsets().size(), 2u) << "both stay in the record";
}

TEST_F(ClockSetting, aClockThatWasAheadMakesTheTimesThatHadNotComeUncertain) {
    read();
    EXPECT_FALSE(isLastUncertain());
    m_clock.advance(minutes(200));
    read();
    const base::Id ahead = m_last;
    m_clock.advance(minutes(5));
    set("2026-03-02T12:25:00Z");
    EXPECT_TRUE(isLastUncertain());
    m_clock.advance(minutes(1));
    EXPECT_EQ(read(), "2026-03-02T12:26:00Z");
    EXPECT_FALSE(isLastUncertain());
    EXPECT_EQ(m_job->project().readings().at(ahead).time->text(), "2026-03-02T15:20:00Z");
}

TEST_F(ClockSetting, aSecondSettingSpeaksOfWhatWasWrittenSinceTheFirst) {
    m_clock.advance(minutes(-181));
    read();
    const base::Id early = m_last;
    set("2026-03-02T12:01:00Z");
    m_clock.advance(minutes(5));
    read();
    const base::Id good = m_last;
    m_clock.advance(minutes(-60));
    set("2026-03-02T12:10:00Z");
    const auto uncertain = [&](const base::Id& id) {
        return project::uncertainTime(m_job->project(), *m_job->project().readings().at(id).time) != nullptr;
    };
    EXPECT_TRUE(uncertain(early));
    EXPECT_FALSE(uncertain(good));
}

// The offset of a laptop goes with its work when two copies come together, and stays with that laptop.
TEST(ClockSettingMerge, theOffsetOfTheOtherLaptopIsTakenOver) {
    support::TwoLaptops two(4);
    two.b.clock.advance(minutes(-90));
    base::Instant truth = two.b.job->now();
    truth.seconds += 90 * 60;
    ASSERT_TRUE(two.b.job->apply(two.b.job->settingOfClock(truth)).ok());
    const auto merged = two.a.job->merge(two.fileOf("b"));
    ASSERT_TRUE(merged.ok()) << base::english(merged.fault());
    ASSERT_EQ(two.a.project().clockOffsets().size(), 1u);
    EXPECT_EQ(project::addedNow_s(two.a.project(), "LT-2"), 90 * 60);
    EXPECT_EQ(two.a.job->now(), two.a.clock.now());
}

}  // namespace
}  // namespace ww::workbook
