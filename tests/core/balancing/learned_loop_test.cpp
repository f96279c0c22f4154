// Loops with hidden resistances and seeded readings (tests/data/games, made by independent code), learned and
// advised: against the truth, and against the estimates of that code which stand in the same files.
#include "core/balancing/learning/learned_loop.h"

#include <gtest/gtest.h>

#include <map>
#include <string>

#include "core/balancing/advice/advice.h"
#include "core/balancing/detail/loop_fits.h"
#include "core/balancing/learning/learn_forms.h"
#include "tests/support/dense_way.h"
#include "tests/support/field_job.h"
#include "tests/support/game_job.h"
#include "tests/support/hidden_job.h"

namespace ww::balancing {
namespace {

using support::GameJob;

LoopState advisedState(const project::Project& project, const Advice& advice) {
    LoopState state;
    for (const SettingAdvice& setting : advice.settings) {
        state.settings[project.branches()[setting.branch].id] = setting.setting;
    }
    return state;
}

double largestOf(const nlohmann::json& errors) {
    double largest = 0;
    for (const auto& error : errors) {
        largest = std::max(largest, std::abs(error.get<double>()));
    }
    return largest;
}

struct Played {
    LearnedLoop learned;
    Advice advice;
    double largestError = 0;
};

Played played(const GameJob& game) {
    Played out;
    out.learned = learn(game.project());
    AdviceOptions options;
    options.step = Setting::si(0.05);
    out.advice = advise(game.project(), out.learned, options);
    out.largestError = game.largestShareError(advisedState(game.project(), out.advice));
    return out;
}

class LearnedGame : public testing::TestWithParam<const char*> {};

TEST_P(LearnedGame, aSurveyAloneGivesSettingsWithinTheBand) {
    GameJob game(GetParam());
    game.addRound("survey0", project::RoundKind::Survey);
    const Played result = played(game);
    ASSERT_EQ(result.learned.outcome, LoopLearnOutcome::Learned);
    EXPECT_TRUE(result.learned.isFromOneState);
    EXPECT_EQ(result.advice.status, AdviceStatus::Unverified);
    const double other = largestOf(game.game().at("reference").at("advice0").at("true_share_error"));
    EXPECT_LT(result.largestError, 0.05);
    // As near to the truth as the other program, give or take what one step of the scale changes.
    EXPECT_LT(result.largestError, other + 0.005);
    const auto& turns = game.game().at("reference").at("advice0").at("turns_exact");
    for (const SettingAdvice& setting : result.advice.settings) {
        for (std::size_t i = 0; i < game.terminalCount(); ++i) {
            if (game.tag(i) == game.project().branches()[setting.branch].tag) {
                EXPECT_NEAR(setting.exact.si(), turns.at(i).get<double>(), 0.06) << game.tag(i);
            }
        }
    }
}

TEST_P(LearnedGame, resistancesAreWithinTheirStandardErrors) {
    GameJob game(GetParam());
    game.addRound("survey0", project::RoundKind::Survey);
    const LearnedLoop learned = learn(game.project());
    const Resistances truth = game.truth();
    std::size_t count = 0;
    std::size_t within = 0;
    for (std::size_t i = 0; i < learned.branches.size(); ++i) {
        const auto true_ = truth.find(game.project().branches()[i].id);
        if (learned.branches[i].circuit && true_ != truth.end() && true_->second.circuit) {
            const LearnedResistance& one = *learned.branches[i].circuit;
            ++count;
            within +=
                std::abs(std::log(one.value.si() / true_->second.circuit->si())) < 2 * one.relativeSd.si()
                    ? 1
                    : 0;
        }
    }
    EXPECT_EQ(count, game.terminalCount());
    EXPECT_GE(within + 1, count);
}

TEST_P(LearnedGame, aRoundAtTheAdvisedSettingsSharpensThem) {
    GameJob game(GetParam());
    game.addRound("survey0", project::RoundKind::Survey);
    const Played before = played(game);
    game.addRound("survey1_at_advice0", project::RoundKind::Adjusting);
    const Played after = played(game);
    ASSERT_EQ(after.learned.outcome, LoopLearnOutcome::Learned);
    // The readings say that the valves had been set before the round was read.
    EXPECT_EQ(after.learned.history.orders.back(), RoundOrder::SetBefore);
    EXPECT_FALSE(after.learned.isFromOneState);
    const double other = largestOf(game.game().at("reference").at("advice1").at("true_share_error"));
    EXPECT_LT(after.largestError, other + 0.005);
    double sdBefore = 0;
    double sdAfter = 0;
    for (const SettingAdvice& setting : before.advice.settings) {
        sdBefore = std::max(sdBefore, setting.indicated.uncertainty.si());
    }
    for (const SettingAdvice& setting : after.advice.settings) {
        sdAfter = std::max(sdAfter, setting.indicated.uncertainty.si());
    }
    EXPECT_LT(sdAfter, sdBefore);
    EXPECT_TRUE(after.learned.doubtful.empty());
}

TEST_P(LearnedGame, aClosedValveDpCountsAsHeadAvailable) {
    GameJob game(GetParam());
    game.addRound("survey0", project::RoundKind::Survey);
    game.job().round(project::RoundKind::Adjusting);
    for (const auto& closed : game.game().at("readings").at("extra_closed_valve")) {
        const std::size_t terminal = closed.at("i").get<std::size_t>();
        game.addDp(terminal, closed.at("dp").get<double>(), 0);
        game.job().settingOnly(game.tag(terminal), "4");
    }
    const Played result = played(game);
    const std::size_t closedCount = static_cast<std::size_t>(
        std::count_if(result.learned.readings.begin(), result.learned.readings.end(),
                      [](const ComparedReading& reading) { return reading.isClosedValve; }));
    EXPECT_EQ(closedCount, game.game().at("readings").at("extra_closed_valve").size());
    const double other =
        largestOf(game.game().at("reference").at("advice0_plus_closed").at("true_share_error"));
    EXPECT_LT(result.largestError, other + 0.006);
}

TEST_P(LearnedGame, aReadingMarkedAsOfAShutValveSaysTheSame) {
    GameJob zero(GetParam());
    GameJob marked(GetParam());
    for (GameJob* game : {&zero, &marked}) {
        game->addRound("survey0", project::RoundKind::Survey);
        game->job().round(project::RoundKind::Adjusting);
    }
    const auto& closed = zero.game().at("readings").at("extra_closed_valve").at(0);
    const auto terminal = closed.at("i").get<std::size_t>();
    zero.addDp(terminal, closed.at("dp").get<double>(), 0);
    zero.job().settingOnly(zero.tag(terminal), "4");
    marked.addDp(terminal, closed.at("dp").get<double>(), 4);
    const project::Reading last = *(marked.project().readings().end() - 1);
    marked.job().change(last, [](project::Reading& record) {
        record.setting.reset();
        record.purpose = project::ReadingPurpose::ShutValve;
    });
    const Played one = played(zero);
    const Played other = played(marked);
    ASSERT_EQ(one.advice.settings.size(), other.advice.settings.size());
    for (std::size_t i = 0; i < one.advice.settings.size(); ++i) {
        EXPECT_NEAR(one.advice.settings[i].exact.si(), other.advice.settings[i].exact.si(), 1e-6);
    }
}

INSTANTIATE_TEST_SUITE_P(Files, LearnedGame, testing::Values("01-three-terminals", "02-twelve-terminals"),
                         [](const auto& info) { return std::string(info.param).substr(0, 2); });

TEST(LearnedLoopTest, withoutReadingsItSaysSo) {
    const GameJob game("01-three-terminals");
    const LearnedLoop learned = learn(game.project());
    EXPECT_EQ(learned.outcome, LoopLearnOutcome::Impossible);
    EXPECT_EQ(learned.fits, nullptr);
    ASSERT_FALSE(learned.faults.empty());
    const Advice advice = advise(game.project(), learned);
    EXPECT_FALSE(advice.isReady());
    EXPECT_EQ(advice.whyNot, learned.faults);
}

TEST(LearnedLoopTest, stopsOnRequest) {
    GameJob game("02-twelve-terminals");
    game.addRound("survey0", project::RoundKind::Survey);
    std::stop_source source;
    source.request_stop();
    LearnLoopOptions options;
    options.stop = source.get_token();
    EXPECT_EQ(learn(game.project(), options).outcome, LoopLearnOutcome::Stopped);
}

TEST(LearnedLoopTest, givesTheSameTwice) {
    GameJob game("02-twelve-terminals");
    game.addRound("survey0", project::RoundKind::Survey);
    const Played one = played(game);
    const Played other = played(game);
    ASSERT_EQ(one.advice.settings.size(), other.advice.settings.size());
    for (std::size_t i = 0; i < one.advice.settings.size(); ++i) {
        EXPECT_EQ(one.advice.settings[i].exact.si(), other.advice.settings[i].exact.si());
        EXPECT_EQ(one.advice.settings[i].indicated.uncertainty.si(),
                  other.advice.settings[i].indicated.uncertainty.si());
    }
    EXPECT_EQ(one.advice.indicatedProbability.si(), other.advice.indicatedProbability.si());
}

// What a laptop can hold: common practice, no source.
TEST(LearnedLoop, ofMoreReadingsThanCanBeLearnedFromItSaysSo) {
    support::FieldJob job;
    const base::Id valve = job.valve({{"1", "1.1"}, {"4", "5.2"}});
    constexpr int kTerminals = 4000;
    for (int i = 0; i < kTerminals; ++i) {
        job.branch("T" + std::to_string(i), "", "1.0", valve);
    }
    job.instrument("1.5", "0.05");
    constexpr int kRounds = 32;
    for (int round = 0; round < kRounds; ++round) {
        job.round(project::RoundKind::Survey);
        job.dp("T" + std::to_string(round), "20.0", "4");
    }
    const LearnedLoop learned = learn(job.project());
    EXPECT_EQ(learned.outcome, LoopLearnOutcome::Impossible);
    ASSERT_FALSE(learned.faults.empty());
    EXPECT_TRUE(learned.faults.front().is(kLearnTooLarge));
}

TEST(LearnedLoop, bothWaysOfAlgebraAgree) {
    support::HiddenJob job(2, 30);
    job.hide();
    job.readRound(project::RoundKind::Survey, {});
    LoopState state;
    for (const project::Branch& branch : job.project().branches()) {
        state.settings[branch.id] = Setting::si(2.5);
    }
    job.readRound(project::RoundKind::Final, state);
    const LearnedLoop learned = learn(job.project());
    ASSERT_NE(learned.fits, nullptr);
    std::vector<hydraulics::LinkIndex> circuits;
    for (const std::size_t terminal : job.project().tree().terminals()) {
        circuits.push_back(learned.fits->loop.model->circuitLink[terminal]);
    }
    const support::WaysApart apart = support::waysApart(learned.fits->loop.learning, circuits);
    EXPECT_LT(apart.unknown, 1e-6);
    EXPECT_LT(apart.sd, 1e-6);
    EXPECT_LT(apart.score, 1e-5);
    EXPECT_LT(apart.shareSd, 1e-6);
}

}  // namespace
}  // namespace ww::balancing
