#include "core/estimation/share_forecast.h"

#include <algorithm>
#include <cmath>

#include "core/estimation/detail/linearisation.h"
#include "core/estimation/detail/reading_gain.h"

namespace ww::estimation {

namespace {

constexpr std::ptrdiff_t kNoProbe = -1;

std::vector<double> priorSdsOf(const Learned& fit) {
    std::vector<double> out;
    for (const LearnedUnknown& unknown : fit.unknowns) {
        out.push_back(unknown.lnFactorPriorSd);
    }
    return out;
}

}  // namespace

/// The fit with the state's flows as probes: first as they are, then as they are told.
struct ShareForecast::System {
    std::shared_ptr<const detail::Factorisation> factorisation;
    std::vector<std::ptrdiff_t> probeOf;  ///< by flow; kNoProbe without flow
    Eigen::VectorXd shareOfProbes;        ///< parts of the sum, by probe of flows as they are
    Eigen::Index count = 0;               ///< of these

    /// Weights over all probes that give the sum of flows as they are, or as they are told.
    Eigen::VectorXd weights(bool areTold) const {
        Eigen::VectorXd out = Eigen::VectorXd::Zero(2 * count);
        out.segment(areTold ? count : 0, count) = shareOfProbes;
        return out;
    }
    std::vector<double> relativeSds(bool areTold) const {
        const std::vector<double> variances = factorisation->variancesOfShares(weights(areTold));
        std::vector<double> out;
        for (const std::ptrdiff_t probe : probeOf) {
            const std::ptrdiff_t at = probe + (areTold ? count : 0);
            out.push_back(
                probe == kNoProbe ? 0 : std::sqrt(std::max(0.0, variances[static_cast<std::size_t>(at)])));
        }
        return out;
    }
};

ShareForecast::ShareForecast(const Learning& learning, const Learned& fit, std::size_t caseIndex,
                             std::span<const ToldFlow> flows) {
    const std::vector<double> priorSds = priorSdsOf(fit);
    const detail::FreeUnknowns unknowns(learning, priorSds);
    const std::vector<double> lnFactors = fit.lnFactorOfUnknowns();
    const auto readingsOf = detail::readingsByCase(learning);
    std::vector<std::optional<detail::CaseState>> states(learning.cases.size());
    for (std::size_t one = 0; one < states.size(); ++one) {
        if (one == caseIndex || !readingsOf[one].empty()) {
            states[one] = detail::solvedCase(learning, one, lnFactors, nullptr);
        }
    }
    std::vector<double> weights;
    for (const Observation& observation : learning.observations) {
        const bool counts = observation.hasWeight() &&
                            detail::fittedSi(*states[observation.caseIndex], observation).has_value();
        weights.push_back(counts ? 1 / (observation.relativeSd * observation.relativeSd) : 0);
    }
    auto system = std::make_shared<System>();
    std::vector<detail::FlowProbe> probes;
    std::vector<double> shares;
    double sum_m3s = 0;
    for (const ToldFlow& flow : flows) {
        m_flows.push_back(states[caseIndex]->solution.flow(flow.link));
        const bool hasFlow = m_flows.back().si() > 0;
        system->probeOf.push_back(hasFlow ? static_cast<std::ptrdiff_t>(probes.size()) : kNoProbe);
        if (hasFlow) {
            probes.push_back({caseIndex, flow.link, {}});
            shares.push_back(flow.isInSum ? m_flows.back().si() : 0);
            sum_m3s += shares.back();
        }
    }
    EXPECTS(sum_m3s > 0);
    system->count = static_cast<Eigen::Index>(probes.size());
    system->shareOfProbes =
        Eigen::Map<const Eigen::VectorXd>(shares.data(), static_cast<Eigen::Index>(shares.size())) / sum_m3s;
    for (std::size_t i = 0; i < flows.size(); ++i) {
        if (system->probeOf[i] != kNoProbe) {
            probes.push_back({caseIndex, flows[i].link, flows[i].weightOfUnknowns});
        }
    }
    std::vector<std::size_t> sparse = detail::sparseCases(readingsOf, {});
    if (std::find(sparse.begin(), sparse.end(), caseIndex) == sparse.end()) {
        sparse.push_back(caseIndex);
    }
    system->factorisation = detail::linearisation(learning, unknowns, states, sparse, weights, probes);
    m_relativeSds = system->relativeSds(false);
    m_relativeToldSds = system->relativeSds(true);
    m_system = std::move(system);
}

std::vector<ReadingGain> ShareForecast::gains(std::span<const std::size_t> aims,
                                              std::span<const CandidateReading> candidates) const {
    const std::vector<Functional> functionals = detail::functionalsOf(candidates);
    const Eigen::MatrixXd columns = m_system->factorisation->unknowns().gathered(functionals);
    const Eigen::VectorXd own =
        columns.cwiseProduct(m_system->factorisation->solve(columns)).colwise().sum().transpose();
    const Eigen::MatrixXd across = m_system->factorisation->sharesWith(columns, m_system->weights(true));
    Eigen::VectorXd before(static_cast<Eigen::Index>(aims.size()));
    for (std::size_t i = 0; i < aims.size(); ++i) {
        before[static_cast<Eigen::Index>(i)] = m_relativeToldSds[aims[i]] * m_relativeToldSds[aims[i]];
    }
    std::vector<ReadingGain> out;
    for (std::size_t candidate = 0; candidate < candidates.size(); ++candidate) {
        const auto column = static_cast<Eigen::Index>(candidate);
        const double sd = candidates[candidate].relativeSd;
        Eigen::VectorXd taken = Eigen::VectorXd::Zero(before.size());
        for (std::size_t i = 0; i < aims.size(); ++i) {
            const std::ptrdiff_t probe = m_system->probeOf[aims[i]];
            if (probe != kNoProbe) {
                const double with = across(m_system->count + probe, column);
                taken[static_cast<Eigen::Index>(i)] = with * with / (sd * sd + own[column]);
            }
        }
        out.push_back(detail::gainOf(before, taken));
    }
    return out;
}

}  // namespace ww::estimation
