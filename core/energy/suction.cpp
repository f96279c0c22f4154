#include "core/energy/suction.h"

#include <cmath>

namespace ww::energy {

AbsolutePressure airPressure(Length altitude) {
    EXPECTS(altitude.si() >= -500 && altitude.si() <= 11000);
    return AbsolutePressure::si(101325 * std::pow(1 - 2.25577e-5 * altitude.si(), 5.25588));
}

Head npshAvailable(const SuctionReading& reading, Density density) {
    const quantity::PressureDifference over =
        quantity::PressureDifference::si(reading.gauge.si()) + (reading.air - reading.vapour);
    return quantity::headOf(over, density) + reading.velocityHead + Head::si(reading.gaugeHeight.si());
}

}  // namespace ww::energy
