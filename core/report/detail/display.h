// Numbers of a report in the units of its job, as text. Not for what was typed: that keeps its digits.
#pragma once

#include <optional>
#include <string>

#include "core/project/project.h"
#include "core/quantity/printed_unit.h"

namespace ww::report::detail {

using quantity::printed;
/// Digits and unit as typed, the unit as it is printed.
template <class Q>
std::string typed(const quantity::Measured<Q>& measured) {
    return measured.digits.text() + " " + printed(measured.unit);
}
template <class Q>
std::string typed(const std::optional<quantity::Measured<Q>>& measured) {
    return measured ? typed(*measured) : std::string();
}

/// Formats for one job. Empty text stands for a value that is not known.
class Display {
  public:
    explicit Display(const project::Project& project);

    quantity::Unit flowUnit() const { return m_flowUnit; }
    quantity::Unit headUnit() const { return m_headUnit; }
    std::string flow(const std::optional<quantity::VolumeFlow>& flow) const;
    std::string head(const std::optional<quantity::Head>& head) const;
    /// Percent with one decimal, without the sign: "101.3".
    std::string percent(const std::optional<quantity::Ratio>& ratio) const;
    /// A number with so many decimals; never "-0.0".
    static std::string fixed(double dimensionless, int decimals);

  private:
    quantity::Unit m_flowUnit;
    quantity::Unit m_headUnit;
    int m_flowDecimals = 2;
};

}  // namespace ww::report::detail
