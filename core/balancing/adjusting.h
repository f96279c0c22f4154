// What the technician does at one valve while adjusting it, as edits: tries, the hold, a reading of the
// reference, a dp across the shut valve; and in which order the valves are taken. Not for the aim (aim.h).
#pragma once

#include <optional>
#include <vector>

#include "core/balancing/advice/advice.h"
#include "core/balancing/walk.h"

namespace ww::balancing {

inline constexpr base::MessageForm kRoundOfOneState{
    "round_of_one_state", "in round {1}, which is open, no valve may be turned; close it first"};
inline constexpr base::MessageForm kNotTriedHere{
    "not_tried_here", "nothing was read at setting {1} yet; type the dp read there, then hold"};
inline constexpr base::MessageForm kShutDpUnreadable{
    "shut_dp_not_positive",
    "{1} across a shut valve is not above zero; check hoses and valves and read again"};

/// One try at a valve.
struct TryEntry {
    quantity::Measured<PressureDifference> dp;
    base::Decimal setting;
    bool isHold = false;    ///< the valve is left there
    bool isRepeat = false;  ///< read again at the same setting on purpose: the mean of the two counts
};

/// Stores a try in the open round; where none is open the edit opens an adjusting round first. Tries stand
/// beside each other: each is true for its own setting. One typed anew at the setting of the newest, with no
/// valve turned between, takes its place, unless it is a repeat. Refused: a setting off the valve's scale, a
/// branch without a valve table, an open round of another kind, whose readings are of one state of the loop.
base::Result<project::Edit> storeTry(const project::Project& project, const Id& branch, TryEntry entry,
                                     WalkContext context);
/// The newest try of the branch becomes the one at which the valve is left. Refused where it was made at
/// another setting than this one, or where there is none.
base::Result<project::Edit> holdHere(const project::Project& project, const Id& branch,
                                     const base::Decimal& setting);
/// Stores a dp at the reference, at the setting that stands there, beside its earlier readings. Opens an
/// adjusting round where none is open.
base::Result<project::Edit> storeReference(const project::Project& project, const Id& branch,
                                           quantity::Measured<PressureDifference> dp, WalkContext context);
/// Stores a dp read across the valve while it was shut for a moment: the head available there, never a flow.
/// The setting that stands does not change. Opens an adjusting round where none is open.
base::Result<project::Edit> storeShutValve(const project::Project& project, const Id& branch,
                                           quantity::Measured<PressureDifference> dp, WalkContext context);

/// The same reading with another dp or another setting, in place of the one given: what it was taken for, the
/// time and the note stay. Refused: a setting off the scale, an accepted round.
base::Result<project::Edit> correctReading(const project::Project& project, const Id& reading,
                                           std::optional<quantity::Measured<PressureDifference>> dp,
                                           std::optional<base::Decimal> setting, WalkContext context);

/// Standing tries of a branch in the open round since another valve was turned, oldest first; a repeated
/// reading follows the one it repeats. None where no round is open.
std::vector<const project::Reading*> triesOf(const project::Project& project, const Id& branch);

/// Whether the open round has standing tries of the branch that triesOf() leaves out, because another valve
/// was turned after them.
bool hasEarlierTries(const project::Project& project, const Id& branch);

/// The branch of the newest standing try in the open round; nothing where there is none.
std::optional<Id> lastTried(const project::Project& project);

/// The newest standing dp read across the valve of the branch while it was shut, of the newest round; null
/// where there is none.
const project::Reading* shutReading(const project::Project& project, const Id& branch);

/// Whether a doubt stands about a reading itself: its size, its sign, the range of its meter, or a mark by
/// hand. An overdue calibration is none.
bool mustBeReadAgain(const Assessment& assessment, const Id& reading);

/// Whether the newest reading of the branch in the open round says that its valve was left where it stands.
bool isHeld(const project::Project& project, const Id& branch);

/// Branches with a valve to set, in the order in which they are taken: that of the advice where there is one
/// with settings, else by of target as read: in every group the member farthest over first, everything below
/// a branch before its own valve (common practice, no source). The references of groups, self-acting valves
/// and branches without design flow are left out. `advice` may be null.
std::vector<std::size_t> workingOrder(const project::Project& project, const Assessment& assessment,
                                      const Advice* advice);
/// The first of the working order after `branch` that is not held yet, from the beginning again at the end; a
/// branch waits until what is below it is held. Nothing where all others are held. `leftAsRead` count as
/// held: they fitted as they had been read.
std::optional<std::size_t> nextToAdjust(const project::Project& project,
                                        const std::vector<std::size_t>& order, std::size_t branch,
                                        const std::vector<Id>& leftAsRead = {});
/// The valves of the working order that the advice turns and nobody holds yet, in turn after `branch`, from
/// the beginning again at the end. A branch waits only for those below it that are to be turned themselves:
/// one that stands as advised holds nothing up. `branch` may be none of the order. `leftAsRead` as above.
std::vector<std::size_t> leftToTurn(const project::Project& project, const std::vector<std::size_t>& order,
                                    std::size_t branch, const Advice& advice,
                                    const std::vector<Id>& leftAsRead = {});

}  // namespace ww::balancing
