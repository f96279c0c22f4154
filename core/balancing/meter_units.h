// The units that a meter may be left in by mistake: those that are tried on a reading that does not fit. Not
// the units that may be typed (quantity/unit.h).
#pragma once

#include <array>

#include "core/quantity/unit.h"

namespace ww::balancing {

/// What dp meters show (common practice, no source); a metre is one of the flowing fluid.
inline constexpr std::array kDpMeterUnits{quantity::Unit::Kilopascal,  quantity::Unit::Psi,
                                          quantity::Unit::Millibar,    quantity::Unit::Bar,
                                          quantity::Unit::InchOfWater, quantity::Unit::MillimetreOfWater,
                                          quantity::Unit::FootOfWater, quantity::Unit::Metre};
/// What flow meters show, likewise.
inline constexpr std::array kFlowMeterUnits{quantity::Unit::GallonPerMinute, quantity::Unit::LitrePerSecond,
                                            quantity::Unit::CubicMetrePerHour,
                                            quantity::Unit::ImperialGallonPerMinute};

}  // namespace ww::balancing
