#include "core/quantity/shown_units.h"

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

std::string percentDigits(double fraction, int figures) {
    return concise(100 * fraction, figures);
}

}  // namespace ww::quantity
