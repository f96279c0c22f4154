// Quantities in the units of the US trade, for tests with worked examples.
#pragma once

#include "core/quantity/quantity.h"

namespace ww::support {

inline quantity::VolumeFlow gpm(double number) {
    return quantity::VolumeFlow::from(number, quantity::Unit::GallonPerMinute);
}
inline quantity::Head ft(double number) {
    return quantity::Head::from(number, quantity::Unit::Foot);
}
inline quantity::Length inch(double number) {
    return quantity::Length::from(number, quantity::Unit::Inch);
}
inline quantity::Power hp(double number) {
    return quantity::Power::from(number, quantity::Unit::Horsepower);
}
inline quantity::GaugePressure psi(double number) {
    return quantity::GaugePressure::from(number, quantity::Unit::Psi);
}
inline quantity::RotationalSpeed rpm(double number) {
    return quantity::RotationalSpeed::from(number, quantity::Unit::RevolutionPerMinute);
}

/// Water at 60 F, the trade's specific gravity of 1.
inline constexpr quantity::Density kTradeWater = quantity::Density::si(999.0);

}  // namespace ww::support
