#include "core/balancing/counted_curve.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "core/balancing/assess.h"
#include "core/balancing/detail/pump_duty.h"
#include "core/balancing/detail/wording.h"
#include "core/balancing/system_curve.h"
#include "core/base/term.h"
#include "core/project/units.h"
#include "core/quantity/measured.h"

namespace ww::balancing {

namespace {

using detail::ShutoffRatio;
using project::Project;

/// Gauges and curve that are farther apart than so many standard uncertainties contradict one another, as two
/// ways to a flow do in the pump test (JCGM 100:2008, 6.3.3).
constexpr double kCoverage = 2;
/// Two factors on the curve that are nearer than this are one, as in the pump test (common practice, no
/// source).
constexpr double kFactorBand = 0.03;
/// Of the curve's head, by a pump with the impeller of its curve (common practice, no source).
constexpr double kLeastOfCurve = 0.80;
constexpr double kMostOfCurve = 1.10;

bool hasGauges(const Project& project, const project::Round& round) {
    return std::any_of(project.pumps().begin(), project.pumps().end(), [&](const project::Pump& pump) {
        const auto* reading = detail::countingPumpReading(project, round.id, pump.id);
        return pump.isRunning && reading != nullptr &&
               (reading->gaugeRise || (reading->suction && reading->discharge));
    });
}

/// A duty whose head the gauges and whose flow all the terminals gave.
struct ReadDuty {
    Assessment picture;
    SystemCurve at;
};

std::optional<ReadDuty> readDuty(const Project& project, const Assessment& picture) {
    const auto at = picture.isComplete ? systemCurve(project, picture) : std::nullopt;
    if (!at || !at->headUncertainty || !at->flowUncertainty) {
        return std::nullopt;
    }
    return ReadDuty{picture, *at};
}

/// Of the newest own round with a lower number that reads both.
std::optional<ReadDuty> dutyBefore(const Project& project, int number) {
    const auto order = project.roundsByNumber();
    for (auto index = order.rbegin(); index != order.rend(); ++index) {
        const project::Round& round = project.rounds()[*index];
        if (round.number >= number || round.kind == project::RoundKind::Witness ||
            !hasGauges(project, round)) {
            continue;
        }
        AssessOptions options;
        options.numbersOnly = true;
        if (auto duty = readDuty(project, assess(project, round.id, options))) {
            return duty;
        }
    }
    return std::nullopt;
}

std::optional<ReadDuty> newestDuty(const Project& project, const Assessment& last) {
    auto duty = readDuty(project, last);
    return duty ? duty : dutyBefore(project, last.roundNumber);
}

/// The pump that runs alone; null where several do.
const project::Pump* onlyPump(const Project& project) {
    const project::Pump* only = nullptr;
    for (const project::Pump& pump : project.pumps()) {
        if (pump.isRunning) {
            if (only != nullptr) {
                return nullptr;
            }
            only = &pump;
        }
    }
    return only;
}

class Comparison {
  public:
    Comparison(const Project& project, const ReadDuty& duty) : m_project(project), m_duty(duty) {
        m_out.roundNumber = duty.at.roundNumber;
    }

    CountedCurve take() {
        const auto made = headAt(m_duty.at.flow);
        const auto less = headAt(m_duty.at.flow - *m_duty.at.flowUncertainty);
        const auto more = headAt(m_duty.at.flow + *m_duty.at.flowUncertainty);
        if (!made || !less || !more || made->si() <= 0) {
            m_out.roundNumber = 0;
            return std::move(m_out);
        }
        const double ofFlow_m = 0.5 * (*less - *more).si();
        const Head apart = Head::si(kCoverage * std::hypot(m_duty.at.headUncertainty->si(), ofFlow_m));
        m_read = Ratio::si(m_duty.at.head / *made);
        m_uncertainty = Ratio::si(apart / *made / kCoverage);
        takeShutoff();
        if (std::abs((m_duty.at.head - *made).si()) <= apart.si()) {
            agree();
        } else {
            const quantity::ShownUnits units = project::shownUnits(m_project);
            m_out.reasons.push_back({&kDutyApart,
                                     "",
                                     {units.text(m_duty.at.flow), units.written(m_duty.at.head),
                                      units.written(*made), units.written(apart)}});
            contradict();
            compareWithBefore();
        }
        return std::move(m_out);
    }

