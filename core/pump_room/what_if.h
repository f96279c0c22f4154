// What a zone that is added, removed or changed does to the balance: computed on a copy of the job. Nothing
// is stored; whoever wants to keep it carries out the edit as a new revision.
#pragma once

#include <optional>
#include <vector>

#include "core/balancing/prediction.h"
#include "core/pump_room/pump_decision.h"
#include "core/pump_room/zone_change.h"

namespace ww::pump_room {

using quantity::PressureDifference;
using quantity::Setting;

// What is tried. Subject: the tag.
inline constexpr base::MessageForm kZoneAdded{"zone_added", "added below {1}, {2} at design"};
inline constexpr base::MessageForm kZoneAddedAtPump{"zone_added_at_pump", "added at the pump, {1} at design"};
inline constexpr base::MessageForm kZoneRemoved{"zone_removed", "taken away with all below it"};
inline constexpr base::MessageForm kZoneFlowChanged{"zone_flow_changed", "{2} at design instead of {1}"};

inline constexpr base::MessageForm kZoneStale{
    "zone_stale",
    "the balance of round {1} and any report signed on it no longer hold once this change is made; balance "
    "again and sign a new report"};
inline constexpr base::MessageForm kZoneIndexMoves{
    "zone_index_moves", "the index circuit moves from {1} to {2}; open every valve on the new path"};
inline constexpr base::MessageForm kZonePumpShort{"zone_pump_short",
                                                  "at the new design flow the pump makes {1} at full speed "
                                                  "and {2} are needed; a larger impeller or pump "
                                                  "is needed, ask its maker"};
inline constexpr base::MessageForm kZoneMotorShort{
    "zone_motor_short",
    "the pump would take {1} and the motor may give {2}; a larger motor is needed, ask a licensed "
    "electrician"};
inline constexpr base::MessageForm kZoneMotorUnknown{
    "zone_motor_unknown",
    "the motor's power or the pump's efficiency is not entered, so the motor is not checked; enter them"};
inline constexpr base::MessageForm kZoneShort{
    "zone_short",
    "before rebalancing this terminal would take {1} % of design flow; tell its users until it is balanced"};

/// One branch before rebalancing and after.
struct ZoneBranch {
    std::size_t branch = 0;  ///< index into branches() of WhatIf::project
    VolumeFlow flowBefore;   ///< settings as they are, new circuits fully open
    std::optional<Ratio> ofTargetBefore;
    std::optional<Ratio> ofDesignBefore;
    std::optional<Setting> present;
    std::optional<Setting> setting;  ///< of the new proportional balance; nothing without a valve to set
    bool isFullyOpen = false;
    std::optional<PressureDifference> dp;  ///< across the valve at the new design flow
};

struct WhatIf {
    std::vector<base::Fault> changes;  ///< what is tried, in order; subject: a tag
    bool isFromLearned = false;        ///< what stays has its learned resistances, else the design's
    project::Project project;          ///< the changed copy
    project::Edit edit;                ///< what makes the job the same; empty where a fault prevents it
    std::vector<ZoneBranch> branches;  ///< in the order of project.branches()
    std::optional<balancing::Prediction> before;  ///< before rebalancing
    std::vector<std::size_t> indexPath;           ///< new, indices into project.branches()
    std::vector<Id> formerIndexPath;
    balancing::CountedCurve curve;  ///< of the job before, that the pump's numbers count
    std::optional<Head> requiredHead;
    std::optional<Head> headAvailable;
    std::optional<Ratio> speedFraction;  ///< of full speed that gives the new design flow
    std::optional<Power> shaft;          ///< there
    bool canPump = false;                ///< the pump makes the head at full speed or below
    std::optional<bool> canMotor;        ///< shaft power within plate times service factor
    std::vector<base::Fault> findings;   ///< what to know; subject: a tag
    std::vector<base::Fault> faults;     ///< what prevents an answer
};

/// What is tried, a sentence a change; flows in the units they were entered in.
std::vector<base::Fault> changeSentences(const project::Project& project,
                                         const std::vector<ZoneChange>& changes);

/// Applies the changes in their order to a copy and computes it, with the learned resistances where there are
/// any.
WhatIf whatIf(const project::Project& project, const std::vector<ZoneChange>& changes,
              const balancing::Resistances& learned = {});

}  // namespace ww::pump_room
