// Tables with one thing wrong each. Every one must be answered with file, row, column and a cure, exit status
// 2, and no file. The cases are faults that people make in tables (common practice, no source); quoting and
// line ends follow RFC 4180.
#include <gtest/gtest.h>

#include <set>

#include "tests/support/command_run.h"
#include "tests/support/job_tables.h"

namespace ww::app {
namespace {

using support::JobTables;
using support::TemporaryFolder;
using namespace std::string_literals;

/// One spoiled place: in `file`, `from` becomes `to`; then a line of standard error begins with `place` and
/// has `says` in it.
struct Spoiled {
    const char* file;
    const char* from;
    const char* to;
    const char* place;
    const char* says;
};

const Spoiled kSpoiled[] = {
    // job.csv
    {"job.csv", "key,value", "key,values", "job.csv:1:value: ", "missing"},
    {"job.csv", "units,US", "units,metric", "job.csv:3:value: ", "US"},
    {"job.csv", "units,US", "units,", "job.csv:3:value: ", "the cell is empty"},
    {"job.csv", "fluid,water", "fluid,brine", "job.csv:4:value: ", "propylene glycol"},
    {"job.csv", "units,US", "unit,US", "job.csv:3:key: ", "units"},
    {"job.csv", "units,US", "name,Twice", "job.csv:3:key: ", "twice"},
    {"job.csv", "name,Weir House", "site,Weir House", "job.csv:1:key: ", "name"},
    {"job.csv", "temperature[F]", "temperature", "job.csv:5:key: ", "unit"},
    {"job.csv", "temperature[F]", "temperature[K9]", "job.csv:5:key: ", "K9"},
    {"job.csv", "temperature[F],60", "temperature[F],400", "job.csv:5:value: ", "outside"},
    {"job.csv", "temperature[F],60", "temperature[F],warm", "job.csv:5:value: ", "not a number"},
    {"job.csv", "tolerance_low[%],-10", "tolerance_low[%],20", "job.csv:6:value: ", "below"},
    {"job.csv", "matching_band[%],5", "matching_band[%],-5", "job.csv:8:value: ", "outside"},
    {"job.csv", "hours[h/yr],4000", "hours[h/yr],9000", "job.csv:9:value: ", "8784"},
    {"job.csv", "hours[h/yr],4000", "hours[h/yr],-1", "job.csv:9:value: ", "negative"},
    // valves.csv
    {"valves.csv", "model,size", "model,dimension", "valves.csv:1:size: ", "missing"},
    {"valves.csv", "minimum_dp[psi]", "minimum_dp[gpm]", "valves.csv:1:minimum_dp: ", "kPa"},
    {"valves.csv", "minimum_dp[psi]", "minimum_dp", "valves.csv:1:minimum_dp: ", "brackets"},
    {"valves.csv", ",Cv,", ",Cv[psi],", "valves.csv:1:Cv: ", "without brackets"},
    {"valves.csv", "accuracy[%]", "setting", "valves.csv:1:setting: ", "twice"},
    {"valves.csv", "V,1,turns,2.5", "V,1,twists,2.5", "valves.csv:3:scale: ", "turns"},
    {"valves.csv", "V,1,turns,2.5", "V,1,degrees,2.5", "valves.csv:3:scale: ", "differs"},
    {"valves.csv", "V,1,turns,2.5,7", "V,1,turns,4,7", "valves.csv:", "twice"},
    {"valves.csv", "V,1,turns,2.5,7", "V,1,turns,2.5,1.5", "valves.csv:", "falls"},
    {"valves.csv", "V,1,turns,2.5,7", "V,1,turns,2.5,-7", "valves.csv:3:Cv: ", "negative"},
    {"valves.csv", "V,1,turns,2.5,7", "V,1,turns,-2.5,7", "valves.csv:3:setting: ", "negative"},
    {"valves.csv", "V,1,turns,2.5,7", "V,1,turns,2.5,", "valves.csv:3:Cv: ", "coefficient"},
    {"valves.csv", "V,1,turns,2.5,7", "V,1,turns,,7", "valves.csv:3:setting: ", "empty"},
    {"valves.csv", "V,1,turns,2.5,7", ",1,turns,2.5,7", "valves.csv:3:model: ", "empty"},
    {"valves.csv", "V,1,turns,2.5,7", "V,1,turns,2.5,0x7", "valves.csv:3:Cv: ", "not a number"},
    {"valves.csv", "V,1,turns,2.5,7", "V,1,turns,2.5,7e0", "valves.csv:3:Cv: ", "not a number"},
    // branches.csv
    {"branches.csv", "design_flow[gpm]", "design_flow[psi]", "branches.csv:1:design_flow: ", "L/s"},
    {"branches.csv", "design_flow[gpm]", "design_flwo[gpm]", "branches.csv:1:design_flwo: ", "design_flow"},
    {"branches.csv", "T2,R1", "T1,R1", "branches.csv:4:tag: ", "row 3"},
    {"branches.csv", "T2,R1", "t1,R1", "branches.csv:4:tag: ", "row 3"},
    {"branches.csv", "T2,R1", ",R1", "branches.csv:4:tag: ", "empty"},
    {"branches.csv", "T2,R1", "T2,R7", "branches.csv:4:parent: ", "R1"},
    {"branches.csv", "R1,,riser", "R1,T1,riser", "branches.csv:2:parent: ", "itself"},
    {"branches.csv", "T2,R1", "T2,T2", "branches.csv:4:parent: ", "itself"},
    {"branches.csv", "manual,12", "valve,12", "branches.csv:3:kind: ", "limiter"},
    {"branches.csv", "manual,12", "manual,-12", "branches.csv:3:design_flow: ", "negative"},
    {"branches.csv", "manual,12", "manual,0", "branches.csv:3:design_flow: ", "above 0"},
    {"branches.csv", "manual,12", "manual,", "branches.csv:3:design_flow: ", "design flow"},
    {"branches.csv", "manual,12", "manual,twelve", "branches.csv:3:design_flow: ", "not a number"},
    {"branches.csv", "manual,12", "manual,12 psi", "branches.csv:3:design_flow: ", "gpm"},
    {"branches.csv", "manual,12", "manual,99999999999", "branches.csv:3:design_flow: ", "too large"},
    {"branches.csv", "manual,12", "manual,1234567890123456", "branches.csv:3:design_flow: ", "15 digits"},
    {"branches.csv", "12,2,8,V", "12,-2,8,V", "branches.csv:3:run_loss: ", "negative"},
    {"branches.csv", "8,V,1,4", "8,W,1,4", "branches.csv:3:valve_model: ", "V 1"},
    {"branches.csv", "8,V,1,4", "8,V,1,4.5", "branches.csv:3:setting: ", "scale"},
    {"branches.csv", "8,V,1,4", "8,V,1,0.5", "branches.csv:3:setting: ", "scale"},
    {"branches.csv", "none,30,,,,,", "none,30,,,,,3", "branches.csv:2:setting: ", "valve"},
    {"branches.csv", "8,V,1,4", "8,V,1,4,9", "branches.csv:3:-: ", "quotation"},
    // pumps.csv and pump_curve.csv
    {"pumps.csv", "yes,1750", "maybe,1750", "pumps.csv:2:running: ", "yes, no"},
    {"pumps.csv", "yes,1750", "yes,-1750", "pumps.csv:2:speed: ", "negative"},
    {"pumps.csv", "6.5,5.5", "5.0,5.5", "pumps.csv:2:impeller: ", "minimum"},
    {"pumps.csv", "motor_power[hp]", "motor_power[V]", "pumps.csv:1:motor_power: ", "kW"},
    {"pumps.csv", "_power[hp]\nP-1,yes,1750,6.5,5.5,1", "_efficiency[%]\nP-1,yes,1750,6.5,5.5,101",
     "pumps.csv:2:motor_efficiency: ", "101 % is more than a whole"},
    {"pumps.csv", "_power[hp]\nP-1,yes,1750,6.5,5.5,1", "_efficiency[%]\nP-1,yes,1750,6.5,5.5,0",
     "pumps.csv:2:motor_efficiency: ", "above 0, not 0"},
    {"pump_curve.csv", "head[ft]\nP-1,0,40\nP-1,20,38", "head[ft],efficiency[%]\nP-1,0,40,\nP-1,20,38,160",
     "pump_curve.csv:3:efficiency: ", "160 % is more than a whole"},
    {"pump_curve.csv", "head[ft]\nP-1,0,40\nP-1,20,38", "head[ft],efficiency[%]\nP-1,0,40,\nP-1,20,38,0.0",
     "pump_curve.csv:3:efficiency: ", "above 0, not 0.0"},
    {"pump_curve.csv", "P-1,20,38", "P-2,20,38", "pump_curve.csv:3:pump: ", "P-1"},
    {"pump_curve.csv", "P-1,20,38", "P-1,20,44", "pump_curve.csv:", "rises"},
    {"pump_curve.csv", "P-1,20,38", "P-1,0,38", "pump_curve.csv:", "twice"},
    {"pump_curve.csv", "P-1,20,38", "P-1,,38", "pump_curve.csv:3:flow: ", "empty"},
    {"pump_curve.csv", "P-1,20,38", "P-1,20,inf", "pump_curve.csv:3:head: ", "not a number"},
    {"pump_curve.csv", "head[ft]", "head[F]", "pump_curve.csv:1:head: ", "ft"},
    {"pump_curve.csv", "P-1,0,40\nP-1,20,38\nP-1,40,32\n", "", "pump_curve.csv:1:pump: ", "P-1"},
    // instruments.csv
    {"instruments.csv", "2026-06-01", "2024-06-01", "instruments.csv:2:due: ", "before"},
    {"instruments.csv", "2025-06-01", "01.06.2025", "instruments.csv:2:calibrated: ", "2026-03-04"},
    {"instruments.csv", "2025-06-01", "2025-02-30", "instruments.csv:2:calibrated: ", "date"},
    {"instruments.csv", "77,30,1", "77,-30,1", "instruments.csv:2:range: ", "negative"},
    // readings.csv
    {"readings.csv", "T1,4,1.10", "T1,4,NaN", "readings.csv:2:dp: ", "not a number"},
    {"readings.csv", "T1,4,1.10", "T1,4,\"1,250\"", "readings.csv:2:dp: ", "two ways"},
    {"readings.csv", "T1,4,1.10", "T1,4,1.1.0", "readings.csv:2:dp: ", "not a number"},
    {"readings.csv", "T1,4,1.10", "T1,4,1.10 gpm", "readings.csv:2:dp: ", "kPa"},
    {"readings.csv", "T1,4,1.10", "T1,5,1.10", "readings.csv:2:setting: ", "1 to 4"},
    {"readings.csv", "T1,4,1.10", "T1,-4,1.10", "readings.csv:2:setting: ", "negative"},
    {"readings.csv", "T1,4,1.10", "T9,4,1.10", "readings.csv:2:tag: ", "T1"},
    {"readings.csv", "T1,4,1.10", ",4,1.10", "readings.csv:2:tag: ", "empty"},
    {"readings.csv", "T1,4,1.10", "R1,,1.10", "readings.csv:2:dp: ", "table"},
    {"readings.csv", "T1,4,1.10,M-1", "T1,4,1.10,M-2", "readings.csv:2:instrument: ", "M-1"},
    {"readings.csv", "T1,4,1.10", "T1,,", "readings.csv:2:dp: ", "neither"},
    {"readings.csv", "1,survey,2026-03-02T09:05", "1,final,2026-03-02T09:05",
     "readings.csv:3:kind: ", "survey"},
    {"readings.csv", "1,survey", "0,survey", "readings.csv:2:round: ", "whole number"},
    {"readings.csv", "1,survey", "1.5,survey", "readings.csv:2:round: ", "whole number"},
    {"readings.csv", "1,survey", ",survey", "readings.csv:2:round: ", "round"},
    {"readings.csv", "1,survey", "1,first", "readings.csv:2:kind: ", "survey"},
    {"readings.csv", "2026-03-03T09:00", "2026-03-01T09:00", "readings.csv:4:time: ", "before"},
    {"readings.csv", "2026-03-02T09:05", "2026-03-02T08:05", "readings.csv:3:time: ", "before"},
    {"readings.csv", "2026-03-02T09:00", "2026-13-02T09:00", "readings.csv:2:time: ", "date"},
    {"readings.csv", "2026-03-02T09:00", "9 o'clock", "readings.csv:2:time: ", "date"},
    {"readings.csv", "A. Fields,\n", "A. Fields,\"needle swings\n", "readings.csv:2:-: ", "closed"},
    {"readings.csv", "A. Fields,\n", "A. Fields,\"needle\" swings\n", "readings.csv:2:-: ", "quot"},
    {"readings.csv", "A. Fields,\n", "A. Fields,5\" pipe\n", "readings.csv:2:-: ", "quot"},
    {"readings.csv", "A. Fields,\n", "A. Fields,\xC4rger\n", "readings.csv:2:-: ", "UTF-8"},
    {"readings.csv", "time,tag", "time,tga", "readings.csv:1:tga: ", "\"tag\""},
    // pump_readings.csv
    {"pump_readings.csv", "P-1,10.1", "P-9,10.1", "pump_readings.csv:2:pump: ", "P-1"},
    {"pump_readings.csv", "10.1,26.2,1750", "10.1,26.2,-3", "pump_readings.csv:2:speed: ", "negative"},
    {"pump_readings.csv", "10.1,26.2,1750", ",,", "pump_readings.csv:2:discharge: ", "no reading"},
    {"pump_readings.csv", "suction[psi]", "suction[gpm]", "pump_readings.csv:1:suction: ", "kPa"},
};

/// All lines of standard error that begin with `place`.
std::string linesAt(const std::string& err, const std::string& place) {
    std::istringstream stream(err);
    std::string out;
    for (std::string line; std::getline(stream, line);) {
        out += line.starts_with(place) ? line + "\n" : "";
    }
    return out;
}

/// Names of everything in a folder.
std::string contentOf(const std::filesystem::path& folder) {
    std::set<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        names.insert(entry.path().filename().string());
    }
    std::string out;
    for (const std::string& name : names) {
        out += name + " ";
    }
    return out;
}

void expectRefused(const JobTables& tables, const std::string& place, const std::string& says) {
    const TemporaryFolder folder;
    const std::string from = tables.writeTo(folder);
    const auto run = support::runCommand({"new", folder.file("job.wwj"), "--from", from});
    EXPECT_EQ(run.status, 2) << run.err;
    EXPECT_EQ(run.out, "");
    const std::string lines = linesAt(run.err, place);
    EXPECT_NE(lines, "") << "nothing at " << place << " in\n" << run.err;
    EXPECT_NE(lines.find(says), std::string::npos) << lines;
    // A cure stands behind a semicolon or is a question that names what was meant.
    EXPECT_TRUE(lines.find("; ") != std::string::npos) << lines;
    EXPECT_EQ(contentOf(folder.path()), "tables ");
}

TEST(BadInput, TheTablesAreSoundBeforeTheyAreSpoiled) {
    const TemporaryFolder folder;
    const auto run =
        support::runCommand({"new", folder.file("job.wwj"), "--from", JobTables().writeTo(folder)});
    EXPECT_EQ(run.status, 0) << run.err;
    EXPECT_EQ(run.err, "");
    EXPECT_TRUE(folder.has("job.wwj"));
}

class BadCell : public testing::TestWithParam<std::size_t> {};

TEST_P(BadCell, IsRefusedWithPlaceAndCure) {
    const Spoiled& spoiled = kSpoiled[GetParam()];
    SCOPED_TRACE(std::string(spoiled.file) + ": " + spoiled.from + " -> " + spoiled.to);
    JobTables tables;
    tables.replace(spoiled.file, spoiled.from, spoiled.to);
    expectRefused(tables, spoiled.place, spoiled.says);
}

INSTANTIATE_TEST_SUITE_P(Tables, BadCell, testing::Range(std::size_t{0}, std::size(kSpoiled)));

class MissingTable : public testing::TestWithParam<const char*> {};

TEST_P(MissingTable, IsNamed) {
    JobTables tables;
    tables.remove(GetParam());
    expectRefused(tables, std::string(GetParam()) + ":1:-: ", "missing");
}

TEST_P(MissingTable, EmptyIsNamed) {
    JobTables tables;
    tables.put(GetParam(), "");
    expectRefused(tables, std::string(GetParam()) + ":1:-: ", "empty");
}

INSTANTIATE_TEST_SUITE_P(Required, MissingTable,
                         testing::Values("job.csv", "valves.csv", "branches.csv", "pumps.csv",
                                         "pump_curve.csv", "readings.csv"));

TEST(BadInput, AHeaderWithoutRowsIsNotAJob) {
    JobTables tables;
    tables.put("job.csv", "key,value\n");
    expectRefused(tables, "job.csv:1:key: ", "name");
    JobTables noBranches;
    noBranches.put("branches.csv", "tag,parent,design_flow[gpm]\n");
    expectRefused(noBranches, "branches.csv:1:tag: ", "row");
    JobTables noCurve;
    noCurve.put("pump_curve.csv", "pump,flow[gpm],head[ft]\n");
    expectRefused(noCurve, "pump_curve.csv:1:pump: ", "P-1");
}

TEST(BadInput, Utf16IsRefusedInBothOrders) {
    const std::string plain = JobTables().at("valves.csv");
    std::string little = "\xFF\xFE";
    std::string big = "\xFE\xFF";
    std::string unmarked;
    for (const char c : plain) {
        little += std::string{c, '\0'};
        big += std::string{'\0', c};
        unmarked += std::string{c, '\0'};
    }
    for (const std::string& bytes : {little, big, unmarked}) {
        JobTables tables;
        tables.put("valves.csv", bytes);
        expectRefused(tables, "valves.csv:1:-: ", "UTF-16");
    }
}

TEST(BadInput, ANullByteFarBehindIsRefused) {
    JobTables tables;
    std::string rows;
    for (int i = 0; i < 40; ++i) {
        rows += "1,survey,2026-03-02T09:05,T2,4,2.90,M-1,A. Fields,\n";
    }
    tables.replace("readings.csv", "2,final", rows + "2,final");
    tables.append("readings.csv", "2,final,2026-03-03T09:05,T2,4,2.85,M-1,A.\0Fields,\n"s);
    expectRefused(tables, "readings.csv:46:-: ", "UTF-8");
}

TEST(BadInput, AFiftyMegabyteLineIsRefused) {
    JobTables tables;
    tables.append("readings.csv",
                  "2,final,2026-03-03T09:06,T2,4,2.85,M-1,A. Fields," + std::string(50'000'000, 'x') + "\n");
    expectRefused(tables, "readings.csv:6:-: ", "longer");
}

TEST(BadInput, AFileOfMoreThanTheLimitIsRefusedUnread) {
    JobTables tables;
    tables.put("readings.csv", std::string(65'000'000, '\n'));
    expectRefused(tables, "readings.csv:1:-: ", "64 MB");
}

TEST(BadInput, ALongTextIsRefused) {
    JobTables tables;
    tables.replace("readings.csv", "A. Fields,\n", "A. Fields," + std::string(5000, 'x') + "\n");
    expectRefused(tables, "readings.csv:2:note: ", "shorten");
}

TEST(BadInput, AFolderInTheFilesPlaceIsRefused) {
    const TemporaryFolder folder;
    JobTables tables;
    tables.remove("valves.csv");
    const std::string from = tables.writeTo(folder);
    std::filesystem::create_directory(folder.path() / "tables" / "valves.csv");
    const auto run = support::runCommand({"new", folder.file("job.wwj"), "--from", from});
    EXPECT_EQ(run.status, 2);
    EXPECT_NE(linesAt(run.err, "valves.csv:1:-: "), "") << run.err;
}

TEST(BadInput, ASemicolonTableMayHaveADecimalCommaButNotThreeDigitsBehindIt) {
    JobTables tables;
    tables.put("pump_curve.csv", "pump;flow[gpm];head[ft]\nP-1;0;40,5\nP-1;20;38,25\nP-1;40;32\n");
    const TemporaryFolder folder;
    const auto run = support::runCommand({"new", folder.file("job.wwj"), "--from", tables.writeTo(folder)});
    EXPECT_EQ(run.status, 0) << run.err;
    tables.put("pump_curve.csv", "pump;flow[gpm];head[ft]\nP-1;0;40,500\nP-1;20;38\n");
    expectRefused(tables, "pump_curve.csv:2:head: ", "two ways");
}

TEST(BadInput, EveryFaultOfEveryTableIsListedInOneRun) {
    JobTables tables;
    tables.replace("job.csv", "units,US", "units,metric");
    tables.replace("valves.csv", "V,1,turns,2.5,7", "V,1,turns,2.5,-7");
    tables.replace("branches.csv", "T2,R1", "T2,R7");
    tables.replace("pump_curve.csv", "P-1,20,38", "P-1,20,inf");
    tables.replace("readings.csv", "T1,4,1.10", "T9,4,NaN");
    const TemporaryFolder folder;
    const auto run = support::runCommand({"new", folder.file("job.wwj"), "--from", tables.writeTo(folder)});
    EXPECT_EQ(run.status, 2);
    for (const char* place : {"job.csv:3:value: ", "valves.csv:3:Cv: ", "branches.csv:4:parent: ",
                              "pump_curve.csv:3:head: ", "readings.csv:2:tag: ", "readings.csv:2:dp: "}) {
        EXPECT_NE(linesAt(run.err, place), "") << place << "\n" << run.err;
    }
}

TEST(BadInput, RowsCountPhysicalLinesBehindAQuotedLineBreak) {
    JobTables tables;
    tables.replace("readings.csv", "A. Fields,\n", "A. Fields,\"needle\nswings\"\n");
    tables.replace("readings.csv", "T2,4,2.90", "T2,4,much");
    expectRefused(tables, "readings.csv:4:dp: ", "not a number");
}

}  // namespace
}  // namespace ww::app
