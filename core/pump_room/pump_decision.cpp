#include "core/pump_room/pump_decision.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/assess.h"
#include "core/balancing/detail/pump_duty.h"
#include "core/balancing/system_curve.h"
#include "core/energy/best_point.h"
#include "core/project/units.h"
#include "core/pump_room/code_decision.h"
#include "core/pump_room/speed_not_read.h"
#include "core/pump_room/test_sheet.h"
#include "core/quantity/measured.h"
#include "core/quantity/shown_units.h"

namespace ww::pump_room {

namespace {

using project::Project;
using quantity::Duration;

/// A speed read this near to rated is full speed: a motor's slip differs that much between loads (common
/// practice, no source).
constexpr double kFullSpeedBand = 0.03;
/// Two ways to the required head that differ by more are worth a search (common practice, no source).
constexpr double kRequiredApartShare = 0.10;
/// A solved flow this far off design is no longer the affinity laws' (common practice, no source).
constexpr double kConfirmedApartShare = 0.02;

class Decision {
  public:
    /// `picture`: of the last round. `counted`: of the pumps that ran in it.
    Decision(const Project& project, const PumpDecisionOptions& options, const balancing::Assessment& picture,
             balancing::CountedCurve counted)
        : m_project(project), m_options(options), m_picture(picture) {
        m_out.curve = std::move(counted);
    }

    PumpDecision take() {
        const std::vector<VolumeFlow> design = project::designFlows(m_project);
        for (const std::size_t terminal : m_project.tree().terminals()) {
            m_out.designFlow += design[terminal];
        }
        m_out.throttling = proveLeastThrottling(m_project, m_picture, !m_project.job().codeException.empty());
        addFindings(m_out.curve.reasons);
        takeRequired();
        RunningPumps running = runningPumps(m_project, fullSpeedFraction(), {}, m_out.curve.headFactor);
        addFindings(running.faults);
        m_pumps = running.pumps;
        if (running.set) {
            takeDuty(*running.set);
            const bool isTrusted = m_out.curve.basis != balancing::CurveBasis::Untrusted;
            if (m_out.counted && isTrusted && m_out.designFlow.si() > 0) {
                takeOptions(*running.set);
                takeCode(*running.set);
            }
        }
        return std::move(m_out);
    }

  private:
    void addFindings(const std::vector<base::Fault>& faults) {
        m_out.findings.insert(m_out.findings.end(), faults.begin(), faults.end());
    }

    const project::Pump& firstPump() const { return m_project.pumps()[m_pumps.front()]; }

    /// Highest speed over rated in any standing reading of a running pump.
    std::optional<double> highestSpeedRead() const {
        std::optional<double> highest;
        for (const project::PumpReading& reading : m_project.pumpReadings()) {
            const project::Pump* pump = m_project.pumps().find(reading.pump);
            const bool counts = pump != nullptr && pump->isRunning && pump->speed &&
                                pump->speed->value.si() > 0 && reading.speed &&
                                reading.status == project::ReadingStatus::Standing;
            if (counts) {
                highest = std::max(highest.value_or(0), reading.speed->value / pump->speed->value);
            }
        }
        return highest;
    }

    double fullSpeedFraction() {
        const auto highest = highestSpeedRead();
        if (highest && *highest > 1 + kFullSpeedBand) {
            m_out.findings.push_back({&kSpeedAboveFull, "", {quantity::percentDigits(*highest, 4)}});
        }
        return highest && std::abs(*highest - 1) <= kFullSpeedBand ? *highest : 1.0;
    }

    /// Whether a need was read by the gauges that the curve goes through: what is off in them is off in both.
    bool isReadByGauges(const RequiredHead& required) const {
        return m_out.curve.isThroughGauges() && required.roundNumber == m_out.curve.roundNumber;
    }

