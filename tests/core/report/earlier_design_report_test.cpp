// A report of a round that was closed before the design, the limits or a signature's ground changed. Own
// cases.
#include <gtest/gtest.h>

#include "core/project/earlier_design.h"
#include "core/report/job_spreadsheet.h"
#include "core/report/report.h"
#include "core/workbook/kept_designs.h"
#include "tests/support/demo_project.h"
#include "tests/support/section_text.h"

namespace ww::report {
namespace {

using support::demoProject;
using support::textOf;

Report builtOf(const project::Project& project) {
    ReportOptions options;
    options.journalDigest = std::string(64, 'b');
    return build(project, options);
}

std::string partOf(const project::Project& project, SectionNumber number) {
    return textOf(sectionOf(builtOf(project), number));
}

bool says(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

/// The job after an edit as a workbook would carry it out.
project::Project after(project::Project project, std::vector<project::AnyRecord> put) {
    project::Edit edit;
    edit.put = std::move(put);
    const auto kept = workbook::withKeptDesigns(project, edit);
    for (const project::AnyRecord& record : kept ? kept->put : edit.put) {
        std::visit([&](const auto& value) { project.put(value); }, record);
    }
    return project;
}

project::Project withLaterZone() {
    const project::Project project = demoProject();
    project::Branch zone = *project.branchTagged("T6");
    zone.id = support::CountingIds::numbered(990);
    zone.tag = "Z7";
    zone.position += 1;
    return after(project, {zone});
}

TEST(EarlierDesignReport, saysWhatItsRoundSaidAndWhatCameLater) {
    const project::Project before = demoProject();
    const project::Project later = withLaterZone();
    for (const SectionNumber number : {kOneLine, kFinal, kShares, kPump, kIndex}) {
        EXPECT_EQ(partOf(later, number), partOf(before, number)) << number;
    }
    const std::string result = partOf(later, kResult);
    EXPECT_TRUE(says(result, "branches added after round 3 was closed: Z7 ")) << result;
    EXPECT_TRUE(says(result, "rounds up to 3 are judged without them")) << result;
    EXPECT_FALSE(says(partOf(before, kResult), "after round"));
    const spreadsheet::WrittenSheet sheet = summarySheet(later);
    std::string words;
    for (const auto& row : sheet.rows) {
        for (const auto& cell : row) {
            words += std::holds_alternative<std::string>(cell) ? std::get<std::string>(cell) + "|" : "|";
        }
    }
    EXPECT_TRUE(says(words, "branches added after round 3")) << words;
    EXPECT_TRUE(says(words, "added later")) << words;
}

TEST(EarlierDesignReport, namesFlowsBeforeAndAfter) {
    project::Project project = demoProject();
    project::Branch changed = *project.branchTagged("T1");
    changed.designFlow = quantity::measured<quantity::VolumeFlow>(*base::Decimal::parse("2.5"),
                                                                  quantity::Unit::CubicMetrePerHour);
    const std::string was = project.branchTagged("T1")->designFlow->text();
    project = after(project, {changed});
    const std::string result = partOf(project, kResult);
    EXPECT_TRUE(says(result, "design flows changed after round 3 was closed: T1 " + was + " → 2.5 m3/h"))
        << result;
    EXPECT_EQ(partOf(project, kFinal), partOf(demoProject(), kFinal));
}

TEST(EarlierDesignReport, saysThatTheLimitsChangedAndGivesThoseOfThen) {
    project::Project project = demoProject();
    project::Round final = *project.roundNumbered(3);
    final.state = project::RoundState::Accepted;
    final.decidedBy = "S. Olsen";
    project.put(final);
    const auto onShare = [&] { return partOf(project, kShares); };
    const std::string before = onShare();
    const std::string tolerance = partOf(project, kMethod);
    project::Job job = project.job();
    job.matchingBand =
        quantity::measured<quantity::Ratio>(*base::Decimal::parse("15"), quantity::Unit::Percent);
    project = after(project, {job});
    EXPECT_EQ(onShare(), before);
    EXPECT_EQ(partOf(project, kMethod), tolerance) << "the limits that the report is about";
    const std::string result = partOf(project, kResult);
    EXPECT_TRUE(says(result, "limits changed after round 3 was closed: share ±15 %, was ±5 %")) << result;
    EXPECT_TRUE(says(result, "round 3 was accepted by those before")) << result;
}

TEST(EarlierDesignReport, earlierChangesStandWithTheMethod) {
    project::Project project = withLaterZone();
    project::Round next = *project.roundNumbered(3);
    next.id = support::CountingIds::numbered(991);
    next.number = 4;
    project.put(next);
    EXPECT_TRUE(says(partOf(project, kMethod), "branches added after round 3 was closed"));
    EXPECT_FALSE(says(partOf(project, kResult), "branches added"));
}

}  // namespace
}  // namespace ww::report
