// The steps of a review that a job allows: close, send, accept, send back, withdraw; comments; readiness.
// Not for locks of readings (edit_rules.h).
#pragma once

#include <optional>

#include "core/base/fault.h"
#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::workbook {

inline constexpr base::MessageForm kRoundStep{
    "round_step", "round {1} is {2w} and cannot become {3w}; take the steps in turn: close, send, decide"};
inline constexpr base::MessageForm kWithdrawWithReason{
    "withdraw_with_reason", "round {1} is {2w}, and withdrawing that needs a reason; give it"};
inline constexpr base::MessageForm kSendBackWithComment{
    "send_back_with_comment",
    "only for sending back: round {1} has no open comment that says what to correct; choose a cell of the "
    "comparison, press Ctrl+Alt+C and write it"};
inline constexpr base::MessageForm kSenderMissing{
    "sender_missing", "round {1} is sent by nobody; say who works at this desk, Round, Person"};
inline constexpr base::MessageForm kDeciderWithoutRole{
    "decider_without_role",
    "\"{1}\" is not among the people of this job as supervisor or engineer; give the role on the place Job"};
inline constexpr base::MessageForm kDeciderNotAtDesk{"decider_not_at_desk",
                                                     "\"{1}\" is no supervisor or engineer of this job; let "
                                                     "one of them work at this desk, menu Round, Person: "
                                                     "{2}"};
inline constexpr base::MessageForm kDeciderIsSender{
    "decider_is_sender",
    "round {1} was sent by {2}; another supervisor or engineer decides on it, menu Round, Person: {3}"};
inline constexpr base::MessageForm kDeciderIsReader{
    "decider_is_reader",
    "round {1} was read by {2}, at least in part; somebody who read none of it decides on it, menu Round, "
    "Person: {3}"};
inline constexpr base::MessageForm kNobodyElseDecides{
    "nobody_else_decides",
    "{2} read or sent round {1}, and no other person of this job is supervisor or engineer; add one on the "
    "place Job"};
inline constexpr base::MessageForm kAcceptAloneWithReason{
    "accept_alone_with_reason",
    "{2} read or sent round {1} and is the only person of this job; write the reason why nobody else accepts "
    "it"};
inline constexpr base::MessageForm kAcceptCommentsOpen{
    "accept_comments_open",
    "comments open on round {1}: {2}, the first is \"{3}\"; answer and resolve each, or send the round back"};
inline constexpr base::MessageForm kSurveyNotReady{"survey_not_ready",
                                                   "mandatory lines of readiness that are open: {1}, the "
                                                   "first is \"{2}\"; see to them, or have a supervisor "
                                                   "say why the survey may begin"};
inline constexpr base::MessageForm kOverrideWithoutRole{
    "override_without_role",
    "\"{1}\" lets a survey begin before the loop is ready, but no supervisor or engineer of this job says "
    "so; "
    "write name, colon, reason"};
inline constexpr base::MessageForm kCommentEmpty{"comment_empty",
                                                 "a comment without words says nothing; write it"};
inline constexpr base::MessageForm kCommentStays{
    "comment_stays", "a comment stays as it was written; write an answer to it instead"};
inline constexpr base::MessageForm kAnswerToAnswer{
    "answer_to_answer", "this would answer an answer; answer the first comment instead"};
inline constexpr base::MessageForm kDeficiencyNumber{
    "deficiency_number", "{1} is not a number that a deficiency can have; give one that is free, from 1"};

/// Why the edit is no step that a review allows; nothing where it is one. Steps of a round: open, closed,
/// sent, accepted or sent back; sent back is corrected and sent again; sent and accepted are withdrawn with a
/// reason. Accepted and sent back need a supervisor or engineer of the job who took no part in the round
/// (project::tookPart). Accepting needs every comment on the round resolved, sending back
/// an open one whose last word is not an answer of somebody else. Where the job has one person only, that one
/// accepts with a reason. A round that the job does not hold yet may have any state (it was imported), but a
/// new survey is refused while mandatory lines of readiness are open, unless its `readiness` says "name:
/// reason" with the name of a supervisor or engineer. A comment's words stay as they were written.
std::optional<base::Fault> reviewRefusal(const project::Project& project, const project::Edit& edit);

}  // namespace ww::workbook
