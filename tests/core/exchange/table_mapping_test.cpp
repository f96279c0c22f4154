// A person's own table matched with ours and added to a job. Headings are common ones of the trade (common
// practice, no source); the rest is this program's own.
#include "core/exchange/table_mapping.h"

#include <gtest/gtest.h>

#include "tests/support/counting_ids.h"
#include "tests/support/job_tables.h"

namespace ww::exchange {
namespace {

SourceTable pasted(const std::string& text) {
    const CsvResult result = parseCsv(text, '\t');
    EXPECT_TRUE(result.failures.empty());
    return {true, result.text, {}, {}};
}

/// The column that a column of ours comes from; -1: from none.
int sourceOf(const TableMapping& mapping, std::string_view column) {
    const auto columns = columnsOfTable(mapping.file);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (columns[i].name == column && mapping.columns[i].source) {
            return static_cast<int>(*mapping.columns[i].source);
        }
    }
    return -1;
}

project::Project jobOfTables() {
    const support::TemporaryFolder folder;
    support::CountingIds ids;
    project::Project project;
    for (const project::AnyRecord& record :
         readJobFolder(support::JobTables().writeTo(folder), ids).edit.put) {
        std::visit([&](const auto& value) { project.put(value); }, record);
    }
    return project;
}

ImportPlan planOf(const project::Project& project, const std::string& file, const SourceTable& table) {
    support::CountingIds ids(90'000);
    return addTables(GivenTables("paste", {{file, table}}), project, ids);
}

TEST(TableMapping, FindsHeadingsBelowATitleAndByOtherWords) {
    const SourceTable table = pasted(
        "Weir House\n\nValve No.\tRoom\tFed from\tDesign flow (L/s)\tBV\tDN\n"
        "T3\tattic\tR1\t0.5\tV\t1\n");
    EXPECT_EQ(guessTable(table), "branches.csv");
    const TableMapping mapping = guessMapping("branches.csv", table);
    EXPECT_EQ(mapping.headRow, 1U);
    EXPECT_EQ(sourceOf(mapping, "tag"), -1);
    EXPECT_EQ(sourceOf(mapping, "serves"), 1);
    EXPECT_EQ(sourceOf(mapping, "parent"), 2);
    EXPECT_EQ(sourceOf(mapping, "design_flow"), 3);
    EXPECT_EQ(sourceOf(mapping, "valve_model"), 4);
    EXPECT_EQ(sourceOf(mapping, "valve_size"), 5);
    EXPECT_EQ(unmatched(mapping), std::vector<std::string>{"tag"});
}

TEST(TableMapping, TakesUnitsOfHeadingsAndAsksForOthers) {
    const SourceTable table = pasted("tag\tdp (kPa)\tflow\tround\n");
    const TableMapping mapping = guessMapping("readings.csv", table);
    EXPECT_EQ(unmatched(mapping), std::vector<std::string>{"flow"});
    const ColumnSpec dp{"dp", Dimension::Pressure, false};
    EXPECT_EQ(unitInHeading("dp [psi]", dp), Unit::Psi);
    EXPECT_EQ(unitInHeading("dp (of the valve)", dp), std::nullopt);
    EXPECT_EQ(unitInHeading("dp", dp), std::nullopt);
}

TEST(TableMapping, PutsTheirRowsUnderOurHeadings) {
    const SourceTable table = pasted("x\tdp\ttag\nn\t1,5\tT1\n\t\t\nm\t2.5\tT2\nn\t3\tT1\n");
    TableMapping mapping = guessMapping("readings.csv", table);
    const auto columns = columnsOfTable("readings.csv");
    for (std::size_t i = 0; i < columns.size(); ++i) {
        mapping.columns[i].unit = columns[i].name == "dp" ? std::optional(Unit::Psi) : std::nullopt;
        mapping.columns[i].constant = columns[i].name == "round" ? "3" : "";
    }
    const SourceTable ours = mapped(table, mapping, {5});
    ASSERT_EQ(ours.text.rows.size(), 3U);
    EXPECT_EQ(ours.text.rows[0].cells, (std::vector<std::string>{"round", "tag", "dp[psi]"}));
    EXPECT_EQ(ours.text.rows[1].cells, (std::vector<std::string>{"3", "T1", "1,5"}));
    EXPECT_EQ(ours.text.rows[2].line, 4);
}

TEST(AddTables, AddsToAJobAndSaysWhatIsThereAlready) {
    const project::Project job = jobOfTables();
    const ImportPlan good = planOf(
        job, "branches.csv",
        pasted("tag\tparent\tdesign_flow[gpm]\tvalve_model\tvalve_size\nT3\tR1\t5,5\tV\t1\nT4\tT3\t2\t\t\n"));
    for (const RowFault& fault : good.faults) {
        ADD_FAILURE() << text(fault);
    }
    ASSERT_EQ(good.edit.put.size(), 2U);
    const auto& branch = std::get<project::Branch>(good.edit.put[0]);
    EXPECT_EQ(branch.parent, job.branchTagged("R1")->id);
    EXPECT_EQ(branch.valve, job.valves()[0].id);
    EXPECT_EQ(branch.designFlow->text(), "5.5 gpm");
    EXPECT_GT(branch.position, job.branchTagged("T2")->position);

    const ImportPlan bad = planOf(job, "branches.csv",
                                  pasted("tag\tparent\tdesign_flow[gpm]\nT1\tR1\t5\nT5\tR9\t5\nT6\tR1\t\n"));
    ASSERT_EQ(bad.faults.size(), 3U);
    EXPECT_EQ(bad.faults[0].fault.code(), "in_job_already");
    EXPECT_EQ(bad.faults[1].fault.code(), "parent_unknown");
    EXPECT_EQ(bad.faults[2].fault.code(), "design_flow_missing");
}

TEST(AddTables, EveryTableKnowsWhatTheJobHas) {
    const project::Project job = jobOfTables();
    const auto codes = [&](const std::string& file, const std::string& text) {
        std::vector<std::string> all;
        for (const RowFault& fault : planOf(job, file, pasted(text)).faults) {
            all.emplace_back(fault.fault.code());
        }
        return all;
    };
    using Codes = std::vector<std::string>;
    EXPECT_EQ(codes("valves.csv", "model\tsize\tscale\tsetting\tCv\nV\t1\tturns\t1\t3\n"),
              Codes{"in_job_already"});
    EXPECT_EQ(codes("valves.csv", "model\tsize\tscale\tsetting\tCv\nW\t1\tturns\t1\t3\nW\t1\tturns\t4\t9\n"),
              Codes{});
    EXPECT_EQ(codes("pumps.csv", "tag\nP-1\n"), Codes{"in_job_already"});
    EXPECT_EQ(codes("pumps.csv", "tag\nP-2\n"), Codes{});
    EXPECT_EQ(codes("pump_curve.csv", "pump\tflow[gpm]\thead[ft]\nP-1\t0\t40\n"), Codes{"pump_has_curve"});
    EXPECT_EQ(codes("instruments.csv", "tag\nM-1\n"), Codes{"in_job_already"});
    EXPECT_EQ(codes("readings.csv", "round\ttag\tdp[psi]\n1\tT1\t2\n"), Codes{"record_round_locked"});
    EXPECT_EQ(codes("readings.csv", "round\tkind\ttag\tdp[psi]\n3\tadjusting\tT1\t2\n"), Codes{});
    EXPECT_EQ(codes("readings.csv", "round\ttag\n"), Codes{"nothing_to_add"});
}

TEST(AddTables, AWalkSheetComesBackWithItsBlankRowsPassedOver) {
    const project::Project job = jobOfTables();
    const ImportPlan plan =
        planOf(job, "readings.csv",
               pasted("round\tkind\ttag\tserves\tvalve\tsetting_now\tlast_dp[psi]\tsetting\tdp[psi]\n"
                      "3\tadjusting\tT1\toffice\tV 1\t3.0\t1.20\t\t1.31\n"
                      "3\tadjusting\tT2\thall\tV 1\t4\t2.85\t\t\n"));
    EXPECT_TRUE(plan.faults.empty());
    int readings = 0;
    for (const project::AnyRecord& record : plan.edit.put) {
        readings += std::holds_alternative<project::Reading>(record) ? 1 : 0;
    }
    EXPECT_EQ(readings, 1);
}

}  // namespace
}  // namespace ww::exchange
