#include "core/estimation/forecast.h"

#include <cmath>

#include "core/estimation/detail/case_state.h"

namespace ww::estimation {

namespace {

/// A row over the free unknowns divided by `per`, as weights by unknown; zeros where `per` is 0.
Functional functionalOf(const Eigen::MatrixXd& rows, Eigen::Index row, double per,
                        const detail::FreeUnknowns& unknowns) {
    Functional out{std::vector<double>(unknowns.priors.size(), 0)};
    for (Eigen::Index free = 0; free < unknowns.count() && per != 0; ++free) {
        const std::size_t unknown = unknowns.unknownOf[static_cast<std::size_t>(free)];
        out.weightByUnknown[unknown] = rows(row, free) / (per * unknowns.priorSds[unknown]);
    }
    return out;
}

}  // namespace

Forecast forecast(const Learning& learning, const std::vector<double>& lnFactorOfUnknowns,
                  std::size_t caseIndex, std::span<const hydraulics::LinkIndex> links) {
    LearnOptions everything;
    everything.hasTableErrors = true;
    const detail::FreeUnknowns unknowns(learning, everything);
    detail::CaseState state = detail::solvedCase(learning, caseIndex, lnFactorOfUnknowns, nullptr);
    const detail::LinkRows rows = detail::linkRows(learning, unknowns, caseIndex, state, links);
    Forecast out{std::move(state.solution), {}};
    for (std::size_t i = 0; i < links.size(); ++i) {
        const auto row = static_cast<Eigen::Index>(i);
        LinkForecast one;
        one.flow = out.solution.flow(links[i]);
        one.drop = out.solution.drop(state.network, links[i]);
        one.lnFlow = functionalOf(rows.flows_m3s, row, one.flow.si(), unknowns);
        one.lnDrop = functionalOf(rows.drops_Pa, row, one.drop ? one.drop->si() : 0, unknowns);
        out.links.push_back(std::move(one));
    }
    return out;
}

std::vector<Functional> shareFunctionals(std::span<const LinkForecast> links) {
    if (links.empty()) {
        return {};
    }
    double total_m3s = 0;
    for (const LinkForecast& link : links) {
        total_m3s += link.flow.si();
    }
    EXPECTS(total_m3s > 0);
    const std::size_t count = links.front().lnFlow.weightByUnknown.size();
    std::vector<double> ofTotal(count, 0);
    for (const LinkForecast& link : links) {
        for (std::size_t unknown = 0; unknown < count; ++unknown) {
            ofTotal[unknown] += link.flow.si() / total_m3s * link.lnFlow.weightByUnknown[unknown];
        }
    }
    std::vector<Functional> out;
    for (const LinkForecast& link : links) {
        Functional share = link.lnFlow;
        for (std::size_t unknown = 0; unknown < count; ++unknown) {
            share.weightByUnknown[unknown] -= ofTotal[unknown];
        }
        out.push_back(std::move(share));
    }
    return out;
}

}  // namespace ww::estimation
