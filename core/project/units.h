// The units in which a job's computed numbers stand in sentences. Not for what was typed.
#pragma once

#include "core/project/project.h"
#include "core/quantity/shown_units.h"

namespace ww::project {

/// Flow as Project::shownFlowUnit(); head as the first pump's table was entered, where that is a length;
/// power as the first motor's plate; impellers likewise; pressure psi or kPa; temperature as the job's was
/// entered. What nobody entered follows the job's system of units.
quantity::ShownUnits shownUnits(const Project& project);

/// The same, with what this pump's own table and plate were entered in.
quantity::ShownUnits shownUnits(const Project& project, const Pump& pump);

/// With the unit of temperature that the job's was entered in: for sentences about its fluid.
quantity::ShownUnits fluidUnits(const Job& job);

/// As a pump's table was entered, for sentences about the table.
quantity::ShownUnits unitsOfTable(const Pump& pump);

}  // namespace ww::project
