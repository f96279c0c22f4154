#include "core/estimation/detail/fit.h"

#include <algorithm>
#include <cmath>

#include "core/estimation/detail/chi_square.h"
#include "core/estimation/detail/linearisation.h"

namespace ww::estimation::detail {

namespace {

/// No factor changes by more than this in one step (ln): the linearisation says nothing so far away.
constexpr double kLongestStep = 1.5;
constexpr int kMostHalvings = 20;
/// Part of the fall that the linearisation promises which a step must bring (L. Armijo 1966).
constexpr double kLeastFall = 1e-4;
/// A relative fall of the sum of squares that is lost in its own rounding.
constexpr double kNoFall = 1e-13;
/// W. Baarda: an error is noticed with 80 % probability at the 0.1 % level.
constexpr double kLeastDetectableScore = 4.13;
/// Below this redundancy a residual is rounding.
constexpr double kLeastScoredRedundancy = 0.01;

double instrumentFactor(const Observation& observation, const std::vector<double>& lnFactors) {
    return observation.instrument ? lnFactors[*observation.instrument] : 0;
}

}  // namespace

Fit::Fit(const Learning& learning, const LearnOptions& options)
    : m_learning(learning),
      m_options(options),
      m_unknowns(learning, options),
      m_readingsOf(readingsByCase(learning)),
      m_sparseCases(sparseCases(m_readingsOf, options)) {}

std::optional<Fit::Point> Fit::solvedAt(std::vector<double> lnFactors, const Point* start) {
    Point point;
    point.lnFactors = std::move(lnFactors);
    point.states.resize(m_readingsOf.size());
    const CaseState* last = nullptr;
    for (std::size_t one = 0; one < m_readingsOf.size(); ++one) {
        if (m_readingsOf[one].empty()) {
            continue;
        }
        if (m_options.stop.stop_requested()) {
            return std::nullopt;
        }
        const CaseState* from = start != nullptr ? &*start->states[one] : last;
        point.states[one] =
            solvedCase(m_learning, one, point.lnFactors, from != nullptr ? &from->solution : nullptr);
        last = &*point.states[one];
    }
    evaluate(point);
    return point;
}

double Fit::robustWeight(std::size_t reading, double residual) const {
    const Observation& observation = m_learning.observations[reading];
    if (!observation.hasWeight()) {
        return 0;
    }
    const double score = std::abs(residual) / observation.relativeSd;
    const double limit = m_options.robustScore;
    return limit > 0 && score > limit ? limit / score : 1;
}

void Fit::evaluate(Point& point) const {
    point.residuals.assign(m_learning.observations.size(), 0);
    point.objective = 0;
    for (std::size_t reading = 0; reading < point.residuals.size(); ++reading) {
        const Observation& observation = m_learning.observations[reading];
        const auto observed = observation.lnValueRatio();
        const auto fitted = fittedSi(*point.states[observation.caseIndex], observation);
        if (!observed || !fitted) {
            continue;
        }
        point.residuals[reading] =
            *observed - logValue(*fitted, *observed).ln - instrumentFactor(observation, point.lnFactors);
        if (observation.hasWeight()) {
            const double score = std::abs(point.residuals[reading]) / observation.relativeSd;
            const double limit = m_options.robustScore;
            point.objective += limit > 0 && score > limit ? limit * (2 * score - limit) : score * score;
        }
    }
    for (const std::size_t unknown : m_unknowns.unknownOf) {
        const double moved =
            (point.lnFactors[unknown] - m_unknowns.priors[unknown]) / m_unknowns.priorSds[unknown];
        point.objective += moved * moved;
    }
}

std::shared_ptr<const Factorisation> Fit::linearised(const Point& point) const {
    std::vector<double> weights;
    for (std::size_t reading = 0; reading < point.residuals.size(); ++reading) {
        const Observation& observation = m_learning.observations[reading];
        const bool isKnown = fittedSi(*point.states[observation.caseIndex], observation).has_value();
        const double sd = observation.relativeSd;
        weights.push_back(isKnown ? robustWeight(reading, point.residuals[reading]) / (sd * sd) : 0);
    }
    return linearisation(m_learning, m_unknowns, point.states, m_sparseCases, weights);
}

Eigen::VectorXd Fit::stepFrom(const Point& point, const Factorisation& factorisation) const {
    Eigen::VectorXd byReading(static_cast<Eigen::Index>(point.residuals.size()));
    for (std::size_t reading = 0; reading < point.residuals.size(); ++reading) {
        const double sd = m_learning.observations[reading].relativeSd;
        byReading[static_cast<Eigen::Index>(reading)] =
            robustWeight(reading, point.residuals[reading]) / (sd * sd) * point.residuals[reading];
    }
    Eigen::VectorXd byUnknown(m_unknowns.count());
    for (Eigen::Index free = 0; free < m_unknowns.count(); ++free) {
        const std::size_t unknown = m_unknowns.unknownOf[static_cast<std::size_t>(free)];
        byUnknown[free] =
            -(point.lnFactors[unknown] - m_unknowns.priors[unknown]) / m_unknowns.priorSds[unknown];
    }
    return factorisation.step(byReading, byUnknown);
}

std::optional<Fit::Point> Fit::better(const Point& from, const Eigen::VectorXd& step) {
    double longest = 0;
    for (Eigen::Index free = 0; free < step.size(); ++free) {
        const std::size_t unknown = m_unknowns.unknownOf[static_cast<std::size_t>(free)];
        longest = std::max(longest, std::abs(step[free]) * m_unknowns.priorSds[unknown]);
    }
    double part = std::min(1.0, kLongestStep / std::max(longest, kLongestStep));
    for (int halving = 0; halving < kMostHalvings; ++halving, part /= 2) {
        std::vector<double> lnFactors = from.lnFactors;
        for (Eigen::Index free = 0; free < step.size(); ++free) {
            const std::size_t unknown = m_unknowns.unknownOf[static_cast<std::size_t>(free)];
            lnFactors[unknown] += part * step[free] * m_unknowns.priorSds[unknown];
        }
        auto point = solvedAt(std::move(lnFactors), &from);
        if (!point) {
            return std::nullopt;
        }
        // The linearised sum falls by about |step|^2 at least: its own prior term.
        if (point->objective <=
            from.objective - kLeastFall * part * step.squaredNorm() + kNoFall * (1 + from.objective)) {
            return point;
        }
    }
    return std::nullopt;
}

Learned Fit::run() {
    std::vector<double> start = m_options.lnFactorStart;
    if (start.empty()) {
        start = m_unknowns.priors;
    }
    for (std::size_t unknown = 0; unknown < start.size(); ++unknown) {
        if (m_unknowns.freeOf[unknown] == FreeUnknowns::kHeld) {
            start[unknown] = m_unknowns.priors[unknown];
        }
    }
    // Before the first solve nothing can be returned: it is not given up half-way.
    std::optional<Point> point = solvedAt(start, nullptr);
    LearnOptions unstopped = m_options;
    unstopped.stop = {};
    if (!point) {
        Fit whole(m_learning, unstopped);
        point = whole.solvedAt(start, nullptr);
        return result(*point, LearnOutcome::Stopped, 0, whole.linearised(*point));
    }
    LearnOutcome outcome = LearnOutcome::NotConverged;
    std::shared_ptr<const Factorisation> factorisation;
    int iteration = 0;
    while (iteration < m_options.maxIterations) {
        factorisation = linearised(*point);
        ++iteration;
        const Eigen::VectorXd step = stepFrom(*point, *factorisation);
        auto next = better(*point, step);
        const bool isSmall = step.size() == 0 || step.cwiseAbs().maxCoeff() <= m_options.stepToleranceRatio;
        if (next) {
            point = std::move(next);
        }
        if (isSmall) {
            outcome = LearnOutcome::Converged;
            break;
        }
        if (m_options.stop.stop_requested()) {
            outcome = LearnOutcome::Stopped;
            break;
        }
        if (!next) {
            break;
        }
    }
    return result(*point, outcome, iteration, std::move(factorisation));
}

Learned Fit::result(const Point& point, LearnOutcome outcome, int iterations,
                    std::shared_ptr<const Factorisation> factorisation) const {
    Learned out{outcome, iterations, {}, {}, {}, Posterior(factorisation)};
    const FlowSystem::Variances known = factorisation->variances(point.residuals.size());
    for (std::size_t unknown = 0; unknown < point.lnFactors.size(); ++unknown) {
        LearnedUnknown one;
        one.lnFactor = point.lnFactors[unknown];
        one.lnFactorPriorSd = m_unknowns.priorSds[unknown];
        const std::ptrdiff_t free = m_unknowns.freeOf[unknown];
        if (free != FreeUnknowns::kHeld) {
            const double variance = std::clamp(known.ofUnknowns[free], 0.0, 1.0);
            const double moved = (one.lnFactor - m_unknowns.priors[unknown]) / one.lnFactorPriorSd;
            one.lnFactorSd = std::sqrt(variance) * one.lnFactorPriorSd;
            one.movedScore = variance < 1 - 1e-6 ? moved / std::sqrt(1 - variance) : 0;
            out.misfit.chiSquareScore += moved * moved;
        }
        out.unknowns.push_back(one);
    }
    for (std::size_t reading = 0; reading < point.residuals.size(); ++reading) {
        const Observation& observation = m_learning.observations[reading];
        const double sd = observation.relativeSd;
        // A shut valve that is cut off from the pump on one side says nothing: as if it were left out.
        const auto made = fittedSi(*point.states[observation.caseIndex], observation);
        const bool hasWeight = observation.hasWeight() && made;
        const double fitted = made.value_or(0) * std::exp(instrumentFactor(observation, point.lnFactors));
        LearnedReading one;
        one.fitted = observation.what == Observed::Flow ? ObservedValue(VolumeFlow::si(fitted))
                                                        : ObservedValue(PressureDifference::si(fitted));
        one.relativeResidual = point.residuals[reading];
        one.robustWeight = made ? robustWeight(reading, one.relativeResidual) : 0;
        const double share = known.ofReadings[reading] / (sd * sd);
        one.redundancyFraction = !made       ? 0
                                 : hasWeight ? std::clamp(1 - one.robustWeight * share, 0.0, 1.0)
                                             : 1 / (1 + share);
        const double root = std::sqrt(std::max(one.redundancyFraction, 1e-12));
        one.relativeLeastDetectable = kLeastDetectableScore * sd / root;
        if (one.redundancyFraction >= kLeastScoredRedundancy) {
            // Of a left-out reading the residual is all its own, and its prediction's variance adds to it.
            one.score = hasWeight ? one.relativeResidual / (sd * root) : one.relativeResidual * root / sd;
        }
        if (hasWeight) {
            ++out.misfit.degreesOfFreedom;
            out.misfit.chiSquareScore += one.relativeResidual * one.relativeResidual / (sd * sd);
        }
        out.readings.push_back(one);
    }
    out.misfit.probability = chiSquareTailProbability(out.misfit.chiSquareScore, out.misfit.degreesOfFreedom);
    return out;
}

}  // namespace ww::estimation::detail
