#include <algorithm>
#include <cmath>

#include "core/balancing/detail/doubtful.h"
#include "core/balancing/detail/wording.h"
#include "core/balancing/learning/learn_forms.h"
#include "core/balancing/learning/learned_loop.h"
#include "core/estimation/learn.h"
#include "core/hydraulics/solve.h"

namespace ww::balancing {

namespace {

/// Readings times branches: the fit holds a number for each, several times over. More takes more than a
/// gigabyte and minutes.
constexpr double kMostLearned = 1.5e7;

using detail::LoopFits;
using detail::LoopLearning;
using detail::LoopStates;
using estimation::LearnOutcome;
using project::Project;

estimation::LearnOptions fitOptions(const LearnLoopOptions& options, bool hasTableErrors) {
    estimation::LearnOptions out;
    out.hasTableErrors = hasTableErrors;
    out.stop = options.stop;
    return out;
}

/// Sum of squared residuals of a round's readings against unknowns learned elsewhere; a gross error counts
/// little more than a large one.
double misfitOf(const LoopLearning& loop, const std::vector<double>& lnFactors, std::size_t round) {
    constexpr double kModelSd = 0.03;
    constexpr double kMost = 25;
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
            const double residual = size > 0 ? (*observation.lnValueRatio() - std::log(size)) /
                                                   std::hypot(observation.relativeSd, kModelSd)
                                             : std::sqrt(kMost);
            sum += std::min(kMost, residual * residual);
        }
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
        const auto misfit = [&](RoundOrder order) {
            const LoopLearning loop =
                detail::loopLearning(m_project, with(round, order), m_options, m_states, round);
            return misfitOf(loop, *lnFactors, round);
        };
        m_orders[round] = misfit(RoundOrder::SetBefore) < misfit(RoundOrder::AsRead) ? RoundOrder::SetBefore
                                                                                     : RoundOrder::AsRead;
    }

    /// The unknowns from the rounds before the first that is in question; made once.
    const std::vector<double>* fitUpTo(std::size_t round) {
        if (!m_isFitted) {
            m_isFitted = true;
            const LoopLearning loop =
                detail::loopLearning(m_project, history(m_project, m_orders), m_options, m_states, round);
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

/// The gross error search with the accounts of whatever place it names.
struct Search {
    estimation::GrossErrorResult result;
    detail::Hypotheses hypotheses;
};

Search search(const Project& project, const LearnLoopOptions& options, const History& history,
              const LoopLearning& loop, LoopStates& states) {
    Search out;
    const estimation::LearnOptions fit = fitOptions(options, true);
    if (!options.findDoubtful) {
        estimation::LearnResult plain = estimation::learn(loop.learning, fit);
        out.result.faults = std::move(plain.faults);
        if (plain.learned) {
            out.result.finding.emplace(estimation::GrossErrorFinding{
                estimation::GrossErrorVerdict::Clean, std::move(*plain.learned), false, {}, {}, {}, {}});
        }
        return out;
    }
    out.result = estimation::findGrossError(loop.learning, fit);
    if (out.result.finding && out.result.finding->place && !options.stop.stop_requested()) {
        out.hypotheses = detail::hypothesesOf(project, history, loop, states, *out.result.finding->place);
        if (!out.hypotheses.list.empty()) {
            out.result = estimation::findGrossError(loop.learning, fit, out.hypotheses.list);
        }
    }
    return out;
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

/// The fit for settings: as the finding left the readings and the priors, valve tables trusted.
estimation::LearnResult fitTrusting(const LoopLearning& loop, const LearnLoopOptions& options,
                                    const estimation::GrossErrorFinding& finding) {
    estimation::LearnOptions fit = fitOptions(options, false);
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
    if (static_cast<double>(out.history.readings.size()) * static_cast<double>(project.branches().size()) >
        kMostLearned) {
        const std::vector<std::string> counts{std::to_string(out.history.readings.size()),
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
    out.history = history(project, OrderFinder(project, options, states).find());
    out.present = stateAfter(project, out.history, out.history.moves.size());

    LoopLearning loop = detail::loopLearning(project, out.history, options, states);
    out.faults = loop.faults;
    if (loop.learning.observations.empty()) {
        return without(std::move(out), LoopLearnOutcome::Impossible, {{&kLearnNoReadings, "", {}}});
    }
    Search found = search(project, options, out.history, loop, states);
    if (!found.result.finding) {
        return without(std::move(out), LoopLearnOutcome::Impossible, std::move(found.result.faults));
    }
    estimation::GrossErrorFinding& finding = *found.result.finding;
    for (const std::size_t wrong : finding.wrong) {
        loop.learning.observations[wrong].isLeftOut = true;
    }
    estimation::LearnResult trusting = fitTrusting(loop, options, finding);
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
    out.doubtful = detail::doubtfulReadings(project, loop, finding, found.hypotheses);
    fillBranches(project, loop, *trusting.learned, out);
    out.readings = comparedReadings(loop, finding.learned);
    out.present.pumpCurveFactor = std::exp(trusting.learned->unknowns[*loop.pump].lnFactor);
    out.isFromOneState = isOneState(loop, project.branches().size());
    out.isPriorWidened = finding.isPriorWidened;
    out.misfitProbability = finding.learned.misfit.probability;
    out.isMisfit = finding.learned.misfit.isFound();
    const double sdFactor = shareSdFactor(out, options, finding.learned.misfit);
    out.fits = std::make_shared<const LoopFits>(
        LoopFits{std::move(loop), std::move(*trusting.learned), std::move(finding.learned), sdFactor});
    return out;
}

}  // namespace ww::balancing
