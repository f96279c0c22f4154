// What the learned loop would do in one of its cases, and how that depends on the unknowns.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/estimation/learning.h"
#include "core/estimation/posterior.h"
#include "core/hydraulics/solution.h"

namespace ww::estimation {

/// One link asked for.
struct LinkForecast {
    VolumeFlow flow;
    std::optional<PressureDifference> drop;  ///< of a shut link what stands across it
    Functional lnFlow;                       ///< of ln(flow); zero where no water moves
    Functional lnDrop;                       ///< of ln(drop); zero where the drop is not known or 0
};

struct Forecast {
    hydraulics::Solution solution;
    std::vector<LinkForecast> links;  ///< in the order asked for
};

/// Solves a case of the Learning with these unknowns. The case may have been added after the fit; nothing of
/// it needs readings. The functional of a share is that of ln(flow) less the share-weighted sum of all: see
/// shareFunctionals().
Forecast forecast(const Learning& learning, const std::vector<double>& lnFactorOfUnknowns,
                  std::size_t caseIndex, std::span<const hydraulics::LinkIndex> links);

/// Functionals of ln(share) of each link among all the links given: their flows over the flows' sum, which
/// must be above 0.
std::vector<Functional> shareFunctionals(std::span<const LinkForecast> links);

}  // namespace ww::estimation
