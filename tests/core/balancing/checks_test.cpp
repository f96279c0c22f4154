// Each check of a round with a case that it finds and one that it leaves alone. Thresholds: a usual list of
// automatic checks for a balance (common practice, no source) unless a line says otherwise.
#include <gtest/gtest.h>

#include <array>

#include "core/balancing/checks/check_forms.h"
#include "core/balancing/verdict_forms.h"
#include "core/balancing/walk.h"
#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

using project::BranchKind;
using project::RoundKind;
using quantity::Unit;

/// A riser R of a stated design flow with two terminals A and B of 4 m3/h.
FieldJob riser(const char* design) {
    FieldJob job;
    const base::Id valve = usualValve(job);
    job.branch("R", "", design, valve);
    job.branch("A", "R", "4", valve);
    job.branch("B", "R", "4", valve);
    job.round(RoundKind::Survey);
    return job;
}

TEST(Checks, designSum) {
    EXPECT_EQ(severityOf(riser("8.05"), kDesignSumOpen), std::nullopt);
    EXPECT_EQ(severityOf(riser("8.2"), kDesignSumOpen, "R"), Severity::Warning);
    EXPECT_EQ(severityOf(riser("9"), kDesignSumOpen, "R"), Severity::Error);
    EXPECT_EQ(severityOf(riser(""), kDesignSumOpen), std::nullopt);
}

TEST(Checks, anErrorOfTheDesignKeepsNoRoundFromBeingAccepted) {
    FieldJob job;
    job.branch("A", "", "4",
               job.valve({{"1", "1"}, {"4", "41"}}));  // too large to be read: by another meter then
    job.round(RoundKind::Final);
    job.flow("A", "4.05", "4");
    EXPECT_EQ(severityOf(job, kDesignDpLow), Severity::Error);
    EXPECT_EQ(assessNewest(job).verdict, Verdict::Accepted);
}

TEST(Checks, dpAtDesignFlow) {
    const auto withOpenKv = [](const char* kv) {
        FieldJob job;
        job.branch("A", "", "4", job.valve({{"1", "1"}, {"4", kv}}));
        job.round(RoundKind::Survey);
        return severityOf(job, kDesignDpLow, "A");
    };
    EXPECT_EQ(withOpenKv("23"), std::nullopt);       // 3.02 kPa
    EXPECT_EQ(withOpenKv("24"), Severity::Warning);  // 2.78 kPa
    EXPECT_EQ(withOpenKv("41"), Severity::Error);    // 0.95 kPa
    FieldJob throttled;
    throttled.branch("A", "", "4", throttled.valve({{"1", "1"}, {"4", "41"}}));
    throttled.round(RoundKind::Survey);
    throttled.dp("A", "17.0", "2");
    EXPECT_EQ(severityOf(throttled, kDesignDpLow), std::nullopt);
}

// The limit that it names is the one that a reading there is held to.
TEST(Checks, dpAtDesignFlowNamesTheLimitOfReadings) {
    FieldJob job;
    job.instrument("1", "0.05");  // readable from 0.5 kPa on
    job.branch("A", "", "4", job.valve({{"1", "1"}, {"4", "24"}}));
    job.round(RoundKind::Survey);
    job.dp("A", "2.8", "4");
    const Assessment assessment = assessNewest(job);
    const Finding* finding = findingOf(assessment, kDesignDpLow, "A");
    ASSERT_NE(finding, nullptr);
    ASSERT_EQ(finding->fault.arguments.size(), 3U);
    EXPECT_EQ(finding->fault.arguments[2].find("0.5"), 0U) << finding->fault.arguments[2];
}

TEST(Checks, indexPathOpen) {
    const auto withRiserAt = [](const char* setting) {
        FieldJob job = riser("");
        readAs(job, "A", 1.0, "4");
        readAs(job, "B", 1.0, "4");
        job.settingOnly("R", setting);
        return severityOf(job, kIndexValveThrottled, "R");
    };
    EXPECT_EQ(withRiserAt("4"), std::nullopt);
    EXPECT_EQ(withRiserAt("3"), Severity::Error);
}

