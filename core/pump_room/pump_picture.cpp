#include "core/pump_room/pump_picture.h"

#include "core/balancing/assess.h"
#include "core/balancing/learning/model_findings.h"

namespace ww::pump_room {

namespace {

bool isTooLarge(const project::Project& project) {
    return project.tree().terminals().size() > balancing::kMostTerminalsToCompare;
}

}  // namespace

balancing::Resistances usableResistances(const project::Project& project,
                                         const balancing::LearnedLoop& loop) {
    const bool isGood = loop.outcome == balancing::LoopLearnOutcome::Learned && !loop.isMisfit;
    return isGood && !isTooLarge(project) ? loop.resistances : balancing::Resistances{};
}

balancing::Resistances learnedResistances(const project::Project& project) {
    if (project.rounds().empty() || isTooLarge(project)) {
        return {};
    }
    return usableResistances(project, balancing::learn(project));
}

std::optional<std::size_t> indexTerminal(const project::Project& project, const PumpDecision& decision) {
    if (!decision.throttling.indexPath.empty()) {
        return decision.throttling.indexPath.back();
    }
    for (const RequiredHead& required : decision.required) {
        if (!required.indexPath.empty() && project.tree().isTerminal(required.indexPath.back())) {
            return required.indexPath.back();
        }
    }
    return std::nullopt;
}

CircuitComparison circuitOf(const project::Project& project, std::size_t terminal,
                            const balancing::Resistances& learned) {
    return compareSides(project, terminal, balancing::stateOfLastRound(project), learned);
}

PumpDecisionOptions decisionOptions(const project::Project& project, const balancing::Resistances& learned,
                                    std::vector<Id> running) {
    PumpDecisionOptions options;
    options.learned = learned;
    options.running = std::move(running);
    for (const project::SetPoint& setPoint : project.setPoints()) {
        const project::Pump* pump = setPoint.pump ? project.pumps().find(*setPoint.pump) : nullptr;
        if (pump != nullptr && pump->isRunning && pump->hasDrive && setPoint.dp) {
            options.partLoad = energy::PartLoad::HoldsHead;
            options.heldHead = project.fluid().head(setPoint.dp->value);
        }
    }
    return options;
}

PumpPicture pumpPicture(const project::Project& project, const balancing::Resistances& learned) {
    PumpPicture out;
    out.learned = learned;
    out.decision = decidePump(project, decisionOptions(project, learned));
    out.readAndSet = compareReadAndSet(project, out.decision, learned);
    out.sheets = pumpSheets(project);
    if (const auto terminal = indexTerminal(project, out.decision)) {
        out.circuit = circuitOf(project, *terminal, learned);
        out.circuit->isIndex = true;
    }
    out.devices = deviceList(project);
    out.setPoints = setPointSheets(project, balancing::assessLast(project, {.byDesignOfToday = true}));
    return out;
}

}  // namespace ww::pump_room
