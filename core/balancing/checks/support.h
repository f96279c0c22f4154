// What several checks ask: which valves were moved between two rounds and within one, whether the pumps
// changed, and the usual shape of a finding. Not for a check of its own.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/balancing/checks/check.h"
#include "core/balancing/checks/check_forms.h"
#include "core/balancing/detail/judgment.h"
#include "core/balancing/detail/pump_duty.h"
#include "core/balancing/detail/wording.h"
#include "core/balancing/history.h"

namespace ww::balancing::checks {

/// A finding about a branch; `reason` of its reading turns it into a note where `canBeExplained`.
Finding aboutBranch(const CheckContext& context, std::size_t branch, const base::MessageForm& form,
                    std::vector<std::string> arguments, Severity severity, bool canBeExplained = false);
enum class Turn { Unmoved, Opened, Closed, Unknown };
/// How a valve's standing setting changed since the round before; Unknown without one.
Turn turnOf(const CheckContext& context, std::size_t branch);
/// Whether a branch or any below it was not left as it was in the round before, by branch.
std::vector<bool> movedBelow(const CheckContext& context);
/// Whether speed, throttle or number of the pumps changed since the round before, as far as was read.
bool isPumpChanged(const CheckContext& context);
/// Whether a branch has one below it (or is one) that keeps its flow by itself, by branch.
std::vector<bool> selfActingBelow(const CheckContext& context);

/// The last move of a valve that happened in the course of the round: another setting than before in this
/// round, or a setting stored without a reading. A corrected setting is no move.
struct MoveInRound {
    int sequence = 0;
    std::optional<base::Instant> time;
};
/// By branch; nothing where the valve was not moved in the course of the round.
std::vector<std::optional<MoveInRound>> movesInRound(const CheckContext& context);

/// Adds the readings that the flow of a branch rests on: its own, else those of what it is the sum of.
void addReadingsBehind(const project::Project& project, const detail::RoundNumbers& numbers,
                       std::size_t branch, std::vector<Id>& found);
/// The valves that share a group's flow, by branch: those on the path to it and all below; every valve for
/// the group at the pump.
std::vector<bool> valvesAround(const project::Project& project, const GroupResult& group);

/// In which state of the loop readings were taken. A round without tries counts as set before it was read.
class ReadingStates {
  public:
    explicit ReadingStates(const project::Project& project) : m_project(project) {}
    /// Whether none of these valves (by branch) was moved between the first and the last of these readings;
    /// false where a reading is not known. `countsSpeed`: nor the speed of a pump changed.
    bool isUnmoved(const std::vector<Id>& readings, const std::vector<bool>& valves, bool countsSpeed);

  private:
    void make();

    const project::Project& m_project;
    std::optional<History> m_history;                       ///< made when something first asks
    std::vector<std::optional<std::size_t>> m_movesBefore;  ///< by index into Project::readings()
};

/// Whether the members of a group, and what else was read, were read in this round with no valve around them
/// moved in between: only then can they be held against each other.
bool isOfOneState(const CheckContext& context, const GroupResult& group, std::vector<Id> readings,
                  ReadingStates& states);

/// Flow now over flow in the round before, and its relative standard uncertainty from readings; nothing where
/// one is missing, zero, or only a range.
struct FlowRatio {
    double ratio = 1;
    double relativeUncertainty = 0;
};
std::optional<FlowRatio> flowRatio(const CheckContext& context, std::size_t branch);

/// Differences between two rounds below this stay unmentioned whatever the stated accuracy (common practice,
/// no source); above it, twice the standard uncertainty decides.
inline constexpr double kLeastChangeRatio = 0.01;
inline constexpr double kSignificantFactor = 2;

// The checks, one file each; check.h says what they get. The numbers are those of a usual list of automatic
// checks for a balance (common practice, no source).
void designSum(const CheckContext& context, std::vector<Finding>& found);
void designDp(const CheckContext& context, std::vector<Finding>& found);
void instrumentRange(const CheckContext& context, std::vector<Finding>& found);
void calibration(const CheckContext& context, std::vector<Finding>& found);
void staleReference(const CheckContext& context, std::vector<Finding>& found);
void referenceOpen(const CheckContext& context, std::vector<Finding>& found);
void indexPathOpen(const CheckContext& context, std::vector<Finding>& found);
void indexRival(const CheckContext& context, std::vector<Finding>& found);
void sumClosure(const CheckContext& context, std::vector<Finding>& found);
void groupSpread(const CheckContext& context, std::vector<Finding>& found);
void finalOffDesign(const CheckContext& context, std::vector<Finding>& found);
void pumpClosure(const CheckContext& context, std::vector<Finding>& found);
void pumpEfficiency(const CheckContext& context, std::vector<Finding>& found);
void pumpTestPoints(const CheckContext& context, std::vector<Finding>& found);
void motorLoad(const CheckContext& context, std::vector<Finding>& found);
void conductance(const CheckContext& context, std::vector<Finding>& found);
void roseOnClosing(const CheckContext& context, std::vector<Finding>& found);
void groupRoseOnClosing(const CheckContext& context, std::vector<Finding>& found);
void proportion(const CheckContext& context, std::vector<Finding>& found);
void surveyExtremes(const CheckContext& context, std::vector<Finding>& found);
void settingRange(const CheckContext& context, std::vector<Finding>& found);
void valveNoise(const CheckContext& context, std::vector<Finding>& found);
void finalOrder(const CheckContext& context, std::vector<Finding>& found);
void tooPerfect(const CheckContext& context, std::vector<Finding>& found);
void typedFlow(const CheckContext& context, std::vector<Finding>& found);
void clock(const CheckContext& context, std::vector<Finding>& found);
void zeroDrift(const CheckContext& context, std::vector<Finding>& found);
void copiedDigits(const CheckContext& context, std::vector<Finding>& found);
void lastDigits(const CheckContext& context, std::vector<Finding>& found);
void witness(const CheckContext& context, std::vector<Finding>& found);
void readinessOpen(const CheckContext& context, std::vector<Finding>& found);
void commentsOpen(const CheckContext& context, std::vector<Finding>& found);
void mixedUnits(const CheckContext& context, std::vector<Finding>& found);
void fluidCorrection(const CheckContext& context, std::vector<Finding>& found);
void selfActingInGroup(const CheckContext& context, std::vector<Finding>& found);

}  // namespace ww::balancing::checks
