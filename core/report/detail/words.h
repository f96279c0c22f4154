// The sentences, headings and labels of the balance report, in English. Not for findings (balancing/) and not
// for how they are drawn (ui/report).
#pragma once

#include "core/base/fault.h"

namespace ww::report::detail {

using base::MessageForm;

/// A text that stands for itself: names, numbers, tags.
inline constexpr MessageForm kPlain{"report_plain", "{1}"};
/// Words of the program.
inline constexpr MessageForm kWord{"report_word", "{1w}"};
inline constexpr MessageForm kWordAndText{"report_word_and_text", "{1w}: {2}"};
inline constexpr MessageForm kOfCount{"report_of_count", "{1} of {2}"};
inline constexpr MessageForm kReasonGiven{"report_reason_given", "Reason given: {1}"};
inline constexpr MessageForm kSpreadTotal{"report_spread_total", "spread {1} %"};

// Titles of sections, tables and figures.
inline constexpr MessageForm kResultTitle{"report_result_title", "Result"};
inline constexpr MessageForm kMethodTitle{"report_method_title", "Method, tolerances and instruments"};
inline constexpr MessageForm kFinalTitle{"report_final_title", "Final round"};
inline constexpr MessageForm kLastRoundTitle{"report_last_round_title", "Last round read"};
inline constexpr MessageForm kSharesTitle{"report_shares_title", "Shares by round"};
inline constexpr MessageForm kPumpTitle{"report_pump_title", "Pump and system"};
inline constexpr MessageForm kIndexTitle{"report_index_title", "Index circuit"};
inline constexpr MessageForm kExceptionsTitle{"report_exceptions_title", "Exceptions"};
inline constexpr MessageForm kReadingsTitle{"report_readings_title", "Every reading as typed"};
inline constexpr MessageForm kInstrumentsTable{"report_instruments_table", "Instruments"};
inline constexpr MessageForm kValvesTable{"report_valves_table", "Balancing valves"};
inline constexpr MessageForm kFinalTable{"report_final_table", "Round {1} ({2w}), {3}"};
inline constexpr MessageForm kRoundsTable{"report_rounds_table", "Rounds"};
inline constexpr MessageForm kSharesTable{"report_shares_table", "Of target by round, in percent"};
inline constexpr MessageForm kDutyTable{"report_duty_table", "Duty of each pump by round"};
inline constexpr MessageForm kIndexTable{"report_index_table", "The index circuit from the pump outward"};
inline constexpr MessageForm kExceptionsTable{"report_exceptions_table", "What a reader should know"};
inline constexpr MessageForm kReadingsTable{"report_readings_table", "Readings at branches"};
inline constexpr MessageForm kPumpReadingsTable{"report_pump_readings_table", "Readings at pumps"};
inline constexpr MessageForm kPumpFigure{"report_pump_figure", "Pump curve and system curves"};
inline constexpr MessageForm kConvergenceFigure{"report_convergence_figure", "Of target by round"};

// Labels of facts.
inline constexpr MessageForm kVerdictLabel{"report_verdict_label", "Verdict"};
inline constexpr MessageForm kAcceptanceLabel{"report_acceptance_label", "Accepted by"};
inline constexpr MessageForm kSharesLabel{"report_shares_label", "Shares"};
inline constexpr MessageForm kSpreadLabel{"report_spread_label", "Spread"};
inline constexpr MessageForm kTotalLabel{"report_total_label", "Total flow"};
inline constexpr MessageForm kIndexLabel{"report_index_label", "Index valve"};
inline constexpr MessageForm kIndexProofLabel{"report_index_proof_label", "Proof"};
inline constexpr MessageForm kPumpLabel{"report_pump_label", "Pump"};
inline constexpr MessageForm kExceptionsLabel{"report_exceptions_label", "Exceptions"};
inline constexpr MessageForm kStandingLabel{"report_standing_label", "Reasons"};
inline constexpr MessageForm kMethodLabel{"report_method_label", "Method"};
inline constexpr MessageForm kFlowLabel{"report_flow_label", "Flow"};
inline constexpr MessageForm kToleranceLabel{"report_tolerance_label", "Tolerances"};
inline constexpr MessageForm kUnitsLabel{"report_units_label", "Units"};
inline constexpr MessageForm kFluidLabel{"report_fluid_label", "Fluid"};
inline constexpr MessageForm kUncertaintyLabel{"report_uncertainty_label", "Uncertainty"};
inline constexpr MessageForm kPeopleLabel{"report_people_label", "People"};
inline constexpr MessageForm kDutyLabel{"report_duty_label", "Duty"};
inline constexpr MessageForm kDesignLabel{"report_design_label", "At design flow"};
inline constexpr MessageForm kSpeedLabel{"report_speed_label", "Speed"};
inline constexpr MessageForm kImpellerLabel{"report_impeller_label", "Or impeller"};
inline constexpr MessageForm kPowerLabel{"report_power_label", "Shaft power"};
inline constexpr MessageForm kInputPowerLabel{"report_input_power_label", "Power from the mains"};
inline constexpr MessageForm kPathLabel{"report_path_label", "Path"};
inline constexpr MessageForm kFullyOpenLabel{"report_fully_open_label", "Fully open"};
inline constexpr MessageForm kReadableLabel{"report_readable_label", "Readable dp"};
inline constexpr MessageForm kNoOtherLabel{"report_no_other_label", "No other"};

// Section 1.
inline constexpr MessageForm kAccepted{"report_accepted", "By the readings: within tolerance"};
inline constexpr MessageForm kAcceptedUnproved{"report_accepted_unproved",
                                               "By the readings: within tolerance; index circuit not proved"};
inline constexpr MessageForm kNotAccepted{"report_not_accepted", "By the readings: not within tolerance"};
inline constexpr MessageForm kUndecidable{
    "report_undecidable", "By the readings: cannot be decided within the measuring uncertainty"};
inline constexpr MessageForm kAcceptanceOpen{"report_acceptance_open",
                                             "Nobody yet: round {1} was not sent to a supervisor"};
inline constexpr MessageForm kAcceptanceSent{"report_acceptance_sent",
                                             "Nobody yet: round {1} waits for the supervisor"};
inline constexpr MessageForm kAcceptanceSentBack{"report_acceptance_sent_back",
                                                 "Nobody: the supervisor sent round {1} back"};
inline constexpr MessageForm kAcceptanceOwn{"report_acceptance_own", "{1}, who also read or sent it: {2}"};
inline constexpr MessageForm kAcceptanceOwnSilent{"report_acceptance_own_silent",
                                                  "{1}, who also read or sent it; no reason given"};
inline constexpr MessageForm kNoRound{"report_no_round", "No round of readings has been walked yet"};
inline constexpr MessageForm kOnShare{"report_on_share",
                                      "{1} of {2} terminals on share (of target within 100 ± {3} %)"};
inline constexpr MessageForm kOnShareUnknown{"report_on_share_unknown",
                                             "Not known: {1} of {2} terminals read in this round"};
inline constexpr MessageForm kSpreadNow{"report_spread_now",
                                        "Largest minus smallest of target in any group: {1} %"};
inline constexpr MessageForm kSpreadFrom{
    "report_spread_from", "Largest minus smallest of target in any group: {1} %, from {2} % in round {3}"};
inline constexpr MessageForm kTotal{"report_total", "{1} {4}, {2} % of the design flow of {3} {4}"};
inline constexpr MessageForm kTotalDoubtful{
    "report_total_doubtful", "{1} {4}, {2} % of the design flow of {3} {4}; {5} doubtful in it"};
inline constexpr MessageForm kTotalUnknown{"report_total_unknown",
                                           "Not known: not every terminal has been read; design {1} {2}"};
inline constexpr MessageForm kIndexPath{"report_index_path", "{1} (section {2})"};
inline constexpr MessageForm kIndexOpen{"report_index_open", "Index valve {1} at {2} of {3}: fully open"};
inline constexpr MessageForm kIndexNotOpen{"report_index_not_open",
                                           "Index valve {1} at {2} of {3}: not fully open"};
inline constexpr MessageForm kIndexWithoutSetting{
    "report_index_without_setting",
    "Index terminal {1} has no setting on record: not shown to be fully open"};
inline constexpr MessageForm kIndexUnknown{"report_index_unknown",
                                           "The index circuit is not known from these readings"};
inline constexpr MessageForm kPumpUnknown{
    "report_pump_unknown", "No duty known: pump curve, pump readings or branch flows are missing"};
inline constexpr MessageForm kPumpUntrusted{
    "report_pump_untrusted",
    "No speed or impeller is proposed: the gauges and the pump's curve contradict each other (section {1})"};
inline constexpr MessageForm kPumpAction{
    "report_pump_action",
    "{1} % of the speed of the last round {6w}, or a trim, brings {2} {3}: it takes away the excess {4w} "
    "(section {5})"};
inline constexpr MessageForm kPumpKeep{
    "report_pump_keep",
    "No change of speed or impeller called for: design flow needs {1} % of the speed of the last round {2w}"};
inline constexpr MessageForm kPumpShort{
    "report_pump_short",
    "Short by {1} of head at design flow {2w}: do not slow or trim the pump. See that the index path is open "
    "and "
    "strainers and filters are clean; a larger impeller or pump is for the engineer to decide (section {3})"};
inline constexpr MessageForm kPumpTooSmall{"report_pump_too_small",
                                           "Short by {4} of head: design flow on this system needs {1} % of "
                                           "the speed of the last round {3w}. See that the index "
                                           "path is open and strainers and filters are clean; a larger "
                                           "impeller or pump is for the engineer to decide "
                                           "(section {2})"};
inline constexpr MessageForm kPumpShortUndecided{
    "report_pump_short_undecided",
    "Whether the pump is short cannot be told; read its gauges and every terminal again with finer meters "
    "(section {1})"};
inline constexpr MessageForm kExceptionCount{"report_exception_count", "{1}, listed in section {2}"};
inline constexpr MessageForm kNoException{"report_no_exception", "None"};
inline constexpr MessageForm kStandingCount{
    "report_standing_count",
    "lines that would hold up a signature and stand with a reason: {1}, listed in section {2}"};
inline constexpr MessageForm kDraft{"report_draft", "Draft until signed: nobody has signed this report."};
inline constexpr MessageForm kSimulated{
    "report_simulated",
    "The building of this report is simulated: a program made up every reading, for practice. Nothing was "
    "measured, and nothing here is true of any real plant."};
inline constexpr MessageForm kDisclaimer{
    "report_disclaimer",
    "This report states what was read with the instruments listed, on the dates shown, and what follows from "
    "it by the "
    "method of section {1}. It says nothing of plant that was not measured."};

// Section 2.
inline constexpr MessageForm kMethodText{"report_method_text",
                                         "Proportional balance: in each group of branches the one with the "
                                         "lowest flow over design flow is the reference "
                                         "and its valve stays fully open; the others are set to the same "
                                         "proportion, group by group, and the pump then "
                                         "brings the total to design"};
inline constexpr MessageForm kShareText{"report_share_text",
                                        "Share: a branch's flow over the sum of the terminals. Target share: "
                                        "the same of the design flows. Of target: share "
                                        "over target share. Of design: flow over design flow. Spread: "
                                        "largest minus smallest of target in a group."};
inline constexpr MessageForm kFlowText{"report_flow_text",
                                       "From the dp across each valve and its table: Q = Kv √(dp / SG), m³/h "
                                       "and bar, or Cv with gpm and psi (IEC "
                                       "60534-2-1); SG = density over 999.0 kg/m³"};
inline constexpr MessageForm kToleranceText{
    "report_tolerance_text", "Flow {1} to {2} % of design; share within ± {3} % of the target share"};
inline constexpr MessageForm kUnitsText{
    "report_units_text", "Flow {1}, head {2}; readings keep the unit in which they were typed"};
inline constexpr MessageForm kFluidWater{"report_fluid_water", "Water at {1}, density {2} kg/m³"};
inline constexpr MessageForm kFluidMixture{"report_fluid_mixture",
                                           "{1w} {2} by mass at {3}, density {4} kg/m³"};
inline constexpr MessageForm kUncertaintyText{
    "report_uncertainty_text",
    "Standard uncertainties, combined as root of squares (JCGM 100:2008) from instrument, its floor, last "
    "digit, valve "
    "table and setting; a result whose uncertainty spans a limit is called undecidable"};
inline constexpr MessageForm kNoInstrument{"report_no_instrument", "No instrument is on record."};
inline constexpr MessageForm kNoPeople{"report_no_people", "Nobody is on record"};

// Section 3.
inline constexpr MessageForm kIndexNote{"report_index_note", "*  end of the index circuit"};
inline constexpr MessageForm kCorrectedNote{"report_corrected_note", "c  corrected, see section {1}"};
inline constexpr MessageForm kRepeatNote{"report_repeat_note", "r  read more than once; the mean counts"};
inline constexpr MessageForm kSumNote{"report_sum_note", "s  flow is the sum of the branches behind it"};
inline constexpr MessageForm kShareNote{
    "report_share_note",
    "Share: flow over the sum of the terminals. A riser or branch is read at its own valve, so that these "
    "shares need not add up to 100 %"};
inline constexpr MessageForm kReadNote{"report_read_note", "f  flow read directly"};
inline constexpr MessageForm kEarlierNote{"report_earlier_note", "e  reading of an earlier round"};

// Section 4.
inline constexpr MessageForm kConvergenceReading{
    "report_convergence_reading", "Spread by round: {1}. On share by round: {2} of {3} terminals."};

// Section 5.
inline constexpr MessageForm kNoPump{"report_no_pump", "No pump is on record."};
inline constexpr MessageForm kDuty{"report_duty",
                                   "{1} {2} at {3} {4} in round {5}; {6} % of design flow, {7w}"};
inline constexpr MessageForm kDesignHead{"report_design_head",
                                         "The loop with its valves as they stood in round {5} takes {1} {4} "
                                         "and the pump makes {2} {4} {7w}: excess "
                                         "{3} {4} {6w}"};
inline constexpr MessageForm kDesignHeadCompared{"report_design_head_compared",
                                                 "The loop with its valves as they stood in round {5} takes "
                                                 "{1} {4} and the pump makes {2} {4} {7w}: excess "
                                                 "{3} {4} {6w}. The pump decision uses {8} {4} {9w}"};
inline constexpr MessageForm kSpeedFormula{"report_speed_formula",
                                           "n₂/n₁ = Q design / Q where system and pump curve meet = {1} / "
                                           "{2} {6} = {3}: {4} % of the speed of round {5}"};
inline constexpr MessageForm kSpeedRpm{"report_speed_rpm", "That is {1} from {2} rpm"};
inline constexpr MessageForm kImpellerFormula{"report_impeller_formula",
                                              "D₂ = D₁ · n₂/n₁ = {1} · {2} = {3} {4}"};
inline constexpr MessageForm kImpellerBelow{
    "report_impeller_below",
    "D₂ = D₁ · n₂/n₁ = {1} · {2} = {3} {4}: below the least impeller of {5}, so trimming alone cannot do it"};
inline constexpr MessageForm kPowerFormula{"report_power_formula", "P₂/P₁ = (n₂/n₁)³ = {1}: {2} % {3w}"};
inline constexpr MessageForm kAffinityCaution{"report_affinity_caution",
                                              "Caution: the affinity laws are a first estimate, for a loop "
                                              "without static head. A full trim by them tends to cut "
                                              "too much; common practice cuts 70 to 80 % of it, tests, and "
                                              "cuts again. Check the least impeller of the casing "
                                              "before any cut: it cannot be taken back."};
inline constexpr MessageForm kElectricalCaution{"report_electrical_caution",
                                                "Caution: electrical measurements, drives and work on pumps "
                                                "are for qualified people under the local codes, with the "
                                                "supply isolated and locked off and the pressure let down. "
                                                "Check the motor's rating and least speed first."};
inline constexpr MessageForm kPumpReadingUnknown{
    "report_pump_reading_unknown", "The duty is not known, so the figure shows what is on record."};
inline constexpr MessageForm kPumpReading{
    "report_pump_reading",
    "Duty {1} {2} at {3} {4}; {5} % of design. With these valves {6} % of the speed of the "
    "last round gives {7} {2}."};
inline constexpr MessageForm kPumpReadingDecided{
    "report_pump_reading_decided",
    "Duty {1} {2} at {3} {4}; {5} % of design. Drawn as decided: speed {6} % of full speed."};
inline constexpr MessageForm kDutyByCurve{
    "report_duty_by_curve",
    "No gauge was read in round {1}: its duty is drawn as a dashed ring, with the head of the pump's curve."};
inline constexpr MessageForm kNoSavingTold{"report_no_saving_told",
                                           "a further change of speed brings no saving that could be told"};
inline constexpr MessageForm kPumpReadingPlain{"report_pump_reading_plain",
                                               "Duty {1} {2} at {3} {4}; {5} % of design."};

// Section 6.
inline constexpr MessageForm kIndexProved{"report_index_proved",
                                          "Index valve ended fully open and its dp is readable: the circuit "
                                          "that governs the pump head is not throttled."};
inline constexpr MessageForm kIndexNotProved{"report_index_not_proved",
                                             "Not shown that this circuit governs the pump head: the part "
                                             "that is missing is marked above; mend it, or "
                                             "sign with the reason."};
inline constexpr MessageForm kPathFullyOpen{"report_path_fully_open",
                                            "{1} at {2} of {3}, and every valve on its path fully open"};
inline constexpr MessageForm kPathNotFullyOpen{"report_path_not_fully_open",
                                               "{1} at {2} of {3}, but not fully open on its path: {4}"};
inline constexpr MessageForm kDpReadable{"report_dp_readable",
                                         "dp {1} at {2}, not below the readable minimum of {3}"};
inline constexpr MessageForm kDpTooSmall{"report_dp_too_small",
                                         "dp {1} at {2} is below the readable minimum of {3}"};
inline constexpr MessageForm kDpUndecided{
    "report_dp_undecided",
    "Undecidable: dp {1} at {2} is below the readable minimum of {3} by no more than its uncertainty of {4}; "
    "read it again with a finer meter"};
inline constexpr MessageForm kDpMissing{"report_dp_missing", "{1} has no dp in this round"};
inline constexpr MessageForm kNoOtherShorter{"report_no_other_shorter",
                                             "No other terminal is fully open with less of its design flow"};
inline constexpr MessageForm kOtherShorter{
    "report_other_shorter",
    "Not shown that {1} is the index: it takes {2} % of design, and fully open too with less are {3}; match "
    "groups and risers, read again, or sign with the reason"};

inline constexpr MessageForm kOtherUndecided{
    "report_other_undecided",
    "Undecidable whether {1} is the index: it takes {2} % of design, and fully open too with less are {3}, "
    "nearer than these readings tell ({4} %); read them again with a finer meter, or sign with the reason"};

inline constexpr MessageForm kOtherShorterOrUndecided{
    "report_other_shorter_or_undecided",
    "Not shown that {1} is the index: it takes {2} % of design, and fully open too with less are {5}, and "
    "nearer than these readings tell ({4} %): {3}; match groups and risers, read again with a finer meter, "
    "or "
    "sign with the reason"};

// Section 7.
inline constexpr MessageForm kNoExceptions{"report_no_exceptions",
                                           "No finding, doubtful reading, correction or overdue instrument."};
inline constexpr MessageForm kDoubtfulKept{"report_doubtful_kept", "doubtful reading {1w} kept: {2}"};
inline constexpr MessageForm kDoubtfulSilent{"report_doubtful_silent",
                                             "doubtful reading {1w} kept: no reason given"};
inline constexpr MessageForm kCorrection{"report_correction", "{1w} corrected to {2w} at {3w} by {4}"};
inline constexpr MessageForm kCorrectionUnknown{"report_correction_unknown",
                                                "{1w} corrected to {2w} at {3w} by a person not written"};
inline constexpr MessageForm kStruck{"report_struck", "{1w} struck: {2}"};
inline constexpr MessageForm kStruckWhileMerging{"report_struck_while_merging", "{1w} struck"};
inline constexpr MessageForm kStruckSilent{"report_struck_silent", "{1w} struck: no reason given"};
inline constexpr MessageForm kCannotBeRead{"report_cannot_be_read", "could not be read: {1}"};
inline constexpr MessageForm kUnreadSilent{"report_unread_silent", "could not be read: no reason given"};
inline constexpr MessageForm kOverdue{"report_overdue",
                                      "readings taken after its calibration ran out on {2}: {1}"};

// Section 8.
inline constexpr MessageForm kReadingsText{
    "report_readings_text",
    "Digits and units exactly as entered. A value that was corrected or struck stays, struck out. A setting "
    "that was entered before its reading stands in the row of that reading."};
inline constexpr MessageForm kNoReadings{"report_no_readings", "No reading is on record."};
inline constexpr MessageForm kFlowMeasuredWith{"report_flow_measured_with",
                                               "flow measured otherwise, with {1}"};
inline constexpr MessageForm kFlowMeasured{"report_flow_measured", "flow measured otherwise"};
inline constexpr MessageForm kFlowMethodMissing{"report_flow_method_missing",
                                                "flow measured otherwise, method not noted"};

// Column headings.
inline constexpr MessageForm kTagColumn{"report_tag_column", "Tag"};
inline constexpr MessageForm kServesColumn{"report_serves_column", "Serves"};
inline constexpr MessageForm kSettingColumn{"report_setting_column", "Setting"};
inline constexpr MessageForm kDpColumn{"report_dp_column", "dp as typed"};
inline constexpr MessageForm kFlowColumn{"report_flow_column", "Flow"};
inline constexpr MessageForm kDesignColumn{"report_design_column", "Design"};
inline constexpr MessageForm kShareColumn{"report_share_column", "Share"};
inline constexpr MessageForm kTargetColumn{"report_target_column", "Target"};
inline constexpr MessageForm kOfTargetColumn{"report_of_target_column", "Of target"};
inline constexpr MessageForm kOfDesignColumn{"report_of_design_column", "Of design"};
inline constexpr MessageForm kStateColumn{"report_state_column", "State"};
inline constexpr MessageForm kRoundColumn{"report_round_column", "Round"};
inline constexpr MessageForm kRoundNumberColumn{"report_round_number_column", "Round {1}"};
inline constexpr MessageForm kKindColumn{"report_kind_column", "Kind"};
inline constexpr MessageForm kDatesColumn{"report_dates_column", "Date"};
inline constexpr MessageForm kReadColumn{"report_read_column", "Read"};
inline constexpr MessageForm kOnShareColumn{"report_on_share_column", "On share"};
inline constexpr MessageForm kSpreadColumn{"report_spread_column", "Spread"};
inline constexpr MessageForm kVerdictColumn{"report_verdict_column", "By the readings"};
inline constexpr MessageForm kPumpColumn{"report_pump_column", "Pump"};
inline constexpr MessageForm kHeadColumn{"report_head_column", "Head"};
inline constexpr MessageForm kSumFlowColumn{"report_sum_flow_column", "Flow, sum"};
inline constexpr MessageForm kCurveFlowColumn{"report_curve_flow_column", "Flow, curve"};
inline constexpr MessageForm kRangeColumn{"report_range_column", "Curve range"};
inline constexpr MessageForm kReadFlowColumn{"report_read_flow_column", "Flow, read"};
inline constexpr MessageForm kSpeedColumn{"report_speed_column", "Speed"};
inline constexpr MessageForm kSerialColumn{"report_serial_column", "Serial"};
inline constexpr MessageForm kMeterRangeColumn{"report_meter_range_column", "Range"};
inline constexpr MessageForm kAccuracyColumn{"report_accuracy_column", "Accuracy"};
inline constexpr MessageForm kFloorColumn{"report_floor_column", "At least"};
inline constexpr MessageForm kCalibratedColumn{"report_calibrated_column", "Calibrated"};
inline constexpr MessageForm kDueColumn{"report_due_column", "Due"};
inline constexpr MessageForm kUsedColumn{"report_used_column", "Readings"};
inline constexpr MessageForm kModelColumn{"report_model_column", "Model"};
inline constexpr MessageForm kSizeColumn{"report_size_column", "Size"};
inline constexpr MessageForm kScaleColumn{"report_scale_column", "Scale"};
inline constexpr MessageForm kFullyOpenColumn{"report_fully_open_column", "Fully open"};
inline constexpr MessageForm kCoefficientColumn{"report_coefficient_column", "Coefficient there"};
inline constexpr MessageForm kMinimumColumn{"report_minimum_column", "Least dp"};
inline constexpr MessageForm kTimeColumn{"report_time_column", "Time"};
inline constexpr MessageForm kInstrumentColumn{"report_instrument_column", "Instrument"};
inline constexpr MessageForm kPersonColumn{"report_person_column", "Person"};
inline constexpr MessageForm kNoteColumn{"report_note_column", "Note"};
inline constexpr MessageForm kSuctionColumn{"report_suction_column", "Suction"};
inline constexpr MessageForm kDischargeColumn{"report_discharge_column", "Discharge"};
inline constexpr MessageForm kRiseColumn{"report_rise_column", "Rise"};
inline constexpr MessageForm kThrottleColumn{"report_throttle_column", "Throttle"};
inline constexpr MessageForm kElectricalColumn{"report_electrical_column", "Electrical"};
inline constexpr MessageForm kWhatColumn{"report_what_column", "What"};
inline constexpr MessageForm kWeightColumn{"report_weight_column", "Weight"};
inline constexpr MessageForm kSubjectColumn{"report_subject_column", "About"};

}  // namespace ww::report::detail
