// Valve after valve turned in one loop, against a whole solve of each state.
#include "core/hydraulics/stepwise.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/hydraulics/solve.h"
#include "tests/support/hidden_loop.h"

namespace ww::hydraulics {
namespace {

const quantity::Density kFlowing = quantity::Density::si(998);

class StepwiseLoopTest : public testing::Test {
  protected:
    StepwiseLoopTest() {
        support::HiddenLoopOptions options;
        options.branches = 4;
        options.terminalsOfBranch = 6;
        m_loop.emplace(options);
        m_loop->addOpenCase();
        m_network.emplace(m_loop->learning().cases.front());
    }

    LinkIndex valve(std::size_t terminal) const { return m_loop->valves()[terminal]; }

    void turn(StepwiseLoop& stepwise, std::size_t terminal, double kv, bool isClosed = false) {
        const auto coefficient = quantity::FlowCoefficient::from(kv, quantity::Unit::Kv);
        const LinkChange change{valve(terminal), Element::valve(coefficient, kFlowing), isClosed};
        stepwise.turn(change);
        m_network = *m_network->with(std::span(&change, 1)).network;
    }

    void expectSolved(StepwiseLoop& stepwise) {
        const Solution whole = solve(*m_network);
        const double most = whole.summary().largestFlow.si();
        for (std::uint32_t link = 0; link < m_network->linkCount(); ++link) {
            EXPECT_NEAR(stepwise.flow({link}).si(), whole.flow({link}).si(), 1e-9 * most) << link;
            const auto drop = whole.drop(*m_network, {link});
            const auto other = stepwise.drop({link});
            ASSERT_EQ(other.has_value(), drop.has_value()) << link;
            if (drop) {
                EXPECT_NEAR(other->si(), drop->si(), 1e-8 * whole.summary().largestPressure.si()) << link;
            }
        }
    }

    std::optional<support::HiddenLoop> m_loop;
    std::optional<Network> m_network;
};

TEST_F(StepwiseLoopTest, eachTurnGivesWhatAWholeSolveGives) {
    StepwiseLoop stepwise(*m_network);
    expectSolved(stepwise);
    for (std::size_t terminal = 0; terminal < m_loop->terminalCount(); terminal += 3) {
        turn(stepwise, terminal, 0.4 + 0.1 * static_cast<double>(terminal));
        expectSolved(stepwise);
    }
}

TEST_F(StepwiseLoopTest, severalTurnsMayComeBetweenTwoQuestions) {
    StepwiseLoop stepwise(*m_network);
    for (std::size_t terminal = 0; terminal < m_loop->terminalCount(); ++terminal) {
        turn(stepwise, terminal, 0.3 + 0.05 * static_cast<double>(terminal));
        turn(stepwise, terminal, 0.5 + 0.05 * static_cast<double>(terminal));
    }
    expectSolved(stepwise);
}

TEST_F(StepwiseLoopTest, aValveMayBeShutAndOpenedAgain) {
    StepwiseLoop stepwise(*m_network);
    turn(stepwise, 2, 0.7);
    expectSolved(stepwise);
    turn(stepwise, 5, 0, true);
    expectSolved(stepwise);
    turn(stepwise, 1, 0.6);
    expectSolved(stepwise);
    turn(stepwise, 5, 0.8);
    turn(stepwise, 2, 0.9);
    expectSolved(stepwise);
}

}  // namespace
}  // namespace ww::hydraulics
