// The walk sheet of the small job of tests/support/job_tables.h: its route, what is known, and its way back.
#include "core/report/walk_sheet.h"

#include <gtest/gtest.h>

#include "core/exchange/table_source.h"
#include "tests/support/counting_ids.h"
#include "tests/support/job_tables.h"

namespace ww::report {
namespace {

project::Project sheetJob() {
    const support::TemporaryFolder folder;
    support::CountingIds ids;
    project::Project project;
    for (const project::AnyRecord& record :
         exchange::readJobFolder(support::JobTables().writeTo(folder), ids).edit.put) {
        std::visit([&](const auto& value) { project.put(value); }, record);
    }
    return project;
}

/// What the job takes of a sheet that was filled in; each fault is a failure of the test.
exchange::ImportPlan readBack(const std::string& text, const project::Project& job) {
    const support::TemporaryFolder folder;
    std::vector<exchange::RowFault> faults;
    support::CountingIds ids(90'000);
    const auto source = exchange::openTables(folder.write("walk sheet.csv", text), faults);
    if (source == nullptr) {
        ADD_FAILURE() << "the sheet was not opened";
        return {};
    }
    exchange::ImportPlan plan = exchange::readReadings(*source, job, ids);
    for (const exchange::RowFault& fault : plan.faults) {
        ADD_FAILURE() << exchange::text(fault);
    }
    return plan;
}

TEST(WalkSheet, ShowsTheRouteWithWhatIsKnown) {
    const WalkSheet sheet = walkSheet(sheetJob());
    EXPECT_EQ(sheet.jobName, "Weir House");
    EXPECT_EQ(sheet.roundNumber, 2);
    EXPECT_TRUE(sheet.table.isForm);
    ASSERT_EQ(sheet.table.rows.size(), 2U);
    const std::vector<Cell>& row = sheet.table.rows[0];
    EXPECT_EQ(row[0].text, "T1");
    EXPECT_EQ(row[1].text, "office");
    EXPECT_EQ(row[2].text, "V 1");
    EXPECT_EQ(row[3].text, "3.0");
    EXPECT_EQ(row[4].text, "1.20 psi");
    for (std::size_t blank = 5; blank < row.size(); ++blank) {
        EXPECT_EQ(row[blank].text, "");
    }
    ASSERT_EQ(sheet.cautions.size(), 1U);
    // The same words for heating and cooling, as in the handbook.
    EXPECT_NE(base::english(sheet.cautions.front()).find("hot or chilled water and pressure"),
              std::string::npos);
}

TEST(WalkSheet, IsReadBackOnceFilledIn) {
    const project::Project job = sheetJob();
    std::string text = walkSheetCsv(job);
    EXPECT_EQ(
        text.substr(0, text.find("\r\n")),
        "round,kind,tag,serves,valve,setting_now,last_dp[psi],setting,dp[psi],time,instrument,person,note");
    const std::string row = "2,final,T1,office,V 1,3.0,1.20,,,,,,";
    const std::size_t at = text.find(row);
    ASSERT_NE(at, std::string::npos) << text;
    text.replace(at, row.size(),
                 "2,final,T1,office,V 1,3.0,1.20,2.5,1.31,2026-03-03T10:00,M-1,A. Fields,again");
    const exchange::ImportPlan plan = readBack(text, job);
    ASSERT_EQ(plan.edit.put.size(), 1U);
    const auto& reading = std::get<project::Reading>(plan.edit.put[0]);
    EXPECT_EQ(reading.dp->text(), "1.31 psi");
    EXPECT_EQ(reading.setting->text(), "2.5");
    EXPECT_EQ(reading.note, "again");
}

// As on the walk: the reason is asked for when the round is closed, and a note is none.
TEST(WalkSheet, takesAnXForAValveThatCannotBeRead) {
    const project::Project job = sheetJob();
    const std::string text = walkSheetCsv(job);
    const std::string row = "2,final,T1,office,V 1,3.0,1.20,,,,,,";
    const std::size_t at = text.find(row);
    ASSERT_NE(at, std::string::npos) << text;
    for (const char* cross : {"x", " X "}) {
        std::string filled = text;
        filled.replace(at, row.size(),
                       "2,final,T1,office,V 1,3.0,1.20,," + std::string(cross) + ",,M-1,A. Fields,no room");
        const exchange::ImportPlan plan = readBack(filled, job);
        ASSERT_EQ(plan.edit.put.size(), 1U);
        const auto& reading = std::get<project::Reading>(plan.edit.put[0]);
        EXPECT_TRUE(reading.cannotBeRead);
        EXPECT_FALSE(reading.dp || reading.flow);
        EXPECT_EQ(reading.reason, "");
        EXPECT_EQ(reading.note, "no room");
    }
}

// On paper the time of day is written; the date is that of the round.
TEST(WalkSheet, TakesTheTimeOfDayOnTheDateOfItsRound) {
    project::Project job = sheetJob();
    project::Round round;
    for (const project::Round& known : job.rounds()) {
        round = known.number == 2 ? known : round;
    }
    ASSERT_EQ(round.number, 2);
    round.opened = base::Instant::fromText("2026-03-03T08:30:00Z");
    job.put(round);
    std::string text = walkSheetCsv(job);
    const std::string row = "2,final,T1,office,V 1,3.0,1.20,,,,,,";
    const std::size_t at = text.find(row);
    ASSERT_NE(at, std::string::npos) << text;
    text.replace(at, row.size(), "2,final,T1,office,V 1,3.0,1.20,2.5,1.31,9:05,M-1,,");
    const exchange::ImportPlan plan = readBack(text, job);
    ASSERT_EQ(plan.edit.put.size(), 1U);
    EXPECT_EQ(std::get<project::Reading>(plan.edit.put[0]).time,
              base::Instant::fromText("2026-03-03T09:05:00Z"));
}

}  // namespace
}  // namespace ww::report
