// The job as it went: which valve stood where when each reading was taken, from the sequence of entry.
// Not for what the readings mean (learning/) nor for whether they are fresh (stale_reference.h).
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/balancing/hydraulic_model.h"

namespace ww::balancing {

/// When the settings that a round names were made.
enum class RoundOrder {
    SetBefore,  ///< before the round: all valves were set, then all were read
    AsRead,     ///< each with its own reading: valve after valve was set and read
};

/// A valve was moved, the speed of the pumps was changed, or a branch was joined to the loop.
struct Move {
    std::size_t round = 0;              ///< index into Project::rounds()
    std::optional<std::size_t> branch;  ///< index into Project::branches(); nothing: the pumps' speed
    std::optional<Setting> from;
    std::optional<Setting> to;
    std::optional<std::size_t> pump;  ///< index into Project::pumps(), of a change of speed
    double speedFractionFrom = 1.0;
    double speedFractionTo = 1.0;
    std::optional<Id> reading;  ///< that says so; of a branch, or of a pump
    bool isJoining = false;     ///< the branch was shut off before: it came after the rounds before this one
};

/// A standing reading with a value, and the state it was taken in.
struct TakenReading {
    Id reading;
    std::size_t round = 0;
    std::size_t movesBefore = 0;  ///< moves done before it: equal numbers mean the same state
    /// The valve was shut for a moment to take it; it stands where it stood before and after.
    bool isShutForMoment = false;
    /// The state is known. Not so of a pump reading without a time in a round in which valves were moved.
    bool isStateKnown = true;
};

struct History {
    /// Before the first round, by index into Project::branches(): its own setting, else fully open; nothing
    /// where the valve has no table.
    std::vector<std::optional<quantity::Setting>> settingsAtStart;
    double speedFractionAtStart = 1.0;  ///< of the pumps, fraction of rated speed
    std::vector<Id> notInLoopAtStart;   ///< shut off there: branches that came later, without what they feed
    std::vector<Move> moves;
    std::vector<TakenReading> readings;      ///< of branches, in order
    std::vector<TakenReading> pumpReadings;  ///< likewise
    std::vector<RoundOrder> orders;          ///< as used, by index into Project::rounds()
};

/// How a round is understood without further evidence: an adjusting round as read, any other set before.
RoundOrder usualOrder(const project::Round& round);
/// Whether the record itself says that valve after valve was set and read: tries were logged in the round.
bool isReadValveByValve(const project::Project& project, const project::Round& round);

/// Rounds in order of number, readings in order of sequence, pump readings among them by their times (without
/// times first). A setting recorded with a reading holds from then on, but for the moment in which a valve
/// was shut to read what is available there. Where a round was set before it was read, the first setting it
/// names for a branch holds from its beginning. A round in which tries were logged was read valve by valve.
/// Of a pump only readings that it ran through count, in the loop as it stands. Readings that are superseded
/// or struck move nothing. A setting off the valve's table is no move. A branch that came
/// after a round was closed is shut off until the first round that it belongs to, at the latest until now.
/// `orders` by index into Project::rounds(); rounds beyond its end are understood as usual.
History history(const project::Project& project, std::span<const RoundOrder> orders = {});

/// Carries a move out in a state.
void carryOut(const project::Project& project, const Move& move, LoopState& state);
/// The state after the first `moves` moves.
LoopState stateAfter(const project::Project& project, const History& history, std::size_t moves);

/// Whether a valve at this setting is shut: at 0 of its scale, or where its table gives no flow worth the
/// name (below 0.1 % of fully open). False without a table.
bool isShutSetting(const project::Project& project, const project::Branch& branch, Setting setting);

}  // namespace ww::balancing
