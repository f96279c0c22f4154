#include "ui/charts/pump_room_chart_data.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/project/units.h"
#include "core/report/pump_sections.h"
#include "ui/text/format.h"
#include "ui/text/words.h"

namespace ww::ui::charts {

namespace {

using pump_room::CircuitProfile;
using pump_room::ProfileElement;
using quantity::GaugePressure;
using quantity::PressureDifference;

/// The texts of this file.
struct PumpRoomChartText {
    Q_DECLARE_TR_FUNCTIONS(PumpRoomChart)
};

QString figures(double number, int count = 4) {
    return QString::fromStdString(quantity::significant(number, count));
}

/// The pressures of one profile behind each of its elements, numbered from 0: the pump's suction.
Line profileLine(const CircuitProfile& profile, GaugePressure ProfileElement::*what, quantity::Unit unit,
                 LineRole role, QString name) {
    Line line{role, std::move(name), {}};
    const ProfileElement& first = profile.elements.front();
    line.points.emplace_back(0, (what == &ProfileElement::atRest ? first.atRest : first.before).in(unit));
    for (std::size_t i = 0; i < profile.elements.size(); ++i) {
        line.points.emplace_back(static_cast<double>(i + 1), (profile.elements[i].*what).in(unit));
    }
    return line;
}

struct Range {
    double least = 0;
    double most = 0;
};

/// From the lowest to the highest point of all lines, which hold at least one.
Range rangeOf(const std::vector<Line>& lines) {
    Range range{lines.front().points.front().y(), lines.front().points.front().y()};
    for (const Line& line : lines) {
        for (const QPointF& point : line.points) {
            range.least = std::min(range.least, point.y());
            range.most = std::max(range.most, point.y());
        }
    }
    return range;
}

/// Things that are counted from 1 to `count`: the scale steps by whole numbers.
Axis countedAxis(const QString& title, std::size_t count) {
    constexpr int kMostSteps = 12;
    const int most = std::max(1, static_cast<int>(count));
    return niceAxis(title, 0, most, std::min(most, kMostSteps));
}

/// Dp from zero on.
Axis dpAxis(const QString& title, const std::vector<Line>& lines) {
    constexpr double kAbove = 1.05;
    const Range range = rangeOf(lines);
    return niceAxis(title, std::min(0.0, range.least), std::max(1e-6, range.most * kAbove), 6);
}

/// Pressures between their lowest and their highest, with room below for names; below zero only where one
/// is.
Axis pressureAxis(const QString& title, const std::vector<Line>& lines) {
    constexpr double kRoomBelow = 0.25;
    constexpr double kRoomAbove = 0.05;
    constexpr double kLeastSpan = 1e-3;
    const Range range = rangeOf(lines);
    const double span = std::max(range.most - range.least, kLeastSpan);
    const double below = range.least - kRoomBelow * span;
    return niceAxis(title, range.least >= 0 ? std::max(0.0, below) : below, range.most + kRoomAbove * span,
                    6);
}

}  // namespace

ChartFigure pressureChart(const project::Project& project, const pump_room::CircuitComparison& circuit,
                          PressureChoice choice) {
    ChartFigure figure;
    figure.name = PumpRoomChartText::tr("Pressure along the circuit");
    const CircuitProfile* shown = ww::report::asBuilt(project, circuit);
    if (shown == nullptr || shown->elements.empty() || !circuit.onReturn || !circuit.onSupply) {
        return figure;
    }
    const quantity::Unit unit = project::shownUnits(project).pressure;
    const bool isReturn = shown == &*circuit.onReturn;
    const CircuitProfile& other = isReturn ? *circuit.onSupply : *circuit.onReturn;
    figure.lines.push_back(profileLine(*shown, &ProfileElement::after, unit, LineRole::PumpCurve,
                                       isReturn ? PumpRoomChartText::tr("valve on return, pump on")
                                                : PumpRoomChartText::tr("valve on supply, pump on")));
    if (choice.isOtherSide) {
        figure.lines.push_back(profileLine(other, &ProfileElement::after, unit, LineRole::Proposed,
                                           isReturn ? PumpRoomChartText::tr("valve on supply, pump on")
                                                    : PumpRoomChartText::tr("valve on return, pump on")));
    }
    // Against the fill pressure a pump that is off shows heights only.
    choice.isPumpOff = choice.isPumpOff && circuit.isFillKnown;
    if (choice.isPumpOff) {
        figure.lines.push_back(profileLine(*shown, &ProfileElement::atRest, unit, LineRole::FirstSystem,
                                           PumpRoomChartText::tr("pump off")));
    }
    figure.x =
        countedAxis(PumpRoomChartText::tr("Element, in the direction of flow"), shown->elements.size());
    figure.y = pressureAxis((circuit.isFillKnown ? PumpRoomChartText::tr("Gauge pressure, %1")
                                                 : PumpRoomChartText::tr("Pressure against fill, %1"))
                                .arg(text::symbol(unit)),
                            figure.lines);
    figure.tableHeads = {PumpRoomChartText::tr("No."), PumpRoomChartText::tr("Behind"),
                         PumpRoomChartText::tr("Pump on, as it stands"),
                         PumpRoomChartText::tr("Valve on the other side"), PumpRoomChartText::tr("Pump off")};
    const ProfileElement& suction = shown->elements.front();
    figure.tableRows.push_back(
        {QString::number(0), PumpRoomChartText::tr("before the pump"), figures(suction.before.in(unit)),
         figures(other.elements.front().before.in(unit)), figures(suction.atRest.in(unit))});
    for (std::size_t i = 0; i < shown->elements.size(); ++i) {
        const ProfileElement& element = shown->elements[i];
        figure.tableRows.push_back(
            {QString::number(i + 1),
             text::terms(QString::fromStdString(ww::report::nameOf(project, element))),
             figures(element.after.in(unit)),
             i < other.elements.size() ? figures(other.elements[i].after.in(unit)) : QString(),
             figures(element.atRest.in(unit))});
    }
    if (!circuit.isFillKnown) {
        figure.tableHeads.pop_back();
        for (auto& row : figure.tableRows) {
            row.pop_back();
        }
    }
    const QString tag = QString::fromStdString(project.branches()[circuit.terminal].tag);
    if (circuit.isFillKnown) {
        figure.sentence =
            PumpRoomChartText::tr("The unit of %1 stands at %2 %4 with the pump on and at %3 %4 with it off.")
                .arg(tag, figures(shown->unitRunning.in(unit)), figures(shown->unitAtRest.in(unit)),
                     text::symbol(unit));
    } else {
        figure.sentence =
            PumpRoomChartText::tr(
                "With the pump on the unit of %1 stands at %2%3 %4 against the fill pressure, which is not "
                "known.")
                .arg(tag, shown->unitRunning.si() > 0 ? QStringLiteral("+") : QString(),
                     figures(shown->unitRunning.in(unit), 3), text::symbol(unit));
    }
    return figure;
}

ChartFigure readAndSetChart(const project::Project& project, const pump_room::ReadAndSet& comparison) {
    ChartFigure figure;
    figure.name = PumpRoomChartText::tr("Dp left across the valves");
    if (comparison.valves.empty()) {
        return figure;
    }
    const quantity::Unit unit = project::shownUnits(project).pressure;
    Line open{LineRole::FirstSystem, PumpRoomChartText::tr("fully open"), {}};
    Line proportional{LineRole::LastSystem, PumpRoomChartText::tr("proportional"), {}};
    Line readAndSet{LineRole::PumpCurve, PumpRoomChartText::tr("read-and-set"), {}};
    figure.tableHeads = {PumpRoomChartText::tr("No."), PumpRoomChartText::tr("Valve"),
                         PumpRoomChartText::tr("Fully open"), PumpRoomChartText::tr("Proportional"),
                         PumpRoomChartText::tr("Read-and-set")};
    double left = 0;
    double needed = 0;
    QString index;
    for (std::size_t i = 0; i < comparison.valves.size(); ++i) {
        const pump_room::ValveLeft& valve = comparison.valves[i];
        const double x = static_cast<double>(i + 1);
        open.points.emplace_back(x, valve.open.in(unit));
        proportional.points.emplace_back(x, valve.proportional.in(unit));
        readAndSet.points.emplace_back(x, valve.readAndSet.in(unit));
        const QString tag = QString::fromStdString(project.branches()[valve.branch].tag);
        if (valve.isIndex) {
            left = valve.readAndSet.in(unit);
            needed = valve.proportional.in(unit);
            index = tag;
        }
        figure.tableRows.push_back({QString::number(i + 1),
                                    valve.isIndex ? PumpRoomChartText::tr("%1, index").arg(tag) : tag,
                                    figures(valve.open.in(unit)), figures(valve.proportional.in(unit)),
                                    figures(valve.readAndSet.in(unit))});
    }
    figure.lines = {std::move(readAndSet), std::move(proportional), std::move(open)};
    figure.x = countedAxis(PumpRoomChartText::tr("Valve, in walking order"), comparison.valves.size());
    figure.y = dpAxis(PumpRoomChartText::tr("Dp, %1").arg(text::symbol(unit)), figure.lines);
    figure.sentence =
        index.isEmpty()
            ? PumpRoomChartText::tr("Dp at design flow that each way leaves across every valve.")
            : PumpRoomChartText::tr(
                  "Read-and-set leaves %1 %2 across the index valve %3, a proportional balance with "
                  "the pump reduced leaves %4 %2.")
                  .arg(figures(left, 3), text::symbol(unit), index, figures(needed, 3));
    return figure;
}

}  // namespace ww::ui::charts
