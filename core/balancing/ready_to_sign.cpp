#include "core/balancing/ready_to_sign.h"

#include <algorithm>

#include "core/balancing/checks/check_forms.h"
#include "core/balancing/design_changes.h"
#include "core/balancing/index_proof.h"
#include "core/balancing/standing_readings.h"
#include "core/balancing/witness.h"
#include "core/base/term.h"
#include "core/project/earlier_design.h"
#include "core/project/names.h"
#include "core/project/review.h"

namespace ww::balancing {

namespace {

using project::Project;
using project::Round;

std::string countText(std::size_t count) {
    return std::to_string(count);
}

class Lines {
  public:
    explicit Lines(const Project& project) : m_project(project) {}

    void good(const base::MessageForm& form, std::vector<std::string> arguments = {}) {
        m_lines.push_back({{&form, "", std::move(arguments)}, SignState::Good, "", std::nullopt});
    }
    void blocks(const base::MessageForm& form, std::vector<std::string> arguments) {
        m_lines.push_back({{&form, "", std::move(arguments)}, SignState::Blocks, "", std::nullopt});
    }
    void blocks(base::Fault text, std::optional<Id> branch) {
        m_lines.push_back({std::move(text), SignState::Blocks, "", branch});
    }
    void needsReason(base::Fault text, std::optional<Id> branch = {}) {
        const project::FindingReason* reason = project::reasonFor(m_project, text.code(), text.subject);
        m_lines.push_back({std::move(text), reason == nullptr ? SignState::NeedsReason : SignState::Reasoned,
                           reason == nullptr ? "" : reason->reason, branch});
    }
    void reasoned(base::Fault text, std::string reason, std::optional<Id> branch) {
        m_lines.push_back({std::move(text), SignState::Reasoned, std::move(reason), branch});
    }
    void warns(const base::MessageForm& form, std::vector<std::string> arguments) {
        m_lines.push_back({{&form, "", std::move(arguments)}, SignState::Warns, "", std::nullopt});
    }
    std::vector<SignLine> take() { return std::move(m_lines); }

