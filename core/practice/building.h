// A simulated building: papers as an engineer would give them, a hidden truth, and instruments that read it.
// The same plan and seed give the same building and the same readings on every computer. Not for the record
// of a practice job (practice_job.h).
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/balancing/hydraulic_model.h"
#include "core/practice/hidden_truth.h"
#include "core/project/project.h"

namespace ww::practice {

using balancing::LoopState;
using quantity::Measured;
using quantity::VolumeFlow;

/// Flows and drops as they really are in one state, by index into the design's branches.
struct TrueState {
    std::vector<VolumeFlow> flows;
    std::vector<PressureDifference> valveDrops;  ///< across a shut valve: all that stands there
    VolumeFlow pumpFlow;
    PressureDifference pumpRise;
};

/// When a reading is taken: numbers that decide its noise and whether a slip happens.
struct ReadingMoment {
    int round = 1;        ///< number of the round, from 1
    int look = 1;         ///< 1 for the first reading of this valve in the round
    int takenBefore = 0;  ///< readings taken on the job so far; a strainer clogs with them
    /// The misread handle of this round was looked at twice: from then on it stands where it is noted.
    bool isHandleSeen = false;
};

/// What the technician notes at a valve.
struct DpAnswer {
    Measured<PressureDifference> dp;
    /// Where the handle is seen to stand although another setting was noted; nothing where they agree.
    std::optional<quantity::Setting> settingSeen;
};

class Building {
  public:
    /// `plan` must keep the limits of its comments.
    Building(BuildingPlan plan, std::uint64_t seed);

    const BuildingPlan& plan() const { return m_plan; }
    std::uint64_t seed() const { return m_seed; }
    /// The job that the trainee is given: no rounds, every valve open. Ids follow from the seed.
    const project::Project& design() const { return m_design; }
    const HiddenTruth& truth() const { return m_truth; }
    /// By branch: the design flow that its run carries, everything from its take-off on along its parent.
    const std::vector<VolumeFlow>& runFlows() const { return m_runFlows; }

    /// The loop as it really runs, with faults that stand always. Settings must lie on their scales; a branch
    /// that is absent stands fully open. A misread handle stands off all through its round, until seen.
    TrueState stateAt(const LoopState& state, ReadingMoment moment = {}) const;

    /// The dp that the meter shows at a branch's valve; `branch` is an index into the design's branches and
    /// has a valve. A branch listed in state.closed gives its closed-valve dp.
    DpAnswer readDp(const LoopState& state, std::size_t branch, ReadingMoment moment) const;
    /// The same where stateAt() of that state and moment is at hand.
    DpAnswer readDp(const TrueState& real, const LoopState& state, std::size_t branch,
                    ReadingMoment moment) const;
    /// The rise that the pump's gauges show, kPa.
    Measured<PressureDifference> readPumpRise(const LoopState& state, ReadingMoment moment) const;
    Measured<PressureDifference> readPumpRise(const TrueState& real, ReadingMoment moment) const;
    /// The flow that a clamp-on meter shows at a branch, m3/h.
    Measured<VolumeFlow> readFlow(const LoopState& state, std::size_t branch, ReadingMoment moment) const;

    /// The flow that the valve's table gives for its true dp in that state: what a second reader without
    /// noise would indicate. The true flow where there is no valve.
    VolumeFlow indicatedFlow(const LoopState& state, const TrueState& real, std::size_t branch) const;

    /// What a circuit without its valve takes at design flow after so many readings on the job, faults
    /// included.
    PressureDifference circuitLossAfter(std::size_t branch, int takenBefore) const;

    /// The nearest position that the handle can be set to.
    quantity::Setting onScale(quantity::Setting wanted, std::size_t branch) const;

  private:
    /// Where the handle really stands.
    quantity::Setting handle(const LoopState& state, std::size_t branch, ReadingMoment moment) const;
    double noise(std::uint64_t what, std::size_t branch, ReadingMoment moment) const;
    double growth(std::size_t branch, ReadingMoment moment) const;
    quantity::FlowCoefficient trueCoefficient(std::size_t branch, quantity::Setting setting) const;
    hydraulics::Element circuitLaw(std::size_t branch, ReadingMoment moment) const;
    hydraulics::Element pumpLaw(std::size_t pump, const LoopState& state) const;
    hydraulics::Network changed(const std::vector<hydraulics::LinkChange>& changes) const;
    void buildOpenLoop();
    hydraulics::Network networkAt(const LoopState& state, ReadingMoment moment) const;

    BuildingPlan m_plan;
    std::uint64_t m_seed = 0;
    project::Project m_design;
    std::vector<VolumeFlow> m_designFlows;  ///< by branch
    std::vector<VolumeFlow> m_runFlows;     ///< by branch: the design flow that its run carries
    HiddenTruth m_truth;
    balancing::HydraulicModel m_loop;  ///< as built, every valve open
};

}  // namespace ww::practice
