// Every valve's setting for a loop in proportion with the least pump head, how sure it is, and what to do
// next. Not for how the loop was learned (learning/).
#pragma once

#include "core/balancing/advice/index_step.h"
#include "core/balancing/advice/pump_advice.h"
#include "core/balancing/learning/learned_loop.h"

namespace ww::balancing {

/// A share relative to its target, as expected, with its standard uncertainty.
struct ExpectedShare {
    Ratio ofTarget;
    Ratio uncertainty;
};

enum class AdviceStatus {
    NotReady,    ///< see whyNot
    Unverified,  ///< advice, unverified: no round has confirmed it
    Verified,    ///< a round read at these settings has every share within the band
};

/// One valve.
struct SettingAdvice {
    std::size_t branch = 0;  ///< index into Project::branches()
    BalanceReach reach = BalanceReach::Set;
    Setting setting;  ///< rounded to what can be read on the scale
    Setting exact;
    Setting step;                           ///< the readable step it was rounded to
    quantity::FlowCoefficient coefficient;  ///< at the rounded setting
    bool isFullyOpen = false;
    bool isReference = false;
    std::optional<Setting> present;  ///< where it stands
    bool isSet = false;              ///< it stands there already, to half a step
    VolumeFlow flow;                 ///< expected once all are set
    PressureDifference dp;           ///< likewise, across the valve
    Setting settingUncertainty;      ///< standard, of the exact setting
    ExpectedShare indicated;         ///< what a second reader measures with the same table
    ExpectedShare actual;            ///< the true share, with the table's own error
    std::vector<base::Fault> notes;  ///< what this valve cannot do, and what then; subject: the tag
};

enum class ReadingKind { ClosedValveDp, UnreadValveDp, RepeatedDp };

/// The one further reading that would help most.
struct HelpfulReading {
    std::size_t branch = 0;
    ReadingKind kind = ReadingKind::RepeatedDp;
    std::optional<Setting> setting;  ///< of the valve while it is read
    PressureDifference expectedDp;
    Ratio varianceTaken;             ///< part of the summed variance of all shares that it takes away
    Ratio largestUncertaintyFactor;  ///< largest standard uncertainty of a share afterwards, over before
    base::Fault why;                 ///< subject: the tag
};

/// The valve to turn next.
struct NextMove {
    std::size_t branch = 0;
    Setting setting;
    PressureDifference dp;  ///< to be read right after turning it, with all others as they stand
    base::Fault reason;     ///< subject: the tag
};

struct Advice {
    AdviceStatus status = AdviceStatus::NotReady;
    std::vector<base::Fault> whyNot;
    /// In the order of work: the branch with the largest excess first, everything below a branch before its
    /// own valve. Where the loop could be learned they are given even when not ready.
    std::vector<SettingAdvice> settings;
    /// What the last round, with every share within the band, still lacks to prove its index circuit.
    std::vector<IndexStep> indexSteps;
    std::optional<NextMove>
        next;  ///< nothing: all are set, or held in the open round, and the index is proved
    std::optional<HelpfulReading> helpful;
    std::vector<std::size_t> indexPath;  ///< from the pump outward
    VolumeFlow totalFlow;                ///< after balancing, at the present speed
    PressureDifference pumpRise;
    Ratio spread;  ///< largest less smallest of target among terminals, expected
    std::optional<PumpAdvice> pump;
    /// That all matched terminals lie within the job's band: as a second reader would measure, and in truth.
    /// With more than kMostExactTerminals a lower bound.
    Ratio indicatedProbability;
    Ratio actualProbability;
    bool isProbabilityBound = false;
    std::vector<base::Fault> notes;  ///< about the whole: misfit, self-acting members, no valve
    bool isReady() const { return status != AdviceStatus::NotReady; }
};

inline constexpr std::size_t kMostExactTerminals = 300;

struct AdviceOptions {
    /// The step to round to; nothing: from the scale and what was typed (readableStep).
    std::optional<Setting> step;
    bool findHelpfulReading = true;
};

/// The advice from what was learned. Same input, same output. An unusable LearnedLoop gives an advice that is
/// not ready and says why. The settings come from the fit that trusts the valve tables; the uncertainty of
/// true shares comes from the fit that carries the tables' errors.
Advice advise(const project::Project& project, const LearnedLoop& learned, const AdviceOptions& options = {});

/// The turn of a branch's valve among Advice::indexSteps; null where there is none.
const IndexStep* indexStepAt(const Advice& advice, std::size_t branch);

/// Whether the advice throttles the valve of a branch, as another of its group is to stay open. False where
/// the advice is not ready or says nothing of the branch.
bool throttles(const Advice& advice, std::size_t branch);

/// The step that a valve's scale is set to: a tenth of a turn, a degree or a percent (common practice, no
/// source); half of that where settings were typed finer. Then the largest of the step, its half, fifth and
/// tenth of which all typed settings of that model, in its table and in readings, are multiples.
Setting readableStep(const project::Project& project, const project::Branch& branch);

}  // namespace ww::balancing
