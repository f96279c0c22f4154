// What every circuit would take in another state of the loop: the answer of `predict`. Nothing of it is a
// reading.
#pragma once

#include <optional>
#include <vector>

#include "core/balancing/hydraulic_model.h"
#include "core/hydraulics/solve_summary.h"

namespace ww::balancing {

/// One branch in the predicted state.
struct BranchPrediction {
    std::size_t branch = 0;  ///< index into Project::branches()
    VolumeFlow flow;
    std::optional<Ratio> share;  ///< nothing where no water moves
    std::optional<Ratio> ofTarget;
    std::optional<Ratio> ofDesign;
    std::optional<PressureDifference> valveDrop;  ///< of a shut-off branch: all that is available there
};

struct Prediction {
    hydraulics::SolveSummary summary;
    VolumeFlow pumpFlow;          ///< of all running pumps together
    PressureDifference pumpRise;  ///< across them
    double speedFraction = 1.0;
    std::vector<BranchPrediction> branches;  ///< in the order of Project::branches()
};

struct PredictionResult {
    std::optional<Prediction> prediction;
    std::vector<base::Fault> faults;
};

/// Solves the loop in that state. Everything shut gives zero flows and the pump's shutoff pressure.
PredictionResult predict(const project::Project& project, const LoopState& state,
                         const Resistances& resistances = {});

}  // namespace ww::balancing
