// Which circuits should have a balancing device, and what is missing where: a list to be walked before the
// site is. Not for how a device is set.
#pragma once

#include <vector>

#include "core/base/fault.h"
#include "core/project/project.h"

namespace ww::pump_room {

inline constexpr base::MessageForm kDeviceMissing{
    "device_missing",
    "this circuit shares its flow with others ({1}) and has no balancing device; put one on its return, or "
    "say why it is not balanced"};
inline constexpr base::MessageForm kDeviceNoTable{
    "device_no_table",
    "the balancing device has no table, so its flow cannot be read; enter model, size and table"};
inline constexpr base::MessageForm kDeviceNoFlow{
    "device_no_flow", "the circuit has no design flow; ask the designer and enter it"};
inline constexpr base::MessageForm kDeviceNoSide{
    "device_no_side", "it is not recorded whether the device stands on supply or return; look and enter it"};
inline constexpr base::MessageForm kDeviceStraightShort{
    "device_straight_short",
    "the device has {1} diameters of straight pipe before and {2} behind it and needs {3} and {4}; its flow "
    "is "
    "{5} % less certain, move it or say so in the report"};
inline constexpr base::MessageForm kDeviceStraightUnknown{
    "device_straight_unknown",
    "the straight pipe before and behind the device is not recorded; it needs {1} and {2} diameters, look "
    "and "
    "enter it"};
inline constexpr base::MessageForm kDeviceRangeMissing{
    "device_range_missing",
    "the dp range of this self-acting valve is not entered; enter it, it is what is verified"};
inline constexpr base::MessageForm kDevicePumpThrottle{
    "device_pump_throttle",
    "no discharge valve is recorded for this pump; the test throttled to design flow needs one, enter its "
    "tag"};
inline constexpr base::MessageForm kDevicePolicyReason{
    "device_policy_reason", "this branch is marked as not balanced without a reason; write the reason"};

/// How one branch is dealt with; stated in the record, else by its kind.
struct BranchPolicy {
    project::BalancingPolicy policy = project::BalancingPolicy::Unstated;
    bool isStated = false;
    std::string reason;  ///< as typed
};
/// `branch`: index into Project::branches().
BranchPolicy policyOf(const project::Project& project, std::size_t branch);

struct DeviceRow {
    std::optional<std::size_t> branch;  ///< index into Project::branches(); nothing: a pump
    std::optional<std::size_t> pump;    ///< index into Project::pumps()
    bool needsDevice = false;           ///< others share its flow
    bool hasDevice = false;
    BranchPolicy policy;
    std::vector<base::Fault> missing;  ///< empty: in order; subject: the tag
};

/// Every branch that has siblings or is a terminal in walking order, then the pumps.
std::vector<DeviceRow> deviceList(const project::Project& project);

}  // namespace ww::pump_room