    void takeRequired() {
        m_out.required = requiredHeads(m_project, m_options.learned, m_out.curve.headFactor);
        if (m_out.required.empty()) {
            m_out.findings.push_back({&kRequiredUnknown, "", {}});
            return;
        }
        const auto rank = [&](const RequiredHead& one) {
            return m_options.source == one.source       ? 0
                   : isReadByGauges(one)                ? 1
                   : one.source == HeadSource::Learned  ? 2
                   : one.source == HeadSource::Measured ? 3
                                                        : 4;
        };
        const auto best =
            std::min_element(m_out.required.begin(), m_out.required.end(),
                             [&](const RequiredHead& a, const RequiredHead& b) { return rank(a) < rank(b); });
        m_out.counted = static_cast<std::size_t>(best - m_out.required.begin());
        const quantity::ShownUnits units = project::shownUnits(m_project);
        for (const RequiredHead& other : m_out.required) {
            if (std::abs(other.head / best->head - 1) > kRequiredApartShare) {
                m_out.findings.push_back(
                    {&kRequiredApart, "", {units.written(best->head), units.written(other.head)}});
            }
        }
    }

    /// Measured shaft power of the running pumps in a round; nothing where one has none.
    std::optional<Power> measuredPower(int roundNumber) const {
        const std::vector<PumpSheet> sheets = pumpSheets(m_project);
        Power sum;
        for (const std::size_t pump : m_pumps) {
            std::optional<Power> own;
            const PumpSheet& sheet = sheets[pump];
            for (std::size_t i = 0; i < sheet.rounds.size(); ++i) {
                const energy::PumpPointResult& point = sheet.sheet.points[i];
                if (sheet.rounds[i] == roundNumber && balancing::detail::isDuty(point.kind) &&
                    point.motor.shaft()) {
                    own = point.motor.shaft();
                }
            }
            if (!own) {
                return std::nullopt;
            }
            sum += *own;
        }
        return sum;
    }

    /// The speed of the round's duty, and that it was not read there.
    void takeSpeed(PresentDuty& duty) {
        for (const balancing::PumpDuty& pump : m_picture.pumps) {
            if (std::find(m_pumps.begin(), m_pumps.end(), pump.pump) == m_pumps.end()) {
                continue;
            }
            if (pump.pump == m_pumps.front()) {
                duty.speedFraction = Ratio::si(pump.speedFraction);
                duty.speedRound = pump.speedRound;
            }
            duty.isSpeedRead = duty.isSpeedRead && pump.speedRound == duty.roundNumber;
        }
        if (!duty.isSpeedRead) {
            m_out.findings.push_back(
                speedNotRead(firstPump().tag, duty.roundNumber, duty.speedFraction, duty.speedRound));
        }
    }

    void takeDuty(const curve::PumpSet& full) {
        const auto at = balancing::systemCurve(m_project, m_picture, m_out.curve.headFactor);
        if (!at) {
            m_out.findings.push_back({&kDutyUnknown, "", {}});
            return;
        }
        PresentDuty duty;
        duty.roundNumber = at->roundNumber;
        duty.flow = at->flow;
        duty.head = at->head;
        takeSpeed(duty);
        const double fullFraction = full.members().front().state.speedFraction;
        const double part = duty.speedFraction.si() / fullFraction;
        if (part <= 0) {
            return;
        }
        const curve::PumpSet present = full.atSpeed(part);
        const quantity::Density density = m_project.fluid().density();
        duty.shaft = measuredPower(duty.roundNumber);
        duty.isPowerMeasured = duty.shaft.has_value();
        const Power water = energy::waterPower(duty.flow, duty.head, density);
        if (!duty.shaft && present.isWithinPoints(duty.flow)) {
            // The table's efficiency at this flow, with the head that was read.
            const auto efficiency = present.efficiency(duty.flow, density);
            duty.shaft = efficiency ? std::optional(water / efficiency->si()) : std::nullopt;
        }
        if (duty.shaft && duty.shaft->si() > 0) {
            duty.efficiency = Ratio::si(water / *duty.shaft);
        }
        const std::vector<VolumeFlow> flows = present.flowsOfMembers(duty.flow);
        if (!flows.empty()) {
            const curve::PumpMember& first = present.members().front();
            if (const auto best = energy::bestEfficiencyFlow(first.curve, first.state)) {
                duty.ofBestFlow = Ratio::si(flows.front() / *best);
            }
        }
        m_out.duty = duty;
    }

