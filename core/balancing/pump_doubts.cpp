#include "core/balancing/pump_doubts.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/detail/doubts.h"
#include "core/balancing/detail/pump_duty.h"
#include "core/balancing/detail/wording.h"
#include "core/base/term.h"

namespace ww::balancing {

namespace {

using project::Project;
using project::PumpPoint;
using project::PumpReading;
using quantity::Head;

constexpr double kHighestSpeed = 1.10;
constexpr double kFarAboveCurve = 1.5;
/// Speeds that differ by less take about the same current and power.
constexpr double kSameSpeed = 0.1;

/// The points at which a pump runs, from no flow to most; nothing of others, whose flow is not ordered.
std::optional<int> placeByFlow(PumpPoint point) {
    switch (point) {
        case PumpPoint::Shutoff:
            return 0;
        case PumpPoint::ThrottledToDesign:
            return 1;
        case PumpPoint::FullOpen:
            return 2;
        case PumpPoint::Static:
        case PumpPoint::Running:
        case PumpPoint::Final:
            break;
    }
    return std::nullopt;
}

std::string word(PumpPoint point) {
    switch (point) {
        case PumpPoint::Shutoff:
            return base::term("shutoff");
        case PumpPoint::ThrottledToDesign:
            return base::term("throttled");
        case PumpPoint::FullOpen:
            return base::term("full open");
        case PumpPoint::Static:
        case PumpPoint::Running:
        case PumpPoint::Final:
            break;
    }
    return base::term("as it runs");
}

class PumpDoubter {
  public:
    PumpDoubter(const Project& project, const PumpReading& reading)
        : m_project(project), m_reading(reading), m_pump(project.pumps().find(reading.pump)) {
        for (const PumpReading& other : project.pumpReadings()) {
            const bool counts = other.pump == reading.pump && other.id != reading.id &&
                                other.status == project::ReadingStatus::Standing &&
                                other.point != PumpPoint::Static;
            if (counts) {
                m_others.push_back(&other);
            }
        }
    }

    std::vector<base::Fault> take() {
        if (m_pump == nullptr || m_reading.point == PumpPoint::Static) {
            return {};
        }
        doubtGauges();
        doubtSpeed();
        doubtCurrent(base::term("current"),
                     {&PumpReading::amps, &PumpReading::ampsSecond, &PumpReading::ampsThird});
        doubtCurrent(base::term("voltage"),
                     {&PumpReading::volts, &PumpReading::voltsSecond, &PumpReading::voltsThird});
        doubtCurrent(base::term("input power"), {&PumpReading::power});
        if (m_reading.powerFactor && m_reading.powerFactor->value.si() > 1) {
            add(kPumpPowerFactorHigh, {m_reading.powerFactor->text()});
        }
        return std::move(m_found);
    }

  private:
    template <class Q>
    using Field = std::optional<quantity::Measured<Q>> PumpReading::*;

    void add(const base::MessageForm& form, std::vector<std::string> arguments) {
        m_found.push_back({&form, m_pump->tag, std::move(arguments)});
    }

    std::optional<double> speedOf(const PumpReading& reading) const {
        const bool isKnown =
            reading.speed && reading.speed->value.si() > 0 && m_pump->speed && m_pump->speed->value.si() > 0;
        return isKnown ? std::optional(reading.speed->value / m_pump->speed->value) : std::nullopt;
    }
    bool isAtSameSpeed(const PumpReading& other) const {
        const auto one = speedOf(m_reading);
        const auto two = speedOf(other);
        return !one || !two || std::abs(*one / *two - 1) <= kSameSpeed;
    }

    void doubtGauges() {
        if (m_reading.suction && m_reading.discharge && !m_reading.gaugeRise &&
            m_reading.suction->value > m_reading.discharge->value) {
            add(kPumpSuctionAbove, {m_reading.suction->text(), m_reading.discharge->text()});
            return;
        }
        const auto place = placeByFlow(m_reading.point);
        const auto mine = headOf(m_reading);
        if (const Head most = highestOfCurve();
            mine && most.si() > 0 && mine->head > kFarAboveCurve * most.si()) {
            add(kPumpAboveCurve,
                {detail::headText(m_project, Head::si(mine->head)), detail::headText(m_project, most)});
            return;
        }
        for (const PumpReading* other : m_others) {
            const auto otherPlace = placeByFlow(other->point);
            const auto theirs = headOf(*other);
            if (!place || !otherPlace || *place == *otherPlace || !mine || !theirs ||
                other->round != m_reading.round) {
                continue;
            }
            const bool isMore = *place > *otherPlace;
            const HeadRead& more = isMore ? *mine : *theirs;
            const HeadRead& less = isMore ? *theirs : *mine;
            if (more.head > less.head + kTwice * std::hypot(more.uncertainty, less.uncertainty)) {
                add(kPumpHeadRises, {word((isMore ? m_reading : *other).point),
                                     detail::headText(m_project, Head::si(more.head)),
                                     word((isMore ? *other : m_reading).point),
                                     detail::headText(m_project, Head::si(less.head))});
                return;
            }
        }
    }

