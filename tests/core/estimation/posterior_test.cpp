// Uncertainties after a fit: what further readings bring, what cannot be told apart, instruments that are
// off.
#include "core/estimation/posterior.h"

#include <gtest/gtest.h>

#include <cmath>
#include <thread>

#include "core/estimation/detail/chi_square.h"
#include "core/estimation/forecast.h"
#include "core/estimation/learn.h"
#include "tests/support/hidden_loop.h"

namespace ww::estimation {
namespace {

using support::HiddenLoop;
using support::HiddenLoopOptions;

Learned fitOf(const Learning& learning, const LearnOptions& options = {}) {
    auto result = learn(learning, options);
    EXPECT_TRUE(result.faults.empty());
    return *std::move(result.learned);
}

TEST(Posterior, gainIsWhatTakingTheReadingBrings) {
    HiddenLoop loop;
    loop.readRound(loop.addOpenCase());
    // Of the shares in a state not yet read: in the one read, its own readings say nearly all.
    const std::size_t next = loop.addThrottledCase();
    const std::size_t terminal = 3;
    const std::size_t shut = loop.addShutCase(terminal);
    LearnOptions tight;
    tight.stepToleranceRatio = 1e-9;
    const Learned before = fitOf(loop.learning(), tight);
    const auto estimate = before.lnFactorOfUnknowns();
    const auto ahead = forecast(loop.learning(), estimate, next, loop.circuits());
    const auto shares = shareFunctionals(ahead.links);
    const std::vector<hydraulics::LinkIndex> valve{loop.valves()[terminal]};
    const auto candidate = forecast(loop.learning(), estimate, shut, valve);
    const auto gains =
        before.posterior.gains(shares, std::vector<CandidateReading>{{candidate.links[0].lnDrop, 0.01}});

    // The same reading taken, at just the value expected: nothing moves, only the covariance.
    Observation taken;
    taken.caseIndex = shut;
    taken.link = valve[0];
    taken.what = Observed::AvailableDrop;
    taken.value = *candidate.links[0].drop;
    taken.relativeSd = 0.01;
    loop.learning().observations.push_back(taken);
    const Learned after = fitOf(loop.learning(), tight);
    double sumBefore = 0;
    double sumAfter = 0;
    double largestBefore = 0;
    double largestAfter = 0;
    const auto variancesBefore = before.posterior.varianceFactorOfEach(shares);
    const auto variancesAfter = after.posterior.varianceFactorOfEach(shares);
    for (std::size_t i = 0; i < shares.size(); ++i) {
        sumBefore += variancesBefore[i];
        sumAfter += variancesAfter[i];
        largestBefore = std::max(largestBefore, variancesBefore[i]);
        largestAfter = std::max(largestAfter, variancesAfter[i]);
    }
    EXPECT_NEAR(gains[0].traceGainRatio, 1 - sumAfter / sumBefore, 1e-6);
    EXPECT_NEAR(gains[0].largestVarianceFactor, largestAfter / largestBefore, 1e-6);
    EXPECT_GT(gains[0].traceGainRatio, 0.02);
}

TEST(Posterior, sharesLieWithinTheirUncertainty) {
    int inside = 0;
    int all = 0;
    for (unsigned seed = 1; seed <= 30; ++seed) {
        HiddenLoopOptions options;
        options.seed = seed;
        HiddenLoop loop(options);
        loop.readRound(loop.addOpenCase());
        loop.readRound(loop.addThrottledCase());
        const std::size_t next = loop.addThrottledCase();
        const Learned fit = fitOf(loop.learning());
        const auto ahead = forecast(loop.learning(), fit.lnFactorOfUnknowns(), next, loop.circuits());
        const auto truth = loop.trueShares(next);
        double total_m3s = 0;
        for (const LinkForecast& link : ahead.links) {
            total_m3s += link.flow.si();
        }
        const auto variances = fit.posterior.varianceFactorOfEach(shareFunctionals(ahead.links));
        for (std::size_t i = 0; i < truth.size(); ++i, ++all) {
            const double error = std::log(ahead.links[i].flow.si() / total_m3s / truth[i]);
            inside += std::abs(error) < 2 * std::sqrt(variances[i]) ? 1 : 0;
        }
    }
    // 95.4 % of a normal distribution lie within two standard deviations.
    EXPECT_GE(inside, all * 93 / 100);
    EXPECT_LE(inside, all * 98 / 100);
}

TEST(Posterior, instrumentFactorIsFoundAgainstDirectFlows) {
    HiddenLoopOptions options;
    options.instrumentFactor = 1.08;
    options.instrumentSdFactor = 0.1;
    options.relativeNoise = 0.002;
    HiddenLoop loop(options);
    for (int round = 0; round < 2; ++round) {
        const std::size_t at = loop.addThrottledCase();
        loop.readRound(at);
        for (const hydraulics::LinkIndex link : loop.circuits()) {
            loop.read(at, link, Observed::Flow);
        }
    }
    const Learned fit = fitOf(loop.learning());
    const LearnedUnknown& meter = fit.unknowns[*loop.instrument()];
    EXPECT_NEAR(meter.lnFactor, std::log(1.08), 3 * meter.lnFactorSd);
    EXPECT_LT(meter.lnFactorSd, 0.002);
}

TEST(Posterior, wrongWorldIsAMisfit) {
    HiddenLoopOptions options;
    options.hasTableErrors = true;
    options.relativeNoise = 0.002;
    HiddenLoop loop(options);
    for (int round = 0; round < 4; ++round) {
        loop.readRound(loop.addThrottledCase());
    }
    EXPECT_TRUE(fitOf(loop.learning()).misfit.isFound());
    LearnOptions withTables;
    withTables.hasTableErrors = true;
    EXPECT_FALSE(fitOf(loop.learning(), withTables).misfit.isFound());
}

TEST(Posterior, chiSquareTailIsThatOfTheTables) {
    // Upper percentage points of the chi-square distribution (NIST/SEMATECH e-Handbook of Statistical
    // Methods, 1.3.6.7.4; from memory): exceeded with probability 0.05, 0.01 and 0.001.
    EXPECT_NEAR(detail::chiSquareTailProbability(3.841, 1), 0.05, 2e-5);
    EXPECT_NEAR(detail::chiSquareTailProbability(18.307, 10), 0.05, 1e-5);
    EXPECT_NEAR(detail::chiSquareTailProbability(23.209, 10), 0.01, 1e-5);
    EXPECT_NEAR(detail::chiSquareTailProbability(149.449, 100), 0.001, 1e-6);
    EXPECT_EQ(detail::chiSquareTailProbability(1, 0), 1);
}

TEST(Learn, stopsWhenAsked) {
    HiddenLoop loop;
    loop.readRound(loop.addOpenCase());
    std::stop_source source;
    source.request_stop();
    LearnOptions options;
    options.stop = source.get_token();
    EXPECT_EQ(fitOf(loop.learning(), options).outcome, LearnOutcome::Stopped);
}

TEST(Learn, refusesWhatCannotBeLearnedFrom) {
    HiddenLoop loop;
    loop.readRound(loop.addOpenCase());
    Learning nothing = loop.learning();
    nothing.observations.clear();
    EXPECT_TRUE(learn(nothing).faults.at(0).is(kLearnNothing));

    Learning sure = loop.learning();
    sure.observations[2].relativeSd = 0;
    EXPECT_TRUE(learn(sure).faults.at(0).is(kLearnReadingUncertainty));
    EXPECT_EQ(learn(sure).faults.at(0).subject, "2");

    const std::size_t shut = loop.addShutCase(1);
    Learning flowing = loop.learning();
    flowing.observations[1].caseIndex = shut;
    EXPECT_TRUE(learn(flowing).faults.at(0).is(kLearnReadingShut));

    Learning open = loop.learning();
    open.observations[0].what = Observed::AvailableDrop;
    EXPECT_TRUE(learn(open).faults.at(0).is(kLearnReadingOpen));

    Learning blank = loop.learning();
    blank.unknowns[0].lnFactorPriorSd = std::nan("");
    EXPECT_TRUE(learn(blank).faults.at(0).is(kLearnPrior));

    Learning elsewhere = loop.learning();
    elsewhere.observations[0].caseIndex = 99;
    EXPECT_THROW(learn(elsewhere), base::ContractBreach);
}

TEST(Learn, cutOffReadingSaysNothing) {
    HiddenLoop loop;
    loop.readRound(loop.addOpenCase());
    const Learned without = fitOf(loop.learning());
    const std::size_t shut = loop.addShutCase(1);
    // The circuit before the shut valve shut as well: nothing joins the valve's tap with the pump.
    auto& network = loop.learning().cases[shut];
    const hydraulics::LinkChange closing{loop.circuits()[1], network.element(loop.circuits()[1]), true};
    network = *network.with({&closing, 1}).network;
    Observation lost;
    lost.caseIndex = shut;
    lost.link = loop.valves()[1];
    lost.what = Observed::AvailableDrop;
    lost.value = PressureDifference::si(3e4);
    loop.learning().observations.push_back(lost);
    for (const std::size_t leastSparse : {1U, 100000U}) {
        LearnOptions options;
        options.leastSparseReadings = leastSparse;
        const Learned with = fitOf(loop.learning(), options);
        EXPECT_EQ(with.misfit.degreesOfFreedom, without.misfit.degreesOfFreedom);
        EXPECT_NEAR(with.misfit.chiSquareScore, without.misfit.chiSquareScore, 1e-6);
        EXPECT_EQ(with.readings.back().robustWeight, 0);
        for (std::size_t i = 0; i < without.unknowns.size(); ++i) {
            EXPECT_NEAR(with.unknowns[i].lnFactorSd, without.unknowns[i].lnFactorSd, 1e-5) << i;
        }
    }
}

TEST(Learn, robustWeightsBendOneOutlier) {
    HiddenLoopOptions loopOptions;
    HiddenLoop loop(loopOptions);
    for (int round = 0; round < 3; ++round) {
        loop.readRound(loop.addThrottledCase());
    }
    const Learned clean = fitOf(loop.learning());
    Observation& wrong = loop.learning().observations[5];
    wrong.value = std::get<PressureDifference>(wrong.value) * 3.0;
    LearnOptions robust;
    robust.robustScore = 2;
    const Learned bent = fitOf(loop.learning(), robust);
    const Learned plain = fitOf(loop.learning());
    EXPECT_LT(bent.readings[5].robustWeight, 0.2);
    const auto distance = [&](const Learned& other) {
        double sum = 0;
        for (std::size_t i = 0; i < clean.unknowns.size(); ++i) {
            sum += std::pow(other.unknowns[i].lnFactor - clean.unknowns[i].lnFactor, 2);
        }
        return sum;
    };
    EXPECT_LT(distance(bent), 0.2 * distance(plain));
}

}  // namespace
}  // namespace ww::estimation
