#include "core/balancing/detail/round_order.h"

#include <algorithm>
#include <cmath>

#include "core/estimation/learn.h"
#include "core/hydraulics/solve.h"

namespace ww::balancing::detail {

namespace {

using project::Project;

/// Sum of squared residuals of a round's readings against unknowns learned elsewhere; a gross error counts
/// little more than a large one. What all readings lie off alike is left out where it is more than a tenth: a
/// round read at another speed of the pumps says as much of its order (shifted_rounds.h).
double misfitOf(const LoopLearning& loop, const std::vector<double>& lnFactors, std::size_t round) {
    constexpr double kModelSd = 0.03;
    constexpr double kMost = 25;
    constexpr double kLeastShift = 0.1;
    struct Residual {
        double lnRatio = 0;
        double sd = 1;
    };
    std::vector<Residual> residuals;
    double sum = 0;
    for (std::size_t caseIndex = 0; caseIndex < loop.learning.cases.size(); ++caseIndex) {
        std::vector<hydraulics::LinkIndex> links;
        std::vector<std::size_t> observations;
        for (std::size_t i = 0; i < loop.sources.size(); ++i) {
            const estimation::Observation& observation = loop.learning.observations[i];
            if (observation.caseIndex == caseIndex && loop.sources[i].round == round &&
                observation.what != estimation::Observed::Flow && observation.hasWeight()) {
                links.push_back(observation.link);
                observations.push_back(i);
            }
        }
        if (links.empty()) {
            continue;
        }
        const auto network = estimation::learnedNetwork(loop.learning, caseIndex, lnFactors);
        const auto solution = hydraulics::solve(network);
        for (std::size_t i = 0; i < links.size(); ++i) {
            const auto drop = solution.drop(network, links[i]);
            const estimation::Observation& observation = loop.learning.observations[observations[i]];
            const double size = drop ? std::abs(drop->si()) : 0;
            if (size > 0) {
                residuals.push_back({*observation.lnValueRatio() - std::log(size),
                                     std::hypot(observation.relativeSd, kModelSd)});
            } else {
                sum += kMost;
            }
        }
    }
    double shift = 0;
    if (!residuals.empty()) {
        const auto middle = residuals.begin() + static_cast<std::ptrdiff_t>(residuals.size() / 2);
        std::nth_element(
            residuals.begin(), middle, residuals.end(),
            [](const Residual& one, const Residual& other) { return one.lnRatio < other.lnRatio; });
        shift = std::abs(middle->lnRatio) > kLeastShift ? middle->lnRatio : 0;
    }
    for (const Residual& residual : residuals) {
        const double score = (residual.lnRatio - shift) / residual.sd;
        sum += std::min(kMost, score * score);
    }
    return sum;
}

/// Decides for each round whether its valves and pumps were set before it was read.
class OrderFinder {
  public:
    OrderFinder(const Project& project, const LearnLoopOptions& options, LoopStates& states)
        : m_project(project), m_options(options), m_states(states) {
        for (const project::Round& round : project.rounds()) {
            m_orders.push_back(usualOrder(round));
        }
    }

    std::vector<RoundOrder> find() {
        std::optional<std::size_t> before;
        for (const std::size_t round : m_project.roundsByNumber()) {
            if (!isReadValveByValve(m_project, m_project.rounds()[round]) && differs(round)) {
                decide(round, before);
            }
            if (!m_project.readingsOf(m_project.rounds()[round].id).empty()) {
                before = round;
            }
        }
        return m_orders;
    }

  private:
    History with(std::size_t round, RoundOrder order) const {
        std::vector<RoundOrder> orders = m_orders;
        orders[round] = order;
        return history(m_project, orders);
    }

    /// Whether the two orders put a reading of the round in different states: something was moved after it.
    bool differs(std::size_t round) const {
        const History asRead = with(round, RoundOrder::AsRead);
        std::size_t movesAtEnd = 0;
        for (std::size_t i = 0; i < asRead.moves.size(); ++i) {
            movesAtEnd = asRead.moves[i].round == round ? i + 1 : movesAtEnd;
        }
        return std::any_of(asRead.readings.begin(), asRead.readings.end(), [&](const TakenReading& taken) {
            return taken.round == round && taken.movesBefore < movesAtEnd;
        });
    }

    void decide(std::size_t round, std::optional<std::size_t> before) {
        if (!before) {
            // Nothing to compare with: the first round that reads a loop finds its valves where they stand.
            m_orders[round] = RoundOrder::SetBefore;
            return;
        }
        const std::vector<double>* lnFactors = fitUpTo(*before);
        if (lnFactors == nullptr) {
            return;
        }
        const std::unordered_set<Id> judged = sampleOf(round);
        LearningScope scope;
        scope.lastRound = round;
        scope.onlyThese = &judged;
        const auto misfit = [&](RoundOrder order) {
            const LoopLearning loop = loopLearning(m_project, with(round, order), m_options, m_states, scope);
            return misfitOf(loop, *lnFactors, round);
        };
        m_orders[round] = misfit(RoundOrder::SetBefore) < misfit(RoundOrder::AsRead) ? RoundOrder::SetBefore
                                                                                     : RoundOrder::AsRead;
    }

    /// Readings of the round that tell its order: all, or in a large loop, where each may be a state to
    /// solve, some spread evenly over it.
    std::unordered_set<Id> sampleOf(std::size_t round) const {
        constexpr std::size_t kMostWork = 500'000;
        constexpr std::size_t kLeast = 40;
        std::vector<Id> all;
        for (const TakenReading& taken : history(m_project, m_orders).readings) {
            if (taken.round == round) {
                all.push_back(taken.reading);
            }
        }
        const std::size_t count =
            std::min(all.size(), std::max(kLeast, kMostWork / m_project.branches().size()));
        std::unordered_set<Id> out;
        for (std::size_t i = 0; i < count; ++i) {
            out.insert(all[i * all.size() / count]);
        }
        return out;
    }

    /// The unknowns from the rounds before the first that is in question; made once.
    const std::vector<double>* fitUpTo(std::size_t round) {
        if (!m_isFitted) {
            m_isFitted = true;
            LearningScope scope;
            scope.lastRound = round;
            const LoopLearning loop =
                loopLearning(m_project, history(m_project, m_orders), m_options, m_states, scope);
            const auto result = estimation::learn(loop.learning, fitOptions(m_options, false));
            if (result.learned) {
                m_lnFactors = result.learned->lnFactorOfUnknowns();
            }
        }
        return m_lnFactors.empty() ? nullptr : &m_lnFactors;
    }

    const Project& m_project;
    const LearnLoopOptions& m_options;
    LoopStates& m_states;
    std::vector<RoundOrder> m_orders;
    bool m_isFitted = false;
    std::vector<double> m_lnFactors;
};

}  // namespace

estimation::LearnOptions fitOptions(const LearnLoopOptions& options, bool hasTableErrors) {
    estimation::LearnOptions out;
    out.hasTableErrors = hasTableErrors;
    out.stop = options.stop;
    return out;
}

std::vector<RoundOrder> findOrders(const Project& project, const LearnLoopOptions& options,
                                   LoopStates& states) {
    return OrderFinder(project, options, states).find();
}

}  // namespace ww::balancing::detail
