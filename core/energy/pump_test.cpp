#include "core/energy/pump_test.h"

#include <cmath>

#include "core/base/term.h"
#include "core/energy/power.h"
#include "core/quantity/measured.h"

namespace ww::energy {

namespace {

using project::PumpPoint;

/// Head at shutoff off the stated impeller's (common practice, no source).
constexpr double kImpellerDoubt = 0.03;
/// A curve's flow is an interval rather than a number from here on, half width over flow.
constexpr double kFlatHalfWidth = 0.10;
/// Two standard uncertainties, the usual limit of a warning.
constexpr double kClosureLimit = 2;
/// Gauges that differ by more than this at rest (common practice, no source): 0.5 psi.
constexpr double kLargeZero_Pa = 3450;

const char* word(FlowWay way) {
    switch (way) {
        case FlowWay::Curve:
            return base::term("the curve");
        case FlowWay::Meter:
            return base::term("the meter");
        case FlowWay::Branches:
            return base::term("the terminals");
    }
    return "";
}

bool isWithoutFlow(PumpPoint kind) {
    return kind == PumpPoint::Static || kind == PumpPoint::Shutoff;
}

class Evaluation {
  public:
    explicit Evaluation(const PumpTestInput& input) : m_in(input) {
        if (input.curve != nullptr) {
            m_sheet.curve = *input.curve;
        }
    }

    PumpTestSheet take() {
        m_sheet.points.resize(m_in.points.size());
        takeZero();
        takePoints(true);
        takeImpeller();
        takePoints(false);
        compareWithShutoff();
        return std::move(m_sheet);
    }

  private:
    void takeZero() {
        for (const PumpTestPoint& point : m_in.points) {
            if (point.kind != PumpPoint::Static) {
                continue;
            }
            const auto zero = gaugeZero(point.gauges, m_in.station, m_in.density);
            if (!zero) {
                continue;
            }
            m_sheet.gaugeZero = zero;
            if (std::abs(zero->si()) > kLargeZero_Pa) {
                m_sheet.findings.push_back({&kZeroLarge, "", {m_in.units.text(*zero, 3)}});
            }
        }
    }

    void takePoints(bool withoutFlow) {
        for (std::size_t i = 0; i < m_in.points.size(); ++i) {
            if (isWithoutFlow(m_in.points[i].kind) == withoutFlow) {
                takePoint(m_in.points[i], m_sheet.points[i]);
            }
        }
    }

    void takePoint(const PumpTestPoint& point, PumpPointResult& out) {
        out.kind = point.kind;
        if (point.kind == PumpPoint::Static) {
            return;
        }
        takeSpeed(point, out);
        out.meterFlow = point.meter;
        out.branchFlow = point.branches;
        if (point.kind == PumpPoint::Shutoff) {
            out.flow = VolumeFlow();
        } else if (point.meter) {
            out.flowWay = FlowWay::Meter;
            out.flow = point.meter->flow;
        } else if (point.branches) {
            out.flowWay = FlowWay::Branches;
            out.flow = point.branches->flow;
        }
        takeHead(point, out);
        takeClosures(out);
        takeMotor(point, out);
        takeSuction(point, out);
        if (m_sheet.curve && out.flow && out.flow->si() > 0) {
            const auto best = bestEfficiencyFlow(*m_sheet.curve, state(out));
            out.ofBestFlow = best ? std::optional(Ratio::si(*out.flow / *best)) : std::nullopt;
        }
    }

    void takeSpeed(const PumpTestPoint& point, PumpPointResult& out) const {
        if (point.speed && m_in.ratedSpeed && point.speed->si() > 0 && m_in.ratedSpeed->si() > 0) {
            out.speedFraction = Ratio::si(*point.speed / *m_in.ratedSpeed);
        } else {
            out.findings.push_back({&kSpeedUnknown, "", {}});
        }
    }

    static curve::PumpState state(const PumpPointResult& out) { return {out.speedFraction.si(), 1.0}; }

