#include "core/workbook/round_steps.h"

#include <unordered_map>

namespace ww::workbook {

namespace {

using project::Round;
using project::RoundState;
using project::RoundStep;
using project::RoundStepKind;

/// How far a round is in its review: 0 not sent, 1 sent, 2 decided.
int stageOf(RoundState state) {
    switch (state) {
        case RoundState::Open:
        case RoundState::Closed:
            return 0;
        case RoundState::Sent:
            return 1;
        case RoundState::Accepted:
        case RoundState::SentBack:
            break;
    }
    return 2;
}

RoundStep decision(const Round& round) {
    const auto kind = round.state == RoundState::Accepted ? RoundStepKind::Accepted : RoundStepKind::SentBack;
    return {round.id, kind, round.decidedBy, round.decided, round.reason};
}

/// What leads from one version of a round to the next; `before` is null for the first that there is.
void addSteps(const Round* before, const Round& after, const JournalEntry& entry,
              std::vector<RoundStep>& steps) {
    const RoundState was = before != nullptr ? before->state : RoundState::Open;
    if (was == after.state) {
        return;
    }
    // One sent back begins anew: it is corrected and sent again.
    const int from = was == RoundState::SentBack && !entry.undoes ? 0 : stageOf(was);
    const int to = stageOf(after.state);
    if (to < from) {
        steps.push_back({after.id, RoundStepKind::Withdrawn, entry.person, entry.time, after.reason});
        return;
    }
    if (from == 0 && to > 0) {
        steps.push_back({after.id, RoundStepKind::Sent, after.sentBy, after.sent, {}});
    }
    if (to == 2) {
        steps.push_back(decision(after));
    }
}

}  // namespace

base::Result<std::vector<RoundStep>> roundSteps(const Workbook& workbook) {
    auto versions = workbook.historyOfAll(project::RecordKind::Round);
    if (!versions) {
        return versions.fault();
    }
    const std::vector<JournalEntry>& journal = workbook.journal();
    std::vector<RoundStep> steps;
    std::unordered_map<base::Id, Round> known;
    for (const auto& [ref, version] : *versions) {
        if (!version.record) {
            known.erase(ref.id);
            continue;
        }
        const Round& round = std::get<Round>(*version.record);
        const auto before = known.find(ref.id);
        if (workbook.project().rounds().contains(ref.id)) {
            addSteps(before != known.end() ? &before->second : nullptr, round,
                     journal.at(static_cast<std::size_t>(version.sequence - 1)), steps);
        }
        known.insert_or_assign(ref.id, round);
    }
    return steps;
}

}  // namespace ww::workbook
