// What the report says of the power that was saved between two rounds. The rules are this program's own; no
// outside source.
#include <gtest/gtest.h>

#include "core/report/report.h"
#include "tests/support/demo_project.h"
#include "tests/support/section_text.h"

namespace ww::report {
namespace {

using support::demoProject;
using support::textOf;

/// The demo job with the power from the mains read in rounds 1 and 3.
project::Project withPower(const char* first, const char* last) {
    project::Project project = demoProject();
    const auto readings =
        std::vector<project::PumpReading>(project.pumpReadings().begin(), project.pumpReadings().end());
    for (project::PumpReading reading : readings) {
        const int round = project.rounds().at(reading.round).number;
        if (round != 2) {
            reading.power = quantity::measured<quantity::Power>(
                *base::Decimal::parse(round == 1 ? first : last), quantity::Unit::Kilowatt);
            project.put(reading);
        }
    }
    return project;
}

// What was reached between the first and the last round is read, never computed from a law.
TEST(PowerReached, thePowerThatWasSavedIsToldByItsRounds) {
    project::Project project = withPower("0.800", "0.600");
    project::Job job = project.job();
    job.hoursPerYear.reset();
    job.powerPrice.reset();
    project.put(job);
    const auto first = [&] { return textOf(sectionOf(build(project, {}), kResult)); };
    const std::string told =
        "Power from the mains: P1: 0.800 kW in round 1, 0.600 kW in round 3: 0.200 kW less, 25.0 %\n"
        ": The uncertainty of this difference is not known: no accuracy of the power meter is recorded\n";
    EXPECT_NE(first().find(told), std::string::npos) << first();
    EXPECT_NE(textOf(sectionOf(build(project, {}), kPump)).find(told), std::string::npos);
    EXPECT_EQ(first().find("hours a year"), std::string::npos) << first();
    job.hoursPerYear = *base::Decimal::parse("4000");
    project.put(job);
    EXPECT_NE(first().find("In 4000 hours a year at the flow as read: 800 kWh less\n"), std::string::npos)
        << first();
    job.powerPrice = *base::Decimal::parse("0.25");
    job.currency = "EUR";
    project.put(job);
    EXPECT_NE(first().find("800 kWh or 200 EUR less\n"), std::string::npos) << first();
}

TEST(PowerReached, powerThatWasNotReadTwiceOrRoseIsNoSaving) {
    const auto first = [](const project::Project& project) {
        return textOf(sectionOf(build(project, {}), kResult));
    };
    EXPECT_NE(first(withPower("0.600", "0.750")).find("0.150 kW more, 25.0 %"), std::string::npos);
    EXPECT_EQ(first(demoProject()).find("kW in round"), std::string::npos) << first(demoProject());
}

}  // namespace
}  // namespace ww::report
