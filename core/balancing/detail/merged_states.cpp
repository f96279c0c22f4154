#include "core/balancing/detail/merged_states.h"

#include <algorithm>
#include <cmath>

#include "core/hydraulics/sensitivity.h"
#include "core/hydraulics/stepwise.h"

namespace ww::balancing::detail {

namespace {

using estimation::Observation;
using estimation::Observed;
using hydraulics::Element;
using hydraulics::LinkChange;
using project::Branch;
using project::Project;

bool isShutIn(const Project& project, const LoopState& state, const TakenReading& taken) {
    const Branch& branch = project.branches().at(project.readings().at(taken.reading).branch);
    const auto at = state.settings.find(branch.id);
    return at != state.settings.end() && isShutSetting(project, branch, at->second);
}

/// Walks through the moves of one round with the learned loop, and looks at each moved reading on the way.
class OffsetWalk {
  public:
    OffsetWalk(const Project& project, const History& history, LoopLearning& loop, LoopStates& states,
               const std::vector<double>& lnFactors)
        : m_project(project), m_history(history), m_loop(loop), m_states(states), m_lnFactors(lnFactors) {}

    /// The readings in order of their states, all of one round; the moves from the first of them to `end`.
    double run(const std::vector<std::size_t>& readings, const std::stop_token& stop) {
        std::size_t moves = m_loop.sources[readings.front()].movesBefore;
        m_state = stateAfter(m_project, m_history, moves);
        hydraulics::StepwiseLoop walked(networkNow());
        std::vector<double> made(readings.size());
        for (std::size_t i = 0; i < readings.size(); ++i) {
            while (moves < m_loop.sources[readings[i]].movesBefore) {
                turn(walked, m_history.moves[moves++]);
            }
            if (stop.stop_requested()) {
                return 0;
            }
            made[i] = lnMade(walked, m_loop.learning.observations[readings[i]]);
        }
        const std::size_t round = m_loop.sources[readings.front()].round;
        while (moves < m_history.moves.size() && m_history.moves[moves].round == round) {
            turn(walked, m_history.moves[moves++]);
        }
        double largest = 0;
        for (std::size_t i = 0; i < readings.size(); ++i) {
            Observation& observation = m_loop.learning.observations[readings[i]];
            const double offset = made[i] - lnMade(walked, observation);
            if (std::isfinite(offset)) {
                largest =
                    std::max(largest, std::abs(offset - observation.lnStateFactor) / observation.relativeSd);
                observation.lnStateFactor = offset;
            }
        }
        return largest;
    }

  private:
    hydraulics::Network networkNow() {
        const std::size_t added = m_loop.addCase(m_states, m_state);
        auto network = estimation::learnedNetwork(m_loop.learning, added, m_lnFactors);
        m_loop.dropLastCase();
        return network;
    }

    void turn(hydraulics::StepwiseLoop& walked, const Move& move) {
        if (!move.branch) {
            m_state.speedFraction = move.speedFractionTo;
            const auto network = networkNow();
            for (const hydraulics::LinkIndex link : m_loop.model->pumpLinks) {
                if (!network.isClosed(link)) {
                    walked.turn({link, network.element(link), false});
                }
            }
            return;
        }
        const Branch& branch = m_project.branches()[*move.branch];
        m_state.settings[branch.id] = *move.to;
        const auto& link = m_loop.model->valveLink[*move.branch];
        if (!link || isSelfActing(branch)) {
            return;
        }
        const curve::ValveCharacteristic& curve = *m_project.characteristicOf(branch);
        const bool isShut = isShutSetting(m_project, branch, *move.to);
        const auto coefficient =
            isShut ? quantity::FlowCoefficient() : curve.coefficient(std::max(*move.to, curve.lowest()));
        const Element element = Element::valve(coefficient, m_project.fluid().density());
        walked.turn({*link, isShut ? element : withTableError(element, *move.branch), isShut});
    }

    Element withTableError(const Element& element, std::size_t branch) const {
        const BranchUnknowns& unknowns = m_loop.branches[branch];
        double ln = 0;
        if (unknowns.tableBias) {
            ln += m_lnFactors[*unknowns.tableBias];
        }
        if (unknowns.tableTilt) {
            ln += m_lnFactors[*unknowns.tableTilt] * m_states.closedFraction(m_state, branch);
        }
        return ln == 0 ? element
                       : hydraulics::scaled(element, hydraulics::ParameterKind::Coefficient, std::exp(ln));
    }

