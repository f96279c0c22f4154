#include "core/practice/building.h"

#include <algorithm>
#include <cmath>

#include "core/curve/valve_flow.h"
#include "core/hydraulics/solve.h"
#include "core/practice/detail/design.h"
#include "core/practice/detail/truth.h"
#include "core/practice/random_numbers.h"

namespace ww::practice {

namespace {

using hydraulics::Element;
using hydraulics::LinkChange;
using quantity::FlowCoefficient;
using quantity::Resistance;
using quantity::Unit;

/// What is read: keys of the streams of noise.
enum ReadingKey : std::uint64_t { kValveDp = 101, kPumpRise, kFlow };

/// The design flow that each branch's run carries: everything from its take-off on along the same parent.
std::vector<VolumeFlow> flowsOfRuns(const project::Project& design, const std::vector<VolumeFlow>& own) {
    std::vector<VolumeFlow> carried(own.size());
    const auto along = [&](std::span<const std::size_t> members) {
        VolumeFlow downstream;
        for (auto at = members.rbegin(); at != members.rend(); ++at) {
            downstream += own[*at];
            carried[*at] = downstream;
        }
    };
    const project::BranchTree& tree = design.tree();
    along(tree.roots());
    for (const std::size_t branch : tree.topDown()) {
        along(tree.children(branch));
    }
    return carried;
}

Resistance squareLaw(PressureDifference loss, VolumeFlow flow) {
    return Resistance::si(loss.si() / (flow.si() * flow.si()));
}

balancing::HydraulicModel squareLoop(const project::Project& design, const HiddenTruth& truth,
                                     const std::vector<VolumeFlow>& own,
                                     const std::vector<VolumeFlow>& runs) {
    balancing::Resistances resistances;
    for (std::size_t i = 0; i < own.size(); ++i) {
        resistances[design.branches()[i].id] = {squareLaw(truth.branches[i].runLoss, runs[i]),
                                                squareLaw(truth.branches[i].circuitLoss, own[i])};
    }
    auto built = balancing::hydraulicModel(design, LoopState{}, resistances);
    EXPECTS(built.model);
    return std::move(*built.model);
}

/// A value as a display with this resolution shows it, never below zero.
template <class Q>
Measured<Q> shown(Q value, Q resolution, Unit unit, int decimals) {
    const double steps = std::max(0.0, std::round(value / resolution));
    return quantity::measured<Q>(base::Decimal::fromNumber((resolution * steps).in(unit), decimals), unit);
}

}  // namespace

Building::Building(BuildingPlan plan, std::uint64_t seed)
    : m_plan(std::move(plan)),
      m_seed(seed),
      m_design(detail::makeDesign(m_plan, seed)),
      m_designFlows(project::designFlows(m_design)),
      m_runFlows(flowsOfRuns(m_design, m_designFlows)),
      m_truth(detail::drawTruth(m_plan, seed, m_design)),
      m_loop(squareLoop(m_design, m_truth, m_designFlows, m_runFlows)) {
    buildOpenLoop();
}

quantity::Setting Building::onScale(quantity::Setting wanted, std::size_t branch) const {
    const auto* characteristic = m_design.characteristicOf(m_design.branches()[branch]);
    EXPECTS(characteristic != nullptr);
    const double steps = std::round(wanted / m_plan.settingStep);
    return std::clamp(m_plan.settingStep * steps, characteristic->lowest(), characteristic->fullyOpen());
}

quantity::Setting Building::handle(const LoopState& state, std::size_t branch, ReadingMoment moment) const {
    const auto* characteristic = m_design.characteristicOf(m_design.branches()[branch]);
    const auto found = state.settings.find(m_design.branches()[branch].id);
    quantity::Setting setting = found == state.settings.end() ? characteristic->fullyOpen() : found->second;
    for (const PlantedFault& fault : m_truth.faults) {
        if (fault.kind == FaultKind::SettingMisread && fault.branch == branch &&
            fault.round == moment.round && !moment.isHandleSeen) {
            // A turn less; where there is no turn to take, a turn more.
            quantity::Setting off = quantity::Setting::si(fault.factor);
            if ((setting + off).si() < characteristic->lowest().si() + 0.25) {
                off = -off;
            }
            setting = std::clamp(setting + off, characteristic->lowest(), characteristic->fullyOpen());
        }
    }
    return setting;
}

FlowCoefficient Building::trueCoefficient(std::size_t branch, quantity::Setting setting) const {
    const auto& characteristic = *m_design.characteristicOf(m_design.branches()[branch]);
    const TrueBranch& truth = m_truth.branches[branch];
    const double closed =
        1 - (setting - characteristic.lowest()) / (characteristic.fullyOpen() - characteristic.lowest());
    return characteristic.coefficient(setting) *
           (truth.tableBiasFactor * std::exp(truth.tableTilt_ratio * closed));
}

double Building::growth(std::size_t branch, ReadingMoment moment) const {
    double factor = 1;
    for (const PlantedFault& fault : m_truth.faults) {
        if (fault.branch != branch) {
            continue;
        }
        if (fault.kind == FaultKind::AirInCoil || fault.kind == FaultKind::ControlValve) {
            factor *= fault.factor;
        } else if (fault.kind == FaultKind::CloggingStrainer) {
            factor *= 1 + (fault.factor - 1) * moment.takenBefore / terminalCount(m_plan);
        }
    }
    return factor;
}

PressureDifference Building::circuitLossAfter(std::size_t branch, int takenBefore) const {
    ReadingMoment moment;
    moment.takenBefore = takenBefore;
    return m_truth.branches[branch].circuitLoss * growth(branch, moment);
}

Element Building::circuitLaw(std::size_t branch, ReadingMoment moment) const {
    return Element::exponentLaw(circuitLossAfter(branch, moment.takenBefore), m_designFlows[branch],
                                m_plan.coilExponent);
}

Element Building::pumpLaw(std::size_t pump, const LoopState& state) const {
    hydraulics::PumpOperation operation;
    operation.speedFraction = state.speedFraction;
    operation.diameterFraction = state.diameterFraction;
    operation.isRunning = state.speedFraction > 0;
    operation.curveFactor = m_truth.pumpFactor;
    const auto* curve = m_design.pumpCurve(m_design.pumps()[pump].id);
    return Element::pump(hydraulics::PumpModel::fromCurve(*curve, m_design.fluid().density()), operation);
}

hydraulics::Network Building::changed(const std::vector<LinkChange>& changes) const {
    auto made = m_loop.network.with(changes);
    EXPECTS(made.network);
    return std::move(*made.network);
}

void Building::buildOpenLoop() {
    std::vector<LinkChange> changes;
    for (std::size_t i = 0; i < m_design.branches().size(); ++i) {
        const TrueBranch& truth = m_truth.branches[i];
        if (truth.circuitLoss.si() > 0) {
            changes.push_back({m_loop.circuitLink[i], circuitLaw(i, {})});
        }
        if (m_loop.runLink[i]) {
            changes.push_back(
                {*m_loop.runLink[i], Element::exponentLaw(truth.runLoss, m_runFlows[i], m_plan.runExponent)});
        }
        if (m_loop.valveLink[i]) {
            const auto* characteristic = m_design.characteristicOf(m_design.branches()[i]);
            changes.push_back(
                {*m_loop.valveLink[i], Element::valve(trueCoefficient(i, characteristic->fullyOpen()),
                                                      m_design.fluid().density())});
        }
    }
    for (std::size_t i = 0; i < m_loop.pumpLinks.size(); ++i) {
        changes.push_back({m_loop.pumpLinks[i], pumpLaw(m_loop.pumps[i], {})});
    }
    m_loop.network = changed(changes);
}

hydraulics::Network Building::networkAt(const LoopState& state, ReadingMoment moment) const {
    std::vector<LinkChange> changes;
    for (std::size_t i = 0; i < m_design.branches().size(); ++i) {
        if (!m_loop.valveLink[i]) {
            continue;
        }
        const project::Branch& branch = m_design.branches()[i];
        const bool isClosed =
            std::find(state.closed.begin(), state.closed.end(), branch.id) != state.closed.end();
        const quantity::Setting setting = handle(state, i, moment);
        if (isClosed || setting < m_design.characteristicOf(branch)->fullyOpen()) {
            const FlowCoefficient coefficient = trueCoefficient(i, setting);
            changes.push_back({*m_loop.valveLink[i], Element::valve(coefficient, m_design.fluid().density()),
                               isClosed || coefficient.si() <= 0});
        }
    }
    for (const PlantedFault& fault : m_truth.faults) {
        if (fault.kind == FaultKind::CloggingStrainer) {
            changes.push_back({m_loop.circuitLink[fault.branch], circuitLaw(fault.branch, moment)});
        }
    }
    if (state.speedFraction != 1 || state.diameterFraction != 1) {
        for (std::size_t i = 0; i < m_loop.pumpLinks.size(); ++i) {
            changes.push_back({m_loop.pumpLinks[i], pumpLaw(m_loop.pumps[i], state)});
        }
    }
    return changed(changes);
}

TrueState Building::stateAt(const LoopState& state, ReadingMoment moment) const {
    const hydraulics::Network network = networkAt(state, moment);
    const hydraulics::Solution solution = hydraulics::solve(network);
    TrueState real;
    for (std::size_t i = 0; i < m_design.branches().size(); ++i) {
        real.flows.push_back(solution.flow(m_loop.circuitLink[i]));
        const auto drop = m_loop.valveLink[i] ? solution.drop(network, *m_loop.valveLink[i]) : std::nullopt;
        real.valveDrops.push_back(drop.value_or(PressureDifference()));
    }
    for (const hydraulics::LinkIndex pump : m_loop.pumpLinks) {
        real.pumpFlow += solution.flow(pump);
        real.pumpRise = -solution.drop(network, pump).value_or(PressureDifference());
    }
    return real;
}

double Building::noise(std::uint64_t what, std::size_t branch, ReadingMoment moment) const {
    return RandomNumbers{m_seed, what, branch, static_cast<std::uint64_t>(moment.round),
                         static_cast<std::uint64_t>(moment.look)}
        .normalScore();
}

DpAnswer Building::readDp(const LoopState& state, std::size_t branch, ReadingMoment moment) const {
    return readDp(stateAt(state, moment), state, branch, moment);
}

DpAnswer Building::readDp(const TrueState& real, const LoopState& state, std::size_t branch,
                          ReadingMoment moment) const {
    EXPECTS(m_loop.valveLink[branch].has_value());
    PressureDifference dp = real.valveDrops[branch];
    DpAnswer answer;
    for (const PlantedFault& fault : m_truth.faults) {
        if (fault.branch != branch || fault.round != moment.round) {
            continue;
        }
        if (fault.kind == FaultKind::SettingMisread) {
            if (moment.look > 1 && !moment.isHandleSeen) {
                answer.settingSeen = handle(state, branch, moment);
            }
        } else if (moment.look == 1) {
            dp = dp * fault.factor;
        }
    }
    const double factor = 1 + m_plan.meterNoise.si() * noise(kValveDp, branch, moment);
    answer.dp = shown(dp * factor, m_plan.meterResolution, Unit::Kilopascal, 2);
    return answer;
}

Measured<PressureDifference> Building::readPumpRise(const LoopState& state, ReadingMoment moment) const {
    return readPumpRise(stateAt(state, moment), moment);
}

Measured<PressureDifference> Building::readPumpRise(const TrueState& real, ReadingMoment moment) const {
    const double factor = 1 + m_plan.gaugeNoise.si() * noise(kPumpRise, 0, moment);
    return shown(real.pumpRise * factor, m_plan.gaugeResolution, Unit::Kilopascal, 1);
}

Measured<VolumeFlow> Building::readFlow(const LoopState& state, std::size_t branch,
                                        ReadingMoment moment) const {
    const double factor = 1 + m_plan.flowMeterNoise.si() * noise(kFlow, branch, moment);
    return shown(stateAt(state, moment).flows[branch] * factor,
                 VolumeFlow::from(0.001, Unit::CubicMetrePerHour), Unit::CubicMetrePerHour, 3);
}

VolumeFlow Building::indicatedFlow(const LoopState& state, const TrueState& real, std::size_t branch) const {
    if (!m_loop.valveLink[branch]) {
        return real.flows[branch];
    }
    const auto* characteristic = m_design.characteristicOf(m_design.branches()[branch]);
    const auto found = state.settings.find(m_design.branches()[branch].id);
    const quantity::Setting noted =
        found == state.settings.end() ? characteristic->fullyOpen() : found->second;
    return curve::valveFlow(characteristic->coefficient(noted), real.valveDrops[branch],
                            m_design.fluid().density());
}

}  // namespace ww::practice
