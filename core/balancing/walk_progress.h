// How far the walk of a round has come, and what keeps the round from being closed.
// Not for closing it (walk.h).
#pragma once

#include <optional>
#include <vector>

#include "core/balancing/assessment.h"

namespace ww::balancing {

/// What keeps a round from being closed, at most one item a branch: what its walk asks for (walkProgress())
/// and is neither read nor has a reason, doubtful readings without one, of several doubts the first. A round
/// that is closed takes no new readings, so of it only terminals are named as unread.
std::vector<Finding> openItems(const project::Project& project, const Id& round);
/// How much of what a round's walk asks for is read: every terminal, and every other branch with a valve,
/// since groups are balanced against each other at their own valves; of a witness round its sample. A branch
/// that came after the round was closed is not asked for.
struct WalkProgress {
    std::size_t read = 0;
    std::size_t all = 0;
    std::vector<Id>
        unread;  ///< without a reading and without the mark that it cannot be read, in walking order
};
WalkProgress walkProgress(const project::Project& project, const project::Round& round);

/// What is lost where a survey or final round is closed as it stands: with terminals that have no flow,
/// neither of their own nor of a valve above them, it has no total, no share and no index circuit. Names
/// them; nothing where there are none, and for other rounds, which are not read as a whole.
std::optional<base::Fault> lostByGaps(const project::Project& project, const Id& round);

}  // namespace ww::balancing