    /// Head and flow together: without a measured flow the velocity head comes from the curve's own flow.
    void takeHead(const PumpTestPoint& point, PumpPointResult& out) const {
        const bool isFromCurve = !isWithoutFlow(point.kind);
        const auto head =
            isFromCurve && !out.flow && m_sheet.curve
                ? pumpHeadOnCurve(point.gauges, m_in.station, m_sheet.gaugeZero, *m_sheet.curve, state(out),
                                  m_in.density, m_in.units)
                : pumpHead(point.gauges, m_in.station, m_sheet.gaugeZero, out.flow, m_in.density, m_in.units);
        if (!head) {
            out.findings.push_back(head.fault());
            return;
        }
        out.head = *head;
        if (!head->isElevationKnown) {
            out.findings.push_back({&kGaugeHeightMissing, "", {}});
        }
        if (!point.isGaugeStated) {
            out.findings.push_back({&kGaugeUnstated, "", {}});
        }
        if (!head->isVelocityKnown) {
            out.findings.push_back({&kBoreMissing, "", {}});
        }
        const double speed = out.speedFraction.si();
        out.headAtRatedSpeed = head->total / (speed * speed);
        if (point.riseUncertainty) {
            out.headUncertainty = quantity::headOf(*point.riseUncertainty, m_in.density);
        }
        if (isFromCurve) {
            takeCurveFlow(out);
        }
    }

    void takeCurveFlow(PumpPointResult& out) const {
        if (!m_sheet.curve) {
            out.findings.push_back({&kCurveUnknown, "", {}});
            return;
        }
        const curve::PumpCurve& curve = *m_sheet.curve;
        const Head head = out.head->total;
        const auto flow = curve.flowAtHead(head, state(out));
        if (!flow) {
            out.findings.push_back({&kHeadAboveShutoff,
                                    "",
                                    {m_in.units.text(head), m_in.units.text(curve.shutoffHead(state(out)))}});
            return;
        }
        if (curve.range(*flow, state(out)) == curve::CurveRange::BeyondLastPoint) {
            out.findings.push_back({&kHeadBelowCurve, "", {m_in.units.text(head)}});
            return;
        }
        const Head u = out.headUncertainty.value_or(Head());
        CurveFlow found;
        found.flow = *flow;
        found.low = curve.flowAtHead(head + u, state(out)).value_or(VolumeFlow());
        found.high = curve.flowAtHead(head - u, state(out)).value_or(*flow);
        found.isFlat = (found.high - found.low) * 0.5 > *flow * kFlatHalfWidth;
        if (found.isFlat) {
            out.findings.push_back(
                {&kCurveFlat, "", {m_in.units.text(found.low), m_in.units.text(found.high)}});
        }
        out.curveFlow = found;
        if (!out.flow) {
            out.flowWay = FlowWay::Curve;
            out.flow = *flow;
        }
    }

    void takeClosures(PumpPointResult& out) {
        struct Way {
            FlowWay way;
            VolumeFlow flow;
            double uncertainty_m3s;
        };
        std::vector<Way> ways;
        if (out.curveFlow) {
            ways.push_back(
                {FlowWay::Curve, out.curveFlow->flow, 0.5 * (out.curveFlow->high - out.curveFlow->low).si()});
        }
        if (out.meterFlow && out.meterFlow->uncertainty) {
            ways.push_back({FlowWay::Meter, out.meterFlow->flow, out.meterFlow->uncertainty->si()});
        }
        if (out.branchFlow && out.branchFlow->uncertainty) {
            ways.push_back({FlowWay::Branches, out.branchFlow->flow, out.branchFlow->uncertainty->si()});
        }
        for (std::size_t i = 0; i < ways.size(); ++i) {
            for (std::size_t j = i + 1; j < ways.size(); ++j) {
                const double u_m3s = std::hypot(ways[i].uncertainty_m3s, ways[j].uncertainty_m3s);
                if (u_m3s <= 0) {
                    continue;
                }
                const double score = std::abs((ways[i].flow - ways[j].flow).si()) / u_m3s;
                out.closures.push_back({ways[i].way, ways[j].way, Ratio::si(score)});
                if (score > kClosureLimit) {
                    out.findings.push_back(
                        {&kClosureWide,
                         "",
                         {word(ways[i].way), m_in.units.text(ways[i].flow), word(ways[j].way),
                          m_in.units.text(ways[j].flow), quantity::concise(score, 3)}});
                }
            }
        }
    }

