#include "core/workbook/review_rules.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/project/names.h"
#include "core/project/review.h"

namespace ww::workbook {

namespace {

using base::Fault;
using project::Comment;
using project::Edit;
using project::Project;
using project::Round;
using project::RoundState;

enum class Step { Plain, Send, Decide, Withdraw, None };

Step stepOf(RoundState before, RoundState after) {
    using enum RoundState;
    if (before == after || (before == Open && after == Closed) || (before == Closed && after == Open) ||
        (before == SentBack && after == Closed)) {
        return Step::Plain;
    }
    if ((before == Closed || before == SentBack) && after == Sent) {
        return Step::Send;
    }
    if (before == Sent && (after == Accepted || after == SentBack)) {
        return Step::Decide;
    }
    const bool isBackwards = (before == Sent && after == Closed) ||
                             (before == Accepted && (after == Sent || after == SentBack || after == Closed));
    return isBackwards ? Step::Withdraw : Step::None;
}

class Review {
  public:
    Review(const Project& project, const Edit& edit) : m_before(project), m_edit(edit) {}

    std::optional<Fault> run() {
        for (const project::AnyRecord& record : m_edit.put) {
            if (const auto* round = std::get_if<Round>(&record)) {
                checkRound(*round);
            } else if (const auto* comment = std::get_if<Comment>(&record)) {
                checkComment(*comment);
            } else if (const auto* deficiency = std::get_if<project::Deficiency>(&record)) {
                checkNumber(*deficiency);
            }
        }
        return m_fault;
    }

  private:
    void refuse(const base::MessageForm& form, std::string subject, std::vector<std::string> arguments) {
        if (!m_fault) {
            m_fault = Fault{&form, std::move(subject), std::move(arguments)};
        }
    }
    /// A role given in the same edit counts.
    bool reviews(std::string_view name) const {
        if (project::reviews(m_before, name)) {
            return true;
        }
        return std::any_of(m_edit.put.begin(), m_edit.put.end(), [&](const project::AnyRecord& record) {
            const auto* person = std::get_if<project::Person>(&record);
            return person != nullptr && person->name == name &&
                   (person->role == project::PersonRole::Supervisor ||
                    person->role == project::PersonRole::Engineer);
        });
    }

    /// The names of those who may decide on a round, with commas between them.
    std::string decidersOf(const Round& round) const {
        std::string names;
        for (const project::Person* person : project::decidersOf(m_before, round)) {
            names += (names.empty() ? "" : ", ") + person->name;
        }
        return names;
    }

