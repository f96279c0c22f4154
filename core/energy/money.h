// Money and what energy costs, in the currency of the job. Not for currencies' names (project/).
#pragma once

#include "core/base/decimal.h"
#include "core/quantity/quantity.h"

namespace ww::energy {

using Money = quantity::DerivedQuantity<struct MoneyKind>;              ///< in the currency of the job
using EnergyPrice = quantity::DerivedQuantity<struct EnergyPriceKind>;  ///< currency a joule

inline constexpr quantity::Energy kKilowattHour = quantity::Energy::si(3.6e6);

/// From a price a kilowatt hour as typed.
inline EnergyPrice pricePerKilowattHour(const base::Decimal& price) {
    return EnergyPrice::si(price.value() / kKilowattHour.si());
}
/// What so much energy costs, in the currency of the price.
inline Money cost(quantity::Energy energy, EnergyPrice price) {
    return Money::si(energy.si() * price.si());
}

}  // namespace ww::energy
