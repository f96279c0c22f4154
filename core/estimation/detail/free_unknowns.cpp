#include "core/estimation/detail/free_unknowns.h"

#include <algorithm>

#include "core/base/expects.h"

namespace ww::estimation::detail {

FreeUnknowns::FreeUnknowns(const Learning& learning, const LearnOptions& options) {
    for (const Unknown& unknown : learning.unknowns) {
        double sd = unknown.lnFactorPriorSd;
        const bool isPath = unknown.kind == UnknownKind::Circuit || unknown.kind == UnknownKind::Run;
        if (sd > 0 && isPath) {
            sd = std::max(sd, options.lnFactorLeastPriorSd);
        }
        if (unknown.kind == UnknownKind::ValveTable && !options.hasTableErrors) {
            sd = 0;
        }
        add(unknown, sd);
    }
}

FreeUnknowns::FreeUnknowns(const Learning& learning, std::span<const double> priorSdOfUnknowns) {
    EXPECTS(priorSdOfUnknowns.size() == learning.unknowns.size());
    for (std::size_t unknown = 0; unknown < learning.unknowns.size(); ++unknown) {
        add(learning.unknowns[unknown], priorSdOfUnknowns[unknown]);
    }
}

void FreeUnknowns::add(const Unknown& unknown, double sd) {
    freeOf.push_back(sd > 0 ? static_cast<std::ptrdiff_t>(unknownOf.size()) : kHeld);
    if (sd > 0) {
        unknownOf.push_back(priorSds.size());
    }
    priorSds.push_back(sd);
    priors.push_back(unknown.lnFactorPrior);
}

Eigen::MatrixXd FreeUnknowns::gathered(std::span<const Functional> functionals) const {
    Eigen::MatrixXd out(count(), static_cast<Eigen::Index>(functionals.size()));
    for (std::size_t column = 0; column < functionals.size(); ++column) {
        const std::vector<double>& weights = functionals[column].weightByUnknown;
        EXPECTS(weights.size() == priors.size());
        for (std::size_t free = 0; free < unknownOf.size(); ++free) {
            const std::size_t unknown = unknownOf[free];
            out(static_cast<Eigen::Index>(free), static_cast<Eigen::Index>(column)) =
                weights[unknown] * priorSds[unknown];
        }
    }
    return out;
}

}  // namespace ww::estimation::detail
