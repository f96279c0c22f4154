#include "core/balancing/detail/wording.h"

#include "core/base/term.h"
#include "core/quantity/measured.h"
#include "core/quantity/shown_units.h"

namespace ww::balancing::detail {

namespace {

using quantity::Unit;

bool isUS(const project::Project& project) {
    return project.job().units == project::UnitSystem::US;
}

std::string withUnit(double number, Unit unit) {
    return quantity::significant(number, 3) + " " + std::string(quantity::symbol(unit));
}

}  // namespace

std::string dpIn(Unit unit, quantity::PressureDifference dp, quantity::Density density) {
    return withUnit(quantity::isHeadUnit(unit) ? quantity::headOf(dp, density).in(unit) : dp.in(unit), unit);
}

std::string dpText(const project::Project& project, quantity::PressureDifference dp) {
    return dpIn(isUS(project) ? Unit::Psi : Unit::Kilopascal, dp, project.fluid().density());
}

std::string flowText(const project::Project& project, quantity::VolumeFlow flow) {
    const Unit unit = project.shownFlowUnit();
    return withUnit(flow.in(unit), unit);
}

std::string headText(const project::Project& project, quantity::Head head) {
    const Unit unit = isUS(project) ? Unit::Foot : Unit::Metre;
    return quantity::headDigits(head, unit) + " " + std::string(quantity::symbol(unit));
}

std::string percentText(quantity::Ratio ratio) {
    const double percent = 100 * ratio.si();
    return std::isfinite(percent) ? base::Decimal::fromNumber(percent, 1).text() : "-";
}

std::string smallPercentText(double probability) {
    constexpr double kLeast_percent = 0.01;
    const double percent = 100 * probability;
    return percent < kLeast_percent ? base::term("under ") + std::string("0.01")
                                    : quantity::significant(percent, 2);
}

std::string numberText(std::size_t count) {
    return std::to_string(count);
}

}  // namespace ww::balancing::detail
