// Read-and-set against proportional, on exact loops.

#include "core/pump_room/read_and_set.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/pump_loop.h"
#include "tests/support/us_units.h"

namespace ww::pump_room {
namespace {

using project::Project;
using quantity::Unit;
using support::typedAs;

TEST(ReadAndSetTest, excessStaysAcrossTheIndexValve) {
    // Computed by hand: 15 ft stay across the valve of T4 beyond its open drop of (25/14)^2 psi; 15 ft at 100
    // gpm and 70 % are 0.541 hp. At the others the proportional balance takes 13, 6 and 7 ft more than the
    // open valve.
    const Project project = support::pumpLoop();
    const PumpDecision decision = decidePump(project);
    const ReadAndSet found = compareReadAndSet(project, decision);
    ASSERT_EQ(found.valves.size(), 4U);
    EXPECT_NEAR(found.wasted->in(Unit::Foot), 15.0, 0.02);
    EXPECT_NEAR(found.wastedPower->in(Unit::Horsepower), 0.541, 0.002);
    const ValveLeft& index = found.valves[3];
    EXPECT_TRUE(index.isIndex);
    EXPECT_NEAR(index.open.in(Unit::Psi), (25.0 / 14) * (25.0 / 14), 0.002);
    EXPECT_NEAR(index.proportional.si(), index.open.si(), 1);
    const double kMore_ft[] = {13, 6, 7, 0};
    for (std::size_t i = 0; i < 4; ++i) {
        const ValveLeft& valve = found.valves[i];
        const auto feet = [&](PressureDifference dp) {
            return quantity::headOf(dp, project.fluid().density()).in(Unit::Foot);
        };
        EXPECT_NEAR(feet(valve.proportional - valve.open), kMore_ft[i], 0.02);
        EXPECT_NEAR(feet(valve.readAndSet - valve.proportional), 15.0, 0.02);
    }
    EXPECT_GT(found.energy->si(), 0);
    EXPECT_NEAR(found.cost->si(), found.energy->si() / 3.6e6 * 0.15, 1e-6);
}

TEST(ReadAndSetTest, threeCircuitsOf500Gpm) {
    // Common practice, no source: three equal circuits of 500 gpm, a pump of 1500 gpm at 70 ft, the index
    // circuit needs 54 ft: 16 ft that read-and-set leaves across the index valve and a proportional balance
    // moves to the pump, which then takes about 25 hp. Excess power computed: 7.58 hp.
    Project project =
        support::pumpLoop({{"A", 500, 42, 300, 4}, {"B", 500, 42, 300, 4}, {"C", 500, 42, 300, 4}});
    project::Pump pump = project.pumps()[0];
    pump.rows.clear();
    const double kPoints[][2] = {{0, 84}, {1000, 76}, {1500, 70}, {1760, 65}, {1800, 64}};
    for (const auto& point : kPoints) {
        project::PumpTableRow row;
        row.flow = support::typed<VolumeFlow>(point[0], 0, Unit::GallonPerMinute);
        row.head = support::typed<Head>(point[1], 0, Unit::Foot);
        row.efficiency = typedAs<Ratio>("80", Unit::Percent);
        pump.rows.push_back(row);
    }
    project.put(pump);
    const PumpDecision decision = decidePump(project);
    EXPECT_NEAR(decision.required[*decision.counted].head.in(Unit::Foot), 54, 0.05);
    EXPECT_NEAR(decision.excess->in(Unit::Foot), 16, 0.05);
    const ReadAndSet found = compareReadAndSet(project, decision);
    EXPECT_NEAR(found.wasted->in(Unit::Foot), 16, 0.05);
    EXPECT_NEAR(found.wastedPower->in(Unit::Horsepower), 7.58, 0.03);
    for (const DecidedOption& decided : decision.options) {
        if (decided.option.action != energy::PumpAction::Throttle) {
            EXPECT_NEAR(decided.option.shaft->in(Unit::Horsepower), 25, 0.03 * 25);
            EXPECT_LT(std::abs(decided.confirmed->flowDifference.si()), 1e-6);
        }
    }
}

}  // namespace
}  // namespace ww::pump_room
