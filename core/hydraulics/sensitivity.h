// How flows and drops of a solved network change with its resistances, settings and pump speeds.
// Not an estimate of anything (estimation/).
#pragma once

#include <optional>
#include <span>
#include <vector>

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

/// Derivatives of some links' flows and drops with some parameters, by position in the lists asked for.
class Sensitivities {
  public:
    std::size_t linkCount() const { return m_links; }
    std::size_t parameterCount() const { return m_parameters; }
    /// d(flow)/d(ln parameter).
    VolumeFlow flow(std::size_t link, std::size_t parameter) const {
        return VolumeFlow::si(m_flows_m3s[at(link, parameter)]);
    }
    /// d(drop)/d(ln parameter); of a closed link the change of what stands across it, nothing where that is
    /// not known.
    std::optional<PressureDifference> drop(std::size_t link, std::size_t parameter) const;

    /// For numeric code: parameter by parameter, each with all links (column-major), m3/s and Pa; not a
    /// number where a drop is not known.
    std::span<const double> rawFlows() const { return m_flows_m3s; }
    std::span<const double> rawDrops() const { return m_drops_Pa; }

    Sensitivities(std::size_t links, std::size_t parameters)
        : m_links(links),
          m_parameters(parameters),
          m_flows_m3s(links * parameters, 0),
          m_drops_Pa(links * parameters, 0) {}
    /// For sensitivity.cpp.
    void set(std::size_t link, std::size_t parameter, double flow_m3s, double drop_Pa) {
        m_flows_m3s[at(link, parameter)] = flow_m3s;
        m_drops_Pa[at(link, parameter)] = drop_Pa;
    }

  private:
    std::size_t at(std::size_t link, std::size_t parameter) const {
        EXPECTS(link < m_links && parameter < m_parameters);
        return parameter * m_links + link;
    }

    std::size_t m_links;
    std::size_t m_parameters;
    std::vector<double> m_flows_m3s;
    std::vector<double> m_drops_Pa;
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
