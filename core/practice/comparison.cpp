#include "core/practice/comparison.h"

#include <algorithm>

#include "core/balancing/history.h"
#include "core/balancing/learning/learned_loop.h"
#include "core/practice/classical.h"

namespace ww::practice {

namespace {

WorkDone workOf(const project::Project& project) {
    WorkDone work;
    work.rounds = static_cast<int>(project.rounds().size());
    for (const balancing::Move& move : balancing::history(project).moves) {
        work.moves += move.branch && !move.isJoining ? 1 : 0;
    }
    work.readings = static_cast<int>(
        std::count_if(project.readings().begin(), project.readings().end(),
                      [](const project::Reading& reading) { return reading.dp || reading.flow; }));
    work.readings += static_cast<int>(project.pumpReadings().size());
    return work;
}

void addLoss(std::vector<ComparedLoss>& losses, ComparedLoss loss,
             const std::optional<balancing::LearnedResistance>& learned, VolumeFlow flow) {
    if (loss.real.si() <= 0) {
        return;
    }
    if (learned) {
        loss.found = PressureDifference::si(learned->value.si() * flow.si() * flow.si());
        loss.foundUncertainty = learned->relativeSd;
        loss.isSeen = learned->isSeenByReadings;
    }
    losses.push_back(loss);
}

void addLosses(const Building& building, const project::Project& project, int readings, Comparison& out) {
    const balancing::LearnedLoop learned = balancing::learn(project);
    if (learned.branches.empty() && !learned.faults.empty()) {
        out.notLearned = learned.faults.front();
    }
    const project::Project& design = building.design();
    const auto flows = project::designFlows(design);
    for (std::size_t i = 0; i < design.branches().size(); ++i) {
        const project::Branch& branch = design.branches()[i];
        balancing::LearnedBranch found;
        if (project.branches().contains(branch.id)) {
            const std::size_t there = project.branches().indexOf(branch.id);
            if (there < learned.branches.size()) {
                found = learned.branches[there];
            }
        }
        ComparedLoss loss;
        loss.branch = i;
        if (branch.runLoss) {
            loss.isRun = true;
            loss.design = branch.runLoss->value;
            loss.real = building.truth().branches[i].runLoss;
            addLoss(out.losses, loss, found.run, building.runFlows()[i]);
        }
        if (branch.circuitLoss) {
            loss.isRun = false;
            loss.design = branch.circuitLoss->value;
            loss.real = building.circuitLossAfter(i, readings);
            addLoss(out.losses, loss, found.circuit, flows[i]);
        }
    }
}

}  // namespace

Comparison compare(const PracticeJob& job, const project::Project& project) {
    const Building& building = job.building();
    Comparison out;
    out.work = workOf(project);
    out.asFound = outcomeOf(building, LoopState{});
    const project::Round* last = project.lastRound();
    const LoopState now = last != nullptr ? job.notedState(project, last->id) : LoopState{};
    out.now = outcomeOf(building, now, out.work.readings);
    if (out.asFound.headNeeded && out.now.headNeeded) {
        out.headSaved = *out.asFound.headNeeded - *out.now.headNeeded;
    }
    const ClassicalGame game = playClassical(building);
    out.classical = game.passes.back().outcome;
    out.classicalWork = {static_cast<int>(game.passes.size()), game.passes.back().moves,
                         game.passes.back().readings};
    out.faults = building.truth().faults;
    addLosses(building, project, out.work.readings, out);
    return out;
}

}  // namespace ww::practice