TEST(Checks, noOtherOpenTerminalTakesLessThanTheIndex) {
    const auto withNeighbourAt = [](const char* setting) {
        FieldJob job = twoRisers();
        job.round(RoundKind::Survey);
        readAs(job, "A", 0.85, setting);  // the least of all, in a riser that takes more than the other
        readAs(job, "B", 1.5, "4");
        readAs(job, "C", 0.95, "4");
        readAs(job, "D", 0.95, "4");
        return severityOf(job, kIndexRival, "A");
    };
    EXPECT_EQ(withNeighbourAt("4"), Severity::Warning);
    EXPECT_EQ(withNeighbourAt("3"), std::nullopt);
}

TEST(Checks, aRivalNearerThanCanBeReadIsUndecided) {
    FieldJob job = twoRisers();
    job.instrument("2", "");  // 1 % of flow, 1.4 % of the distance of two (by hand)
    job.round(RoundKind::Survey);
    readAs(job, "A", 0.945);
    readAs(job, "B", 1.3);
    readAs(job, "C", 0.95);
    readAs(job, "D", 1.0);
    EXPECT_EQ(severityOf(job, kIndexRival, "A"), std::nullopt);
    EXPECT_EQ(severityOf(job, kIndexRivalUndecided, "A"), Severity::Warning);
    readAs(job, "A", 0.93);
    EXPECT_EQ(severityOf(job, kIndexRival, "A"), Severity::Warning);
    EXPECT_EQ(severityOf(job, kIndexRivalUndecided, "A"), std::nullopt);
}

TEST(Checks, sumClosure) {
    const auto withRiserFlow = [](double ratio) {
        FieldJob job = riser("");
        readAs(job, "A", 1.0, "4");
        readAs(job, "B", 1.0, "4");
        job.dp("R", dpFor(2 * ratio, 8), "4");
        return severityOf(job, kSumOpen, "R");
    };
    // Every valve 5 %: u = sqrt(0.4^2 + 0.2^2 + 0.2^2) = 0.49 m3/h at a sum of 8 (by hand).
    EXPECT_EQ(withRiserFlow(1.10), std::nullopt);
    EXPECT_EQ(withRiserFlow(1.15), Severity::Warning);  // z = 2.2
    EXPECT_EQ(withRiserFlow(1.30), Severity::Error);    // z = 4
}

TEST(Checks, sumClosureComparesReadingsOfOneState) {
    FieldJob job = riser("");
    readAs(job, "A", 1.0);
    readAs(job, "B", 1.0);
    job.dp("R", dpFor(2.0, 8), "4");
    job.settingOnly("R", "3");
    job.dp("R", dpFor(1.4, 4), "3");  // A and B are of the state before
    EXPECT_EQ(severityOf(job, kSumOpen), std::nullopt);
    readAs(job, "A", 1.0);
    readAs(job, "B", 1.0);
    EXPECT_EQ(severityOf(job, kSumOpen, "R"), Severity::Error);
    job.round(RoundKind::Adjusting);
    job.dp("R", dpFor(1.4, 4), "3");  // A and B are carried over
    EXPECT_EQ(severityOf(job, kSumOpen), std::nullopt);
}

TEST(Checks, groupSpread) {
    const auto spreadIn = [](RoundKind kind, double high) {
        FieldJob job = flatLoop(2);
        job.round(kind);
        readAs(job, "A", high);
        readAs(job, "B", 2 - high);
        return severityOf(job, kSpreadWide);
    };
    EXPECT_EQ(spreadIn(RoundKind::Adjusting, 1.02), std::nullopt);
    EXPECT_EQ(spreadIn(RoundKind::Adjusting, 1.03), Severity::Warning);
    EXPECT_EQ(spreadIn(RoundKind::Survey, 1.3), std::nullopt);
}

TEST(Checks, finalOffDesign) {
    const auto finalAt = [](double ratio, RoundKind kind) {
        FieldJob job = flatLoop(2);
        job.round(kind);
        readAs(job, "A", ratio);
        const base::Id reading = readAs(job, "B", ratio);
        const auto bare = severityOf(job, kFinalOffDesign, "B");
        job.change(job.project().readings().at(reading),
                   [](project::Reading& r) { r.reason = "pump too small"; });
        const auto explained = severityOf(job, kFinalOffDesign, "B");
        return std::pair{bare, explained};
    };
    EXPECT_EQ(finalAt(0.88, RoundKind::Final),
              (std::pair{std::optional(Severity::BlocksSignature), std::optional(Severity::BlocksSignature)}))
        << "only a deficiency lifts it";
    EXPECT_EQ(finalAt(0.92, RoundKind::Final).first, std::nullopt);
    EXPECT_EQ(finalAt(0.88, RoundKind::Adjusting).first, std::nullopt);
}

