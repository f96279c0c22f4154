// What is said about a single suspicious reading. Not for the checks of a whole round (checks/check_forms.h).
#pragma once

#include "core/base/fault.h"

namespace ww::balancing {

inline constexpr base::MessageForm kMarkedDoubtful{
    "reading_marked_doubtful", "this reading was marked doubtful by hand; read again or give the reason"};
inline constexpr base::MessageForm kNegativeDp{
    "dp_negative",
    "{1} is below zero, the hoses are probably reversed; swap them and read again, or store {2}"};
inline constexpr base::MessageForm kAboveInstrumentRange{
    "dp_above_range",
    "{1} is above the range of instrument {2}, which ends at {3}; read again, with another instrument if "
    "need "
    "be, or give the reason"};
inline constexpr base::MessageForm kUnitSuspected{"unit_suspected",
                                                  "{1} is far from the expected {2}, in {3} it would be {4}; "
                                                  "correct the unit, read again or give the reason"};
inline constexpr base::MessageForm kPointSuspected{
    "point_suspected",
    "{1} is far from the expected {2}, with the point moved it would be {3}; correct it, read again or give "
    "the reason"};
inline constexpr base::MessageForm kImplausible{
    "dp_implausible",
    "{1} is far from {2} read at the same setting in round {3}; read again or give the reason"};
inline constexpr base::MessageForm kImplausibleFirst{
    "dp_implausible_first",
    "{1} is far from {2} that the design flow needs at this setting; read again or give the reason"};
inline constexpr base::MessageForm kUnderReadable{
    "dp_under_readable",
    "{1} is under the readable minimum of {2}, the flow is only known to lie between {3} and {4}; close the "
    "valve {5w} to read, take another instrument or give the reason"};
inline constexpr base::MessageForm kSettingOutside{
    "setting_outside_scale",
    "setting {1} lies outside the valve's table, {2} to {3}, so there is no flow; correct the setting"};
inline constexpr base::MessageForm kNoValveTable{
    "valve_table_missing",
    "a dp was read, but no usable valve table is known; give the valve's table or the flow"};

}  // namespace ww::balancing
