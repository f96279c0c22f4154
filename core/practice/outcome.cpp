#include "core/practice/outcome.h"

#include <algorithm>
#include <cmath>

namespace ww::practice {

namespace {

/// A round in which no slip happens.
constexpr int kNoRound = 0;

double lowestOfDesignFraction(const Building& building, const std::vector<VolumeFlow>& design,
                              const TrueState& real) {
    double lowest = INFINITY;
    for (const std::size_t terminal : building.design().tree().terminals()) {
        lowest = std::min(lowest, real.flows[terminal] / design[terminal]);
    }
    return lowest;
}

/// Rise of the pump at the speed that brings the least supplied terminal to design.
std::optional<quantity::Head> headNeeded(const Building& building, const std::vector<VolumeFlow>& design,
                                         LoopState state, ReadingMoment moment) {
    // Flows grow nearly in proportion to speed, exactly so with square laws: a few corrections are enough.
    for (int i = 0; i < 12; ++i) {
        const TrueState real = building.stateAt(state, moment);
        const double lowest = lowestOfDesignFraction(building, design, real);
        if (lowest <= 0) {
            return std::nullopt;
        }
        if (std::abs(lowest - 1) < 1e-9) {
            return building.design().fluid().head(real.pumpRise);
        }
        state.speedFraction /= lowest;
    }
    return building.design().fluid().head(building.stateAt(state, moment).pumpRise);
}

}  // namespace

Outcome outcomeOf(const Building& building, const LoopState& state, int takenBefore) {
    ReadingMoment moment;
    moment.round = kNoRound;
    moment.takenBefore = takenBefore;
    const project::Project& project = building.design();
    const auto design = project::designFlows(project);
    const TrueState real = building.stateAt(state, moment);
    Outcome outcome;
    double trueTotal_m3s = 0;
    double indicatedTotal_m3s = 0;
    double designTotal_m3s = 0;
    const auto terminals = project.tree().terminals();
    for (const std::size_t terminal : terminals) {
        trueTotal_m3s += real.flows[terminal].si();
        indicatedTotal_m3s += building.indicatedFlow(state, real, terminal).si();
        designTotal_m3s += design[terminal].si();
    }
    for (const std::size_t terminal : terminals) {
        const double target = design[terminal].si() / designTotal_m3s;
        const double share = real.flows[terminal].si() / trueTotal_m3s;
        const double indicated = building.indicatedFlow(state, real, terminal).si() / indicatedTotal_m3s;
        outcome.worstTrue = std::max(outcome.worstTrue, Ratio::si(std::abs(share / target - 1)));
        outcome.worstIndicated =
            std::max(outcome.worstIndicated, Ratio::si(std::abs(indicated / target - 1)));
    }
    outcome.lowestOfDesign = Ratio::si(lowestOfDesignFraction(building, design, real));
    outcome.hasOpenMemberInEveryGroup = true;
    const auto weighGroup = [&](std::span<const std::size_t> members) {
        double lowest = INFINITY;
        double highest = -INFINITY;
        bool hasValve = false;
        bool isAnyOpen = false;
        for (const std::size_t member : members) {
            const double ofTarget =
                real.flows[member].si() / trueTotal_m3s / (design[member].si() / designTotal_m3s);
            lowest = std::min(lowest, ofTarget);
            highest = std::max(highest, ofTarget);
            const project::Branch& branch = project.branches()[member];
            if (const auto* characteristic = project.characteristicOf(branch)) {
                hasValve = true;
                const auto found = state.settings.find(branch.id);
                isAnyOpen = isAnyOpen || found == state.settings.end() ||
                            found->second >= characteristic->fullyOpen();
            }
        }
        if (!members.empty()) {
            outcome.spread = std::max(outcome.spread, Ratio::si(highest - lowest));
            outcome.hasOpenMemberInEveryGroup = outcome.hasOpenMemberInEveryGroup && (isAnyOpen || !hasValve);
        }
    };
    weighGroup(project.tree().roots());
    for (const std::size_t branch : project.tree().topDown()) {
        weighGroup(project.tree().children(branch));
    }
    outcome.headNeeded = headNeeded(building, design, state, moment);
    return outcome;
}

}  // namespace ww::practice
