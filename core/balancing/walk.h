// What the technician does while walking a round, as edits: open a round, store a reading, correct it, close.
// Not for carrying them out (workbook/).
#pragma once

#include <optional>
#include <string>

#include "core/balancing/assessment.h"
#include "core/project/edit.h"

namespace ww::balancing {

/// Who and what takes a reading, and where new ids and the time come from.
struct WalkContext {
    std::optional<Id> instrument;
    std::optional<Id> person;
    base::IdSource& ids;
    base::Instant now;
};

/// Opens the next round. Refused while another round is open. `readiness`: for a survey that begins while
/// mandatory lines of readiness are open, "name: reason" of the supervisor who says so.
base::Result<project::Edit> openRound(const project::Project& project, project::RoundKind kind,
                                      WalkContext context, std::string readiness = {});

/// Stores a dp at the branch in the round, with the setting that stands (or `setting`). An earlier standing
/// reading of that branch in the round is superseded by it. Never refuses a suspicious value: assess() marks
/// it. Refused: branch without valve table, a setting outside the valve's scale, an accepted round.
base::Result<project::Edit> storeDp(const project::Project& project, const Id& round, const Id& branch,
                                    quantity::Measured<PressureDifference> dp,
                                    std::optional<base::Decimal> setting, WalkContext context);
/// Like storeDp, but kept beside the earlier reading: the mean counts.
base::Result<project::Edit> storeRepeat(const project::Project& project, const Id& round, const Id& branch,
                                        quantity::Measured<PressureDifference> dp, WalkContext context);
/// Changes the setting that goes with the branch in this round (before or after its dp).
base::Result<project::Edit> storeSetting(const project::Project& project, const Id& round, const Id& branch,
                                         base::Decimal setting, WalkContext context);
/// Whether a dp gives no flow at the branch, so that its flow is read otherwise: it has no usable valve table
/// and does not keep its flow by itself.
bool isReadByFlow(const project::Project& project, const project::Branch& branch);
/// Stores a flow that was measured otherwise than by the valve's dp, for example by ultrasound. The
/// instrument of the context is noted where it measures no pressure; a dp meter did not read a flow. A
/// branch with a valve table takes one too; assess() then asks why. Refused: a flow below zero, an accepted
/// round, a new reading in a closed one.
base::Result<project::Edit> storeFlow(const project::Project& project, const Id& round, const Id& branch,
                                      quantity::Measured<VolumeFlow> flow, WalkContext context);
/// The valve cannot be read now; closing the round will ask for the reason once.
base::Result<project::Edit> storeCannotBeRead(const project::Project& project, const Id& round,
                                              const Id& branch, WalkContext context);
/// What an open adjusting round still asks for and nobody read or set in it, in walking order; of other
/// rounds nothing.
std::vector<Id> notTurned(const project::Project& project, const Id& round);
/// Gives all these the mark that they were not read, with the reason that they were not turned in this round.
/// Empty where there are none.
project::Edit storeNotTurned(const project::Project& project, const Id& round, WalkContext context);
/// Gives the reason why a doubtful or unread value stands; an empty reason takes it back.
base::Result<project::Edit> giveReason(const project::Project& project, const Id& reading,
                                       std::string reason);
base::Result<project::Edit> markDoubtful(const project::Project& project, const Id& reading, bool isDoubtful);
base::Result<project::Edit> setNote(const project::Project& project, const Id& reading, std::string note);

/// A cure that one key takes: the same digits with the point moved, in another unit, or with the other sign.
struct OfferedFix {
    quantity::Measured<PressureDifference> dp;
    base::Fault why;  ///< for example: with the point moved it would be 17.1 kPa
};
/// What Ctrl+U would do for this reading; nothing where nothing fits.
std::optional<OfferedFix> offeredFix(const project::Project& project, const Assessment& assessment,
                                     const Id& reading);

/// Closes the round. Refused while openItems() is not empty.
base::Result<project::Edit> closeRound(const project::Project& project, const Id& round, WalkContext context);

}  // namespace ww::balancing