    void takeMotor(const PumpTestPoint& point, PumpPointResult& out) const {
        const MotorReading& reading = point.motor;
        if (reading.volts.empty() && reading.amps.empty() && !reading.inputPower) {
            return;
        }
        out.motor = motorPower(m_in.plate, reading);
        out.condition = motorCondition(m_in.plate, reading, m_in.limits);
        out.findings.insert(out.findings.end(), out.motor.findings.begin(), out.motor.findings.end());
        out.findings.insert(out.findings.end(), out.condition.findings.begin(), out.condition.findings.end());
        if (!out.head || !out.flow || out.flow->si() <= 0) {
            return;
        }
        out.water = waterPower(*out.flow, out.head->total, m_in.density);
        if (const auto shaft = out.motor.shaft(); shaft && shaft->si() > 0) {
            out.efficiency = Ratio::si(*out.water / *shaft);
            if (out.efficiency->si() < 0.2 || out.efficiency->si() > 0.9) {
                out.findings.push_back(
                    {&kEfficiencyImplied, "", {quantity::concise(100 * out.efficiency->si(), 3)}});
            }
        }
        if (out.motor.input && out.motor.input->si() > 0) {
            out.wireToWater = Ratio::si(*out.water / *out.motor.input);
        }
    }

    void takeSuction(const PumpTestPoint& point, PumpPointResult& out) const {
        if (!point.gauges.suction || !out.flow) {
            return;
        }
        SuctionReading suction;
        suction.gauge = *point.gauges.suction;
        suction.gaugeHeight = m_in.station.suctionHeight.value_or(Length());
        if (m_in.station.suctionBore && out.flow->si() > 0) {
            suction.velocityHead = velocityHead(*out.flow, *m_in.station.suctionBore);
        }
        suction.air = m_in.air;
        suction.vapour = m_in.vapour;
        out.npshAvailable = npshAvailable(suction, m_in.density);
        if (m_sheet.curve) {
            out.npshRequired = m_sheet.curve->npshRequired(*out.flow, state(out));
        }
        if (out.npshRequired) {
            out.npshMargin = *out.npshAvailable - *out.npshRequired;
            if (*out.npshMargin < kNpshMargin) {
                out.findings.push_back(
                    {&kNpshShort,
                     "",
                     {m_in.units.text(*out.npshAvailable), m_in.units.text(*out.npshRequired),
                      m_in.units.text(kNpshMargin, 2)}});
            }
        }
    }

    /// The last point at shutoff that has a head.
    const PumpPointResult* shutoff() const {
        const PumpPointResult* found = nullptr;
        for (const PumpPointResult& point : m_sheet.points) {
            if (point.kind == PumpPoint::Shutoff && point.head) {
                found = &point;
            }
        }
        return found;
    }

    void takeImpeller() {
        const PumpPointResult* shut = shutoff();
        if (shut == nullptr) {
            return;
        }
        const Head head = *shut->headAtRatedSpeed;
        if (m_in.family != nullptr) {
            m_sheet.impeller = m_in.family->diameterForShutoff(head);
        } else if (m_in.curve != nullptr && m_in.statedImpeller) {
            const double square = head / m_in.curve->shutoffHead();
            m_sheet.impeller = curve::ImpellerEstimate{*m_in.statedImpeller * std::sqrt(square), false};
        }
        if (m_sheet.impeller && m_in.family != nullptr && m_sheet.impeller->isBeyondFamily) {
            m_sheet.findings.push_back({&kImpellerBeyond, "", {}});
        }
        if (!m_in.curve) {
            return;
        }
        const double off = head / m_in.curve->shutoffHead() - 1;
        m_sheet.isImpellerSuspect = std::abs(off) > kImpellerDoubt;
        if (!m_sheet.isImpellerSuspect || !m_sheet.impeller || !m_in.statedImpeller) {
            return;
        }
        const Length found = m_sheet.impeller->diameter;
        m_sheet.findings.push_back(
            {&kImpellerSuspect, "", {m_in.units.text(found), m_in.units.text(*m_in.statedImpeller)}});
        m_sheet.curve = m_in.family != nullptr
                            ? m_in.family->curveOf(found)
                            : curve::trimmedCurve(*m_in.curve, found / *m_in.statedImpeller);
    }

    void compareWithShutoff() {
        const PumpPointResult* shut = shutoff();
        if (shut == nullptr) {
            return;
        }
        for (PumpPointResult& point : m_sheet.points) {
            if (!isWithoutFlow(point.kind) && point.headAtRatedSpeed &&
                *point.headAtRatedSpeed >= *shut->headAtRatedSpeed) {
                point.findings.push_back(
                    {&kHeadAboveTestShutoff,
                     "",
                     {m_in.units.text(*point.headAtRatedSpeed), m_in.units.text(*shut->headAtRatedSpeed)}});
            }
        }
    }

    const PumpTestInput& m_in;
    PumpTestSheet m_sheet;
};

}  // namespace

PumpTestSheet evaluate(const PumpTestInput& input) {
    return Evaluation(input).take();
}

}  // namespace ww::energy
