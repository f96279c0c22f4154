#include "core/balancing/advice/proportional_balance.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/detail/branch_flow.h"
#include "core/curve/valve_flow.h"

namespace ww::balancing {

namespace {

using hydraulics::Element;
using hydraulics::LinkIndex;
using project::Branch;
using project::BranchTree;
using project::Project;

constexpr int kMostSteps = 200;
constexpr double kRootTolerance = 1e-13;

/// A root of a function that is positive at `low` and not at `high` (Illinois variant of the false position,
/// Dowell and Jarratt, BIT 11 (1971) 168).
template <class Function>
double fallingRoot(Function f, double low, double high, double atLow, double atHigh) {
    for (int i = 0; i < kMostSteps && high - low > kRootTolerance * high; ++i) {
        double middle = low + (high - low) * atLow / (atLow - atHigh);
        if (!(middle > low && middle < high)) {
            middle = 0.5 * (low + high);
        }
        const double value = f(middle);
        if (value > 0) {
            low = middle;
            atLow = value;
            atHigh *= 0.5;
        } else {
            high = middle;
            atHigh = value;
            atLow *= 0.5;
        }
        if (value == 0) {
            return middle;
        }
    }
    return 0.5 * (low + high);
}

/// The pumps of a loop as one: rise over total flow at a speed times that of the network.
class Pumps {
  public:
    explicit Pumps(const HydraulicModel& model) : m_isSeries(model.arePumpsInSeries) {
        for (const LinkIndex link : model.pumpLinks) {
            if (!model.network.isClosed(link)) {
                m_elements.push_back(model.network.element(link));
            }
        }
    }
    bool empty() const { return m_elements.empty(); }

    /// Affinity: rise n^2 times that at the flow over n.
    double rise_Pa(double flow_m3s, double speedRatio) const {
        const double scaled_m3s = flow_m3s / speedRatio;
        return speedRatio * speedRatio * ratedRise_Pa(scaled_m3s);
    }

  private:
    static double one_Pa(const Element& pump, double flow_m3s) {
        return -pump.drop(VolumeFlow::si(flow_m3s)).si();
    }
    /// Flow of one pump at a rise; 0 above its shutoff.
    static double flow_m3s(const Element& pump, double rise_Pa) {
        const double shutoff_Pa = one_Pa(pump, 0);
        if (rise_Pa >= shutoff_Pa) {
            return 0;
        }
        double high_m3s = 1e-3;
        while (one_Pa(pump, high_m3s) > rise_Pa && high_m3s < 1e6) {
            high_m3s *= 2;
        }
        const auto left = [&](double q) { return one_Pa(pump, q) - rise_Pa; };
        return fallingRoot(left, 0, high_m3s, left(0), left(high_m3s));
    }
    double ratedRise_Pa(double total_m3s) const {
        if (m_isSeries || m_elements.size() == 1) {
            double sum_Pa = 0;
            for (const Element& pump : m_elements) {
                sum_Pa += one_Pa(pump, total_m3s);
            }
            return sum_Pa;
        }
        double high_Pa = 0;
        for (const Element& pump : m_elements) {
            high_Pa = std::max(high_Pa, one_Pa(pump, 0));
        }
        const auto left = [&](double rise_Pa) {
            double sum_m3s = -total_m3s;
            for (const Element& pump : m_elements) {
                sum_m3s += flow_m3s(pump, rise_Pa);
            }
            return sum_m3s;
        };
        double low_Pa = 0;
        while (left(low_Pa) <= 0 && low_Pa > -1e9) {
            low_Pa = 2 * low_Pa - high_Pa;
        }
        return fallingRoot(left, low_Pa, high_Pa, left(low_Pa), left(high_Pa));
    }

    std::vector<Element> m_elements;
    bool m_isSeries = false;
};

class Balancer {
  public:
    Balancer(const Project& project, const HydraulicModel& model)
        : m_project(project), m_tree(project.tree()), m_model(model), m_pumps(model) {
        const std::size_t count = project.branches().size();
        for (std::uint32_t link = 0; link < model.network.linkCount(); ++link) {
            m_elements.push_back(model.network.isClosed(LinkIndex{link})
                                     ? std::nullopt
                                     : std::optional(model.network.element(LinkIndex{link})));
        }
        m_design = project::designFlows(project);
        m_flows_m3s.resize(count);
        m_needs_Pa.resize(count);
        m_runs_Pa.resize(count);
        m_groupNeeds_Pa.resize(count);
        m_below_Pa.resize(count);
        m_largest.resize(count);
    }

