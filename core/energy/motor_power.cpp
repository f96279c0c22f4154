#include "core/energy/motor_power.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>

#include "core/quantity/measured.h"

namespace ww::energy {

namespace {

using quantity::Unit;

/// Below this load the ratio of amps reads too high (US DOE, Determining Electric Motor Load and Efficiency,
/// from memory: 60 to 70 %).
constexpr double kLeastAmpRatioLoad = 0.65;
constexpr double kLargestSlip = 0.1;

template <class Q>
std::optional<Q> meanOf(const std::vector<Q>& phases) {
    if (phases.empty()) {
        return std::nullopt;
    }
    return std::accumulate(phases.begin(), phases.end(), Q()) / static_cast<double>(phases.size());
}

class Estimator {
  public:
    Estimator(const MotorPlate& plate, const MotorReading& reading)
        : m_plate(plate), m_reading(reading), m_volts(meanOf(reading.volts)), m_amps(meanOf(reading.amps)) {}

    MotorPower take() {
        if (m_amps && !m_volts) {
            m_out.findings.push_back({&kAmpsWithoutVolts, "", {}});
        }
        fromInputPower();
        if (m_plate.isBehindDrive) {
            if (m_volts || m_amps) {
                m_out.findings.push_back({&kBehindDrive, "", {}});
            }
        } else {
            fromPowerFactor();
            fromNoLoadAmps();
            fromAmpRatio();
            fromSlip();
        }
        choose();
        return std::move(m_out);
    }

  private:
    void add(PowerMethod method, Power shaft, std::vector<base::Fault> cautions = {}) {
        m_out.estimates.push_back({method, shaft, std::move(cautions)});
    }

    /// The efficiency that counts, with a caution where it is the plate's.
    std::optional<Ratio> efficiency(std::vector<base::Fault>& cautions) const {
        if (m_reading.efficiency) {
            return m_reading.efficiency;
        }
        if (m_plate.efficiency) {
            cautions.push_back({&kPlateEfficiency, "", {}});
        }
        return m_plate.efficiency;
    }

    /// How the volts stand to the plate's; 1 where the plate does not give them.
    double voltRatio() const { return m_plate.volts ? *m_volts / *m_plate.volts : 1.0; }

    void fromInputPower() {
        std::vector<base::Fault> cautions;
        if (!m_reading.inputPower) {
            return;
        }
        m_out.input = m_reading.inputPower;
        if (const auto part = efficiency(cautions)) {
            add(PowerMethod::InputPower, *m_reading.inputPower * part->si(), std::move(cautions));
        }
    }

    void fromPowerFactor() {
        std::vector<base::Fault> cautions;
        const bool isMeasured = m_reading.powerFactor.has_value();
        const auto factor = isMeasured ? m_reading.powerFactor : m_plate.powerFactor;
        const auto input = electricalInput(m_reading, factor);
        if (!input) {
            return;
        }
        if (!isMeasured) {
            cautions.push_back({&kPlatePowerFactor, "", {}});
        }
        if (!m_out.input) {
            m_out.input = input;
        }
        if (const auto part = efficiency(cautions)) {
            add(PowerMethod::PowerFactor, *input * part->si(), std::move(cautions));
        }
    }

    void fromNoLoadAmps() {
        if (!m_volts || !m_amps || !m_plate.power || !m_plate.amps || !m_plate.noLoadAmps) {
            return;
        }
        if (*m_plate.noLoadAmps >= *m_plate.amps) {
            m_out.findings.push_back(
                {&kNoLoadOutside,
                 "",
                 {quantity::concise(m_plate.noLoadAmps->si(), 4), quantity::concise(m_plate.amps->si(), 4)}});
            return;
        }
        const Current half = *m_plate.noLoadAmps * 0.5;
        const double load = (*m_amps - half) / (*m_plate.amps - half) * voltRatio();
        if (load > 0) {
            add(PowerMethod::NoLoadAmps, *m_plate.power * load);
        }
    }

    void fromAmpRatio() {
        if (!m_volts || !m_amps || !m_plate.power || !m_plate.amps || m_plate.amps->si() <= 0) {
            return;
        }
        const double load = *m_amps / *m_plate.amps * voltRatio();
        std::vector<base::Fault> cautions;
        if (load < kLeastAmpRatioLoad) {
            cautions.push_back({&kAmpRatioLowLoad, "", {quantity::concise(100 * load, 3)}});
        }
        add(PowerMethod::AmpRatio, *m_plate.power * load, std::move(cautions));
    }

