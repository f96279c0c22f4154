// A small loop in US units with a pump H = 60 - 0.0012 Q^2 (ft, gpm) and circuits of the square law, whose
// states can be computed by hand.
#pragma once

#include <vector>

#include "core/project/project.h"
#include "tests/support/counting_ids.h"

namespace ww::support {

using project::Decimal;
using quantity::Unit;

inline constexpr double kFeetPerPsi = 2.309;

struct Circuit {
    const char* tag;
    double design_gpm;
    double loss_ft;  ///< of the whole circuit with its valve open, at design flow
    double cvOpen;
    double segment_ft;  ///< supply + return from the previous take-off at its design flow
};

template <class Q>
quantity::Measured<Q> typed(double number, int decimals, Unit unit) {
    return quantity::measured<Q>(Decimal::fromNumber(number, decimals), unit);
}

/// The loop with a valve table of two points: setting 4 is open, setting 1 nearly shut; ln Cv is linear
/// between.
inline project::Project loop(const std::vector<Circuit>& circuits) {
    CountingIds ids;
    project::Project project;
    project::Job job;
    job.id = ids.next();
    job.temperature = typed<quantity::Temperature>(60, 0, Unit::Fahrenheit);
    project.put(job);
    const quantity::Density density = project.fluid().density();
    const auto feet = [&](double number) {
        return quantity::measuredDifference(Decimal::fromNumber(number, 9), Unit::Foot, density);
    };
    project::Pump pump;
    pump.id = ids.next();
    pump.tag = "P-1";
    for (double flow = 0; flow <= 160; flow += 10) {
        project::PumpTableRow row;
        row.flow = typed<quantity::VolumeFlow>(flow, 0, Unit::GallonPerMinute);
        row.head = typed<quantity::Head>(60 - 0.0012 * flow * flow, 4, Unit::Foot);
        pump.rows.push_back(row);
    }
    project.put(pump);
    int position = 0;
    for (const Circuit& circuit : circuits) {
        project::ValveModel valve;
        valve.id = ids.next();
        valve.rows = {{Decimal::fromNumber(1, 0), Decimal::fromNumber(circuit.cvOpen / 100, 6)},
                      {Decimal::fromNumber(4, 0), Decimal::fromNumber(circuit.cvOpen, 6)}};
        project.put(valve);
        project::Branch branch;
        branch.id = ids.next();
        branch.position = position++;
        branch.tag = circuit.tag;
        branch.designFlow = typed<quantity::VolumeFlow>(circuit.design_gpm, 0, Unit::GallonPerMinute);
        branch.runLoss = feet(circuit.segment_ft);
        const double open_psi = (circuit.design_gpm / circuit.cvOpen) * (circuit.design_gpm / circuit.cvOpen);
        branch.circuitLoss = feet(circuit.loss_ft - kFeetPerPsi * open_psi);
        branch.valve = valve.id;
        project.put(branch);
    }
    return project;
}

/// Four circuits; the last one has the least reserve.
inline std::vector<Circuit> lastCircuitIsIndex() {
    return {{"T1", 20, 12, 12, 8}, {"T2", 30, 15, 20, 4}, {"T3", 25, 10, 16, 4}, {"T4", 25, 14, 14, 3}};
}

}  // namespace ww::support
