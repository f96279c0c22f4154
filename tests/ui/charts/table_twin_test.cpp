// Every chart of the program has a name, a sentence and a table that says what is drawn: the points of its
// lines and marks are compared with the cells. Source: WCAG 2.2, 1.1.1, and the interaction design of this
// project.
#include <gtest/gtest.h>

#include <QTableView>
#include <algorithm>
#include <cmath>
#include <set>

#include "tests/support/demo_project.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/each_page.h"
#include "ui/charts/chart_view.h"

namespace ww::ui::charts {
namespace {

/// The cells of the table that a chart is exchanged for, row by row.
std::vector<QStringList> cellsOf(const ChartView& chart) {
    const QAbstractItemModel* table = chart.findChild<QTableView*>()->model();
    std::vector<QStringList> rows;
    for (int row = 0; row < table->rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < table->columnCount(); ++column) {
            cells << table->index(row, column).data().toString();
        }
        rows.push_back(cells);
    }
    return rows;
}

/// That a cell says a number as it is drawn: to half a unit of its last digit, or to four figures.
void expectSays(const QString& cell, double drawn) {
    bool isNumber = false;
    const double said = cell.toDouble(&isNumber);
    ASSERT_TRUE(isNumber) << '"' << cell.toStdString() << "\" for " << drawn;
    const qsizetype point = cell.indexOf('.');
    const double lastDigit = point < 0 ? 1 : std::pow(10.0, -static_cast<double>(cell.size() - 1 - point));
    const double figures = std::abs(drawn) * 5e-4;
    EXPECT_NEAR(said, drawn, std::max(lastDigit / 2, point < 0 ? figures : 0) * (1 + 1e-9));
}

/// One row a point, named by its line or mark: every mark, the ends of every line and what lies between.
void comparePoints(const ChartFigure& figure, const std::vector<QStringList>& rows) {
    std::size_t next = 0;
    const auto take = [&](QPointF at) {
        ASSERT_LT(next, rows.size());
        expectSays(rows[next][1], at.x());
        expectSays(rows[next][2], at.y());
        ++next;
    };
    for (const PointMark& mark : figure.marks) {
        ASSERT_LT(next, rows.size());
        EXPECT_TRUE(mark.kind != MarkKind::Duty || rows[next][0].endsWith(mark.name));
        EXPECT_EQ(!rows[next][3].isEmpty(), mark.errorX > 0 || mark.errorY > 0);
        take(mark.at);
    }
    for (const Line& line : figure.lines) {
        constexpr std::size_t kStep = 6;
        for (std::size_t i = 0; i < line.points.size(); ++i) {
            if (i % kStep == 0 || i + 1 == line.points.size()) {
                ASSERT_LT(next, rows.size());
                EXPECT_EQ(rows[next][0], line.name);
                take(line.points[i]);
            }
        }
    }
    EXPECT_EQ(next, rows.size()) << "the table says nothing that is not drawn";
}

/// One row a line: its values round by round; a line without a name is told by them. The spread stands last.
void compareLines(const ChartFigure& figure, std::vector<QStringList> rows) {
    ASSERT_FALSE(rows.empty());
    EXPECT_EQ(rows.back().mid(1), figure.rowCells);
    rows.pop_back();
    const auto says = [](const QStringList& row, const Line& line) {
        QStringList drawn;
        for (const QPointF& point : line.points) {
            drawn << QString::number(point.y(), 'f', 1);
        }
        QStringList said = row.mid(1);
        said.removeAll(QString());
        return said == drawn && (line.name.isEmpty() || line.name.startsWith(row[0] + ' '));
    };
    for (const Line& line : figure.lines) {
        const auto found =
            std::find_if(rows.begin(), rows.end(), [&](const QStringList& row) { return says(row, line); });
        ASSERT_NE(found, rows.end()) << "no row says the line " << line.name.toStdString();
        rows.erase(found);
    }
    for (const QStringList& row : rows) {
        EXPECT_EQ(row.mid(1).join(QString()), QString()) << "said, but not drawn: " << row[0].toStdString();
    }
}

/// One row an x, one column a line; `columns` in the order of the figure's lines.
void compareColumns(const ChartFigure& figure, const std::vector<QStringList>& rows,
                    const std::vector<int>& columns) {
    ASSERT_EQ(figure.lines.size(), columns.size());
    for (std::size_t line = 0; line < columns.size(); ++line) {
        SCOPED_TRACE(figure.lines[line].name.toStdString());
        const std::vector<QPointF>& points = figure.lines[line].points;
        ASSERT_EQ(points.size(), rows.size());
        for (std::size_t i = 0; i < rows.size(); ++i) {
            EXPECT_EQ(rows[i][0].toDouble(), points[i].x());
            expectSays(rows[i][columns[line]], points[i].y());
        }
    }
}

/// One row an element, in steps: what stands behind it is where a line leaves its number. Supply and return
/// share a column; each length at a tee is a cell, and the bracket is a fall between two rows.
void compareProfile(const ChartFigure& figure, const std::vector<QStringList>& rows) {
    constexpr int kOn = 2;
    constexpr int kAvailable = 3;
    ASSERT_EQ(figure.lines.size(), 4U);
    const Line& other = figure.lines[0];
    const Line& off = figure.lines[1];
    const Line& supply = figure.lines[2];
    const Line& back = figure.lines[3];
    EXPECT_EQ(supply.role, LineRole::PumpCurve);
    EXPECT_EQ(back.role, LineRole::ReturnPipe);
    const auto leaving = [](const Line& line, double x) {
        const auto found = std::find_if(line.points.rbegin(), line.points.rend(),
                                        [x](const QPointF& point) { return point.x() == x; });
        return found == line.points.rend() ? std::nullopt : std::optional(found->y());
    };
    std::size_t available = 0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const double x = rows[i][0].toDouble();
        EXPECT_EQ(x, static_cast<double>(i));
        const auto onReturn = leaving(back, x);
        const auto on = onReturn ? onReturn : leaving(supply, x);
        const auto onOther = leaving(other, x);
        const auto atRest = leaving(off, x);
        ASSERT_TRUE(on && onOther && atRest) << i;
        expectSays(rows[i][kOn], *on);
        expectSays(rows[i][4], *onOther);
        expectSays(rows[i][5], *atRest);
        available += rows[i][kAvailable].isEmpty() ? 0 : 1;
    }
    std::size_t gaps = 0;
    std::size_t brackets = 0;
    for (const PointMark& mark : figure.marks) {
        const auto row = static_cast<std::size_t>(mark.at.x());
        ASSERT_TRUE(row > 0 && row < rows.size());
        if (mark.kind == MarkKind::Gap) {
            ++gaps;
            expectSays(rows[row][kAvailable], 2 * mark.errorY);
            expectSays(rows[row][kOn], mark.at.y() + mark.errorY);
        } else {
            ASSERT_EQ(mark.kind, MarkKind::Bracket);
            ++brackets;
            expectSays(mark.name.section(' ', 0, 0), 2 * mark.errorY);
            expectSays(rows[row - 1][kOn], mark.at.y() + mark.errorY);
            expectSays(rows[row][kOn], mark.at.y() - mark.errorY);
        }
    }
    EXPECT_EQ(gaps, available);
    EXPECT_GT(gaps, 0U);
    EXPECT_EQ(brackets, 1U);
}

