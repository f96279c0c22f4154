// The sentences, headings and labels of the pump's sections, in English. Not for findings (energy/,
// pump_room/).
#pragma once

#include "core/base/fault.h"

namespace ww::report::detail {

using base::MessageForm;

// Titles of sections, tables and figures.
inline constexpr MessageForm kTestTitle{"report_test_title", "Pump test, {1}"};
inline constexpr MessageForm kDecisionTitle{"report_decision_title", "Excess head and what to do about it"};
inline constexpr MessageForm kCodeTitle{"report_code_title", "Energy code: balancing"};
inline constexpr MessageForm kReadAndSetTitle{"report_read_and_set_title",
                                              "Read-and-set against proportional"};
inline constexpr MessageForm kPressureTitle{"report_pressure_title", "Pressure along the circuit of {1}"};
inline constexpr MessageForm kDeviceTitle{"report_device_title", "Balancing devices and straight pipe"};
inline constexpr MessageForm kSetPointTitle{"report_set_point_title", "Dp set-point of the drive"};
inline constexpr MessageForm kZoneTitle{"report_zone_title", "What the change does"};
inline constexpr MessageForm kZoneTable{
    "report_zone_table", "Each terminal and each valve on the way before rebalancing, and its new setting"};
inline constexpr MessageForm kStudyOnDesign{
    "report_study_on_design",
    "No round was read yet: settings are those entered, resistances those of the design."};
inline constexpr MessageForm kStudyOnRound{
    "report_study_on_round",
    "Settings are those of round {1}; resistances are learned from the readings where there are enough, else "
    "taken from the design."};
inline constexpr MessageForm kStudyCaution{
    "report_study_caution",
    "A forecast, not a reading: nothing was built or turned. Pipe sizes, expansion, relief and the "
    "electrical "
    "supply of a changed loop are for licensed engineers and local codes to decide."};
inline constexpr MessageForm kProfileOfRound{
    "report_profile_of_round",
    "Computed, not read: settings and pump as in round {1}, losses by the learned loop where the readings "
    "taught one, else by the design."};
inline constexpr MessageForm kProfileOfDesign{
    "report_profile_of_design",
    "Computed, not read: no round was read yet, settings and losses are those entered."};
inline constexpr MessageForm kTestHeadTable{"report_test_head_table", "Head and its parts"};
inline constexpr MessageForm kTestFlowTable{"report_test_flow_table", "Flow by every way, and duty"};
inline constexpr MessageForm kTestMotorTable{"report_test_motor_table",
                                             "Shaft power by every method the readings allow"};
inline constexpr MessageForm kTestElectricTable{"report_test_electric_table", "Phases, load and suction"};
inline constexpr MessageForm kRequiredTable{"report_required_table",
                                            "Head that the index circuit needs at design flow"};
inline constexpr MessageForm kOptionsTable{"report_options_table",
                                           "Options at design flow for the need of the index circuit, {1w}"};
inline constexpr MessageForm kConfirmedTable{"report_confirmed_table",
                                             "The same options, each confirmed by a solve of the whole loop"};
inline constexpr MessageForm kCodeTable{"report_code_table", "Test by each form of the clause"};
inline constexpr MessageForm kReadAndSetTable{"report_read_and_set_table",
                                              "Dp left across each valve at design flow"};
inline constexpr MessageForm kReadAndSetFigure{"report_read_and_set_figure",
                                               "Dp left by read-and-set and by a proportional balance"};
inline constexpr MessageForm kPressureTable{"report_pressure_table",
                                            "Gauge pressure behind each element, in the direction of flow"};
inline constexpr MessageForm kOverFillTable{
    "report_over_fill_table",
    "Pressure behind each element against the fill pressure, in the direction of flow"};
inline constexpr MessageForm kPressureFigure{"report_pressure_figure",
                                             "Gauge pressure round the circuit, pump on and off"};
inline constexpr MessageForm kOverFillFigure{"report_over_fill_figure",
                                             "Pressure round the circuit against the fill pressure, pump on"};
inline constexpr MessageForm kDeviceTable{"report_device_table", "Circuits in walking order"};
inline constexpr MessageForm kDeviceMissingTable{"report_device_missing_table", "What is missing"};
inline constexpr MessageForm kLawTable{"report_law_table", "Set-point over flow, sensor {1}"};

// Labels of facts.
inline constexpr MessageForm kZeroLabel{"report_zero_label", "Gauge zero"};
inline constexpr MessageForm kFoundImpellerLabel{"report_found_impeller_label", "Impeller"};
inline constexpr MessageForm kShutoffLabel{"report_shutoff_label", "Shutoff test"};
inline constexpr MessageForm kPresentDutyLabel{"report_present_duty_label", "Duty"};
inline constexpr MessageForm kFullSpeedLabel{"report_full_speed_label", "At full speed"};
inline constexpr MessageForm kExcessLabel{"report_excess_label", "Excess head"};
inline constexpr MessageForm kExcessAsReadLabel{"report_excess_as_read_label", "Excess as read"};
inline constexpr MessageForm kCodeLabel{"report_code_label", "Code"};
inline constexpr MessageForm kExceptionLabel{"report_exception_label", "Exception"};
inline constexpr MessageForm kDecisionLabel{"report_decision_label", "Trim or slow"};
inline constexpr MessageForm kProofLabel{"report_proof_label", "Least throttling"};
inline constexpr MessageForm kWastedLabel{"report_wasted_label", "Wasted"};
inline constexpr MessageForm kYearLabel{"report_year_label", "A year"};
inline constexpr MessageForm kUnitRunningLabel{"report_unit_running_label", "Pump on"};
inline constexpr MessageForm kUnitAtRestLabel{"report_unit_at_rest_label", "Pump off"};
inline constexpr MessageForm kLowestLabel{"report_lowest_label", "Lowest"};
inline constexpr MessageForm kMissingLabel{"report_missing_label", "Missing"};
inline constexpr MessageForm kSensorLabel{"report_sensor_label", "Sensor"};
inline constexpr MessageForm kFoundByLabel{"report_found_by_label", "Found by"};
inline constexpr MessageForm kZeroCheckLabel{"report_zero_check_label", "Zero check"};
inline constexpr MessageForm kHeldLabel{"report_held_label", "Set-point"};
inline constexpr MessageForm kResetLabel{"report_reset_label", "Reset"};
inline constexpr MessageForm kIndexThereLabel{"report_index_there_label", "Index circuit"};

inline constexpr MessageForm kPumpCanLabel{"report_pump_can_label", "Pump"};
inline constexpr MessageForm kMotorCanLabel{"report_motor_can_label", "Motor"};
inline constexpr MessageForm kZoneBasisLabel{"report_zone_basis_label", "Computed from"};
inline constexpr MessageForm kNewIndexLabel{"report_new_index_label", "Index circuit"};
inline constexpr MessageForm kKeepLabel{"report_keep_label", "Keeping it"};

// Values of facts and statements.
inline constexpr MessageForm kZeroFound{"report_zero_found", "gauges differ by {1} with the pump off"};
inline constexpr MessageForm kZeroNotRead{
    "report_zero_not_read", "not read; stop the pump, read both gauges and enter them as pumps off"};
inline constexpr MessageForm kImpellerFound{"report_impeller_found",
                                            "{1} by the head at shutoff; the record says {2w}"};
inline constexpr MessageForm kShutoffAllowed{"report_shutoff_allowed", "may be made with the cautions below"};
inline constexpr MessageForm kShutoffForbidden{"report_shutoff_forbidden",
                                               "must not be made; the cautions say why"};
inline constexpr MessageForm kShutoffWithConsent{
    "report_shutoff_with_consent", "may be made only once the consent named in the cautions is given"};
inline constexpr MessageForm kTestOrder{
    "report_test_order",
    "Total head = pressure + gauge zero + elevation + velocity head, in the flowing fluid. Flow that counts: "
    "meter, else sum of the terminals, else curve."};
inline constexpr MessageForm kWaysApart{
    "report_ways_apart",
    "Difference / uncertainty: how far two ways to the flow differ, as a multiple of their uncertainty "
    "together; above 2 one of them is wrong."};
inline constexpr MessageForm kPresentDuty{
    "report_present_duty",
    "{1} at {2} in round {3}, {4} % of full speed; shaft power there {5w}, efficiency {6w}"};
inline constexpr MessageForm kPresentDutyAssumed{"report_present_duty_assumed",
                                                 "{1} at {2} in round {3}; no speed was read, full speed is "
                                                 "taken: read it on the drive; shaft power there "
                                                 "{5w}, efficiency {6w}"};
inline constexpr MessageForm kPresentDutyCarried{"report_present_duty_carried",
                                                 "{1} at {2} in round {3}; no speed was read, the {4} % of "
                                                 "full speed of round {7} are taken: read it on the "
                                                 "drive; shaft power there {5w}, efficiency {6w}"};
inline constexpr MessageForm kFullSpeed{"report_full_speed", "{1} at the design flow of {2}, {3w}"};
inline constexpr MessageForm kFullSpeedGauges{
    "report_full_speed_gauges", "{1} at the design flow of {2}, {3w}; the curve as published gives {4} {5w}"};
inline constexpr MessageForm kZoneFromLearned{
    "report_zone_from_learned",
    "the learned loop for all that stays, the losses entered here for what is new"};
inline constexpr MessageForm kZoneFromDesign{
    "report_zone_from_design", "the design losses: no learned loop that fits the readings was there"};
inline constexpr MessageForm kExcessDecided{"report_excess_decided",
                                            "{1} {2w}, {3w}: the pump decision uses this one"};
inline constexpr MessageForm kExcessFound{"report_excess_found", "{1} {2w}, {3w}, for comparison"};
inline constexpr MessageForm kExcessResult{"report_excess_result",
                                           "{1} {2w}, {3w}: the pump decision uses this one (section {4})"};
inline constexpr MessageForm kExcessSlowed{
    "report_excess_slowed",
    "{1} {2w}, {3w}: the pump decision uses this one, speed {5} % of full speed takes it away (section {4})"};
inline constexpr MessageForm kOrderLabel{"report_order_label", "What to order"};
inline constexpr MessageForm kAsReadLabel{"report_as_read_label", "Valves as read"};
inline constexpr MessageForm kOrderBoth{
    "report_order_both",
    "Speed {1} % of full speed, or an impeller of {2} with a first cut to {3}, as decided"};
inline constexpr MessageForm kOrderSpeed{"report_order_speed", "Speed {1} % of full speed, as decided"};
inline constexpr MessageForm kOrderSpeedByDrive{
    "report_order_speed_by_drive",
    "Speed {1} % of full speed, as decided; the pump has no drive, so by a drive or other sheaves"};
inline constexpr MessageForm kOrderTrim{"report_order_trim",
                                        "An impeller of {1} with a first cut to {2}, as decided"};
inline constexpr MessageForm kOrderRuns{"report_order_runs",
                                        "No change: the pump runs at {1} % of full speed, as decided"};
inline constexpr MessageForm kOrderNothing{
    "report_order_nothing",
    "No change of speed or impeller called for: the pump makes what the index circuit needs, as near as can "
    "be told"};
inline constexpr MessageForm kOrderRpm{"report_order_rpm", "That is {1} rpm where full speed is {2} rpm"};
inline constexpr MessageForm kPowerReached{"report_power_reached",
                                           "{1}: {2} in round {3}, {4} in round {5}: {6} {7w}, {8} %"};
inline constexpr MessageForm kPowerUncertain{
    "report_power_uncertain",
    "The uncertainty of this difference is not known: no accuracy of the power meter is recorded"};
inline constexpr MessageForm kEnergyReached{"report_energy_reached",
                                            "In {1} hours a year at the flow as read: {2} kWh {3w}"};
inline constexpr MessageForm kEnergyCostReached{
    "report_energy_cost_reached", "In {1} hours a year at the flow as read: {2} kWh or {4} {5} {3w}"};
inline constexpr MessageForm kOrderPower{
    "report_order_power", "At design flow the shaft takes {2} slowed instead of {1} throttled: {3} % less"};
inline constexpr MessageForm kNotToOrderBy{
    "report_not_to_order_by",
    "for information: what follows is for the loop with its valves as they were read; order no "
    "speed or impeller by it"};
inline constexpr MessageForm kSpeedAsRead{
    "report_speed_as_read",
    "For information: {1} % of the speed of the last round {6w} brings {2} {3}: it takes away the excess "
    "{4w}; order no speed or impeller by it (section {5})"};
inline constexpr MessageForm kNotKnown{"report_not_known", "not known"};
inline constexpr MessageForm kNoDecision{
    "report_no_decision", "No decision can be made yet; see what is missing below, and enter it."};
inline constexpr MessageForm kHoldsHead{
    "report_holds_head",
    "Energy of the slowed pump: its drive holds {1} at the sensor while the flow goes down; the others ride "
    "their curves."};
inline constexpr MessageForm kCodeTyped{"report_code_typed", "{1}, {2}"};
inline constexpr MessageForm kCodeUntyped{"report_code_untyped",
                                          "edition and clause are not entered; enter them"};
inline constexpr MessageForm kNoneClaimed{"report_none_claimed", "none claimed"};
inline constexpr MessageForm kCodeIsMet{"report_code_is_met", "nothing to do, {1w}"};
inline constexpr MessageForm kCodeIsNotMet{"report_code_is_not_met", "not done yet, {1w}"};
inline constexpr MessageForm kProofGiven{
    "report_proof_given",
    "proved: every valve on the index path {1} fully open, one in every group, and the "
    "pump's discharge valve"};
inline constexpr MessageForm kProofWithoutThrottle{
    "report_proof_without_throttle",
    "proved: every valve on the index path {1} fully open, and one in every group; no discharge valve is on "
    "record"};
inline constexpr MessageForm kProofMissing{"report_proof_missing",
                                           "not proved; points against it, listed below: {1}"};
inline constexpr MessageForm kWasted{"report_wasted",
                                     "read-and-set leaves {1} more across the index valve {2} than its open "
                                     "drop, {3w} at the shaft"};
inline constexpr MessageForm kYearSaved{"report_year_saved",
                                        "{1} kWh and {2w} more than with the pump reduced"};
inline constexpr MessageForm kReadAndSetReading{
    "report_read_and_set_reading",
    "Read-and-set leaves {1} across {2}, a proportional balance with the pump "
    "reduced leaves {3}."};
inline constexpr MessageForm kUnitAir{"report_unit_air",
                                      "{1} at the unit with the valve on the return, {2} on the supply; its "
                                      "water holds {3} and {4} mL/L of air"};
inline constexpr MessageForm kUnitNoAir{"report_unit_no_air",
                                        "{1} at the unit with the valve on the return, {2} on the supply"};
inline constexpr MessageForm kLowestAt{"report_lowest_at", "{1}, behind {2w}"};
inline constexpr MessageForm kFillAndGauge{
    "report_fill_and_gauge",
    "Pressures here rest on the fill pressure entered, {1} at the expansion vessel; {2} is what the suction "
    "gauge showed with the pump off, with its own height and zero"};
inline constexpr MessageForm kUnitOverFill{
    "report_unit_over_fill",
    "against the fill pressure, {1} at the unit with the valve on the return, {2} on the supply"};
inline constexpr MessageForm kLowestOverFill{"report_lowest_over_fill",
                                             "against the fill pressure, {1} behind {2w}"};
inline constexpr MessageForm kPressureOverFill{
    "report_pressure_over_fill",
    "With the pump on the unit of {1} stands at {2} against the fill pressure, which is not known."};
inline constexpr MessageForm kPressureReading{
    "report_pressure_reading", "The unit of {1} stands at {2} with the pump on and at {3} with it off."};
inline constexpr MessageForm kAvailableAtTees{"report_available_at_tees",
                                              "In the figure the upright line at a tee is what is available "
                                              "there, supply less return; the bracket is the dp "
                                              "of the valve."};
inline constexpr MessageForm kIndexValveOpen{"report_index_valve_open",
                                             "The index valve {1} ended fully open and takes {2}."};
inline constexpr MessageForm kIndexValveThrottled{
    "report_index_valve_throttled",
    "The index valve {1} ended at {2} of {3}, not fully open, and takes {4}."};
inline constexpr MessageForm kCircuitValveOpen{"report_circuit_valve_open",
                                               "The valve {1} ended fully open and takes {2}."};
inline constexpr MessageForm kCircuitValveThrottled{"report_circuit_valve_throttled",
                                                    "The valve {1} ended at {2} of {3} and takes {4}."};
inline constexpr MessageForm kCircuitValveUnknown{
    "report_circuit_valve_unknown",
    "The setting of valve {1} is not known, so it counts as fully open; enter it with its reading."};
inline constexpr MessageForm kDevicesInOrder{"report_devices_in_order", "nothing is missing"};
inline constexpr MessageForm kDevicesMissing{"report_devices_missing",
                                             "in all: {1}; at circuits: {2}, at pumps: {3}"};
inline constexpr MessageForm kNoSetPoint{
    "report_no_set_point", "No dp set-point is on record; enter one where a drive follows a dp sensor."};
inline constexpr MessageForm kSensorAt{"report_sensor_at", "{1}, {2w}"};
inline constexpr MessageForm kHeldAt{"report_held_at", "{1w}; limits {2w} to {3w}; flow {4w}, speed {5w}"};
inline constexpr MessageForm kIndexThere{"report_index_there", "{1} % of design flow in the last round"};

inline constexpr MessageForm kPumpCan{"report_pump_can", "makes {1} at full speed where {2} are needed"};
inline constexpr MessageForm kPumpCanAt{
    "report_pump_can_at", "makes {1} at full speed where {2} are needed: enough at {3} % of speed"};
inline constexpr MessageForm kMotorCan{"report_motor_can", "strong enough at full speed"};
inline constexpr MessageForm kMotorCannot{"report_motor_cannot", "too weak at full speed; see below"};
inline constexpr MessageForm kKeepPossible{
    "report_keep_possible", "can be kept as a new revision of the job; the former stays in the history"};
inline constexpr MessageForm kKeepImpossible{"report_keep_impossible",
                                             "cannot be kept in this job; the reason stands below"};

inline constexpr MessageForm kIndexTag{"report_index_tag", "{1}, index"};
inline constexpr MessageForm kOpenSetting{"report_open_setting", "{1} open"};

// Cautions.
inline constexpr MessageForm kTestCaution{
    "report_test_caution",
    "Gauges and motor readings are for qualified people; lock-out, local codes and the plant's rules come "
    "first. Trimming and drives are for the maker or licensed firms."};
inline constexpr MessageForm kCodeCaution{
    "report_code_caution", "This test is no legal advice; the authority having jurisdiction decides."};

// Headings of columns.
inline constexpr MessageForm kPointColumn{"report_point_column", "Point"};
inline constexpr MessageForm kRoundShort{"report_round_short", "Round"};
inline constexpr MessageForm kPressurePart{"report_pressure_part", "Pressure"};
inline constexpr MessageForm kZeroPart{"report_zero_part", "Zero"};
inline constexpr MessageForm kElevationPart{"report_elevation_part", "Elevation"};
inline constexpr MessageForm kVelocityPart{"report_velocity_part", "Velocity"};
inline constexpr MessageForm kTotalPart{"report_total_part", "Total head"};
inline constexpr MessageForm kUncertaintyColumn{"report_uncertainty_column", "±"};
inline constexpr MessageForm kRatedHeadColumn{"report_rated_head_column", "At full speed"};
inline constexpr MessageForm kByCurveColumn{"report_by_curve_column", "Flow by curve"};
inline constexpr MessageForm kByMeterColumn{"report_by_meter_column", "By meter"};
inline constexpr MessageForm kByTerminalsColumn{"report_by_terminals_column", "By terminals"};
inline constexpr MessageForm kClosureColumn{"report_closure_column", "Difference / uncertainty"};
inline constexpr MessageForm kCountsColumn{"report_counts_column", "Counts"};
inline constexpr MessageForm kBestColumn{"report_best_column", "Of best flow"};
inline constexpr MessageForm kEfficiencyColumn{"report_efficiency_column", "Efficiency"};
inline constexpr MessageForm kWireToWaterColumn{"report_wire_to_water_column", "Wire to water"};
inline constexpr MessageForm kInputMethod{"report_input_method", "Input power"};
inline constexpr MessageForm kPowerFactorMethod{"report_power_factor_method", "V, A, PF"};
inline constexpr MessageForm kNoLoadMethod{"report_no_load_method", "No-load A"};
inline constexpr MessageForm kAmpMethod{"report_amp_method", "Amp ratio"};
inline constexpr MessageForm kSlipMethod{"report_slip_method", "Slip"};
inline constexpr MessageForm kChosenColumn{"report_chosen_column", "Chosen"};
inline constexpr MessageForm kPowerSpreadColumn{"report_power_spread_column", "Spread"};
inline constexpr MessageForm kVoltsApartColumn{"report_volts_apart_column", "V imbalance"};
inline constexpr MessageForm kAmpsApartColumn{"report_amps_apart_column", "A imbalance"};
inline constexpr MessageForm kOfPlateColumn{"report_of_plate_column", "A of plate"};
inline constexpr MessageForm kOfServiceColumn{"report_of_service_column", "A of plate × SF"};
inline constexpr MessageForm kVoltsOfPlateColumn{"report_volts_of_plate_column", "V of plate"};
inline constexpr MessageForm kNpshAvailableColumn{"report_npsh_available_column", "NPSH there"};
inline constexpr MessageForm kNpshRequiredColumn{"report_npsh_required_column", "NPSH required"};
inline constexpr MessageForm kNpshMarginColumn{"report_npsh_margin_column", "Margin"};
inline constexpr MessageForm kSourceColumn{"report_source_column", "From"};
inline constexpr MessageForm kPathColumn{"report_path_column", "Index path"};
inline constexpr MessageForm kOptionColumn{"report_option_column", "Option"};
inline constexpr MessageForm kShaftColumn{"report_shaft_column", "Shaft power"};
inline constexpr MessageForm kSpeedRatioColumn{"report_speed_ratio_column", "Speed"};
inline constexpr MessageForm kDiameterColumn{"report_diameter_column", "Impeller"};
inline constexpr MessageForm kFirstCutColumn{"report_first_cut_column", "First cut"};
inline constexpr MessageForm kEnergyColumn{"report_energy_column", "Energy a year"};
inline constexpr MessageForm kCostColumn{"report_cost_column", "Cost a year"};
inline constexpr MessageForm kThrottledColumn{"report_throttled_column", "Left to throttle"};
inline constexpr MessageForm kSolvedFlowColumn{"report_solved_flow_column", "Solved flow"};
inline constexpr MessageForm kSolvedHeadColumn{"report_solved_head_column", "Solved head"};
inline constexpr MessageForm kFlowOffColumn{"report_flow_off_column", "Flow off"};
inline constexpr MessageForm kHeadOffColumn{"report_head_off_column", "Head off"};
inline constexpr MessageForm kWantedHeadColumn{"report_wanted_head_column", "Head by the option"};
inline constexpr MessageForm kFormColumn{"report_form_column", "Form"};
inline constexpr MessageForm kExcessPowerColumn{"report_excess_power_column", "Excess power"};
inline constexpr MessageForm kLimitColumn{"report_limit_column", "Limit"};
inline constexpr MessageForm kDecisionColumn{"report_decision_column", "Decision"};
inline constexpr MessageForm kOpenDpColumn{"report_open_dp_column", "Fully open"};
inline constexpr MessageForm kProportionalColumn{"report_proportional_column", "Proportional"};
inline constexpr MessageForm kReadAndSetColumn{"report_read_and_set_column", "Read-and-set"};
inline constexpr MessageForm kFlowBeforeColumn{"report_flow_before_column", "Flow before rebalancing"};
inline constexpr MessageForm kPresentColumn{"report_present_column", "Setting now"};
inline constexpr MessageForm kNewSettingColumn{"report_new_setting_column", "New setting"};
inline constexpr MessageForm kNewDpColumn{"report_new_dp_column", "Dp there"};
inline constexpr MessageForm kElementColumn{"report_element_column", "Element"};
inline constexpr MessageForm kHeightColumn{"report_height_column", "Height"};
inline constexpr MessageForm kReturnOnColumn{"report_return_on_column", "Valve on return, pump on"};
inline constexpr MessageForm kSupplyOnColumn{"report_supply_on_column", "Valve on supply, pump on"};
inline constexpr MessageForm kAtRestColumn{"report_at_rest_column", "Pump off"};
inline constexpr MessageForm kDeviceColumn{"report_device_column", "Device"};
inline constexpr MessageForm kPolicyColumn{"report_policy_column", "Dealt with as"};
inline constexpr MessageForm kSideColumn{"report_side_column", "Side"};
inline constexpr MessageForm kUpstreamColumn{"report_upstream_column", "Pipe before / needs"};
inline constexpr MessageForm kDownstreamColumn{"report_downstream_column", "Pipe behind / needs"};
inline constexpr MessageForm kAddedColumn{"report_added_column", "Adds to flow ±"};
inline constexpr MessageForm kMissingColumn{"report_missing_column", "Missing"};
inline constexpr MessageForm kOfDesignFlowColumn{"report_of_design_flow_column", "Of design flow"};
inline constexpr MessageForm kComputedColumn{"report_computed_column", "By the law"};
inline constexpr MessageForm kSetColumn{"report_set_column", "Within limits"};

}  // namespace ww::report::detail
