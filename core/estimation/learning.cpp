#include "core/estimation/learning.h"

#include <array>
#include <cmath>
#include <span>

namespace ww::estimation {

namespace {

using hydraulics::LinkIndex;
using hydraulics::ParameterKind;

constexpr std::array kKinds{ParameterKind::Drop, ParameterKind::Coefficient, ParameterKind::Speed};

double siOf(const ObservedValue& value) {
    return std::visit([](auto quantity) { return quantity.si(); }, value);
}

/// Logarithms of the factors on each kind of parameter of the links.
class LinkFactors {
  public:
    explicit LinkFactors(std::size_t linkCount) {
        for (auto& ofKind : m_ln) {
            ofKind.assign(linkCount, 0);
        }
    }
    void add(const ScaledLink& scaled, std::size_t caseIndex, double lnFactor) {
        m_ln[static_cast<std::size_t>(scaled.kind)].at(scaled.link.value) +=
            scaled.weightIn(caseIndex) * lnFactor;
    }
    /// Links whose element changes.
    std::vector<hydraulics::LinkChange> changes(const hydraulics::Network& network) const {
        std::vector<hydraulics::LinkChange> out;
        for (std::uint32_t link = 0; link < m_ln.front().size(); ++link) {
            const bool changes = m_ln[0][link] != 0 || m_ln[1][link] != 0 || m_ln[2][link] != 0;
            if (!changes || network.isClosed(LinkIndex{link})) {
                continue;
            }
            hydraulics::Element element = network.element(LinkIndex{link});
            for (const ParameterKind kind : kKinds) {
                const double ln = m_ln[static_cast<std::size_t>(kind)][link];
                element = ln == 0 ? element : hydraulics::scaled(element, kind, std::exp(ln));
            }
            out.push_back({LinkIndex{link}, std::move(element), false});
        }
        return out;
    }

  private:
    std::array<std::vector<double>, kKinds.size()> m_ln;
};

}  // namespace

std::optional<double> Observation::lnValueRatio() const {
    const double number = siOf(value);
    return number > 0 && std::isfinite(number) ? std::optional(std::log(number)) : std::nullopt;
}

hydraulics::Network learnedNetwork(const Learning& learning, std::size_t caseIndex,
                                   const std::vector<double>& lnFactorOfUnknowns) {
    EXPECTS(caseIndex < learning.cases.size());
    EXPECTS(lnFactorOfUnknowns.size() == learning.unknowns.size());
    const hydraulics::Network& network = learning.cases[caseIndex];
    LinkFactors factors(network.linkCount());
    for (std::size_t unknown = 0; unknown < lnFactorOfUnknowns.size(); ++unknown) {
        EXPECTS(std::isfinite(lnFactorOfUnknowns[unknown]));
        for (const ScaledLink& scaled : learning.unknowns[unknown].links) {
            factors.add(scaled, caseIndex, lnFactorOfUnknowns[unknown]);
        }
    }
    auto changed = network.with(factors.changes(network));
    EXPECTS(changed.network.has_value());
    return *std::move(changed.network);
}

}  // namespace ww::estimation
