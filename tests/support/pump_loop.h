// The loop of four circuits with a full record of its pump: efficiency, motor, impeller, hours and price.
#pragma once

#include <string>

#include "tests/support/small_loop.h"

namespace ww::support {

template <class Q>
quantity::Measured<Q> typedAs(const char* digits, quantity::Unit unit) {
    return quantity::measured<Q>(*Decimal::parse(digits), unit);
}

/// H = 60 - 0.0012 Q^2 at 70 %; 2 hp motor of 85 %; 8.5 in impeller; 1750 rpm; 4000 h a year at 0.15.
inline project::Project pumpLoop(const std::vector<Circuit>& circuits = lastCircuitIsIndex()) {
    project::Project project = loop(circuits);
    project::Pump pump = project.pumps()[0];
    for (project::PumpTableRow& row : pump.rows) {
        row.efficiency = typedAs<quantity::Ratio>("70", Unit::Percent);
    }
    pump.speed = typedAs<quantity::RotationalSpeed>("1750", Unit::RevolutionPerMinute);
    pump.impeller = typedAs<quantity::Length>("8.5", Unit::Inch);
    pump.motorPower = typedAs<quantity::Power>("2", Unit::Horsepower);
    pump.motorEfficiency = typedAs<quantity::Ratio>("85", Unit::Percent);
    pump.hasDrive = true;
    project.put(pump);
    project::Job job = project.job();
    job.matchingBand = typedAs<quantity::Ratio>("5", Unit::Percent);
    job.toleranceLow = typedAs<quantity::Ratio>("-10", Unit::Percent);
    job.toleranceHigh = typedAs<quantity::Ratio>("10", Unit::Percent);
    job.hoursPerYear = *Decimal::parse("4000");
    job.powerPrice = *Decimal::parse("0.15");
    project.put(job);
    return project;
}

/// A second pump like the first, in the same arrangement.
inline void addTwin(project::Project& project, project::PumpArrangement arrangement, base::Id id) {
    project::Pump first = project.pumps()[0];
    first.arrangement = arrangement;
    project.put(first);
    project::Pump twin = first;
    twin.id = id;
    twin.tag = "P-2";
    twin.position = 1;
    project.put(twin);
}

inline base::Id idOf(std::uint8_t number) {
    base::Id id;
    id.bytes[0] = 200;
    id.bytes[15] = number;
    return id;
}

}  // namespace ww::support
