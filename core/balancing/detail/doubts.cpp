#include "core/balancing/detail/doubts.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/detail/wording.h"
#include "core/balancing/doubt_forms.h"
#include "core/base/term.h"
#include "core/curve/valve_flow.h"
#include "core/project/setting_text.h"

namespace ww::balancing::detail {

namespace {

using project::Branch;
using project::Instrument;
using project::Project;
using project::Reading;
using quantity::Measured;

/// Collects findings about one reading.
struct ReadingDoubts {
    const Branch& branch;
    const Reading& reading;
    std::vector<Finding> found;

    void add(const base::MessageForm& form, std::vector<std::string> arguments, Severity severity) {
        found.push_back({base::Fault{&form, branch.tag, std::move(arguments)},
                         reading.reason.empty() ? severity : Severity::Note, branch.id, reading.id});
    }
};

void doubtSize(const Project& project, const RoundNumbers& numbers, std::size_t index, ReadingDoubts& out) {
    const Measured<PressureDifference>& dp = *out.reading.dp;
    const auto expected = expectedDp(project, numbers, index);
    if (!expected || isPlausible(dp.value, *expected)) {
        return;
    }
    const quantity::Density density = project.fluid().density();
    const std::string wanted = dpIn(dp.unit, expected->dp, density);
    if (const auto fitting = fittingDp(dp, expected->dp, density)) {
        base::Fault slip = slipFault(out.branch.tag, dp, expected->dp, *fitting, density);
        out.add(*slip.form, std::move(slip.arguments), Severity::Warning);
    } else if (expected->round > 0) {
        out.add(kImplausible, {dp.text(), wanted, std::to_string(expected->round)}, Severity::Warning);
    } else {
        out.add(kImplausibleFirst, {dp.text(), wanted}, Severity::Warning);
    }
}

void doubtValve(const Project& project, const RoundNumbers& numbers, std::size_t index, ReadingDoubts& out) {
    const BranchResult& result = numbers.branches[index];
    const curve::ValveCharacteristic* curve = project.characteristicOf(out.branch);
    if (curve == nullptr) {
        if (!result.flow) {
            out.add(kNoValveTable, {}, Severity::Error);
        }
        return;
    }
    const auto setting = settingRead(project, out.branch, numbers.readings[index], numbers.earlier[index]);
    if (setting && !curve->covers(*setting)) {
        out.add(
            kSettingOutside,
            {settingText(project, out.branch, *setting), settingText(project, out.branch, curve->lowest()),
             settingText(project, out.branch, curve->fullyOpen())},
            Severity::Error);
    }
}

/// The mark of the scale at which the flow expected here makes a dp that can be read: the smaller of the flow
/// as read and the one of expectedDp(). Nothing where the valve stands there already, or has no such mark.
std::optional<Setting> settingToRead(const Project& project, const RoundNumbers& numbers, std::size_t index,
                                     PressureDifference minimum) {
    const Branch& branch = project.branches()[index];
    const curve::ValveCharacteristic* curve = project.characteristicOf(branch);
    const auto setting = settingRead(project, branch, numbers.readings[index], numbers.earlier[index]);
    if (curve == nullptr || !setting || !curve->covers(*setting)) {
        return std::nullopt;
    }
    const PressureDifference read = numbers.readings[index].dpMean;
    const auto expected = expectedDp(project, numbers, index);
    const PressureDifference dp = expected && (read.si() <= 0 || expected->dp < read) ? expected->dp : read;
    const curve::FlowCoefficient stands = curve->coefficient(*setting);
    if (dp.si() <= 0 || dp >= minimum || stands.si() <= 0) {
        return std::nullopt;
    }
    const quantity::Density density = project.fluid().density();
    const auto wanted =
        curve->settingFor(curve::coefficientNeeded(curve::valveFlow(stands, dp, density), minimum, density));
    if (!wanted) {
        return std::nullopt;
    }
    constexpr double kOnMark = 1e-6;
    const double step = scaleDivisionFraction(project.valves().at(*branch.valve).scale);
    const Setting mark = Setting::si(std::floor(wanted->si() / step + kOnMark) * step);
    return curve->covers(mark) && curve->coefficient(mark).si() > 0 ? std::optional(mark) : std::nullopt;
}

/// What is said of a dp whose flow is a range.
void doubtReadable(const Project& project, const RoundNumbers& numbers, std::size_t index,
                   const Instrument* instrument, ReadingDoubts& out) {
    const Measured<PressureDifference>& dp = *out.reading.dp;
    const BranchResult& result = numbers.branches[index];
    const PressureDifference minimum =
        readableMinimum(out.branch, project.valves().find(*out.branch.valve), instrument);
    std::vector<std::string> arguments{dp.text(), dpIn(dp.unit, minimum, project.fluid().density()),
                                       flowText(project, *result.flowLow),
                                       flowText(project, *result.flowHigh)};
    const auto setting = settingToRead(project, numbers, index, minimum);
    arguments.push_back(setting ? base::term("to ") + settingText(project, out.branch, *setting)
                                : base::term("further"));
    out.add(kUnderReadable, std::move(arguments), Severity::Warning);
}

void doubtDp(const Project& project, const RoundNumbers& numbers, std::size_t index,
             const Instrument* instrument, ReadingDoubts& out) {
    const Measured<PressureDifference>& dp = *out.reading.dp;
    const BranchResult& result = numbers.branches[index];
    if (dp.value.si() < 0) {
        out.add(kNegativeDp, {dp.text(), dp.text().substr(1)}, Severity::Warning);
        return;
    }
    if (isAboveRange(instrument, dp.value)) {
        out.add(kAboveInstrumentRange, {dp.text(), instrument->tag, instrument->range->text()},
                Severity::Warning);
    }
    if (result.isSelfActing) {
        return;
    }
    doubtValve(project, numbers, index, out);
    doubtSize(project, numbers, index, out);
    if (result.source == FlowSource::Range) {
        doubtReadable(project, numbers, index, instrument, out);
    }
}

}  // namespace

std::optional<ExpectedDp> expectedDp(const Project& project, const RoundNumbers& numbers, std::size_t index) {
    const Branch& branch = project.branches()[index];
    if (isSelfActing(branch)) {
        return std::nullopt;
    }
    const EarlierReading& earlier = numbers.earlier[index];
    const auto setting = settingRead(project, branch, numbers.readings[index], earlier);
    if (earlier.readings.dpCount > 0 && earlier.readings.dpMean.si() > 0 && setting &&
        earlier.readAtSetting && isSameSetting(*setting, *earlier.readAtSetting)) {
        return ExpectedDp{earlier.readings.dpMean, project.rounds()[earlier.round].number};
    }
    const curve::ValveCharacteristic* curve = project.characteristicOf(branch);
    const VolumeFlow design = numbers.branches[index].designFlow;
    if (curve == nullptr || !setting || !curve->covers(*setting) || design.si() <= 0) {
        return std::nullopt;
    }
    const curve::FlowCoefficient coefficient = curve->coefficient(*setting);
    if (coefficient.si() <= 0) {
        return std::nullopt;
    }
    return ExpectedDp{curve::valveDrop(coefficient, design, project.fluid().density()), 0};
}

bool isPlausible(PressureDifference dp, const ExpectedDp& expected) {
    const double ratio = dp / expected.dp;
    return expected.round > 0 ? ratio >= kPlausibleLowRatio && ratio <= kPlausibleHighRatio
                              : ratio >= kPlausibleFirstLowRatio && ratio <= kPlausibleFirstHighRatio;
}

std::optional<MeantDp> fittingDp(const Measured<PressureDifference>& dp, PressureDifference expected,
                                 quantity::Density density) {
    std::optional<MeantDp> best;
    double nearest = kSlipRatio;
    for (MeantDp& candidate : meantDps(dp, density)) {
        const double distance = std::abs(candidate.dp.value / expected - 1);
        if (distance <= nearest) {
            nearest = distance;
            best = std::move(candidate);
        }
    }
    return best;
}

base::Fault slipFault(const std::string& tag, const Measured<PressureDifference>& dp,
                      PressureDifference expected, const MeantDp& fitting, quantity::Density density) {
    const std::string wanted = dpIn(dp.unit, expected, density);
    if (fitting.isPointMoved) {
        return {&kPointSuspected, tag, {dp.text(), wanted, fitting.dp.text()}};
    }
    return {&kUnitSuspected,
            tag,
            {dp.text(), wanted, std::string(quantity::symbol(fitting.dp.unit)),
             dpIn(dp.unit, fitting.dp.value, density)}};
}

bool isAboveRange(const Instrument* instrument, PressureDifference dp) {
    return instrument != nullptr && instrument->range && instrument->range->value.si() > 0 &&
           dp > instrument->range->value;
}

std::vector<Finding> doubts(const Project& project, const RoundNumbers& numbers, std::size_t index) {
    const BranchReadings& readings = numbers.readings[index];
    if (!readings.hasValue()) {
        return {};
    }
    const Reading& reading = *readings.counting;
    ReadingDoubts out{project.branches()[index], reading, {}};
    const Instrument* instrument =
        reading.instrument ? project.instruments().find(*reading.instrument) : nullptr;
    if (reading.dp) {
        doubtDp(project, numbers, index, instrument, out);
    }
    if (reading.isDoubtful) {
        out.add(kMarkedDoubtful, {}, Severity::Warning);
    }
    return std::move(out.found);
}

}  // namespace ww::balancing::detail