    void checkRound(const Round& after) {
        const Round* before = m_before.rounds().find(after.id);
        if (before == nullptr) {
            checkSurvey(after);
            return;
        }
        const std::string number = std::to_string(after.number);
        const std::string was(project::name(before->state));
        switch (stepOf(before->state, after.state)) {
            case Step::Plain:
                return;
            case Step::None:
                return refuse(kRoundStep, "", {number, was, std::string(project::name(after.state))});
            case Step::Withdraw:
                if (after.reason.empty()) {
                    refuse(kWithdrawWithReason, "", {number, was});
                }
                return;
            case Step::Send:
                if (after.sentBy.empty()) {
                    refuse(kSenderMissing, "", {number});
                }
                return;
            case Step::Decide:
                return checkDecision(after, number);
        }
    }
    void checkDecision(const Round& after, const std::string& number) {
        const std::string others = decidersOf(after);
        if (!reviews(after.decidedBy)) {
            others.empty() ? refuse(kDeciderWithoutRole, "", {after.decidedBy})
                           : refuse(kDeciderNotAtDesk, "", {after.decidedBy, others});
        } else if (project::tookPart(m_before, after, after.decidedBy)) {
            checkOwnDecision(after, number, others);
        }
        const std::vector<OpenComment> open = openComments(after.id);
        if (after.state == RoundState::Accepted && !open.empty()) {
            refuse(kAcceptCommentsOpen, "",
                   {number, std::to_string(open.size()), open.front().comment->text});
        }
        const auto isUnanswered = [&](const OpenComment& one) {
            return one.lastWord->person == one.comment->person || one.lastWord->person == after.decidedBy;
        };
        if (after.state == RoundState::SentBack && std::none_of(open.begin(), open.end(), isUnanswered)) {
            refuse(kSendBackWithComment, "", {number});
        }
    }
    /// One who read or sent a round decides on it only where the job has nobody else.
    void checkOwnDecision(const Round& after, const std::string& number, const std::string& others) {
        const bool isAlone = m_before.people().size() == 1;
        if (isAlone && after.state == RoundState::Accepted) {
            if (after.reason.empty()) {
                refuse(kAcceptAloneWithReason, "", {number, after.decidedBy});
            }
        } else if (others.empty()) {
            refuse(kNobodyElseDecides, "", {number, after.decidedBy});
        } else {
            refuse(after.decidedBy == after.sentBy ? kDeciderIsSender : kDeciderIsReader, "",
                   {number, after.decidedBy, others});
        }
    }
    /// A first comment that is not resolved, and the last answer to it, else itself.
    struct OpenComment {
        const Comment* comment = nullptr;
        const Comment* lastWord = nullptr;
    };
    /// Those on a round as this edit leaves them, in order of entry.
    std::vector<OpenComment> openComments(const base::Id& round) const {
        std::vector<const Comment*> asked;
        std::map<base::Id, const Comment*> lastWord;
        const auto take = [&](const Comment& comment) {
            if (comment.round != round) {
                return;
            }
            if (comment.answers) {
                lastWord[*comment.answers] = &comment;
                return;
            }
            const auto known = std::find_if(asked.begin(), asked.end(),
                                            [&](const Comment* one) { return one->id == comment.id; });
            (known == asked.end() ? asked.emplace_back() : *known) = &comment;
        };
        for (const Comment& comment : m_before.comments()) {
            take(comment);
        }
        for (const project::AnyRecord& record : m_edit.put) {
            if (const auto* comment = std::get_if<Comment>(&record)) {
                take(*comment);
            }
        }
        std::vector<OpenComment> open;
        for (const Comment* comment : asked) {
            if (!comment->isResolved) {
                const auto last = lastWord.find(comment->id);
                open.push_back({comment, last == lastWord.end() ? comment : last->second});
            }
        }
        return open;
    }

    void checkSurvey(const Round& round) {
        if (round.kind != project::RoundKind::Survey || round.state != RoundState::Open) {
            return;
        }
        const auto open = project::openMandatory(m_before);
        if (open.empty()) {
            return;
        }
        if (round.readiness.empty()) {
            refuse(kSurveyNotReady, "", {std::to_string(open.size()), open.front()->text});
            return;
        }
        const std::size_t colon = round.readiness.find(": ");
        const bool hasReason = colon != std::string::npos && colon + 2 < round.readiness.size();
        if (!hasReason || !reviews(std::string_view(round.readiness).substr(0, colon))) {
            refuse(kOverrideWithoutRole, "", {round.readiness});
        }
    }

    void checkComment(const Comment& after) {
        if (after.text.find_first_not_of(" \t\r\n") == std::string::npos) {
            refuse(kCommentEmpty, "", {});
        }
        if (const Comment* before = m_before.comments().find(after.id)) {
            Comment same = after;
            same.isResolved = before->isResolved;
            same.resolvedBy = before->resolvedBy;
            same.resolved = before->resolved;
            if (!(same == *before)) {
                refuse(kCommentStays, "", {});
            }
        }
        const Comment* answered = after.answers ? m_before.comments().find(*after.answers) : nullptr;
        if (answered != nullptr && answered->answers) {
            refuse(kAnswerToAnswer, "", {});
        }
    }

    void checkNumber(const project::Deficiency& deficiency) {
        const bool isTaken =
            !m_numbers.insert(deficiency.number).second ||
            std::any_of(m_before.deficiencies().begin(), m_before.deficiencies().end(),
                        [&](const project::Deficiency& other) {
                            return other.number == deficiency.number && other.id != deficiency.id;
                        });
        if (isTaken || deficiency.number < 1) {
            refuse(kDeficiencyNumber, "", {std::to_string(deficiency.number)});
        }
    }

    const Project& m_before;
    const Edit& m_edit;
    std::set<int> m_numbers;
    std::optional<Fault> m_fault;
};

}  // namespace

std::optional<Fault> reviewRefusal(const Project& project, const Edit& edit) {
    return Review(project, edit).run();
}

}  // namespace ww::workbook
