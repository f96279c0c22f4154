// A job out to tables and back: digits, units, corrections and states of rounds must come back as they were.
// Own cases; the format is this program's.
#include "core/exchange/job_folder.h"

#include <gtest/gtest.h>

#include "tests/support/demo_project.h"
#include "tests/support/job_tables.h"
#include "tests/support/review_job.h"

namespace ww::exchange {
namespace {

using project::Project;
using support::CountingIds;
using support::JobTables;
using support::TemporaryFolder;

Project applied(Project project, const project::Edit& edit) {
    for (const project::AnyRecord& record : edit.put) {
        std::visit([&](const auto& value) { project.put(value); }, record);
    }
    return project;
}

/// The job read from a folder; all faults are failures.
Project readBack(const std::filesystem::path& folder) {
    CountingIds ids(50'000);
    const ImportPlan plan = readJobFolder(folder, ids);
    for (const RowFault& fault : plan.faults) {
        ADD_FAILURE() << text(fault);
    }
    return applied({}, plan.edit);
}

/// For each reading of the job in order of round and sequence, the number of the one it corrects, or 0.
std::vector<std::size_t> corrections(const Project& project) {
    std::vector<std::size_t> out;
    for (const std::size_t round : project.roundsByNumber()) {
        const auto& indices = project.readingsOf(project.rounds()[round].id);
        for (const std::size_t index : indices) {
            std::size_t corrected = 0;
            for (std::size_t i = 0; i < indices.size(); ++i) {
                if (project.readings()[index].supersedes == project.readings()[indices[i]].id) {
                    corrected = i + 1;
                }
            }
            out.push_back(corrected);
        }
    }
    return out;
}

void expectRoundTrip(const Project& project) {
    const TemporaryFolder folder;
    ASSERT_TRUE(writeJobFolder(project, folder.path() / "out"));
    const Project back = readBack(folder.path() / "out");
    EXPECT_EQ(jobJson(back), jobJson(project));
    EXPECT_EQ(corrections(back), corrections(project));
    EXPECT_EQ(back.people().size(), project.people().size());
    ASSERT_TRUE(writeJobFolder(back, folder.path() / "again"));
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder.path() / "out")) {
        if (entry.is_directory()) {
            continue;
        }
        const std::string name = entry.path().lexically_relative(folder.path() / "out").string();
        EXPECT_EQ(folder.read("out/" + name), folder.read("again/" + name)) << name;
    }
}

TEST(JobFolder, BringsEveryFieldBack) {
    expectRoundTrip(applied({}, support::wholeJob()));
}

/// wholeJob() with everything of review on top.
Project reviewedJob() {
    const Project whole = applied({}, support::wholeJob());
    return applied(whole, support::reviewOf(whole));
}

TEST(JobFolder, BringsReviewAndPhotosBack) {
    const Project project = reviewedJob();
    expectRoundTrip(project);
    const TemporaryFolder folder;
    ASSERT_TRUE(writeJobFolder(project, folder.path() / "out"));
    const Project back = readBack(folder.path() / "out");
    ASSERT_EQ(back.attachments().size(), 1U);
    EXPECT_EQ(back.attachments()[0].content, project.attachments()[0].content);
    ASSERT_EQ(back.comments().size(), 2U);
    EXPECT_EQ(back.comments()[1].answers, back.comments()[0].id);
    ASSERT_EQ(back.mergeConflicts().size(), 1U);
    EXPECT_TRUE(back.readings().contains(back.mergeConflicts()[0].record));
    ASSERT_EQ(back.deficiencies().size(), 1U);
    EXPECT_EQ(back.readings().at(*back.deficiencies()[0].reading).sequence, 2);
    EXPECT_EQ(back.job().loadRows, project.job().loadRows);
    EXPECT_EQ(back.rounds()[0].sample.size(), project.rounds()[0].sample.size());
}

/// Codes of the faults of a written review job in which one file was replaced.
std::vector<std::string> faultsWith(const std::string& file, const std::string& from, const std::string& to) {
    const TemporaryFolder folder;
    EXPECT_TRUE(writeJobFolder(reviewedJob(), folder.path() / "out"));
    std::string text = folder.read("out/" + file);
    const std::size_t at = text.find(from);
    EXPECT_NE(at, std::string::npos) << text;
    folder.write("out/" + file, text.replace(at, from.size(), to));
    CountingIds ids(50'000);
    std::vector<std::string> codes;
    for (const RowFault& fault : readJobFolder(folder.path() / "out", ids).faults) {
        EXPECT_EQ(fault.file, file) << text;
        codes.emplace_back(fault.fault.code());
    }
    return codes;
}

TEST(JobFolder, NamesWhatATableOfReviewDoesNotFind) {
    using Codes = std::vector<std::string>;
    EXPECT_EQ(faultsWith("deficiencies.csv", "1:2", "1:99"), Codes{"table_reference_unknown"});
    EXPECT_EQ(faultsWith("deficiencies.csv", "remedied", "mended"), Codes{"cell_not_one_of"});
    EXPECT_EQ(faultsWith("comments.csv", "dp,1,", "dp,7,"), Codes{"row_reference_unknown"});
    EXPECT_EQ(faultsWith("attachments.csv", ".jpg,image", ".jpg,image"), Codes{});
    const TemporaryFolder folder;
    ASSERT_TRUE(writeJobFolder(reviewedJob(), folder.path() / "out"));
    std::filesystem::remove_all(folder.path() / "out" / "attachments");
    CountingIds ids(50'000);
    const ImportPlan plan = readJobFolder(folder.path() / "out", ids);
    ASSERT_EQ(plan.faults.size(), 1U);
    EXPECT_EQ(plan.faults[0].fault.code(), "attachment_missing");
}

TEST(JobFolder, TakesNoFileFromOutsideTheFolder) {
    const TemporaryFolder folder;
    ASSERT_TRUE(writeJobFolder(reviewedJob(), folder.path() / "out"));
    folder.write("secret.txt", "not for this job");
    const std::string table = folder.read("out/attachments.csv");
    const auto faultFor = [&](const std::string& name) {
        const std::size_t end = table.rfind("\r\n");
        const std::size_t cell = table.rfind(',', end) + 1;
        folder.write("out/attachments.csv", table.substr(0, cell) + name + "\r\n");
        CountingIds ids(50'000);
        const ImportPlan plan = readJobFolder(folder.path() / "out", ids);
        return plan.faults.empty() ? std::string() : std::string(plan.faults[0].fault.code());
    };
    EXPECT_EQ(faultFor("../../secret.txt"), "attachment_missing");
    EXPECT_EQ(faultFor((folder.path() / "secret.txt").string()), "attachment_missing");
    std::filesystem::create_symlink(folder.path() / "secret.txt",
                                    folder.path() / "out" / "attachments" / "link.txt");
    EXPECT_EQ(faultFor("link.txt"), "attachment_missing");
}

TEST(JobFolder, BringsRoundsAndCorrectionsBack) {
    expectRoundTrip(support::DemoProject().take());
}

TEST(JobFolder, KeepsACorrectionThatIsNotTheNextReadingOfItsPlace) {
    Project project = applied({}, support::wholeJob());
    const support::WholeJobIds ids;
    project::Reading slip = project.readings().at(ids.first);
    slip.status = project::ReadingStatus::Superseded;
    project::Reading repeat = support::wholeJobReading(CountingIds::numbered(700), 3, ids.near, "31.2");
    repeat.isRepeat = true;
    project::Reading correction = support::wholeJobReading(CountingIds::numbered(701), 4, ids.near, "13.30");
    correction.supersedes = ids.first;
    project::Reading struck = support::wholeJobReading(CountingIds::numbered(702), 5, ids.near, "0.0");
    struck.status = project::ReadingStatus::Struck;
    struck.reason = "hose off";
    for (const project::Reading& reading : {slip, repeat, correction, struck}) {
        project.put(reading);
    }
    project::Person formula;
    formula.id = CountingIds::numbered(703);
    formula.name = "=HYPERLINK(1)";
    project.put(formula);
    EXPECT_EQ(corrections(project), (std::vector<std::size_t>{0, 0, 0, 1, 0}));
    expectRoundTrip(project);
}

TEST(JobFolder, TakesACorrectionLongAfterTheNextRoundBegan) {
    Project project = support::DemoProject().take();
    for (const project::Reading& stored : project.readings()) {
        if (stored.supersedes) {
            project::Reading late = stored;
            late.time = base::Instant::fromText("2026-04-30T09:00:00Z");
            project.put(late);
            break;
        }
    }
    expectRoundTrip(project);
}

TEST(JobFolder, KeepsDigitsAsTypedInMixedUnits) {
    JobTables tables;
    tables.replace("readings.csv", "T1,4,1.10", "T1,4,7.580 kPa");
    tables.replace("readings.csv", "T2,4,2.90", "T2,4,80.3 inH2O");
    const TemporaryFolder folder;
    const Project project = readBack(tables.writeTo(folder));
    EXPECT_EQ(project.readings()[0].dp->digits.text(), "7.580");
    EXPECT_EQ(project.readings()[0].dp->unit, quantity::Unit::Kilopascal);
    EXPECT_EQ(project.readings()[2].dp->digits.text(), "1.20");
    expectRoundTrip(project);
}

TEST(JobFolder, FillsInTheDefaultsOfAJob) {
    JobTables tables;
    tables.put("job.csv", "key,value\nname,Weir House\n");
    tables.remove("instruments.csv");
    tables.remove("pump_readings.csv");
    tables.put("readings.csv", "round,kind,tag,setting,dp[psi]\n1,survey,T1,4,1.10\n2,final,T1,4,1.20\n");
    const TemporaryFolder folder;
    const Project project = readBack(tables.writeTo(folder));
    EXPECT_DOUBLE_EQ(project.job().toleranceLow.value.si(), -0.10);
    EXPECT_DOUBLE_EQ(project.job().toleranceHigh.value.si(), 0.10);
    EXPECT_DOUBLE_EQ(project.job().matchingBand.value.si(), 0.05);
    EXPECT_EQ(project.roundNumbered(1)->state, project::RoundState::Closed);
    EXPECT_EQ(project.roundNumbered(2)->state, project::RoundState::Open);
}

TEST(JobFolder, TakesTablesWithByteOrderMarkAndCapitals) {
    JobTables tables;
    tables.put("valves.csv", "\xEF\xBB\xBF" + tables.at("valves.csv"));
    tables.replace("readings.csv", "1,survey,2026-03-02T09:00,T1", "1,Survey,2026-03-02 09:00,t1");
    const TemporaryFolder folder;
    const Project project = readBack(tables.writeTo(folder));
    EXPECT_EQ(project.branches().at(project.readings()[0].branch).tag, "T1");
}

class Record : public testing::Test {
  protected:
    /// Reads further tables into the job of JobTables; round 1 of it is closed, round 2 open.
    ImportPlan record(std::string_view readings) {
        folder.write("more/readings.csv", readings);
        return readReadings(folder.path() / "more", project, ids);
    }

    TemporaryFolder folder;
    CountingIds ids{90'000};
    Project project = readBack(JobTables().writeTo(folder));
};

TEST_F(Record, AddsToTheOpenRoundAndMakesNewOnes) {
    const ImportPlan plan = record(
        "round,kind,tag,setting,dp[psi],person\n2,final,T1,2.5,1.30,B. Moor\n3,witness,T1,2.5,1.28,B. "
        "Moor\n");
    ASSERT_TRUE(plan.isAcceptable());
    const Project after = applied(project, plan.edit);
    EXPECT_EQ(after.readings().size(), project.readings().size() + 2);
    EXPECT_EQ(after.roundNumbered(3)->kind, project::RoundKind::Witness);
    EXPECT_EQ(after.roundNumbered(2)->state, project::RoundState::Closed);
    EXPECT_EQ(after.people().size(), 2U);
    const auto& second = after.readingsOf(after.roundNumbered(2)->id);
    EXPECT_EQ(after.readings()[second.back()].dp->digits.text(), "1.30");
}

TEST_F(Record, RefusesAClosedRoundAtItsRow) {
    const ImportPlan plan = record("round,kind,tag,setting,dp[psi]\n2,final,T1,4,1.3\n1,survey,T1,4,1.3\n");
    ASSERT_EQ(plan.faults.size(), 1U);
    EXPECT_EQ(plan.faults.front().row, 3);
    EXPECT_EQ(plan.faults.front().column, "round");
    EXPECT_EQ(plan.faults.front().fault.code(), "record_round_locked");
}

TEST_F(Record, RefusesAFolderWithNothingInIt) {
    std::filesystem::create_directories(folder.path() / "empty");
    EXPECT_FALSE(readReadings(folder.path() / "empty", project, ids).isAcceptable());
    EXPECT_FALSE(readReadings(folder.path() / "nowhere", project, ids).isAcceptable());
}

TEST(JobFolder, LeavesNothingHalfWrittenWhereItMayNotWrite) {
    const TemporaryFolder folder;
    folder.write("file", "no folder");
    EXPECT_FALSE(writeJobFolder(support::DemoProject().take(), folder.path() / "file"));
    std::filesystem::create_directories(folder.path() / "out" / "readings.csv.part");
    EXPECT_FALSE(writeJobFolder(support::DemoProject().take(), folder.path() / "out"));
    EXPECT_FALSE(folder.has("out/job.csv"));
    EXPECT_FALSE(folder.has("out/job.csv.part"));
}

}  // namespace
}  // namespace ww::exchange
