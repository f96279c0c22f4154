#include <algorithm>
#include <cmath>
#include <set>

#include "core/balancing/detail/branch_flow.h"
#include "core/balancing/detail/doubts.h"
#include "core/balancing/detail/loop_fits.h"
#include "core/balancing/detail/pump_duty.h"
#include "core/balancing/detail/states_left_out.h"
#include "core/balancing/learning/learn_forms.h"

namespace ww::balancing::detail {

namespace {

using estimation::Observation;
using estimation::Observed;
using estimation::ScaledLink;
using estimation::Unknown;
using estimation::UnknownKind;
using hydraulics::LinkIndex;
using hydraulics::ParameterKind;
using project::Branch;
using project::Instrument;
using project::Project;
using project::Reading;

ScaledLink scaled(LinkIndex link) {
    return {link, ParameterKind::Drop, 1, {}};
}

/// Turns a job into a Learning, step by step.
class Builder {
  public:
    Builder(const Project& project, const History& history, const LearnLoopOptions& options,
            LoopStates& states, const HydraulicModel& model, const LearningScope& scope)
        : m_project(project), m_history(history), m_options(options), m_states(states), m_scope(scope) {
        m_out.model = std::make_shared<const HydraulicModel>(model);
        m_out.priors = states.priors();
        m_out.branches.resize(project.branches().size());
        if (scope.onlyThese == nullptr) {
            m_leftOut = readingsLeftOut(project, history, options, scope.lastRound);
        }
    }

    LoopLearning build() {
        addResistances();
        addTables();
        addInstruments();
        if (!m_leftOut.empty()) {
            m_out.faults.push_back({&kLearnTurnedLeftOut, "", {std::to_string(m_leftOut.size())}});
        }
        walk();
        addRoundHeads();
        return std::move(m_out);
    }

  private:
    estimation::Learning& learning() { return m_out.learning; }
    std::size_t add(Unknown unknown) {
        learning().unknowns.push_back(std::move(unknown));
        return learning().unknowns.size() - 1;
    }

    void addResistances() {
        Unknown common{UnknownKind::Common, 0, m_options.commonRunPrior.si(), {}};
        const project::BranchTree& tree = m_project.tree();
        for (std::size_t i = 0; i < m_project.branches().size(); ++i) {
            const Branch& branch = m_project.branches()[i];
            const auto prior = m_out.priors.find(branch.id);
            const bool hasCircuit = prior != m_out.priors.end() && prior->second.circuit;
            std::vector<ScaledLink> runs = runLinks(tree, i);
            if (!runs.empty()) {
                if (branch.runLoss) {
                    common.links.insert(common.links.end(), runs.begin(), runs.end());
                }
                const double sd = (branch.runLoss ? m_options.runPrior : m_options.blankPrior).si();
                m_out.branches[i].run = add({UnknownKind::Run, 0, sd, std::move(runs)});
            }
            if (hasCircuit) {
                const double sd = (branch.circuitLoss ? m_options.circuitPrior : m_options.blankPrior).si();
                m_out.branches[i].circuit =
                    add({UnknownKind::Circuit, 0, sd, {scaled(m_out.model->circuitLink[i])}});
            }
        }
        constexpr std::size_t kFewestForCommon = 2;
        if (common.links.size() >= kFewestForCommon) {
            m_out.commonRun = add(std::move(common));
        }
        Unknown pump{UnknownKind::Pump, 0, m_options.pumpPrior.si(), {}};
        for (const LinkIndex link : m_out.model->pumpLinks) {
            pump.links.push_back(scaled(link));
        }
        m_out.pump = add(std::move(pump));
    }