TEST(Checks, surveyExtremes) {
    const auto at = [](double ratio, RoundKind kind) {
        FieldJob job = flatLoop(2);
        job.round(kind);
        readAs(job, "A", 1.0);
        readAs(job, "B", ratio);
        return severityOf(job, kFarFromDesign, "B");
    };
    EXPECT_EQ(at(0.39, RoundKind::Survey), Severity::Warning);
    EXPECT_EQ(at(0.41, RoundKind::Survey), std::nullopt);
    EXPECT_EQ(at(1.99, RoundKind::Survey), std::nullopt);
    EXPECT_EQ(at(2.01, RoundKind::Survey), Severity::Warning);
    EXPECT_EQ(at(2.01, RoundKind::Adjusting), std::nullopt);
}

TEST(Checks, valveNearlyShut) {
    const auto at = [](const char* setting) {
        FieldJob job = flatLoop(1);
        job.round(RoundKind::Survey);
        job.settingOnly("A", setting);
        return severityOf(job, kValveNearlyShut, "A");
    };
    EXPECT_EQ(at("0.9"), std::nullopt);
    EXPECT_EQ(at("0.7"), Severity::Warning);
}

TEST(Checks, valveNoise) {
    FieldJob job = flatLoop(1);
    job.round(RoundKind::Survey);
    job.dp("A", "199", "2");
    EXPECT_EQ(severityOf(job, kValveDpHigh), std::nullopt);
    job.dp("A", "201", "2");
    EXPECT_EQ(severityOf(job, kValveDpHigh, "A"), Severity::Warning);
}

TEST(Checks, finalReadingsComeLast) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Adjusting);
    readAs(job, "A", 1.0, "3");
    readAs(job, "B", 1.0, "4");
    job.round(RoundKind::Final);
    readAs(job, "A", 1.0, "3");
    readAs(job, "B", 1.0, "4");
    EXPECT_EQ(severityOf(job, kReadBeforeLastMove), std::nullopt);
    readAs(job, "A", 1.0, "2");  // moved in the middle of the final round
    EXPECT_EQ(severityOf(job, kReadBeforeLastMove, "B"), Severity::Error);
    EXPECT_EQ(severityOf(job, kReadBeforeLastMove, "A"), std::nullopt);
    EXPECT_EQ(assessNewest(job).verdict, Verdict::NotAccepted);
    readAs(job, "B", 1.0, "4");
    EXPECT_EQ(severityOf(job, kReadBeforeLastMove), std::nullopt);
}

TEST(Checks, aCorrectedSettingIsNoMove) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Final, project::RoundState::Open);
    readAs(job, "A", 1.0, "3");
    readAs(job, "B", 1.0, "4");
    support::CountingIds ids(500);
    const auto edit = storeSetting(job.project(), job.newestRound(), job.idOf("B"), job.decimal("3"),
                                   WalkContext{std::nullopt, std::nullopt, ids, {}});
    ASSERT_TRUE(edit);
    for (const project::AnyRecord& record : edit->put) {
        job.project().put(std::get<project::Reading>(record));
    }
    EXPECT_EQ(severityOf(job, kReadBeforeLastMove), std::nullopt);
}

TEST(Checks, tooPerfect) {
    const auto withFlows = [](const std::array<double, 6>& flows, const base::MessageForm& form) {
        FieldJob job = flatLoop(6);
        job.round(RoundKind::Survey);
        for (std::size_t i = 0; i < 6; ++i) {
            readAs(job, std::string(1, static_cast<char>('A' + i)), flows[i]);
        }
        return severityOf(job, form);
    };
    EXPECT_EQ(withFlows({1.0, 1.02, 0.98, 1.03, 0.97, 1.04}, kFlowsLikeDesign), std::nullopt);
    // Of flows that scatter by 1 % about design one in twelve comes as near to it: two of six are chance.
    EXPECT_EQ(withFlows({1.0, 1.0, 0.98, 1.03, 0.97, 1.04}, kFlowsLikeDesign), std::nullopt);
    EXPECT_EQ(withFlows({1.0, 1.0, 1.0, 1.0, 0.97, 1.04}, kFlowsLikeDesign), Severity::Warning);
    EXPECT_EQ(withFlows({1.1, 1.1, 0.98, 1.03, 0.97, 1.04}, kDigitsRepeated), Severity::Warning);
    EXPECT_EQ(withFlows({1.1, 1.12, 0.98, 1.03, 0.97, 1.04}, kDigitsRepeated), std::nullopt);
}

