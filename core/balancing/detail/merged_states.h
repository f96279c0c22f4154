// Rounds read valve by valve as one state each: which readings stand in the state that their round ended in,
// and how far that is from their own. For jobs in which every state by itself would be too many.
#pragma once

#include <stop_token>
#include <unordered_set>
#include <vector>

#include "core/balancing/detail/loop_fits.h"

namespace ww::balancing::detail {

/// Of all readings whose valve was shut when they were taken, or at the end of their round, the last that
/// keep their own state; the others are passed over.
inline constexpr std::size_t kMostOwnStates = 200;

/// Whether the states that readings were taken in are too many to be fitted each by itself
/// (LearnLoopOptions::mostStatesRatio).
bool hasManyStates(const project::Project& project, const History& history, const LearnLoopOptions& options);

class MergedStates {
  public:
    MergedStates(const project::Project& project, const History& history);

    /// Whether the reading stands in the state after endOf() moves instead of its own.
    bool isMoved(const TakenReading& taken) const {
        return taken.movesBefore < m_endOf[taken.round] && !m_keepState.contains(taken.reading);
    }
    bool isPassedOver(const TakenReading& taken) const { return m_passedOver.contains(taken.reading); }
    std::size_t endOf(std::size_t round) const { return m_endOf[round]; }
    std::size_t passedOver() const { return m_passedOver.size(); }

  private:
    std::vector<std::size_t> m_endOf;  ///< by round: moves done at its end; 0 without any
    std::unordered_set<Id> m_keepState;
    std::unordered_set<Id> m_passedOver;
};

/// Computes with these unknowns, by how much the loop made more at each moved reading in its own state than
/// in the one it stands in, and sets it (Observation::lnStateFactor). Gives the largest change of one, in
/// standard uncertainties of its reading. Every move is solved for. A stop leaves the rest as it was.
double setOffsets(const project::Project& project, const History& history, LoopLearning& loop,
                  LoopStates& states, const std::vector<double>& lnFactorOfUnknowns,
                  const std::stop_token& stop);

}  // namespace ww::balancing::detail
