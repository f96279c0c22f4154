#include "core/energy/pump_options.h"

#include <algorithm>

#include "core/base/term.h"
#include "core/quantity/measured.h"
#include "core/quantity/shown_units.h"

namespace ww::energy {

namespace {

class Choice {
  public:
    explicit Choice(const PumpOptionsInput& input) : m_in(input), m_set(*input.set) {}

    PumpOptions take() {
        m_out.headAvailable = m_set.head(m_in.designFlow);
        if (!m_out.headAvailable || !m_set.isWithinPoints(m_in.designFlow)) {
            m_out.headAvailable.reset();
            m_out.findings.push_back({&kDutyBeyondCurve, "", {lastFlow()}});
            return std::move(m_out);
        }
        m_out.excess = *m_out.headAvailable - m_in.requiredHead;
        // A pump that fits to the last digits has nothing to take away and lacks nothing.
        if (m_out.excess->si() < -1e-6 * m_in.requiredHead.si()) {
            m_out.findings.push_back(
                {&kPumpTooSmall,
                 "",
                 {m_in.units.written(*m_out.headAvailable), m_in.units.written(m_in.requiredHead),
                  m_in.units.written(-*m_out.excess)}});
            return std::move(m_out);
        }
        throttle();
        trim();
        slow();
        sayWaste();
        const bool isPowerKnown = std::all_of(m_out.options.begin(), m_out.options.end(),
                                              [](const PumpOption& option) { return option.shaft; });
        if (!isPowerKnown) {
            m_out.findings.push_back({&kEfficiencyUnknown, "", {}});
        }
        return std::move(m_out);
    }

  private:
    std::string lastFlow() const {
        VolumeFlow last;
        for (const curve::PumpMember& member : m_set.members()) {
            const VolumeFlow own = member.curve.lastFlow(member.state);
            last = m_set.joint() == curve::PumpJoint::Parallel ? last + own
                   : last.si() == 0                            ? own
                                                               : std::min(last, own);
        }
        return m_in.units.text(last);
    }

    /// Power, energy and cost of a set at design flow.
    void price(PumpOption& option, PartLoad partLoad, bool hasDrive) {
        const curve::PumpSet& set = *option.set;
        option.shaft = shaftPowerAt(set, m_in.designFlow, m_in.density, m_in.terms.measuredEfficiency);
        if (!option.shaft) {
            return;
        }
        option.efficiency = Ratio::si(waterPower(m_in.designFlow, option.head, m_in.density) / *option.shaft);
        if (m_in.terms.motorEfficiency) {
            const Ratio drive = m_in.terms.driveEfficiency.value_or(Ratio::si(1));
            option.wire =
                wirePower(*option.shaft, *m_in.terms.motorEfficiency, hasDrive ? drive : Ratio::si(1));
        }
        option.energy =
            yearlyEnergy(set, partLoad, m_in.designFlow, option.head, m_in.density, m_in.terms, hasDrive);
        if (option.energy && m_in.terms.price) {
            option.cost = energy::cost(*option.energy, *m_in.terms.price);
        }
    }

    void throttle() {
        PumpOption option;
        option.action = PumpAction::Throttle;
        option.set = m_set;
        option.head = *m_out.headAvailable;
        option.throttled = std::max(Head(), *m_out.excess);
        price(option, PartLoad::RidesCurve, false);
        m_out.options.push_back(std::move(option));
    }

    /// What the throttle wastes at the shaft is what slowing the pump takes off it; without that option, what
    /// the throttled head costs at the efficiency of the duty.
    void sayWaste() {
        PumpOption& throttled = m_out.options.front();
        if (throttled.throttled.si() <= 0) {
            return;
        }
        const auto slowed =
            std::find_if(m_out.options.begin(), m_out.options.end(),
                         [](const PumpOption& option) { return option.action == PumpAction::Slow; });
        std::string wasted = base::term("unknown power");
        if (throttled.shaft && slowed != m_out.options.end() && slowed->shaft) {
            wasted = m_in.units.text(*throttled.shaft - *slowed->shaft, 3);
        } else if (throttled.efficiency) {
            wasted = m_in.units.text(
                shaftPower(m_in.designFlow, throttled.throttled, m_in.density, *throttled.efficiency), 3);
        }
        throttled.cautions.insert(throttled.cautions.begin(),
                                  {&kThrottleWastes, "", {m_in.units.written(throttled.throttled), wasted}});
    }

    /// All pumps with their impellers cut to this fraction: along the family where one is known.
    curve::PumpSet trimmed(double diameterFraction) const {
        std::vector<curve::PumpMember> members = m_set.members();
        for (curve::PumpMember& member : members) {
            if (m_in.family != nullptr && m_in.impeller) {
                member.curve = m_in.family->curveOf(*m_in.impeller * diameterFraction);
            } else {
                member.curve = curve::trimmedCurve(member.curve, diameterFraction, m_in.trimFlowExponent);
            }
        }
        return {std::move(members), m_set.joint()};
    }

