// Two networks that are exact by construction: every loss is H = k Q^2, so their flows follow from the square
// law alone (own derivation; the expected figures below are that solution, rounded). The rounds of a
// proportional balance are walked through them: readings come from the network, flows and judgment from
// balancing.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "core/balancing/assess.h"
#include "core/balancing/system_curve.h"
#include "core/curve/valve_flow.h"
#include "core/quantity/measured.h"
#include "tests/support/field_job.h"

namespace ww::balancing {
namespace {

using quantity::Unit;
using support::FieldJob;

constexpr double kFeetOfWaterPerPsi = 2.309;  // water at 60 F
constexpr std::array<double, 4> kDesign_gpm{20, 30, 25, 25};
constexpr std::array<const char*, 4> kTags{"T1", "T2", "T3", "T4"};

struct Ladder {
    std::array<double, 4> circuit_ft;  ///< loss at design flow with the valve open
    std::array<double, 4> segment_ft;  ///< supply and return, at design flow of what lies beyond
    std::array<double, 4> openCv;
};

struct Solved {
    std::array<double, 4> flow_gpm;
    double total_gpm = 0;
    double head_ft = 0;
};

/// From the far end back: with the last flow known all others follow; the pump H = 60 n^2 - 0.0012 Q^2 sets
/// the size.
Solved solve(const Ladder& ladder, const std::array<double, 4>& added, double speedFraction) {
    std::array<double, 4> relative{};
    double head = 0;
    double beyond = 0;
    double beyondDesign = 0;
    for (std::size_t i = 4; i-- > 0;) {
        const double k = ladder.circuit_ft[i] / (kDesign_gpm[i] * kDesign_gpm[i]) + added[i];
        relative[i] = i == 3 ? 1.0 : std::sqrt(head / k);
        head = k * relative[i] * relative[i];
        beyond += relative[i];
        beyondDesign += kDesign_gpm[i];
        head += ladder.segment_ft[i] / (beyondDesign * beyondDesign) * beyond * beyond;
    }
    Solved out;
    const double resistance = head / (beyond * beyond);
    out.total_gpm = speedFraction * std::sqrt(60 / (resistance + 0.0012));
    out.head_ft = resistance * out.total_gpm * out.total_gpm;
    for (std::size_t i = 0; i < 4; ++i) {
        out.flow_gpm[i] = relative[i] / beyond * out.total_gpm;
    }
    return out;
}

std::string text(double number, int decimals) {
    return base::Decimal::fromNumber(number, decimals).text();
}

/// Cv of the throttled valve: its loss at open plus the added one.
double throttledCv(double openCv, double added) {
    return openCv / std::sqrt(1 + added * openCv * openCv / kFeetOfWaterPerPsi);
}

/// A job of four terminals whose valves have the settings 1 (nearly shut) to 9 (open); setting r is what the
/// valve gets in round r.
class Walk {
  public:
    Walk(const Ladder& ladder, const std::vector<std::array<double, 4>>& addedByRound)
        : m_ladder(ladder), m_job(project::UnitSystem::US) {
        m_job.pump("P-1", {{"0", "60"},
                           {"20", "59.52"},
                           {"40", "58.08"},
                           {"60", "55.68"},
                           {"80", "52.32"},
                           {"100", "48"},
                           {"120", "42.72"},
                           {"140", "36.48"},
                           {"160", "29.28"}});
        for (std::size_t i = 0; i < 4; ++i) {
            std::vector<double> added;
            for (const auto& round : addedByRound) {
                if (round[i] > 0 && (added.empty() || round[i] != added.back())) {
                    added.push_back(round[i]);
                }
            }
            std::sort(added.rbegin(), added.rend());
            std::vector<std::pair<std::string, std::string>> rows{{"1", text(ladder.openCv[i] / 10, 4)}};
            for (std::size_t n = 0; n < added.size(); ++n) {
                rows.emplace_back(std::to_string(n + 2), text(throttledCv(ladder.openCv[i], added[n]), 4));
                m_settings[i].emplace_back(added[n], rows.back().first);
            }
            rows.emplace_back("9", text(ladder.openCv[i], 4));
            m_job.branch(kTags[i], "", text(kDesign_gpm[i], 0), m_job.valve(rows));
        }
    }

