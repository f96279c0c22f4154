// Judges one round of readings. Pure: same project, same result; no clock, no file, any thread.
#pragma once

#include "core/balancing/assessment.h"
#include "core/balancing/round_memory.h"

namespace ww::balancing {

// The verdict of a round.
//
// Accepted: every terminal is read; every matchable terminal and every group that is matched as a whole has
// its share within the job's matching band; self-acting valves work within their range; every valve on the
// index circuit stands fully open, and every group has a member whose valve does; in a final round every
// terminal is within the job's tolerance of design flow; no check of the readings found an error. Errors of
// the design (sums that do not close, a valve too large) stay findings: a round that was read well is not
// refused for them.
//
// NotAccepted: one of these fails for certain. Undecidable: none does, but a value lies nearer to its limit
// than it can be read, a dp is under the readable minimum, a terminal could not be read and the reason is
// given, or a doubtful reading stands without a reason.
//
// Shares are judged as indicated: of target plus and minus one standard uncertainty of reading (instrument,
// digits, repeats). The error of a valve's table and of the position of its handle is the same each time the
// valve is read, so it moves no share from one round to the next and is left out here (common practice, no
// source); BranchResult::flowUncertainty has all parts.
//
// Reference of a group: the matchable member with the lowest of design; a tie goes to the farther one. Once a
// group is matched its members differ only by the noise of reading; so among the members within the matching
// band of the lowest, one whose valve stands fully open is the reference. Index circuit: the references from
// the top group down.
//
// A closed round is judged by the design and the limits of its closing (project::asJudged): what is changed
// later is for the rounds after it.
//
// States: a branch outside the band is at its stop where it is short and fully open, or over and shut; it has
// drifted where it was within the band in the round before and its setting has not changed since. A branch
// whose share cannot be known, because a flow is missing, is NotRead as well.

struct AssessOptions {
    /// Gaps are filled with the newest earlier reading (isFromEarlierRound). What is counted (readCount,
    /// onShareCount) is read in the round itself all the same.
    bool fillGaps = false;
    /// Leaves out the checks that compare rounds or look at the whole record; the grid needs only the
    /// numbers.
    bool numbersOnly = false;
    /// Keeps numbers from one call to the next; null: all are computed anew. Not owned.
    RoundMemory* memory = nullptr;
    /// Judges a closed round by the design and the limits of today: for what is decided from now on.
    bool byDesignOfToday = false;
};

/// Shares, groups, index circuit, findings and verdict of a round. `round` must exist.
Assessment assess(const project::Project& project, const Id& round, AssessOptions options = {});

/// A round as people at work see it: while it is open its gaps are filled, so that the terminals read so far
/// have shares; closed it stands by itself. The report and `check` show every round by itself. `round` must
/// exist; `fillGaps` of the options is not asked.
Assessment assessAsShown(const project::Project& project, const Id& round, AssessOptions options = {});

/// The last round that is no witness round, or an empty picture (design values only) where there is none.
Assessment assessLast(const project::Project& project, AssessOptions options = {});

}  // namespace ww::balancing
