#include "core/balancing/detail/states_left_out.h"

#include <map>
#include <vector>

#include "core/estimation/learn_options.h"

namespace ww::balancing::detail {

namespace {

/// The states of one round but those that a round ended in: how many they are, and what was read there.
struct StatesWithin {
    std::map<std::size_t, std::size_t> readingsAfterMoves;
    std::size_t shutForMoment = 0;
    std::vector<Id> readings;

    void add(const TakenReading& taken) {
        readings.push_back(taken.reading);
        if (taken.isShutForMoment) {
            ++shutForMoment;
        } else {
            ++readingsAfterMoves[taken.movesBefore];
        }
    }
};

}  // namespace

std::unordered_set<Id> readingsLeftOut(const project::Project& project, const History& history,
                                       const LearnLoopOptions& options,
                                       std::optional<std::size_t> lastRound) {
    std::vector<bool> isEnd(history.moves.size() + 1, true);
    for (std::size_t i = 1; i < history.moves.size(); ++i) {
        isEnd[i] = history.moves[i - 1].round != history.moves[i].round;
    }
    std::vector<StatesWithin> within(project.rounds().size());
    std::vector<bool> isRead(project.rounds().size(), false);
    const auto add = [&](const TakenReading& taken) {
        isRead[taken.round] = true;
        if (taken.isStateKnown && (taken.isShutForMoment || !isEnd[taken.movesBefore])) {
            within[taken.round].add(taken);
        }
    };
    for (const TakenReading& taken : history.readings) {
        add(taken);
    }
    for (const TakenReading& taken : history.pumpReadings) {
        add(taken);
    }

    const auto order = project.roundsByNumber();
    const auto isAsked = [&](std::size_t round) {
        return !lastRound || project.rounds()[round].number <= project.rounds()[*lastRound].number;
    };
    const auto branches = static_cast<double>(project.branches().size());
    const std::size_t leastOfLarge = estimation::LearnOptions{}.leastSparseReadings;
    double large = 0;
    for (const std::size_t round : order) {
        large += isRead[round] && isAsked(round) ? 1 : 0;
    }
    double single = 0;
    std::unordered_set<Id> out;
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        if (!isAsked(*at)) {
            continue;
        }
        const StatesWithin& states = within[*at];
        double singleHere = static_cast<double>(states.shutForMoment);
        double largeHere = 0;
        for (const auto& [moves, readings] : states.readingsAfterMoves) {
            (readings < leastOfLarge ? singleHere : largeHere) += 1;
        }
        const double largeWith = large + largeHere;
        const bool isKept = (single + singleHere) * branches <= options.mostStatesRatio &&
                            (largeHere == 0 || largeWith * largeWith * branches <= kMostLearned);
        if (isKept) {
            single += singleHere;
            large = largeWith;
        } else {
            out.insert(states.readings.begin(), states.readings.end());
        }
    }
    return out;
}

}  // namespace ww::balancing::detail
