// A zone added to a job, taken away or given another flow, as a changed copy of the job. Not for what that
// does to the balance (what_if.h).
#pragma once

#include <variant>
#include <vector>

#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::pump_room {

using base::Id;
using quantity::VolumeFlow;

/// A branch that is added, with what hangs below it given as further additions. Its id is new.
struct AddBranch {
    project::Branch branch;
};
/// A branch that is taken away, with all below it.
struct RemoveBranch {
    Id branch;
};
/// Another design flow of a branch.
struct ChangeFlow {
    Id branch;
    quantity::Measured<VolumeFlow> flow;
};
using ZoneChange = std::variant<AddBranch, RemoveBranch, ChangeFlow>;

inline constexpr base::MessageForm kZoneUnknown{
    "zone_unknown", "a branch to be changed is not in the job; choose one of its branches"};
inline constexpr base::MessageForm kZoneExists{
    "zone_exists", "there is a branch with this tag already; give the new one another tag"};
inline constexpr base::MessageForm kZoneNothing{"zone_nothing",
                                                "no change is given; add, remove or change a branch"};
inline constexpr base::MessageForm kZoneFlow{
    "zone_flow", "the new design flow must be above 0; to take the circuit away, remove it"};
inline constexpr base::MessageForm kZoneHasReadings{
    "zone_has_readings",
    "this branch has readings, which stay for the record, so it is not taken out of this job; make a new "
    "workbook for the changed building"};
inline constexpr base::MessageForm kZoneLossesMoved{
    "zone_losses_moved",
    "losses of {1} branch(es) are restated at their new design flows by the square law, since they are the "
    "same "
    "pipes; keep the designer's figures with the former revision"};

/// A run of a branch that was taken away and now belongs to the next take-off on the same pipe.
struct MergedRun {
    Id from;
    Id to;
};

struct ChangedJob {
    project::Project project;  ///< the changed copy
    project::Edit edit;        ///< what makes the job the same; empty where it cannot
    std::vector<MergedRun> mergedRuns;
    std::vector<base::Fault> notes;   ///< subject: a tag
    std::vector<base::Fault> faults;  ///< what prevents the change; subject: a tag
};

/// The changes in their order. Pipes and coils that stay keep their resistance: a loss that is stated at a
/// design flow which changes is restated at the new one, by the square law; the run to a take-off that is
/// taken away becomes part of the next one's. An added branch's run is new pipe; the runs of others stay.
ChangedJob changed(const project::Project& project, const std::vector<ZoneChange>& changes);

/// The design flow of a branch that feeds others, before and as it follows what these come to need.
struct FollowingFlow {
    ChangeFlow change;
    quantity::Measured<VolumeFlow> before;
};

/// The branches above what the changes concern that have a design flow of their own, nearest the pump first:
/// each would change by as much as what it feeds. Empty where none has one, the changes name it themselves,
/// or they cannot be carried out.
std::vector<FollowingFlow> followingFlows(const project::Project& project,
                                          const std::vector<ZoneChange>& changes);

}  // namespace ww::pump_room
