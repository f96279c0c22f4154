#include "core/report/detail/pump_numbers.h"

#include "core/energy/pump_options.h"

namespace ww::report::detail {

using quantity::Unit;

PumpNumbers::PumpNumbers(const project::Project& project)
    : m_display(project), m_units(project::shownUnits(project)) {}

std::string PumpNumbers::flow(const std::optional<quantity::VolumeFlow>& value) const {
    return m_display.flow(value);
}

std::string PumpNumbers::head(const std::optional<quantity::Head>& value) const {
    return value ? quantity::headDigits(*value, m_units.head) : std::string();
}

std::string PumpNumbers::pressure(const std::optional<quantity::GaugePressure>& value) const {
    return value ? pressure(quantity::PressureDifference::si(value->si())) : std::string();
}

std::string PumpNumbers::pressure(const std::optional<quantity::PressureDifference>& value) const {
    return value ? Display::fixed(value->in(m_units.pressure), m_units.pressure == Unit::Psi ? 2 : 1)
                 : std::string();
}

std::string PumpNumbers::power(const std::optional<quantity::Power>& value) const {
    return value ? Display::fixed(value->in(m_units.power), m_units.power == Unit::Watt ? 0 : 3)
                 : std::string();
}

std::string PumpNumbers::length(const std::optional<quantity::Length>& value) const {
    return value ? energy::diameterDigits(*value, m_units.length) : std::string();
}

std::string PumpNumbers::percent(const std::optional<quantity::Ratio>& value, int decimals) {
    return value ? Display::fixed(value->in(Unit::Percent), decimals) : std::string();
}

std::string PumpNumbers::kilowattHours(const std::optional<quantity::Energy>& value) {
    return value ? Display::fixed(value->si() / energy::kKilowattHour.si(), 0) : std::string();
}

std::string PumpNumbers::money(const std::optional<energy::Money>& value) {
    return value ? Display::fixed(value->si(), 0) : std::string();
}

}  // namespace ww::report::detail
