// What the section of the pressures of the loop tells. The rules are this program's own; no outside source.
#include <gtest/gtest.h>

#include <vector>

#include "core/base/term.h"
#include "core/pump_room/pump_picture.h"
#include "core/report/detail/sections.h"
#include "core/report/pump_sections.h"
#include "tests/support/demo_project.h"
#include "tests/support/section_text.h"

namespace ww::report {
namespace {

// Without the fill pressure a gauge pressure is not known anywhere in the loop.
TEST(PressureSection, withoutAFillPressureOnlyDifferencesAreTold) {
    project::Project project = support::demoProject();
    const auto loss = [](const char* kilopascals) {
        return quantity::measured<quantity::PressureDifference>(*base::Decimal::parse(kilopascals),
                                                                quantity::Unit::Kilopascal);
    };
    for (project::Branch branch :
         std::vector<project::Branch>(project.branches().begin(), project.branches().end())) {
        branch.runLoss = loss("4");
        branch.circuitLoss = loss(branch.parent ? "20" : "6");
        project.put(branch);
    }
    const std::size_t terminal = project.tree().terminals().front();
    const auto told = [&] {
        return support::textOf(pressureSection(project, pump_room::circuitOf(project, terminal, {})));
    };
    const std::string unknown = told();
    EXPECT_NE(unknown.find("Computed, not read: settings and pump as in round 3"), std::string::npos)
        << unknown;
    EXPECT_EQ(unknown.find("the fill pressure is not entered"), 0U) << unknown;
    EXPECT_NE(unknown.find("Pump on: against the fill pressure, "), std::string::npos) << unknown;
    EXPECT_EQ(unknown.find("Pump off"), std::string::npos) << unknown;
    EXPECT_EQ(unknown.find(" 0 kPa"), std::string::npos) << unknown;
    const std::string tag = project.branches()[terminal].tag;
    pump_room::CircuitComparison circuit = pump_room::circuitOf(project, terminal, {});
    const auto* valve = project.characteristicOf(project.branches()[terminal]);
    ASSERT_TRUE(valve != nullptr && circuit.setting.has_value());
    const auto toldOfValve = [&] { return base::english(*valveSentence(project, circuit)); };
    circuit.setting = valve->fullyOpen();
    EXPECT_EQ(toldOfValve().find("The valve " + tag + " ended fully open and takes "), 0U) << toldOfValve();
    circuit.isIndex = true;
    EXPECT_EQ(toldOfValve().find("The index valve " + tag + " ended fully open"), 0U) << toldOfValve();
    circuit.setting = valve->fullyOpen() * 0.5;
    EXPECT_NE(toldOfValve().find(", not fully open, and takes "), std::string::npos) << toldOfValve();
    circuit.setting.reset();
    EXPECT_NE(toldOfValve().find("is not known"), std::string::npos) << toldOfValve();
    EXPECT_NE(unknown.find("The valve " + tag + " ended"), std::string::npos) << unknown;
    EXPECT_NE(unknown.find("upright line at a tee is what is available there"), std::string::npos) << unknown;
    project::Job job = project.job();
    job.fillPressure = quantity::measuredGauge(*base::Decimal::parse("120"), quantity::Unit::Kilopascal,
                                               project.fluid().density());
    project.put(job);
    const std::string known = told();
    EXPECT_EQ(known.find("against the fill pressure"), std::string::npos) << known;
    EXPECT_NE(known.find("Pump off"), std::string::npos) << known;
    EXPECT_EQ(known.find("suction gauge"), std::string::npos) << known;
    // Beside what a gauge of the test showed, both are named.
    project::PumpReading rest;
    rest.id.bytes[0] = 0x7f;
    rest.round = project.rounds()[0].id;
    rest.pump = project.pumps()[0].id;
    rest.point = project::PumpPoint::Static;
    rest.suction = quantity::measuredGauge(*base::Decimal::parse("148"), quantity::Unit::Kilopascal,
                                           project.fluid().density());
    project.put(rest);
    const std::string both = told();
    EXPECT_NE(both.find("120 kPa at the expansion vessel; 148 kPa is what the suction gauge showed"),
              std::string::npos)
        << both;
}

}  // namespace
}  // namespace ww::report
