// One case of a learning solved at given unknowns, what its readings would be there, and how those depend on
// the unknowns. Inside estimation only.
#pragma once

#include <Eigen/Core>
#include <optional>
#include <span>
#include <vector>

#include "core/estimation/detail/free_unknowns.h"
#include "core/hydraulics/solution.h"
#include "core/hydraulics/solve.h"

namespace ww::estimation::detail {

struct CaseState {
    hydraulics::Network network;
    hydraulics::Solution solution;
};

/// Solves the case; `start` may be null.
CaseState solvedCase(const Learning& learning, std::size_t caseIndex,
                     const std::vector<double>& lnFactorOfUnknowns, const hydraulics::Solution* start);

/// What the loop makes where the observation was taken, in SI and positive the way a reading is, without the
/// instrument's factor; nothing where it cannot be known.
std::optional<double> fittedSi(const CaseState& state, const Observation& observation);

/// ln of a fitted value against ln of the observed one. Below a hundredth of the observed value, and for
/// values against its direction, the logarithm goes on as its tangent, so that a fit may pass through them.
struct LogValue {
    double ln = 0;
    double perSi = 0;  ///< its derivative with the fitted value
};
LogValue logValue(double fitted, double lnObserved);

/// d(ln fitted)/d(unknown) for some observations of one case, instruments included, row by row over the free
/// unknowns, in prior standard deviations.
Eigen::MatrixXd readingRows(const Learning& learning, const FreeUnknowns& unknowns, const CaseState& state,
                            std::span<const std::size_t> observations);

/// d(flow) and d(drop) of links by the free unknowns, in prior standard deviations; a drop that is not known
/// has a row of zeros.
struct LinkRows {
    Eigen::MatrixXd flows_m3s;
    Eigen::MatrixXd drops_Pa;
};
LinkRows linkRows(const Learning& learning, const FreeUnknowns& unknowns, std::size_t caseIndex,
                  const CaseState& state, std::span<const hydraulics::LinkIndex> links);

}  // namespace ww::estimation::detail
