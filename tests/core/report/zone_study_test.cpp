// The study of a changed zone as a document of its own.

#include "core/report/zone_study.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/balancing/advice/advice.h"
#include "core/balancing/assess.h"
#include "core/report/pump_sections.h"
#include "tests/support/demo_project.h"
#include "tests/support/pump_loop.h"
#include "tests/support/us_units.h"

namespace ww::report {
namespace {

using support::typedAs;

std::vector<std::string> sentences(const std::vector<Statement>& statements) {
    std::vector<std::string> texts;
    for (const Statement& statement : statements) {
        texts.push_back(base::englishWithSubject(statement));
    }
    return texts;
}

TEST(ZoneStudy, namesTheChangesAndIsNeverSigned) {
    const project::Project project = support::pumpLoop();
    project::Branch added = *project.branchTagged("T4");
    added.id = support::idOf(9);
    added.tag = "T5";
    const base::Id kept = project.branchTagged("T1")->id;
    const std::vector<pump_room::ZoneChange> changes{
        pump_room::AddBranch{added},
        pump_room::ChangeFlow{kept, typedAs<quantity::VolumeFlow>("30", quantity::Unit::GallonPerMinute)}};
    const pump_room::WhatIf whatIf = pump_room::whatIf(project, changes);
    ReportOptions options;
    options.signers = Signers::TechnicianAndSupervisor;
    options.journalDigest = std::string(64, 'a');
    const Report study = zoneStudy(project, whatIf, options);
    EXPECT_EQ(study.kind, ReportKind::Study);
    EXPECT_EQ(study.signers, Signers::None);
    EXPECT_EQ(study.jobName, project.job().name);
    ASSERT_EQ(study.sections.size(), 1U);
    const auto told = sentences(study.sections.front().statements);
    ASSERT_EQ(told.size(), 2U);
    EXPECT_EQ(told[0], "T5: added at the pump, " + added.designFlow->text() + " at design");
    EXPECT_EQ(told[1], "T1: 30 gpm at design instead of " + project.branchTagged("T1")->designFlow->text());
    ASSERT_FALSE(study.sections.front().tables.empty());
    // New settings are those of the scale's marks, as everywhere.
    int settings = 0;
    for (const auto& row : study.sections.front().tables.front().rows) {
        const std::string& text = row.at(6).text;
        const project::Branch* branch = whatIf.project.branchTagged(row.at(0).text);
        ASSERT_NE(branch, nullptr);
        if (!text.empty() && text.find_first_not_of("0123456789.") == std::string::npos) {
            const double marks = std::stod(text) / balancing::readableStep(whatIf.project, *branch).si();
            EXPECT_NEAR(marks, std::round(marks), 1e-6) << branch->tag << ' ' << text;
            ++settings;
        }
    }
    EXPECT_GT(settings, 0);
    // Nothing was learned of this job, and the study says so first.
    EXPECT_EQ(base::english(study.sections.front().facts.front().value),
              "the design losses: no learned loop that fits the readings was there");
}

// A riser that is to be turned has its row, and a solve at all the new settings gives every share.
TEST(ZoneStudy, valvesOnTheWayHaveTheirNewSettings) {
    project::Project project = support::demoProject();
    const auto loss = [](const char* digits) {
        return quantity::measured<quantity::PressureDifference>(*base::Decimal::parse(digits),
                                                                quantity::Unit::Kilopascal);
    };
    for (project::Branch branch :
         std::vector<project::Branch>(project.branches().begin(), project.branches().end())) {
        branch.runLoss = loss("2");
        if (project.tree().isTerminal(project.branches().indexOf(branch.id))) {
            branch.circuitLoss = loss("10");
        }
        project.put(branch);
    }
    const project::Branch& grown = *project.branchTagged("T1");
    const pump_room::WhatIf whatIf = pump_room::whatIf(
        project, {pump_room::ChangeFlow{
                     grown.id, quantity::measured<quantity::VolumeFlow>(
                                   base::Decimal::fromNumber(0.5 * grown.designFlow->digits.value(), 3),
                                   grown.designFlow->unit)}});
    ASSERT_TRUE(whatIf.faults.empty());
    const Section section = zoneSection(whatIf);
    ASSERT_FALSE(section.tables.empty());
    int onTheWay = 0;
    for (const auto& row : section.tables.front().rows) {
        const project::Branch* branch = whatIf.project.branchTagged(row.at(0).text);
        ASSERT_NE(branch, nullptr);
        onTheWay += whatIf.project.tree().isTerminal(whatIf.project.branches().indexOf(branch->id)) ? 0 : 1;
        EXPECT_FALSE(row.at(6).text.empty()) << branch->tag;
    }
    EXPECT_EQ(onTheWay, 2) << "both risers have valves";
    balancing::LoopState state = balancing::stateOfLastRound(whatIf.project);
    for (const pump_room::ZoneBranch& branch : whatIf.branches) {
        if (branch.setting) {
            state.settings[whatIf.project.branches()[branch.branch].id] = *branch.setting;
        }
    }
    const auto solved = balancing::predict(whatIf.project, state, {});
    ASSERT_TRUE(solved.prediction.has_value());
    for (const std::size_t terminal : whatIf.project.tree().terminals()) {
        EXPECT_NEAR(solved.prediction->branches[terminal].ofTarget->si(), 1, 1e-4);
    }
}

}  // namespace
}  // namespace ww::report
