// What a round of readings says, as plain values: flows, shares, groups, index circuit, findings, verdict.
// Not for how it is computed (assess.h).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/fault.h"
#include "core/project/project.h"

namespace ww::balancing {

using base::Id;
using quantity::Head;
using quantity::PressureDifference;
using quantity::Ratio;
using quantity::Setting;
using quantity::VolumeFlow;

/// The state of a branch's share.
enum class State { NotRead, Short, Over, OnShare, Drifted, AtStop, Doubtful };
enum class Verdict { Accepted, NotAccepted, Undecidable };
enum class Severity { Note, Warning, Error, BlocksSignature };

/// What a check found about one thing (fault.subject is a tag or empty).
struct Finding {
    base::Fault fault;
    Severity severity = Severity::Note;
    std::optional<Id> branch;   ///< where it is about a branch
    std::optional<Id> reading;  ///< where it is about a reading
    std::string reason = {};    ///< why a finding that would block a signature stands; empty: none given
};

/// Where a branch's flow comes from.
enum class FlowSource { None, ValveDp, DirectReading, SumOfChildren, Range };

/// One branch in one round. Absent means: not known from the readings.
struct BranchResult {
    std::size_t branch = 0;  ///< index into Project::branches()
    std::optional<Setting> setting;
    bool isFullyOpen = false;
    bool isShut = false;
    std::optional<PressureDifference> dp;
    std::optional<Ratio> dpRepeatability;  ///< half spread of repeated readings over their mean
    FlowSource source = FlowSource::None;
    std::optional<VolumeFlow> flow;
    std::optional<VolumeFlow> flowUncertainty;  ///< standard, all parts
    std::optional<VolumeFlow>
        readingUncertainty;             ///< the part that varies when read again: instrument, digits
    std::optional<VolumeFlow> flowLow;  ///< where the dp is below the readable minimum the flow is a range
    std::optional<VolumeFlow> flowHigh;
    VolumeFlow designFlow;  ///< own, or the sum of the children's where the branch gives none
    std::optional<Ratio> share;
    Ratio targetShare;
    std::optional<Ratio> ofTarget;
    std::optional<Ratio> ofTargetUncertainty;  ///< from readingUncertainty
    std::optional<Ratio> ofDesign;
    State state = State::NotRead;
    bool isInLoop = true;  ///< false: it came after the round was closed (project::asJudged)
    bool isTerminal = true;
    bool isSelfActing = false;  ///< a limiter or a pressure-independent valve: verified, not matched
    bool isMatchable = true;    ///< takes part in its group's proportion: not self-acting, nor all below it
    bool isFromEarlierRound =
        false;  ///< the reading of an earlier round fills a gap while this round is walked
    std::optional<base::Instant> readAt;
    std::optional<Id> reading;     ///< the reading that counts
    std::optional<Id> unreadable;  ///< where isFromEarlierRound: the reading of the round itself, which says
                                   ///< that the branch cannot be read
};

/// The children of one branch (or the branches fed at the pump).
struct GroupResult {
    std::optional<std::size_t> parent;     ///< nothing: the branches fed at the pump
    std::vector<std::size_t> members;      ///< indices into Project::branches(), nearest first
    std::optional<std::size_t> reference;  ///< lowest of design; a tie goes to the farther one
    std::optional<Ratio> spread;           ///< largest minus smallest of target among the matched members
};

struct IndexCircuit {
    std::vector<std::size_t> path;  ///< from the pump outward; empty while it is not known
    std::optional<std::size_t> terminal;
    bool isValveFullyOpen = false;
    bool isPathFullyOpen = false;
};

/// A pump in one round: from its gauges and its curve.
struct PumpDuty {
    std::size_t pump = 0;  ///< index into Project::pumps()
    std::optional<Head> head;
    std::optional<Head> headUncertainty;
    std::optional<VolumeFlow> flowFromCurve;
    std::optional<VolumeFlow> flowLow;  ///< interval from the head's uncertainty: wide on a flat curve
    std::optional<VolumeFlow> flowHigh;
    std::optional<VolumeFlow> flowRead;
    double speedFraction = 1.0;  ///< of rated
    /// Number of the round whose reading gave the speed: this one or one before it. Nothing: none can be held
    /// against the rated speed, and full speed is taken.
    std::optional<int> speedRound;
};

/// The whole picture of one round.
struct Assessment {
    std::optional<Id> round;
    int roundNumber = 0;
    project::RoundKind kind = project::RoundKind::Survey;
    Verdict verdict = Verdict::NotAccepted;
    std::vector<base::Fault> reasons;     ///< why the verdict is not "accepted", most important first
    bool isComplete = false;              ///< every terminal has a reading or a reason in this round
    std::optional<VolumeFlow> totalFlow;  ///< sum over terminals; nothing while one is missing everywhere
    VolumeFlow totalDesign;
    std::size_t terminalCount = 0;
    std::size_t readCount = 0;     ///< terminals read in this round
    std::size_t onShareCount = 0;  ///< of these, those on share
    std::optional<base::Instant> oldestReading;
    std::optional<Ratio> spread;         ///< the largest group spread
    std::vector<BranchResult> branches;  ///< in the order of Project::branches()
    std::vector<GroupResult> groups;     ///< top group first, then top down
    IndexCircuit index;
    std::vector<PumpDuty> pumps;
    std::vector<Finding> findings;  ///< most severe first
};

}  // namespace ww::balancing
