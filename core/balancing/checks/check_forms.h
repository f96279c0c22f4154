// What the checks of a round find. Not for single readings (doubt_forms.h) nor for the verdict
// (verdict_forms.h).
#pragma once

#include "core/base/fault.h"

namespace ww::balancing {

inline constexpr base::MessageForm kDesignSumOpen{"design_sum_open",
                                                  "its design flow is {1}, those below it add up to {2}, {3} "
                                                  "% apart; correct the schedule or state the diversity"};
inline constexpr base::MessageForm kDesignDpLow{"design_dp_low",
                                                "fully open, its valve makes only {1} at design flow; it "
                                                "reads well from {2} on and not at all below {3}; "
                                                "choose a smaller valve or another way to measure"};
inline constexpr base::MessageForm kOutsideInstrumentRange{
    "outside_instrument_range",
    "{1} is {2} % of the range {3} of instrument {4}; read between 10 and 95 % of it with another "
    "instrument"};
inline constexpr base::MessageForm kCalibrationUnknown{
    "calibration_unknown", "the instrument was used, but its calibration due date is not given; enter it"};
inline constexpr base::MessageForm kCalibratedLater{
    "calibrated_later",
    "the instrument was calibrated on {1}, after it was used on {2}; keep the certificate that held then"};
inline constexpr base::MessageForm kInstrumentOverdue{
    "instrument_overdue",
    "the instrument was due for calibration on {1}, readings of this round taken with it later: {2}, the "
    "last on {3}; use another one, or give one reason for all (Job, If overdue, why)"};
inline constexpr base::MessageForm kReferenceStale{
    "reference_stale", "it is the reference and was read before the valve of {1} was moved; read it again"};
inline constexpr base::MessageForm kReferenceThrottled{
    "reference_throttled",
    "it is the reference of its group and its valve stands at {1} of {2}; open it fully and match the others "
    "to it"};
inline constexpr base::MessageForm kSumOpen{"sum_open",
                                            "its own reading gives {1}, those below it add up to {2}, {3} "
                                            "times the uncertainty of the difference; read again "
                                            "and look for a branch that is missing"};
inline constexpr base::MessageForm kSpreadWide{
    "spread_wide", "of target spreads over {1} % in the group {2}, more than {3} %; match the group again"};
inline constexpr base::MessageForm kFinalOffDesign{"final_off_design",
                                                   "the final flow is {1} % of design, outside {2} to {3} %; "
                                                   "adjust it, or list the deficiency that keeps it "
                                                   "there, the report cannot be signed before"};
inline constexpr base::MessageForm kPumpSumOpen{"pump_sum_open",
                                                "the pump gives {1} by its curve, the terminals add up to "
                                                "{2}; check gauges, curve and impeller, and look for an "
                                                "open bypass"};
inline constexpr base::MessageForm kPumpMeterSumOpen{"pump_meter_sum_open",
                                                     "the flow read at the pump is {1}, the terminals add up "
                                                     "to {2}; check the meter and look for an open bypass"};
inline constexpr base::MessageForm kPumpEfficiencyOdd{"pump_efficiency_odd",
                                                      "flow, head and power would mean an efficiency of {1} "
                                                      "%; check the power reading, the gauges and the flow"};
inline constexpr base::MessageForm kMotorOverloaded{"motor_overloaded",
                                                    "the motor draws {1}, its plate allows {2}; throttle the "
                                                    "pump's discharge before going on, or the motor may be "
                                                    "damaged"};
inline constexpr base::MessageForm kVoltageOff{
    "voltage_off", "{1} at the motor is {2} % off its plate's {3}; have the supply checked"};
inline constexpr base::MessageForm kConductanceChanged{
    "conductance_changed",
    "its flow changed by {1} % against its neighbours since round {2}, with no valve moved around it; look "
    "for air, a clogged strainer or a moving control valve"};
inline constexpr base::MessageForm kLoopConductanceChanged{
    "loop_conductance_changed",
    "the flow at the same pump head changed by {1} % since round {2}, with no valve moved; look for air, "
    "clogged "
    "strainers or moving control valves"};
inline constexpr base::MessageForm kRoseOnClosing{"rose_on_closing",
                                                  "its flow rose from {1} to {2} when nothing but its own "
                                                  "valve was closed, which cannot be; read both again"};
inline constexpr base::MessageForm kGroupRoseOnClosing{
    "group_rose_on_closing",
    "the flow of the group {1} rose from {2} to {3} when valves in it were only closed, which cannot be; "
    "read it again"};
inline constexpr base::MessageForm kProportionBroken{
    "proportion_broken",
    "it lies beyond all valves that were moved and changed by {1} % against the others there, in round {2} "
    "they kept "
    "step; look for air, a limiter or a moving control valve"};
inline constexpr base::MessageForm kFarFromDesign{
    "far_from_design",
    "with everything open it takes {1} % of design flow; verify its setting, its valve table, air and "
    "strainer before "
    "adjusting"};
inline constexpr base::MessageForm kValveNearlyShut{
    "valve_nearly_shut",
    "its valve stands at {1} of {2}, where its table is least accurate and it may be noisy; consider a "
    "smaller valve or "
    "less excess head"};
inline constexpr base::MessageForm kValveDpHigh{"valve_dp_high",
                                                "{1} across the valve is above {2}, it may be noisy or "
                                                "cavitate; lower the pump's head or throttle elsewhere too"};
inline constexpr base::MessageForm kReadBeforeLastMove{
    "read_before_last_move",
    "it was read before the valve of {1} was moved in this final round; read it again, final readings come "
    "last"};
inline constexpr base::MessageForm kReadBeforeLastSpeed{
    "read_before_last_speed",
    "it was read before the speed of pump {1} was changed in this final round; read it again, final readings "
    "come "
    "last"};
inline constexpr base::MessageForm kTimeBeforeEarlierRound{
    "time_before_earlier_round",
    "its reading is dated {1}, before round {2} ended at {3}; check the clock and correct the time"};
inline constexpr base::MessageForm kFlowsLikeDesign{"flows_like_design",
                                                    "{1} of {2} flows equal their design flow to a tenth of "
                                                    "a percent; check that they were read and not copied"};
inline constexpr base::MessageForm kDigitsRepeated{
    "digits_repeated", "{1} of {2} dps read the same {3}; check that they were read and not copied"};
inline constexpr base::MessageForm kDigitsCopied{
    "digits_copied",
    "{1} of {2} dps are digit for digit those of round {3}; check that they were read and not copied"};
inline constexpr base::MessageForm kLastDigitsOdd{"last_digits_odd",
                                                  "the last digits of {1} dps read with instrument {2} are "
                                                  "too uneven to be chance, {3} of them end in {4}; "
                                                  "check that they were read and not made up"};
inline constexpr base::MessageForm kFlowTyped{
    "flow_typed",
    "a flow of {1} was typed in although its valve has a table; read its dp, or give the reason"};
inline constexpr base::MessageForm kClockWentBack{
    "clock_went_back",
    "{1} readings of this round are dated before the one entered before them, the first is of {2} after {3}; "
    "check the clock and correct the time"};
inline constexpr base::MessageForm kZeroDrifted{"zero_drifted",
                                                "its zero moved by {1} in the course of the day, more than "
                                                "half of the {2} that can just be read with it; "
                                                "take a new zero and read the low dps again"};
inline constexpr base::MessageForm kReadinessOpen{
    "readiness_open",
    "mandatory lines of readiness that are still open: {1}, the first is \"{2}\"; see to them or give the "
    "reason, the report cannot be signed before"};
inline constexpr base::MessageForm kCommentsOpen{
    "comments_open",
    "comments that are not resolved: {1}, the first is \"{2}\"; answer and resolve them, the report cannot "
    "be signed before"};
inline constexpr base::MessageForm kWitnessSameReader{
    "witness_same_reader", "{1} read it again who had read it before; have somebody else read the sample"};
inline constexpr base::MessageForm kWitnessSameInstrument{
    "witness_same_instrument",
    "it was read again with the same instrument {1}; use another one, or take its zero anew and give the "
    "reason"};
inline constexpr base::MessageForm kWitnessDeviates{
    "witness_deviates",
    "read again it takes {1}, {2} % of the {3} reported; find out why, a sample of which more than 10 % "
    "deviates calls for reading all again"};
inline constexpr base::MessageForm kUnitsMixed{
    "units_mixed",
    "{1} was read in {2}, most readings of instrument {3} in this round are in {4}; check the unit"};
inline constexpr base::MessageForm kFluidUnusable{
    "fluid_unusable",
    "the fluid of the job cannot be used, so all flows are computed for water at 20 C; correct kind, "
    "concentration and "
    "temperature"};
inline constexpr base::MessageForm kGlycolWithoutConcentration{
    "glycol_without_concentration",
    "the fluid is {1w} but its concentration is 0 %, so flows are computed as for water; enter the "
    "concentration"};
inline constexpr base::MessageForm kSelfActingInGroup{
    "self_acting_in_group",
    "it keeps its flow by itself and is left out of the proportion of the group {1}; verify its dp range "
    "instead"};

inline constexpr base::MessageForm kIndexRival{"index_rival",
                                               "its valve is fully open and it takes {1} % of design, less "
                                               "than {2} on the index circuit with {3} %; match "
                                               "groups and risers, read both again, or give the reason"};
inline constexpr base::MessageForm kIndexRivalUndecided{
    "index_rival_undecided",
    "its valve is fully open and it takes {1} % of design, {2} on the index circuit {3} %: nearer than these "
    "readings tell ({4} %); read both again with a finer meter, or give the reason"};

}  // namespace ww::balancing
