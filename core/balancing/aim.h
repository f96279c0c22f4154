// The dp to be read at a valve when its share is right, as a function of its setting; the word that follows
// from a reading, and the setting to try next. Not for the settings of the whole loop (advice/).
#pragma once

#include <optional>
#include <vector>

#include "core/balancing/advice/advice.h"

namespace ww::balancing {

/// Where an aim comes from.
enum class AimBasis {
    Model,      ///< the learned loop: what flows once the valve stands at its advised setting
    Reference,  ///< the reference's ratio of design as last read
    Branches,   ///< the sum of the other branches' flows as last read
};

/// The flow aimed at, and the band around it.
struct AimFlow {
    AimBasis basis = AimBasis::Branches;
    VolumeFlow flow;
    VolumeFlow low;
    VolumeFlow high;
    std::optional<std::size_t> reference;  ///< of AimBasis::Reference: index into Project::branches()
    std::optional<Ratio> referenceOfDesign;
    std::size_t branchCount = 0;          ///< of AimBasis::Branches: how many others it rests on
    std::optional<base::Instant> oldest;  ///< the oldest reading it rests on
};

/// The aim at one setting.
struct AimRow {
    Setting setting;
    PressureDifference dp;
    PressureDifference low;  ///< the band in which to hold
    PressureDifference high;
    bool isStop = false;  ///< the valve goes no further this way
};

struct Aim {
    std::size_t branch = 0;
    std::optional<AimFlow> used;  ///< the best there is: model, else reference, else branches
    std::vector<AimFlow> all;     ///< every basis there is, the used one first
    /// The largest and the smallest flow of all bases differ by more than the band: print both.
    bool isDivergent = false;
    Ratio divergence;                 ///< largest over smallest flow, less 1
    std::vector<base::Fault> stale;   ///< why the aim is to be drawn soft; empty: it is fresh. Subject: a tag
    base::Fault basisLine;            ///< what it rests on, for a person
    std::vector<base::Fault> faults;  ///< why there is no aim
};

// What the aim rests on; what the hand does is said by the word alone.
inline constexpr base::MessageForm kAimFromModel{
    "aim_from_model", "from the learned loop, {1} is wanted here while the others stand as they do"};
inline constexpr base::MessageForm kAimFromReference{"aim_from_reference",
                                                     "from reference {1}, last {2} % of design, read {3w}"};
inline constexpr base::MessageForm kAimFromBranches{
    "aim_from_branches",
    "from the flows of {1} other branches while these are not turned, oldest reading {2w}"};
inline constexpr base::MessageForm kAimNoValve{
    "aim_no_valve", "this branch has no valve with a table; it cannot be adjusted here"};
inline constexpr base::MessageForm kAimNoDesign{"aim_no_design",
                                                "its design flow is not known; enter it in System"};
inline constexpr base::MessageForm kAimNothingRead{
    "aim_nothing_read", "neither a reference nor other branches have been read; take the survey first"};
inline constexpr base::MessageForm kAimOldReading{
    "aim_old_reading", "the oldest reading the aim rests on is {1w} old, the limit is {2w}; read it again"};

struct AimOptions {
    std::optional<base::Instant> now;  ///< nothing: nothing is too old
    quantity::Duration limit = quantity::Duration::si(30 * 60);
};

/// The aim of a branch as the loop stands now (the newest readings of each branch). With target share s among
/// its group's design and the others' flows S it is s/(1-s) S, with the band ends from s (1 +- band); from
/// the reference it is its ratio times design. Never from a total read off a pump curve: on a flat curve a
/// gauge error of 1 % is a flow error of many. `learned` and `advice` may be null; both or none.
Aim aim(const project::Project& project, std::size_t branch, const LearnedLoop* learned, const Advice* advice,
        const AimOptions& options = {});

/// The dp at which a valve at this setting passes the flow aimed at, and its band: (q/Kv)^2 for the fluid.
/// The setting must be on the table.
AimRow aimAt(const project::Project& project, std::size_t branch, const AimFlow& flow, Setting setting);

/// `count` neighbouring settings in steps around one, kept within the valve's stops: the list is shifted
/// where it would reach beyond one, and shorter where the scale has fewer.
std::vector<AimRow> aimRows(const project::Project& project, std::size_t branch, const AimFlow& flow,
                            Setting around, Setting step, std::size_t count = 5);

/// The setting so many steps away, no further than the stops; isStop of the row there says when it ends.
Setting steppedSetting(const project::Project& project, std::size_t branch, Setting from, Setting step,
                       int steps);

/// What to do after a reading.
enum class AimWord { Open, Close, Hold, ReadAgain, AtStop };

/// Above the band: too much flow, close. Within it: hold. Below: open. Under the readable minimum, or above
/// the range of the instrument, the dp says nothing. AtStop: it asks to open a valve that is fully open, or
/// to close one that is shut. `instrument` may be nothing.
AimWord wordFor(const project::Project& project, std::size_t branch, const AimRow& row,
                PressureDifference read, std::optional<Id> instrument = {});

/// One try at the valve.
struct AimTry {
    Setting setting;
    PressureDifference dp;
};

/// What the path of a branch beside its valve is taken from.
enum class PathBasis {
    Tries,    ///< two tries at different settings
    Learned,  ///< one try and the learned loop
    Design,   ///< one try and the circuit's design loss
};

/// What stands between the branch's take-off and return as its valve is turned: H = dp + r q^2.
struct BranchCharacteristic {
    PressureDifference available;
    Resistance path;
    PathBasis basis = PathBasis::Tries;
};

/// From the last two tries at different settings; from one try where the circuit's design loss or the learned
/// loop tells the path. Nothing where the tries contradict it (H or r not above 0).
std::optional<BranchCharacteristic> branchCharacteristic(const project::Project& project, std::size_t branch,
                                                         const std::vector<AimTry>& tries,
                                                         const LearnedLoop* learned = nullptr);

/// A setting to try next.
struct ProposedSetting {
    Setting setting;                 ///< rounded to the step, within the stops
    PressureDifference lands;        ///< dp expected there
    PressureDifference aim;          ///< dp wanted there
    bool isStop = false;             ///< the valve's stop comes before the aim
    std::optional<PathBasis> basis;  ///< nothing: the advice, once all valves are set
};

/// Where the characteristic crosses the aim: H - r q^2 at the flow aimed at is the dp that the valve must
/// take. Without a characteristic, the advised setting of `advice` where nothing was tried yet. Nothing else.
std::optional<ProposedSetting> proposedSetting(const project::Project& project, std::size_t branch,
                                               const AimFlow& flow, const std::vector<AimTry>& tries,
                                               Setting step, const LearnedLoop* learned = nullptr,
                                               const Advice* advice = nullptr);

}  // namespace ww::balancing
