#include <algorithm>
#include <cmath>

#include "core/balancing/aim.h"
#include "core/balancing/detail/doubts.h"
#include "core/curve/valve_flow.h"

namespace ww::balancing {

namespace {

using project::Project;

const curve::ValveCharacteristic& curveOf(const Project& project, std::size_t branch) {
    const auto* curve = project.characteristicOf(project.branches()[branch]);
    EXPECTS(curve != nullptr);
    return *curve;
}

Setting kept(const curve::ValveCharacteristic& curve, Setting setting) {
    return std::clamp(setting, curve.lowest(), curve.fullyOpen());
}

/// On the grid of steps counted from 0, within the stops.
Setting onGrid(const curve::ValveCharacteristic& curve, Setting setting, Setting step) {
    return kept(curve, step * std::round(setting / step));
}

bool isStop(const curve::ValveCharacteristic& curve, Setting setting) {
    return detail::isSameSetting(setting, curve.lowest()) ||
           detail::isSameSetting(setting, curve.fullyOpen());
}

struct KnownPath {
    Resistance resistance;
    PathBasis basis;
};

std::optional<KnownPath> knownPath(const Project& project, std::size_t branch, const LearnedLoop* learned) {
    if (!project.tree().isTerminal(branch)) {
        return std::nullopt;
    }
    const project::Branch& record = project.branches()[branch];
    if (learned != nullptr) {
        const auto found = learned->resistances.find(record.id);
        if (found != learned->resistances.end() && found->second.circuit) {
            return KnownPath{*found->second.circuit, PathBasis::Learned};
        }
    }
    if (record.circuitLoss && record.designFlow && record.designFlow->value.si() > 0) {
        const double design_m3s = record.designFlow->value.si();
        return KnownPath{Resistance::si(record.circuitLoss->value.si() / (design_m3s * design_m3s)),
                         PathBasis::Design};
    }
    return std::nullopt;
}

}  // namespace

AimRow aimAt(const Project& project, std::size_t branch, const AimFlow& flow, Setting setting) {
    const auto& curve = curveOf(project, branch);
    EXPECTS(curve.covers(setting));
    const curve::FlowCoefficient coefficient = curve.coefficient(setting);
    EXPECTS(coefficient.si() > 0);
    const quantity::Density density = project.fluid().density();
    AimRow row;
    row.setting = setting;
    row.dp = curve::valveDrop(coefficient, flow.flow, density);
    row.low = curve::valveDrop(coefficient, flow.low, density);
    row.high = curve::valveDrop(coefficient, flow.high, density);
    row.isStop = isStop(curve, setting);
    return row;
}

std::vector<AimRow> aimRows(const Project& project, std::size_t branch, const AimFlow& flow, Setting around,
                            Setting step, std::size_t count) {
    EXPECTS(step.si() > 0);
    const auto& curve = curveOf(project, branch);
    const Setting middle = kept(curve, around);
    std::vector<Setting> settings{middle};
    const auto passes = [&](Setting setting) { return curve.coefficient(setting).si() > 0; };
    // One more on the side that has fewer, as long as the scale goes on there.
    std::size_t below = 0;
    std::size_t above = 0;
    while (settings.size() < count) {
        const Setting lower = steppedSetting(project, branch, settings.front(), step, -1);
        const Setting upper = steppedSetting(project, branch, settings.back(), step, 1);
        const bool hasLower = lower < settings.front() && passes(lower);
        const bool hasUpper = upper > settings.back();
        if (!hasLower && !hasUpper) {
            break;
        }
        if (hasLower && (below <= above || !hasUpper)) {
            settings.insert(settings.begin(), lower);
            ++below;
        } else {
            settings.push_back(upper);
            ++above;
        }
    }
    std::vector<AimRow> rows;
    for (const Setting setting : settings) {
        if (passes(setting)) {
            rows.push_back(aimAt(project, branch, flow, setting));
        }
    }
    return rows;
}

Setting steppedSetting(const Project& project, std::size_t branch, Setting from, Setting step, int steps) {
    EXPECTS(step.si() > 0);
    const auto& curve = curveOf(project, branch);
    // From a setting between two marks the first step goes to the next mark.
    const double marks = from / step;
    constexpr double kOnMark = 1e-6;
    const bool isOnMark = std::abs(marks - std::round(marks)) < kOnMark;
    const double start = isOnMark ? std::round(marks) : (steps > 0 ? std::floor(marks) : std::ceil(marks));
    return kept(curve, step * (start + steps));
}

AimWord wordFor(const Project& project, std::size_t branch, const AimRow& row, PressureDifference read,
                std::optional<Id> instrument) {
    const project::Branch& record = project.branches()[branch];
    const auto& curve = curveOf(project, branch);
    const project::ValveModel* valve = record.valve ? project.valves().find(*record.valve) : nullptr;
    const project::Instrument* meter = instrument ? project.instruments().find(*instrument) : nullptr;
    if (read < detail::readableMinimum(record, valve, meter) || detail::isAboveRange(meter, read)) {
        return AimWord::ReadAgain;
    }
    if (read > row.high) {
        return detail::isSameSetting(row.setting, curve.lowest()) ? AimWord::AtStop : AimWord::Close;
    }
    if (read < row.low) {
        return detail::isSameSetting(row.setting, curve.fullyOpen()) ? AimWord::AtStop : AimWord::Open;
    }
    return AimWord::Hold;
}

std::optional<BranchCharacteristic> branchCharacteristic(const Project& project, std::size_t branch,
                                                         const std::vector<AimTry>& tries,
                                                         const LearnedLoop* learned) {
    const auto& curve = curveOf(project, branch);
    const quantity::Density density = project.fluid().density();
    const auto flow_m3s = [&](const AimTry& made) {
        return curve::valveFlow(curve.coefficient(kept(curve, made.setting)), made.dp, density).si();
    };
    if (tries.empty() || tries.back().dp.si() <= 0) {
        return std::nullopt;
    }
    const AimTry& last = tries.back();
    const double lastSquare = flow_m3s(last) * flow_m3s(last);
    const auto before = std::find_if(tries.rbegin(), tries.rend(), [&](const AimTry& made) {
        return !detail::isSameSetting(made.setting, last.setting) && made.dp.si() > 0;
    });
    const auto path = knownPath(project, branch, learned);
    if (before != tries.rend()) {
        const double beforeSquare = flow_m3s(*before) * flow_m3s(*before);
        // Tries that lie too near together say more about the meter than about the branch.
        constexpr double kFarEnough = 0.1;
        const bool isFar = std::abs(beforeSquare / lastSquare - 1) > kFarEnough;
        const double found = (last.dp - before->dp).si() / (beforeSquare - lastSquare);
        if ((isFar || !path) && std::isfinite(found) && found > 0) {
            return BranchCharacteristic{PressureDifference::si(last.dp.si() + found * lastSquare),
                                        Resistance::si(found), PathBasis::Tries};
        }
    }
    if (!path) {
        return std::nullopt;
    }
    return BranchCharacteristic{PressureDifference::si(last.dp.si() + path->resistance.si() * lastSquare),
                                path->resistance, path->basis};
}

std::optional<ProposedSetting> proposedSetting(const Project& project, std::size_t branch,
                                               const AimFlow& flow, const std::vector<AimTry>& tries,
                                               Setting step, const LearnedLoop* learned,
                                               const Advice* advice) {
    const auto& curve = curveOf(project, branch);
    const quantity::Density density = project.fluid().density();
    const auto characteristic = branchCharacteristic(project, branch, tries, learned);
    ProposedSetting out;
    if (!characteristic) {
        if (advice == nullptr || !tries.empty()) {
            return std::nullopt;
        }
        const auto own = std::find_if(advice->settings.begin(), advice->settings.end(),
                                      [&](const SettingAdvice& s) { return s.branch == branch; });
        if (own == advice->settings.end()) {
            return std::nullopt;
        }
        out.setting = own->setting;
        out.aim = out.lands = aimAt(project, branch, flow, own->setting).dp;
        out.isStop = own->reach == BalanceReach::BelowScale;
        return out;
    }
    out.basis = characteristic->basis;
    const double wanted_Pa =
        characteristic->available.si() - characteristic->path.si() * flow.flow.si() * flow.flow.si();
    std::optional<Setting> exact;
    if (wanted_Pa > 0) {
        const auto coefficient =
            curve::coefficientNeeded(flow.flow, PressureDifference::si(wanted_Pa), density);
        exact = curve.settingFor(coefficient);
        out.isStop = !exact.has_value();
        if (!exact) {
            exact = coefficient > curve.coefficientFullyOpen() ? curve.fullyOpen() : curve.lowest();
        }
    } else {
        exact = curve.fullyOpen();
        out.isStop = true;
    }
    out.setting = onGrid(curve, *exact, step);
    const curve::FlowCoefficient coefficient = curve.coefficient(out.setting);
    if (coefficient.si() <= 0) {
        return std::nullopt;
    }
    out.aim = aimAt(project, branch, flow, out.setting).dp;
    // H = dp + r q^2 with q^2 = dp over the valve's own resistance.
    const double ratio = characteristic->path.si() / curve::valveResistance(coefficient, density).si();
    out.lands = characteristic->available / (1 + ratio);
    return out;
}

}  // namespace ww::balancing