  private:
    std::optional<Head> headAt(VolumeFlow flow) const {
        return detail::headOfPumps(m_project, m_duty.picture.pumps, flow, 1);
    }

    void takeShutoff() {
        if (const project::Pump* pump = onlyPump(m_project)) {
            m_shutoff = detail::shutoffRatio(m_project, *pump, m_out.roundNumber);
            const auto* reading = detail::countingPumpReading(m_project, *m_duty.picture.round, pump->id);
            m_isSameGauge = m_shutoff && reading != nullptr && reading->instrument == m_shutoff->gauge;
        }
    }

    bool isNear(Ratio shutoff, Ratio other, Ratio uncertainty) const {
        const double both = kCoverage * std::hypot(m_shutoff->uncertainty.si(), uncertainty.si());
        return std::abs(shutoff.si() - other.si()) <= std::max(kFactorBand, both);
    }

    void say(const base::MessageForm& form) {
        m_out.reasons.push_back(
            {&form, "", {detail::percentText(m_shutoff->ofCurve), detail::percentText(m_read)}});
    }

    void agree() {
        if (m_shutoff && !isNear(m_shutoff->ofCurve, Ratio::si(1), Ratio())) {
            say(kShutoffOff);
        }
    }

    void compareWithBefore() {
        const auto before = dutyBefore(m_project, m_out.roundNumber);
        const auto made =
            before ? detail::headOfPumps(m_project, before->picture.pumps, before->at.flow, 1) : std::nullopt;
        if (!made || made->si() <= 0) {
            return;
        }
        const Ratio then = Ratio::si(before->at.head / *made);
        const double both = kCoverage * std::hypot(*before->at.headUncertainty / *made, m_uncertainty.si());
        if (std::abs((then - m_read).si()) > std::max(kFactorBand, both)) {
            m_out.reasons.push_back({&kRoundsDiffer,
                                     "",
                                     {std::to_string(before->at.roundNumber), detail::percentText(then),
                                      std::to_string(m_out.roundNumber), detail::percentText(m_read)}});
        }
    }

    void contradict() {
        const bool isAlike = m_shutoff && isNear(m_shutoff->ofCurve, m_read, m_uncertainty);
        const bool isPlausible = m_read.si() >= kLeastOfCurve && m_read.si() <= kMostOfCurve;
        if (m_shutoff && !isAlike && !m_isSameGauge) {
            m_out.basis = CurveBasis::Untrusted;
            say(kGaugesDiffer);
        } else if (!isAlike && !isPlausible) {
            m_out.basis = CurveBasis::Untrusted;
            m_out.reasons.push_back({&kCurveImplausible,
                                     "",
                                     {detail::percentText(m_read), quantity::percentDigits(kLeastOfCurve, 3),
                                      quantity::percentDigits(kMostOfCurve, 3)}});
        } else {
            m_out.basis = CurveBasis::ThroughGauges;
            m_out.headFactor = m_read;
            m_out.reasons.push_back(
                {&kCountsGauges,
                 "",
                 {std::to_string(m_out.roundNumber), base::Decimal::fromNumber(m_read.si(), 3).text()}});
            if (m_shutoff) {
                say(isAlike ? kShutoffAgrees : kShutoffOnCurve);
            }
        }
    }

    const Project& m_project;
    const ReadDuty& m_duty;
    Ratio m_read;         ///< head of the gauges over the curve's
    Ratio m_uncertainty;  ///< of it, standard
    std::optional<ShutoffRatio> m_shutoff;
    bool m_isSameGauge = false;
    CountedCurve m_out;
};

}  // namespace

std::vector<base::Fault> CountedCurve::ruling() const {
    std::vector<base::Fault> out;
    std::copy_if(reasons.begin(), reasons.end(), std::back_inserter(out), [](const base::Fault& reason) {
        return reason.is(kCountsGauges) || reason.is(kCurveImplausible) || reason.is(kGaugesDiffer);
    });
    return out;
}

CountedCurve countedCurve(const Project& project, const Assessment& assessment) {
    const auto duty = newestDuty(project, assessment);
    return duty ? Comparison(project, *duty).take() : CountedCurve{};
}

std::string curveWords(const CountedCurve& curve) {
    return curve.isThroughGauges() ? base::term("from the pump's curve through the gauges of round ") +
                                         std::to_string(curve.roundNumber)
                                   : std::string(base::term("from the pump's curve"));
}

}  // namespace ww::balancing
