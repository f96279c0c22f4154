#include "core/balancing/system_curve.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/detail/pump_duty.h"

namespace ww::balancing {

namespace {

using project::Project;

/// The running pumps' head from gauges, with its uncertainty: the mean of pumps side by side, the sum of
/// pumps one behind the other; nothing where none was read, or one of a series was not.
struct GaugeHead {
    Head head;
    Head uncertainty;
};

std::optional<GaugeHead> gaugeHead(const Project& project, const std::vector<PumpDuty>& pumps) {
    double sum_m = 0;
    double square = 0;
    double count = 0;
    std::size_t running = 0;
    std::size_t inSeries = 0;
    for (const PumpDuty& duty : pumps) {
        const project::Pump& pump = project.pumps()[duty.pump];
        running += pump.isRunning ? 1 : 0;
        inSeries += pump.isRunning && pump.arrangement == project::PumpArrangement::Series ? 1 : 0;
        if (pump.isRunning && duty.head && duty.head->si() > 0) {
            sum_m += duty.head->si();
            square += duty.headUncertainty->si() * duty.headUncertainty->si();
            count += 1;
        }
    }
    if (count == 0) {
        return std::nullopt;
    }
    if (running > 1 && inSeries == running) {
        return count == static_cast<double>(running)
                   ? std::optional(GaugeHead{Head::si(sum_m), Head::si(std::sqrt(square))})
                   : std::nullopt;
    }
    return GaugeHead{Head::si(sum_m / count), Head::si(std::sqrt(square) / count)};
}

double totalUncertainty_m3s(const Assessment& assessment) {
    double square = 0;
    for (const BranchResult& branch : assessment.branches) {
        if (branch.isTerminal && branch.flowUncertainty) {
            square += branch.flowUncertainty->si() * branch.flowUncertainty->si();
        }
    }
    return std::sqrt(square);
}

/// Factor on all speeds that makes the running pumps give this flow at this head; nothing where none does.
std::optional<double> speedFactorFor(const Project& project, const std::vector<PumpDuty>& pumps,
                                     VolumeFlow flow, Head head, Ratio headFactor) {
    double low = 0.05;
    double high = 4;
    const auto gives = [&](double factor) {
        return detail::flowOfPumps(project, pumps, head, factor, headFactor).value_or(VolumeFlow()) >= flow;
    };
    if (!gives(high) || gives(low)) {
        return std::nullopt;
    }
    constexpr int kHalvings = 60;
    for (int i = 0; i < kHalvings; ++i) {
        const double middle = 0.5 * (low + high);
        (gives(middle) ? high : low) = middle;
    }
    return 0.5 * (low + high);
}

}  // namespace

std::optional<SystemCurve> systemCurve(const Project& project, const Assessment& assessment,
                                       Ratio headFactor) {
    SystemCurve curve;
    curve.roundNumber = assessment.roundNumber;
    const auto gauges = gaugeHead(project, assessment.pumps);
    if (gauges) {
        curve.head = gauges->head;
        curve.headUncertainty = gauges->uncertainty;
    }
    if (assessment.totalFlow && assessment.totalFlow->si() > 0) {
        curve.flow = *assessment.totalFlow;
        curve.flowUncertainty = VolumeFlow::si(totalUncertainty_m3s(assessment));
    } else if (gauges) {
        const auto flow = detail::flowOfPumps(project, assessment.pumps, gauges->head, 1, headFactor);
        if (!flow || flow->si() <= 0) {
            return std::nullopt;
        }
        curve.flow = *flow;
    } else {
        return std::nullopt;
    }
    if (!gauges) {
        const auto head = detail::headOfPumps(project, assessment.pumps, curve.flow, 1, headFactor);
        if (!head || head->si() <= 0) {
            return std::nullopt;
        }
        curve.head = *head;
    }
    return curve;
}

std::optional<PumpProposal> pumpProposal(const Project& project, const Assessment& assessment) {
    return pumpProposal(project, assessment, countedCurve(project, assessment));
}

std::optional<PumpProposal> pumpProposal(const Project& project, const Assessment& assessment,
                                         const CountedCurve& counted) {
    const auto duty = systemCurve(project, assessment, counted.headFactor);
    if (!duty || counted.basis == CurveBasis::Untrusted || assessment.totalDesign.si() <= 0) {
        return std::nullopt;
    }
    PumpProposal proposal;
    proposal.headAtDesign = duty->at(assessment.totalDesign);
    const auto available =
        detail::headOfPumps(project, assessment.pumps, assessment.totalDesign, 1, counted.headFactor);
    const auto factor = speedFactorFor(project, assessment.pumps, assessment.totalDesign,
                                       proposal.headAtDesign, counted.headFactor);
    if (!available || !factor) {
        return std::nullopt;
    }
    proposal.headAvailable = *available;
    proposal.excess =
        excessHead(*available, proposal.headAtDesign, ExcessBasis::ValvesAsRead, ExcessSpeed::AsRead);
    proposal.speedFraction = *factor;
    proposal.powerRatio = Ratio::si(*factor * *factor * *factor);
    const auto isRunning = [&](const PumpDuty& d) { return project.pumps()[d.pump].isRunning; };
    if (std::count_if(assessment.pumps.begin(), assessment.pumps.end(), isRunning) == 1) {
        const auto only = std::find_if(assessment.pumps.begin(), assessment.pumps.end(), isRunning);
        const project::Pump& pump = project.pumps()[only->pump];
        if (pump.impeller) {
            proposal.impeller = pump.impeller->value * *factor;
            proposal.isBelowMinimumImpeller =
                pump.impellerMinimum && *proposal.impeller < pump.impellerMinimum->value;
        }
    }
    return proposal;
}

}  // namespace ww::balancing
