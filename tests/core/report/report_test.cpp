#include "core/report/report.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/balancing/assess.h"
#include "core/balancing/system_curve.h"
#include "core/project/units.h"
#include "core/pump_room/pump_picture.h"
#include "core/report/job_spreadsheet.h"
#include "core/report/zone_study.h"
#include "tests/core/balancing/small_loop.h"
#include "tests/support/demo_project.h"
#include "tests/support/section_text.h"

namespace ww::report {
namespace {

using support::DemoOptions;
using support::demoProject;
using support::textOf;

Report built(const project::Project& project) {
    ReportOptions options;
    options.journalDigest = "3f9c01ab77e2d4f00112";
    options.workbookId = "w";
    return build(project, options);
}

Section numbered(const Report& report, int number) {
    return sectionOf(report, static_cast<SectionNumber>(number));
}

// The order of a balance report's parts is common practice, no source.
TEST(Report, hasNineSectionsInOrderAndTheRecordBehindThem) {
    const Report report = built(demoProject());
    ASSERT_GE(report.sections.size(), 13u);
    for (std::size_t i = 0; i < report.sections.size(); ++i) {
        EXPECT_EQ(report.sections[i].number, static_cast<int>(i) + 1);
    }
    EXPECT_TRUE(report.isDraft);
    EXPECT_EQ(report.digest, "3f9c01ab77e2");
    EXPECT_EQ(report.roundNumber, 3);
    EXPECT_EQ(report.rounds.size(), 3u);
}

TEST(Report, equalInputGivesAnEqualReport) {
    const Report first = built(demoProject());
    const Report second = built(demoProject());
    ASSERT_EQ(first.sections.size(), second.sections.size());
    for (int number = 1; number <= static_cast<int>(first.sections.size()); ++number) {
        EXPECT_EQ(textOf(numbered(first, number)), textOf(numbered(second, number)));
    }
}

TEST(Report, ofAPracticeJobTellsThatNothingWasMeasured) {
    project::Project project = demoProject();
    EXPECT_FALSE(built(project).simulated.has_value());
    EXPECT_FALSE(zoneStudy(project, pump_room::whatIf(project, {}), {}).simulated.has_value());
    project::Job job = project.job();
    job.practice = "difficulty=steady;seed=17";
    project.put(job);
    const auto told = built(project).simulated;
    ASSERT_TRUE(told.has_value());
    EXPECT_NE(base::english(*told).find("Nothing was measured"), std::string::npos);
    EXPECT_TRUE(zoneStudy(project, pump_room::whatIf(project, {}), {}).simulated.has_value());
    const spreadsheet::WrittenSheet sheet = summarySheet(project);
    const bool isSaid = std::any_of(sheet.rows.begin(), sheet.rows.end(), [](const auto& row) {
        return !row.empty() && std::holds_alternative<std::string>(row.front()) &&
               std::get<std::string>(row.front()).starts_with("SIMULATED");
    });
    EXPECT_TRUE(isSaid) << "the spreadsheet says so too";
}

TEST(Report, whatIsBuiltOfThePumpAloneIsTheSame) {
    const project::Project project = demoProject();
    const Report whole = built(project);
    const Report part = buildOfPump(project, {});
    ASSERT_EQ(part.sections.size(), 2U);
    for (const SectionNumber number : {kPump, kIndex}) {
        EXPECT_EQ(textOf(sectionOf(part, number)), textOf(sectionOf(whole, number)));
    }
    EXPECT_EQ(part.rounds.size(), whole.rounds.size());
    // Judged by their numbers alone the rounds say the same of both.
    std::vector<balancing::Assessment> numbers;
    for (const balancing::Assessment& round : whole.rounds) {
        numbers.push_back(balancing::assess(project, *round.round, {.numbersOnly = true}));
    }
    const Report given = buildOfPump(project, {}, std::move(numbers));
    EXPECT_EQ(given.roundNumber, whole.roundNumber);
    for (const SectionNumber number : {kPump, kIndex}) {
        EXPECT_EQ(textOf(sectionOf(given, number)), textOf(sectionOf(whole, number)));
    }
    EXPECT_EQ(textOf(sectionOf(buildOfPump({}, {}, {}), kPump)),
              textOf(sectionOf(buildOfPump({}, {}), kPump)));
}

TEST(Report, everyTableIsRectangular) {
    for (const auto units : {project::UnitSystem::SI, project::UnitSystem::US}) {
        DemoOptions options;
        options.units = units;
        for (const Section& section : built(demoProject(options)).sections) {
            for (const Table& table : section.tables) {
                for (const auto& row : table.rows) {
                    EXPECT_EQ(row.size(), table.columns.size()) << section.number;
                }
                EXPECT_TRUE(table.totals.empty() || table.totals.size() == table.columns.size())
                    << section.number;
            }
        }
    }
}

TEST(Report, resultSaysThatTheIndexValveIsFullyOpen) {
    const std::string text = textOf(numbered(built(demoProject()), 1));
    EXPECT_NE(text.find("Index valve T6 at 4.0 of 4.0: fully open"), std::string::npos) << text;
    EXPECT_NE(text.find("Draft until signed"), std::string::npos);
}

// 9.6 m3/h is the sum of the six design flows of the demo job: 1.8 + 1.5 + 2.1 + 1.2 + 1.6 + 1.4.
TEST(Report, totalsAreTheSumOfTheTerminals) {
    const Section section = numbered(built(demoProject()), kFinal);
    ASSERT_EQ(section.tables.size(), 1u);
    EXPECT_EQ(section.tables[0].rows.size(), 8u);
    EXPECT_EQ(section.tables[0].totals[5].text, "9.60");
    EXPECT_EQ(section.tables[0].totals[7].text, "100.0");
}

TEST(Report, theStarMarksTheEndOfTheIndexCircuitAsOnTheScreen) {
    std::vector<std::string> marked;
    const Section section = numbered(built(demoProject()), kFinal);
    for (const auto& row : section.tables.at(0).rows) {
        if (row.front().text.find('*') != std::string::npos) {
            marked.push_back(row.front().text.substr(row.front().text.find('T')));
        }
    }
    EXPECT_EQ(marked, std::vector<std::string>{"T6 *"});
}

TEST(Report, sharesThatAreNotKnownAreNotCounted) {
    project::Project project = demoProject();
    const base::Id round = project.lastRound()->id;
    // What its riser read would stand in for it.
    const base::Id branch = project.branchTagged("T1")->id;
    const std::optional<base::Id> riser = project.branchTagged("T1")->parent;
    std::vector<base::Id> gone;
    for (const std::size_t index : project.readingsOf(round)) {
        const base::Id& at = project.readings()[index].branch;
        if (at == branch || at == riser) {
            gone.push_back(project.readings()[index].id);
        }
    }
    for (const base::Id& reading : gone) {
        project.eraseReading(reading);
    }
    const Report report = built(project);
    EXPECT_NE(textOf(numbered(report, kResult)).find("Not known: 5 of 6 terminals read in this round"),
              std::string::npos);
    EXPECT_EQ(numbered(report, kShares).tables.at(0).rows.back().at(4).text, "–");
}

// Only a round that was opened as the final one is called so (this program's own decision).
TEST(Report, aRoundIsNamedByWhatItIs) {
    project::Project project = demoProject();
    EXPECT_EQ(base::english(numbered(built(project), kFinal).title), "Final round");
    EXPECT_EQ(base::english(numbered(built(project), kOneLine).figures.at(0).title),
              "The loop in the final round");
    project::Round adjusting = *project.lastRound();
    adjusting.kind = project::RoundKind::Adjusting;
    project.put(adjusting);
    EXPECT_EQ(base::english(numbered(built(project), kFinal).title), "Last round read");
    EXPECT_EQ(base::english(numbered(built(project), kOneLine).figures.at(0).title),
              "The loop in the last round read");
}

// A flow limiter keeps to its range and has no share to meet: report and screen call it the same.
TEST(Report, onlyASelfActingValveIsInRange) {
    project::Project project = demoProject();
    project::Branch limiter = *project.branchTagged("T1");
    limiter.kind = project::BranchKind::Limiter;
    project.put(limiter);
    const Report report = built(project);
    for (const int number : {kFinal, kShares}) {
        int count = 0;
        const Section section = numbered(report, number);
        for (const Table& table : section.tables) {
            for (const auto& row : table.rows) {
                const bool isOfLimiter = row.front().text.find("T1") != std::string::npos;
                const Cell& last = row.back();
                EXPECT_EQ(last.isSelfActing, last.state.has_value() && isOfLimiter);
                count += last.isSelfActing ? 1 : 0;
            }
        }
        EXPECT_EQ(count, 1) << number;
    }
}

TEST(Report, finalRoundShowsTheDpAsTyped) {
    const project::Project project = demoProject();
    const std::string text = textOf(numbered(built(project), kFinal));
    const project::Branch* branch = project.branchTagged("T6");
    for (const std::size_t index : project.readingsOf(project.lastRound()->id)) {
        const project::Reading& reading = project.readings()[index];
        if (reading.branch == branch->id) {
            EXPECT_NE(text.find("|4.0 / 4.0|" + reading.dp->digits.text() + " kPa|"), std::string::npos)
                << text;
        }
    }
}

// Affinity: flow follows speed, so the factor is design flow over the flow where both curves meet (Karassik
// et al., Pump Handbook). The demo's duty lies on its pump curve, so that flow is the total of the round.
TEST(Report, pumpFormulaCarriesItsNumbers) {
    const project::Project project = demoProject();
    const Report report = built(project);
    const auto proposal = balancing::pumpProposal(project, report.rounds.back());
    ASSERT_TRUE(proposal.has_value());
    EXPECT_NEAR(proposal->speedFraction, report.rounds.back().totalDesign / *report.rounds.back().totalFlow,
                0.01);
    const std::string text = textOf(numbered(report, kPump));
    EXPECT_NE(text.find("n₂/n₁ = Q design / Q"), std::string::npos) << text;
    EXPECT_NE(text.find("= 9.60 / "), std::string::npos) << text;
    EXPECT_NE(text.find("least impeller of the casing"), std::string::npos);
    EXPECT_NE(text.find("qualified people under the local codes"), std::string::npos);
}

// Two numbers of excess head stand in the report: each says what it is counted above, in the same words
// everywhere, and which of them decides. The rule is this program's own decision; no outside source.
TEST(Report, everyExcessHeadNamesItsBasis) {
    const Report report = built(demoProject());
    const auto decided = report.pumps->decision.decidedExcess();
    ASSERT_TRUE(decided.has_value());
    const std::string counted = balancing::excessWords(decided->basis, decided->speed);
    EXPECT_NE(counted.find("above the index circuit with open valves"), std::string::npos) << counted;
    const std::string asRead =
        balancing::excessWords(balancing::ExcessBasis::ValvesAsRead, balancing::ExcessSpeed::AsRead);
    EXPECT_EQ(asRead, "above the loop with its valves as read, at the speed of the last round");

    const std::string first = textOf(numbered(report, kResult));
    EXPECT_NE(first.find(counted + ", from the pump's curve: the pump decision uses this one"),
              std::string::npos)
        << first;
    const std::string pump = textOf(numbered(report, kPump));
    EXPECT_NE(pump.find(asRead), std::string::npos) << pump;
    EXPECT_NE(pump.find("The pump decision uses"), std::string::npos) << pump;
    EXPECT_NE(pump.find(counted), std::string::npos) << pump;
    const auto told =
        std::find_if(report.sections.begin(), report.sections.end(), [](const Section& section) {
            return base::english(section.title).find("Excess head") != std::string::npos;
        });
    ASSERT_NE(told, report.sections.end());
    EXPECT_NE(textOf(*told).find(counted + ", from the pump's curve: the pump decision uses this one"),
              std::string::npos);
    // The same value in the same digits wherever it stands.
    const std::string value = project::shownUnits(demoProject()).written(decided->head);
    for (const std::string& page : {first, pump, textOf(*told)}) {
        EXPECT_NE(page.find(value + " " + counted), std::string::npos) << value << '\n' << page;
    }
    for (const Fact& fact : told->facts) {
        EXPECT_FALSE(base::english(fact.label).empty()) << base::english(fact.value);
    }
    EXPECT_NE(first.find("(section " + std::to_string(told->number) + ")"), std::string::npos) << first;
}

// A pump that was slowed has another excess than the one that is decided on.
TEST(Report, theFirstPageNamesTheExcessThatIsLeftAtTheSpeedAsRead) {
    const Report report = built(demoProject());
    const auto asRead = report.pumps->decision.excessAsRead();
    const auto decided = report.pumps->decision.decidedExcess();
    ASSERT_TRUE(asRead && decided);
    const quantity::ShownUnits units = project::shownUnits(demoProject());
    const std::string said =
        units.written(asRead->head) + " " + balancing::excessWords(asRead->basis, asRead->speed);
    const bool isOther = units.written(asRead->head) != units.written(decided->head);
    EXPECT_EQ(textOf(numbered(report, kResult)).find("Excess as read: " + said) != std::string::npos,
              isOther);
}

// An owner asks first which circuit is the index and whether its valve stands open.
TEST(Report, theFirstPageBeginsWithTheIndexCircuit) {
    const Section result = numbered(built(demoProject()), kResult);
    ASSERT_GE(result.facts.size(), 5U);
    EXPECT_EQ(base::english(result.facts[0].label), "Verdict");
    EXPECT_EQ(base::english(result.facts[1].label), "Accepted by");
    EXPECT_EQ(base::english(result.facts[2].label), "Index circuit");
    EXPECT_TRUE(base::english(result.facts[2].value).ends_with("T6 (section 7)"))
        << base::english(result.facts[2].value);
    EXPECT_EQ(base::english(result.facts[3].value), "Index valve T6 at 4.0 of 4.0: fully open");
    EXPECT_EQ(result.facts[3].mark, Mark::Pass);
    EXPECT_EQ(base::english(result.facts[4].label), "Proof");
}

TEST(Report, indexSectionProvesItsThreeParts) {
    const Section section = numbered(built(demoProject()), kIndex);
    ASSERT_EQ(section.facts.size(), 4u);
    for (std::size_t i = 1; i < 4; ++i) {
        EXPECT_EQ(section.facts[i].mark, Mark::Pass) << base::english(section.facts[i].value);
    }
    EXPECT_EQ(section.tables.at(0).rows.size(), 2u);
}

// One judgement: the valve passes as open, and the first page says in the words of the section what is not
// shown.
TEST(Report, theFirstPageSaysOfTheIndexWhatItsSectionSays) {
    const Report report = built(balancing::rivalLoop(project::RoundState::Accepted).project());
    const Section section = numbered(report, kIndex);
    ASSERT_EQ(section.facts.size(), 4u);
    EXPECT_EQ(section.facts[1].mark, Mark::Pass) << base::english(section.facts[1].value);
    EXPECT_EQ(section.facts[3].mark, Mark::Open);
    const std::string said = base::english(section.facts[3].value);
    EXPECT_NE(said.find("Not shown that D is the index: it takes 98.0 % of design"), std::string::npos)
        << said;
    EXPECT_NE(said.find("A (97.0 %)"), std::string::npos) << said;
    EXPECT_NE(textOf(numbered(report, kResult)).find(said), std::string::npos);
}

// 24 Cv are 24 / 1.156 = 20.8 Kv; a table taken as exact has no accuracy to print.
TEST(Report, coefficientsAreInTheUnitOfTheJob) {
    support::FieldJob job;
    project::ValveModel made;
    made.id = job.ids().next();
    made.model = "V-1";
    made.coefficientUnit = quantity::Unit::Cv;
    made.rows = {{job.decimal("0"), job.decimal("0")}, {job.decimal("4"), job.decimal("24.0000")}};
    made.accuracy = quantity::measured<quantity::Ratio>(job.decimal("0.0"), quantity::Unit::Percent);
    job.project().put(made);
    const std::string text = textOf(numbered(built(job.project()), kMethod));
    EXPECT_NE(text.find("Kv 20.8"), std::string::npos) << text;
    EXPECT_EQ(text.find("0.0 %"), std::string::npos) << text;
}

TEST(Report, exceptionsNameCorrectionDoubtAndOverdueMeter) {
    DemoOptions options;
    options.hasOverdueMeter = true;
    const std::string text = textOf(numbered(built(demoProject(options)), kExceptions));
    EXPECT_NE(text.find("T4|2|corrected|48.8 kPa corrected to"), std::string::npos) << text;
    EXPECT_NE(text.find("strainer cleaned between the rounds"), std::string::npos) << text;
    EXPECT_NE(text.find("M-2||overdue|readings taken after its calibration ran out on"), std::string::npos)
        << text;
}

TEST(Report, supersededReadingsStayStruck) {
    const Section section = numbered(built(demoProject()), kReadings);
    int struck = 0;
    for (const auto& row : section.tables.at(0).rows) {
        for (const Cell& cell : row) {
            struck += cell.isStruck && cell.text == "48.8 kPa" ? 1 : 0;
        }
    }
    EXPECT_EQ(struck, 1);
    EXPECT_EQ(section.tables.at(0).rows.size(), 25u);
    EXPECT_EQ(section.tables.at(1).rows.size(), 3u);
}

TEST(Report, anEarlierRoundCanBeReported) {
    ReportOptions options;
    options.round = 2;
    const Report report = build(demoProject(), options);
    EXPECT_EQ(report.roundNumber, 2);
    EXPECT_EQ(report.rounds.size(), 2u);
}

TEST(Report, stillBuildsWithoutRoundsOrPump) {
    DemoOptions options;
    options.hasRounds = false;
    options.hasPump = false;
    const Report report = built(demoProject(options));
    ASSERT_GE(report.sections.size(), 13u);
    EXPECT_NE(textOf(numbered(report, 1)).find("No round of readings"), std::string::npos);
    EXPECT_NE(textOf(numbered(report, kPump)).find("No pump is on record"), std::string::npos);
    EXPECT_EQ(report.roundNumber, 0);
    EXPECT_GE(built(project::Project()).sections.size(), 13u);
}

TEST(Report, usUnitsShowGallonsAndFeet) {
    DemoOptions options;
    options.units = project::UnitSystem::US;
    const std::string text = textOf(numbered(built(demoProject(options)), 1));
    EXPECT_NE(text.find(" gpm"), std::string::npos) << text;
}

}  // namespace
}  // namespace ww::report
