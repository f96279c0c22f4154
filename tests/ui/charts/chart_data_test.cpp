#include <gtest/gtest.h>

#include <QFont>
#include <algorithm>
#include <cmath>
#include <variant>

#include "core/balancing/assess.h"
#include "tests/support/demo_project.h"
#include "tests/support/walk_job.h"
#include "ui/charts/chart_painter.h"
#include "ui/charts/chart_view.h"
#include "ui/charts/convergence_chart_data.h"
#include "ui/charts/pump_chart_data.h"

namespace ww::ui::charts {
namespace {

using support::DemoOptions;
using support::demoProject;

std::vector<balancing::Assessment> assessed(const project::Project& project) {
    std::vector<balancing::Assessment> rounds;
    for (const std::size_t index : project.roundsByNumber()) {
        rounds.push_back(balancing::assess(project, project.rounds()[index].id));
    }
    return rounds;
}

const Line* lineWith(const ChartFigure& figure, LineRole role) {
    for (const Line& line : figure.lines) {
        if (line.role == role) {
            return &line;
        }
    }
    return nullptr;
}

// Steps of 1, 2 or 5 times a power of ten: common practice for scales, no source.
TEST(Axis, stepsAreRound) {
    const Axis axis = niceAxis("Flow", 0, 23.7, 6);
    EXPECT_DOUBLE_EQ(axis.step, 5.0);
    EXPECT_DOUBLE_EQ(axis.most, 25.0);
    EXPECT_EQ(axis.ticks().size(), 6u);
    EXPECT_EQ(niceAxis("Head", 0, 0.9, 5).decimals, 1);
    EXPECT_EQ(niceAxis("Head", 0, 930, 5).decimals, 0);
}

TEST(PumpChart, drawsCurvesDutiesAndDesign) {
    const project::Project project = demoProject();
    const auto rounds = assessed(project);
    const ChartFigure figure = pumpChart(project, rounds);
    for (const LineRole role :
         {LineRole::PumpCurve, LineRole::Proposed, LineRole::FirstSystem, LineRole::LastSystem}) {
        const Line* line = lineWith(figure, role);
        ASSERT_NE(line, nullptr);
        EXPECT_FALSE(line->name.isEmpty());
        for (const QPointF& point : line->points) {
            EXPECT_GE(point.x(), figure.x.least);
            EXPECT_LE(point.x(), figure.x.most + 1e-9);
            EXPECT_GE(point.y(), figure.y.least);
            EXPECT_LE(point.y(), figure.y.most + 1e-9);
        }
    }
    EXPECT_EQ(std::count_if(figure.marks.begin(), figure.marks.end(),
                            [](const PointMark& mark) { return mark.kind == MarkKind::Duty; }),
              3);
    EXPECT_EQ(std::count_if(figure.marks.begin(), figure.marks.end(),
                            [](const PointMark& mark) { return mark.kind == MarkKind::Design; }),
              1);
}

// A duty whose head no gauge gave is a dashed ring, and the sentence says what that is.
TEST(PumpChart, aDutyWithoutGaugesIsMarkedAsAssumed) {
    project::Project project = demoProject();
    EXPECT_FALSE(pumpChart(project, assessed(project)).sentence.contains("Dashed ring"));
    project::PumpReading first = project.pumpReadings()[0];
    first.gaugeRise.reset();
    first.flow = quantity::measured<quantity::VolumeFlow>(*base::Decimal::parse("9"),
                                                          quantity::Unit::CubicMetrePerHour);
    project.put(first);
    const ChartFigure figure = pumpChart(project, assessed(project));
    EXPECT_TRUE(figure.marks[0].isAssumed);
    EXPECT_FALSE(figure.marks[1].isAssumed);
    EXPECT_TRUE(figure.sentence.contains("Dashed ring")) << figure.sentence.toStdString();
}

// The system curve of a loop without static head is a parabola through the origin and the duty (Karassik et
// al., Pump Handbook): at half the flow a quarter of the head.
TEST(PumpChart, systemCurveIsASquareLawThroughTheDuty) {
    const project::Project project = demoProject();
    const ChartFigure figure = pumpChart(project, assessed(project));
    const Line* line = lineWith(figure, LineRole::LastSystem);
    ASSERT_NE(line, nullptr);
    const PointMark& duty = figure.marks[2];
    for (const QPointF& point : line->points) {
        EXPECT_NEAR(point.y(), duty.at.y() * point.x() * point.x() / (duty.at.x() * duty.at.x()), 1e-9);
    }
}

// The demo's pump table: 12.0 m at shutoff, 6.0 m at 16 m3/h; Karassik's laws bring the design point onto the
// proposed curve.
TEST(PumpChart, proposedCurvePassesTheDesignPoint) {
    const project::Project project = demoProject();
    const ChartFigure figure = pumpChart(project, assessed(project));
    const Line* pump = lineWith(figure, LineRole::PumpCurve);
    ASSERT_NE(pump, nullptr);
    EXPECT_NEAR(pump->points.front().y(), 12.0, 1e-9);
    const Line* proposed = lineWith(figure, LineRole::Proposed);
    ASSERT_NE(proposed, nullptr);
    const QPointF design = figure.marks.back().at;
    double nearest = 1e9;
    for (std::size_t i = 1; i < proposed->points.size(); ++i) {
        const QPointF a = proposed->points[i - 1];
        const QPointF b = proposed->points[i];
        if (design.x() >= a.x() && design.x() <= b.x()) {
            const double t = (design.x() - a.x()) / (b.x() - a.x());
            nearest = std::abs(a.y() + t * (b.y() - a.y()) - design.y());
        }
    }
    EXPECT_LT(nearest, 0.02);
}

// What is drawn, the cross and the sentence are of one basis: the decision's.
TEST(PumpChart, aDecisionsCurvesPassItsDesignPoint) {
    const project::Project project = demoProject();
    pump_room::PumpDecision decision = pump_room::decidePump(project);
    ASSERT_TRUE(decision.counted.has_value());
    const auto rounds = assessed(project);
    const ChartFigure figure = pumpChart(project, rounds, &decision);
    const Line* slowed = lineWith(figure, LineRole::Proposed);
    ASSERT_NE(slowed, nullptr);
    const QPointF design = figure.marks.back().at;
    double nearest = 1e9;
    for (const QPointF& point : slowed->points) {
        nearest = std::min(nearest, std::hypot(point.x() - design.x(), point.y() - design.y()));
    }
    EXPECT_LT(nearest, 0.3);
    EXPECT_TRUE(figure.sentence.contains("% of full speed")) << figure.sentence.toStdString();
    EXPECT_FALSE(figure.sentence.contains("Shaft power about")) << figure.sentence.toStdString();
    EXPECT_FALSE(figure.sentence.contains("of the last round gives")) << figure.sentence.toStdString();
    decision.findings.push_back({&pump_room::kPumpFits, "", {"8 m", "8 m"}});
    const ChartFigure kept = pumpChart(project, rounds, &decision);
    EXPECT_EQ(lineWith(kept, LineRole::Proposed), nullptr);
    EXPECT_TRUE(kept.sentence.contains("No change")) << kept.sentence.toStdString();
}

// Where the gauges contradict the curve, the curve that counts passes the duty that was read, and the one as
// published stands beside it with its name.
TEST(PumpChart, theCurveThroughTheGaugesStandsBesideTheOneAsPublished) {
    project::Project project = demoProject();
    const ChartFigure right = pumpChart(project, assessed(project));
    EXPECT_EQ(lineWith(right, LineRole::PumpCurve)->name, "pump as found");
    project::Pump pump = project.pumps()[0];
    for (project::PumpTableRow& row : pump.rows) {
        row.head = quantity::measured<quantity::Head>(base::Decimal::fromNumber(1.1 * row.head.value.si(), 4),
                                                      quantity::Unit::Metre);
    }
    project.put(pump);
    const ChartFigure figure = pumpChart(project, assessed(project));
    const Line* counted = lineWith(figure, LineRole::PumpCurve);
    ASSERT_NE(counted, nullptr);
    EXPECT_EQ(counted->name, "curve through the gauges");
    EXPECT_NEAR(counted->points.front().y(), 12.0, 0.02);
    const Line* published = lineWith(figure, LineRole::FirstPump);
    ASSERT_NE(published, nullptr);
    EXPECT_EQ(published->name, "curve as published");
    EXPECT_NEAR(published->points.front().y(), 1.1 * 12.0, 1e-6);
    EXPECT_EQ(figure.sentence, right.sentence) << "duty and speed are those that were read";
}

TEST(PumpChart, tableTwinHoldsThePlottedPoints) {
    const project::Project project = demoProject();
    const ChartFigure figure = pumpChart(project, assessed(project));
    ASSERT_GE(figure.tableRows.size(), figure.marks.size());
    for (std::size_t i = 0; i < figure.marks.size(); ++i) {
        EXPECT_EQ(figure.tableRows[i].size(), figure.tableHeads.size());
        EXPECT_EQ(figure.tableRows[i][1], QString::number(figure.marks[i].at.x(), 'f', 2));
        EXPECT_EQ(figure.tableRows[i][2], QString::number(figure.marks[i].at.y(), 'f', 2));
    }
    EXPECT_TRUE(figure.sentence.startsWith("Duty ")) << figure.sentence.toStdString();
}

TEST(PumpChart, isEmptyWithoutCurveAndDuty) {
    DemoOptions options;
    options.hasPump = false;
    options.hasRounds = false;
    EXPECT_TRUE(pumpChart(demoProject(options), {}).isEmpty());
    EXPECT_TRUE(pumpChart(project::Project(), {}).isEmpty());
}

TEST(PumpChart, showsTheCurveBeforeTheFirstRound) {
    DemoOptions options;
    options.hasRounds = false;
    const ChartFigure figure = pumpChart(demoProject(options), {});
    EXPECT_NE(lineWith(figure, LineRole::PumpCurve), nullptr);
    EXPECT_TRUE(figure.marks.empty());
}

TEST(ConvergenceChart, hasALineForEveryTerminalAndTheSpread) {
    const project::Project project = demoProject();
    const auto rounds = assessed(project);
    const ChartFigure figure = convergenceChart(project, rounds);
    EXPECT_EQ(figure.lines.size(), 6u);
    for (const Line& line : figure.lines) {
        EXPECT_EQ(line.points.size(), 3u);
    }
    EXPECT_EQ(figure.rowCells.size(), 3);
    ASSERT_TRUE(figure.band.has_value());
    EXPECT_DOUBLE_EQ(figure.band->low, 95);
    EXPECT_DOUBLE_EQ(figure.band->high, 105);
    EXPECT_EQ(figure.tableRows.size(), 7u);
    EXPECT_EQ(figure.tableRows.back(), QStringList(figure.rowLabel) + figure.rowCells);
    EXPECT_TRUE(convergenceChart(project, {}).isEmpty());
}

TEST(ConvergenceChart, namesTheSelectedBranch) {
    const project::Project project = demoProject();
    const ChartFigure figure = convergenceChart(project, assessed(project), project.branchTagged("T3")->id);
    const Line* line = lineWith(figure, LineRole::Singled);
    ASSERT_NE(line, nullptr);
    EXPECT_TRUE(line->name.startsWith("T3 "));
}

/// As many terminals as asked for, read in a survey and one more round.
project::Project readTwice(int terminals) {
    const project::Edit content = support::walkJob({.terminals = terminals, .adjustingRounds = 1});
    project::Project project;
    for (const project::AnyRecord& record : content.put) {
        std::visit([&](const auto& one) { project.put(one); }, record);
    }
    return project;
}

// Nearest rank: the value at ceil(share x count) of the sorted values; common practice, no source.
TEST(ConvergenceChart, manyTerminalsAreDrawnAsTheirOutlineAndStandInTheTable) {
    const int many = static_cast<int>(kMostTerminalLines) + 1;
    const project::Project project = readTwice(many);
    const auto rounds = assessed(project);
    const base::Id selected = project.branchTagged("B-07")->id;
    const ChartFigure figure = convergenceChart(project, rounds, selected);
    std::vector<double> last;
    for (const balancing::BranchResult& branch : rounds.back().branches) {
        if (branch.isTerminal) {
            last.push_back(100 * branch.ofTarget->si());
        }
    }
    std::sort(last.begin(), last.end());
    ASSERT_EQ(last.size(), 61U);
    // Of 61: ceil(54.9), ceil(30.5) and ceil(6.1), counted from 1.
    const std::vector<std::pair<QString, double>> expected{{"largest", last[60]},
                                                           {"9 of 10 below", last[54]},
                                                           {"half below", last[30]},
                                                           {"1 of 10 below", last[6]},
                                                           {"smallest", last[0]}};
    EXPECT_EQ(lineWith(figure, LineRole::OneOfMany), nullptr);
    ASSERT_GE(figure.lines.size(), expected.size() + 1);
    EXPECT_LE(figure.lines.size(), expected.size() + 4);
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_EQ(figure.lines[i].role, LineRole::Summary);
        EXPECT_TRUE(figure.lines[i].name.startsWith(expected[i].first + ' '));
        ASSERT_EQ(figure.lines[i].points.size(), 2U);
        EXPECT_DOUBLE_EQ(figure.lines[i].points.back().y(), expected[i].second);
    }
    EXPECT_TRUE(std::any_of(figure.lines.begin(), figure.lines.end(), [](const Line& line) {
        return line.role == LineRole::Singled && line.name.startsWith("B-07 ");
    }));
    // What is drawn stands first, in the same order; then every other terminal, and the spread.
    EXPECT_EQ(figure.tableRows.size(), expected.size() + 61 + 1);
    for (std::size_t i = 0; i < figure.lines.size(); ++i) {
        EXPECT_TRUE(figure.lines[i].name.startsWith(figure.tableRows[i][0] + ' '));
        EXPECT_EQ(figure.tableRows[i][2], QString::number(figure.lines[i].points.back().y(), 'f', 1));
    }
    EXPECT_TRUE(figure.sentence.endsWith("stand in the table.")) << figure.sentence.toStdString();
}

TEST(ConvergenceChart, eachLineIsDrawnAsLongAsTheyCanBeToldApart) {
    const project::Project project = readTwice(static_cast<int>(kMostTerminalLines));
    const ChartFigure figure = convergenceChart(project, assessed(project));
    EXPECT_EQ(figure.lines.size(), kMostTerminalLines);
    EXPECT_EQ(lineWith(figure, LineRole::Summary), nullptr);
    EXPECT_FALSE(figure.sentence.contains("table"));
}

// WCAG 2.2, 1.1.1: what is drawn is also said.
TEST(ChartView, hasNameSentenceAndTable) {
    const project::Project project = demoProject();
    ChartView view;
    view.setTokens(theme::tokens(theme::Display::Daylight));
    view.setFigure(pumpChart(project, assessed(project)));
    view.resize(600, 400);
    view.show();
    EXPECT_FALSE(view.isTableShown());
    ASSERT_NE(view.focusProxy(), nullptr);
    EXPECT_EQ(view.focusProxy()->accessibleName(), "Pump and system");
    EXPECT_EQ(view.focusProxy()->accessibleDescription(), view.figure().sentence);
    view.toggleTable();
    EXPECT_TRUE(view.isTableShown());
    EXPECT_TRUE(view.focusProxy()->accessibleName().contains("table"));
    view.setFigure(ChartFigure());
    view.grab();
}

}  // namespace
}  // namespace ww::ui::charts
