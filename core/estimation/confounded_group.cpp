#include "core/estimation/confounded_group.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

namespace ww::estimation {

namespace {

constexpr double kKnownSd = 0.05;
constexpr double kNotSeenSdRatio = 0.9;
constexpr double kJoiningCorrelation = 0.9;

std::size_t rootOf(std::vector<std::size_t>& parents, std::size_t one) {
    while (parents[one] != one) {
        parents[one] = parents[parents[one]];
        one = parents[one];
    }
    return one;
}

}  // namespace

std::vector<ConfoundedGroup> confoundedGroups(const Learned& learned) {
    std::vector<std::size_t> open;
    std::vector<Functional> functionals;
    for (std::size_t unknown = 0; unknown < learned.unknowns.size(); ++unknown) {
        const LearnedUnknown& one = learned.unknowns[unknown];
        if (one.lnFactorPriorSd > 0 &&
            one.lnFactorSd >= std::min(kKnownSd, kNotSeenSdRatio * one.lnFactorPriorSd)) {
            open.push_back(unknown);
            functionals.push_back({std::vector<double>(learned.unknowns.size(), 0)});
            functionals.back().weightByUnknown[unknown] = 1;
        }
    }
    const CovarianceTable table = learned.posterior.covariance(functionals);
    std::vector<std::size_t> parents(open.size());
    std::iota(parents.begin(), parents.end(), std::size_t{0});
    for (std::size_t row = 0; row < open.size(); ++row) {
        for (std::size_t column = 0; column < row; ++column) {
            const double limit = kJoiningCorrelation * std::sqrt(table.covarianceWeight(row, row) *
                                                                 table.covarianceWeight(column, column));
            if (std::abs(table.covarianceWeight(row, column)) > limit) {
                parents[rootOf(parents, row)] = rootOf(parents, column);
            }
        }
    }
    std::map<std::size_t, ConfoundedGroup> groups;
    for (std::size_t i = 0; i < open.size(); ++i) {
        ConfoundedGroup& group = groups[rootOf(parents, i)];
        group.unknowns.push_back(open[i]);
        group.kind = group.unknowns.size() > 1 ? ConfoundedKind::OnlyTogether : ConfoundedKind::NotSeen;
    }
    std::vector<ConfoundedGroup> out;
    for (auto& [root, group] : groups) {
        const LearnedUnknown& first = learned.unknowns[group.unknowns.front()];
        const bool isSeen = first.lnFactorSd < kNotSeenSdRatio * first.lnFactorPriorSd;
        if (group.kind == ConfoundedKind::OnlyTogether || !isSeen) {
            out.push_back(std::move(group));
        }
    }
    std::sort(out.begin(), out.end(), [](const ConfoundedGroup& one, const ConfoundedGroup& other) {
        return one.unknowns.front() < other.unknowns.front();
    });
    return out;
}

}  // namespace ww::estimation
