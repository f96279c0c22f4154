// Tables with everything that a walk can bring, out and in again: digits, units and texts must not change.
// Own cases; the format is this program's. The nearest word is found by edit distance (Levenshtein 1966).
#include <gtest/gtest.h>

#include "core/exchange/job_folder.h"
#include "core/exchange/table_reader.h"
#include "core/project/project.h"
#include "tests/support/counting_ids.h"
#include "tests/support/job_tables.h"

namespace ww::exchange {
namespace {

using project::Project;
using support::JobTables;
using support::TemporaryFolder;

Project readFolder(const std::filesystem::path& folder) {
    support::CountingIds ids;
    const ImportPlan plan = readJobFolder(folder, ids);
    for (const RowFault& fault : plan.faults) {
        ADD_FAILURE() << text(fault);
    }
    Project project;
    for (const project::AnyRecord& record : plan.edit.put) {
        std::visit([&](const auto& value) { project.put(value); }, record);
    }
    return project;
}

/// A table of Kv beside those of Cv, a limiter known by its range alone, and readings of every kind.
JobTables richTables() {
    JobTables tables;
    tables.put("valves.csv",
               "model,size,scale,setting,Cv,Kv,minimum_dp[kPa],maximum_dp[kPa],accuracy[%]\n"
               "V,1,turns,1,3,,2.0,,5\nV,1,turns,2.5,7,,2.0,,5\nV,1,turns,4,12.0,,2.0,,5\n"
               "K,20,percent,0,,0,0.3 psi,,\nK,20,percent,50,,3.10,,,\nK,20,percent,100,,6.30,,,\n"
               "L,15,turns,,,,15,200,\n");
    tables.put("branches.csv",
               "tag,parent,serves,kind,design_flow[gpm],run_loss[ft],circuit_loss[ft],valve_model,valve_size,"
               "setting\nR1,,riser,none,36,,,,,\nT1,R1,\"office, \"\"north\"\"\",manual,12,2,8,V,1,4\n"
               "T2,R1,'=hall,manual,18,1,9,K,20,100\nT3,R1,attic,limiter,6,1,4,L,15,\n");
    tables.put("readings.csv",
               "round,kind,time,tag,setting,dp[kPa],flow[gpm],instrument,person,note,status,repeat,"
               "cannot_read,doubtful,reason,corrects\n"
               "1,survey,2026-03-02T09:00,T1,4,7.50,,M-1,A. Fields,,superseded,no,no,no,,\n"
               "1,survey,2026-03-02T09:01,T1,4,1.8 psi,,M-1,A. Fields,hose was kinked,standing,no,no,no,,1\n"
               "1,survey,2026-03-02T09:02,T1,4,12.60,,M-1,A. Fields,,standing,yes,no,no,,\n"
               "1,survey,2026-03-02T09:03,T2,100,20.00,,M-1,B. Moor,\"swings\nby \"\"2\"\", says Moor\","
               "standing,no,no,yes,air in the line,\n"
               "1,survey,2026-03-02T09:04,T3,,,,,B. Moor,'=1+1,standing,no,yes,no,port blocked,\n"
               "1,survey,2026-03-02T09:05,T3,,40,,M-1,B. Moor,,struck,no,no,no,wrong ports,\n"
               "2,final,2026-03-03T09:00,T1,3.50,12 inH2O,,M-1,A. Fields,,standing,no,no,no,,\n"
               "2,final,2026-03-03T09:05,T2,100,,0.90 L/s,,A. Fields,'@ the meter,standing,no,no,no,,\n");
    return tables;
}

TEST(RichTables, ComeBackByteForByte) {
    const TemporaryFolder folder;
    const Project first = readFolder(richTables().writeTo(folder));
    ASSERT_TRUE(writeJobFolder(first, folder.path() / "one"));
    const Project second = readFolder(folder.path() / "one");
    ASSERT_TRUE(writeJobFolder(second, folder.path() / "two"));
    EXPECT_EQ(jobJson(first), jobJson(second));
    int compared = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder.path() / "one")) {
        const std::string name = entry.path().filename().string();
        EXPECT_EQ(folder.read("one/" + name), folder.read("two/" + name)) << name;
        ++compared;
    }
    EXPECT_GE(compared, 8);
}

