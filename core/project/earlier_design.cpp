#include "core/project/earlier_design.h"

#include <algorithm>

namespace ww::project {

namespace {

const EarlierDesign* designFor(const Branch& branch, const Id& round) {
    const auto found = std::find_if(branch.earlierDesigns.begin(), branch.earlierDesigns.end(),
                                    [&](const EarlierDesign& design) { return design.round == round; });
    return found == branch.earlierDesigns.end() ? nullptr : &*found;
}

/// The design of a branch for a round; null: today's.
EarlierDesign designOf(const Branch& branch, const Round* round) {
    const EarlierDesign* then = round != nullptr ? designFor(branch, round->id) : nullptr;
    return then != nullptr ? *then : EarlierDesign{{}, true, branch.designFlow};
}

bool isSameFlow(const std::optional<Measured<VolumeFlow>>& one,
                const std::optional<Measured<VolumeFlow>>& other) {
    return one.has_value() == other.has_value() && (!one || one->value == other->value);
}

/// What one closed round is judged by and the next, or today (null), is not.
ChangeAfterRound changeBetween(const Project& project, const Round& round, const Round* next) {
    ChangeAfterRound change;
    change.round = round.number;
    if (project.hasEarlierDesigns()) {
        for (const std::size_t index : project.tree().walkingOrder()) {
            const Branch& branch = project.branches()[index];
            const EarlierDesign before = designOf(branch, &round);
            const EarlierDesign after = designOf(branch, next);
            if (after.isInLoop && (!before.isInLoop || !isSameFlow(before.designFlow, after.designFlow))) {
                change.designs.push_back({branch.id, before.isInLoop, before.designFlow, after.designFlow});
            }
        }
    }
    const Limits before = limitsFor(project, round);
    const Limits after = next != nullptr ? limitsFor(project, *next) : limitsOf(project.job());
    if (!(before == after)) {
        change.limits = std::pair(before, after);
    }
    return change;
}

}  // namespace

bool isInLoopOf(const Round& round, const Branch& branch) {
    const EarlierDesign* then = round.state != RoundState::Open ? designFor(branch, round.id) : nullptr;
    return then == nullptr || then->isInLoop;
}

Limits limitsOf(const Job& job) {
    return {job.toleranceLow, job.toleranceHigh, job.matchingBand};
}

Limits limitsFor(const Project& project, const Round& round) {
    if (round.toleranceLow && round.toleranceHigh && round.matchingBand) {
        return {*round.toleranceLow, *round.toleranceHigh, *round.matchingBand};
    }
    return limitsOf(project.job());
}

std::optional<Project> asJudged(const Project& project, const Round& round) {
    if (round.state == RoundState::Open) {
        return std::nullopt;  // it keeps nothing, and is asked at every key
    }
    std::optional<Project> then;
    const Limits limits = limitsFor(project, round);
    if (!(limits == limitsOf(project.job()))) {
        then = project;
        Job job = project.job();
        job.toleranceLow = limits.toleranceLow;
        job.toleranceHigh = limits.toleranceHigh;
        job.matchingBand = limits.matchingBand;
        then->put(std::move(job));
    }
    if (!project.hasEarlierDesigns()) {
        return then;
    }
    for (const Branch& branch : project.branches()) {
        if (const EarlierDesign* design = designFor(branch, round.id)) {
            Branch changed = branch;
            changed.isInLoop = design->isInLoop;
            changed.designFlow = design->designFlow;
            then = then ? std::move(then) : std::optional(project);
            then->put(std::move(changed));
        }
    }
    return then;
}

std::vector<ChangeAfterRound> changesAfterRounds(const Project& project) {
    std::vector<const Round*> closed;
    for (const std::size_t index : project.roundsByNumber()) {
        if (project.rounds()[index].state != RoundState::Open) {
            closed.push_back(&project.rounds()[index]);
        }
    }
    std::vector<ChangeAfterRound> changes;
    for (std::size_t i = 0; i < closed.size(); ++i) {
        const Round* next = i + 1 < closed.size() ? closed[i + 1] : nullptr;
        ChangeAfterRound change = changeBetween(project, *closed[i], next);
        if (!change.designs.empty() || change.limits) {
            changes.push_back(std::move(change));
        }
    }
    return changes;
}

}  // namespace ww::project
