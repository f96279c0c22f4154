#include "core/balancing/detail/shifted_rounds.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/balancing/detail/round_order.h"
#include "core/balancing/detail/wording.h"
#include "core/balancing/learning/learn_forms.h"
#include "core/estimation/learn.h"
#include "core/hydraulics/solve.h"

namespace ww::balancing::detail {

namespace {

using project::Project;

/// A tenth of dp is a twentieth of flow or of speed: less is not told from what else wanders between two days
/// (common practice, no source).
constexpr double kLeastShift = 0.1;
/// Readings that lie within this of the usual ratio, and the part of all that must (likewise).
constexpr double kSameRatio = 0.1;
constexpr double kNearlyAll = 0.8;
constexpr std::size_t kFewest = 3;
constexpr double kSignificant = 4;

/// Branches read in a round, with flow or dp.
std::size_t branchesReadIn(const LoopLearning& loop, std::size_t round) {
    std::set<std::size_t> read;
    for (std::size_t i = 0; i < loop.sources.size(); ++i) {
        if (loop.sources[i].round == round && loop.sources[i].branch &&
            loop.learning.observations[i].hasWeight()) {
            read.insert(*loop.sources[i].branch);
        }
    }
    return read.size();
}

/// ln of what was read over what the loop makes without the round's own factor, for each dp of the round; of
/// a flow twice that, as a dp goes with its square.
std::vector<double> shiftsOf(const LoopLearning& loop, const estimation::Learned& fit,
                             const RoundHead& head) {
    std::vector<double> lnFactors = fit.lnFactorOfUnknowns();
    lnFactors[head.unknown] = 0;
    std::vector<double> shifts;
    for (std::size_t caseIndex = 0; caseIndex < loop.learning.cases.size(); ++caseIndex) {
        std::vector<std::size_t> observations;
        for (std::size_t i = 0; i < loop.sources.size(); ++i) {
            const estimation::Observation& observation = loop.learning.observations[i];
            if (observation.caseIndex == caseIndex && loop.sources[i].round == head.round &&
                loop.sources[i].branch && !loop.sources[i].isClosedValve && observation.hasWeight()) {
                observations.push_back(i);
            }
        }
        if (observations.empty()) {
            continue;
        }
        const auto network = estimation::learnedNetwork(loop.learning, caseIndex, lnFactors);
        const auto solution = hydraulics::solve(network);
        for (const std::size_t i : observations) {
            const estimation::Observation& observation = loop.learning.observations[i];
            const bool isFlow = observation.what == estimation::Observed::Flow;
            const auto drop = solution.drop(network, observation.link);
            const double expected = isFlow ? std::abs(solution.flow(observation.link).si())
                                    : drop ? std::abs(drop->si())
                                           : 0;
            if (expected > 0) {
                shifts.push_back((isFlow ? 2 : 1) * (*observation.lnValueRatio() - std::log(expected)));
            }
        }
    }
    return shifts;
}

/// The ratio that nearly all lie by, as a logarithm; nothing where they do not agree or it is too small.
std::optional<double> commonShift(std::vector<double> shifts) {
    if (shifts.size() < kFewest) {
        return std::nullopt;
    }
    const auto middle = shifts.begin() + static_cast<std::ptrdiff_t>(shifts.size() / 2);
    std::nth_element(shifts.begin(), middle, shifts.end());
    const double usual = *middle;
    const auto agreeing = std::count_if(shifts.begin(), shifts.end(),
                                        [&](double shift) { return std::abs(shift - usual) <= kSameRatio; });
    const bool isNearlyAll = static_cast<double>(agreeing) >= kNearlyAll * static_cast<double>(shifts.size());
    return isNearlyAll && std::abs(usual) > kLeastShift ? std::optional(usual) : std::nullopt;
}

/// The first round that was read, which the others are held against.
std::optional<std::size_t> firstRead(const Project& project, const LoopLearning& loop) {
    for (const std::size_t round : project.roundsByNumber()) {
        if (branchesReadIn(loop, round) >= kFewest) {
            return round;
        }
    }
    return std::nullopt;
}

}  // namespace

std::vector<std::size_t> shiftedRounds(const Project& project, const History& history,
                                       const LearnLoopOptions& options, LoopStates& states) {
    const LoopLearning plain = loopLearning(project, history, options, states);
    const auto first = firstRead(project, plain);
    std::vector<std::size_t> asked;
    for (const std::size_t round : project.roundsByNumber()) {
        if (first && round != *first && branchesReadIn(plain, round) >= kFewest) {
            asked.push_back(round);
        }
    }
    if (asked.empty()) {
        return {};
    }
    LearningScope scope;
    scope.ownHead = asked;
    const LoopLearning loop = loopLearning(project, history, options, states, scope);
    // From the priors: a fit in which the shift is not known is no place to begin.
    const auto found = estimation::learn(loop.learning, fitOptions(options, true));
    if (!found.learned) {
        return {};
    }
    std::vector<std::size_t> shifted;
    for (const RoundHead& head : loop.roundHeads) {
        const estimation::LearnedUnknown& own = found.learned->unknowns[head.unknown];
        if (std::abs(own.lnFactor) > std::max(kLeastShift, kSignificant * own.lnFactorSd) &&
            commonShift(shiftsOf(loop, *found.learned, head))) {
            shifted.push_back(head.round);
        }
    }
    return shifted;
}

std::vector<ShiftedRound> toldShifts(const Project& project, const LoopLearning& loop,
                                     const estimation::Learned& fit) {
    const auto first = firstRead(project, loop);
    std::vector<ShiftedRound> told;
    for (const RoundHead& head : loop.roundHeads) {
        const auto shift = commonShift(shiftsOf(loop, fit, head));
        if (!shift || !first) {
            continue;
        }
        ShiftedRound made;
        made.round = head.round;
        made.dpRatio = Ratio::si(std::exp(*shift));
        // Flow goes with speed and head with its square on one system curve (affinity laws: common practice).
        made.flowRatio = Ratio::si(std::exp(*shift / 2));
        const auto apart = [](Ratio ratio) {
            return base::Decimal::fromNumber(100 * std::abs(ratio.si() - 1), 0).text();
        };
        const bool isLower = *shift < 0;
        made.why = {isLower ? &kModelRoundLower : &kModelRoundHigher,
                    "",
                    {std::to_string(project.rounds()[head.round].number), apart(made.dpRatio),
                     std::to_string(project.rounds()[*first].number), apart(made.flowRatio)}};
        told.push_back(std::move(made));
    }
    return told;
}

}  // namespace ww::balancing::detail
