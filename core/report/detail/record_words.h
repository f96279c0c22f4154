// The sentences and headings of the report's sections about the record: diagram, readiness, deficiencies,
// witness, revisions. Not for the balance itself (words.h).
#pragma once

#include "core/base/fault.h"

namespace ww::report::detail {

using base::MessageForm;

inline constexpr MessageForm kOneLineTitle{"report_one_line_title", "One-line diagram"};
inline constexpr MessageForm kReadinessTitle{"report_readiness_title", "Readiness before the survey"};
inline constexpr MessageForm kDeficienciesTitle{"report_deficiencies_title", "Deficiencies"};
inline constexpr MessageForm kWitnessTitle{"report_witness_title", "Witness sample"};
inline constexpr MessageForm kRevisionsTitle{"report_revisions_title", "Review and revisions"};

// The diagram.
inline constexpr MessageForm kOneLineFigure{"report_one_line_figure", "The loop in the final round"};
inline constexpr MessageForm kOneLineLastFigure{"report_one_line_last_figure",
                                                "The loop in the last round read"};
inline constexpr MessageForm kOneLineText{
    "report_one_line_text",
    "Supply and return are drawn as one pipe. Beside each valve stand its tag, the shape of its state, its "
    "percent of target and its setting; the filled part of a valve shows how far it is open. The index "
    "circuit is a double line."};
inline constexpr MessageForm kOneLineReading{"report_one_line_reading",
                                             "{1} branches, of these {2} terminals; index circuit: {3}."};
inline constexpr MessageForm kIndexNotKnown{"report_index_not_known", "not known"};
inline constexpr MessageForm kNoBranches{"report_no_branches", "No branch is on record."};

// Readiness.
inline constexpr MessageForm kReadinessTable{"report_readiness_table", "What must hold before a survey"};
inline constexpr MessageForm kReadinessCount{"report_readiness_count",
                                             "{1} of {2} lines that must hold are done or do not apply."};
inline constexpr MessageForm kNoReadiness{"report_no_readiness", "No list of readiness is on record."};
inline constexpr MessageForm kSurveyedEarly{"report_surveyed_early",
                                            "Round {1} began before the list was done: {2}"};
inline constexpr MessageForm kLineColumn{"report_line_column", "Line"};
inline constexpr MessageForm kMustColumn{"report_must_column", "Must hold"};
inline constexpr MessageForm kOwnerColumn{"report_owner_column", "Owner"};
inline constexpr MessageForm kEvidenceColumn{"report_evidence_column", "Evidence"};

// Deficiencies.
inline constexpr MessageForm kDeficienciesTable{"report_deficiencies_table", "What the balancer cannot mend"};
inline constexpr MessageForm kNoDeficiencies{"report_no_deficiencies", "No deficiency is on record."};
inline constexpr MessageForm kDeficiencyCount{"report_deficiency_count",
                                              "{1} on record, of these open: {2}."};
inline constexpr MessageForm kNumberColumn{"report_number_column", "No."};
inline constexpr MessageForm kWrongColumn{"report_wrong_column", "What is wrong, what follows"};
inline constexpr MessageForm kTradeColumn{"report_trade_column", "Trade"};
inline constexpr MessageForm kRemedyColumn{"report_remedy_column", "Proposed remedy"};
inline constexpr MessageForm kStatusColumn{"report_status_column", "Status"};
inline constexpr MessageForm kPhotoOfDeficiency{"report_photo_of_deficiency", "Deficiency {1}: {2}"};
inline constexpr MessageForm kPhotoOfBranch{"report_photo_of_branch", "{1}: {2}"};
inline constexpr MessageForm kPhotoTaken{"report_photo_taken", "{1}, {2}, {3}."};
inline constexpr MessageForm kPhotosKept{"report_photos_kept",
                                         "Files kept in the workbook: {1}; the pictures among them follow."};

inline constexpr MessageForm kReadingInRound{"report_reading_in_round", "{1w}, round {2}"};
inline constexpr MessageForm kOneFile{"report_one_file", "{1} file"};
inline constexpr MessageForm kSeveralFiles{"report_several_files", "{1} files"};
inline constexpr MessageForm kTestedAgain{"report_tested_again", "tested again {1}"};

// The witness sample.
inline constexpr MessageForm kNoWitness{"report_no_witness", "No witness round is on record."};
inline constexpr MessageForm kWitnessTable{"report_witness_table",
                                           "Round {1} read again what round {2} had reported"};
inline constexpr MessageForm kWitnessLabel{"report_witness_label", "Round {1}"};
inline constexpr MessageForm kWitnessConfirmed{
    "report_witness_confirmed", "Confirmed: {1} of {2} terminals within 10 % of what was reported"};
inline constexpr MessageForm kWitnessNotConfirmed{
    "report_witness_not_confirmed", "Not confirmed: {1} of {2} terminals within 10 % of what was reported"};
inline constexpr MessageForm kWitnessUnfinished{"report_witness_unfinished",
                                                "Unfinished: {1} of {2} terminals not read again"};
inline constexpr MessageForm kWitnessText{"report_witness_text",
                                          "The sample holds the index terminal and those with the highest "
                                          "and the lowest of design, at least one of "
                                          "every group, and others drawn by chance with the seed {1}; the "
                                          "same seed gives the same sample. Confirmed: "
                                          "at most one in ten deviates by more than 10 % (common practice)."};
inline constexpr MessageForm kReportedColumn{"report_reported_column", "Reported"};
inline constexpr MessageForm kRereadColumn{"report_reread_column", "Read again"};
inline constexpr MessageForm kRatioColumn{"report_ratio_column", "Again over reported"};
inline constexpr MessageForm kWithinColumn{"report_within_column", "Within 10 %"};
inline constexpr MessageForm kTheSame{"report_the_same", "{1} (the same)"};

// Review and revisions.
inline constexpr MessageForm kRevisionFirst{"report_revision_first",
                                            "This is revision {1}; nothing was signed before."};
inline constexpr MessageForm kRevisionLater{"report_revision_later",
                                            "This is revision {1}; it supersedes revision {2}."};
inline constexpr MessageForm kRevisionCopy{
    "report_revision_copy",
    "A copy of revision {1}, signed by {2}; nothing was changed since. The signed file counts."};
inline constexpr MessageForm kReviewTable{"report_review_table", "Rounds and who decided on them"};
inline constexpr MessageForm kStepsTable{"report_steps_table", "Every step of review, round by round"};
inline constexpr MessageForm kStepColumn{"report_step_column", "Step"};
inline constexpr MessageForm kSignaturesTable{"report_signatures_table", "Signatures so far"};
inline constexpr MessageForm kNoSignatures{"report_no_signatures",
                                           "No report of this job was signed before this one."};
inline constexpr MessageForm kClosedColumn{"report_closed_column", "Closed"};
inline constexpr MessageForm kSentColumn{"report_sent_column", "Sent by"};
inline constexpr MessageForm kDecidedColumn{"report_decided_column", "Decided by"};
inline constexpr MessageForm kStandingTable{"report_standing_table",
                                            "What would hold up a signature, and the reason why it stands"};
inline constexpr MessageForm kReasonColumn{"report_reason_column", "Reason"};
inline constexpr MessageForm kRevisionColumn{"report_revision_column", "Rev."};
inline constexpr MessageForm kRoleColumn{"report_role_column", "Role"};
inline constexpr MessageForm kSignerColumn{"report_signer_column", "Signed by"};
inline constexpr MessageForm kFileColumn{"report_file_column", "File"};
inline constexpr MessageForm kCertificateColumn{"report_certificate_column", "Certificate"};
inline constexpr MessageForm kFirmColumn{"report_firm_column", "Firm"};
inline constexpr MessageForm kNameColumn{"report_name_column", "Name"};
inline constexpr MessageForm kSelfMade{"report_self_made", "{1} self-made"};
inline constexpr MessageForm kReviewOfOwn{
    "report_review_of_own", "Revision {1}: {2} signed as reviewer, and read or sent rounds {3} too."};
inline constexpr MessageForm kSignedBoth{"report_signed_both",
                                         "Revision {1}: {2} signed both the readings and the review."};
inline constexpr MessageForm kWithdrawn{"report_withdrawn", "withdrawn: {1}"};
inline constexpr MessageForm kPeopleTable{"report_people_table", "People"};

// Comments, among the exceptions.
inline constexpr MessageForm kCommentRow{"report_comment_row", "{1}: \"{2}\""};
inline constexpr MessageForm kAnswerPart{"report_answer_part", "{1} answered: \"{2}\""};

// Clocks, among the exceptions.
inline constexpr MessageForm kClockSet{"report_clock_set",
                                       "{4} set this laptop's clock right: it showed {1} when it was {2}; "
                                       "from then on {3} are added, times written before stay as they were"};
inline constexpr MessageForm kClockTakenBack{"report_clock_taken_back",
                                             "{3} took back what was added to this laptop's clock: it showed "
                                             "{1} when it was {2}; times written before "
                                             "stay as they were"};
inline constexpr MessageForm kTimesUncertain{
    "report_times_uncertain",
    "written between {1} and {2} by the clock of {3}, which was set right later; the order of entry holds, "
    "not the times"};

}  // namespace ww::report::detail