    /// The factor of a round holds in its cases alone: each case is of one round then (caseOf).
    void addRoundHeads() {
        constexpr double kNothingKnownSd = 0.8;
        for (const auto* taken : {&m_history.pumpReadings, &m_history.readings}) {
            if (!taken->empty()) {
                m_out.presentRound = taken->back().round;
            }
        }
        for (const std::size_t round : m_scope.ownHead) {
            std::vector<double> weights(learning().cases.size(), 0.0);
            for (std::size_t i = 0; i < m_out.sources.size(); ++i) {
                if (m_out.sources[i].round == round) {
                    weights[learning().observations[i].caseIndex] = 1;
                }
            }
            Unknown head{UnknownKind::Pump, 0, kNothingKnownSd, {}};
            for (const LinkIndex link : m_out.model->pumpLinks) {
                head.links.push_back(scaled(link));
                head.links.back().weightByCase = weights;
            }
            m_out.roundHeads.push_back({round, add(std::move(head))});
        }
    }

    std::vector<ScaledLink> runLinks(const project::BranchTree& tree, std::size_t branch) const {
        std::vector<ScaledLink> links;
        if (m_out.model->runLink[branch]) {
            links.push_back(scaled(*m_out.model->runLink[branch]));
        }
        if (m_out.model->returnRunLink[branch]) {
            links.push_back(scaled(*m_out.model->returnRunLink[branch]));
        }
        const std::size_t parent = tree.parent(branch);
        if (parent != project::BranchTree::kNone && m_out.model->lastReturnLink[parent] &&
            tree.children(parent).front() == branch) {
            links.push_back(scaled(*m_out.model->lastReturnLink[parent]));
        }
        return links;
    }

    void addTables() {
        for (std::size_t i = 0; i < m_project.branches().size(); ++i) {
            const Branch& branch = m_project.branches()[i];
            if (!m_out.model->valveLink[i] || isSelfActing(branch) ||
                m_project.characteristicOf(branch) == nullptr) {
                continue;
            }
            const project::ValveModel* valve = m_project.valves().find(*branch.valve);
            const Ratio bias = valve->accuracy ? valve->accuracy->value : m_options.tableBias;
            const Ratio tilt = valve->accuracyShut ? valve->accuracyShut->value : m_options.tableTilt;
            const LinkIndex link = *m_out.model->valveLink[i];
            m_out.branches[i].tableBias =
                add({UnknownKind::ValveTable, 0, bias.si(), {{link, ParameterKind::Coefficient, 1, {}}}});
            m_out.branches[i].tableTilt =
                add({UnknownKind::ValveTable, 0, tilt.si(), {{link, ParameterKind::Coefficient, 1, {}}}});
        }
    }

    /// With two instruments or more for dp, each has a factor of its own: readings of different instruments
    /// then need not agree better than these do. One alone is the measure of all shares.
    void addInstruments() {
        std::set<Id> used;
        for (const TakenReading& taken : m_history.readings) {
            const Reading& reading = m_project.readings().at(taken.reading);
            if (reading.dp && reading.instrument && m_project.instruments().contains(*reading.instrument)) {
                used.insert(*reading.instrument);
            }
        }
        if (used.size() < 2) {
            return;
        }
        for (const Instrument& instrument : m_project.instruments()) {
            if (used.contains(instrument.id)) {
                m_instruments[instrument.id] =
                    add({UnknownKind::Instrument, 0, accuracy(&instrument) * std::sqrt(0.5), {}});
            }
        }
    }

    double accuracy(const Instrument* instrument) const {
        return instrument != nullptr && instrument->accuracy ? instrument->accuracy->value.si()
                                                             : m_options.meterAccuracy.si();
    }

    const Instrument* instrumentOf(const std::optional<Id>& id) const {
        return id ? m_project.instruments().find(*id) : nullptr;
    }

    bool isWanted(const TakenReading& taken) const {
        const auto numberOf = [&](std::size_t round) { return m_project.rounds()[round].number; };
        return (!m_scope.lastRound || numberOf(taken.round) <= numberOf(*m_scope.lastRound)) &&
               !m_leftOut.contains(taken.reading);
    }
    bool isWantedOfBranch(const TakenReading& taken) const {
        return isWanted(taken) &&
               (m_scope.onlyThese == nullptr || m_scope.onlyThese->contains(taken.reading));
    }

