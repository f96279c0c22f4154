// The witness round: a sample of terminals read again by somebody else, and what comes of it.
// Not for how readings are stored (walk.h).
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/balancing/walk.h"

namespace ww::balancing {

/// Share of the terminals that is read again where nobody says otherwise, and how far a flow may then lie
/// from the reported one, and how many may lie farther (common practice, no source).
inline constexpr double kUsualSampleFraction = 0.10;
inline constexpr double kWitnessLimitRatio = 0.10;
inline constexpr double kWitnessMostFailingFraction = 0.10;

/// The terminals to read again, in walking order: always the one on the index circuit and those with the
/// highest and the lowest of design; at least one of every group of terminals; then others by chance until
/// `fraction` of all (0 to 1, rounded up) is reached. The same seed and round give the same sample. Only
/// terminals with a flow in `reported` are drawn; empty where there are none.
std::vector<Id> witnessSample(const project::Project& project, const Assessment& reported, std::uint32_t seed,
                              Ratio fraction);

/// The round that a witness round reads again: the newest final one before it, else the newest with readings;
/// null where there is none. Without a witness round: before the next one.
const project::Round* reportedRound(const project::Project& project, const project::Round* witness = nullptr);

/// Opens a witness round with its sample. Refused while another round is open, and where nothing was read
/// that could be read again.
base::Result<project::Edit> openWitnessRound(const project::Project& project, std::uint32_t seed,
                                             Ratio fraction, WalkContext context);

/// One terminal of the sample.
struct WitnessRow {
    Id branch;
    std::optional<VolumeFlow> reported;
    std::optional<VolumeFlow> reread;
    bool isSameReader = false;      ///< known to be the same person
    bool isSameInstrument = false;  ///< known to be the same instrument

    bool deviates() const;  ///< by more than kWitnessLimitRatio of the reported flow
};

enum class WitnessVerdict { Confirmed, NotConfirmed, Unfinished };

struct WitnessResult {
    std::vector<WitnessRow> rows;  ///< in the order of the sample
    std::size_t unread = 0;
    std::size_t failing = 0;
    WitnessVerdict verdict = WitnessVerdict::Unfinished;
};

/// Compares the sample of a witness round with the reported round. Confirmed: all read, and at most
/// kWitnessMostFailingFraction of them deviate. The round must exist.
WitnessResult witnessResult(const project::Project& project, const Id& round);

}  // namespace ww::balancing
