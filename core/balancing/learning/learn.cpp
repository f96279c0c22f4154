#include <algorithm>
#include <cmath>
#include <set>

#include "core/balancing/detail/doubtful.h"
#include "core/balancing/detail/round_order.h"
#include "core/balancing/detail/shifted_rounds.h"
#include "core/balancing/detail/states_left_out.h"
#include "core/balancing/detail/wording.h"
#include "core/balancing/learning/learn_forms.h"
#include "core/balancing/learning/learned_loop.h"
#include "core/estimation/learn.h"
#include "core/hydraulics/solve.h"

namespace ww::balancing {

namespace {

using detail::LoopFits;
using detail::LoopLearning;
using detail::LoopStates;
using estimation::LearnOutcome;
using project::Project;

/// The gross error search with the accounts of whatever place it names.
struct Search {
    estimation::GrossErrorResult result;
    detail::Hypotheses hypotheses;
};

/// From `start`, or from the priors where it is empty.
Search searched(const Project& project, const LearnLoopOptions& options, const History& history,
                const LoopLearning& loop, LoopStates& states, std::vector<double> start = {}) {
    Search out;
    estimation::LearnOptions fit = detail::fitOptions(options, true);
    fit.lnFactorStart = std::move(start);
    if (!options.findDoubtful) {
        estimation::LearnResult plain = estimation::learn(loop.learning, fit);
        out.result.faults = std::move(plain.faults);
        if (plain.learned) {
            out.result.finding.emplace(estimation::GrossErrorFinding{
                estimation::GrossErrorVerdict::Clean, std::move(*plain.learned), false, {}, {}, {}, {}});
        }
        return out;
    }
    out.result = estimation::findGrossError(loop.learning, fit, [&](std::size_t place) {
        out.hypotheses = detail::hypothesesOf(project, history, loop, states, place);
        return out.hypotheses.list;
    });
    return out;
}

/// The loop with a factor of its own for each round that is shifted as a whole; nothing where none is.
std::optional<LoopLearning> withShifts(const Project& project, const LearnLoopOptions& options,
                                       const History& history, LoopStates& states) {
    const std::vector<std::size_t> shifted = detail::shiftedRounds(project, history, options, states);
    detail::LearningScope scope;
    scope.ownHead = shifted;
    return shifted.empty() ? std::nullopt
                           : std::optional(detail::loopLearning(project, history, options, states, scope));
}

/// Where something does not fit, a shift of whole rounds is looked for before any reading is accused: with
/// one found the loop is made anew, and its search has few readings to doubt.
Search searchedWithShifts(const Project& project, const LearnLoopOptions& options, const History& history,
                          LoopLearning& loop, LoopStates& states) {
    const auto plain = options.findDoubtful
                           ? estimation::learn(loop.learning, detail::fitOptions(options, true)).learned
                           : std::nullopt;
    if (!plain) {
        return searched(project, options, history, loop, states);
    }
    const bool isMisfit = plain->misfit.isFound();
    auto shifted = isMisfit ? withShifts(project, options, history, states) : std::nullopt;
    if (shifted) {
        loop = std::move(*shifted);
    }
    Search search = searched(project, options, history, loop, states,
                             shifted ? std::vector<double>() : plain->lnFactorOfUnknowns());
    // A few readings of a short round stand out where all of a large loop together fit.
    const bool isDoubtful =
        search.result.finding && search.result.finding->verdict != estimation::GrossErrorVerdict::Clean;
    if (isMisfit || !isDoubtful || options.stop.stop_requested()) {
        return search;
    }
    shifted = withShifts(project, options, history, states);
    if (shifted) {
        Search again = searched(project, options, history, *shifted, states);
        if (again.result.finding) {
            loop = std::move(*shifted);
            return again;
        }
    }
    return search;
}

LearnedResistance learnedResistance(Resistance prior, const estimation::LearnedUnknown& unknown,
                                    double lnCommon, bool isFromDesign) {
    constexpr double kSeen = 0.7;
    LearnedResistance made;
    made.value = Resistance::si(prior.si() * std::exp(unknown.lnFactor + lnCommon));
    made.relativeSd = Ratio::si(unknown.lnFactorSd);
    made.isFromDesign = isFromDesign;
    made.isSeenByReadings = unknown.lnFactorSd < kSeen * unknown.lnFactorPriorSd;
    return made;
}

void fillBranches(const Project& project, const LoopLearning& loop, const estimation::Learned& fit,
                  LearnedLoop& out) {
    out.branches.resize(project.branches().size());
    const double lnCommon = loop.commonRun ? fit.unknowns[*loop.commonRun].lnFactor : 0;
    for (std::size_t i = 0; i < project.branches().size(); ++i) {
        const project::Branch& branch = project.branches()[i];
        const auto prior = loop.priors.find(branch.id);
        if (prior == loop.priors.end()) {
            continue;
        }
        BranchResistance resistance = prior->second;
        if (loop.branches[i].run) {
            const bool isDesign = branch.runLoss.has_value();
            out.branches[i].run = learnedResistance(*prior->second.run, fit.unknowns[*loop.branches[i].run],
                                                    isDesign ? lnCommon : 0, isDesign);
            resistance.run = out.branches[i].run->value;
        }
        if (loop.branches[i].circuit) {
            out.branches[i].circuit =
                learnedResistance(*prior->second.circuit, fit.unknowns[*loop.branches[i].circuit], 0,
                                  branch.circuitLoss.has_value());
            resistance.circuit = out.branches[i].circuit->value;
        }
        out.resistances[branch.id] = resistance;
    }
}

std::vector<ComparedReading> comparedReadings(const LoopLearning& loop, const estimation::Learned& fit) {
    std::vector<ComparedReading> out;
    for (std::size_t i = 0; i < loop.sources.size(); ++i) {
        const detail::ObservationSource& source = loop.sources[i];
        const estimation::LearnedReading& learned = fit.readings[i];
        const estimation::ObservedValue& value = loop.learning.observations[i].value;
        ComparedReading made;
        made.readings = source.readings;
        made.branch = source.branch;
        made.pump = source.pump;
        made.round = source.round;
        made.isClosedValve = source.isClosedValve;
        if (const auto* dp = std::get_if<PressureDifference>(&value)) {
            made.read = *dp;
            made.expected = std::get<PressureDifference>(learned.fitted);
        } else {
            made.flowRead = std::get<VolumeFlow>(value);
            made.flowExpected = std::get<VolumeFlow>(learned.fitted);
        }
        made.score = learned.score;
        made.redundancy = Ratio::si(learned.redundancyFraction);
        made.isLeftOut = learned.robustWeight == 0;
        made.canBeChecked = learned.canBeChecked();
        out.push_back(std::move(made));
    }
    return out;
}

/// Whether nothing verifies the fit: fewer than half of the branches read were read in two states.
bool isOneState(const LoopLearning& loop, std::size_t branchCount) {
    std::vector<std::optional<std::size_t>> firstCase(branchCount);
    std::vector<bool> hasTwo(branchCount, false);
    std::size_t read = 0;
    std::size_t twice = 0;
    for (std::size_t i = 0; i < loop.sources.size(); ++i) {
        const estimation::Observation& observation = loop.learning.observations[i];
        if (!loop.sources[i].branch || observation.what != estimation::Observed::Drop) {
            continue;
        }
        const std::size_t branch = *loop.sources[i].branch;
        if (!firstCase[branch]) {
            firstCase[branch] = observation.caseIndex;
            ++read;
        } else if (*firstCase[branch] != observation.caseIndex && !hasTwo[branch]) {
            hasTwo[branch] = true;
            ++twice;
        }
    }
    return 2 * twice < read;
}

/// A loop that could not be learned.
LearnedLoop without(LearnedLoop out, LoopLearnOutcome outcome, std::vector<base::Fault> faults) {
    out.outcome = outcome;
    out.faults.insert(out.faults.begin(), std::make_move_iterator(faults.begin()),
                      std::make_move_iterator(faults.end()));
    return out;
}

void tellDone(const LearnLoopOptions& options, double part) {
    if (options.tellDone) {
        options.tellDone(Ratio::si(part));
    }
}

/// The fit for settings: as the finding left the readings and the priors, valve tables trusted.
estimation::LearnResult fitTrusting(const LoopLearning& loop, const LearnLoopOptions& options,
                                    const estimation::GrossErrorFinding& finding) {
    estimation::LearnOptions fit = detail::fitOptions(options, false);
    fit.lnFactorLeastPriorSd = finding.isPriorWidened ? options.blankPrior.si() : 0;
    fit.lnFactorStart = finding.learned.lnFactorOfUnknowns();
    for (std::size_t i = 0; i < loop.learning.unknowns.size(); ++i) {
        const estimation::Unknown& unknown = loop.learning.unknowns[i];
        if (unknown.kind == estimation::UnknownKind::ValveTable) {
            fit.lnFactorStart[i] = unknown.lnFactorPrior;
        }
    }
    return estimation::learn(loop.learning, fit);
}

/// On standard deviations of shares: larger where one state alone was read, and where the fit misfits.
double shareSdFactor(const LearnedLoop& learned, const LearnLoopOptions& options,
                     const estimation::Misfit& misfit) {
    const double factor = learned.isFromOneState ? options.surveyOnlyFactor : 1;
    if (!learned.isMisfit || misfit.degreesOfFreedom == 0) {
        return factor;
    }
    return factor *
           std::max(1.0, std::sqrt(misfit.chiSquareScore / static_cast<double>(misfit.degreesOfFreedom)));
}

}  // namespace

LearnedLoop learn(const Project& project, const LearnLoopOptions& options) {
    LearnedLoop out;
    LoopStates states(project, detail::priorResistances(project));
    out.history = history(project);
    out.present = stateAfter(project, out.history, out.history.moves.size());
    std::set<std::size_t> rounds;
    for (const TakenReading& taken : out.history.readings) {
        rounds.insert(taken.round);
    }
    if (static_cast<double>(rounds.size() * rounds.size() * project.branches().size()) >
        detail::kMostLearned) {
        const std::vector<std::string> counts{std::to_string(rounds.size()),
                                              std::to_string(project.branches().size())};
        return without(std::move(out), LoopLearnOutcome::Impossible, {{&kLearnTooLarge, "", counts}});
    }
    const BuiltModel& open = states.openAt(out.history.speedFractionAtStart);
    if (!open.model) {
        return without(std::move(out), LoopLearnOutcome::Impossible, open.faults);
    }
    if (out.history.readings.empty()) {
        return without(std::move(out), LoopLearnOutcome::Impossible, {{&kLearnNoReadings, "", {}}});
    }
    const std::vector<RoundOrder> orders = detail::findOrders(project, options, states);
    tellDone(options, 0.1);
    out.history = history(project, orders);
    out.present = stateAfter(project, out.history, out.history.moves.size());

    LoopLearning loop = detail::loopLearning(project, out.history, options, states);
    tellDone(options, 0.2);
    out.faults = loop.faults;
    if (loop.learning.observations.empty()) {
        const bool isLeftOut =
            std::any_of(out.faults.begin(), out.faults.end(),
                        [](const base::Fault& fault) { return fault.is(kLearnTurnedLeftOut); });
        return without(
            std::move(out), LoopLearnOutcome::Impossible,
            isLeftOut ? std::vector<base::Fault>() : std::vector<base::Fault>{{&kLearnNoReadings, "", {}}});
    }
    Search search = searchedWithShifts(project, options, out.history, loop, states);
    if (!search.result.finding) {
        return without(std::move(out), LoopLearnOutcome::Impossible, std::move(search.result.faults));
    }
    estimation::GrossErrorFinding& finding = *search.result.finding;
    for (const std::size_t wrong : finding.wrong) {
        loop.learning.observations[wrong].isLeftOut = true;
    }
    tellDone(options, 0.8);
    estimation::LearnResult trusting = fitTrusting(loop, options, finding);
    tellDone(options, 1);
    if (!trusting.learned) {
        return without(std::move(out), LoopLearnOutcome::Impossible, std::move(trusting.faults));
    }
    const LearnOutcome one = trusting.learned->outcome;
    const LearnOutcome other = finding.learned.outcome;
    if (options.stop.stop_requested() || one == LearnOutcome::Stopped || other == LearnOutcome::Stopped) {
        return without(std::move(out), LoopLearnOutcome::Stopped, {{&kLearnStopped, "", {}}});
    }
    const bool isSettled = one == LearnOutcome::Converged && other == LearnOutcome::Converged;
    out.outcome = isSettled ? LoopLearnOutcome::Learned : LoopLearnOutcome::NotSettled;
    out.doubtful = detail::doubtfulReadings(project, loop, finding, search.hypotheses);
    fillBranches(project, loop, *trusting.learned, out);
    out.readings = comparedReadings(loop, finding.learned);
    out.shifted = detail::toldShifts(project, loop, finding.learned);
    double lnPump = trusting.learned->unknowns[*loop.pump].lnFactor;
    for (const detail::RoundHead& head : loop.roundHeads) {
        lnPump += head.round == loop.presentRound ? trusting.learned->unknowns[head.unknown].lnFactor : 0;
    }
    out.present.pumpCurveFactor = std::exp(lnPump);
    out.isFromOneState = isOneState(loop, project.branches().size());
    out.isPriorWidened = finding.isPriorWidened;
    out.misfitProbability = finding.learned.misfit.probability;
    out.isMisfit = finding.learned.misfit.isFound();
    if (project.tree().terminals().size() > detail::kMostWithPosterior) {
        trusting.learned->posterior = estimation::Posterior(nullptr);
        finding.learned.posterior = estimation::Posterior(nullptr);
    }
    const double sdFactor = shareSdFactor(out, options, finding.learned.misfit);
    out.fits = std::make_shared<const LoopFits>(
        LoopFits{std::move(loop), std::move(*trusting.learned), std::move(finding.learned), sdFactor});
    return out;
}

}  // namespace ww::balancing
