// What the pump's sections say beside their tables. The rules are this program's own; no outside source.
#include "core/report/pump_sections.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <memory>

#include "core/balancing/assess.h"
#include "core/base/term.h"
#include "core/pump_room/pump_picture.h"
#include "core/report/detail/sections.h"
#include "tests/support/demo_project.h"
#include "tests/support/section_text.h"

namespace ww::report {
namespace {

using support::demoProject;
using support::textOf;

pump_room::PumpPicture pictured(const project::Project& project) {
    return pump_room::pumpPicture(project, {});
}

// A pump at full speed has one excess; said twice it would seem to be two.
TEST(PumpSections, anExcessAsReadIsToldWhereItIsAnother) {
    const project::Project project = demoProject();
    pump_room::PumpPicture picture = pictured(project);
    ASSERT_TRUE(picture.decision.excess.has_value());
    picture.decision.presentExcess = *picture.decision.excess;
    const auto told = [&] { return textOf(pumpDecisionSection(project, picture)); };
    EXPECT_EQ(told().find("Excess as read"), std::string::npos) << told();
    picture.decision.presentExcess = *picture.decision.excess + quantity::Head::si(1);
    EXPECT_NE(told().find("Excess as read"), std::string::npos) << told();
}

// Where nothing is to be done one sentence says so and nothing is offered.
TEST(PumpSections, whereNothingIsToBeDoneNothingIsOffered) {
    const project::Project project = demoProject();
    pump_room::PumpPicture picture = pictured(project);
    const auto told = [&] { return textOf(pumpDecisionSection(project, picture)); };
    EXPECT_NE(told().find("throttle|"), std::string::npos) << told();
    picture.decision.findings.push_back({&pump_room::kPumpFits, "", {"8.00 m", "7.99 m"}});
    EXPECT_NE(told().find("no change: at design flow the pump makes 8.00 m"), std::string::npos) << told();
    for (const char* offer : {"throttle|", "trim|", "slow|", "at the shaft", "cannot be taken back"}) {
        EXPECT_EQ(told().find(offer), std::string::npos) << offer << '\n' << told();
    }
}

TEST(PumpSections, aNeedSaysHowSureItIsOrHasNoSuchColumn) {
    const project::Project project = demoProject();
    pump_room::PumpPicture picture = pictured(project);
    const auto columns = [&] {
        for (const Table& table : pumpDecisionSection(project, picture).tables) {
            if (base::english(table.title).find("Head that the index circuit needs") == 0) {
                return table.columns.size();
            }
        }
        return std::size_t(0);
    };
    for (pump_room::RequiredHead& one : picture.decision.required) {
        one.uncertainty.reset();
    }
    EXPECT_EQ(columns(), 4U);
    picture.decision.required.front().uncertainty = quantity::Head::si(0.2);
    EXPECT_EQ(columns(), 5U);
}

// What is not on record is not proved to be open.
TEST(PumpSections, theProofNamesNoDischargeValveThatIsNotOnRecord) {
    const project::Project project = demoProject();
    pump_room::PumpPicture picture = pictured(project);
    pump_room::ThrottlingProof& proof = picture.decision.throttling;
    proof.isProved = true;
    proof.failures.clear();
    proof.notes.clear();
    const auto told = [&] { return textOf(energyCodeSection(project, picture)); };
    EXPECT_NE(told().find("and the pump's discharge valve"), std::string::npos) << told();
    proof.notes.push_back({&pump_room::kProofNoThrottle, "P-1", {}});
    EXPECT_EQ(told().find("and the pump's discharge valve"), std::string::npos) << told();
    EXPECT_NE(told().find("no discharge valve is on record"), std::string::npos) << told();
}

TEST(PumpSections, aCautionOfAShutoffTestSaysThatItIsOne) {
    const project::Project project = demoProject();
    const pump_room::PumpPicture picture = pictured(project);
    ASSERT_FALSE(picture.sheets.empty());
    const std::size_t count = picture.sheets.front().shutoff.cautions.size();
    ASSERT_GT(count, 0U);
    const Section section = pumpTestSection(project, picture, 0);
    EXPECT_EQ(std::count_if(section.closing.begin(), section.closing.end(),
                            [](const Statement& one) { return one.subject == "shutoff test"; }),
              static_cast<std::ptrdiff_t>(count));
}

// A sentence about one reading names its round, as the table above it has several.
TEST(PumpSections, whatIsSaidOfOneReadingNamesItsRound) {
    project::Project project = demoProject();
    for (const project::PumpReading& stored : project.pumpReadings()) {
        if (stored.round == project.roundNumbered(2)->id) {
            project::PumpReading blind = stored;
            blind.gaugeRise.reset();
            project.put(blind);
            break;
        }
    }
    const auto said = [&](const base::MessageForm& form) {
        std::vector<std::string> subjects;
        for (const Statement& one : pumpTestSection(project, pictured(project), 0).closing) {
            if (one.is(form)) {
                subjects.push_back(one.subject);
            }
        }
        return subjects;
    };
    EXPECT_EQ(said(energy::kNoPumpPressure), std::vector<std::string>{"round 2"});
    EXPECT_EQ(said(energy::kSpeedUnknown), std::vector<std::string>{"round 1, 2, 3"});
}

/// With the rated speed read at the pump whenever it was read.
project::Project withSpeeds(project::Project project) {
    const auto readings =
        std::vector<project::PumpReading>(project.pumpReadings().begin(), project.pumpReadings().end());
    for (project::PumpReading reading : readings) {
        reading.speed = project.pumps()[0].speed;
        project.put(reading);
    }
    return project;
}

/// The demo job with its pump curve's heads times this; the gauges were made from the curve as it was.
project::Project withCurve(double heads) {
    project::Project project = withSpeeds(demoProject());
    project::Pump pump = project.pumps()[0];
    for (project::PumpTableRow& row : pump.rows) {
        row.head = quantity::measured<quantity::Head>(
            base::Decimal::fromNumber(heads * row.head.value.si(), 4), quantity::Unit::Metre);
    }
    project.put(pump);
    return project;
}

std::string sectionText(const Report& report, int number) {
    for (const Section& section : report.sections) {
        if (section.number == number) {
            return textOf(section);
        }
    }
    return {};
}

// The demo runs at full speed: with the balanced round both speeds are one, with another need they are two.
TEST(PumpSections, theFirstPageLeadsWithWhatIsOrderedBy) {
    const project::Project project = withSpeeds(demoProject());
    const Report report = build(project, {});
    EXPECT_EQ(sectionText(report, kResult).find("order no speed or impeller by it"), std::string::npos);
    auto pumps = std::make_shared<pump_room::PumpPicture>(*report.pumps);
    for (pump_room::DecidedOption& decided : pumps->decision.options) {
        const bool isSlow = decided.option.action == energy::PumpAction::Slow;
        decided.option.ratio = quantity::Ratio::si(0.967);
        decided.option.shaft = quantity::Power::si(isSlow ? 270 : 300);
        if (isSlow) {
            decided.option.speed = project.pumps()[0].speed->value * 0.967;
        }
    }
    ReportOptions options;
    options.pumps = pumps;
    const Report other = build(project, options);
    const std::string first = sectionText(other, kResult);
    const auto order = first.find("Pump: Speed 96.7 % of full speed");
    const auto asRead = first.find("Valves as read: For information: 93.");
    ASSERT_TRUE(order != std::string::npos && asRead != std::string::npos) << first;
    EXPECT_LT(order, asRead);
    EXPECT_NE(first.find("order no speed or impeller by it", asRead), std::string::npos) << first;
    EXPECT_NE(first.find("% of the speed of the last round by the sum of the flows brings"),
              std::string::npos)
        << first;
    const std::string pump = sectionText(other, kPump);
    EXPECT_LT(pump.find("What to order: "), pump.find("n₂/n₁")) << pump;
    // What is ordered stands in full before what is only for information.
    const auto info = pump.find("Valves as read: for information");
    ASSERT_NE(info, std::string::npos) << pump;
    EXPECT_LT(pump.find("That is 1402 rpm where full speed is 1450 rpm"), info) << pump;
    EXPECT_LT(pump.find("the shaft takes 0.270 kW slowed instead of 0.300 kW throttled: 10.0 % less"), info)
        << pump;
}

// Before the loop is balanced every section says so, and none what to order.
TEST(PumpSections, aFirstLookOrdersNothingAnywhere) {
    const project::Project project = withSpeeds(demoProject());
    auto pumps = std::make_shared<pump_room::PumpPicture>(pictured(project));
    const base::Fault look{&pump_room::kFirstLook, "", {"3", "4", "6", base::term("not proved")}};
    std::erase_if(pumps->decision.findings,
                  [](const base::Fault& finding) { return finding.is(pump_room::kFirstLook); });
    ReportOptions options;
    options.pumps = pumps;
    const Report before = build(project, options);
    ASSERT_NE(sectionText(before, kResult).find("Pump: Speed "), std::string::npos)
        << sectionText(before, kResult);
    EXPECT_NE(sectionText(before, kResult).find("rpm where full speed is"), std::string::npos)
        << sectionText(before, kResult);
    auto early = std::make_shared<pump_room::PumpPicture>(*pumps);
    early->decision.findings.push_back(look);
    options.pumps = early;
    const Report report = build(project, options);
    const std::string first = sectionText(report, kResult);
    EXPECT_NE(first.find("Pump: a first look: in round 3, 4 of 6 terminals are on share"), std::string::npos)
        << first;
    for (const char* order : {"Speed ", "rpm", "takes it away", "order by"}) {
        EXPECT_EQ(first.find(order), std::string::npos) << order << '\n' << first;
    }
    const std::string pump = sectionText(report, kPump);
    EXPECT_NE(pump.find("What to order: a first look"), std::string::npos) << pump;
    EXPECT_EQ(pump.find("as decided"), std::string::npos) << pump;
}

// What was not read is no number, and what was taken for it is called assumed.
TEST(PumpSections, whatWasNotReadIsSaidToBeAssumed) {
    project::Project project = demoProject();
    const auto test = [&] { return textOf(pumpTestSection(project, pictured(project), 0)); };
    const auto decision = [&] { return textOf(pumpDecisionSection(project, pictured(project))); };
    EXPECT_NE(test().find("|?||"), std::string::npos) << "no zero of the gauges, no elevation: " << test();
    EXPECT_NE(decision().find("in round 3; no speed was read, full speed is taken: read it on the drive"),
              std::string::npos)
        << decision();
    EXPECT_EQ(decision().find("100.0 % of full speed"), std::string::npos) << decision();
    EXPECT_NE(sectionText(build(project, {}), kPump).find("100.0 %, not read|"), std::string::npos);
    project = withSpeeds(std::move(project));
    EXPECT_EQ(decision().find("no speed was read"), std::string::npos) << decision();
    EXPECT_NE(decision().find("in round 3, 100.0 % of full speed"), std::string::npos) << decision();
}

// Without a speed nothing is ordered: not on the first page and not beside the curves.
TEST(PumpSections, aSpeedThatWasNotReadOrdersNothing) {
    const Report report = build(demoProject(), {});
    const std::string first = sectionText(report, kResult);
    EXPECT_NE(first.find("Pump: no speed was read in round 3, so full speed is taken"), std::string::npos)
        << first;
    EXPECT_EQ(first.find("takes it away"), std::string::npos) << first;
    const std::string pump = sectionText(report, kPump);
    EXPECT_NE(pump.find("What to order: no speed was read in round 3"), std::string::npos) << pump;
    // That of an earlier round is named as such.
    project::Project project = demoProject();
    project::PumpReading one = project.pumpReadings()[0];
    one.speed = quantity::measured<quantity::RotationalSpeed>(*base::Decimal::parse("1218"),
                                                              quantity::Unit::RevolutionPerMinute);
    project.put(one);
    const std::string decision = textOf(pumpDecisionSection(project, pictured(project)));
    EXPECT_NE(decision.find("no speed was read, the 84.0 % of full speed of round 1 are taken"),
              std::string::npos)
        << decision;
}

// A pump that was slowed is said to run at the speed that was read, not at the one computed.
TEST(PumpSections, aPumpThatRunsAsDecidedHasOneSpeed) {
    const project::Project project = withSpeeds(demoProject());
    auto pumps = std::make_shared<pump_room::PumpPicture>(pictured(project));
    ASSERT_TRUE(pumps->decision.duty.has_value());
    pumps->decision.duty->speedFraction = quantity::Ratio::si(0.84);
    pumps->decision.presentExcess = quantity::Head();
    for (pump_room::DecidedOption& decided : pumps->decision.options) {
        decided.option.ratio = quantity::Ratio::si(0.837);
        decided.option.isAllowed = true;
    }
    ASSERT_TRUE(pumps->decision.runsAsDecided());
    ReportOptions options;
    options.pumps = pumps;
    const Report report = build(project, options);
    const std::string text = sectionText(report, kResult) + sectionText(report, kPump);
    EXPECT_NE(text.find("No change: the pump runs at 84.0 % of full speed"), std::string::npos) << text;
    EXPECT_EQ(text.find("83.7"), std::string::npos) << text;
}

// One system of units: the clause's fixed figures are told in the unit of the plate.
TEST(PumpSections, theFormThatIsNotChosenIsToldInTheUnitsOfThePlate) {
    const auto told = textOf(pumpDecisionSection(demoProject(), pictured(demoProject())));
    EXPECT_NE(told.find("the one with 7.5 kW and 2.2 kW is tested"), std::string::npos) << told;
}

// A duty whose head no gauge gave is told apart.
TEST(PumpSections, aDutyByTheCurveNamesItsRound) {
    project::Project project = demoProject();
    EXPECT_EQ(sectionText(build(project, {}), kPump).find("No gauge was read"), std::string::npos);
    project::PumpReading first = project.pumpReadings()[0];
    first.gaugeRise.reset();
    first.flow = quantity::measured<quantity::VolumeFlow>(*base::Decimal::parse("9"),
                                                          quantity::Unit::CubicMetrePerHour);
    project.put(first);
    EXPECT_NE(sectionText(build(project, {}), kPump).find("No gauge was read in round 1"), std::string::npos)
        << sectionText(build(project, {}), kPump);
}

// One statement stands above the numbers of every page, and each number says that it rests on the gauges.
TEST(PumpSections, numbersThroughTheGaugesSaySoOnEveryPage) {
    const Report right = build(withCurve(1.0), {});
    const Report report = build(withCurve(1.1), {});
    const std::string by = "from the pump's curve through the gauges of round 3";
    const std::string decision = textOf(pumpDecisionSection(withCurve(1.1), *report.pumps));
    EXPECT_EQ(decision.find("at the sum of the flows"), 0U) << "above all else: " << decision;
    EXPECT_NE(decision.find("the numbers here rest on the gauges of round 3"), std::string::npos);
    EXPECT_NE(decision.find(by + "; the curve as published gives"), std::string::npos) << decision;
    EXPECT_NE(decision.find(by + ": the pump decision uses this one"), std::string::npos) << decision;
    EXPECT_EQ(decision.find("from the pump's curve:"), std::string::npos) << decision;
    const std::string pump = sectionText(report, kPump);
    EXPECT_NE(pump.find("the numbers here rest on the gauges"), std::string::npos) << pump;
    EXPECT_NE(pump.find(by), std::string::npos) << pump;
    const std::string first = sectionText(report, kResult);
    EXPECT_NE(first.find(by + ": the pump decision uses this one"), std::string::npos) << first;
    // The speed that brings design flow is the one of the job whose curve is right.
    const auto speed = [](const std::string& text) {
        const auto at = text.find("Pump: Speed ");
        return at == std::string::npos ? text : text.substr(at, 30);
    };
    EXPECT_EQ(speed(first), speed(sectionText(right, kResult)));
}

// That a pump is short is a decision: it stands on top, and nothing is missing for it.
TEST(PumpSections, aPumpThatIsShortIsToldFirst) {
    const project::Project project = demoProject();
    pump_room::PumpPicture picture = pictured(project);
    picture.decision.options.clear();
    const auto told = [&] { return textOf(pumpDecisionSection(project, picture)); };
    EXPECT_NE(told().find("No decision can be made yet"), std::string::npos) << told();
    picture.decision.findings.push_back({&energy::kPumpTooSmall, "P1", {"9.99 m", "12.84 m", "2.85 m"}});
    EXPECT_EQ(told().find("No decision can be made yet"), std::string::npos) << told();
    EXPECT_LT(told().find("needs 12.84 m, 2.85 m more; see that the index path is open"),
              told().find("above the index circuit"))
        << told();
}

// The loop with its valves as read may have head to spare where the one that is decided about has none: a
// zone that is still to come.
TEST(PumpSections, aPumpThatIsShortOfWhatIsDecidedAboutIsNotToldToBeSlowed) {
    const project::Project project = demoProject();
    const std::vector<balancing::Assessment> rounds{balancing::assess(project, project.roundNumbered(3)->id)};
    const std::vector<base::Id> walked{project.roundNumbered(3)->id};
    detail::Source source{project, rounds, rounds.back(), walked, detail::Display(project)};
    ASSERT_NE(textOf(detail::resultSection(source, 0)).find("takes away the excess"), std::string::npos);
    detail::CountedExcess counted;
    counted.excess.head = quantity::Head::si(-0.56);
    counted.section = 15;
    source.excess = counted;
    const std::string text = textOf(detail::resultSection(source, 0));
    EXPECT_NE(text.find("Pump: Short by 0.56 m of head at design flow"), std::string::npos) << text;
    EXPECT_NE(text.find("do not slow or trim the pump"), std::string::npos) << text;
    EXPECT_EQ(text.find("takes away the excess"), std::string::npos) << text;
}

TEST(PumpSections, whatIsNotTrustedIsProposedNowhere) {
    const Report report = build(withCurve(1.5), {});
    const std::string first = sectionText(report, kResult);
    EXPECT_NE(first.find("No speed or impeller is proposed"), std::string::npos) << first;
    EXPECT_EQ(first.find("Excess head"), std::string::npos) << first;
    const std::string pump = sectionText(report, kPump);
    EXPECT_NE(pump.find("check impeller, speed and direction of turn"), std::string::npos) << pump;
    EXPECT_EQ(pump.find("n₂/n₁"), std::string::npos) << pump;
    const std::string decision = textOf(pumpDecisionSection(withCurve(1.5), *report.pumps));
    EXPECT_NE(decision.find("read both taps again with one gauge"), std::string::npos) << decision;
    EXPECT_EQ(decision.find("No decision can be made yet"), std::string::npos) << decision;
    EXPECT_EQ(decision.find("Excess"), std::string::npos) << decision;
}

}  // namespace
}  // namespace ww::report
