// How the loop is used over a year, and what a pump then takes and costs. Not for which pump action to take
// (pump_options.h).
#pragma once

#include <optional>
#include <vector>

#include "core/curve/pump_set.h"
#include "core/energy/money.h"
#include "core/energy/power.h"

namespace ww::energy {

/// So long in a year at this part of design flow.
struct LoadStep {
    quantity::Duration time;
    Ratio flowFraction;  ///< above 0
};

/// How a pump follows the flow down.
enum class PartLoad {
    RidesCurve,  ///< at its speed, up its curve, while control valves close
    HoldsHead,   ///< a drive slows it to hold a dp at a sensor
};

/// Everything between the shaft and the bill.
struct EnergyTerms {
    std::vector<LoadStep> load;
    std::optional<Ratio> motorEfficiency;
    std::optional<Ratio> driveEfficiency;  ///< counts only where a drive is used
    std::optional<EnergyPrice> price;
    /// Pump efficiency where the table gives none: as measured at the duty; used at every flow.
    std::optional<Ratio> measuredEfficiency;
    Head heldHead;  ///< of PartLoad::HoldsHead: the dp held at the sensor, as head
};

/// Shaft power of a set at a flow: of its tables, else with the measured efficiency; nothing without either.
std::optional<Power> shaftPowerAt(const curve::PumpSet& set, VolumeFlow flow, Density density,
                                  std::optional<Ratio> measuredEfficiency);

/// Yearly electrical energy of a set whose flow at full load is `designFlow` and head there `designHead`.
/// Riding the curve: the set's own power at each flow. Holding a head: H = held + (design - held) f^2 from
/// the slowed curve, the efficiency of the similar point. Nothing without load, motor efficiency or power, or
/// where a flow lies outside the tables.
std::optional<Energy> yearlyEnergy(const curve::PumpSet& set, PartLoad partLoad, VolumeFlow designFlow,
                                   Head designHead, Density density, const EnergyTerms& terms, bool hasDrive);

/// Factor on the speed of all pumps (0.01 to 10) that brings the set's curve through this point; nothing
/// where none does.
std::optional<double> speedFactorThrough(const curve::PumpSet& set, VolumeFlow flow, Head head);

}  // namespace ww::energy
