#include "core/pump_room/read_and_set.h"

#include <algorithm>

#include "core/balancing/advice/proportional_balance.h"
#include "core/curve/valve_flow.h"

namespace ww::pump_room {

namespace {

using energy::PumpAction;
using project::Project;

const energy::PumpOption* find(const PumpDecision& decision, PumpAction action) {
    for (const DecidedOption& decided : decision.options) {
        if (decided.option.action == action) {
            return &decided.option;
        }
    }
    return nullptr;
}

/// The pump reduced in the way that may be carried out: slowed, else trimmed.
const energy::PumpOption* reduced(const PumpDecision& decision) {
    const energy::PumpOption* slow = find(decision, PumpAction::Slow);
    const energy::PumpOption* trim = find(decision, PumpAction::Trim);
    if (slow != nullptr && slow->isAllowed) {
        return slow;
    }
    return trim != nullptr && trim->isAllowed ? trim : slow;
}

class Comparison {
  public:
    Comparison(const Project& project, const balancing::ProportionalBalance& balance)
        : m_project(project), m_balance(balance), m_design(project::designFlows(project)) {}

    std::vector<ValveLeft> valves(PressureDifference excess) const {
        std::vector<ValveLeft> out;
        for (const std::size_t terminal : m_project.tree().terminals()) {
            const auto open = openDrop(terminal);
            const auto proportional = dropAtDesign(terminal);
            if (!open || !proportional) {
                continue;
            }
            ValveLeft left;
            left.branch = terminal;
            left.open = *open;
            left.proportional = *proportional;
            left.readAndSet = *proportional + excess + takenAbove(terminal);
            left.isIndex = !m_balance.indexPath.empty() && m_balance.indexPath.back() == terminal;
            out.push_back(left);
        }
        return out;
    }

  private:
    std::optional<PressureDifference> openDrop(std::size_t branch) const {
        const auto* curve = m_project.characteristicOf(m_project.branches()[branch]);
        if (curve == nullptr || m_design[branch].si() <= 0) {
            return std::nullopt;
        }
        return curve::valveDrop(curve->coefficientFullyOpen(), m_design[branch], m_project.fluid().density());
    }

    /// The balance's valve, at design flow by the square law.
    std::optional<PressureDifference> dropAtDesign(std::size_t branch) const {
        const balancing::BalancedBranch& balanced = m_balance.branches[branch];
        if (!balanced.valveDrop || balanced.flow.si() <= 0) {
            return std::nullopt;
        }
        const double part = m_design[branch] / balanced.flow;
        return *balanced.valveDrop * (part * part);
    }

    /// What the valves of the branches above take beyond fully open in the proportional balance; read-and-set
    /// leaves those open.
    PressureDifference takenAbove(std::size_t terminal) const {
        PressureDifference sum;
        for (std::size_t at = m_project.tree().parent(terminal); at != project::BranchTree::kNone;
             at = m_project.tree().parent(at)) {
            const auto open = openDrop(at);
            const auto set = dropAtDesign(at);
            if (open && set) {
                sum += *set - *open;
            }
        }
        return sum;
    }

    const Project& m_project;
    const balancing::ProportionalBalance& m_balance;
    std::vector<VolumeFlow> m_design;
};

}  // namespace

ReadAndSet compareReadAndSet(const Project& project, const PumpDecision& decision,
                             const balancing::Resistances& learned) {
    ReadAndSet out;
    const auto found = balancing::proportionalBalance(project, balancing::LoopState{}, learned);
    out.findings = found.faults;
    if (!found.balance || !decision.excess) {
        return out;
    }
    const Head excess = std::max(Head(), *decision.excess);
    out.valves = Comparison(project, *found.balance).valves(project.fluid().pressure(excess));
    if (excess.si() <= 0) {
        out.findings.push_back({&kReadAndSetSame, "", {}});
    }
    out.wasted = excess;
    for (const ValveLeft& valve : out.valves) {
        if (valve.isIndex) {
            out.wasted = project.fluid().head(valve.readAndSet - valve.open);
        }
    }
    const energy::PumpOption* throttle = find(decision, PumpAction::Throttle);
    const energy::PumpOption* instead = reduced(decision);
    if (throttle == nullptr) {
        return out;
    }
    if (throttle->efficiency) {
        out.wastedPower = energy::shaftPower(decision.designFlow, *out.wasted, project.fluid().density(),
                                             *throttle->efficiency);
    }
    if (instead != nullptr && throttle->energy && instead->energy) {
        out.energy = quantity::Energy::si(throttle->energy->si() - instead->energy->si());
    }
    if (instead != nullptr && throttle->cost && instead->cost) {
        out.cost = energy::Money::si(throttle->cost->si() - instead->cost->si());
    }
    return out;
}

}  // namespace ww::pump_room
