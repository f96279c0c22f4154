// How flows and drops of a solved network change with its resistances, settings and pump speeds.
// Not an estimate of anything (estimation/).
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/hydraulics/detail/solved_state.h"
#include "core/hydraulics/network.h"
#include "core/hydraulics/solution.h"

namespace ww::hydraulics {

/// What is changed. Every change is relative: the derivatives are with the natural logarithm of it.
enum class ParameterKind {
    Drop,         ///< a factor on the link's whole drop: its resistance; a pump's rise
    Coefficient,  ///< the flow coefficient of a valve (drop ~ Kv^-2); the set flow of a limiter
    Speed,        ///< of a pump; nothing else has one (derivatives 0)
};

struct Parameter {
    LinkIndex link;
    ParameterKind kind = ParameterKind::Drop;
};

/// The element with that parameter multiplied by a factor, above 0. A shut element has none.
Element scaled(const Element& element, ParameterKind kind, double factor);

/// d(drop)/d(ln parameter) of the element alone, at a flow that does not change.
PressureDifference dropPerLogarithm(const Element& element, ParameterKind kind, VolumeFlow flow);

/// Derivatives of some links' flows and drops with some parameters, by position in the lists asked for.
class Sensitivities {
  public:
    std::size_t linkCount() const { return m_table.links; }
    std::size_t parameterCount() const { return m_table.parameters; }
    /// d(flow)/d(ln parameter).
    VolumeFlow flow(std::size_t link, std::size_t parameter) const {
        EXPECTS(link < linkCount() && parameter < parameterCount());
        return VolumeFlow::si(m_table.flows_m3s[m_table.at(link, parameter)]);
    }
    /// d(drop)/d(ln parameter); of a closed link the change of what stands across it, nothing where that is
    /// not known.
    std::optional<PressureDifference> drop(std::size_t link, std::size_t parameter) const;

    explicit Sensitivities(detail::DerivativeTable table) : m_table(std::move(table)) {}

  private:
    detail::DerivativeTable m_table;
};

/// From the linearisation at the solution: one folding and unfolding for every parameter, or for every link
/// where there are fewer of those (the linear operator is symmetric). Flaps pressed shut stay shut. The
/// solution must be of this network. Accurate to the solution's own digits; at a point where a law has a step
/// in its slope, of the side on which the flow stands.
Sensitivities sensitivities(const Network& network, const Solution& solution,
                            std::span<const Parameter> parameters, std::span<const LinkIndex> links);

/// Of all links.
Sensitivities sensitivities(const Network& network, const Solution& solution,
                            std::span<const Parameter> parameters);

}  // namespace ww::hydraulics
