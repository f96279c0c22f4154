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

/// `roomBelow`: of the height, below the lowest point, for names that stand there.
void takeScale(ChartFigure& figure, const QString& titleX, const QString& titleY, double mostX,
               double roomBelow) {
    double least = 0;
    double most = 1e-6;
    for (const Line& line : figure.lines) {
        for (const QPointF& point : line.points) {
            least = std::min(least, point.y());
            most = std::max(most, point.y());
        }
    }
    figure.x = niceAxis(titleX, 0, std::max(1.0, mostX), 12);
    figure.y = niceAxis(titleY, least - roomBelow * (most - least), most * 1.05, 6);
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
    if (choice.isPumpOff) {
        figure.lines.push_back(profileLine(*shown, &ProfileElement::atRest, unit, LineRole::FirstSystem,
                                           PumpRoomChartText::tr("pump off")));
    }
    takeScale(figure, PumpRoomChartText::tr("Element, in the direction of flow"),
              PumpRoomChartText::tr("Gauge pressure, %1").arg(text::symbol(unit)),
              static_cast<double>(shown->elements.size()), 0.12);
    figure.tableHeads = {PumpRoomChartText::tr("No."), PumpRoomChartText::tr("Behind"),
                         PumpRoomChartText::tr("Pump on, as it stands"),
                         PumpRoomChartText::tr("Valve on the other side"), PumpRoomChartText::tr("Pump off")};
    for (std::size_t i = 0; i < shown->elements.size(); ++i) {
        const ProfileElement& element = shown->elements[i];
        figure.tableRows.push_back(
            {QString::number(i + 1),
             text::terms(QString::fromStdString(ww::report::nameOf(project, element))),
             figures(element.after.in(unit)),
             i < other.elements.size() ? figures(other.elements[i].after.in(unit)) : QString(),
             figures(element.atRest.in(unit))});
    }
    figure.sentence =
        PumpRoomChartText::tr("The unit of %1 stands at %2 %4 with the pump on and at %3 %4 with it off.")
            .arg(QString::fromStdString(project.branches()[circuit.terminal].tag),
                 figures(shown->unitRunning.in(unit)), figures(shown->unitAtRest.in(unit)),
                 text::symbol(unit));
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
    takeScale(figure, PumpRoomChartText::tr("Valve, in walking order"),
              PumpRoomChartText::tr("Dp, %1").arg(text::symbol(unit)),
              static_cast<double>(comparison.valves.size()), 0);
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
