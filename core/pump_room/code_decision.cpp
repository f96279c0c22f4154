#include "core/pump_room/code_decision.h"
#include "core/project/units.h"

#include <algorithm>
#include <limits>

namespace ww::pump_room {

namespace {

using energy::CodeDecision;
using energy::CodeTest;
using energy::CodeTestInput;
using project::Project;

/// The part of the set's power that one pump takes.
double partOfSet(const CodeCase& what, std::size_t member) {
    if (what.set->joint() == curve::PumpJoint::Series) {
        const curve::PumpMember& own = what.set->members()[member];
        return own.curve.head(what.designFlow, own.state) / what.available;
    }
    return what.set->flowsOfMembers(what.designFlow)[member] / what.designFlow;
}

CodeTestInput inputOf(const Project& project, const CodeCase& what, std::size_t member) {
    const project::Job& job = project.job();
    const project::Pump& pump = project.pumps()[what.pumps[member]];
    CodeTestInput input;
    input.flow = what.designFlow * partOfSet(what, member);
    input.headThrottled = what.available;
    input.headNeeded = what.required;
    input.density = project.fluid().density();
    input.efficiency = what.efficiency;
    input.edition = job.codeEdition;
    input.clause = job.codeClause;
    input.exceptionClaimed = job.codeException;
    input.units = project::shownUnits(project, pump);
    if (pump.motorPower) {
        input.plate = pump.motorPower->value;
    }
    return input;
}

energy::CodeThresholds thresholdsOf(const project::Pump& pump, bool isPercentOnly) {
    const bool isMetric = pump.motorPower && pump.motorPower->unit != quantity::Unit::Horsepower;
    return isPercentOnly ? energy::percentOnlyThresholds(isMetric)
                         : energy::percentOrFloorThresholds(isMetric);
}

/// How far above its limit; far below where the motor is exempt or the test has no numbers.
double distance_W(const CodeTest& test) {
    if (test.decision == CodeDecision::ExemptSmallMotor || !test.excess || !test.limit) {
        return std::numeric_limits<double>::lowest();
    }
    return (*test.excess - *test.limit).si();
}

bool isReduced(const CodeCase& what, const CodeTest& test, const CodeTestInput& input) {
    if (test.decision != CodeDecision::MustReduce || !what.presentExcess || !input.efficiency) {
        return false;
    }
    const Head left = std::max(Head(), *what.presentExcess);
    return energy::shaftPower(input.flow, left, input.density, *input.efficiency) <= *test.limit;
}

}  // namespace

CodeOutcome testCode(const Project& project, const CodeCase& what) {
    EXPECTS(what.set != nullptr && what.designFlow.si() > 0);
    CodeOutcome out;
    const bool isPercentOnly = project.job().codeForm == project::CodeForm::PercentOnly;
    std::optional<double> nearest;
    for (std::size_t i = 0; i < what.pumps.size(); ++i) {
        const project::Pump& pump = project.pumps()[what.pumps[i]];
        const energy::CodeThresholds thresholds = thresholdsOf(pump, isPercentOnly);
        CodeTestInput input = inputOf(project, what, i);
        CodeTest test = energy::codeTest(input, thresholds);
        const double distance = distance_W(test);
        if (nearest && distance <= *nearest) {
            continue;
        }
        nearest = distance;
        out.isReduced = isReduced(what, test, input);
        out.otherForm = energy::codeTest(input, thresholdsOf(pump, !isPercentOnly));
        out.isMet = out.isReduced || (test.decision && *test.decision != CodeDecision::MustReduce);
        out.ownEfficiencies.reset();
        if (what.efficiencyReduced && input.efficiency) {
            input.efficiencyReduced = what.efficiencyReduced;
            out.ownEfficiencies = energy::codeTest(input, thresholds);
        }
        out.test = std::move(test);
    }
    return out;
}

}  // namespace ww::pump_room
