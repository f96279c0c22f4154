// The units of numbers inside sentences: as the job and its pumps were entered.

#include "core/project/units.h"

#include <gtest/gtest.h>

#include "core/pump_room/pump_picture.h"
#include "tests/support/pump_loop.h"

namespace ww::project {
namespace {

using quantity::Unit;

TEST(ShownUnits, numberWithItsUnit) {
    // Exact: 10 ft is 3.048 m, 1 psi is 6.894757 kPa (NIST SP 811).
    quantity::ShownUnits units;
    EXPECT_EQ(units.text(Head::from(10, Unit::Foot)), "3.048 m");
    EXPECT_EQ(units.text(PressureDifference::from(1, Unit::Psi), 3), "6.89 kPa");
    units.head = Unit::Foot;
    units.temperature = Unit::Fahrenheit;
    EXPECT_EQ(units.text(Head::si(3.048)), "10 ft");
    EXPECT_EQ(units.text(Temperature::from(82.2222, Unit::Celsius), 3), "180 F");
}

TEST(ShownUnits, followThePumpThenTheJob) {
    Project project = support::pumpLoop();
    EXPECT_EQ(shownUnits(project).head, Unit::Foot);
    EXPECT_EQ(shownUnits(project).power, Unit::Horsepower);
    EXPECT_EQ(shownUnits(project).length, Unit::Inch);
    Pump pump = project.pumps()[0];
    pump.motorPower = support::typedAs<Power>("1.5", Unit::Kilowatt);
    project.put(pump);
    EXPECT_EQ(shownUnits(project, project.pumps()[0]).power, Unit::Kilowatt);
}

/// Whether any sentence about a job whose pump was entered in feet and horsepower speaks of metres or
/// kilowatts.
TEST(ShownUnits, sentencesOfAUsJobSpeakUsUnits) {
    Project project = support::pumpLoop();
    Job job = project.job();
    job.units = UnitSystem::US;
    project.put(job);
    const pump_room::PumpPicture picture = pump_room::pumpPicture(project, {});
    std::string all;
    const auto add = [&](const std::vector<base::Fault>& faults) {
        for (const base::Fault& fault : faults) {
            all += base::english(fault) + "\n";
        }
    };
    for (const pump_room::DecidedOption& decided : picture.decision.options) {
        add(decided.option.cautions);
    }
    add(picture.decision.findings);
    add(picture.decision.code.basis);
    EXPECT_NE(all.find("wasting 15.0 ft of head"), std::string::npos) << all;
    EXPECT_NE(all.find("2 hp, is not above 10 hp"), std::string::npos) << all;
    for (const char* foreign : {" m of", " kW", " mm", " m3/h", " kPa"}) {
        EXPECT_EQ(all.find(foreign), std::string::npos) << foreign << "\n" << all;
    }
}

TEST(ShownUnits, aMetricPlateIsHeldToItsOwnFigures) {
    // ASHRAE/IES 90.1-2010, 6.7.2.3.3, from memory: 10 hp stands as 7.5 kW where the plate is metric.
    Project project = support::pumpLoop();
    Pump pump = project.pumps()[0];
    pump.motorPower = support::typedAs<Power>("5.5", Unit::Kilowatt);
    project.put(pump);
    const pump_room::PumpPicture picture = pump_room::pumpPicture(project, {});
    const std::string words = base::english(picture.decision.code.basis.front());
    EXPECT_NE(words.find("5.5 kW, is not above 7.5 kW"), std::string::npos) << words;
}

}  // namespace
}  // namespace ww::project
