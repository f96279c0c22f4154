#include "core/balancing/hydraulic_model.h"

#include <algorithm>
#include <string>

#include "core/balancing/detail/pump_duty.h"
#include "core/balancing/standing_readings.h"
#include "core/curve/valve_flow.h"
#include "core/hydraulics/network_builder.h"
#include "core/project/setting_text.h"
#include "core/quantity/measured.h"

namespace ww::balancing {

namespace {

using hydraulics::Element;
using hydraulics::LinkIndex;
using hydraulics::NodeIndex;
using project::Branch;
using project::BranchKind;

Resistance squareLaw(PressureDifference loss, VolumeFlow flow) {
    return Resistance::si(loss.si() / (flow.si() * flow.si()));
}

/// Supply and return half of a run of reverse return, as pipes of equal resistance: the run's loss (its
/// resistance times the square of the downstream flow) is made by the downstream flow in one and by what was
/// taken off before in the other. Before the first take-off both carry everything.
Resistance halfOf(Resistance run, VolumeFlow downstream, VolumeFlow before) {
    const VolumeFlow back = before.si() > 0 ? before : downstream;
    const double square = downstream.si() * downstream.si();
    return Resistance::si(run.si() * square / (square + back.si() * back.si()));
}

class ModelBuilder {
  public:
    ModelBuilder(const project::Project& project, const LoopState& state, const Resistances& resistances)
        : m_project(project), m_tree(project.tree()), m_state(state), m_resistances(resistances) {}

    BuiltModel build() {
        const std::size_t count = m_project.branches().size();
        m_circuitLink.resize(count);
        m_valveLink.resize(count);
        m_runLink.resize(count);
        m_returnRunLink.resize(count);
        m_lastReturnLink.resize(count);
        computeDesignFlows();
        if (count == 0) {
            m_faults.push_back({&kModelNoBranches, "", {}});
        }
        m_return = m_builder.addNode("return");
        const NodeIndex supply = m_builder.addNode("supply");
        addPumps(behindPumps(supply));
        if (!m_tree.roots().empty()) {
            addGroup(m_tree.roots(), supply, m_return, std::nullopt);
        }
        for (const std::size_t branch : m_tree.topDown()) {
            if (!m_tree.isTerminal(branch)) {
                addGroup(m_tree.children(branch), m_header[branch], m_headerReturn[branch], branch);
            }
        }
        return finish();
    }

  private:
    const Branch& branchAt(std::size_t index) const { return m_project.branches()[index]; }

    void fault(const base::MessageForm& form, const Branch& branch, std::vector<std::string> arguments = {}) {
        m_faults.push_back({&form, branch.tag, std::move(arguments)});
    }

    void computeDesignFlows() {
        m_design = project::designFlows(m_project);
        m_header.resize(m_design.size());
        m_headerReturn.resize(m_design.size());
        const auto order = m_tree.topDown();
        for (auto at = order.rbegin(); at != order.rend(); ++at) {
            if (m_tree.isTerminal(*at) && !branchAt(*at).designFlow) {
                fault(kModelDesignFlowUnknown, branchAt(*at));
            }
        }
    }

    /// Where the pumps end: at the loop, or before their throttled discharge valve.
    NodeIndex behindPumps(NodeIndex supply) {
        if (!m_state.throttle) {
            return supply;
        }
        const NodeIndex header = m_builder.addNode("pump header");
        m_builder.addLink("discharge valve", header, supply, Element::resistance(*m_state.throttle));
        return header;
    }

    bool isDriven(const project::Pump& pump) const {
        return pump.isRunning && m_project.pumpCurve(pump.id) != nullptr;
    }

    /// Whether there are several running pumps, all recorded in series.
    bool arePumpsInSeries() const {
        std::size_t running = 0;
        for (const project::Pump& pump : m_project.pumps()) {
            if (isDriven(pump)) {
                running += 1;
                if (pump.arrangement != project::PumpArrangement::Series) {
                    return false;
                }
            }
        }
        return running > 1;
    }

    void addPumps(NodeIndex supply) {
        const auto last = std::find_if(std::make_reverse_iterator(m_project.pumps().end()),
                                       std::make_reverse_iterator(m_project.pumps().begin()),
                                       [&](const project::Pump& pump) { return isDriven(pump); });
        const bool isSeries = arePumpsInSeries();
        NodeIndex from = m_return;
        for (std::size_t i = 0; i < m_project.pumps().size(); ++i) {
            const project::Pump& pump = m_project.pumps()[i];
            const curve::PumpCurve* curve = m_project.pumpCurve(pump.id);
            if (!isDriven(pump)) {
                continue;
            }
            hydraulics::PumpOperation operation;
            operation.speedFraction = m_state.speedFraction;
            operation.diameterFraction = m_state.diameterFraction;
            operation.isRunning = m_state.speedFraction > 0;
            operation.curveFactor = m_state.pumpCurveFactor;
            const auto model = hydraulics::PumpModel::fromCurve(*curve, m_project.fluid().density());
            const bool isLast = pump.id == last->id;
            const NodeIndex to = isSeries && !isLast ? m_builder.addNode("behind pump " + pump.tag) : supply;
            m_pumpLinks.push_back(
                m_builder.addLink("pump " + pump.tag, from, to, Element::pump(model, operation)));
            m_pumps.push_back(i);
            from = isSeries ? to : m_return;
        }
        if (m_pumps.empty()) {
            m_faults.push_back({&kModelNoPump, "", {}});
        }
    }

