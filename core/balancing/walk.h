// What the technician does while walking a round, as edits: open a round, store a reading, correct it, close.
// Not for carrying them out (workbook/).
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

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
/// Stores a directly read flow.
base::Result<project::Edit> storeFlow(const project::Project& project, const Id& round, const Id& branch,
                                      quantity::Measured<VolumeFlow> flow, WalkContext context);
/// The valve cannot be read now; closing the round will ask for the reason once.
base::Result<project::Edit> storeCannotBeRead(const project::Project& project, const Id& round,
                                              const Id& branch, WalkContext context);
/// Gives the reason why a doubtful or unread value stands; an empty reason takes it back.
base::Result<project::Edit> giveReason(const project::Project& project, const Id& reading,
                                       std::string reason);
base::Result<project::Edit> markDoubtful(const project::Project& project, const Id& reading, bool isDoubtful);
base::Result<project::Edit> setNote(const project::Project& project, const Id& reading, std::string note);

/// A cure that one key takes: the same digits in another unit, or with the other sign.
struct OfferedFix {
    quantity::Measured<PressureDifference> dp;
    base::Fault why;  ///< for example: in psi it would be 12.4 kPa
};
/// What Ctrl+U would do for this reading; nothing where nothing fits.
std::optional<OfferedFix> offeredFix(const project::Project& project, const Assessment& assessment,
                                     const Id& reading);

/// What keeps a round from being closed: unread terminals (of a witness round: of its sample) without a
/// reason, doubtful readings without one.
std::vector<Finding> openItems(const project::Project& project, const Id& round);
/// How much of what a round's walk asks for is read: every terminal and every other branch with a valve; of a
/// witness round its sample.
struct WalkProgress {
    std::size_t read = 0;
    std::size_t all = 0;
    std::vector<Id>
        unread;  ///< without a reading and without the mark that it cannot be read, in walking order
};
WalkProgress walkProgress(const project::Project& project, const project::Round& round);

/// Closes the round. Refused while openItems() is not empty.
base::Result<project::Edit> closeRound(const project::Project& project, const Id& round, WalkContext context);

/// The setting that stands at a branch in a round: of its readings there, else of the newest earlier round,
/// else the branch's own, else fully open.
std::optional<base::Decimal> standingSetting(const project::Project& project, const Id& round,
                                             const Id& branch);
/// The reading that counts for a branch in a round; null where there is none.
const project::Reading* countingReading(const project::Project& project, const Id& round, const Id& branch);
/// The newest counting reading of an earlier round with a dp; null where there is none.
const project::Reading* earlierReading(const project::Project& project, const Id& round, const Id& branch);

}  // namespace ww::balancing
