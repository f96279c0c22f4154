#include "core/energy/pump_head.h"

#include <cmath>
#include <numbers>

#include "core/quantity/measured.h"

namespace ww::energy {

namespace {

std::optional<PressureDifference> riseOf(const GaugeReading& reading) {
    if (reading.rise) {
        return reading.rise;
    }
    if (reading.suction && reading.discharge) {
        return *reading.discharge - *reading.suction;
    }
    return std::nullopt;
}

/// Discharge gauge above suction gauge; nothing where it is not known, 0 where it does not matter.
std::optional<Head> heightOf(const GaugeReading& reading, const GaugeStation& station) {
    if (reading.rise) {
        return Head();
    }
    if (station.suctionHeight && station.dischargeHeight) {
        return Head::si((*station.dischargeHeight - *station.suctionHeight).si());
    }
    return std::nullopt;
}

}  // namespace

std::optional<PressureDifference> gaugeZero(const GaugeReading& atRest, const GaugeStation& station,
                                            Density density) {
    const auto rise = riseOf(atRest);
    if (!rise) {
        return std::nullopt;
    }
    return *rise + quantity::pressureOf(heightOf(atRest, station).value_or(Head()), density);
}

Head velocityHead(VolumeFlow flow, Length bore) {
    EXPECTS(bore.si() > 0);
    const double speed = flow.si() / (std::numbers::pi / 4 * bore.si() * bore.si());
    return Head::si(speed * speed / (2 * quantity::kStandardGravity));
}

base::Result<PumpHead> pumpHead(const GaugeReading& reading, const GaugeStation& station,
                                std::optional<PressureDifference> zero, std::optional<VolumeFlow> flow,
                                Density density, const quantity::ShownUnits& units) {
    const auto rise = riseOf(reading);
    if (!rise) {
        return base::Fault{&kNoPumpPressure, "", {}};
    }
    if (rise->si() < 0) {
        return base::Fault{&kDischargeBelowSuction, "", {units.text(-*rise)}};
    }
    PumpHead head;
    head.pressure = quantity::headOf(*rise, density);
    head.zero = -quantity::headOf(zero.value_or(PressureDifference()), density);
    const auto height = heightOf(reading, station);
    head.hasElevation = !reading.rise;
    head.isElevationKnown = height.has_value();
    head.elevation = height.value_or(Head());
    if (flow && flow->si() != 0) {
        head.isVelocityKnown = station.suctionBore && station.dischargeBore;
        if (head.isVelocityKnown) {
            head.velocity =
                velocityHead(*flow, *station.dischargeBore) - velocityHead(*flow, *station.suctionBore);
        }
    }
    head.total = head.pressure + head.zero + head.elevation + head.velocity;
    if (head.total.si() <= 0) {
        return base::Fault{&kHeadNotPositive, "", {units.text(head.total)}};
    }
    return head;
}

base::Result<PumpHead> pumpHeadOnCurve(const GaugeReading& reading, const GaugeStation& station,
                                       std::optional<PressureDifference> zero, const curve::PumpCurve& curve,
                                       curve::PumpState state, Density density,
                                       const quantity::ShownUnits& units) {
    constexpr int kMostPasses = 30;
    constexpr double kSettled_m = 1e-9;
    auto head = pumpHead(reading, station, zero, std::nullopt, density, units);
    for (int pass = 0; head && pass < kMostPasses; ++pass) {
        const auto flow = curve.flowAtHead(head->total, state);
        const auto next = pumpHead(reading, station, zero, flow, density, units);
        const bool isSettled = next && std::abs((next->total - head->total).si()) < kSettled_m;
        head = next;
        if (isSettled) {
            break;
        }
    }
    return head;
}

}  // namespace ww::energy