    /// The run of a take-off as resistance at the design flow that it carries; nothing where there is no
    /// loss.
    std::optional<Resistance> runOf(const Branch& branch, VolumeFlow carried) const {
        if (const auto found = m_resistances.find(branch.id);
            found != m_resistances.end() && found->second.run) {
            return found->second.run;
        }
        if (branch.runLoss && branch.runLoss->value.si() > 0 && carried.si() > 0) {
            return squareLaw(branch.runLoss->value, carried);
        }
        return std::nullopt;
    }

    /// The children of `parent`, or the branches fed at the pump.
    void addGroup(std::span<const std::size_t> members, NodeIndex supply, NodeIndex back,
                  std::optional<std::size_t> parent) {
        VolumeFlow downstream;
        for (const std::size_t member : members) {
            downstream += m_design[member];
        }
        const VolumeFlow total = downstream;
        const bool isReverse = parent && branchAt(*parent).returns == project::ReturnKind::Reverse;
        NodeIndex at = supply;
        std::optional<NodeIndex> previousReturn;
        VolumeFlow before;
        std::optional<Resistance> firstReturn;
        for (const std::size_t member : members) {
            const Branch& branch = branchAt(member);
            const auto run = runOf(branch, downstream);
            if (run) {
                const NodeIndex next = m_builder.addNode(branch.tag + " take-off");
                const Resistance supplyHalf = isReverse ? halfOf(*run, downstream, before) : *run;
                m_runLink[member] =
                    m_builder.addLink(branch.tag + " run", at, next, Element::resistance(supplyHalf));
                at = next;
            }
            NodeIndex circuitReturn = back;
            if (isReverse) {
                circuitReturn = m_builder.addNode(branch.tag + " return");
                const auto half = run ? std::optional(halfOf(*run, downstream, before)) : std::nullopt;
                if (previousReturn) {
                    m_returnRunLink[member] =
                        m_builder.addLink(branch.tag + " return run", *previousReturn, circuitReturn,
                                          Element::resistance(half.value_or(Resistance())));
                } else {
                    firstReturn = half;
                }
                previousReturn = circuitReturn;
            }
            addCircuit(member, at, circuitReturn);
            before += m_design[member];
            downstream = total - before;
        }
        if (isReverse && previousReturn) {
            m_lastReturnLink[*parent] =
                m_builder.addLink(branchAt(members.back()).tag + " last return", *previousReturn, back,
                                  Element::resistance(firstReturn.value_or(Resistance())));
        }
    }

    Resistance circuitOf(std::size_t index) {
        const Branch& branch = branchAt(index);
        if (const auto found = m_resistances.find(branch.id);
            found != m_resistances.end() && found->second.circuit) {
            return *found->second.circuit;
        }
        if (branch.circuitLoss && m_design[index].si() > 0) {
            return squareLaw(branch.circuitLoss->value, m_design[index]);
        }
        if (m_tree.isTerminal(index)) {
            fault(kModelCircuitUnknown, branch);
        }
        return Resistance();
    }

    std::optional<Element> valveOf(std::size_t index) {
        const Branch& branch = branchAt(index);
        if (branch.kind == BranchKind::None || !branch.valve) {
            return std::nullopt;
        }
        if (project::isSelfActing(branch)) {
            return limiterOf(index);
        }
        const auto* characteristic = m_project.characteristicOf(branch);
        if (characteristic == nullptr) {
            return std::nullopt;
        }
        const auto found = m_state.settings.find(branch.id);
        const quantity::Setting setting =
            found == m_state.settings.end() ? characteristic->fullyOpen() : found->second;
        if (!characteristic->covers(setting)) {
            fault(kModelSettingOutside, branch,
                  {settingText(m_project, branch, setting),
                   settingText(m_project, branch, characteristic->lowest()),
                   settingText(m_project, branch, characteristic->fullyOpen())});
            return std::nullopt;
        }
        return Element::valve(characteristic->coefficient(setting), m_project.fluid().density());
    }

