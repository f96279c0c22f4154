// NPSH available at a pump and its margin over what the pump requires. Not for cavitation in valves.
#pragma once

#include "core/quantity/quantity.h"

namespace ww::energy {

using quantity::AbsolutePressure;
using quantity::Density;
using quantity::GaugePressure;
using quantity::Head;
using quantity::Length;

/// Air pressure at a height above the sea: p = 101325 Pa (1 - 2.25577e-5 h)^5.25588, h in m (ISO 2533,
/// standard atmosphere, to 11 km). Height from -500 m to 11 km.
AbsolutePressure airPressure(Length altitude);

/// What NPSH available is computed from.
struct SuctionReading {
    GaugePressure gauge;      ///< at the suction tap
    Length gaugeHeight;       ///< gauge centre above the pump's datum, hose full
    Head velocityHead;        ///< at the suction tap
    AbsolutePressure air;     ///< around the gauge
    AbsolutePressure vapour;  ///< of the flowing fluid
};

/// (p_gauge + p_air - p_vapour)/(rho g) + V^2/2g + gauge height over datum (Karassik et al., Pump Handbook).
Head npshAvailable(const SuctionReading& reading, Density density);

/// The margin that NPSH available should keep over required: 3 ft (common practice, no source).
inline constexpr Head kNpshMargin = Head::si(3 * 0.3048);

}  // namespace ww::energy
