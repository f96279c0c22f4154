// The charts of the pump room as data: pressure round a circuit, and dp left across the valves. Not for the
// pump's curves (pump_chart_data.h).
#pragma once

#include "core/pump_room/pump_picture.h"
#include "ui/charts/chart_figure.h"

namespace ww::ui::charts {

/// Which lines a pressure chart shows beside the valve where it stands, pump on.
struct PressureChoice {
    bool isPumpOff = true;    ///< also the pressure at rest
    bool isOtherSide = true;  ///< also with the valve on the other side of the unit
};

/// Gauge pressure behind each element in the direction of flow, in steps: the supply as far as the unit and
/// the return from it as lines of their own, with what is available at each tee and the dp of the circuit's
/// valve. Empty where the circuit was not computed.
ChartFigure pressureChart(const project::Project& project, const pump_room::CircuitComparison& circuit,
                          PressureChoice choice = {});

/// Dp at design flow, valve by valve: open, proportional, read-and-set. Empty without valves.
ChartFigure readAndSetChart(const project::Project& project, const pump_room::ReadAndSet& comparison);

}  // namespace ww::ui::charts
