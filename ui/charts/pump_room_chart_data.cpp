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
using pump_room::ProfilePart;
using quantity::GaugePressure;
using quantity::PressureDifference;

/// The texts of this file.
struct PumpRoomChartText {
    Q_DECLARE_TR_FUNCTIONS(PumpRoomChart)
};

QString figures(double number, int count = 4) {
    return QString::fromStdString(quantity::significant(number, count));
}

/// The pressures of the elements from `first` to before `end` as steps: the pressure behind an element, which
/// is numbered from 1, stands from its number on to the next. `before`: in front of the first of them.
Line stepLine(const CircuitProfile& profile, GaugePressure ProfileElement::*what, std::size_t first,
              std::size_t end, GaugePressure before, quantity::Unit unit) {
    Line line;
    double level = before.in(unit);
    line.points.emplace_back(static_cast<double>(first), level);
    for (std::size_t i = first; i < end; ++i) {
        const auto at = static_cast<double>(i + 1);
        line.points.emplace_back(at, level);
        level = (profile.elements[i].*what).in(unit);
        line.points.emplace_back(at, level);
    }
    return line;
}

/// All the way round.
Line wholeLine(const CircuitProfile& profile, GaugePressure ProfileElement::*what, quantity::Unit unit,
               LineRole role, QString name) {
    const ProfileElement& first = profile.elements.front();
    Line line = stepLine(profile, what, 0, profile.elements.size(),
                         what == &ProfileElement::atRest ? first.atRest : first.before, unit);
    line.role = role;
    line.name = std::move(name);
    return line;
}

/// The way out as far as the unit, and the way back from it.
void addHalves(ChartFigure& figure, const CircuitProfile& profile, quantity::Unit unit) {
    const std::vector<ProfileElement>& elements = profile.elements;
    const auto unitAt = static_cast<std::size_t>(
        std::find_if(elements.begin(), elements.end(),
                     [](const ProfileElement& element) { return element.part == ProfilePart::Unit; }) -
        elements.begin());
    Line supply = stepLine(profile, &ProfileElement::after, 0, unitAt, elements.front().before, unit);
    supply.role = LineRole::PumpCurve;
    supply.name = PumpRoomChartText::tr("supply, pump on");
    supply.points.emplace_back(static_cast<double>(unitAt + 1), supply.points.back().y());
    Line back =
        stepLine(profile, &ProfileElement::after, unitAt + 1, elements.size(), elements[unitAt].after, unit);
    back.role = LineRole::ReturnPipe;
    back.name = PumpRoomChartText::tr("return, pump on");
    figure.lines.push_back(std::move(supply));
    figure.lines.push_back(std::move(back));
}

/// What is available at each tee, from the supply down, and the dp of the circuit's own valve.
void addLengths(ChartFigure& figure, const CircuitProfile& profile, std::size_t terminal,
                quantity::Unit unit) {
    for (std::size_t i = 0; i < profile.elements.size(); ++i) {
        const ProfileElement& element = profile.elements[i];
        const auto at = static_cast<double>(i + 1);
        if (element.available) {
            const double half = element.available->in(unit) / 2;
            figure.marks.push_back(
                {MarkKind::Gap, {at, element.after.in(unit)-half}, 0, half, QString(), false});
        }
        if (element.part == ProfilePart::Valve && element.branch == terminal) {
            const double dp = (element.before - element.after).in(unit);
            figure.marks.push_back({MarkKind::Bracket,
                                    {at, element.after.in(unit) + dp / 2},
                                    0,
                                    dp / 2,
                                    figures(dp, 3) + ' ' + text::symbol(unit),
                                    false});
        }
    }
}

struct Range {
    double least = 0;
    double most = 0;
};

/// From the lowest to the highest point of all lines, which hold at least one, and of the lengths.
Range rangeOf(const std::vector<Line>& lines, const std::vector<PointMark>& lengths = {}) {
    Range range{lines.front().points.front().y(), lines.front().points.front().y()};
    for (const Line& line : lines) {
        for (const QPointF& point : line.points) {
            range.least = std::min(range.least, point.y());
            range.most = std::max(range.most, point.y());
        }
    }
    for (const PointMark& length : lengths) {
        range.least = std::min(range.least, length.at.y() - length.errorY);
        range.most = std::max(range.most, length.at.y() + length.errorY);
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
Axis pressureAxis(const QString& title, const ChartFigure& figure) {
    constexpr double kRoomBelow = 0.25;
    constexpr double kRoomAbove = 0.05;
    constexpr double kLeastSpan = 1e-3;
    const Range range = rangeOf(figure.lines, figure.marks);
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
    if (choice.isOtherSide) {
        figure.lines.push_back(wholeLine(other, &ProfileElement::after, unit, LineRole::Proposed,
                                         isReturn ? PumpRoomChartText::tr("valve on supply, pump on")
                                                  : PumpRoomChartText::tr("valve on return, pump on")));
    }
    // Against the fill pressure a pump that is off shows heights only.
    choice.isPumpOff = choice.isPumpOff && circuit.isFillKnown;
    if (choice.isPumpOff) {
        figure.lines.push_back(wholeLine(*shown, &ProfileElement::atRest, unit, LineRole::FirstSystem,
                                         PumpRoomChartText::tr("pump off")));
    }
    // Last, so that they lie over what goes the same way.
    addHalves(figure, *shown, unit);
    addLengths(figure, *shown, circuit.terminal, unit);
    figure.x =
        countedAxis(PumpRoomChartText::tr("Element, in the direction of flow"), shown->elements.size());
    figure.y = pressureAxis((circuit.isFillKnown ? PumpRoomChartText::tr("Gauge pressure, %1")
                                                 : PumpRoomChartText::tr("Pressure against fill, %1"))
                                .arg(text::symbol(unit)),
                            figure);
    figure.tableHeads = {PumpRoomChartText::tr("No."),
                         PumpRoomChartText::tr("Behind"),
                         PumpRoomChartText::tr("Pump on, as it stands"),
                         PumpRoomChartText::tr("Available at the tee"),
                         PumpRoomChartText::tr("Valve on the other side"),
                         PumpRoomChartText::tr("Pump off")};
    const ProfileElement& suction = shown->elements.front();
    figure.tableRows.push_back(
        {QString::number(0), PumpRoomChartText::tr("before the pump"), figures(suction.before.in(unit)),
         QString(), figures(other.elements.front().before.in(unit)), figures(suction.atRest.in(unit))});
    for (std::size_t i = 0; i < shown->elements.size(); ++i) {
        const ProfileElement& element = shown->elements[i];
        figure.tableRows.push_back(
            {QString::number(i + 1),
             text::terms(QString::fromStdString(ww::report::nameOf(project, element))),
             figures(element.after.in(unit)),
             element.available ? figures(element.available->in(unit)) : QString(),
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
    if (const auto valve = ww::report::valveSentence(project, circuit)) {
        figure.sentence += ' ' + text::sentence(*valve);
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