    std::optional<ProportionalBalance> balance() {
        if (m_pumps.empty()) {
            return std::nullopt;
        }
        const auto left = [&](double ratio) { return m_pumps.rise_Pa(totalAt(ratio), 1) - need_Pa(ratio); };
        double high = 1;
        while (left(high) > 0 && high < 1e6) {
            high *= 2;
        }
        constexpr double kLeast = 1e-6;
        if (left(kLeast) <= 0) {
            return std::nullopt;
        }
        const double ratio = fallingRoot(left, kLeast, high, left(kLeast), left(high));
        ProportionalBalance out;
        out.neededAtDesign = PressureDifference::si(need_Pa(1));
        out.designFlow = VolumeFlow::si(totalAt(1));
        out.availableAtDesign = PressureDifference::si(m_pumps.rise_Pa(out.designFlow.si(), 1));
        const double needed_Pa = need_Pa(ratio);
        out.totalFlow = VolumeFlow::si(totalAt(ratio));
        out.pumpRise = PressureDifference::si(needed_Pa);
        out.ofDesign = Ratio::si(ratio);
        out.branches.resize(m_flows_m3s.size());
        spend(m_tree.roots(), needed_Pa, m_rootLargest, out);
        for (const std::size_t branch : m_tree.topDown()) {
            if (!m_tree.isTerminal(branch)) {
                spend(m_tree.children(branch), m_below_Pa[branch], m_largest[branch], out);
            }
        }
        for (std::optional<std::size_t> at = m_rootLargest; at;
             at = m_tree.isTerminal(*at) ? std::nullopt : m_largest[*at]) {
            out.indexPath.push_back(*at);
        }
        return out;
    }

  private:
    const Branch& branchAt(std::size_t index) const { return m_project.branches()[index]; }

    double drop_Pa(const std::optional<LinkIndex>& link, double flow_m3s) const {
        if (!link || !m_elements[link->value] || flow_m3s == 0) {
            return 0;
        }
        return m_elements[link->value]->drop(VolumeFlow::si(flow_m3s)).si();
    }

    bool hasValve(std::size_t index) const {
        const Branch& branch = branchAt(index);
        return !detail::isSelfActing(branch) && branch.kind != project::BranchKind::None &&
               m_project.characteristicOf(branch) != nullptr && m_model.valveLink[index];
    }

    double totalAt(double ratio) const {
        double total_m3s = 0;
        for (const std::size_t terminal : m_tree.terminals()) {
            total_m3s += terminalFlow_m3s(terminal, ratio);
        }
        return total_m3s;
    }
    double terminalFlow_m3s(std::size_t terminal, double ratio) const {
        return m_design[terminal].si() * (detail::isSelfActing(branchAt(terminal)) ? 1 : ratio);
    }

    double valveNeed_Pa(std::size_t index) const {
        const Branch& branch = branchAt(index);
        if (detail::isSelfActing(branch)) {
            const project::ValveModel* valve =
                branch.valve ? m_project.valves().find(*branch.valve) : nullptr;
            return valve != nullptr && valve->minimumDp && m_flows_m3s[index] > 0
                       ? valve->minimumDp->value.si()
                       : 0;
        }
        return drop_Pa(m_model.valveLink[index], m_flows_m3s[index]);
    }

    /// Losses of the runs from the header to each member and back, at the flows of the moment.
    void fillRuns(std::span<const std::size_t> members, std::optional<std::size_t> parent) {
        double total_m3s = 0;
        for (const std::size_t member : members) {
            total_m3s += m_flows_m3s[member];
        }
        double carried_m3s = total_m3s;
        double supply_Pa = 0;
        for (const std::size_t member : members) {
            supply_Pa += drop_Pa(m_model.runLink[member], carried_m3s);
            m_runs_Pa[member] = supply_Pa;
            carried_m3s -= m_flows_m3s[member];
        }
        if (!parent || !m_model.lastReturnLink[*parent]) {
            return;
        }
        double return_Pa = drop_Pa(m_model.lastReturnLink[*parent], total_m3s);
        double before_m3s = total_m3s;
        for (auto at = members.rbegin(); at != members.rend(); ++at) {
            m_runs_Pa[*at] += return_Pa;
            before_m3s -= m_flows_m3s[*at];
            return_Pa += drop_Pa(m_model.returnRunLink[*at], before_m3s);
        }
    }

    /// The largest need among members, and who has it (a tie goes to the farther one).
    double largest_Pa(std::span<const std::size_t> members, std::optional<std::size_t>& who) const {
        constexpr double kTie = 1e-12;
        double largest = 0;
        who.reset();
        for (const std::size_t member : members) {
            const double need_Pa = m_runs_Pa[member] + m_needs_Pa[member];
            if (m_flows_m3s[member] > 0 && (!who || need_Pa >= largest * (1 - kTie))) {
                largest = need_Pa;
                who = member;
            }
        }
        return largest;
    }

    double need_Pa(double ratio) {
        const auto order = m_tree.topDown();
        for (auto at = order.rbegin(); at != order.rend(); ++at) {
            if (m_tree.isTerminal(*at)) {
                m_flows_m3s[*at] = terminalFlow_m3s(*at, ratio);
            } else {
                m_flows_m3s[*at] = 0;
                for (const std::size_t child : m_tree.children(*at)) {
                    m_flows_m3s[*at] += m_flows_m3s[child];
                }
                fillRuns(m_tree.children(*at), *at);
                m_groupNeeds_Pa[*at] = largest_Pa(m_tree.children(*at), m_largest[*at]);
            }
            m_needs_Pa[*at] = drop_Pa(m_model.circuitLink[*at], m_flows_m3s[*at]) + valveNeed_Pa(*at) +
                              m_groupNeeds_Pa[*at];
        }
        fillRuns(m_tree.roots(), std::nullopt);
        return largest_Pa(m_tree.roots(), m_rootLargest);
    }

