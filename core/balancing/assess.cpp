#include "core/balancing/assess.h"

#include <algorithm>

#include "core/balancing/checks/check.h"
#include "core/balancing/checks/check_forms.h"
#include "core/balancing/detail/judgment.h"
#include "core/balancing/detail/pump_duty.h"
#include "core/project/earlier_design.h"
#include "core/project/review.h"

namespace ww::balancing {

namespace {

using detail::RoundNumbers;
using project::Project;

std::vector<bool> findDoubts(const Project& project, const RoundNumbers& numbers, const RoundMemory* memory,
                             std::vector<Finding>& findings) {
    std::vector<bool> isDoubtful(numbers.branches.size(), false);
    for (std::size_t i = 0; i < numbers.branches.size(); ++i) {
        const auto* kept = memory != nullptr ? memory->doubts(i) : nullptr;
        auto found = kept != nullptr ? *kept : detail::doubts(project, numbers, i);
        isDoubtful[i] = std::any_of(found.begin(), found.end(),
                                    [](const Finding& f) { return f.severity != Severity::Note; });
        std::move(found.begin(), found.end(), std::back_inserter(findings));
    }
    return isDoubtful;
}

/// Whether a terminal belongs to the round: all do, but of a witness round only its sample.
bool belongs(const project::Round* round, const base::Id& branch) {
    return round == nullptr || round->sample.empty() ||
           std::any_of(round->sample.begin(), round->sample.end(),
                       [&](const project::SampleRow& row) { return row.branch == branch; });
}

/// Whether a terminal was read, or the reason is told why not.
bool isTold(const detail::BranchReadings& readings) {
    return readings.hasValue() || (readings.counting != nullptr && !readings.counting->reason.empty());
}

/// The pumps of a round; the sum of the terminals is their flow where all of them are told.
std::vector<PumpDuty> pumpsOf(const Project& project, const RoundNumbers& numbers) {
    const auto& terminals = project.tree().terminals();
    const bool isComplete = std::all_of(terminals.begin(), terminals.end(), [&](std::size_t terminal) {
        return isTold(numbers.readings[terminal]);
    });
    return detail::pumpDuties(project, *numbers.round, isComplete ? numbers.total : std::nullopt);
}

/// Runs every check; gives the findings whose errors count for the verdict by index.
std::vector<std::size_t> runChecks(const Project& project, const RoundNumbers& numbers,
                                   const RoundNumbers* before, Assessment& out) {
    std::vector<std::size_t> judging;
    std::vector<PumpDuty> pumpsBefore;
    if (before != nullptr) {
        pumpsBefore = pumpsOf(project, *before);
    }
    const checks::CheckContext context{project, *numbers.round, numbers,
                                       before,  out.pumps,      before != nullptr ? &pumpsBefore : nullptr};
    for (const checks::Check& check : checks::allChecks()) {
        const std::size_t first = out.findings.size();
        check.run(context, out.findings);
        for (std::size_t i = first; check.about == checks::About::Readings && i < out.findings.size(); ++i) {
            judging.push_back(i);
        }
    }
    return judging;
}

/// A reason given for a finding that blocks signature makes it one that is only told; but what is wrong with
/// the installation belongs on the list of deficiencies.
void takeReasons(const Project& project, std::vector<Finding>& findings) {
    for (Finding& finding : findings) {
        const project::FindingReason* reason =
            finding.severity == Severity::BlocksSignature
                ? project::reasonFor(project, finding.fault.code(), finding.fault.subject)
                : nullptr;
        if (reason != nullptr) {
            finding.severity = finding.fault.is(kFinalOffDesign) ? finding.severity : Severity::Note;
            finding.reason = reason->reason;
        }
    }
}

void countTerminals(const Project& project, const RoundNumbers& numbers, Assessment& out) {
    out.isComplete = true;
    for (const std::size_t terminal : project.tree().terminals()) {
        const BranchResult& result = numbers.branches[terminal];
        const detail::BranchReadings& readings = numbers.readings[terminal];
        if (!belongs(numbers.round, project.branches()[terminal].id)) {
            continue;
        }
        ++out.terminalCount;
        out.readCount += readings.hasValue() ? 1U : 0U;
        out.onShareCount += result.state == State::OnShare ? 1U : 0U;
        out.isComplete = out.isComplete && isTold(readings);
        if (result.readAt && (!out.oldestReading || *result.readAt < *out.oldestReading)) {
            out.oldestReading = result.readAt;
        }
    }
    out.isComplete = out.isComplete && out.terminalCount > 0;
}

Assessment judged(const Project& today, const project::Round* round, AssessOptions options) {
    const auto then =
        round != nullptr && !options.byDesignOfToday ? project::asJudged(today, *round) : std::nullopt;
    const Project& project = then ? *then : today;
    const auto lookBack = options.fillGaps ? detail::LookBack::ToFillGaps : detail::LookBack::ToCompare;
    RoundNumbers numbers = options.memory != nullptr && round != nullptr
                               ? options.memory->now(project, *round, lookBack)
                               : detail::roundNumbers(project, round, lookBack);
    Assessment out;
    if (round != nullptr) {
        out.round = round->id;
        out.roundNumber = round->number;
        out.kind = round->kind;
        out.pumps = pumpsOf(project, numbers);
    }
    const std::vector<bool> isDoubtful =
        findDoubts(project, numbers, round != nullptr ? options.memory : nullptr, out.findings);
    detail::Before before(today, round, options.memory);
    detail::fillStates(project, numbers, before, isDoubtful);
    countTerminals(project, numbers, out);
    std::vector<std::size_t> judging;
    if (round != nullptr && !options.numbersOnly) {
        judging = runChecks(project, numbers, before.numbers(), out);
    }
    std::vector<const Finding*> judgingFindings;
    for (const std::size_t index : judging) {
        judgingFindings.push_back(&out.findings[index]);
    }
    detail::fillVerdict(project, numbers, judgingFindings, out);
    takeReasons(project, out.findings);
    std::stable_sort(out.findings.begin(), out.findings.end(),
                     [](const Finding& a, const Finding& b) { return a.severity > b.severity; });
    for (const GroupResult& group : numbers.groups) {
        if (group.spread && (!out.spread || *group.spread > *out.spread)) {
            out.spread = group.spread;
        }
    }
    out.totalFlow = numbers.total;
    out.totalDesign = numbers.totalDesign;
    out.branches = std::move(numbers.branches);
    out.groups = std::move(numbers.groups);
    out.index = std::move(numbers.index);
    return out;
}

}  // namespace

Assessment assess(const Project& project, const base::Id& round, AssessOptions options) {
    return judged(project, &project.rounds().at(round), options);
}

Assessment assessAsShown(const Project& project, const base::Id& round, AssessOptions options) {
    options.fillGaps = project.rounds().at(round).state == project::RoundState::Open;
    return assess(project, round, options);
}

Assessment assessLast(const Project& project, AssessOptions options) {
    return judged(project, project::lastOwnRound(project), options);
}

}  // namespace ww::balancing
