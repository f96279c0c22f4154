#include "core/project/units.h"

namespace ww::project {

namespace {

using quantity::ShownUnits;
using quantity::Unit;

void takeTable(const Pump& pump, ShownUnits& units) {
    for (const PumpTableRow& row : pump.rows) {
        if (quantity::isHeadUnit(row.head.unit)) {
            units.head = row.head.unit;
            break;
        }
    }
    for (const PumpTableRow& row : pump.rows) {
        if (row.impeller) {
            units.length = row.impeller->unit;
            break;
        }
    }
}

void takePump(const Pump& pump, ShownUnits& units) {
    takeTable(pump, units);
    if (pump.motorPower) {
        units.power = pump.motorPower->unit;
    }
    if (pump.impeller) {
        units.length = pump.impeller->unit;
    }
}

ShownUnits unitsOfJob(const Project& project) {
    ShownUnits units;
    if (project.job().units == UnitSystem::US) {
        units = {Unit::GallonPerMinute, Unit::Foot, Unit::Psi,
                 Unit::Horsepower,      Unit::Inch, Unit::Fahrenheit};
    }
    units.flow = project.shownFlowUnit();
    units.temperature = fluidUnits(project.job()).temperature;
    return units;
}

}  // namespace

ShownUnits shownUnits(const Project& project) {
    return project.pumps().empty() ? unitsOfJob(project) : shownUnits(project, project.pumps()[0]);
}

ShownUnits shownUnits(const Project& project, const Pump& pump) {
    ShownUnits units = unitsOfJob(project);
    takePump(pump, units);
    return units;
}

ShownUnits fluidUnits(const Job& job) {
    ShownUnits units;
    units.temperature = job.temperature.unit == Unit::Fahrenheit ? Unit::Fahrenheit : Unit::Celsius;
    return units;
}

ShownUnits unitsOfTable(const Pump& pump) {
    ShownUnits units;
    takePump(pump, units);
    if (!pump.rows.empty()) {
        units.flow = pump.rows.front().flow.unit;
        if (pump.rows.front().power) {
            units.power = pump.rows.front().power->unit;
        }
    }
    return units;
}

}  // namespace ww::project