    static double lnMade(hydraulics::StepwiseLoop& walked, const Observation& observation) {
        if (observation.what == Observed::Flow) {
            return std::log(std::abs(walked.flow(observation.link).si()));
        }
        const auto drop = walked.drop(observation.link);
        return drop ? std::log(std::abs(drop->si())) : std::log(0.0);
    }

    const Project& m_project;
    const History& m_history;
    LoopLearning& m_loop;
    LoopStates& m_states;
    const std::vector<double>& m_lnFactors;
    LoopState m_state;
};

}  // namespace

bool hasManyStates(const Project& project, const History& history, const LearnLoopOptions& options) {
    // Each state costs a solve and a dense row; each with many readings a block of the factor besides.
    constexpr double kMostSquared = 2e6;
    constexpr std::size_t kMany = 40;
    std::vector<std::size_t> readingsIn(history.moves.size() + 1, 0);
    std::size_t single = 0;
    for (const TakenReading& taken : history.readings) {
        single += taken.isShutForMoment ? 1 : 0;
        readingsIn[taken.movesBefore] += taken.isShutForMoment ? 0 : 1;
    }
    std::size_t large = 0;
    for (const std::size_t readings : readingsIn) {
        large += readings >= kMany ? 1 : 0;
        single += readings > 0 && readings < kMany ? 1 : 0;
    }
    const auto branches = static_cast<double>(project.branches().size());
    return static_cast<double>(single) * branches > options.mostStatesRatio ||
           static_cast<double>(large * large) * branches > kMostSquared;
}

MergedStates::MergedStates(const Project& project, const History& history)
    : m_endOf(project.rounds().size(), 0) {
    for (std::size_t i = 0; i < history.moves.size(); ++i) {
        m_endOf[history.moves[i].round] = i + 1;
    }
    LoopState state = stateAfter(project, history, 0);
    std::unordered_map<std::size_t, std::vector<const TakenReading*>> openUntil;
    std::vector<Id> own;
    std::size_t moves = 0;
    const auto goTo = [&](std::size_t end) {
        while (moves < end) {
            const Move& move = history.moves[moves++];
            if (move.branch) {
                state.settings[project.branches()[*move.branch].id] = *move.to;
            }
            for (const TakenReading* taken : openUntil[moves]) {
                if (isShutIn(project, state, *taken)) {
                    own.push_back(taken->reading);
                }
            }
            openUntil.erase(moves);
        }
    };
    for (const TakenReading& taken : history.readings) {
        goTo(taken.movesBefore);
        const bool isAtEnd = taken.movesBefore >= m_endOf[taken.round];
        if (taken.isShutForMoment || (!isAtEnd && isShutIn(project, state, taken))) {
            own.push_back(taken.reading);
        } else if (!isAtEnd) {
            openUntil[m_endOf[taken.round]].push_back(&taken);
        }
    }
    goTo(history.moves.size());
    for (std::size_t i = 0; i < own.size(); ++i) {
        (i + kMostOwnStates < own.size() ? m_passedOver : m_keepState).insert(own[i]);
    }
}

double setOffsets(const Project& project, const History& history, LoopLearning& loop, LoopStates& states,
                  const std::vector<double>& lnFactorOfUnknowns, const std::stop_token& stop) {
    std::map<std::size_t, std::vector<std::size_t>> movedOf;
    for (std::size_t i = 0; i < loop.sources.size(); ++i) {
        if (loop.sources[i].isMoved) {
            movedOf[loop.sources[i].round].push_back(i);
        }
    }
    double largest = 0;
    for (auto& [round, readings] : movedOf) {
        std::stable_sort(readings.begin(), readings.end(), [&](std::size_t one, std::size_t other) {
            return loop.sources[one].movesBefore < loop.sources[other].movesBefore;
        });
        OffsetWalk walk(project, history, loop, states, lnFactorOfUnknowns);
        largest = std::max(largest, walk.run(readings, stop));
    }
    return largest;
}

}  // namespace ww::balancing::detail
