#include "core/balancing/prediction.h"

#include "core/hydraulics/solve.h"

namespace ww::balancing {

PredictionResult predict(const project::Project& project, const LoopState& state,
                         const Resistances& resistances) {
    BuiltModel built = hydraulicModel(project, state, resistances);
    PredictionResult result;
    result.faults = std::move(built.faults);
    if (!built.model) {
        return result;
    }
    const HydraulicModel& model = *built.model;
    const hydraulics::Solution solution = hydraulics::solve(model.network);

    Prediction prediction;
    prediction.summary = solution.summary();
    prediction.speedFraction = state.speedFraction;
    const PumpsTogether pumps = pumpsTogether(model, solution);
    prediction.pumpFlow = pumps.flow;
    prediction.pumpRise = pumps.rise;

    const project::BranchTree& tree = project.tree();
    VolumeFlow total;
    VolumeFlow totalDesign;
    const std::vector<VolumeFlow> design = project::designFlows(project);
    for (const std::size_t terminal : tree.terminals()) {
        total += solution.flow(model.circuitLink[terminal]);
        totalDesign += design[terminal];
    }
    prediction.branches.resize(project.branches().size());
    for (std::size_t i = 0; i < project.branches().size(); ++i) {
        BranchPrediction& branch = prediction.branches[i];
        branch.branch = i;
        branch.flow = solution.flow(model.circuitLink[i]);
        if (design[i].si() > 0) {
            branch.ofDesign = Ratio::si(branch.flow / design[i]);
        }
        if (total.si() > 0) {
            branch.share = Ratio::si(branch.flow / total);
        }
        if (branch.share && design[i].si() > 0 && totalDesign.si() > 0) {
            branch.ofTarget = Ratio::si(branch.share->si() / (design[i] / totalDesign));
        }
        if (model.valveLink[i]) {
            branch.valveDrop = solution.drop(model.network, *model.valveLink[i]);
            const auto shutOff = solution.drop(model.network, model.circuitLink[i]);
            if (branch.valveDrop && shutOff && model.network.isClosed(model.circuitLink[i])) {
                // A circuit is shut at its valve: all the pressure available there stands across it.
                branch.valveDrop = *branch.valveDrop + *shutOff;
            }
        }
    }
    result.prediction = std::move(prediction);
    return result;
}

}  // namespace ww::balancing
