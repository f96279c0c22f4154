// What makes a single reading doubtful: plausibility, sign, unit, range, calibration.
// Not for the checks of a whole round (checks/).
#pragma once

#include <vector>

#include "core/balancing/detail/round_numbers.h"
#include "core/balancing/meant_dp.h"

namespace ww::balancing::detail {

/// Limits of a dp over the dp of the newest earlier round at the same setting (common practice, no source).
inline constexpr double kPlausibleLowRatio = 0.4;
inline constexpr double kPlausibleHighRatio = 2.5;
/// Limits of a dp over the dp that design flow needs, where no earlier reading is comparable (likewise).
inline constexpr double kPlausibleFirstLowRatio = 0.05;
inline constexpr double kPlausibleFirstHighRatio = 8;
/// How near the expected value a dp must come with its point moved or in another unit for a slip of either
/// (likewise).
inline constexpr double kSlipRatio = 0.15;

/// What a dp is compared with.
struct ExpectedDp {
    PressureDifference dp;
    int round = 0;  ///< number of the round it was read in; 0: from the design flow
};

/// The dp of the newest earlier round at the same setting, else the dp that design flow needs at the setting;
/// nothing without either, and for self-acting branches.
std::optional<ExpectedDp> expectedDp(const project::Project& project, const RoundNumbers& numbers,
                                     std::size_t branch);
bool isPlausible(PressureDifference dp, const ExpectedDp& expected);
/// What the same digits may have meant that comes nearest to the expected dp, within kSlipRatio; nothing
/// where nothing does.
std::optional<MeantDp> fittingDp(const quantity::Measured<PressureDifference>& dp,
                                 PressureDifference expected, quantity::Density density);

/// What is said about a dp that was probably entered with a slipped point or in another unit.
base::Fault slipFault(const std::string& tag, const quantity::Measured<PressureDifference>& dp,
                      PressureDifference expected, const MeantDp& fitting, quantity::Density density);

/// The doubts about what was read at a branch in this round, most telling first; none where nothing was read.
/// Those with a reason given are notes.
std::vector<Finding> doubts(const project::Project& project, const RoundNumbers& numbers, std::size_t branch);

/// Whether a dp lies above what the instrument can show; false where its range is not known.
bool isAboveRange(const project::Instrument* instrument, PressureDifference dp);

}  // namespace ww::balancing::detail
