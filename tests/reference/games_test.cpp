// Buildings with hidden resistances, made and estimated by an independent program in another language (a
// dense Gauss-Newton in extended precision on path matrices): tests/data/games, as they came.
#include <gtest/gtest.h>

#include <cmath>

#include "core/estimation/forecast.h"
#include "core/estimation/learn.h"
#include "tests/reference/game_file.h"

namespace ww::estimation {
namespace {

class Games : public ::testing::TestWithParam<const char*> {};

Learned learned(const GameFile& game) {
    auto result = learn(game.learning());
    EXPECT_TRUE(result.learned.has_value());
    EXPECT_EQ(result.learned->outcome, LearnOutcome::Converged);
    return *std::move(result.learned);
}

/// (estimate - truth) over the stated standard deviation, of everything the truth is known of; a segment as
/// its own and the common factor together.
std::vector<double> standardisedErrors(const GameFile& game, const Learned& fit) {
    std::vector<double> out;
    const std::size_t count = fit.unknowns.size();
    for (std::size_t unknown = 0; unknown < count; ++unknown) {
        if (unknown == game.common()) {
            continue;
        }
        const bool isSegment = unknown >= game.terminalCount() && unknown < game.common();
        Functional functional{std::vector<double>(count, 0)};
        functional.weightByUnknown[unknown] = 1;
        functional.weightByUnknown[game.common()] = isSegment ? 1 : 0;
        const double estimate =
            fit.unknowns[unknown].lnFactor + (isSegment ? fit.unknowns[game.common()].lnFactor : 0);
        out.push_back((estimate - game.hiddenLnFactor(unknown)) /
                      std::sqrt(fit.posterior.varianceFactor(functional)));
    }
    return out;
}

std::vector<double> shareSds(const GameFile& game, const Learned& fit, std::size_t caseIndex) {
    const auto ahead = forecast(game.learning(), fit.lnFactorOfUnknowns(), caseIndex, game.circuits());
    std::vector<double> out;
    for (const double variance : fit.posterior.varianceFactorOfEach(shareFunctionals(ahead.links))) {
        out.push_back(std::sqrt(variance));
    }
    return out;
}

/// What the reference says of one fit: how well each reading fits, and how far the shares of its advised
/// settings are known.
void expectScoresAndSds(GameFile& game, const Learned& fit, const nlohmann::json& reference) {
    for (std::size_t i = 0; i < fit.readings.size(); ++i) {
        // The reference states a score also where the redundancy is too small to check a reading by.
        if (fit.readings[i].canBeChecked()) {
            EXPECT_NEAR(fit.readings[i].score, reference.at("w").at(i).get<double>(), 0.05) << i;
        }
    }
    const std::size_t advised = game.addCase(reference.at("turns_set"));
    const std::vector<double> sds = shareSds(game, fit, advised);
    for (std::size_t i = 0; i < sds.size(); ++i) {
        const double expected = reference.at("sd").at(i);
        EXPECT_NEAR(sds[i], expected, 0.05 * expected) << i;
    }
}

/// The hidden building solved by this program's own network gives the hidden flows: laws and units are read
/// as they were meant.
TEST_P(Games, hiddenFlowsAreReproduced) {
    GameFile game(GetParam());
    const auto& hidden = game.json().at("hidden");
    std::vector<double> truth;
    for (std::size_t unknown = 0; unknown <= game.pump(); ++unknown) {
        truth.push_back(unknown == game.common() ? 0 : game.hiddenLnFactor(unknown));
    }
    const std::size_t open = game.addCase(std::vector<double>(game.terminalCount(), 4.0));
    const auto ahead = forecast(game.learning(), truth, open, game.circuits());
    for (std::size_t i = 0; i < game.terminalCount(); ++i) {
        const double expected = hidden.at("flows_all_open").at(i);
        // The file's factor between Cv and kPa/(m3/h)^2 has nine digits.
        EXPECT_NEAR(ahead.links[i].flow.in(quantity::Unit::CubicMetrePerHour), expected, 1e-8 * expected)
            << i;
    }
}

TEST_P(Games, surveyGivesTheReferencesEstimate) {
    GameFile game(GetParam());
    game.addSurvey("survey0");
    const Learned fit = learned(game);
    const auto& reference = game.json().at("reference").at("advice0");
    const auto& known = game.json().at("known");
    for (std::size_t i = 0; i < game.terminalCount(); ++i) {
        const double expected =
            std::log(reference.at("kc_est").at(i).get<double>() / known.at("design_kc").at(i).get<double>());
        const double sd = reference.at("kc_sd_ln").at(i);
        EXPECT_NEAR(fit.unknowns[i].lnFactor, expected, 0.02 * sd) << i;
        EXPECT_NEAR(fit.unknowns[i].lnFactorSd, sd, 0.02 * sd) << i;
    }
    const double common = fit.unknowns[game.common()].lnFactor;
    for (std::size_t i = 0; i < game.segmentCount(); ++i) {
        const double expected =
            std::log(reference.at("kp_est").at(i).get<double>() / known.at("design_kp").at(i).get<double>());
        EXPECT_NEAR(fit.unknowns[game.segment(i)].lnFactor + common, expected, 0.005) << i;
    }
    expectScoresAndSds(game, fit, reference);
}

TEST_P(Games, errorsAreWithinTheStatedUncertainty) {
    for (const int rounds : {1, 2, 3}) {
        GameFile game(GetParam());
        game.addSurvey("survey0");
        if (rounds > 1) {
            game.addSurvey("survey1_at_advice0");
        }
        if (rounds > 2) {
            game.addSurvey("survey2_at_advice1");
            game.addClosedReadings();
        }
        const Learned fit = learned(game);
        EXPECT_FALSE(fit.misfit.isFound());
        double squares = 0;
        const std::vector<double> errors = standardisedErrors(game, fit);
        for (const double error : errors) {
            EXPECT_LT(std::abs(error), 3.3) << rounds;
            squares += error * error;
        }
        // Of correlated errors: their mean square has a wide spread about 1.
        EXPECT_LT(squares / static_cast<double>(errors.size()), 2.0) << rounds;
    }
}

TEST_P(Games, verifyingRoundGivesTheReferencesResiduals) {
    GameFile game(GetParam());
    game.addSurvey("survey0");
    game.addSurvey("survey1_at_advice0");
    const Learned fit = learned(game);
    const auto& reference = game.json().at("reference").at("advice1");
    expectScoresAndSds(game, fit, reference);
}

TEST_P(Games, closedValvesNarrowTheSharesAsInTheReference) {
    GameFile game(GetParam());
    game.addSurvey("survey0");
    game.addClosedReadings();
    const Learned fit = learned(game);
    const auto& reference = game.json().at("reference").at("advice0_plus_closed");
    const std::size_t advised = game.addCase(reference.at("turns_set"));
    const std::vector<double> sds = shareSds(game, fit, advised);
    for (std::size_t i = 0; i < sds.size(); ++i) {
        const double expected = reference.at("sd").at(i);
        EXPECT_NEAR(sds[i], expected, 0.05 * expected) << i;
    }
}

INSTANTIATE_TEST_SUITE_P(Files, Games,
                         ::testing::Values("01-three-terminals.json", "02-twelve-terminals.json"));

}  // namespace
}  // namespace ww::estimation
