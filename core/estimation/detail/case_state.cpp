#include "core/estimation/detail/case_state.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/hydraulics/sensitivity.h"

namespace ww::estimation::detail {

using hydraulics::LinkIndex;

namespace {

constexpr double kLeastFraction = 0.01;

/// The parameters that free unknowns move in one case, each once, and how much of it moves with each.
struct CaseParameters {
    CaseParameters(const Learning& learning, const FreeUnknowns& unknowns, std::size_t caseIndex,
                   const hydraulics::Network& network) {
        std::map<std::pair<std::uint32_t, hydraulics::ParameterKind>, std::size_t> known;
        for (Eigen::Index free = 0; free < unknowns.count(); ++free) {
            const std::size_t unknown = unknowns.unknownOf[static_cast<std::size_t>(free)];
            for (const ScaledLink& scaled : learning.unknowns[unknown].links) {
                if (network.isClosed(scaled.link)) {
                    continue;
                }
                const auto [at, isNew] = known.try_emplace({scaled.link.value, scaled.kind}, list.size());
                if (isNew) {
                    list.push_back({scaled.link, scaled.kind});
                }
                uses.push_back({free, at->second, scaled.weightIn(caseIndex) * unknowns.priorSds[unknown]});
            }
        }
    }

    struct Use {
        Eigen::Index free;
        std::size_t parameter;
        double weight;
    };
    std::vector<hydraulics::Parameter> list;
    std::vector<Use> uses;
};

}  // namespace

CaseState solvedCase(const Learning& learning, std::size_t caseIndex,
                     const std::vector<double>& lnFactorOfUnknowns, const hydraulics::Solution* start) {
    hydraulics::Network network = learnedNetwork(learning, caseIndex, lnFactorOfUnknowns);
    hydraulics::SolveOptions options;
    options.start = start;
    hydraulics::Solution solution = hydraulics::solve(network, options);
    return {std::move(network), std::move(solution)};
}

std::optional<double> fittedSi(const CaseState& state, const Observation& observation) {
    if (observation.what == Observed::Flow) {
        return state.solution.flow(observation.link).si();
    }
    const auto drop = state.solution.drop(state.network, observation.link);
    if (!drop) {
        return std::nullopt;
    }
    return observation.what == Observed::Rise ? -drop->si() : drop->si();
}

LogValue logValue(double fitted, double lnObserved) {
    const double least = kLeastFraction * std::exp(lnObserved);
    if (fitted >= least) {
        return {std::log(fitted), 1 / fitted};
    }
    return {std::log(least) + (fitted - least) / least, 1 / least};
}

LinkRows linkRows(const Learning& learning, const FreeUnknowns& unknowns, std::size_t caseIndex,
                  const CaseState& state, std::span<const LinkIndex> links) {
    const CaseParameters parameters(learning, unknowns, caseIndex, state.network);
    const auto table = hydraulics::sensitivities(state.network, state.solution, parameters.list, links);
    const auto rows = static_cast<Eigen::Index>(links.size());
    LinkRows out{Eigen::MatrixXd::Zero(rows, unknowns.count()),
                 Eigen::MatrixXd::Zero(rows, unknowns.count())};
    for (const CaseParameters::Use& use : parameters.uses) {
        for (std::size_t link = 0; link < links.size(); ++link) {
            const auto row = static_cast<Eigen::Index>(link);
            out.flows_m3s(row, use.free) += use.weight * table.flow(link, use.parameter).si();
            const auto drop = table.drop(link, use.parameter);
            out.drops_Pa(row, use.free) += drop ? use.weight * drop->si() : 0;
        }
    }
    return out;
}

Eigen::MatrixXd readingRows(const Learning& learning, const FreeUnknowns& unknowns, const CaseState& state,
                            std::span<const std::size_t> observations) {
    std::vector<LinkIndex> links;
    for (const std::size_t index : observations) {
        links.push_back(learning.observations[index].link);
    }
    const std::size_t caseIndex = learning.observations[observations.front()].caseIndex;
    const LinkRows byLink = linkRows(learning, unknowns, caseIndex, state, links);
    Eigen::MatrixXd out(static_cast<Eigen::Index>(observations.size()), unknowns.count());
    for (std::size_t i = 0; i < observations.size(); ++i) {
        const Observation& observation = learning.observations[observations[i]];
        const auto row = static_cast<Eigen::Index>(i);
        const double fitted = fittedSi(state, observation).value_or(0);
        const double sign = observation.what == Observed::Rise ? -1 : 1;
        const double perSi =
            sign * logValue(fitted, observation.lnValueRatio().value_or(std::log(std::abs(fitted)))).perSi;
        out.row(row) = perSi * (observation.what == Observed::Flow ? byLink.flows_m3s.row(row)
                                                                   : byLink.drops_Pa.row(row));
        if (observation.instrument) {
            const std::ptrdiff_t free = unknowns.freeOf[*observation.instrument];
            if (free != FreeUnknowns::kHeld) {
                out(row, free) += unknowns.priorSds[*observation.instrument];
            }
        }
    }
    return out;
}

}  // namespace ww::estimation::detail
