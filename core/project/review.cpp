#include "core/project/review.h"

#include <algorithm>

namespace ww::project {

namespace {

bool isReviewer(const Person& person) {
    return person.role == PersonRole::Supervisor || person.role == PersonRole::Engineer;
}

}  // namespace

bool reviews(const Project& project, std::string_view person) {
    return std::any_of(project.people().begin(), project.people().end(), [&](const Person& candidate) {
        return isReviewer(candidate) && candidate.name == person;
    });
}

bool tookPart(const Project& project, const Round& round, std::string_view person) {
    const auto isOfPerson = [&](const auto& reading) {
        const Person* reader = reading.person ? project.people().find(*reading.person) : nullptr;
        return reader != nullptr && reader->name == person;
    };
    const auto& read = project.readingsOf(round.id);
    return person == round.sentBy ||
           std::any_of(read.begin(), read.end(),
                       [&](std::size_t index) { return isOfPerson(project.readings()[index]); }) ||
           std::any_of(
               project.pumpReadings().begin(), project.pumpReadings().end(),
               [&](const PumpReading& reading) { return reading.round == round.id && isOfPerson(reading); });
}

std::vector<int> roundsTakenPartIn(const Project& project, std::string_view person) {
    std::vector<int> numbers;
    for (const std::size_t index : project.roundsByNumber()) {
        if (tookPart(project, project.rounds()[index], person)) {
            numbers.push_back(project.rounds()[index].number);
        }
    }
    return numbers;
}

OwnPart ownPart(const Project& project, const SignedReport& signature) {
    OwnPart part;
    if (signature.role == "supervisor") {
        for (const int number : roundsTakenPartIn(project, signature.signer)) {
            part.rounds += (part.rounds.empty() ? "" : ", ") + std::to_string(number);
        }
    }
    const auto& all = project.signedReports();
    part.hasBothRoles = std::any_of(all.begin(), all.end(), [&](const SignedReport& other) {
        const bool isSameKey = !other.certificate.empty() && other.certificate == signature.certificate;
        return !other.isWithdrawn && other.revision == signature.revision && other.role != signature.role &&
               (isSameKey || other.signer == signature.signer);
    });
    return part;
}

std::vector<const Person*> decidersOf(const Project& project, const Round& round) {
    std::vector<const Person*> deciders;
    for (const Person& person : project.people()) {
        if (isReviewer(person) && !tookPart(project, round, person.name)) {
            deciders.push_back(&person);
        }
    }
    return deciders;
}

bool isSelfAccepted(const Project& project, const Round& round) {
    return round.state == RoundState::Accepted && !round.decidedBy.empty() &&
           tookPart(project, round, round.decidedBy);
}

std::optional<Id> lastReader(const Project& project) {
    for (std::size_t i = project.readings().size(); i > 0; --i) {
        const Reading& reading = project.readings()[i - 1];
        if (reading.person && project.people().contains(*reading.person)) {
            return reading.person;
        }
    }
    return std::nullopt;
}

const Round* roundInHand(const Project& project) {
    const Round* last = project.lastRound();
    return last != nullptr && last->state == RoundState::Open ? last : nullptr;
}

const Round* lastOwnRound(const Project& project, std::optional<int> upTo) {
    const auto order = project.roundsByNumber();
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        const Round& round = project.rounds()[*at];
        if (round.kind != RoundKind::Witness && (!upTo || round.number <= *upTo)) {
            return &round;
        }
    }
    return nullptr;
}

std::vector<const ReadinessLine*> openMandatory(const Project& project) {
    std::vector<const ReadinessLine*> open;
    for (const ReadinessLine& line : project.readiness()) {
        if (line.isMandatory && line.state == ReadinessState::Open) {
            open.push_back(&line);
        }
    }
    std::stable_sort(open.begin(), open.end(), [](const ReadinessLine* a, const ReadinessLine* b) {
        return a->position < b->position;
    });
    return open;
}

std::optional<Instant> beginOf(const Project& project, const Id& round) {
    std::optional<Instant> earliest;
    for (const std::size_t index : project.readingsOf(round)) {
        const std::optional<Instant>& time = project.readings()[index].time;
        if (time && (!earliest || *time < *earliest)) {
            earliest = time;
        }
    }
    return earliest ? earliest : project.rounds().at(round).opened;
}

std::vector<const Comment*> openComments(const Project& project, const Id& round) {
    std::vector<const Comment*> open = openComments(project);
    std::erase_if(open, [&](const Comment* comment) { return comment->round != round; });
    return open;
}

std::vector<const Comment*> openComments(const Project& project) {
    std::vector<const Comment*> open;
    for (const Comment& comment : project.comments()) {
        if (!comment.answers && !comment.isResolved) {
            open.push_back(&comment);
        }
    }
    if (open.empty()) {
        return open;
    }
    const auto order = project.tree().walkingOrder();
    const auto rank = [&](const Comment* comment) {
        if (!comment->branch || !project.branches().contains(*comment->branch)) {
            return order.size();
        }
        const auto at = std::find(order.begin(), order.end(), project.branches().indexOf(*comment->branch));
        return static_cast<std::size_t>(at - order.begin());
    };
    std::stable_sort(open.begin(), open.end(),
                     [&](const Comment* a, const Comment* b) { return rank(a) < rank(b); });
    return open;
}

std::vector<const Comment*> answersTo(const Project& project, const Id& comment) {
    std::vector<const Comment*> answers;
    for (const Comment& candidate : project.comments()) {
        if (candidate.answers == comment) {
            answers.push_back(&candidate);
        }
    }
    return answers;
}

std::vector<const Comment*> unansweredComments(const Project& project, const Id& id) {
    const Round& round = project.rounds().at(id);
    std::vector<const Comment*> waiting = openComments(project, id);
    std::erase_if(waiting, [&](const Comment* comment) {
        const auto answers = answersTo(project, comment->id);
        const Comment* last = answers.empty() ? comment : answers.back();
        return round.state != RoundState::SentBack || last->person != round.decidedBy;
    });
    return waiting;
}

int nextDeficiencyNumber(const Project& project) {
    int highest = 0;
    for (const Deficiency& deficiency : project.deficiencies()) {
        highest = std::max(highest, deficiency.number);
    }
    return highest + 1;
}

bool hasDeficiency(const Project& project, const Id& branch) {
    return std::any_of(project.deficiencies().begin(), project.deficiencies().end(),
                       [&](const Deficiency& deficiency) { return deficiency.branch == branch; });
}

const FindingReason* reasonFor(const Project& project, std::string_view code, std::string_view subject) {
    for (const FindingReason& reason : project.findingReasons()) {
        if (reason.code == code && reason.subject == subject && !reason.reason.empty()) {
            return &reason;
        }
    }
    return nullptr;
}

}  // namespace ww::project