    energy::EnergyTerms terms() {
        energy::EnergyTerms out;
        out.load = loadOf(m_project.job());
        if (out.load.empty()) {
            m_out.findings.push_back({&kHoursUnknown, "", {}});
        }
        if (firstPump().motorEfficiency) {
            out.motorEfficiency = firstPump().motorEfficiency->value;
        } else {
            m_out.findings.push_back({&kMotorEfficiencyUnknown, firstPump().tag, {}});
        }
        out.driveEfficiency = m_options.driveEfficiency;
        if (m_project.job().powerPrice) {
            out.price = energy::pricePerKilowattHour(*m_project.job().powerPrice);
        }
        if (m_out.duty && m_out.duty->isPowerMeasured && m_out.duty->efficiency &&
            m_out.duty->efficiency->si() <= 1) {
            out.measuredEfficiency = m_out.duty->efficiency;
        }
        out.heldHead = m_options.heldHead;
        return out;
    }

    /// The family where every running pump has the same table and impeller.
    std::optional<curve::ImpellerFamily> commonFamily() const {
        const project::Pump& first = firstPump();
        const bool isAlike = std::all_of(m_pumps.begin(), m_pumps.end(), [&](std::size_t index) {
            const project::Pump& pump = m_project.pumps()[index];
            return pump.rows == first.rows && pump.impeller == first.impeller;
        });
        return isAlike ? familyOf(first, m_out.curve.headFactor) : std::nullopt;
    }

    void takeOptions(const curve::PumpSet& set) {
        const project::Pump& pump = firstPump();
        const auto family = commonFamily();
        energy::PumpOptionsInput input;
        input.set = &set;
        input.designFlow = m_out.designFlow;
        input.requiredHead = m_out.required[*m_out.counted].head;
        input.density = m_project.fluid().density();
        input.terms = terms();
        input.partLoad = m_options.partLoad;
        input.hasDrive = pump.hasDrive;
        if (pump.speed) {
            input.fullSpeed = pump.speed->value * set.members().front().state.speedFraction;
        }
        input.impeller = quantity::valueOf(pump.impeller);
        input.impellerMinimum = quantity::valueOf(pump.impellerMinimum);
        if (family) {
            input.family = &*family;
            input.impellerMaximum = family->members().back().diameter;
        }
        input.units = project::shownUnits(m_project, pump);
        input.trimFlowExponent = m_options.trimFlowExponent;
        input.firstCut = m_options.firstCut;
        if (pump.minimumSpeed) {
            input.minimumSpeed = pump.minimumSpeed->value;
        }
        energy::PumpOptions found = energy::pumpOptions(input);
        m_out.headAvailable = found.headAvailable;
        if (found.headAvailable) {
            m_out.headPublished = *found.headAvailable / m_out.curve.headFactor.si();
        }
        m_out.excess = found.excess;
        const RequiredHead& required = m_out.required[*m_out.counted];
        for (base::Fault& finding : found.findings) {
            if (finding.is(energy::kPumpTooSmall) && !canBeTold(*m_out.excess, required)) {
                finding = {&kShortUndecided,
                           "",
                           {input.units.written(*m_out.headAvailable), input.units.written(required.head)}};
            }
            finding.subject = pump.tag;
            m_out.findings.push_back(std::move(finding));
        }
        takePresentExcess(set);
        confirm(std::move(found.options));
        addNotes(input.units);
    }

    void addNotes(const quantity::ShownUnits& units) {
        const RequiredHead& required = m_out.required[*m_out.counted];
        if (!m_out.options.empty() && !canBeTold(*m_out.excess, required)) {
            m_out.findings.push_back(
                {&kPumpFits, "", {units.written(*m_out.headAvailable), units.written(required.head)}});
        }
        const auto look = firstLook(m_project, m_picture);
        if (look && !m_out.options.empty()) {
            m_out.findings.push_back(*look);
        }
    }

    void takePresentExcess(const curve::PumpSet& set) {
        if (!m_out.duty) {
            return;
        }
        const double part = m_out.duty->speedFraction.si() / set.members().front().state.speedFraction;
        const curve::PumpSet present = set.atSpeed(part);
        const auto head = present.head(m_out.designFlow);
        if (head && present.isWithinPoints(m_out.designFlow)) {
            m_out.presentExcess = *head - m_out.required[*m_out.counted].head;
        }
    }

