#include "core/pump_room/running_pumps.h"

#include <algorithm>

namespace ww::pump_room {

RunningPumps runningPumps(const project::Project& project, double speedFraction, const std::vector<Id>& only,
                          quantity::Ratio headFactor) {
    RunningPumps out;
    std::vector<curve::PumpMember> members;
    std::size_t inSeries = 0;
    for (std::size_t i = 0; i < project.pumps().size(); ++i) {
        const project::Pump& pump = project.pumps()[i];
        const bool isMeant =
            only.empty() ? pump.isRunning : std::find(only.begin(), only.end(), pump.id) != only.end();
        if (!isMeant) {
            continue;
        }
        const curve::PumpCurve* curve = project.pumpCurve(pump.id);
        if (curve == nullptr) {
            out.faults.push_back({&kRoomNoCurve, pump.tag, {}});
            continue;
        }
        out.pumps.push_back(i);
        members.push_back(
            {headFactor.si() == 1 ? *curve : curve::withHeads(*curve, headFactor), {speedFraction, 1.0}});
        inSeries += pump.arrangement == project::PumpArrangement::Series ? 1 : 0;
    }
    if (members.empty() && out.faults.empty()) {
        out.faults.push_back({&kRoomNoPump, "", {}});
    }
    if (members.size() > 1 && inSeries > 0 && inSeries < members.size()) {
        out.faults.push_back({&kRoomMixedJoint, project.pumps()[out.pumps.front()].tag, {}});
    }
    if (out.faults.empty()) {
        const bool isSeries = members.size() > 1 && inSeries == members.size();
        out.set = curve::PumpSet(std::move(members),
                                 isSeries ? curve::PumpJoint::Series : curve::PumpJoint::Parallel);
    }
    return out;
}

project::Project withRunning(project::Project project, const std::vector<Id>& only) {
    std::vector<project::Pump> changed;
    for (const project::Pump& pump : project.pumps()) {
        const bool isMeant = std::find(only.begin(), only.end(), pump.id) != only.end();
        if (pump.isRunning != isMeant) {
            changed.push_back(pump);
            changed.back().isRunning = isMeant;
        }
    }
    for (project::Pump& pump : changed) {
        project.put(std::move(pump));
    }
    return project;
}

}  // namespace ww::pump_room