TEST(Checks, mixedUnits) {
    FieldJob job = flatLoop(3);
    job.instrument("1", "");
    job.round(RoundKind::Survey);
    job.dp("A", "25.0", "4");
    job.dp("B", "25.2", "4");
    const base::Id third = job.dp("C", "25.1", "4");
    EXPECT_EQ(severityOf(job, kUnitsMixed), std::nullopt);
    job.change(job.project().readings().at(third), [&](project::Reading& r) {
        r.dp = quantity::measuredDifference(FieldJob::decimal("3.6"), Unit::Psi,
                                            job.project().fluid().density());
    });
    EXPECT_EQ(severityOf(job, kUnitsMixed, "C"), Severity::Warning);
    // The unit of the same digits was changed by somebody: it is meant.
    project::Reading slip = job.project().readings().at(third);
    slip.id = job.ids().next();
    slip.status = project::ReadingStatus::Superseded;
    slip.dp = job.pressure("3.6");
    job.project().put(slip);
    job.change(job.project().readings().at(third), [&](project::Reading& r) { r.supersedes = slip.id; });
    EXPECT_EQ(severityOf(job, kUnitsMixed), std::nullopt);
    job.change(job.project().readings().at(third), [&](project::Reading& r) { r.supersedes.reset(); });
    const base::Id other = job.instrument("1", "");
    job.change(job.project().readings().at(third), [&](project::Reading& r) { r.instrument = other; });
    EXPECT_EQ(severityOf(job, kUnitsMixed), std::nullopt);
}

TEST(Checks, fluidCorrection) {
    FieldJob job = flatLoop(1);
    job.round(RoundKind::Survey);
    EXPECT_EQ(severityOf(job, kGlycolWithoutConcentration), std::nullopt);
    EXPECT_EQ(severityOf(job, kFluidUnusable), std::nullopt);
    job.change(job.project().job(), [](project::Job& j) { j.fluid = fluid::FluidKind::PropyleneGlycol; });
    EXPECT_EQ(severityOf(job, kGlycolWithoutConcentration), Severity::Error);
    job.change(job.project().job(), [](project::Job& j) {
        j.concentration = quantity::measured<Ratio>(FieldJob::decimal("30"), Unit::Percent);
    });
    EXPECT_EQ(severityOf(job, kGlycolWithoutConcentration), std::nullopt);
    EXPECT_EQ(severityOf(job, kFluidUnusable), std::nullopt);
    job.change(job.project().job(), [](project::Job& j) {
        j.concentration = quantity::measured<Ratio>(FieldJob::decimal("95"), Unit::Percent);
    });
    EXPECT_EQ(severityOf(job, kFluidUnusable), Severity::Error);
}

TEST(Checks, selfActingInGroup) {
    FieldJob job = flatLoop(2);
    EXPECT_EQ(severityOf((job.round(RoundKind::Survey), job), kSelfActingInGroup), std::nullopt);
    job.branch("L", "", "4", std::nullopt, BranchKind::Picv);
    EXPECT_EQ(severityOf(job, kSelfActingInGroup, "L"), Severity::Note);
}

TEST(Checks, findingsComeMostSevereFirst) {
    FieldJob job = riser("9");
    readAs(job, "A", 1.3, "3");
    readAs(job, "B", 1.0, "4");
    const Assessment a = assessNewest(job);
    ASSERT_GE(a.findings.size(), 1u);
    for (std::size_t i = 1; i < a.findings.size(); ++i) {
        EXPECT_GE(a.findings[i - 1].severity, a.findings[i].severity);
    }
}

}  // namespace
}  // namespace ww::balancing
