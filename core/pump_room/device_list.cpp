#include "core/pump_room/device_list.h"

#include <algorithm>

#include "core/balancing/straight_pipe.h"
#include "core/quantity/measured.h"

namespace ww::pump_room {

namespace {

using project::BalancingPolicy;
using project::Branch;
using project::BranchKind;
using project::Project;

std::span<const std::size_t> siblings(const Project& project, std::size_t branch) {
    const project::BranchTree& tree = project.tree();
    const std::size_t parent = tree.parent(branch);
    return parent == project::BranchTree::kNone ? tree.roots() : tree.children(parent);
}

/// Whether every terminal at and below a branch keeps its flow by itself.
bool isAllSelfActing(const Project& project, std::size_t branch) {
    const auto children = project.tree().children(branch);
    if (children.empty()) {
        return isSelfActing(project.branches()[branch]);
    }
    return std::all_of(children.begin(), children.end(),
                       [&](std::size_t child) { return isAllSelfActing(project, child); });
}

std::string diameters(const base::Decimal& typed) {
    return typed.text();
}
std::string diameters(quantity::Ratio need) {
    return quantity::concise(need.si(), 3);
}

void checkStraightPipe(const Branch& branch, DeviceRow& row) {
    const balancing::StraightPipe pipe = balancing::straightPipe(branch);
    if (!pipe.isRecorded) {
        row.missing.push_back({&kDeviceStraightUnknown,
                               branch.tag,
                               {diameters(pipe.upstreamNeed), diameters(pipe.downstreamNeed)}});
    } else if (pipe.isShort) {
        row.missing.push_back({&kDeviceStraightShort,
                               branch.tag,
                               {diameters(*branch.upstreamDiameters), diameters(*branch.downstreamDiameters),
                                diameters(pipe.upstreamNeed), diameters(pipe.downstreamNeed),
                                quantity::concise(100 * pipe.addedUncertainty.si(), 2)}});
    }
}

void checkDevice(const Project& project, const Branch& branch, DeviceRow& row) {
    if (isSelfActing(branch)) {
        const project::ValveModel* valve = project.valves().find(*branch.valve);
        if (valve == nullptr || !valve->minimumDp) {
            row.missing.push_back({&kDeviceRangeMissing, branch.tag, {}});
        }
    } else if (project.characteristicOf(branch) == nullptr) {
        row.missing.push_back({&kDeviceNoTable, branch.tag, {}});
    }
    if (branch.side == project::Side::Unknown) {
        row.missing.push_back({&kDeviceNoSide, branch.tag, {}});
    }
    if (!isSelfActing(branch)) {
        checkStraightPipe(branch, row);
    }
}

DeviceRow rowOf(const Project& project, std::size_t index) {
    const Branch& branch = project.branches()[index];
    const std::size_t others = siblings(project, index).size() - 1;
    DeviceRow row;
    row.branch = index;
    row.policy = policyOf(project, index);
    row.hasDevice = branch.kind != BranchKind::None && branch.valve.has_value();
    const bool isLeftOut = row.policy.policy == BalancingPolicy::NotBalanced;
    row.needsDevice = others > 0 && !isLeftOut && (row.hasDevice || !isAllSelfActing(project, index));
    if (isLeftOut && row.policy.reason.empty()) {
        row.missing.push_back({&kDevicePolicyReason, branch.tag, {}});
    }
    if (row.needsDevice && !row.hasDevice) {
        row.missing.push_back({&kDeviceMissing, branch.tag, {std::to_string(others)}});
    }
    if (project.tree().isTerminal(index) && !branch.designFlow) {
        row.missing.push_back({&kDeviceNoFlow, branch.tag, {}});
    }
    if (row.hasDevice) {
        checkDevice(project, branch, row);
    }
    return row;
}

}  // namespace

BranchPolicy policyOf(const Project& project, std::size_t index) {
    const Branch& branch = project.branches()[index];
    BranchPolicy out;
    out.reason = branch.policyReason;
    out.isStated = branch.policy != BalancingPolicy::Unstated;
    if (out.isStated) {
        out.policy = branch.policy;
        return out;
    }
    switch (branch.kind) {
        case BranchKind::Manual:
        case BranchKind::Orifice:
            out.policy = BalancingPolicy::Proportional;
            break;
        case BranchKind::Limiter:
            out.policy = BalancingPolicy::VerifyLimiter;
            break;
        case BranchKind::Picv:
            out.policy = BalancingPolicy::VerifyPressureIndependent;
            break;
        case BranchKind::None:
            break;
    }
    return out;
}

std::vector<DeviceRow> deviceList(const Project& project) {
    std::vector<DeviceRow> rows;
    for (const std::size_t index : project.tree().walkingOrder()) {
        if (siblings(project, index).size() > 1 || project.tree().isTerminal(index)) {
            rows.push_back(rowOf(project, index));
        }
    }
    for (std::size_t i = 0; i < project.pumps().size(); ++i) {
        DeviceRow row;
        row.pump = i;
        row.needsDevice = true;
        row.hasDevice = !project.pumps()[i].throttleTag.empty();
        if (!row.hasDevice) {
            row.missing.push_back({&kDevicePumpThrottle, project.pumps()[i].tag, {}});
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

}  // namespace ww::pump_room