    void fromSlip() {
        if (!m_reading.speed || !m_plate.power || !m_plate.speed) {
            return;
        }
        const auto synchronous =
            m_plate.synchronousSpeed ? m_plate.synchronousSpeed : synchronousSpeedAbove(*m_plate.speed);
        if (!synchronous || *synchronous <= *m_plate.speed) {
            return;
        }
        if (*m_reading.speed >= *synchronous) {
            const auto rpm = [](RotationalSpeed speed) {
                return quantity::concise(speed.in(Unit::RevolutionPerMinute), 5);
            };
            m_out.findings.push_back({&kSlipOutside, "", {rpm(*m_reading.speed), rpm(*synchronous)}});
            return;
        }
        const double volts = m_volts && m_plate.volts ? *m_plate.volts / *m_volts : 1.0;
        const double load =
            (*synchronous - *m_reading.speed) / (*synchronous - *m_plate.speed) / (volts * volts);
        add(PowerMethod::Slip, *m_plate.power * load, {{&kSlipRough, "", {}}});
    }

    std::optional<std::size_t> find(PowerMethod method) const {
        for (std::size_t i = 0; i < m_out.estimates.size(); ++i) {
            if (m_out.estimates[i].method == method) {
                return i;
            }
        }
        return std::nullopt;
    }

    void choose() {
        struct Candidate {
            PowerMethod method;
            const base::MessageForm* why;
            bool isAllowed = true;
        };
        const std::array candidates{
            Candidate{PowerMethod::InputPower, &kChosenInputPower},
            Candidate{PowerMethod::PowerFactor, &kChosenPowerFactor, m_reading.powerFactor.has_value()},
            Candidate{PowerMethod::NoLoadAmps, &kChosenNoLoadAmps},
            Candidate{PowerMethod::PowerFactor, &kChosenPowerFactor},
            Candidate{PowerMethod::AmpRatio, &kChosenAmpRatio},
            Candidate{PowerMethod::Slip, &kChosenSlip}};
        for (const Candidate& candidate : candidates) {
            m_out.chosen = candidate.isAllowed ? find(candidate.method) : std::nullopt;
            if (m_out.chosen) {
                m_out.reason = base::Fault{candidate.why, "", {}};
                break;
            }
        }
        if (!m_out.chosen) {
            m_out.findings.push_back({&kNoMotorPower, "", {}});
            return;
        }
        const auto [least, most] =
            std::minmax_element(m_out.estimates.begin(), m_out.estimates.end(),
                                [](const auto& one, const auto& other) { return one.shaft < other.shaft; });
        m_out.lowest = least->shaft;
        m_out.highest = most->shaft;
    }

    const MotorPlate& m_plate;
    const MotorReading& m_reading;
    std::optional<Voltage> m_volts;
    std::optional<Current> m_amps;
    MotorPower m_out;
};

}  // namespace

MotorPower motorPower(const MotorPlate& plate, const MotorReading& reading) {
    return Estimator(plate, reading).take();
}

std::optional<RotationalSpeed> synchronousSpeedAbove(RotationalSpeed plateSpeed) {
    std::optional<RotationalSpeed> nearest;
    for (const double frequency_Hz : {50.0, 60.0}) {
        for (int pairs = 1; pairs <= 6; ++pairs) {
            const RotationalSpeed speed = RotationalSpeed::si(frequency_Hz / pairs);
            if (speed > plateSpeed && (!nearest || speed < *nearest)) {
                nearest = speed;
            }
        }
    }
    if (!nearest || 1 - plateSpeed / *nearest > kLargestSlip) {
        return std::nullopt;
    }
    return nearest;
}

std::optional<Power> electricalInput(const MotorReading& reading, std::optional<Ratio> powerFactor) {
    const auto volts = meanOf(reading.volts);
    const auto amps = meanOf(reading.amps);
    if (!volts || !amps || !powerFactor) {
        return std::nullopt;
    }
    return Power::si(std::numbers::sqrt3 * volts->si() * amps->si() * powerFactor->si());
}

}  // namespace ww::energy
