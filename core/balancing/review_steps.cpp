#include "core/balancing/review_steps.h"

#include <unordered_set>

#include "core/balancing/standing_readings.h"
#include "core/balancing/walk_forms.h"
#include "core/balancing/walk_progress.h"
#include "core/project/edit_label.h"
#include "core/project/review.h"

namespace ww::balancing {

namespace {

using project::Comment;
using project::Edit;
using project::Project;
using project::Round;
using project::RoundState;

Edit withRound(Round round, const base::MessageForm& what) {
    Edit edit;
    edit.label = project::label(what, {std::to_string(round.number)});
    edit.put.emplace_back(std::move(round));
    return edit;
}

Edit withComment(const Project& project, Comment comment, const base::MessageForm& what) {
    Edit edit;
    edit.label = project::label(what, {placeText(project, comment)});
    edit.put.emplace_back(std::move(comment));
    return edit;
}

}  // namespace

std::optional<base::Fault> unansweredFault(const Project& project, const Id& id) {
    const auto waiting = project::unansweredComments(project, id);
    if (waiting.empty()) {
        return std::nullopt;
    }
    const std::string number = std::to_string(project.rounds().at(id).number);
    return base::Fault{
        &kCommentsUnanswered, {}, {std::to_string(waiting.size()), number, waiting.front()->text}};
}

base::Result<Edit> sendRound(const Project& project, const Id& id, ReviewContext context) {
    Round round = project.rounds().at(id);
    if (auto fault = unansweredFault(project, id)) {
        return std::move(*fault);
    }
    const auto items = openItems(project, id);
    if (!items.empty()) {
        const std::string number = std::to_string(round.number);
        return base::Fault{
            &kItemsOpen, {}, {std::to_string(items.size()), number, items.front().fault.subject}};
    }
    round.state = RoundState::Sent;
    round.sent = context.now;
    round.sentBy = std::move(context.person);
    round.decided.reset();
    round.decidedBy.clear();
    return withRound(std::move(round), project::labels::kSendRound);
}

Edit acceptRound(const Project& project, const Id& id, std::string reason, ReviewContext context) {
    Round round = project.rounds().at(id);
    round.reason = project::tookPart(project, round, context.person) ? std::move(reason) : std::string();
    round.state = RoundState::Accepted;
    round.decided = context.now;
    round.decidedBy = std::move(context.person);
    return withRound(std::move(round), project::labels::kAcceptRound);
}

Edit sendBackRound(const Project& project, const Id& id, std::string reason, ReviewContext context) {
    Round round = project.rounds().at(id);
    round.state = RoundState::SentBack;
    round.decided = context.now;
    round.decidedBy = std::move(context.person);
    round.reason = std::move(reason);
    return withRound(std::move(round), project::labels::kSendBackRound);
}

Edit withdrawRound(const Project& project, const Id& id, std::string reason, ReviewContext) {
    Round round = project.rounds().at(id);
    round.state = round.state == RoundState::Sent ? RoundState::Closed : RoundState::Sent;
    round.reason = std::move(reason);
    round.decided.reset();
    round.decidedBy.clear();
    if (round.state == RoundState::Closed) {
        round.sent.reset();
        round.sentBy.clear();
    }
    return withRound(std::move(round), project::labels::kWithdrawRound);
}

std::string placeText(const Project& project, const Comment& comment, const base::Wording& wording) {
    const auto said = [&](std::string_view word) { return wording ? wording(word) : std::string(word); };
    std::string place;
    const auto add = [&](const std::string& part) { place += (place.empty() ? "" : ", ") + part; };
    if (const auto* branch = comment.branch ? project.branches().find(*comment.branch) : nullptr) {
        add(branch->tag);
    }
    if (const auto* pump = comment.pump ? project.pumps().find(*comment.pump) : nullptr) {
        add(pump->tag);
    }
    if (!comment.field.empty()) {
        add(said(comment.field == "dp" ? base::term("DP") : comment.field.c_str()));
    }
    if (const auto* round = comment.round ? project.rounds().find(*comment.round) : nullptr) {
        add(said(base::term("round ")) + std::to_string(round->number));
    }
    return place.empty() ? said("job") : place;
}

Edit addComment(const Project& project, CommentPlace place, std::string text, ReviewContext context) {
    Comment comment;
    comment.id = context.ids.next();
    comment.round = place.round;
    comment.branch = place.branch;
    comment.pump = place.pump;
    comment.field = std::move(place.field);
    comment.text = std::move(text);
    comment.person = std::move(context.person);
    comment.time = context.now;
    return withComment(project, std::move(comment), project::labels::kComment);
}

Edit answerComment(const Project& project, const Id& id, std::string text, ReviewContext context) {
    const Comment& asked = project.comments().at(id);
    Comment answer;
    answer.id = context.ids.next();
    answer.round = asked.round;
    answer.branch = asked.branch;
    answer.pump = asked.pump;
    answer.field = asked.field;
    answer.answers = asked.answers ? asked.answers : asked.id;
    answer.text = std::move(text);
    answer.person = std::move(context.person);
    answer.time = context.now;
    return withComment(project, std::move(answer), project::labels::kAnswer);
}

Edit resolveComment(const Project& project, const Id& id, bool isResolved, ReviewContext context) {
    Comment comment = project.comments().at(id);
    comment.isResolved = isResolved;
    comment.resolvedBy = isResolved ? std::move(context.person) : std::string();
    comment.resolved = isResolved ? std::optional(context.now) : std::nullopt;
    return withComment(project, std::move(comment),
                       isResolved ? project::labels::kResolve : project::labels::kReopen);
}

std::vector<Id> openBranches(const Project& project, const std::vector<Id>& doubted) {
    std::unordered_set<Id> open(doubted.begin(), doubted.end());
    for (const Comment& comment : project.comments()) {
        if (comment.branch && !comment.answers && !comment.isResolved) {
            open.insert(*comment.branch);
        }
    }
    if (const Round* round = project::roundInHand(project)) {
        for (const Finding& item : openItems(project, round->id)) {
            if (item.branch) {
                open.insert(*item.branch);
            }
        }
    }
    std::vector<Id> inOrder;
    for (const std::size_t index : project.tree().walkingOrder()) {
        if (open.contains(project.branches()[index].id)) {
            inOrder.push_back(project.branches()[index].id);
        }
    }
    return inOrder;
}

Edit withdrawReport(const Project& project, const Id& signature, std::string reason) {
    const int revision = project.signedReports().at(signature).revision;
    Edit edit;
    edit.label = project::label(project::labels::kWithdrawReport, {std::to_string(revision)});
    for (project::SignedReport report : project.signedReports()) {
        if (report.revision == revision && !report.isWithdrawn) {
            report.isWithdrawn = true;
            report.reason = reason;
            edit.put.emplace_back(std::move(report));
        }
    }
    return edit;
}

Edit giveFindingReason(const Project& project, const base::Fault& finding, std::string reason,
                       ReviewContext context) {
    namespace labels = project::labels;
    Edit edit;
    const bool isRemoved = reason.empty();
    // What concerns the job as a whole has no subject.
    edit.label = finding.subject.empty()
                     ? project::label(isRemoved ? labels::kNoSigningReason : labels::kSigningReason)
                     : project::label(isRemoved ? labels::kNoFindingReason : labels::kFindingReason,
                                      {finding.subject});
    const project::FindingReason* before = nullptr;
    for (const project::FindingReason& candidate : project.findingReasons()) {
        if (candidate.code == finding.code() && candidate.subject == finding.subject) {
            before = &candidate;
        }
    }
    if (isRemoved) {
        if (before != nullptr) {
            edit.erase.push_back({project::RecordKind::FindingReason, before->id});
        }
        return edit;
    }
    project::FindingReason made;
    made.id = before != nullptr ? before->id : context.ids.next();
    made.code = finding.code();
    made.subject = finding.subject;
    made.reason = std::move(reason);
    made.person = std::move(context.person);
    made.time = context.now;
    edit.put.emplace_back(std::move(made));
    return edit;
}

project::Deficiency newDeficiency(const Project& project, std::optional<Id> branch, ReviewContext context) {
    project::Deficiency made;
    made.id = context.ids.next();
    made.number = project::nextDeficiencyNumber(project);
    made.branch = branch;
    made.raised = context.now;
    made.raisedBy = std::move(context.person);
    if (branch && project.lastRound() != nullptr) {
        const project::Reading* reading = countingReading(project, project.lastRound()->id, *branch);
        made.location = project.branches().at(*branch).serves;
        made.reading = reading != nullptr ? std::optional(reading->id) : std::nullopt;
    }
    return made;
}

Edit putDeficiency(project::Deficiency deficiency) {
    Edit edit;
    edit.label = project::label(project::labels::kDeficiency, {std::to_string(deficiency.number)});
    edit.put.emplace_back(std::move(deficiency));
    return edit;
}

}  // namespace ww::balancing
