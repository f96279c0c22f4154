#include "core/report/detail/display.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/shown_units.h"

namespace ww::report::detail {

using quantity::Unit;

namespace {

/// Decimals that show three significant digits of a number, as the screens do.
int decimalsOf(double number) {
    constexpr int kMost = 6;
    const double size = std::abs(number);
    return size > 0 ? std::clamp(static_cast<int>(std::ceil(2 - std::log10(size))), 0, kMost) : 0;
}

}  // namespace

Display::Display(const project::Project& project)
    : m_flowUnit(project.shownFlowUnit()),
      m_headUnit(project.job().units == project::UnitSystem::US ? Unit::Foot : Unit::Metre) {
    // Three significant digits of the smallest terminal, and all flows of the report line up.
    std::optional<double> smallest;
    for (const project::Branch& branch : project.branches()) {
        if (branch.designFlow && branch.designFlow->value.si() > 0) {
            const double flow = branch.designFlow->value.in(m_flowUnit);
            smallest = std::min(smallest.value_or(flow), flow);
        }
    }
    if (smallest) {
        m_flowDecimals = decimalsOf(*smallest);
    }
}

std::string Display::flow(const std::optional<quantity::VolumeFlow>& flow) const {
    if (!flow) {
        return {};
    }
    // What is less than any design flow keeps its digits too, as far as a flow of a tenth of it does.
    const double number = flow->in(m_flowUnit);
    return fixed(number, std::clamp(decimalsOf(number), m_flowDecimals, m_flowDecimals + 1));
}

std::string Display::head(const std::optional<quantity::Head>& head) const {
    return head ? quantity::headDigits(*head, m_headUnit) : std::string();
}

std::string Display::percent(const std::optional<quantity::Ratio>& ratio) const {
    return ratio ? fixed(ratio->in(Unit::Percent), 1) : std::string();
}

std::string Display::fixed(double dimensionless, int decimals) {
    if (!std::isfinite(dimensionless)) {
        return {};
    }
    std::string text = base::Decimal::fromNumber(dimensionless, decimals).text();
    if (text.front() == '-' && text.find_first_not_of("-0.") == std::string::npos) {
        text.erase(0, 1);
    }
    return text;
}

}  // namespace ww::report::detail
