#include "core/balancing/detail/loop_fits.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/detail/branch_flow.h"

namespace ww::balancing::detail {

namespace {

using hydraulics::Element;
using hydraulics::LinkIndex;
using project::Branch;
using project::Project;

std::optional<double> median(std::vector<double> numbers) {
    if (numbers.empty()) {
        return std::nullopt;
    }
    const auto middle = numbers.begin() + static_cast<std::ptrdiff_t>(numbers.size() / 2);
    std::nth_element(numbers.begin(), middle, numbers.end());
    return *middle;
}

/// Head that the pumps may be expected to make: of the first usable curve, its middle point.
double usualHead_Pa(const Project& project) {
    for (const project::Pump& pump : project.pumps()) {
        const curve::PumpCurve* curve = pump.isRunning ? project.pumpCurve(pump.id) : nullptr;
        if (curve != nullptr) {
            const auto points = curve->points();
            return quantity::pressureOf(points[points.size() / 2].head, project.fluid().density()).si();
        }
    }
    constexpr double kUsual_Pa = 1e5;
    return kUsual_Pa;
}

/// Flow that the run of each branch carries by design: everything downstream on the same parent.
std::vector<double> carried_m3s(const Project& project, const std::vector<VolumeFlow>& design) {
    std::vector<double> out(design.size(), 0.0);
    const project::BranchTree& tree = project.tree();
    const auto fill = [&](std::span<const std::size_t> members) {
        double sum_m3s = 0;
        for (auto at = members.rbegin(); at != members.rend(); ++at) {
            sum_m3s += design[*at].si();
            out[*at] = sum_m3s;
        }
    };
    fill(tree.roots());
    for (const std::size_t branch : tree.topDown()) {
        fill(tree.children(branch));
    }
    return out;
}

/// Runs on the longest way from the pump to a terminal.
double mostRunsOnPath(const project::BranchTree& tree) {
    std::vector<double> runs(tree.size(), 0.0);
    double most = 1;
    const auto fill = [&](std::span<const std::size_t> members, double before) {
        for (const std::size_t member : members) {
            runs[member] = ++before;
            most = std::max(most, before);
        }
    };
    fill(tree.roots(), 0);
    for (const std::size_t branch : tree.topDown()) {
        fill(tree.children(branch), runs[branch]);
    }
    return most;
}

}  // namespace

Resistances priorResistances(const Project& project) {
    const std::vector<VolumeFlow> design = project::designFlows(project);
    const std::vector<double> carried = carried_m3s(project, design);
    const project::BranchTree& tree = project.tree();
    std::vector<double> circuits_Pa;
    std::vector<double> runs_Pa;
    for (const Branch& branch : project.branches()) {
        if (branch.circuitLoss && branch.circuitLoss->value.si() > 0) {
            circuits_Pa.push_back(branch.circuitLoss->value.si());
        }
        if (branch.runLoss && branch.runLoss->value.si() > 0) {
            runs_Pa.push_back(branch.runLoss->value.si());
        }
    }
    const double head_Pa = usualHead_Pa(project);
    const double circuit_Pa = median(circuits_Pa).value_or(0.4 * head_Pa);
    const double run_Pa = median(runs_Pa).value_or(0.3 * head_Pa / mostRunsOnPath(tree));
    Resistances priors;
    for (std::size_t i = 0; i < project.branches().size(); ++i) {
        const Branch& branch = project.branches()[i];
        BranchResistance made;
        const double ofRun_Pa = branch.runLoss ? branch.runLoss->value.si() : run_Pa;
        if (ofRun_Pa > 0 && carried[i] > 0) {
            made.run = Resistance::si(ofRun_Pa / (carried[i] * carried[i]));
        }
        const double usual_Pa = tree.isTerminal(i) ? circuit_Pa : 0;
        const double ofCircuit_Pa = branch.circuitLoss ? branch.circuitLoss->value.si() : usual_Pa;
        if (ofCircuit_Pa > 0 && design[i].si() > 0) {
            made.circuit = Resistance::si(ofCircuit_Pa / (design[i].si() * design[i].si()));
        }
        if (made.run || made.circuit) {
            priors[branch.id] = made;
        }
    }
    return priors;
}

const BuiltModel& LoopStates::openAt(double speedFraction) {
    const auto found = m_bySpeed.find(speedFraction);
    if (found != m_bySpeed.end()) {
        return found->second;
    }
    LoopState state;
    state.speedFraction = speedFraction;
    return m_bySpeed.emplace(speedFraction, hydraulicModel(*m_project, state, m_priors)).first->second;
}

hydraulics::Network LoopStates::networkOf(const LoopState& state) {
    const BuiltModel& built = openAt(state.speedFraction);
    EXPECTS(built.model.has_value());
    std::vector<hydraulics::LinkChange> changes;
    for (const auto& [id, setting] : state.settings) {
        const Branch* branch = m_project->branches().find(id);
        const curve::ValveCharacteristic* curve =
            branch != nullptr ? m_project->characteristicOf(*branch) : nullptr;
        if (curve == nullptr || isSelfActing(*branch) || setting >= curve->fullyOpen()) {
            continue;
        }
        const auto index = m_project->branches().indexOf(id);
        if (!built.model->valveLink[index]) {
            continue;
        }
        const bool isShut = isShutSetting(*m_project, *branch, setting);
        const auto coefficient =
            isShut ? quantity::FlowCoefficient() : curve->coefficient(std::max(setting, curve->lowest()));
        changes.push_back(
            {*built.model->valveLink[index], Element::valve(coefficient, m_project->fluid().density())});
    }
    for (const Id& id : state.closed) {
        // A branch is shut at its valve, so that what stands there is seen across it.
        const Branch* branch = m_project->branches().find(id);
        if (branch == nullptr) {
            continue;
        }
        const auto index = m_project->branches().indexOf(id);
        const LinkIndex link = built.model->valveLink[index].value_or(built.model->circuitLink[index]);
        changes.push_back({link, built.model->network.element(link), true});
    }
    auto changed = built.model->network.with(changes);
    EXPECTS(changed.network.has_value());
    return std::move(*changed.network);
}

double LoopStates::closedFraction(const LoopState& state, std::size_t branch) const {
    const Branch& record = m_project->branches()[branch];
    const curve::ValveCharacteristic* curve = m_project->characteristicOf(record);
    const auto found = state.settings.find(record.id);
    if (curve == nullptr || found == state.settings.end() || curve->fullyOpen().si() <= 0) {
        return 0;
    }
    return std::clamp(1 - found->second / curve->fullyOpen(), 0.0, 1.0);
}

std::size_t LoopLearning::addCase(LoopStates& states, const LoopState& state) {
    learning.cases.push_back(states.networkOf(state));
    for (std::size_t i = 0; i < branches.size(); ++i) {
        if (branches[i].tableTilt) {
            estimation::Unknown& unknown = learning.unknowns[*branches[i].tableTilt];
            unknown.links.front().weightByCase.push_back(states.closedFraction(state, i));
        }
    }
    // A forecast is of the pumps as they ran last.
    for (const RoundHead& head : roundHeads) {
        for (estimation::ScaledLink& link : learning.unknowns[head.unknown].links) {
            link.weightByCase.push_back(head.round == presentRound ? 1 : 0);
        }
    }
    return learning.cases.size() - 1;
}

}  // namespace ww::balancing::detail
