// The advice for a loop of four circuits with square laws, computed by hand (H = k Q^2, pump H = 60 - 0.0012
// Q^2, ft and gpm; own derivation), and what is said when it cannot be given.
#include "core/balancing/advice/advice.h"

#include <gtest/gtest.h>

#include "core/balancing/advice/advice_forms.h"
#include "core/balancing/advice/order_of_work.h"
#include "core/balancing/assess.h"
#include "core/balancing/detail/band_probability.h"
#include "core/balancing/learning/learn_forms.h"
#include "core/balancing/learning/model_findings.h"
#include "core/balancing/prediction.h"
#include "tests/support/field_job.h"
#include "tests/support/small_loop.h"

namespace ww::balancing {
namespace {

using quantity::Unit;
using support::FieldJob;
using support::kFeetPerPsi;

std::string text(double number, int decimals) {
    return base::Decimal::fromNumber(number, decimals).text();
}

struct Circuit {
    const char* tag;
    double design_gpm;
    double loss_ft;
    double cvOpen;
    double run_ft;
};

const std::vector<Circuit> kCircuits{
    {"T1", 20, 12, 12, 8}, {"T2", 30, 15, 20, 4}, {"T3", 25, 10, 16, 4}, {"T4", 25, 14, 14, 3}};

/// The loop, its valves of 0 to 4 turns with a table in tenths of the scale.
FieldJob fourCircuits(const std::vector<Circuit>& circuits = kCircuits) {
    FieldJob job(project::UnitSystem::US);
    std::vector<std::pair<std::string, std::string>> rows;
    for (int flow = 0; flow <= 160; flow += 10) {
        rows.emplace_back(text(flow, 0), text(60 - 0.0012 * flow * flow, 3));
    }
    job.pump("P-1", rows);
    for (const Circuit& circuit : circuits) {
        std::vector<std::pair<std::string, std::string>> table;
        for (int tenth = 1; tenth <= 8; ++tenth) {
            const double part = 0.125 * tenth;
            table.emplace_back(text(0.5 * tenth, 1), text(circuit.cvOpen * part * part, 5));
        }
        job.branch(circuit.tag, "", text(circuit.design_gpm, 0), job.valve(table));
        job.change(job.project().branches().at(job.idOf(circuit.tag)), [&](project::Branch& branch) {
            const auto feet = [&](double number) {
                return quantity::measuredDifference(FieldJob::decimal(text(number, 5)), Unit::Foot,
                                                    job.project().fluid().density());
            };
            const double ratio = circuit.design_gpm / circuit.cvOpen;
            branch.runLoss = feet(circuit.run_ft);
            branch.circuitLoss = feet(circuit.loss_ft - kFeetPerPsi * ratio * ratio);
        });
    }
    job.instrument("0.5", "0.005");
    return job;
}

/// Reads every valve as the loop of the design would answer.
void readAll(FieldJob& job, const LoopState& state, project::RoundKind kind, const char* except = "") {
    job.round(kind);
    const PredictionResult predicted = predict(job.project(), state);
    for (const std::size_t terminal : job.project().tree().terminals()) {
        const project::Branch& branch = job.project().branches()[terminal];
        if (branch.tag == except) {
            continue;
        }
        const auto at = state.settings.find(branch.id);
        const std::string setting = at == state.settings.end() ? "4.0" : text(at->second.si(), 2);
        const PressureDifference dp = *predicted.prediction->branches[terminal].valveDrop;
        job.dp(branch.tag, text(dp.in(Unit::Psi), 3), setting);
    }
}

const SettingAdvice& settingFor(const FieldJob& job, const Advice& advice, const char* tag) {
    const auto found = std::find_if(advice.settings.begin(), advice.settings.end(),
                                    [&](const SettingAdvice& s) { return s.branch == job.indexOf(tag); });
    EXPECT_NE(found, advice.settings.end()) << tag;
    return *found;
}

/// The four circuits, surveyed, set as was advised then and read again.
FieldJob jobSetAsAdvised() {
    FieldJob job = fourCircuits();
    readAll(job, {}, project::RoundKind::Survey);
    const Advice first = advise(job.project(), learn(job.project()));
    LoopState set;
    for (const SettingAdvice& setting : first.settings) {
        set.settings[job.project().branches()[setting.branch].id] = setting.setting;
    }
    readAll(job, set, project::RoundKind::Final);
    return job;
}

TEST(Advice, aSurveyGivesEverySettingAtOnce) {
    FieldJob job = fourCircuits();
    readAll(job, {}, project::RoundKind::Survey);
    const LearnedLoop learned = learn(job.project());
    ASSERT_EQ(learned.outcome, LoopLearnOutcome::Learned);
    EXPECT_TRUE(learned.doubtful.empty());
    const Advice advice = advise(job.project(), learned);
    EXPECT_EQ(advice.status, AdviceStatus::Unverified);
    ASSERT_EQ(advice.settings.size(), 4U);
    // The exact coefficients: 6.897, 13.624, 10.686 and the index fully open.
    const std::pair<const char*, double> kExpected[] = {
        {"T1", 6.897}, {"T2", 13.624}, {"T3", 10.686}, {"T4", 14}};
    for (const auto& [tag, cv] : kExpected) {
        const SettingAdvice& setting = settingFor(job, advice, tag);
        const auto& curve = *job.project().characteristicOf(job.project().branches()[setting.branch]);
        EXPECT_NEAR(curve.coefficient(setting.exact).in(Unit::Cv), cv, 0.01 * cv) << tag;
        EXPECT_NEAR(setting.setting.si() / setting.step.si(), std::round(setting.setting / setting.step),
                    1e-9);
        EXPECT_NEAR(setting.indicated.ofTarget.si(), 1.0, 0.03) << tag;
        EXPECT_GT(setting.indicated.uncertainty.si(), 0) << tag;
        EXPECT_LT(setting.indicated.uncertainty.si(), 0.025) << tag;
        // A table may be off by a few per cent: that is in the true share and not in the indicated one.
        EXPECT_GT(setting.actual.uncertainty.si(), setting.indicated.uncertainty.si()) << tag;
    }
    EXPECT_TRUE(settingFor(job, advice, "T4").isFullyOpen);
    EXPECT_TRUE(settingFor(job, advice, "T4").isReference);
    EXPECT_EQ(settingFor(job, advice, "T4").settingUncertainty.si(), 0);
    // The largest excess first: T1 takes 153.7 % of design, T3 131.6, T2 123.1, T4 100.9.
    const char* kOrder[] = {"T1", "T3", "T2", "T4"};
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(job.project().branches()[advice.settings[i].branch].tag, kOrder[i]);
    }
    ASSERT_TRUE(advice.next.has_value());
    EXPECT_EQ(advice.next->branch, job.indexOf("T1"));
    EXPECT_TRUE(advice.next->reason.is(kAdviceNextMove));
    EXPECT_NEAR(advice.totalFlow.in(Unit::GallonPerMinute), 115.47, 1.2);
    EXPECT_NEAR(job.project().fluid().head(advice.pumpRise).in(Unit::Foot), 44.0, 0.5);
    ASSERT_TRUE(advice.pump.has_value());
    EXPECT_NEAR(advice.pump->speedFraction->si(), 0.866, 0.005);
    EXPECT_NEAR(job.project().fluid().head(advice.pump->excess).in(Unit::Foot), 15.0, 0.5);
    EXPECT_TRUE(advice.helpful.has_value());
    EXPECT_LT(advice.helpful->largestUncertaintyFactor.si(), 1.0);
    EXPECT_GT(advice.indicatedProbability.si(), 0.9);
    EXPECT_LE(advice.actualProbability.si(), advice.indicatedProbability.si());
}

TEST(Advice, aHeldValveIsNotTheNextMove) {
    FieldJob job = fourCircuits();
    readAll(job, {}, project::RoundKind::Survey);
    const Advice before = advise(job.project(), learn(job.project()));
    ASSERT_TRUE(before.next.has_value());
    ASSERT_EQ(before.next->branch, job.indexOf("T1"));
    // Hardly turned, it still takes the most; read as the loop of the design answers there.
    LoopState left;
    left.settings[job.idOf("T1")] = Setting::si(3.9);
    const PredictionResult then = predict(job.project(), left);
    const PressureDifference dp = *then.prediction->branches[job.indexOf("T1")].valveDrop;
    job.round(project::RoundKind::Adjusting, project::RoundState::Open);
    const base::Id made =
        job.dp("T1", text(dp.in(Unit::Psi), 3), text(left.settings.at(job.idOf("T1")).si(), 2));
    EXPECT_EQ(advise(job.project(), learn(job.project())).next->branch, job.indexOf("T1"));
    project::Reading held = job.project().readings().at(made);
    held.purpose = project::ReadingPurpose::Hold;
    job.project().put(held);
    const Advice after = advise(job.project(), learn(job.project()));
    EXPECT_FALSE(settingFor(job, after, "T1").isSet);
    ASSERT_TRUE(after.next.has_value());
    EXPECT_NE(after.next->branch, job.indexOf("T1"));
}

TEST(Advice, aRoundAtTheAdvisedSettingsVerifiesIt) {
    FieldJob job = jobSetAsAdvised();
    const LearnedLoop learned = learn(job.project());
    const Advice advice = advise(job.project(), learned);
    EXPECT_EQ(advice.status, AdviceStatus::Verified);
    EXPECT_FALSE(advice.next.has_value());
    EXPECT_FALSE(learned.isFromOneState);
    EXPECT_TRUE(modelFindings(job.project(), learned, job.newestRound(), true).empty());
}

TEST(Advice, anUnreadTerminalKeepsItFromBeingReady) {
    FieldJob job = fourCircuits();
    readAll(job, {}, project::RoundKind::Survey, "T3");
    const Advice advice = advise(job.project(), learn(job.project()));
    EXPECT_EQ(advice.status, AdviceStatus::NotReady);
    ASSERT_FALSE(advice.whyNot.empty());
    EXPECT_TRUE(advice.whyNot.front().is(kAdviceUnread));
    EXPECT_EQ(advice.whyNot.front().subject, "T3");
    EXPECT_EQ(advice.settings.size(), 4U) << "what is known is shown all the same";
    ASSERT_TRUE(advice.helpful.has_value());
    EXPECT_EQ(advice.helpful->branch, job.indexOf("T3"));
    EXPECT_EQ(advice.helpful->kind, ReadingKind::UnreadValveDp);
}

TEST(Advice, aValveTooLargeToReadIsNamed) {
    std::vector<Circuit> circuits = kCircuits;
    circuits[0].cvOpen = 120;  // 20 gpm make 0.03 psi
    FieldJob job = fourCircuits(circuits);
    job.change(job.project().valves().at(*job.project().branches()[3].valve),
               [&](project::ValveModel& model) { model.minimumDp = job.pressure("6"); });
    readAll(job, {}, project::RoundKind::Survey);
    const Advice advice = advise(job.project(), learn(job.project()));
    const auto has = [](const SettingAdvice& setting, const base::MessageForm& form) {
        return std::any_of(setting.notes.begin(), setting.notes.end(),
                           [&](const base::Fault& note) { return note.is(form); });
    };
    EXPECT_TRUE(has(settingFor(job, advice, "T4"), kAdviceValveTooLarge));
    EXPECT_FALSE(has(settingFor(job, advice, "T2"), kAdviceValveTooLarge));
}

TEST(Advice, twoWrongReadingsAreNotAskedForASettingWithoutDoubt) {
    FieldJob job = jobSetAsAdvised();
    // The reading of T2 in the second round was written down in kPa instead of psi.
    for (const project::Reading& reading :
         std::vector(job.project().readings().begin(), job.project().readings().end())) {
        if (reading.round == job.newestRound() && reading.branch == job.idOf("T2")) {
            job.change(reading, [&](project::Reading& changed) {
                changed.dp = job.pressure(text(changed.dp->value.in(Unit::Kilopascal), 2));
            });
        }
    }
    const LearnedLoop learned = learn(job.project());
    ASSERT_FALSE(learned.doubtful.empty());
    EXPECT_EQ(learned.doubtful.front().branch, job.indexOf("T2"));
    const auto findings = modelFindings(job.project(), learned, job.newestRound(), true);
    ASSERT_FALSE(findings.empty());
    EXPECT_EQ(findings.front().fault.subject, "T2");
    const Advice advice = advise(job.project(), learned);
    ASSERT_TRUE(advice.helpful.has_value());
    EXPECT_EQ(advice.helpful->branch, job.indexOf("T2"));
    EXPECT_NE(advice.status, AdviceStatus::Verified);
}

TEST(Advice, aSlippedPointIsExplained) {
    FieldJob job = jobSetAsAdvised();
    std::string meant;
    for (const project::Reading& reading :
         std::vector(job.project().readings().begin(), job.project().readings().end())) {
        if (reading.round == job.newestRound() && reading.branch == job.idOf("T2")) {
            meant = text(reading.dp->value.in(Unit::Psi), 2);
            job.change(reading, [&](project::Reading& changed) {
                changed.dp = job.pressure(text(10 * FieldJob::decimal(meant).value(), 1));
            });
        }
    }
    const LearnedLoop learned = learn(job.project());
    ASSERT_FALSE(learned.doubtful.empty());
    EXPECT_EQ(learned.doubtful.front().branch, job.indexOf("T2"));
    EXPECT_TRUE(learned.doubtful.front().why.is(kModelWrongPoint)) << english(learned.doubtful.front().why);
    EXPECT_EQ(learned.doubtful.front().why.arguments.back(), meant + " psi");
}

TEST(Advice, aFlowWrittenDownInAnotherUnitIsExplained) {
    FieldJob job = fourCircuits();
    // At T2 flows are read in place of dps: those that the dps mean.
    const auto readFlows = [&](Unit readIn, Unit writtenIn) {
        for (const project::Reading& reading :
             std::vector(job.project().readings().begin(), job.project().readings().end())) {
            if (reading.round != job.newestRound() || reading.branch != job.idOf("T2")) {
                continue;
            }
            const BranchResult read = assess(job.project(), job.newestRound()).branches[job.indexOf("T2")];
            job.change(reading, [&](project::Reading& changed) {
                changed.flow = quantity::measured<VolumeFlow>(
                    FieldJob::decimal(text(read.flow->in(readIn), 3)), writtenIn);
                changed.dp.reset();
            });
        }
    };
    readAll(job, {}, project::RoundKind::Survey);
    const Advice first = advise(job.project(), learn(job.project()));
    readFlows(Unit::GallonPerMinute, Unit::GallonPerMinute);
    LoopState set;
    for (const SettingAdvice& setting : first.settings) {
        set.settings[job.project().branches()[setting.branch].id] = setting.setting;
    }
    readAll(job, set, project::RoundKind::Final);
    readFlows(Unit::LitrePerSecond, Unit::GallonPerMinute);
    const LearnedLoop learned = learn(job.project());
    ASSERT_FALSE(learned.doubtful.empty());
    EXPECT_EQ(learned.doubtful.front().branch, job.indexOf("T2"));
    EXPECT_TRUE(learned.doubtful.front().why.is(kModelWrongUnit)) << english(learned.doubtful.front().why);
    EXPECT_EQ(learned.doubtful.front().why.arguments.back(), "L/s");
}

TEST(ReadableStep, followsTheScaleAndWhatWasTyped) {
    FieldJob job;
    const base::Id turns = job.valve({{"1", "1"}, {"4", "10"}});
    job.branch("A", "", "1", turns);
    const project::Branch branch = job.project().branches()[0];
    EXPECT_DOUBLE_EQ(readableStep(job.project(), branch).si(), 0.1);
    job.round(project::RoundKind::Survey);
    job.dp("A", "10.0", "4.0");
    EXPECT_DOUBLE_EQ(readableStep(job.project(), branch).si(), 0.1);
    job.dp("A", "10.0", "2.55");
    EXPECT_DOUBLE_EQ(readableStep(job.project(), branch).si(), 0.05);
    job.dp("A", "10.0", "2.52");
    EXPECT_DOUBLE_EQ(readableStep(job.project(), branch).si(), 0.01);
    job.change(job.project().valves().at(turns),
               [](project::ValveModel& model) { model.scale = project::Scale::Degrees; });
    job.change(job.project().valves().at(turns), [](project::ValveModel& model) {
        model.rows = {{FieldJob::decimal("10"), FieldJob::decimal("1")},
                      {FieldJob::decimal("90"), FieldJob::decimal("10")}};
    });
    EXPECT_DOUBLE_EQ(readableStep(job.project(), branch).si(), 0.1) << "2.55 degrees were typed";
}

TEST(OrderOfWork, finishesABranchBeforeItsOwnValve) {
    FieldJob job;
    const base::Id valve = job.valve({{"1", "1"}, {"4", "10"}});
    job.branch("R1", "", "", valve);
    job.branch("R2", "", "", valve);
    job.branch("A", "R1", "1", valve);
    job.branch("B", "R1", "1", valve);
    job.branch("C", "R2", "1", valve);
    job.branch("D", "R2", "1", valve);
    const auto order = orderOfWork(job.project(), {Ratio::si(0.9), Ratio::si(1.1), Ratio::si(0.8),
                                                   Ratio::si(1.0), Ratio::si(1.2), Ratio::si(1.3)});
    std::vector<std::string> tags;
    for (const std::size_t branch : order) {
        tags.push_back(job.project().branches()[branch].tag);
    }
    EXPECT_EQ(tags, (std::vector<std::string>{"D", "C", "R2", "B", "A", "R1"}));
}

TEST(BandProbability, agreesWithWhatIsKnownInClosedForm) {
    const auto within = [](double reach) { return std::erf(reach / std::sqrt(2.0)); };
    const std::vector<double> one{1.0};
    EXPECT_NEAR(detail::probabilityWithin(one, std::vector<double>{0.0004}, 0.95, 1.05), within(2.5), 1e-6);
    // Independent: the product. Fully tied together: one of them.
    const std::vector<double> three{1.0, 1.0, 1.0};
    std::vector<double> covariance(9, 0.0);
    covariance[0] = covariance[4] = covariance[8] = 0.0016;
    EXPECT_NEAR(detail::probabilityWithin(three, covariance, 0.95, 1.05), std::pow(within(1.25), 3), 2e-3);
    std::fill(covariance.begin(), covariance.end(), 0.0016);
    EXPECT_NEAR(detail::probabilityWithin(three, covariance, 0.95, 1.05), within(1.25), 2e-3);
    // Two with correlation 1/2: the square of half-width 1 holds 0.49797 (numerical integration of the
    // density).
    const std::vector<double> two{0.0, 0.0};
    const double high = detail::probabilityWithin(two, std::vector<double>{1, 0.5, 0.5, 1}, -1, 1);
    EXPECT_NEAR(high, 0.49797, 2e-3);
    // The bound is one.
    const std::vector<double> sds{0.04, 0.04, 0.04};
    EXPECT_NEAR(detail::leastProbabilityWithin(three, sds, 0.95, 1.05), std::pow(within(1.25), 3), 1e-12);
    EXPECT_EQ(detail::leastProbabilityWithin(std::vector<double>{1.2}, std::vector<double>{0.01}, 0.95, 1.05),
              0);
}

}  // namespace
}  // namespace ww::balancing
