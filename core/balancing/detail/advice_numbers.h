// What the learned loop would do at the advised settings, and how certain that is. Not for which settings are
// advised (advice/).
#pragma once

#include "core/balancing/advice/advice.h"
#include "core/balancing/detail/loop_fits.h"
#include "core/estimation/forecast.h"
#include "core/estimation/share_forecast.h"

namespace ww::balancing::detail {

/// A forecast of all branches in one state.
struct AdviceForecast {
    std::vector<VolumeFlow> flows;                         ///< by branch, from the fit that trusts the tables
    std::vector<std::optional<PressureDifference>> drops;  ///< across each valve, likewise
    std::vector<Ratio> indicated;                          ///< of target, likewise
    std::vector<Ratio> actual;                             ///< of target, from the fit that doubts them
    std::vector<Ratio> indicatedSd;                        ///< standard uncertainties, by branch
    std::vector<Ratio> actualSd;
    std::vector<Ratio> ownResponse;  ///< d ln(share) / d ln(coefficient) of a branch's own valve
    VolumeFlow totalFlow;
    PressureDifference pumpRise;
    std::vector<std::size_t> matched;  ///< terminals whose shares are to lie within the band
    /// Of `matched`, of target: covariances row by row; empty where there are too many for it.
    std::vector<double> indicatedCovarianceRatio;
    std::vector<double> actualCovarianceRatio;
    std::vector<estimation::Functional> shareAims;  ///< of the indicated shares of `matched`; empty likewise
    std::shared_ptr<const estimation::ShareForecast> shares;  ///< instead, where the fits have no posterior
    std::vector<std::size_t> aimsOfShares;                    ///< positions of `matched` in it

    /// What readings would do to the indicated shares of `matched`.
    std::vector<estimation::ReadingGain> gains(const LoopFits& fits,
                                               std::span<const estimation::CandidateReading> readings) const;
};

/// Forecasts a state of the learned loop; `loop` gets a case for it.
AdviceForecast adviceForecast(const project::Project& project, const LoopFits& fits, LoopLearning& loop,
                              LoopStates& states, const LoopState& state);

/// The reading that lowers the largest uncertainty of a share most, among those that can be taken as the loop
/// stands: the dp across a terminal's valve shut for a moment, the dp of a valve never read, the dp of one
/// read before. With more than kMostExactTerminals only the last terminal of each group is considered shut,
/// of the groups with the least certain shares, and only unread valves besides. Nothing where there is none.
std::optional<HelpfulReading> helpfulReading(const project::Project& project, const LearnedLoop& learned,
                                             LoopLearning& loop, LoopStates& states,
                                             const AdviceForecast& forecast);

}  // namespace ww::balancing::detail