/// The points of a valve's table are marks, and the line goes through them.
void compareMarks(const ChartFigure& figure, const std::vector<QStringList>& rows) {
    ASSERT_EQ(figure.marks.size(), rows.size());
    ASSERT_EQ(figure.lines.size(), 1U);
    const std::vector<QPointF>& line = figure.lines.front().points;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const QPointF at = figure.marks[i].at;
        EXPECT_EQ(rows[i][0].toDouble(), at.x());
        EXPECT_EQ(rows[i][1].toDouble(), at.y());
        // Between its neighbors on the line.
        const auto after = std::find_if(line.begin(), line.end(),
                                        [&](const QPointF& point) { return point.x() >= at.x() - 1e-9; });
        ASSERT_NE(after, line.end());
        const QPointF before = after == line.begin() ? *after : *(after - 1);
        EXPECT_GE(at.y(), before.y() - 1e-9);
        EXPECT_LE(at.y(), after->y() + 1e-9);
    }
}

void compare(const ChartView& chart) {
    const ChartFigure& figure = chart.figure();
    const std::vector<QStringList> rows = cellsOf(chart);
    if (figure.name == "Pump and system") {
        comparePoints(figure, rows);
    } else if (figure.name == "Of target by round") {
        compareLines(figure, rows);
    } else if (figure.name == "Pressure along the circuit") {
        compareProfile(figure, rows);
    } else if (figure.name == "Dp left across the valves") {
        compareColumns(figure, rows, {4, 3, 2});
    } else if (figure.name == "Flow coefficient over setting") {
        compareMarks(figure, rows);
    } else {
        ADD_FAILURE() << "a chart that this test does not know: " << figure.name.toStdString();
    }
}

