// Shares in one state of the learned loop and how certain they are, where links and unknowns are too many for
// a functional each. The same numbers as forecast() with Posterior.
#pragma once

#include <memory>
#include <span>
#include <utility>
#include <vector>

#include "core/estimation/learned.h"
#include "core/hydraulics/solution.h"

namespace ww::estimation {

/// A flow and what is told of it.
struct ToldFlow {
    hydraulics::LinkIndex link;
    bool isInSum = true;  ///< one of the flows that shares are parts of
    /// What is told over what flows, as ln: weights by position in Learning::unknowns. Only of unknowns that
    /// scale the link or one that ends where it does.
    std::vector<std::pair<std::size_t, double>> weightOfUnknowns;
};

/// Standard deviations are those of ln; of a link without flow 0.
class ShareForecast {
  public:
    /// Solves a case of the Learning, which may have been added after the fit, at the fit's unknowns; some
    /// flow in the sum must be above 0. Linearises all cases with readings anew, with the priors as the fit
    /// used them.
    ShareForecast(const Learning& learning, const Learned& fit, std::size_t caseIndex,
                  std::span<const ToldFlow> flows);

    const std::vector<VolumeFlow>& flows() const { return m_flows; }  ///< in the order asked for
    const std::vector<double>& relativeSdOfShares() const { return m_relativeSds; }
    /// Of what is told of each share over what is told of all.
    const std::vector<double>& relativeSdOfToldShares() const { return m_relativeToldSds; }
    /// As Posterior::gains, aimed at told shares by position in the flows asked for.
    std::vector<ReadingGain> gains(std::span<const std::size_t> aims,
                                   std::span<const CandidateReading> candidates) const;

  private:
    struct System;

    std::vector<VolumeFlow> m_flows;
    std::vector<double> m_relativeSds;
    std::vector<double> m_relativeToldSds;
    std::shared_ptr<const System> m_system;
};

}  // namespace ww::estimation
