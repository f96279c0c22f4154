// Numbers of the pump's sections in the units of the job, as text for columns. Not for sentences
// (quantity/shown_units.h).
#pragma once

#include <optional>
#include <string>

#include "core/energy/money.h"
#include "core/project/units.h"
#include "core/report/detail/display.h"

namespace ww::report::detail {

/// Empty text stands for a value that is not known.
class PumpNumbers {
  public:
    explicit PumpNumbers(const project::Project& project);

    std::string flow(const std::optional<quantity::VolumeFlow>& value) const;
    std::string head(const std::optional<quantity::Head>& value) const;
    std::string pressure(const std::optional<quantity::GaugePressure>& value) const;
    std::string pressure(const std::optional<quantity::PressureDifference>& value) const;
    std::string power(const std::optional<quantity::Power>& value) const;
    std::string length(const std::optional<quantity::Length>& value) const;
    /// With so many decimals, without the sign.
    static std::string percent(const std::optional<quantity::Ratio>& value, int decimals = 1);
    static std::string kilowattHours(const std::optional<quantity::Energy>& value);
    static std::string money(const std::optional<energy::Money>& value);

    std::string flowUnit() const { return printed(m_units.flow); }
    std::string headUnit() const { return printed(m_units.head); }
    std::string pressureUnit() const { return printed(m_units.pressure); }
    std::string powerUnit() const { return printed(m_units.power); }
    std::string lengthUnit() const { return printed(m_units.length); }
    /// For sentences: number and unit.
    const quantity::ShownUnits& units() const { return m_units; }

  private:
    Display m_display;
    quantity::ShownUnits m_units;
};

}  // namespace ww::report::detail