TEST(RichTables, KeepWhatWasWritten) {
    const TemporaryFolder folder;
    const Project read = readFolder(richTables().writeTo(folder));
    ASSERT_TRUE(writeJobFolder(read, folder.path() / "one"));
    const Project project = readFolder(folder.path() / "one");
    const auto& readings = project.readings();
    ASSERT_EQ(readings.size(), 8U);
    EXPECT_EQ(readings[0].status, project::ReadingStatus::Superseded);
    EXPECT_EQ(readings[1].dp->text(), "1.8 psi");
    EXPECT_EQ(readings[1].supersedes, readings[0].id);
    EXPECT_TRUE(readings[2].isRepeat);
    EXPECT_EQ(readings[2].dp->text(), "12.60 kPa");
    EXPECT_TRUE(readings[3].isDoubtful);
    EXPECT_EQ(readings[3].note, "swings\nby \"2\", says Moor");
    EXPECT_TRUE(readings[4].cannotBeRead);
    EXPECT_EQ(readings[4].reason, "port blocked");
    EXPECT_EQ(readings[4].note, "=1+1");
    EXPECT_EQ(readings[5].status, project::ReadingStatus::Struck);
    EXPECT_EQ(readings[6].setting->text(), "3.50");
    EXPECT_EQ(readings[6].dp->text(), "12 inH2O");
    EXPECT_EQ(readings[7].flow->text(), "0.90 L/s");
    EXPECT_EQ(readings[7].note, "@ the meter");
    EXPECT_EQ(project.branchTagged("T1")->serves, "office, \"north\"");
    EXPECT_EQ(project.branchTagged("T2")->serves, "=hall");
}

TEST(RichTables, KeepCoefficientsInTheirOwnUnit) {
    const TemporaryFolder folder;
    const Project project = readFolder(richTables().writeTo(folder));
    const project::ValveModel* cv = project.valves().find(*project.branchTagged("T1")->valve);
    const project::ValveModel* kv = project.valves().find(*project.branchTagged("T2")->valve);
    EXPECT_EQ(cv->coefficientUnit, quantity::Unit::Cv);
    EXPECT_EQ(cv->rows.back().coefficient.text(), "12.0");
    EXPECT_EQ(kv->coefficientUnit, quantity::Unit::Kv);
    EXPECT_EQ(kv->rows.back().coefficient.text(), "6.30");
    EXPECT_EQ(kv->minimumDp->text(), "0.3 psi");
}

TEST(ValveWithoutTable, IsKnownByItsRange) {
    const TemporaryFolder folder;
    const Project project = readFolder(richTables().writeTo(folder));
    const project::Branch& limiter = *project.branchTagged("T3");
    const project::ValveModel* valve = project.valves().find(*limiter.valve);
    EXPECT_TRUE(valve->rows.empty());
    EXPECT_EQ(valve->minimumDp->text(), "15 kPa");
    EXPECT_EQ(valve->maximumDp->text(), "200 kPa");
    EXPECT_EQ(project.characteristicOf(limiter), nullptr);
}

void expectFault(const JobTables& tables, const std::string& place) {
    const TemporaryFolder folder;
    support::CountingIds ids;
    const ImportPlan plan = readJobFolder(tables.writeTo(folder), ids);
    ASSERT_EQ(plan.faults.size(), 1U) << place;
    EXPECT_TRUE(text(plan.faults.front()).starts_with(place)) << text(plan.faults.front());
}

TEST(ValveWithoutTable, IsForSelfActingValvesAlone) {
    JobTables tables = richTables();
    tables.replace("branches.csv", "attic,limiter", "attic,manual");
    expectFault(tables, "branches.csv:5:kind: ");
    tables.replace("branches.csv", "attic,manual", "attic,picv");
    const TemporaryFolder folder;
    EXPECT_EQ(readFolder(tables.writeTo(folder)).branchTagged("T3")->kind, project::BranchKind::Picv);
}

TEST(ValveWithoutTable, NeedsARangeAndNoFurtherRow) {
    JobTables twice = richTables();
    twice.replace("valves.csv", "L,15,turns,,,,15,200,\n",
                  "L,15,turns,,,,15,200,\nL,15,turns,1,2,,15,200,\n");
    expectFault(twice, "valves.csv:8:setting: ");
    JobTables bare = richTables();
    bare.replace("valves.csv", "L,15,turns,,,,15,200,\n", "L,15,turns,,,,,200,\n");
    const TemporaryFolder folder;
    support::CountingIds ids;
    EXPECT_FALSE(readJobFolder(bare.writeTo(folder), ids).isAcceptable());
}

TEST(NearestWord, IsTheOneWithTheFewestEdits) {
    EXPECT_EQ(nearest("instument", {"person", "instrument", "note"}), "instrument");
    EXPECT_EQ(nearest("B-0l", {"A-01", "B-01", "B-12"}), "B-01");
    EXPECT_EQ(nearest("PARENT", {"tag", "parent"}), "parent") << "without regard to case";
    EXPECT_EQ(nearest("kitten", {"sitting", "mitten"}), "mitten");
    EXPECT_EQ(nearest("x", {"first", "only"}), "only") << "four edits against five";
    EXPECT_EQ(nearest("anything", {}), "");
}

}  // namespace
}  // namespace ww::exchange