  private:
    const Project& m_project;
    std::vector<SignLine> m_lines;
};

void addReadings(const Project& project, const Assessment& assessment, Lines& lines) {
    if (!assessment.round || assessment.kind != project::RoundKind::Final) {
        lines.blocks(kSignNoFinal, {});
        return;
    }
    std::size_t missing = 0;
    for (const std::size_t terminal : project.tree().terminals()) {
        const project::Reading* reading =
            countingReading(project, *assessment.round, project.branches()[terminal].id);
        const bool hasAnswer =
            reading != nullptr && (reading->dp || reading->flow || !reading->reason.empty());
        missing += hasAnswer ? 0U : 1U;
    }
    if (missing > 0) {
        lines.blocks(kSignUnread, {countText(missing), countText(assessment.terminalCount)});
    } else {
        lines.good(kSignRead, {countText(assessment.terminalCount)});
    }
}

/// What the loop has, or should have, that the round could not know.
void addChanges(const Project& project, const Assessment& assessment, Lines& lines) {
    for (const base::Fault& change : changesSince(project, assessment.roundNumber)) {
        change.is(kBranchesAdded) || change.is(kDesignChanged) ? lines.needsReason(change)
                                                               : lines.warns(*change.form, change.arguments);
    }
}

/// A job that lists no people keeps no person with its readings.
void addPeople(const Project& project, const Assessment& assessment, Lines& lines) {
    if (!assessment.round || assessment.kind != project::RoundKind::Final || project.people().empty()) {
        return;
    }
    std::size_t standing = 0;
    std::size_t nobody = 0;
    for (const std::size_t index : project.readingsOf(*assessment.round)) {
        const project::Reading& reading = project.readings()[index];
        if (reading.status == project::ReadingStatus::Standing) {
            ++standing;
            nobody += reading.person ? 0U : 1U;
        }
    }
    if (nobody > 0) {
        lines.warns(kSignNobody, {countText(nobody), countText(standing)});
    }
}

/// What a round that is not accepted still waits for.
const base::MessageForm& waitsFor(project::RoundState state) {
    switch (state) {
        case project::RoundState::Open:
            return kSignFinalOpen;
        case project::RoundState::Sent:
            return kSignFinalSent;
        case project::RoundState::SentBack:
            return kSignFinalSentBack;
        case project::RoundState::Closed:
        case project::RoundState::Accepted:
            break;
    }
    return kSignFinalNotAccepted;
}

void addRounds(const Project& project, const Assessment& assessment, Lines& lines) {
    std::string others;
    std::string own;
    bool isIndependent = true;
    const auto addTo = [](std::string& list, int number) {
        list += (list.empty() ? "" : ", ") + std::to_string(number);
    };
    const Round* final = assessment.round ? project.rounds().find(*assessment.round) : nullptr;
    for (const std::size_t index : project.roundsByNumber()) {
        const Round& round = project.rounds()[index];
        if (&round != final && round.state != project::RoundState::Accepted) {
            addTo(others, round.number);
        }
        if (project::isSelfAccepted(project, round)) {
            isIndependent = false;
            if (round.reason.empty()) {
                addTo(own, round.number);
            } else {
                lines.warns(kSignOwnAcceptanceWhy,
                            {std::to_string(round.number), round.decidedBy, round.reason});
            }
        }
    }
    const bool isFinalAccepted = final != nullptr && final->state == project::RoundState::Accepted;
    if (final != nullptr && !isFinalAccepted) {
        lines.blocks(waitsFor(final->state), {std::to_string(final->number)});
    }
    if (!own.empty()) {
        lines.needsReason({&kSignOwnAcceptance, "", {own}});
    }
    if (!others.empty()) {
        lines.needsReason({&kSignRoundNotAccepted, "", {others}});
    } else if (isFinalAccepted && isIndependent) {
        lines.good(kSignRounds);
    }
}

void addVerdict(const Project& project, const Assessment& assessment, Lines& lines) {
    if (assessment.verdict == Verdict::Accepted) {
        if (indexProof(project, assessment).isProved()) {
            lines.good(kSignVerdict);
        } else {
            lines.warns(kSignVerdictUnproved, {});
        }
    } else {
        lines.needsReason({&kSignVerdictOpen,
                           "",
                           {assessment.verdict == Verdict::NotAccepted ? base::term("not within tolerance")
                                                                       : base::term("undecidable")}});
    }
}

bool isAboutRival(const Finding& finding) {
    return finding.fault.is(kIndexRival) || finding.fault.is(kIndexRivalUndecided);
}

/// As the report judges it: what is open passes, and what casts doubt on the circuit needs its reason.
void addIndex(const Project& project, const Assessment& assessment, Lines& lines) {
    const IndexProof proof = indexProof(project, assessment);
    if (!proof.isFullyOpen()) {
        lines.needsReason({&kSignIndexOpen, "", {}});
    } else if (proof.isAlone()) {
        lines.good(kSignIndex);
    } else {
        lines.warns(kSignPathOpen, {project.branches()[*assessment.index.terminal].tag});
    }
    for (const Finding& finding : assessment.findings) {
        if (isAboutRival(finding)) {
            lines.needsReason(finding.fault, finding.branch);
        }
    }
}

void addFindings(const Assessment& assessment, Lines& lines) {
    bool isClear = true;
    for (const Finding& finding : assessment.findings) {
        // Lines of their own tell these for the whole job.
        if (finding.fault.is(kCommentsOpen) || isAboutRival(finding)) {
            continue;
        }
        if (finding.fault.is(kFinalOffDesign)) {
            if (finding.severity == Severity::BlocksSignature) {
                lines.blocks(finding.fault, finding.branch);
                isClear = false;
            }
        } else if (finding.severity == Severity::BlocksSignature) {
            lines.needsReason(finding.fault, finding.branch);
            isClear = false;
        } else if (!finding.reason.empty()) {
            lines.reasoned(finding.fault, finding.reason, finding.branch);
        }
    }
    if (isClear) {
        lines.good(kSignFindings);
    }
}

void addComments(const Project& project, Lines& lines) {
    std::vector<const project::Comment*> open;
    for (const project::Comment& comment : project.comments()) {
        if (!comment.answers && !comment.isResolved) {
            open.push_back(&comment);
        }
    }
    if (open.empty()) {
        lines.good(kSignComments);
    } else {
        lines.blocks(kCommentsOpen, {countText(open.size()), open.front()->text});
    }
}

void addReadiness(const Project& project, const Assessment& assessment, Lines& lines) {
    if (project.readiness().empty()) {
        lines.needsReason({&kSignReadinessMissing, "", {}});
        return;
    }
    const auto open = project::openMandatory(project);
    if (open.empty()) {
        lines.good(kSignReadiness);
    } else if (assessment.kind != project::RoundKind::Final) {
        // Of a final round the check of that name tells it.
        lines.needsReason({&kReadinessOpen, "", {countText(open.size()), open.front()->text}});
    }
}

void addWitness(const Project& project, Lines& lines) {
    const Round* witness = nullptr;
    for (const std::size_t index : project.roundsByNumber()) {
        const Round& round = project.rounds()[index];
        if (round.kind == project::RoundKind::Witness && !round.sample.empty()) {
            witness = &round;
        }
    }
    if (witness == nullptr) {
        return;
    }
    const WitnessResult result = witnessResult(project, witness->id);
    const std::string all = countText(result.rows.size());
    if (result.unread > 0) {
        lines.blocks(kSignWitnessUnread, {countText(result.unread)});
    } else if (result.verdict == WitnessVerdict::NotConfirmed) {
        lines.needsReason({&kSignWitnessFailed, "", {countText(result.failing), all}});
    } else {
        lines.good(kSignWitness, {countText(result.rows.size() - result.failing), all});
    }
}

void addMerge(const Project& project, Lines& lines) {
    const auto open = std::count_if(
        project.mergeConflicts().begin(), project.mergeConflicts().end(),
        [](const project::MergeConflict& c) { return c.choice == project::ConflictChoice::Open; });
    if (open > 0) {
        lines.blocks(kSignMergeOpen, {std::to_string(open)});
    } else if (!project.mergeConflicts().empty()) {
        lines.good(kSignMerge);
    }
}

/// A form that was chosen, or half of the name, shows that the clause binds this job.
void addCode(const Project& project, Lines& lines) {
    const project::Job& job = project.job();
    const bool isBegun =
        job.codeForm != project::CodeForm::NotStated || !job.codeEdition.empty() || !job.codeClause.empty();
    if (isBegun && (job.codeEdition.empty() || job.codeClause.empty())) {
        lines.warns(kSignCodeUnnamed, {});
    }
}

void addDeficiencies(const Project& project, Lines& lines) {
    if (project.deficiencies().empty()) {
        return;
    }
    const auto open = std::count_if(project.deficiencies().begin(), project.deficiencies().end(),
                                    [](const project::Deficiency& d) {
                                        return d.status == project::DeficiencyStatus::Open ||
                                               d.status == project::DeficiencyStatus::Remedied;
                                    });
    lines.good(kSignDeficiencies, {countText(project.deficiencies().size()), std::to_string(open)});
}

}  // namespace

std::vector<SignLine> readyToSign(const Project& project, const Assessment& assessment) {
    Lines lines(project);
    const Round* round = assessment.round ? project.rounds().find(*assessment.round) : nullptr;
    const auto then = round != nullptr ? project::asJudged(project, *round) : std::nullopt;
    const Project& judged = then ? *then : project;
    addReadiness(project, assessment, lines);
    addReadings(judged, assessment, lines);
    addChanges(project, assessment, lines);
    addPeople(project, assessment, lines);
    addRounds(project, assessment, lines);
    addVerdict(judged, assessment, lines);
    addIndex(judged, assessment, lines);
    addFindings(assessment, lines);
    addCode(project, lines);
    addDeficiencies(project, lines);
    addComments(project, lines);
    addWitness(project, lines);
    addMerge(project, lines);
    return lines.take();
}

bool isReady(const std::vector<SignLine>& lines) {
    return std::none_of(lines.begin(), lines.end(), [](const SignLine& line) {
        return line.state == SignState::NeedsReason || line.state == SignState::Blocks;
    });
}

}  // namespace ww::balancing