    Solved round(project::RoundKind kind, const std::array<double, 4>& added, double speedFraction = 1) {
        const Solved solved = solve(m_ladder, added, speedFraction);
        m_job.round(kind);
        for (std::size_t i = 0; i < 4; ++i) {
            std::string setting = "9";
            for (const auto& [amount, at] : m_settings[i]) {
                setting = amount == added[i] ? at : setting;
            }
            const double cv = throttledCv(m_ladder.openCv[i], added[i]);
            m_job.dp(kTags[i], text(std::pow(solved.flow_gpm[i] / cv, 2), 4), setting);
        }
        m_job.pumpRise(text(solved.head_ft, 3), text(1750 * speedFraction, 3));
        return solved;
    }
    const FieldJob& job() const { return m_job; }

  private:
    Ladder m_ladder;
    FieldJob m_job;
    std::array<std::vector<std::pair<double, std::string>>, 4> m_settings;
};

void expectRound(const FieldJob& job, const std::array<double, 4>& percentOfDesign, double total_gpm,
                 const char* reference) {
    const Assessment a = assess(job.project(), job.newestRound());
    ASSERT_TRUE(a.totalFlow);
    EXPECT_NEAR(a.totalFlow->in(Unit::GallonPerMinute), total_gpm, 0.0005 * total_gpm);
    for (std::size_t i = 0; i < 4; ++i) {
        const BranchResult& result = a.branches[i];
        // Within 0.05 % of flow.
        EXPECT_NEAR(100 * result.ofDesign->si(), percentOfDesign[i], 0.0005 * percentOfDesign[i]) << kTags[i];
        EXPECT_NEAR(result.share->si(), kDesign_gpm[i] * percentOfDesign[i] / 100 / total_gpm, 0.0005);
        EXPECT_NEAR(result.ofTarget->si(), percentOfDesign[i] / total_gpm,
                    0.001 * percentOfDesign[i] / total_gpm);
    }
    ASSERT_EQ(a.groups.size(), 1u);
    ASSERT_TRUE(a.groups[0].reference);
    EXPECT_STREQ(job.project().branches()[*a.groups[0].reference].tag.c_str(), reference);
    ASSERT_TRUE(a.index.terminal);
    EXPECT_EQ(*a.index.terminal, *a.groups[0].reference);
    EXPECT_TRUE(a.index.isValveFullyOpen);
    EXPECT_TRUE(a.index.isPathFullyOpen);
}

State stateOf(const FieldJob& job, const char* tag) {
    return assess(job.project(), job.newestRound()).branches[job.indexOf(tag)].state;
}

TEST(ExactNetworks, farIndexOnePassAndThePump) {
    // Circuits 12 ft at 20 gpm, 15 at 30, 10 at 25, 14 at 25; mains 8 ft at 100, 4 at 80, 4 at 50, 3 at 25.
    const Ladder ladder{{12, 15, 10, 14}, {8, 4, 4, 3}, {12, 20, 16, 14}};
    const std::array<double, 4> open{0, 0, 0, 0};
    const std::array<double, 4> third{0, 0, 0.0112, 0};
    const std::array<double, 4> second{0, 0.00666667, 0.0112, 0};
    const std::array<double, 4> first{0.0325, 0.00666667, 0.0112, 0};
    Walk walk(ladder, {open, third, second, first});

    walk.round(project::RoundKind::Survey, open);
    expectRound(walk.job(), {153.73, 123.06, 131.57, 100.91}, 125.780, "T4");
    EXPECT_EQ(stateOf(walk.job(), "T1"), State::Over);
    EXPECT_EQ(stateOf(walk.job(), "T4"), State::AtStop);  // short with its valve fully open

    walk.round(project::RoundKind::Adjusting, third);
    expectRound(walk.job(), {156.98, 127.25, 107.55, 107.55}, 123.344, "T4");
    walk.round(project::RoundKind::Adjusting, second);
    expectRound(walk.job(), {160.20, 110.99, 110.99, 110.99}, 120.834, "T4");
    walk.round(project::RoundKind::Adjusting, first);
    expectRound(walk.job(), {115.47, 115.47, 115.47, 115.47}, 115.470, "T4");
    Assessment a = assess(walk.job().project(), walk.job().newestRound());
    EXPECT_EQ(a.verdict, Verdict::Accepted);
    EXPECT_NEAR(a.spread->si(), 0.0, 0.0005);

    // The pump: 44.00 ft at 115.47 gpm now, 33.00 ft at design; speed 0.86603 by the affinity laws; 48.0
    // - 33.0 ft too much at design flow.
    const auto curve = systemCurve(walk.job().project(), a);
    ASSERT_TRUE(curve);
    EXPECT_NEAR(curve->head.in(Unit::Foot), 44.0, 0.01);
    const auto proposal = pumpProposal(walk.job().project(), a);
    ASSERT_TRUE(proposal);
    EXPECT_NEAR(proposal->speedFraction, 0.86603, 0.0005);
    EXPECT_NEAR(proposal->headAtDesign.in(Unit::Foot), 33.0, 0.03);
    EXPECT_NEAR(proposal->excess.head.in(Unit::Foot), 15.0, 0.05);

    walk.round(project::RoundKind::Final, first, 0.866025);
    expectRound(walk.job(), {100, 100, 100, 100}, 100.000, "T4");
    a = assess(walk.job().project(), walk.job().newestRound());
    EXPECT_EQ(a.verdict, Verdict::Accepted);
    EXPECT_EQ(a.onShareCount, 4u);
    EXPECT_NEAR(systemCurve(walk.job().project(), a)->head.in(Unit::Foot), 33.0, 0.01);
    ASSERT_EQ(a.pumps.size(), 1u);
    EXPECT_NEAR(a.pumps[0].speedFraction, 0.866025, 1e-5);
    EXPECT_NEAR(a.pumps[0].flowFromCurve->in(Unit::GallonPerMinute), 100.0, 0.3);
}

TEST(ExactNetworks, theOpenSurveyReadsAsThePrintedPressures) {
    // dp in psi at Cv 12, 20, 16, 14, all open: 6.565, 3.407, 4.226, 3.247.
    FieldJob job(project::UnitSystem::US);
    const std::array<const char*, 4> cv{"12", "20", "16", "14"};
    for (std::size_t i = 0; i < 4; ++i) {
        job.branch(kTags[i], "", text(kDesign_gpm[i], 0), job.valve({{"0", "0"}, {"1", "2"}, {"4", cv[i]}}));
    }
    job.round(project::RoundKind::Survey);
    job.dp("T1", "6.565");
    job.dp("T2", "3.407");
    job.dp("T3", "4.226");
    job.dp("T4", "3.247");
    expectRound(job, {153.73, 123.06, 131.57, 100.91}, 125.780, "T4");
}

TEST(ExactNetworks, indexInTheMiddleNeedsThreePasses) {
    // Circuits 28 ft at 20 gpm, 12 at 30, 9 at 25, 8 at 25; mains 8 ft at 100, 3 at 80, 2 at 50, 1 at 25.
    const Ladder ladder{{28, 12, 9, 8}, {8, 3, 2, 1}, {12, 20, 16, 14}};
    const std::array<double, 4> open{0, 0, 0, 0};
    const std::array<double, 4> fourth{0, 0, 0, 0.0173982};
    const std::array<double, 4> third{0, 0, 0.0204864, 0.0173982};
    const std::array<double, 4> second{0, 0.0142606, 0.0204864, 0.0173982};
    // Exact: 13, 14 and 14 ft at design flow.
    const std::array<double, 4> exact{0, 13.0 / 900, 14.0 / 625, 14.0 / 625};
    Walk walk(ladder, {open, fourth, third, second, exact});

    walk.round(project::RoundKind::Survey, open);
    expectRound(walk.job(), {97.83, 132.91, 138.82, 138.82}, 128.848, "T1");
    walk.round(project::RoundKind::Adjusting, fourth);
    expectRound(walk.job(), {101.21, 140.00, 150.39, 101.21}, 125.141, "T1");
    walk.round(project::RoundKind::Adjusting, third);
    expectRound(walk.job(), {105.63, 149.07, 105.63, 110.64}, 119.914, "T1");
    walk.round(project::RoundKind::Adjusting, second);
    expectRound(walk.job(), {110.79, 110.79, 112.94, 118.29}, 113.204, "T1");
    // One pass leaves 7.5 points of design between best and worst supplied.
    const Assessment a = assess(walk.job().project(), walk.job().newestRound());
    EXPECT_NEAR(a.spread->si() * 113.204, 7.5, 0.05);
    walk.round(project::RoundKind::Final, exact, 0.894427);
    expectRound(walk.job(), {100, 100, 100, 100}, 100.000, "T1");
    EXPECT_EQ(assess(walk.job().project(), walk.job().newestRound()).verdict, Verdict::Accepted);
}

TEST(ExactNetworks, laterPassesComeNearer) {
    // Passes 2 and 3 of the same network, from the printed percentages (own derivation).
    for (const auto& [percent, total] : {std::pair{std::array{111.78, 111.78, 111.79, 112.01}, 111.839},
                                         std::pair{std::array{111.80, 111.80, 111.80, 111.81}, 111.804}}) {
        FieldJob job(project::UnitSystem::US);
        for (std::size_t i = 0; i < 4; ++i) {
            job.branch(kTags[i], "", text(kDesign_gpm[i], 0),
                       job.valve({{"1", "4"}, {"2", "9"}, {"4", "12"}}));
        }
        job.round(project::RoundKind::Adjusting);
        for (std::size_t i = 0; i < 4; ++i) {
            const double cv = i == 0 ? 12 : 9;
            job.dp(kTags[i], text(std::pow(kDesign_gpm[i] * percent[i] / 100 / cv, 2), 5),
                   i == 0 ? "4" : "2");
        }
        expectRound(job, percent, total, "T1");
    }
}

TEST(FlowUncertainty, onePascalThousandWithMeterAndTable) {
    // dp 1 kPa, meter 1 % and 0.1 kPa, table 5 %: sqrt(0.05^2 + (0.5 * 0.1005)^2) = 7.09 % (own derivation
    // from JCGM 100:2008, 5.1.6). The digits are written finely enough to leave no trace; fully open: no
    // position part.
    FieldJob job;
    job.instrument("1", "0.1");
    job.branch("A", "", "1", job.valve({{"0", "0"}, {"1", "1"}, {"4", "8"}}));
    job.round(project::RoundKind::Survey);
    job.dp("A", "1.00000");
    const Assessment a = assess(job.project(), job.newestRound());
    const BranchResult& result = a.branches[0];
    EXPECT_EQ(result.source, FlowSource::ValveDp);
    EXPECT_NEAR(*result.flowUncertainty / *result.flow, 0.0709, 0.00005);
    EXPECT_NEAR(*result.readingUncertainty / *result.flow, 0.5 * std::hypot(0.01, 0.1), 1e-6);
}

TEST(FlowUncertainty, fourTerminalsAddUpInQuadrature) {
    // 20, 30, 25 and 25 gpm, each known to 5 %: 100 gpm known to 2.525 gpm (own derivation).
    FieldJob job(project::UnitSystem::US);
    job.instrument("5", "");
    job.branch("M", "", "100", std::nullopt, project::BranchKind::None);
    for (std::size_t i = 0; i < 4; ++i) {
        job.branch(kTags[i], "M", text(kDesign_gpm[i], 0));
    }
    job.round(project::RoundKind::Survey);
    for (std::size_t i = 0; i < 4; ++i) {
        job.flow(kTags[i], text(kDesign_gpm[i], 5));
    }
    const Assessment a = assess(job.project(), job.newestRound());
    const BranchResult& main = a.branches[0];
    EXPECT_EQ(main.source, FlowSource::SumOfChildren);
    EXPECT_NEAR(main.flow->in(Unit::GallonPerMinute), 100, 1e-6);
    EXPECT_NEAR(main.flowUncertainty->in(Unit::GallonPerMinute), 2.525, 0.001);
}

TEST(SelfActingValves, rangeOfALimiter) {
    // Range 2 to 32 psid: 1.4 lies below, 12 within, 40 above (common practice, no source).
    for (const auto& [digits, state] :
         {std::pair{"1.4", State::Short}, std::pair{"12", State::OnShare}, std::pair{"40", State::Over}}) {
        FieldJob job(project::UnitSystem::US);
        const base::Id valve = job.valve({});
        job.change(job.project().valves().at(valve), [&](project::ValveModel& v) {
            v.minimumDp = job.pressure("2");
            v.maximumDp = job.pressure("32");
        });
        job.branch("L", "", "10", valve, project::BranchKind::Limiter);
        job.round(project::RoundKind::Survey);
        job.dp("L", digits);
        const Assessment a = assess(job.project(), job.newestRound());
        EXPECT_EQ(a.branches[0].state, state) << digits;
        EXPECT_EQ(a.branches[0].flow->in(Unit::GallonPerMinute) == 10.0, state == State::OnShare);
    }
}

}  // namespace
}  // namespace ww::balancing
