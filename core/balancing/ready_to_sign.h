// Whether a report may be signed: one line a condition, for the desktop's list and for the command line.
// Not for signing (seal/).
#pragma once

#include <vector>

#include "core/balancing/assessment.h"

namespace ww::balancing {

enum class SignState {
    Good,
    Reasoned,     ///< not as it should be, and somebody says why it stands
    NeedsReason,  ///< stands in the way until a reason is given (giveFindingReason with its `text`)
    Blocks,       ///< stands in the way until it is mended
    Warns,        ///< not as it should be, and holds nothing up
};

struct SignLine {
    base::Fault text;  ///< code and subject are those under which a reason is kept
    SignState state = SignState::Good;
    std::string reason;  ///< of a Reasoned line
    std::optional<Id> branch;
};

inline constexpr base::MessageForm kSignRead{"sign_read", "all {1} terminals were read in the last round"};
inline constexpr base::MessageForm kSignRounds{"sign_rounds", "every round is accepted by a supervisor"};
inline constexpr base::MessageForm kSignVerdict{"sign_verdict",
                                                "by the readings the last round is within tolerance"};
inline constexpr base::MessageForm kSignVerdictUnproved{
    "sign_verdict_unproved",
    "by the readings the last round is within tolerance; its index circuit is not proved"};
inline constexpr base::MessageForm kSignIndex{"sign_index",
                                              "the index circuit is known and fully open along its path"};
inline constexpr base::MessageForm kSignPathOpen{
    "sign_path_open", "every valve on the path to {1} is fully open, but it is not shown to be the index"};
inline constexpr base::MessageForm kSignFindings{"sign_findings", "no finding blocks the signature"};
inline constexpr base::MessageForm kSignComments{"sign_comments", "every comment is resolved"};
inline constexpr base::MessageForm kSignReadiness{"sign_readiness", "the readiness list is done"};
inline constexpr base::MessageForm kSignDeficiencies{
    "sign_deficiencies", "deficiencies that the report lists: {1}, of these open: {2}"};
inline constexpr base::MessageForm kSignWitness{"sign_witness",
                                                "the witness round confirms {1} of {2} terminals"};
inline constexpr base::MessageForm kSignMerge{"sign_merge", "nothing is left to choose from merging"};

inline constexpr base::MessageForm kSignNoFinal{
    "sign_no_final", "the newest round that was read is no final one; read and close a final round"};
inline constexpr base::MessageForm kSignUnread{
    "sign_unread", "{1} of {2} terminals have neither a reading nor a reason; read them or say why not"};
inline constexpr base::MessageForm kSignNobody{
    "sign_nobody",
    "readings of the final round that name no person: {1} of {2}; choose the person (Round, Person) before "
    "reading"};
inline constexpr base::MessageForm kSignCodeUnnamed{
    "sign_code_unnamed",
    "the report tests the energy code's clause and cannot name it; type code, edition and clause on Pump, "
    "Energy Code"};
inline constexpr base::MessageForm kSignFinalOpen{
    "sign_final_open", "round {1} is still open; close it, send it and have it accepted by a supervisor"};
inline constexpr base::MessageForm kSignFinalNotAccepted{
    "sign_final_not_accepted",
    "round {1} is closed and not sent; send it and have it accepted by a supervisor"};
inline constexpr base::MessageForm kSignFinalSent{
    "sign_final_sent", "round {1} is sent and not accepted; have it accepted by a supervisor"};
inline constexpr base::MessageForm kSignFinalSentBack{
    "sign_final_sent_back",
    "round {1} was sent back; answer its comments, send it again and have it accepted by a supervisor"};
inline constexpr base::MessageForm kSignRoundNotAccepted{
    "sign_round_not_accepted", "rounds that are not accepted: {1}; have them accepted or give the reason"};
inline constexpr base::MessageForm kSignOwnAcceptance{
    "sign_own_acceptance",
    "rounds accepted by one who read or sent them: {1}; have somebody else accept them or give the reason"};
inline constexpr base::MessageForm kSignOwnAcceptanceWhy{
    "sign_own_acceptance_why", "round {1} was accepted by {2}, who also read or sent it: {3}"};
inline constexpr base::MessageForm kSignVerdictOpen{
    "sign_verdict_open",
    "by the readings the last round is {1w}; go on balancing, or give the reason why it stays so"};
inline constexpr base::MessageForm kSignIndexOpen{
    "sign_index_open",
    "the index circuit is not fully open along its path; open its valves or give the reason"};
inline constexpr base::MessageForm kSignReadinessMissing{
    "sign_readiness_missing",
    "no list says that the loop was ready; take the usual one on the place Job, or give the reason"};
inline constexpr base::MessageForm kSignWitnessUnread{
    "sign_witness_unread", "terminals of the witness round that are not read again: {1}; read them"};
inline constexpr base::MessageForm kSignWitnessFailed{
    "sign_witness_failed",
    "the witness round found {1} of {2} terminals more than 10 % off; read all again, or give the reason"};
inline constexpr base::MessageForm kSignMergeOpen{
    "sign_merge_open", "values to choose between after merging: {1}; choose in File, Decide Conflicts"};

/// The lines in the order in which people work. `assessment` is that of the round that the report is about
/// (reportedRound() of witness.h). Ready where no line needs a reason or blocks.
std::vector<SignLine> readyToSign(const project::Project& project, const Assessment& assessment);
bool isReady(const std::vector<SignLine>& lines);

}  // namespace ww::balancing