    /// Goes through the job, state by state.
    void walk() {
        LoopState state = stateAfter(m_project, m_history, 0);
        std::size_t moves = 0;
        auto pump = m_history.pumpReadings.begin();
        auto branch = m_history.readings.begin();
        while (true) {
            m_case.reset();
            m_madeIn.clear();
            const auto inState = [&](const auto& at, const auto& end) {
                return at != end && at->movesBefore == moves;
            };
            for (; inState(pump, m_history.pumpReadings.end()); ++pump) {
                if (pump->isStateKnown && isWanted(*pump)) {
                    takePump(state, *pump);
                }
            }
            for (; inState(branch, m_history.readings.end()); ++branch) {
                if (isWantedOfBranch(*branch)) {
                    takeReading(state, *branch);
                }
            }
            if (moves == m_history.moves.size()) {
                return;
            }
            carryOut(m_project, m_history.moves[moves++], state);
        }
    }

    /// The case of the state, made when something was read in it.
    std::size_t caseOf(const LoopState& state, std::size_t round) {
        if (!m_case || (!m_scope.ownHead.empty() && m_caseRound != round)) {
            m_case = m_out.addCase(m_states, state);
            m_caseRound = round;
        }
        return *m_case;
    }

    /// The state with one valve shut for a moment.
    std::size_t shutCaseOf(LoopState state, const Branch& branch) {
        state.closed.push_back(branch.id);
        return m_out.addCase(m_states, state);
    }

    void addObservation(Observation made, ObservationSource source) {
        m_madeIn[made.link.value].push_back(learning().observations.size());
        learning().observations.push_back(std::move(made));
        m_out.sources.push_back(std::move(source));
    }

    double relativeSd(const quantity::Measured<PressureDifference>& dp, const Instrument* instrument) const {
        const PressureDifference u = dpUncertainty(dp, dp.value, instrument, m_project.fluid().density());
        const double stated =
            instrument != nullptr && instrument->accuracy ? 0 : m_options.meterAccuracy.si();
        return std::hypot(u.si() / std::abs(dp.value.si()), stated, m_options.unsteadiness.si());
    }

    void takeReading(const LoopState& state, const TakenReading& taken) {
        const Reading& reading = m_project.readings().at(taken.reading);
        if (reading.isDoubtful || reading.cannotBeRead || state.speedFraction <= 0) {
            return;
        }
        const std::size_t index = m_project.branches().indexOf(reading.branch);
        const Branch& branch = m_project.branches()[index];
        ObservationSource source{{reading.id}, index, std::nullopt, taken.round, false};
        const Instrument* instrument = instrumentOf(reading.instrument);
        if (reading.flow && !taken.isShutForMoment && reading.flow->value.si() > 0) {
            Observation made;
            made.caseIndex = caseOf(state, taken.round);
            made.link = m_out.model->circuitLink[index];
            made.what = Observed::Flow;
            made.value = reading.flow->value;
            const double place = VolumeFlow::from(reading.flow->digits.lastPlace(), reading.flow->unit) /
                                 reading.flow->value / std::sqrt(12.0);
            made.relativeSd = std::hypot(accuracy(instrument), place, m_options.unsteadiness.si());
            made.place = index;
            if (!learning().cases[made.caseIndex].isClosed(made.link)) {
                addObservation(std::move(made), source);
            }
        }
        if (!reading.dp || !m_out.model->valveLink[index] || reading.dp->value.si() == 0) {
            return;
        }
        if (reading.reason.empty() && isAboveRange(instrument, reading.dp->value)) {
            m_out.faults.push_back({&kLearnAboveRange, branch.tag, {reading.dp->text(), instrument->tag}});
            return;
        }
        if (!isSelfActing(branch) && !taken.isShutForMoment && isOffTable(branch, reading)) {
            m_out.faults.push_back({&kLearnSettingOutside, branch.tag, {reading.setting->text()}});
            return;
        }
        Observation made;
        made.caseIndex = taken.isShutForMoment ? shutCaseOf(state, branch) : caseOf(state, taken.round);
        made.link = *m_out.model->valveLink[index];
        source.isClosedValve = learning().cases[made.caseIndex].isClosed(made.link);
        made.what = source.isClosedValve ? Observed::AvailableDrop : Observed::Drop;
        made.value = reading.dp->value;
        made.relativeSd = relativeSd(*reading.dp, instrument);
        made.place = index;
        if (const auto known =
                reading.instrument ? m_instruments.find(*reading.instrument) : m_instruments.end();
            known != m_instruments.end()) {
            made.instrument = known->second;
            made.relativeSd = std::max(made.relativeSd * std::sqrt(0.5), m_options.unsteadiness.si());
        }
        if (!joinRepeat(made, source)) {
            addObservation(std::move(made), std::move(source));
        }
    }

