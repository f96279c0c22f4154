#include "core/hydraulics/sensitivity.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/hydraulics/detail/linearisation.h"

namespace ww::hydraulics {

namespace {

constexpr double kNoPressure = std::numeric_limits<double>::quiet_NaN();

double lawPush(const detail::Law& law, ParameterKind kind, double flow_m3s) {
    switch (kind) {
        case ParameterKind::Drop:
            return detail::dropPerFactor(law, flow_m3s);
        case ParameterKind::Coefficient:
            return detail::dropPerCoefficient(law, flow_m3s);
        default:
            return detail::dropPerSpeed(law, flow_m3s);
    }
}

class Derivatives {
  public:
    Derivatives(const Network& network, const Solution& solution, std::span<const Parameter> parameters,
                std::span<const LinkIndex> links)
        : m_store(network.store()),
          m_solution(solution),
          m_parameters(parameters),
          m_links(links),
          m_linear(m_store, solution.state().flows_m3s, solution.heldShut()),
          m_out(links.size(), parameters.size()) {}

    Sensitivities run() {
        const bool hasShutLinks =
            std::any_of(m_links.begin(), m_links.end(), [&](LinkIndex link) { return isShut(link.value); });
        if (m_links.size() < m_parameters.size() && !hasShutLinks) {
            byLinks();
        } else {
            byParameters();
        }
        return Sensitivities(std::move(m_out));
    }

  private:
    bool isClosed(std::uint32_t link) const { return m_store.states.isClosed[link] != 0; }
    bool isShut(std::uint32_t link) const {
        const auto& held = m_solution.heldShut();
        return isClosed(link) || std::binary_search(held.begin(), held.end(), link);
    }

    /// What the parameter does to its link's drop at unchanged flow.
    double push(const Parameter& parameter) const {
        const std::uint32_t link = parameter.link.value;
        if (isShut(link)) {
            return 0;
        }
        return lawPush(m_store.states.law(link), parameter.kind, m_solution.state().flows_m3s[link]);
    }

    void set(std::size_t row, std::size_t column, double flow_m3s, double drop_Pa) {
        m_out.flows_m3s[m_out.at(row, column)] = flow_m3s;
        m_out.drops_Pa[m_out.at(row, column)] = drop_Pa;
    }

    void byLinks() {
        std::vector<double> pushes;
        for (const Parameter& parameter : m_parameters) {
            pushes.push_back(push(parameter));
        }
        for (std::size_t row = 0; row < m_links.size(); ++row) {
            const std::uint32_t link = m_links[row].value;
            const auto response = m_linear.response(link, 1);
            for (std::size_t column = 0; column < m_parameters.size(); ++column) {
                const std::uint32_t pushed = m_parameters[column].link.value;
                const double flow_m3s = response[pushed] * pushes[column];
                const double own_Pa = pushed == link ? pushes[column] : 0;
                set(row, column, flow_m3s, m_linear.slope(link) * flow_m3s + own_Pa);
            }
        }
    }

    void byParameters() {
        std::vector<double> drops(m_store.shape->from.size());
        std::vector<double> pressures(m_store.shape->nodeIds.size());
        for (std::size_t column = 0; column < m_parameters.size(); ++column) {
            const std::uint32_t pushed = m_parameters[column].link.value;
            const double push_Pa = push(m_parameters[column]);
            const auto flows = m_linear.response(pushed, push_Pa);
            for (std::uint32_t link = 0; link < drops.size(); ++link) {
                drops[link] = m_linear.slope(link) * flows[link] + (link == pushed ? push_Pa : 0);
            }
            spread(drops, pressures);
            for (std::size_t row = 0; row < m_links.size(); ++row) {
                const std::uint32_t link = m_links[row].value;
                const double across_Pa =
                    pressures[m_store.shape->from[link]] - pressures[m_store.shape->to[link]];
                set(row, column, isShut(link) ? 0 : flows[link], isShut(link) ? across_Pa : drops[link]);
            }
        }
    }

    void spread(const std::vector<double>& drops, std::vector<double>& pressures) const {
        std::fill(pressures.begin(), pressures.end(), kNoPressure);
        for (const std::uint32_t node : m_store.shape->references) {
            pressures[node] = 0;
        }
        for (const detail::PressureStep& step : m_linear.plan().walk) {
            const bool isForward = m_store.shape->to[step.link] == step.node;
            pressures[step.node] = isForward ? pressures[m_store.shape->from[step.link]] - drops[step.link]
                                             : pressures[m_store.shape->to[step.link]] + drops[step.link];
        }
    }

    const detail::NetworkStore& m_store;
    const Solution& m_solution;
    std::span<const Parameter> m_parameters;
    std::span<const LinkIndex> m_links;
    detail::Linearisation m_linear;
    detail::DerivativeTable m_out;
};

}  // namespace

Element scaled(const Element& element, ParameterKind kind, double factor) {
    EXPECTS(!element.isShut() && factor > 0);
    detail::Law law = element.law();
    switch (kind) {
        case ParameterKind::Drop:
            detail::scaleDrop(law, factor);
            break;
        case ParameterKind::Coefficient:
            detail::scaleCoefficient(law, factor);
            break;
        default:
            detail::scaleSpeed(law, factor);
    }
    return Element(std::move(law));
}

PressureDifference dropPerLogarithm(const Element& element, ParameterKind kind, VolumeFlow flow) {
    EXPECTS(!element.isShut());
    return PressureDifference::si(lawPush(element.law(), kind, flow.si()));
}

std::optional<PressureDifference> Sensitivities::drop(std::size_t link, std::size_t parameter) const {
    EXPECTS(link < linkCount() && parameter < parameterCount());
    const double drop_Pa = m_table.drops_Pa[m_table.at(link, parameter)];
    return std::isnan(drop_Pa) ? std::nullopt : std::optional(PressureDifference::si(drop_Pa));
}

Sensitivities sensitivities(const Network& network, const Solution& solution,
                            std::span<const Parameter> parameters, std::span<const LinkIndex> links) {
    EXPECTS(solution.linkCount() == network.linkCount());
    for (const Parameter& parameter : parameters) {
        EXPECTS(parameter.link.value < network.linkCount());
    }
    for (const LinkIndex link : links) {
        EXPECTS(link.value < network.linkCount());
    }
    return Derivatives(network, solution, parameters, links).run();
}

Sensitivities sensitivities(const Network& network, const Solution& solution,
                            std::span<const Parameter> parameters) {
    std::vector<LinkIndex> all(network.linkCount());
    for (std::uint32_t link = 0; link < all.size(); ++link) {
        all[link] = {link};
    }
    return sensitivities(network, solution, parameters, all);
}

}  // namespace ww::hydraulics
