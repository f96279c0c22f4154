#include "core/energy/power.h"

namespace ww::energy {

namespace {

bool isEfficiency(Ratio efficiency) {
    return efficiency.si() > 0 && efficiency.si() <= 1;
}

}  // namespace

Power waterPower(VolumeFlow flow, Head head, Density density) {
    return Power::si(quantity::pressureOf(head, density).si() * flow.si());
}

Power shaftPower(VolumeFlow flow, Head head, Density density, Ratio efficiency) {
    EXPECTS(isEfficiency(efficiency));
    return waterPower(flow, head, density) / efficiency.si();
}

Power wirePower(Power shaft, Ratio motorEfficiency, Ratio driveEfficiency) {
    EXPECTS(isEfficiency(motorEfficiency) && isEfficiency(driveEfficiency));
    return shaft / (motorEfficiency.si() * driveEfficiency.si());
}

Energy energyOver(Power power, quantity::Duration time) {
    return Energy::si(power.si() * time.si());
}

}  // namespace ww::energy