    /// The fraction of the diameter whose curve passes through design flow and required head.
    std::optional<double> trimFraction() const {
        double low = 0.3;
        double high = 1;
        const auto gives = [&](double fraction) {
            const auto at = trimmed(fraction).head(m_in.designFlow);
            return at && *at >= m_in.requiredHead;
        };
        if (gives(low)) {
            return std::nullopt;
        }
        constexpr int kHalvings = 50;
        for (int i = 0; i < kHalvings; ++i) {
            const double middle = 0.5 * (low + high);
            (gives(middle) ? high : low) = middle;
        }
        return high;
    }

    void trim() {
        const auto fraction = trimFraction();
        if (!fraction) {
            return;
        }
        PumpOption option;
        option.action = PumpAction::Trim;
        option.ratio = Ratio::si(*fraction);
        option.set = trimmed(*fraction);
        option.head = option.set->head(m_in.designFlow).value_or(m_in.requiredHead);
        price(option, PartLoad::RidesCurve, false);
        const double first = 1 - m_in.firstCut.si() * (1 - *fraction);
        option.headAfterFirstCut = trimmed(first).head(m_in.designFlow);
        if (m_in.impeller) {
            option.impeller = *m_in.impeller * *fraction;
            option.firstCut = *m_in.impeller * first;
            checkDiameter(option);
        } else {
            option.cautions.push_back({&kTrimUnknownImpeller, "", {quantity::percentDigits(*fraction, 3)}});
        }
        if (*fraction < 1) {
            if (m_set.members().size() > 1) {
                option.cautions.push_back({&kTrimPairAlike, "", {std::to_string(m_set.members().size())}});
            }
            option.cautions.push_back({&kTrimForGood, "", {}});
            option.cautions.push_back({&kTrimReadingHigh, "", {}});
        }
        m_out.options.push_back(std::move(option));
    }

    void checkDiameter(PumpOption& option) {
        const Length diameter = *option.impeller;
        if (diameter < *m_in.impeller) {
            option.cautions.push_back({&kTrimOvershoots, "", {m_in.units.text(*option.firstCut)}});
        }
        if (m_in.impellerMinimum && diameter < *m_in.impellerMinimum) {
            option.isAllowed = false;
            option.cautions.insert(option.cautions.begin(),
                                   {&kTrimBelowMinimum,
                                    "",
                                    {m_in.units.text(diameter), m_in.units.text(*m_in.impellerMinimum)}});
        }
        const Length largest = m_in.impellerMaximum.value_or(*m_in.impeller);
        if (diameter < largest * m_in.leastOfMaximum.si()) {
            option.isAllowed = false;
            option.cautions.insert(option.cautions.begin(),
                                   {&kTrimBelowShare,
                                    "",
                                    {quantity::percentDigits(diameter / largest, 3),
                                     quantity::percentDigits(m_in.leastOfMaximum.si(), 3)}});
        }
        if (m_in.family != nullptr && diameter < m_in.family->members().front().diameter) {
            option.cautions.push_back({&kTrimBeyondFamily, "", {}});
        }
    }

    void slow() {
        const auto factor = speedFactorThrough(m_set, m_in.designFlow, m_in.requiredHead);
        if (!factor) {
            return;
        }
        PumpOption option;
        option.action = PumpAction::Slow;
        option.ratio = Ratio::si(std::min(1.0, *factor));
        option.set = m_set.atSpeed(option.ratio.si());
        option.head = option.set->head(m_in.designFlow).value_or(m_in.requiredHead);
        if (m_in.fullSpeed) {
            option.speed = *m_in.fullSpeed * option.ratio.si();
        }
        price(option, m_in.partLoad, true);
        if (option.ratio < m_in.minimumSpeed) {
            option.isAllowed = false;
            option.cautions.push_back({&kSlowBelowMinimum,
                                       "",
                                       {quantity::percentDigits(option.ratio.si(), 3),
                                        quantity::percentDigits(m_in.minimumSpeed.si(), 3)}});
        }
        constexpr double kEfficiencyHolds = 0.6;  // of rated speed; Karassik et al., from memory
        if (option.ratio.si() < kEfficiencyHolds) {
            option.cautions.push_back({&kSlowLosesEfficiency, "", {}});
        }
        if (!m_in.hasDrive) {
            option.cautions.push_back({&kSlowNeedsDrive, "", {}});
        }
        if (!m_in.terms.driveEfficiency && option.energy) {
            option.cautions.push_back({&kDriveLossUnknown, "", {}});
        }
        m_out.options.push_back(std::move(option));
    }

    const PumpOptionsInput& m_in;
    const curve::PumpSet& m_set;
    PumpOptions m_out;
};

}  // namespace

PumpOptions pumpOptions(const PumpOptionsInput& input) {
    EXPECTS(input.set != nullptr && input.designFlow.si() > 0 && input.requiredHead.si() > 0);
    return Choice(input).take();
}

std::string diameterDigits(Length diameter, quantity::Unit unit) {
    return base::Decimal::fromNumber(diameter.in(unit), unit == quantity::Unit::Inch ? 2 : 0).text();
}

}  // namespace ww::energy
