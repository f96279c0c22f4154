// Pressure round a circuit and the air its unit holds, against sums by hand.

#include "core/pump_room/pressure_profile.h"

#include <gtest/gtest.h>

#include "tests/support/faults.h"
#include "tests/support/pump_loop.h"
#include "tests/support/us_units.h"

namespace ww::pump_room {
namespace {

using project::Project;
using quantity::Unit;
using support::has;
using support::typedAs;

/// T4 stands 30 ft above the pump; filled to 25 psi.
Project highCircuit() {
    Project project = support::pumpLoop();
    project::Branch branch = *project.branchTagged("T4");
    branch.elevation = typedAs<Length>("30", Unit::Foot);
    project.put(branch);
    project::Job job = project.job();
    job.fillPressure = typedAs<GaugePressure>("25", Unit::Psi);
    project.put(job);
    return project;
}

double feetBetween(const Project& project, GaugePressure high, GaugePressure low) {
    return quantity::headOf(high - low, project.fluid().density()).in(Unit::Foot);
}

TEST(PressureProfileTest, roundTheLastCircuit) {
    const Project project = highCircuit();
    const std::size_t last = project.branches().indexOf(project.branchTagged("T4")->id);
    balancing::LoopState state;
    const CircuitComparison found = compareSides(project, last, state);
    ASSERT_TRUE(found.onReturn.has_value());
    EXPECT_TRUE(found.findings.empty());
    // Pump, four supply runs, unit, valve, four return runs.
    EXPECT_EQ(found.onReturn->elements.size(), 11U);
    for (const CircuitProfile* profile : {&*found.onReturn, &*found.onSupply}) {
        const GaugePressure fill = GaugePressure::from(25, Unit::Psi);
        EXPECT_NEAR(profile->elements.back().after.si(), fill.si(), 1) << "round to where it started";
        // All open: the pump makes 41.015 ft at 125.78 gpm, computed by hand.
        EXPECT_NEAR(feetBetween(project, profile->elements[0].after, profile->elements[0].before) +
                        profile->elements[0].height.in(Unit::Foot),
                    41.015, 0.02);
        EXPECT_NEAR(feetBetween(project, fill, profile->unitAtRest), 30, 1e-6);
    }
    // The valve of T4 takes (25.228/14)^2 psi, by hand 3.247 psi.
    const double gain_psi = (found.onReturn->unitRunning - found.onSupply->unitRunning).in(Unit::Psi);
    EXPECT_NEAR(gain_psi, 3.247, 0.005);
    EXPECT_TRUE(has(found.advice, kAirReturnBetter));
    EXPECT_GT(*found.onReturn->airRunning, *found.onSupply->airRunning);
    EXPECT_EQ(found.onReturn->airAtRest->si(), found.onSupply->airAtRest->si());
    EXPECT_FALSE(has(found.advice, kStaticLow)) << "25 psi less 30 ft is 12 psi";
}

// At one height nothing but losses lies between supply and return: by hand, what the gauges at both would
// show.
TEST(PressureProfileTest, availableAtATeeIsSupplyLessReturn) {
    Project project = support::pumpLoop();
    const std::size_t last = project.branches().indexOf(project.branchTagged("T4")->id);
    const CircuitComparison found = compareSides(project, last, {});
    ASSERT_TRUE(found.onReturn.has_value());
    const std::vector<ProfileElement>& elements = found.onReturn->elements;
    std::size_t tees = 0;
    for (const ProfileElement& supply : elements) {
        EXPECT_EQ(supply.available.has_value(), supply.part == ProfilePart::SupplyRun);
        for (const ProfileElement& back : elements) {
            if (supply.available && back.part == ProfilePart::ReturnRun && back.branch == supply.branch) {
                ++tees;
                EXPECT_NEAR(supply.available->si(), (supply.after - back.before).si(), 1e-6);
            }
        }
    }
    EXPECT_EQ(tees, 4U);
    // Heights make no difference: the same loop with its last unit 30 ft up.
    const CircuitComparison high = compareSides(highCircuit(), last, {});
    for (std::size_t i = 0; i < elements.size(); ++i) {
        EXPECT_EQ(elements[i].available, high.onReturn->elements[i].available);
    }
    EXPECT_FALSE(found.setting.has_value()) << "the state says no setting";
    balancing::LoopState state;
    state.settings[project.branches()[last].id] = Setting::si(2);
    EXPECT_EQ(compareSides(project, last, state).setting, Setting::si(2));
}

TEST(PressureProfileTest, adviceFollowsSideAndFill) {
    Project project = highCircuit();
    project::Branch branch = *project.branchTagged("T4");
    branch.side = project::Side::Supply;
    project.put(branch);
    project::Job job = project.job();
    job.fillPressure = typedAs<GaugePressure>("14", Unit::Psi);
    project.put(job);
    const std::size_t last = project.branches().indexOf(branch.id);
    const CircuitComparison low = compareSides(project, last, {});
    EXPECT_TRUE(has(low.advice, kAirOnSupply));
    EXPECT_TRUE(has(low.advice, kStaticLow)) << "14 psi less 30 ft is 1 psi";
    job.fillPressure.reset();
    project.put(job);
    const CircuitComparison unknown = compareSides(project, last, {});
    EXPECT_TRUE(has(unknown.findings, kFillUnknown));
    EXPECT_FALSE(unknown.onReturn->airRunning.has_value()) << "no number is invented";
    EXPECT_TRUE(has(compareSides(project, 0, {}).findings, kHeightUnknown));
}

TEST(PressureProfileTest, riserAndReverseReturnCloseTheRound) {
    // Two terminals behind a riser of reverse return: whatever the split, the round ends where it began.
    Project project = support::pumpLoop();
    project::Branch riser;
    riser.id = support::idOf(20);
    riser.tag = "R1";
    riser.kind = project::BranchKind::None;
    riser.returns = project::ReturnKind::Reverse;
    riser.runLoss = project.branches()[0].runLoss;
    project.put(riser);
    for (const char* tag : {"T1", "T2", "T3", "T4"}) {
        project::Branch branch = *project.branchTagged(tag);
        branch.parent = riser.id;
        project.put(branch);
    }
    for (const char* tag : {"T1", "T3", "T4"}) {
        const std::size_t at = project.branches().indexOf(project.branchTagged(tag)->id);
        const CircuitComparison found = compareSides(project, at, {});
        ASSERT_TRUE(found.onReturn.has_value()) << tag;
        EXPECT_NEAR(found.onReturn->elements.back().after.si(), 0, 2) << tag;
        EXPECT_NEAR(found.onSupply->elements.back().after.si(), 0, 2) << tag;
        // Of the tees before its own the circuit passes no return.
        for (const ProfileElement& element : found.onReturn->elements) {
            const bool isOwn = element.branch == at || element.branch == project.branches().indexOf(riser.id);
            EXPECT_EQ(element.available.has_value(), element.part == ProfilePart::SupplyRun && isOwn) << tag;
        }
    }
    const std::size_t riserAt = project.branches().indexOf(riser.id);
    EXPECT_TRUE(has(compareSides(project, riserAt, {}).findings, kProfileNoUnit));
}

}  // namespace
}  // namespace ww::pump_room