    std::optional<Element> limiterOf(std::size_t index) {
        const Branch& branch = branchAt(index);
        const project::ValveModel* valve = m_project.valves().find(*branch.valve);
        if (valve == nullptr || !valve->minimumDp) {
            fault(kModelLimiterRange, branch);
            return std::nullopt;
        }
        // Without a stated end the range is taken to reach far beyond any circulator (common practice, no
        // source).
        const PressureDifference start = valve->minimumDp->value;
        const PressureDifference end = valve->maximumDp ? valve->maximumDp->value : start * 40.0;
        return Element::flowLimiter(m_design[index], start, end);
    }

    void addCircuit(std::size_t index, NodeIndex supply, NodeIndex back) {
        const Branch& branch = branchAt(index);
        const bool isClosed =
            std::find(m_state.closed.begin(), m_state.closed.end(), branch.id) != m_state.closed.end();
        const Element path = Element::resistance(circuitOf(index));
        const std::optional<Element> valve = valveOf(index);
        const bool isTerminal = m_tree.isTerminal(index);
        const NodeIndex end = isTerminal ? back : m_builder.addNode(branch.tag + " header");
        if (!isTerminal) {
            m_header[index] = end;
            m_headerReturn[index] = back;
        }
        const NodeIndex middle = valve ? m_builder.addNode(branch.tag + " valve inlet") : end;
        m_circuitLink[index] = m_builder.addLink(branch.tag + " circuit", supply, middle, path, isClosed);
        if (valve) {
            m_valveLink[index] = m_builder.addLink(branch.tag + " valve", middle, end, *valve);
        }
    }

    BuiltModel finish() {
        BuiltModel built;
        if (m_faults.empty()) {
            auto network = m_builder.build();
            m_faults = std::move(network.faults);
            if (network.network) {
                built.model = HydraulicModel{std::move(*network.network), std::move(m_circuitLink),
                                             std::move(m_valveLink),      std::move(m_runLink),
                                             std::move(m_returnRunLink),  std::move(m_lastReturnLink),
                                             std::move(m_pumpLinks),      std::move(m_pumps)};
            }
        }
        if (built.model) {
            built.model->arePumpsInSeries = arePumpsInSeries();
        }
        built.faults = std::move(m_faults);
        return built;
    }

    const project::Project& m_project;
    const project::BranchTree& m_tree;
    const LoopState& m_state;
    const Resistances& m_resistances;
    hydraulics::NetworkBuilder m_builder;
    NodeIndex m_return;
    std::vector<VolumeFlow> m_design;
    std::vector<NodeIndex> m_header;
    std::vector<NodeIndex> m_headerReturn;
    std::vector<LinkIndex> m_circuitLink;
    std::vector<std::optional<LinkIndex>> m_valveLink;
    std::vector<std::optional<LinkIndex>> m_runLink;
    std::vector<std::optional<LinkIndex>> m_returnRunLink;
    std::vector<std::optional<LinkIndex>> m_lastReturnLink;
    std::vector<LinkIndex> m_pumpLinks;
    std::vector<std::size_t> m_pumps;
    std::vector<base::Fault> m_faults;
};

}  // namespace

BuiltModel hydraulicModel(const project::Project& project, const LoopState& state,
                          const Resistances& resistances) {
    return ModelBuilder(project, state, resistances).build();
}

PumpsTogether pumpsTogether(const HydraulicModel& model, const hydraulics::Solution& solution) {
    PumpsTogether together;
    for (const LinkIndex link : model.pumpLinks) {
        const VolumeFlow flow = solution.flow(link);
        const PressureDifference rise = -solution.drop(model.network, link).value_or(PressureDifference());
        together.flow = model.arePumpsInSeries ? flow : together.flow + flow;
        together.rise = model.arePumpsInSeries ? together.rise + rise : rise;
    }
    return together;
}

LoopState stateOfLastRound(const project::Project& project) {
    LoopState state;
    const project::Round* round = project.lastRound();
    for (const Branch& branch : project.branches()) {
        const auto setting =
            round != nullptr ? standingSetting(project, round->id, branch.id) : branch.setting;
        if (setting) {
            state.settings[branch.id] = quantity::Setting::si(setting->value());
        }
    }
    const std::vector<std::size_t> rounds = project.roundsByNumber();
    for (auto at = rounds.rbegin(); at != rounds.rend(); ++at) {
        const auto& indices = project.pumpReadingsOf(project.rounds()[*at].id);
        for (auto index = indices.rbegin(); index != indices.rend(); ++index) {
            const project::PumpReading& reading = project.pumpReadings()[*index];
            const project::Pump* pump = project.pumps().find(reading.pump);
            if (reading.status == project::ReadingStatus::Standing && detail::isDuty(reading.point) &&
                reading.speed && pump != nullptr && pump->speed && pump->speed->value.si() > 0) {
                state.speedFraction = reading.speed->value / pump->speed->value;
                return state;
            }
        }
    }
    return state;
}

}  // namespace ww::balancing