    /// Gives every member of a group its part of what stands at the header.
    void spend(std::span<const std::size_t> members, double available_Pa, std::optional<std::size_t> largest,
               ProportionalBalance& out) {
        for (const std::size_t member : members) {
            BalancedBranch& made = out.branches[member];
            made.branch = member;
            made.flow = VolumeFlow::si(m_flows_m3s[member]);
            made.needed = PressureDifference::si(m_needs_Pa[member]);
            made.isReference = largest == member;
            const double excess_Pa = available_Pa - m_runs_Pa[member] - m_needs_Pa[member];
            m_below_Pa[member] = m_groupNeeds_Pa[member];
            if (m_flows_m3s[member] <= 0) {
                made.reach = BalanceReach::NoFlow;
            } else if (hasValve(member)) {
                setValve(member, excess_Pa, made);
                if (!m_tree.isTerminal(member)) {
                    m_below_Pa[member] += made.unspent.si();
                }
            } else if (detail::isSelfActing(branchAt(member))) {
                made.reach = BalanceReach::SelfActing;
            } else {
                made.reach = BalanceReach::NoValve;
                if (m_tree.isTerminal(member)) {
                    made.unspent = PressureDifference::si(excess_Pa);
                } else {
                    m_below_Pa[member] += excess_Pa;
                }
            }
        }
    }

    void setValve(std::size_t member, double excess_Pa, BalancedBranch& made) const {
        const curve::ValveCharacteristic& curve = *m_project.characteristicOf(branchAt(member));
        const double open_Pa = drop_Pa(m_model.valveLink[member], m_flows_m3s[member]);
        constexpr double kNothing = 1e-9;
        made.reach = BalanceReach::FullyOpen;
        made.valveDrop = PressureDifference::si(open_Pa);
        made.coefficient = curve.coefficientFullyOpen();
        made.setting = curve.fullyOpen();
        if (excess_Pa <= kNothing * (open_Pa + m_needs_Pa[member])) {
            return;
        }
        made.reach = BalanceReach::Set;
        made.valveDrop = PressureDifference::si(open_Pa + excess_Pa);
        made.coefficient = curve::coefficientNeeded(made.flow, *made.valveDrop, m_project.fluid().density());
        const auto setting = curve.settingFor(*made.coefficient);
        if (!setting) {
            made.reach = BalanceReach::BelowScale;
            const auto least = curve.coefficient(curve.lowest());
            const double taken_Pa =
                least.si() > 0
                    ? curve::valveDrop(least, made.flow, m_project.fluid().density()).si() - open_Pa
                    : excess_Pa;
            made.unspent = PressureDifference::si(excess_Pa - taken_Pa);
        }
        made.setting = setting.value_or(curve.lowest());
    }

    const Project& m_project;
    const BranchTree& m_tree;
    const HydraulicModel& m_model;
    Pumps m_pumps;
    std::vector<std::optional<Element>> m_elements;
    std::vector<VolumeFlow> m_design;
    std::vector<double> m_flows_m3s;
    std::vector<double> m_needs_Pa;  ///< by branch, from its take-off: path, open valve, what is below
    std::vector<double> m_runs_Pa;   ///< by branch: of the runs from its group's header and back
    std::vector<double> m_groupNeeds_Pa;
    std::vector<double> m_below_Pa;  ///< by branch: what stands at its children's header
    std::vector<std::optional<std::size_t>> m_largest;
    std::optional<std::size_t> m_rootLargest;
};

}  // namespace

BalanceResult proportionalBalance(const Project& project, const LoopState& operation,
                                  const Resistances& resistances) {
    LoopState open = operation;
    open.settings.clear();
    open.closed.clear();
    BuiltModel built = hydraulicModel(project, open, resistances);
    BalanceResult result;
    result.faults = std::move(built.faults);
    if (!built.model) {
        return result;
    }
    result.balance = Balancer(project, *built.model).balance();
    if (!result.balance) {
        result.faults.push_back({&kBalanceNoFlow, "", {}});
    }
    return result;
}

std::optional<Ratio> speedFractionFor(const HydraulicModel& model, const LoopState& operation,
                                      VolumeFlow flow, PressureDifference rise) {
    const Pumps pumps(model);
    if (pumps.empty() || operation.speedFraction <= 0 || rise.si() <= 0) {
        return std::nullopt;
    }
    const auto left = [&](double fraction) {
        return rise.si() - pumps.rise_Pa(flow.si(), fraction / operation.speedFraction);
    };
    constexpr double kLow = 0.05;
    constexpr double kHigh = 4;
    if (left(kLow) <= 0 || left(kHigh) > 0) {
        return std::nullopt;
    }
    return Ratio::si(fallingRoot(left, kLow, kHigh, left(kLow), left(kHigh)));
}

}  // namespace ww::balancing
