#include "core/project/resolve_heads.h"

namespace ww::project {

namespace {

void resolve(std::optional<Measured<PressureDifference>>& entered, quantity::Density density) {
    if (entered && quantity::isHeadUnit(entered->unit)) {
        *entered = quantity::measuredDifference(entered->digits, entered->unit, density);
    }
}

void resolve(std::optional<Measured<GaugePressure>>& entered, quantity::Density density) {
    if (entered && quantity::isHeadUnit(entered->unit)) {
        *entered = quantity::measuredGauge(entered->digits, entered->unit, density);
    }
}

void resolve(Measured<Head>& entered, quantity::Density density) {
    if (!quantity::isHeadUnit(entered.unit)) {
        entered = quantity::measuredHead(entered.digits, entered.unit, density);
    }
}

}  // namespace

void resolveHeads(Job& job, quantity::Density density) {
    resolve(job.fillPressure, density);
}

void resolveHeads(ValveModel& valve, quantity::Density density) {
    resolve(valve.minimumDp, density);
    resolve(valve.maximumDp, density);
}

void resolveHeads(Branch& branch, quantity::Density density) {
    resolve(branch.runLoss, density);
    resolve(branch.circuitLoss, density);
}

void resolveHeads(Pump& pump, quantity::Density density) {
    for (PumpTableRow& row : pump.rows) {
        resolve(row.head, density);
        if (row.npshRequired) {
            resolve(*row.npshRequired, density);
        }
    }
}

void resolveHeads(Instrument& instrument, quantity::Density density) {
    resolve(instrument.range, density);
    resolve(instrument.accuracyFloor, density);
    resolve(instrument.resolution, density);
    resolve(instrument.zeroStart, density);
    resolve(instrument.zeroEnd, density);
}

void resolveHeads(SetPoint& point, quantity::Density density) {
    resolve(point.zero, density);
    resolve(point.dp, density);
    resolve(point.margin, density);
    resolve(point.lowLimit, density);
    resolve(point.highLimit, density);
}

void resolveHeads(Reading& reading, quantity::Density density) {
    resolve(reading.dp, density);
}

void resolveHeads(PumpReading& reading, quantity::Density density) {
    resolve(reading.suction, density);
    resolve(reading.discharge, density);
    resolve(reading.gaugeRise, density);
}

}  // namespace ww::project
