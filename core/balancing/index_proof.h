// Whether a round shows that its index circuit governs the pump, as one judgement for the report, the signing
// list and the screen. Not for how the circuit is found (assess.h).
#pragma once

#include <optional>
#include <vector>

#include "core/balancing/assessment.h"
#include "core/project/project.h"

namespace ww::balancing {

/// The parts of the proof. A part that fails has its branches in it, as indices into Project::branches().
struct IndexProof {
    bool isKnown = false;              ///< the readings name an index circuit
    std::vector<std::size_t> notOpen;  ///< valves of its path that are not known to be fully open
    bool isReadable = false;           ///< its terminal's dp is read, not below `readableMinimum`
    /// The limit that a dp of its terminal has everywhere (detail::readableMinimum); nothing without a dp.
    std::optional<PressureDifference> readableMinimum;
    /// The dp is below that minimum by no more than its standard uncertainty: to be read again more finely.
    std::optional<PressureDifference> undecidedDp;  ///< that uncertainty
    std::vector<std::size_t> rivals;  ///< other fully open terminals with less of design (index_rivals.h)
    /// Others that take less by no more than the readings tell: to be read again more finely.
    std::vector<std::size_t> undecidedRivals;

    /// Every valve of its path is known to be fully open.
    bool isFullyOpen() const { return isKnown && notOpen.empty(); }
    /// No other fully open terminal takes less of its design.
    bool isAlone() const { return isKnown && rivals.empty() && undecidedRivals.empty(); }
    /// All parts hold.
    bool isProved() const { return isFullyOpen() && isReadable && isAlone(); }
};

/// The proof as the round of the assessment shows it; isKnown is false, and nothing else is said, where the
/// readings name no index circuit. The parts: common practice, no source.
IndexProof indexProof(const project::Project& project, const Assessment& assessment);

}  // namespace ww::balancing
