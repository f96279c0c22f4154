#include <algorithm>

#include "core/base/term.h"
#include "core/project/merge_reason.h"
#include "core/project/names.h"
#include "core/project/review.h"
#include "core/report/detail/record_words.h"
#include "core/report/detail/sections.h"

namespace ww::report::detail {
namespace {

/// The reason of the decision that stands; where none does, that of the step that took the last one back.
Cell reasonCell(const project::Round& round) {
    std::vector<base::Fault> parts{reasonPart(round.reason)};
    if (round.decidedBy.empty()) {
        parts.insert(parts.begin(), word(base::term("withdrawn or sent back")));
    }
    return cell(std::move(parts), ": ");
}

Table reviewTable(const Source& source) {
    Table table;
    table.title = say(kReviewTable);
    table.columns = {column(kRoundColumn, 14),  column(kKindColumn, 18), column(kStateColumn, 18),
                     column(kClosedColumn, 36), column(kSentColumn, 40), column(kDecidedColumn, 40),
                     column(kReasonColumn, 32)};
    for (const base::Id& id : source.walked) {
        const project::Round& round = source.project.rounds().at(id);
        table.rows.push_back(
            {cell(std::to_string(round.number)), wordCell(std::string(project::name(round.kind))),
             wordCell(std::string(project::name(round.state))), cell(timeText(round.closed)),
             cell(whoWhen(round.sentBy, round.sent)), cell(whoWhen(round.decidedBy, round.decided)),
             round.reason.empty() ? cell("") : reasonCell(round)});
    }
    return table;
}

std::string stepWord(project::RoundStepKind kind) {
    switch (kind) {
        case project::RoundStepKind::Sent:
            return base::term("sent");
        case project::RoundStepKind::Accepted:
            return base::term("accepted");
        case project::RoundStepKind::SentBack:
            return base::term("sent back");
        case project::RoundStepKind::Withdrawn:
            break;
    }
    return base::term("withdrawn");
}

/// What was decided before what stands: a round may be sent back and withdrawn more than once.
Table stepsTable(const Source& source) {
    Table table;
    table.title = say(kStepsTable);
    table.columns = {column(kRoundColumn, 14, Alignment::Right), column(kStepColumn, 24),
                     column(kTimeColumn, 40), column(kPersonColumn, 40), column(kReasonColumn, 76)};
    for (const base::Id& round : source.walked) {
        for (const project::RoundStep& step : source.steps) {
            if (step.round != round) {
                continue;
            }
            table.rows.push_back({cell(std::to_string(source.roundNumber(step.round))),
                                  wordCell(stepWord(step.kind)), cell(timeText(step.time)), cell(step.person),
                                  step.reason.empty() ? cell("") : cell({reasonPart(step.reason)}, "")});
        }
    }
    return table;
}

/// The reasons that were given on the way to the signature, each with what it is about.
Table standingTable(const Source& source) {
    Table table;
    table.title = say(kStandingTable);
    table.columns = {column(kWhatColumn, 74), column(kReasonColumn, 60), column(kPersonColumn, 30),
                     column(kTimeColumn, 36)};
    for (const balancing::SignLine& line : standingLines(source)) {
        std::vector<base::Fault> what{{line.text.form, {}, line.text.arguments}};
        if (!line.text.subject.empty()) {
            what.insert(what.begin(), plain(line.text.subject));
        }
        const project::FindingReason* given =
            project::reasonFor(source.project, line.text.code(), line.text.subject);
        table.rows.push_back({cell(std::move(what), ": "), cell({reasonPart(line.reason)}, ""),
                              cell(given == nullptr ? "" : given->person),
                              cell(given == nullptr ? "" : timeText(given->time))});
    }
    return table;
}

/// That a report was withdrawn and why; the reason stands beside where it is a sentence of the program.
Cell withdrawnCell(const std::string& reason) {
    const auto merged = project::readMergeReason(reason);
    return merged ? cell({word(base::term("withdrawn")), *merged}, ": ")
                  : cell({say(kWithdrawn, {reason})}, "");
}

Table signaturesTable(const std::vector<const project::SignedReport*>& all) {
    constexpr std::size_t kShown = 16;
    Table table;
    table.title = say(kSignaturesTable);
    table.columns = {column(kRevisionColumn, 10, Alignment::Right),
                     column(kRoleColumn, 22),
                     column(kSignerColumn, 30),
                     column(kTimeColumn, 36),
                     column(kCertificateColumn, 34),
                     column(kFileColumn, 40),
                     column(kStatusColumn, 32)};
    for (const project::SignedReport* report : all) {
        table.rows.push_back(
            {cell(std::to_string(report->revision)), wordCell(report->role), cell(report->signer),
             cell(timeText(report->time)),
             report->isSelfMade ? cell({say(kSelfMade, {report->certificate.substr(0, kShown)})}, "")
                                : cell(report->certificate.substr(0, kShown)),
             cell(report->fileName),
             report->isWithdrawn ? withdrawnCell(report->reason) : wordCell(base::term("superseded"))});
    }
    return table;
}

/// The highest revision that was signed, of those below `limit`; 0: none.
int highestSigned(const Source& source, std::optional<int> limit = {}) {
    int highest = 0;
    for (const project::SignedReport& report : source.project.signedReports()) {
        highest = !limit || report.revision < *limit ? std::max(highest, report.revision) : highest;
    }
    return highest;
}

/// Who signed a revision, each once, with commas between them.
std::string signersOf(const Source& source, int revision) {
    std::vector<std::string> names;
    for (const project::SignedReport& report : source.project.signedReports()) {
        const bool isNew = std::find(names.begin(), names.end(), report.signer) == names.end();
        if (report.revision == revision && !report.isWithdrawn && isNew) {
            names.push_back(report.signer);
        }
    }
    std::string text;
    for (const std::string& name : names) {
        text += (text.empty() ? "" : ", ") + name;
    }
    return text;
}

}  // namespace

int revisionOf(const Source& source) {
    return source.copyOf ? *source.copyOf : highestSigned(source) + 1;
}

std::string dataDigest(const Source& source, const std::string& newest) {
    for (const project::SignedReport& report : source.project.signedReports()) {
        if (report.revision == source.copyOf && !report.isWithdrawn) {
            return report.journalDigest;
        }
    }
    return newest;
}

std::optional<int> supersededBy(const Source& source) {
    const int before = highestSigned(source, source.copyOf);
    return before > 0 ? std::optional(before) : std::nullopt;
}

Statement revisionStatement(const Source& source) {
    const std::string number = std::to_string(revisionOf(source));
    if (source.copyOf) {
        return say(kRevisionCopy, {number, signersOf(source, *source.copyOf)});
    }
    const std::optional<int> before = supersededBy(source);
    return before ? say(kRevisionLater, {number, std::to_string(*before)}) : say(kRevisionFirst, {number});
}

Section revisionsSection(const Source& source) {
    Section section;
    section.number = kRevisions;
    section.title = say(kRevisionsTitle);
    std::vector<const project::SignedReport*> all;
    for (const project::SignedReport& report : source.project.signedReports()) {
        all.push_back(&report);
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const auto* a, const auto* b) { return a->revision < b->revision; });
    section.statements.push_back(revisionStatement(source));
    if (!source.walked.empty()) {
        section.tables.push_back(reviewTable(source));
    }
    if (Table steps = stepsTable(source); !steps.rows.empty()) {
        section.tables.push_back(std::move(steps));
    }
    if (Table standing = standingTable(source); !standing.rows.empty()) {
        section.tables.push_back(std::move(standing));
    }
    if (all.empty()) {
        section.closing.push_back(say(kNoSignatures));
    } else {
        section.tables.push_back(signaturesTable(all));
        for (const project::SignedReport* report : all) {
            const project::OwnPart own = project::ownPart(source.project, *report);
            const std::string revision = std::to_string(report->revision);
            if (!own.rounds.empty()) {
                section.closing.push_back(say(kReviewOfOwn, {revision, report->signer, own.rounds}));
            }
            // Told once, beside the second of the two.
            if (own.hasBothRoles && report->role == "supervisor" && !report->isWithdrawn) {
                section.closing.push_back(say(kSignedBoth, {revision, report->signer}));
            }
        }
    }
    return section;
}

}  // namespace ww::report::detail