    /// At rated speed, as far as the speed is known: H (Nr/N)^2 (affinity laws).
    struct HeadRead {
        double head = 0;  ///< m
        double uncertainty = 0;
    };
    std::optional<HeadRead> headOf(const PumpReading& reading) const {
        const auto rise = detail::riseOf(m_project, reading);
        if (!rise || rise->value.si() <= 0) {
            return std::nullopt;
        }
        const double square = std::pow(speedOf(reading).value_or(1), 2);
        // One gauge reads both points: what it is off by as a whole is off in both, its digits are not.
        constexpr double kSameGauge = 0.01;
        const double head_m = m_project.fluid().head(rise->value).si() / square;
        return HeadRead{head_m, kSameGauge * head_m};
    }

    /// Of any impeller; zero without a table.
    Head highestOfCurve() const {
        Head most;
        for (const project::PumpTableRow& row : m_pump->rows) {
            most = std::max(most, row.head.value);
        }
        return most;
    }

    void doubtSpeed() {
        const auto speed = speedOf(m_reading);
        if (speed && *speed > kHighestSpeed) {
            add(kPumpSpeedHigh, {m_reading.speed->text(), quantity::percentDigits(*speed, 4)});
        }
    }

    template <class Q>
    void doubtCurrent(const char* name, std::initializer_list<Field<Q>> phases) {
        std::vector<const quantity::Measured<Q>*> others;
        for (const Field<Q> phase : phases) {
            for (const PumpReading* other : m_others) {
                if ((other->*phase) && (other->*phase)->value.si() > 0 && isAtSameSpeed(*other)) {
                    others.push_back(&*(other->*phase));
                }
            }
            // Phases of one point are held against one another only where no other point is there.
        }
        if (others.empty()) {
            for (const Field<Q> phase : phases) {
                if ((m_reading.*phase) && (m_reading.*phase)->value.si() > 0) {
                    others.push_back(&*(m_reading.*phase));
                }
            }
            constexpr std::size_t kFewest = 3;  // of two it cannot be told which one is off
            if (others.size() < kFewest) {
                others.clear();
            }
        }
        const auto middle = others.begin() + static_cast<std::ptrdiff_t>(others.size() / 2);
        std::nth_element(others.begin(), middle, others.end(),
                         [](const auto* one, const auto* other) { return one->value < other->value; });
        for (const Field<Q> phase : phases) {
            if (!(m_reading.*phase)) {
                continue;
            }
            const quantity::Measured<Q>& read = *(m_reading.*phase);
            if (read.value.si() <= 0) {
                add(kPumpNothingRead, {name});
                return;
            }
            const double ratio = middle != others.end() ? read.value / (*middle)->value : 1;
            if (ratio < detail::kPlausibleLowRatio || ratio > detail::kPlausibleHighRatio) {
                farOff(name, read, **middle, ratio);
                return;
            }
        }
    }

    template <class Q>
    void farOff(const char* name, const quantity::Measured<Q>& read, const quantity::Measured<Q>& usual,
                double ratio) {
        constexpr double kNear = 0.25;
        for (const int places : {-1, 1, -2, 2}) {
            const double factor = std::pow(10.0, places);
            if (std::abs(ratio * factor - 1) <= kNear) {
                const int decimals = std::max(0, static_cast<int>(read.digits.decimals()) - places);
                const auto meant = quantity::measured<Q>(
                    base::Decimal::fromNumber(read.digits.value() * factor, decimals), read.unit);
                add(kPumpPointMoved, {name, read.text(), usual.text(), meant.text()});
                return;
            }
        }
        add(kPumpFarFromPoints, {name, read.text(), usual.text()});
    }

    static constexpr double kTwice = 2;

    const Project& m_project;
    const PumpReading& m_reading;
    const project::Pump* m_pump;
    std::vector<const PumpReading*> m_others;
    std::vector<base::Fault> m_found;
};

}  // namespace

std::vector<base::Fault> pumpDoubts(const Project& project, const PumpReading& pumpReading) {
    return PumpDoubter(project, pumpReading).take();
}

}  // namespace ww::balancing
