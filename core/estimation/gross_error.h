// The search for a grossly wrong reading, by the rule: design losses are doubted before a reading is, a
// reading is never accused on the evidence of its own round alone, and one re-read of the place settles which
// it was.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

#include "core/estimation/learn.h"

namespace ww::estimation {

/// A standardised residual from which a place is named after a second round, of up to 1,000 readings (of more
/// it is a little higher, 4.7 of 100,000), and one from which a re-read is worth while.
inline constexpr double kAccusingScore = 3.7;
inline constexpr double kRereadScore = 2.5;
/// A hypothesis explains a reading that it brings below this.
inline constexpr double kExplainedScore = 2.0;

/// Another account of one reading: other value, or another state of the loop while it was taken (setting
/// misread, other valve size); one of the two at least.
struct Hypothesis {
    std::size_t observation = 0;
    std::optional<ObservedValue> value;
    std::optional<hydraulics::Network> network;  ///< in place of the reading's case, for all its readings
};

/// A hypothesis that fits.
struct Explanation {
    std::size_t hypothesis = 0;  ///< position in the list of the place
    double score = 0;            ///< the largest left at the place
    double chiSquareScore = 0;   ///< misfit of the whole fit under it
};

enum class GrossErrorVerdict {
    Clean,        ///< nothing stands out
    ReadAgain,    ///< something stands out, but only among readings of one case: not enough to accuse
    PlaceNamed,   ///< a reading of the place is wrong; which one, a re-read must tell
    ReadingNamed  ///< this reading is wrong
};

struct GrossErrorFinding {
    GrossErrorVerdict verdict = GrossErrorVerdict::Clean;
    /// The fit that holds: plain, with widened priors where those settle it, without the wrong reading where
    /// it is known (without all of the place where only that is).
    Learned learned;
    bool isPriorWidened = false;
    std::vector<std::size_t> readAgain;     ///< readings to take once more, most doubtful first
    std::optional<std::size_t> place;       ///< of Observation::place
    std::vector<std::size_t> wrong;         ///< readings left out of `learned`
    std::vector<Explanation> explanations;  ///< that restore the place, best first
};

/// The finding, or the faults of the learning.
struct GrossErrorResult {
    std::optional<GrossErrorFinding> finding;
    std::vector<base::Fault> faults;
};

/// The accounts of what may have gone wrong at a place (Observation::place).
using HypothesesOf = std::function<std::vector<Hypothesis>(std::size_t place)>;

/// Fits, doubts the priors first, then the readings. `hypothesesOf` is asked once, for the place that is
/// named, and what it says is tried; none where it is empty. What keeps learn() from fitting is in `faults`.
/// The rule stands at the head of this file; its thresholds are this project's own trials on simulated
/// buildings.
GrossErrorResult findGrossError(const Learning& learning, const LearnOptions& options,
                                const HypothesesOf& hypothesesOf = {});

}  // namespace ww::estimation