/// Name, sentence and table of a chart that is in sight.
void check(ChartView& chart) {
    ASSERT_NE(chart.focusProxy(), nullptr);
    EXPECT_EQ(chart.focusProxy()->accessibleName(), chart.figure().name);
    EXPECT_EQ(chart.focusProxy()->accessibleDescription(), chart.figure().sentence);
    EXPECT_TRUE(chart.figure().sentence.endsWith('.')) << chart.figure().sentence.toStdString();
    compare(chart);
    chart.toggleTable();
    EXPECT_TRUE(chart.isTableShown());
    EXPECT_TRUE(chart.focusProxy()->accessibleName().contains("table"));
    chart.toggleTable();
}

/// The demo job with the losses and the fill that pressures along a circuit are computed from.
project::Project jobWithLosses() {
    project::Project job = support::demoProject();
    project::Job head = job.job();
    head.fillPressure = quantity::measuredGauge(*base::Decimal::parse("120"), quantity::Unit::Kilopascal,
                                                job.fluid().density());
    job.put(head);
    const auto loss = [](const char* kilopascals) {
        return quantity::measured<quantity::PressureDifference>(*base::Decimal::parse(kilopascals),
                                                                quantity::Unit::Kilopascal);
    };
    for (project::Branch branch :
         std::vector<project::Branch>(job.branches().begin(), job.branches().end())) {
        branch.runLoss = loss("4");
        branch.circuitLoss = loss(branch.parent ? "20" : "6");
        job.put(branch);
    }
    return job;
}

/// The charts that are in sight and draw something.
std::vector<ChartView*> drawnCharts(const QWidget& window) {
    std::vector<ChartView*> drawn;
    for (ChartView* chart : window.findChildren<ChartView*>()) {
        if (chart->isVisible() && !chart->figure().isEmpty()) {
            drawn.push_back(chart);
        }
    }
    return drawn;
}

TEST(TableTwin, saysWhatEveryChartOfTheProgramDraws) {
    support::DeskWindow desk(support::contentOf(jobWithLosses()), false);
    std::set<std::string> met;
    // What the pump's pages draw is computed beside the screen, while one of them is looked at.
    constexpr int kPatience_ms = 20000;
    const auto look = [&](const QString& page) {
        SCOPED_TRACE(page.toStdString());
        if (page.contains("Pressure") || page.contains("Read and Set") || page.contains("Curves")) {
            EXPECT_TRUE(QTest::qWaitFor([&] { return !drawnCharts(desk.window).empty(); }, kPatience_ms));
        }
        for (ChartView* chart : drawnCharts(desk.window)) {
            SCOPED_TRACE(chart->figure().name.toStdString());
            met.insert(chart->figure().name.toStdString());
            check(*chart);
        }
    };
    support::eachPage(desk.window, look);
    desk.window.showPlace(MainWindow::Walk);
    desk.window.walk()->toggleConvergence();
    look("Walk, chart");
    desk.window.commands().valveTables->trigger();
    QCoreApplication::processEvents();
    look("valve tables");
    EXPECT_EQ(met,
              (std::set<std::string>{"Dp left across the valves", "Flow coefficient over setting",
                                     "Of target by round", "Pressure along the circuit", "Pump and system"}));
}

}  // namespace
}  // namespace ww::ui::charts
