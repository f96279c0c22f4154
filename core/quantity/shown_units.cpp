#include "core/quantity/shown_units.h"

#include <cmath>

#include "core/quantity/measured.h"

namespace ww::quantity {

namespace {

template <class Q>
std::string numberAndUnit(Q value, Unit unit, int figures) {
    return concise(value.in(unit), figures) + " " + std::string(symbol(unit));
}

}  // namespace

std::string ShownUnits::text(VolumeFlow value, int figures) const {
    return numberAndUnit(value, flow, figures);
}

std::string ShownUnits::text(Head value, int figures) const {
    return numberAndUnit(value, head, figures);
}

std::string ShownUnits::text(PressureDifference value, int figures) const {
    return numberAndUnit(value, pressure, figures);
}

std::string ShownUnits::text(Power value, int figures) const {
    return numberAndUnit(value, power, figures);
}

std::string ShownUnits::text(Length value, int figures) const {
    return numberAndUnit(value, length, figures);
}

std::string ShownUnits::text(Temperature value, int figures) const {
    return numberAndUnit(value, temperature, figures);
}

std::string ShownUnits::written(Head value) const {
    return headDigits(value, head) + " " + std::string(symbol(head));
}

std::string headDigits(Head value, Unit unit) {
    const double number = value.in(unit);
    if ((unit != Unit::Metre && unit != Unit::Foot) || !std::isfinite(number)) {
        return concise(number, 4);
    }
    std::string digits = base::Decimal::fromNumber(number, unit == Unit::Foot ? 1 : 2).text();
    if (digits.front() == '-' && digits.find_first_not_of("-0.") == std::string::npos) {
        digits.erase(0, 1);
    }
    return digits;
}

std::string percentDigits(double fraction, int figures) {
    return concise(100 * fraction, figures);
}

}  // namespace ww::quantity
