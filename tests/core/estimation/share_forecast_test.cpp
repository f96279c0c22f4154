// Uncertainties of shares without a functional each, against the functionals.
#include "core/estimation/share_forecast.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/estimation/forecast.h"
#include "core/estimation/learn.h"
#include "tests/support/hidden_loop.h"

namespace ww::estimation {
namespace {

using support::HiddenLoop;

/// Two rounds of 48 valves, which enter as sparse cases, and readings of single states, which do not.
HiddenLoop readLoop() {
    support::HiddenLoopOptions options;
    options.branches = 6;
    options.terminalsOfBranch = 8;
    options.hasTableErrors = true;
    HiddenLoop loop(options);
    const std::size_t open = loop.addOpenCase();
    loop.readRound(open);
    loop.read(loop.addShutCase(1), loop.valves()[1], Observed::AvailableDrop);
    loop.read(loop.addShutCase(20), loop.valves()[20], Observed::AvailableDrop);
    loop.readRound(loop.addThrottledCase());
    loop.learning().observations[3].isLeftOut = true;
    return loop;
}

class ShareForecastTest : public testing::Test {
  protected:
    ShareForecastTest() : m_loop(readLoop()) {
        m_next = m_loop.addThrottledCase();
        m_shut = m_loop.addShutCase(30);
        LearnOptions options;
        options.hasTableErrors = true;
        options.stepToleranceRatio = 1e-9;
        m_fit.emplace(*learn(m_loop.learning(), options).learned);
        const auto ahead =
            forecast(m_loop.learning(), m_fit->lnFactorOfUnknowns(), m_next, m_loop.circuits());
        m_shares = shareFunctionals(ahead.links);
    }

    HiddenLoop m_loop;
    std::size_t m_next = 0;
    std::size_t m_shut = 0;
    std::optional<Learned> m_fit;
    std::vector<Functional> m_shares;
};

TEST_F(ShareForecastTest, sharesAreAsCertainAsTheirFunctionalsSay) {
    std::vector<ToldFlow> flows;
    for (const auto link : m_loop.circuits()) {
        flows.push_back({link, true, {}});
    }
    const ShareForecast made(m_loop.learning(), *m_fit, m_next, flows);
    const auto variances = m_fit->posterior.varianceFactorOfEach(m_shares);
    for (std::size_t i = 0; i < flows.size(); ++i) {
        EXPECT_NEAR(made.relativeSdOfShares()[i], std::sqrt(variances[i]), 1e-7 * std::sqrt(variances[i]))
            << i;
        EXPECT_NEAR(made.relativeSdOfToldShares()[i], std::sqrt(variances[i]),
                    1e-7 * std::sqrt(variances[i]));
    }
}

TEST_F(ShareForecastTest, whatIsToldCarriesTheTablesErrors) {
    // The table errors of a terminal are the unknowns that scale its valve.
    const auto& unknowns = m_loop.learning().unknowns;
    std::vector<ToldFlow> flows;
    for (std::size_t i = 0; i < m_loop.circuits().size(); ++i) {
        ToldFlow one{m_loop.circuits()[i], true, {}};
        for (std::size_t unknown = 0; unknown < unknowns.size(); ++unknown) {
            const bool isOwn = unknowns[unknown].kind == UnknownKind::ValveTable &&
                               unknowns[unknown].links.front().link == m_loop.valves()[i];
            if (isOwn) {
                const double weight = -unknowns[unknown].links.front().weightIn(m_next);
                one.weightOfUnknowns.emplace_back(unknown, weight);
            }
        }
        ASSERT_FALSE(one.weightOfUnknowns.empty());
        flows.push_back(std::move(one));
    }
    const ShareForecast made(m_loop.learning(), *m_fit, m_next, flows);
    double total = 0;
    for (const auto flow : made.flows()) {
        total += flow.si();
    }
    std::vector<Functional> told = m_shares;
    for (std::size_t i = 0; i < flows.size(); ++i) {
        for (std::size_t of = 0; of < flows.size(); ++of) {
            for (const auto& [unknown, weight] : flows[i].weightOfUnknowns) {
                told[of].weightByUnknown[unknown] +=
                    weight * ((of == i ? 1 : 0) - made.flows()[i].si() / total);
            }
        }
    }
    const auto variances = m_fit->posterior.varianceFactorOfEach(told);
    for (std::size_t i = 0; i < flows.size(); ++i) {
        EXPECT_NEAR(made.relativeSdOfToldShares()[i], std::sqrt(variances[i]), 1e-7 * std::sqrt(variances[i]))
            << i;
    }
    const std::vector<hydraulics::LinkIndex> valve{m_loop.valves()[30]};
    const auto candidate = forecast(m_loop.learning(), m_fit->lnFactorOfUnknowns(), m_shut, valve);
    const std::vector<CandidateReading> candidates{{candidate.links[0].lnDrop, 0.01}};
    std::vector<std::size_t> aims;
    for (std::size_t i = 0; i < flows.size(); ++i) {
        aims.push_back(i);
    }
    const auto gains = made.gains(aims, candidates);
    const auto byFunctionals = m_fit->posterior.gains(told, candidates);
    EXPECT_NEAR(gains[0].traceGainRatio, byFunctionals[0].traceGainRatio, 1e-7);
    EXPECT_NEAR(gains[0].largestVarianceFactor, byFunctionals[0].largestVarianceFactor, 1e-7);
    EXPECT_GT(gains[0].traceGainRatio, 1e-4);
}

}  // namespace
}  // namespace ww::estimation