    /// A dp read again in the same state with the same instrument counts with the one before, by their mean.
    bool joinRepeat(const Observation& made, const ObservationSource& source) {
        for (const std::size_t i : m_madeIn[made.link.value]) {
            Observation& before = learning().observations[i];
            if (before.what != made.what || before.instrument != made.instrument ||
                m_out.sources[i].round != source.round) {
                continue;
            }
            const auto count = static_cast<double>(m_out.sources[i].readings.size());
            const auto mean = (std::get<PressureDifference>(before.value) * count +
                               std::get<PressureDifference>(made.value)) /
                              (count + 1);
            before.value = mean;
            before.relativeSd *= std::sqrt(count / (count + 1));
            m_out.sources[i].readings.push_back(source.readings.front());
            return true;
        }
        return false;
    }

    bool isOffTable(const Branch& branch, const Reading& reading) const {
        const curve::ValveCharacteristic* curve = m_project.characteristicOf(branch);
        return reading.setting && curve != nullptr && reading.setting->value() != 0 &&
               !curve->covers(Setting::si(reading.setting->value()));
    }

    void takePump(const LoopState& state, const TakenReading& taken) {
        const project::PumpReading& reading = m_project.pumpReadings().at(taken.reading);
        const std::size_t index = m_project.pumps().indexOf(reading.pump);
        const auto at = std::find(m_out.model->pumps.begin(), m_out.model->pumps.end(), index);
        if (at == m_out.model->pumps.end() || state.speedFraction <= 0) {
            return;
        }
        const LinkIndex link =
            m_out.model->pumpLinks[static_cast<std::size_t>(at - m_out.model->pumps.begin())];
        const ObservationSource source{{reading.id}, std::nullopt, index, taken.round, false};
        const std::size_t place = m_project.branches().size() + index;
        if (reading.flow && reading.flow->value.si() > 0) {
            Observation made;
            made.caseIndex = caseOf(state, taken.round);
            made.link = link;
            made.what = Observed::Flow;
            made.value = reading.flow->value;
            made.relativeSd = std::hypot(m_options.meterAccuracy.si(), m_options.unsteadiness.si());
            made.place = place;
            addObservation(std::move(made), source);
        }
        const auto rise = riseOf(m_project, reading);
        if (!rise || rise->value.si() <= 0) {
            return;
        }
        Observation made;
        made.caseIndex = caseOf(state, taken.round);
        made.link = link;
        made.what = Observed::Rise;
        made.value = rise->value;
        made.relativeSd = std::hypot(rise->uncertainty / rise->value, m_options.unsteadiness.si());
        made.place = place;
        addObservation(std::move(made), source);
    }

    const Project& m_project;
    const History& m_history;
    const LearnLoopOptions& m_options;
    LoopStates& m_states;
    LoopLearning m_out;
    std::unordered_map<Id, std::size_t> m_instruments;
    std::optional<std::size_t> m_case;
    std::size_t m_caseRound = 0;
    const LearningScope& m_scope;
    std::unordered_map<std::uint32_t, std::vector<std::size_t>> m_madeIn;  ///< by link, in the state
    std::unordered_set<Id> m_leftOut;
};

}  // namespace

LoopLearning loopLearning(const Project& project, const History& history, const LearnLoopOptions& options,
                          LoopStates& states, const LearningScope& scope) {
    const BuiltModel& open = states.openAt(history.speedFractionAtStart);
    if (!open.model) {
        LoopLearning nothing;
        nothing.faults = open.faults;
        return nothing;
    }
    return Builder(project, history, options, states, *open.model, scope).build();
}

}  // namespace ww::balancing::detail