    void confirm(std::vector<energy::PumpOption> options) {
        const BalancedLoop loop(m_project, m_options.learned);
        addFindings(loop.faults());
        bool isApart = false;
        for (energy::PumpOption& option : options) {
            DecidedOption decided;
            // A loop that needs another head than the gauges read proves nothing of what rests on them.
            if (!isReadByGauges(m_out.required[*m_out.counted])) {
                decided.confirmed = loop.solve(*option.set, option.throttled, m_out.designFlow, option.head);
            }
            if (decided.confirmed && !isApart &&
                std::abs(decided.confirmed->flowDifference.si()) > kConfirmedApartShare) {
                isApart = true;
                m_out.findings.push_back(
                    {&kConfirmedApart,
                     "",
                     {quantity::percentDigits(1 + decided.confirmed->flowDifference.si(), 4)}});
            }
            decided.option = std::move(option);
            m_out.options.push_back(std::move(decided));
        }
    }

    void takeCode(const curve::PumpSet& set) {
        const DecidedOption* throttle = m_out.find(energy::PumpAction::Throttle);
        if (throttle == nullptr) {
            return;
        }
        if (m_project.job().codeForm == project::CodeForm::NotStated) {
            const quantity::ShownUnits units = project::shownUnits(m_project, firstPump());
            const auto limits = energy::percentOrFloorThresholds(units.power != quantity::Unit::Horsepower);
            m_out.findings.push_back(
                {&kCodeFormUnset, "", {units.text(limits.smallMotor, 2), units.text(*limits.floor, 2)}});
        }
        const DecidedOption* slow = m_out.find(energy::PumpAction::Slow);
        CodeCase what;
        what.set = &set;
        what.pumps = m_pumps;
        what.designFlow = m_out.designFlow;
        what.available = *m_out.headAvailable;
        what.required = m_out.required[*m_out.counted].head;
        // A speed that was not read shows nobody that the pump was reduced.
        if (!m_out.duty || m_out.duty->isSpeedRead) {
            what.presentExcess = m_out.presentExcess;
        }
        what.efficiency = throttle->option.efficiency;
        what.efficiencyReduced = slow != nullptr ? slow->option.efficiency : std::nullopt;
        CodeOutcome outcome = testCode(m_project, what);
        if (outcome.isReduced) {
            m_out.findings.push_back(
                {&kCodeMet, "", {quantity::percentDigits(m_out.duty->speedFraction.si(), 4)}});
        }
        m_out.isCodeMet = outcome.isMet;
        m_out.codeOtherForm = std::move(outcome.otherForm);
        m_out.code = std::move(outcome.test);
        m_out.codeOwnEfficiencies = std::move(outcome.ownEfficiencies);
    }

    const Project& m_project;
    const PumpDecisionOptions& m_options;
    const balancing::Assessment& m_picture;
    std::vector<std::size_t> m_pumps;
    PumpDecision m_out;
};

}  // namespace

std::vector<energy::LoadStep> loadOf(const project::Job& job) {
    constexpr double kHour_s = 3600;
    std::vector<energy::LoadStep> load;
    for (const project::LoadRow& row : job.loadRows) {
        if (row.hours.value() > 0 && row.flowFraction.value.si() > 0) {
            load.push_back({Duration::si(row.hours.value() * kHour_s), row.flowFraction.value});
        }
    }
    if (load.empty() && job.hoursPerYear && job.hoursPerYear->value() > 0) {
        load.push_back({Duration::si(job.hoursPerYear->value() * kHour_s), Ratio::si(1)});
    }
    return load;
}

PumpDecision decidePump(const Project& project, const PumpDecisionOptions& options) {
    const balancing::Assessment read = balancing::assessLast(project);
    balancing::CountedCurve counted = balancing::countedCurve(project, read);
    if (options.running.empty() && !project.hasEarlierDesigns()) {
        return Decision(project, options, read, std::move(counted)).take();
    }
    // What was read stands by its own design; what is decided is for the design of today.
    const Project chosen = options.running.empty() ? project : withRunning(project, options.running);
    const balancing::Assessment picture = balancing::assessLast(chosen, {.byDesignOfToday = true});
    return Decision(chosen, options, picture, std::move(counted)).take();
}

}  // namespace ww::pump_room
