// The labels under which actions stand in the journal and behind "Undo": English in the record, read back
// into what they say where they are shown. Not for what an action does (edit.h).
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/fault.h"

namespace ww::project {

/// The form of every label, all in this one file, so that a stored label can be told by its text. A text that
/// changes is a form of its own: labels of earlier journals stay readable.
namespace labels {

using base::MessageForm;

inline constexpr MessageForm kDp{"label_dp", "DP {1}, {2}"};
inline constexpr MessageForm kDpAgain{"label_dp_again", "DP {1} read again, {2}"};
inline constexpr MessageForm kDpAt{"label_dp_at", "DP {1} at {2}, {3}"};
inline constexpr MessageForm kDpAtReference{"label_dp_at_reference", "DP {1} at the reference, {2}"};
inline constexpr MessageForm kDpShut{"label_dp_shut", "DP {1} with the valve shut, {2}"};
inline constexpr MessageForm kDpInPlace{"label_dp_in_place", "DP {1} in place of {2}, {3}"};
inline constexpr MessageForm kSetting{"label_setting", "setting {1}, {2}"};
inline constexpr MessageForm kSettingInPlace{"label_setting_in_place", "setting {1} in place of {2}, {3}"};
inline constexpr MessageForm kFlow{"label_flow", "flow {1}, {2}"};
inline constexpr MessageForm kCannotBeRead{"label_cannot_be_read", "cannot be read, {1}"};
inline constexpr MessageForm kNotTurned{"label_not_turned", "valves not turned in round {1}: {2}"};
inline constexpr MessageForm kReason{"label_reason", "reason, {1}"};
inline constexpr MessageForm kNoReason{"label_no_reason", "no reason, {1}"};
inline constexpr MessageForm kDoubtful{"label_doubtful", "doubtful, {1}"};
inline constexpr MessageForm kNotDoubtful{"label_not_doubtful", "not doubtful, {1}"};
inline constexpr MessageForm kNote{"label_note", "note, {1}"};
inline constexpr MessageForm kNoNote{"label_no_note", "note removed, {1}"};
inline constexpr MessageForm kHold{"label_hold", "hold at {1}, {2}"};
inline constexpr MessageForm kPastedReading{"label_pasted_reading", "1 pasted reading"};
inline constexpr MessageForm kPastedReadings{"label_pasted_readings", "{1} pasted readings"};
inline constexpr MessageForm kGaugeRise{"label_gauge_rise", "gauge rise {1}, {2}"};
inline constexpr MessageForm kPumpTest{"label_pump_test", "test of {1}, {2w}: {3w} = {4}"};
inline constexpr MessageForm kPumpTestEmptied{"label_pump_test_emptied", "test of {1}, {2w}: {3w} removed"};
inline constexpr MessageForm kOpenRound{"label_open_round", "open round {1}"};
inline constexpr MessageForm kOpenWitness{"label_open_witness", "open round {1}, witness of {2} terminals"};
inline constexpr MessageForm kCloseRound{"label_close_round", "close round {1}"};
inline constexpr MessageForm kSendRound{"label_send_round", "send round {1}"};
inline constexpr MessageForm kAcceptRound{"label_accept_round", "accept round {1}"};
inline constexpr MessageForm kSendBackRound{"label_send_back_round", "send back round {1}"};
inline constexpr MessageForm kWithdrawRound{"label_withdraw_round", "withdraw round {1}"};
inline constexpr MessageForm kComment{"label_comment", "comment on {1w}"};
inline constexpr MessageForm kAnswer{"label_answer", "answer to comment on {1w}"};
inline constexpr MessageForm kResolve{"label_resolve", "resolve comment on {1w}"};
inline constexpr MessageForm kReopen{"label_reopen", "reopen comment on {1w}"};
inline constexpr MessageForm kWithdrawReport{"label_withdraw_report", "withdraw revision {1} of the report"};
inline constexpr MessageForm kFindingReason{"label_finding_reason", "reason: {1}"};
inline constexpr MessageForm kNoFindingReason{"label_no_finding_reason", "reason removed: {1}"};
inline constexpr MessageForm kSigningReason{"label_signing_reason", "reason before signing"};
inline constexpr MessageForm kNoSigningReason{"label_no_signing_reason", "reason before signing removed"};
inline constexpr MessageForm kSign{"label_sign", "Sign the report"};
inline constexpr MessageForm kDeficiency{"label_deficiency", "deficiency {1}"};
inline constexpr MessageForm kUsualReadiness{"label_usual_readiness", "usual readiness list"};
inline constexpr MessageForm kReadiness{"label_readiness", "readiness: {1}"};
inline constexpr MessageForm kRemoveReadiness{"label_remove_readiness", "remove readiness line: {1}"};
inline constexpr MessageForm kNewJob{"label_new_job", "new job"};
inline constexpr MessageForm kNewJobNamed{"label_new_job_named", "New job {1}"};
inline constexpr MessageForm kPracticeJob{"label_practice_job", "New practice job"};
inline constexpr MessageForm kRecord{"label_record", "Record readings from {1}"};
inline constexpr MessageForm kImport{"label_import", "Import from {1}"};
inline constexpr MessageForm kCheckpoint{"label_checkpoint", "checkpoint {1}"};
inline constexpr MessageForm kMergeOne{"label_merge_one", "merge of 1 action of {1}"};
inline constexpr MessageForm kMerge{"label_merge", "merge of {1} actions of {2}"};
inline constexpr MessageForm kChoice{"label_choice", "choice of {1}, {2}"};
inline constexpr MessageForm kChoiceBoth{"label_choice_both", "choice of both, {1}"};
inline constexpr MessageForm kUnits{"label_units", "units of the job"};
inline constexpr MessageForm kFluid{"label_fluid", "fluid of the job"};
inline constexpr MessageForm kJobField{"label_job_field", "{1w} of the job"};
inline constexpr MessageForm kCodeForm{"label_code_form", "form of the energy code's clause"};
inline constexpr MessageForm kLoad{"label_load", "load of a year"};
inline constexpr MessageForm kZones{"label_zones", "Change of zones"};
inline constexpr MessageForm kBranch{"label_branch", "branch {1}"};
inline constexpr MessageForm kNewBranch{"label_new_branch", "new branch {1}"};
inline constexpr MessageForm kRoute{"label_route", "route of {1}"};
inline constexpr MessageForm kNotes{"label_notes", "notes, {1}"};
inline constexpr MessageForm kNoNotes{"label_no_notes", "notes removed, {1}"};
inline constexpr MessageForm kPhoto{"label_photo", "photo {1}"};
inline constexpr MessageForm kRemovePhoto{"label_remove_photo", "remove photo"};
inline constexpr MessageForm kDevice{"label_device", "device at {1}"};
inline constexpr MessageForm kField{"label_field", "{1w} of {2}"};
inline constexpr MessageForm kNewValve{"label_new_valve", "new valve model {1}"};
inline constexpr MessageForm kRemoveValve{"label_remove_valve", "valve model {1} removed"};
inline constexpr MessageForm kValveTable{"label_valve_table", "table of {1}"};
inline constexpr MessageForm kPastedTable{"label_pasted_table", "pasted table of {1}"};
inline constexpr MessageForm kNewPump{"label_new_pump", "new pump {1}"};
inline constexpr MessageForm kCurve{"label_curve", "curve of {1}"};
inline constexpr MessageForm kSetPoint{"label_set_point", "set-point of {1}"};
inline constexpr MessageForm kNewSetPoint{"label_new_set_point", "new set-point {1}"};
inline constexpr MessageForm kRemoveSetPoint{"label_remove_set_point", "remove set-point {1}"};
inline constexpr MessageForm kInstrument{"label_instrument", "instrument {1}"};
inline constexpr MessageForm kNewInstrument{"label_new_instrument", "new instrument {1}"};
inline constexpr MessageForm kRemoveInstrument{"label_remove_instrument", "remove instrument {1}"};
inline constexpr MessageForm kPerson{"label_person", "person {1}"};
inline constexpr MessageForm kNewPerson{"label_new_person", "new person"};
inline constexpr MessageForm kRemovePerson{"label_remove_person", "remove person {1}"};
inline constexpr MessageForm kClock{"label_clock", "clock of {1}, {2} added"};
inline constexpr MessageForm kClockOwn{"label_clock_own", "clock of {1}, nothing added"};

}  // namespace labels

/// All forms of labels, in no particular order.
std::span<const base::MessageForm* const> labelForms();

/// The label of an action in English, as the journal keeps it.
std::string label(const base::MessageForm& form, const std::vector<std::string>& arguments = {});

/// What a stored label says: the form that shares most letters with it, and its arguments. Nothing where the
/// label is of no form: text that another program or an older journal wrote.
std::optional<base::Fault> readLabel(std::string_view label);

/// The title of a field inside a label: its first letter small, unless more capitals follow ("rated speed",
/// "NPSH").
std::string fieldInLabel(std::string title);

}  // namespace ww::project
