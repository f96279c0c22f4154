#include "core/pump_room/confirmed_duty.h"

#include "core/balancing/advice/proportional_balance.h"
#include "core/hydraulics/solve.h"

namespace ww::pump_room {

BalancedLoop::BalancedLoop(const project::Project& project, const balancing::Resistances& learned)
    : m_project(&project), m_learned(&learned) {
    const auto found = balancing::proportionalBalance(project, balancing::LoopState{}, learned);
    m_faults = found.faults;
    if (!found.balance) {
        return;
    }
    for (const balancing::BalancedBranch& branch : found.balance->branches) {
        if (branch.setting) {
            m_state.settings[project.branches()[branch.branch].id] = *branch.setting;
        }
    }
}

std::optional<ConfirmedDuty> BalancedLoop::solve(const curve::PumpSet& pumps, Head throttled,
                                                 VolumeFlow wantedFlow, Head wantedHead) const {
    if (!isUsable()) {
        return std::nullopt;
    }
    const quantity::Density density = m_project->fluid().density();
    balancing::LoopState state = m_state;
    if (throttled.si() > 0) {
        const double flow_m3s = wantedFlow.si();
        state.throttle =
            balancing::Resistance::si(quantity::pressureOf(throttled, density).si() / (flow_m3s * flow_m3s));
    }
    balancing::BuiltModel built = balancing::hydraulicModel(*m_project, state, *m_learned);
    if (!built.model || built.model->pumpLinks.size() != pumps.members().size()) {
        return std::nullopt;
    }
    std::vector<hydraulics::LinkChange> changes;
    for (std::size_t i = 0; i < pumps.members().size(); ++i) {
        const curve::PumpMember& member = pumps.members()[i];
        hydraulics::PumpOperation operation;
        operation.speedFraction = member.state.speedFraction;
        operation.diameterFraction = member.state.diameterFraction;
        const auto model = hydraulics::PumpModel::fromCurve(member.curve, density);
        changes.push_back({built.model->pumpLinks[i], hydraulics::Element::pump(model, operation)});
    }
    auto changed = built.model->network.with(changes);
    if (!changed.network) {
        return std::nullopt;
    }
    built.model->network = std::move(*changed.network);
    const hydraulics::Solution solution = hydraulics::solve(built.model->network);
    const balancing::PumpsTogether together = balancing::pumpsTogether(*built.model, solution);
    ConfirmedDuty duty;
    duty.flow = together.flow;
    duty.head = quantity::headOf(together.rise, density);
    duty.flowDifference = Ratio::si(duty.flow / wantedFlow - 1);
    duty.headDifference = Ratio::si(duty.head / wantedHead - 1);
    duty.summary = solution.summary();
    return duty;
}

}  // namespace ww::pump_room
