#include "core/energy/load_profile.h"

namespace ww::energy {

std::optional<Power> shaftPowerAt(const curve::PumpSet& set, VolumeFlow flow, Density density,
                                  std::optional<Ratio> measuredEfficiency) {
    if (const auto power = set.shaftPower(flow, density)) {
        return power;
    }
    const auto head = set.head(flow);
    if (!measuredEfficiency || !head || !set.isWithinPoints(flow)) {
        return std::nullopt;
    }
    return shaftPower(flow, *head, density, *measuredEfficiency);
}

std::optional<double> speedFactorThrough(const curve::PumpSet& set, VolumeFlow flow, Head head) {
    double low = 0.01;
    double high = 10;
    const auto gives = [&](double factor) {
        const auto at = set.atSpeed(factor).head(flow);
        return at && *at >= head;
    };
    if (gives(low) || !gives(high)) {
        return std::nullopt;
    }
    constexpr int kHalvings = 60;
    for (int i = 0; i < kHalvings; ++i) {
        const double middle = 0.5 * (low + high);
        (gives(middle) ? high : low) = middle;
    }
    return 0.5 * (low + high);
}

std::optional<Energy> yearlyEnergy(const curve::PumpSet& set, PartLoad partLoad, VolumeFlow designFlow,
                                   Head designHead, Density density, const EnergyTerms& terms,
                                   bool hasDrive) {
    if (terms.load.empty() || !terms.motorEfficiency) {
        return std::nullopt;
    }
    double sum_J = 0;
    for (const LoadStep& step : terms.load) {
        const double part = step.flowFraction.si();
        const VolumeFlow flow = designFlow * part;
        curve::PumpSet running = set;
        if (partLoad == PartLoad::HoldsHead) {
            const Head head = terms.heldHead + (designHead - terms.heldHead) * (part * part);
            const auto factor = speedFactorThrough(set, flow, head);
            if (!factor) {
                return std::nullopt;
            }
            running = set.atSpeed(*factor);
        }
        const auto shaft = shaftPowerAt(running, flow, density, terms.measuredEfficiency);
        if (!shaft) {
            return std::nullopt;
        }
        const Ratio drive = hasDrive ? terms.driveEfficiency.value_or(Ratio::si(1)) : Ratio::si(1);
        sum_J += energyOver(wirePower(*shaft, *terms.motorEfficiency, drive), step.time).si();
    }
    return Energy::si(sum_J);
}

}  // namespace ww::energy
