// A job out to a spreadsheet and back, also by way of another program, and faults that name sheet and cell.
// The other program's files: tests/data/spreadsheets/README.md.
#include <gtest/gtest.h>

#include "core/exchange/job_sheets.h"
#include "core/exchange/spreadsheet_source.h"
#include "core/report/job_spreadsheet.h"
#include "core/spreadsheet/read_spreadsheet.h"
#include "core/spreadsheet/write_spreadsheet.h"
#include "tests/support/counting_ids.h"
#include "tests/support/job_tables.h"
#include "tests/support/review_job.h"

namespace ww::exchange {
namespace {

using project::Project;
using support::JobTables;
using support::TemporaryFolder;

Project jobOf(const project::Edit& edit, Project project = {}) {
    for (const project::AnyRecord& record : edit.put) {
        std::visit([&](const auto& value) { project.put(value); }, record);
    }
    return project;
}

std::vector<std::string> faultsOf(const std::filesystem::path& path) {
    std::vector<RowFault> faults;
    support::CountingIds ids;
    if (const auto source = openTables(path, faults)) {
        faults = readJob(*source, ids).faults;
    }
    std::vector<std::string> texts;
    for (const RowFault& fault : faults) {
        texts.push_back(text(fault));
    }
    return texts;
}

Project readFrom(const std::filesystem::path& path) {
    for (const std::string& fault : faultsOf(path)) {
        ADD_FAILURE() << fault;
    }
    std::vector<RowFault> faults;
    support::CountingIds ids(50'000);
    const auto source = openTables(path, faults);
    return source == nullptr ? Project() : jobOf(readJob(*source, ids).edit);
}

Project smallJob() {
    const TemporaryFolder folder;
    return readFrom(JobTables().writeTo(folder));
}

Project jobWithReview() {
    const Project whole = jobOf(support::wholeJob());
    return jobOf(support::reviewOf(whole), whole);
}

TEST(SpreadsheetJob, BringsEveryFieldAndEveryDigitBack) {
    const TemporaryFolder folder;
    for (const Project& job : {smallJob(), jobWithReview()}) {
        ASSERT_TRUE(report::writeJobSpreadsheet(job, folder.path() / "job.xlsx"));
        const Project back = readFrom(folder.path() / "job.xlsx");
        EXPECT_EQ(jobJson(back), jobJson(job));
        const std::vector<JobTable> before = jobTables(job);
        const std::vector<JobTable> after = jobTables(back);
        for (std::size_t i = 0; i < before.size(); ++i) {
            EXPECT_EQ(after[i].text, before[i].text) << before[i].file;
        }
    }
    EXPECT_FALSE(std::filesystem::exists(folder.path() / "job.xlsx.part"));
}

TEST(SpreadsheetJob, ReadsWhatAnotherProgramSaved) {
    const Project back = readFrom(std::string(WW_SOURCE_DIR) + "/tests/data/spreadsheets/job.xlsx");
    EXPECT_EQ(jobJson(back), jobJson(smallJob()));
}

TEST(SpreadsheetJob, WritesNumbersAsNumbersAndTextsAsTexts) {
    const TemporaryFolder folder;
    Project job = smallJob();
    project::Branch branch = job.branches()[1];
    branch.serves = "=HYPERLINK(\"x\")";
    branch.notes = "+1, as agreed\nsecond line";
    job.put(branch);
    ASSERT_TRUE(report::writeJobSpreadsheet(job, folder.path() / "job.xlsx"));
    const auto sheets = spreadsheet::readSpreadsheet(folder.path() / "job.xlsx");
    ASSERT_TRUE(sheets);
    EXPECT_EQ(sheets->front().name, "Summary");
    const auto found = std::find_if(sheets->begin(), sheets->end(),
                                    [](const auto& sheet) { return sheet.name == "branches"; });
    ASSERT_NE(found, sheets->end());
    std::map<std::size_t, spreadsheet::ReadCell> row;
    for (const spreadsheet::ReadCell& cell : found->rows.at(2).cells) {
        row[cell.column] = cell;
    }
    EXPECT_TRUE(row[0].isText);
    EXPECT_EQ(row[2].text, "=HYPERLINK(\"x\")");
    EXPECT_TRUE(row[2].isText);
    EXPECT_EQ(row[4].text, "12");
    EXPECT_FALSE(row[4].isText);
    EXPECT_EQ(jobJson(readFrom(folder.path() / "job.xlsx")), jobJson(job));
}

/// The small job as a spreadsheet in which one cell holds something else.
std::vector<std::string> faultsWith(const std::string& sheet, std::size_t row, std::size_t column,
                                    spreadsheet::WrittenCell cell) {
    const TemporaryFolder folder;
    std::vector<spreadsheet::WrittenSheet> sheets = jobSheets(smallJob());
    for (spreadsheet::WrittenSheet& one : sheets) {
        if (one.name == sheet) {
            one.rows.at(row).at(column) = cell;
        }
    }
    EXPECT_TRUE(spreadsheet::writeSpreadsheet(sheets, folder.path() / "job.xlsx"));
    return faultsOf(folder.path() / "job.xlsx");
}

TEST(SpreadsheetJob, NamesSheetAndCellOfAFault) {
    using Texts = std::vector<std::string>;
    EXPECT_EQ(
        faultsWith("branches", 2, 4, std::string("12 psi")),
        Texts{"job.xlsx:branches!E3: \"psi\" is not a unit that the column \"design_flow\" can have; use "
              "one of gpm, L/s, m3/h, imp_gpm, m3/s"});
    const Texts tag = faultsWith("readings", 3, 3, std::string("T9"));
    ASSERT_EQ(tag.size(), 1U);
    EXPECT_TRUE(tag.front().starts_with("job.xlsx:readings!D4: the tag \"T9\" is not among the branches"))
        << tag[0];
    const Texts head = faultsWith("readings", 0, 5, std::string("dp"));
    ASSERT_FALSE(head.empty());
    EXPECT_TRUE(head.front().starts_with("job.xlsx:readings!F1: the column \"dp\" needs its unit"))
        << head[0];
    // Digits with their own unit are good in every column of that dimension.
    EXPECT_TRUE(faultsWith("readings", 1, 5, std::string("1.10 psi")).empty());
}

TEST(SpreadsheetJob, NamesWhatIsMissing) {
    const TemporaryFolder folder;
    std::vector<spreadsheet::WrittenSheet> sheets = jobSheets(smallJob());
    std::erase_if(sheets, [](const auto& sheet) { return sheet.name == "pumps"; });
    ASSERT_TRUE(spreadsheet::writeSpreadsheet(sheets, folder.path() / "job.xlsx"));
    const auto faults = faultsOf(folder.path() / "job.xlsx");
    ASSERT_FALSE(faults.empty());
    EXPECT_EQ(
        faults.front(),
        "job.xlsx:pumps: there is no sheet \"pumps\" in the spreadsheet; add it, or give a sheet that name");
}

TEST(SpreadsheetJob, TellsACellWithoutAValueOnce) {
    spreadsheet::ReadSheet sheet{"branches", {}};
    const auto broken = std::make_shared<spreadsheet::CellRemark>();
    broken->fault = base::Fault{&kSheetEmpty, "", {}};
    sheet.rows.push_back(
        {3,
         {{0, "tag", true, nullptr}, {1, "parent", true, nullptr}, {3, "design_flow[gpm]", true, nullptr}}});
    sheet.rows.push_back({4, {{0, "T1", true, nullptr}, {3, "", false, broken}}});
    const TemporaryFolder folder;
    std::map<std::string, SourceTable> tables;
    tables.emplace("branches.csv", tableOf(sheet));
    for (const char* file : {"job.csv", "valves.csv", "pumps.csv", "pump_curve.csv"}) {
        tables.emplace(file, FolderSource(JobTables().writeTo(folder)).table(file));
    }
    tables.emplace("readings.csv", SourceTable{true, {',', {{1, {"round", "tag"}}}}, {}, {}});
    support::CountingIds ids;
    const ImportPlan plan = readJob(GivenTables("given", std::move(tables)), ids);
    ASSERT_EQ(plan.faults.size(), 1U);
    EXPECT_EQ(plan.faults[0].row, 4);
    EXPECT_EQ(plan.faults[0].column, "design_flow");
    EXPECT_EQ(plan.faults[0].cell, "D4");
}

TEST(SpreadsheetJob, SaysWhatASpreadsheetNumbersUnitIs) {
    const auto remark = std::make_shared<spreadsheet::CellRemark>();
    remark->suffix = "psi";
    const auto turns = std::make_shared<spreadsheet::CellRemark>();
    turns->suffix = "approx.";
    const SourceTable table = tableOf({"s", {{1, {{0, "1.8", false, remark}, {1, "2", false, turns}}}}});
    EXPECT_EQ(table.text.rows.at(0).cells, (std::vector<std::string>{"1.8 psi", "2"}));
}

}  // namespace
}  // namespace ww::exchange
