#include "core/balancing/advice_beside_word.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/advice/advice_forms.h"
#include "core/balancing/detail/wording.h"
#include "core/balancing/prediction.h"
#include "core/project/setting_text.h"

namespace ww::balancing {

namespace {

/// The share that the branch takes at this setting once all others stand as advised.
std::optional<Ratio> shareOnceSet(const project::Project& project, std::size_t branch, Setting at,
                                  const LearnedLoop& learned, const Advice& advice) {
    LoopState state = learned.present;
    for (const SettingAdvice& other : advice.settings) {
        if (namesSetting(other)) {
            state.settings[project.branches()[other.branch].id] = other.setting;
        }
    }
    state.settings[project.branches()[branch].id] = at;
    const PredictionResult then = predict(project, state, learned.resistances);
    return then.prediction ? then.prediction->branches[branch].ofTarget : std::nullopt;
}

AdviceBesideWord besideHold(const project::Project& project, const SettingAdvice& advised, Setting at,
                            const LearnedLoop& learned, const Advice& advice) {
    AdviceBesideWord out;
    if (standsAt(advised, at)) {
        return out;
    }
    const project::Branch& record = project.branches()[advised.branch];
    const std::string& tag = record.tag;
    const std::string here = project::settingText(project, record, at);
    const std::string there = project::settingText(project, record, advised.setting);
    out.ofTarget = shareOnceSet(project, advised.branch, at, learned, advice);
    if (!out.ofTarget) {
        out.stand = AdviceStand::HoldsForNow;
        out.reason = base::Fault{&kHoldsUnforeseen, tag, {here, there}};
        return out;
    }
    const std::string share = detail::percentText(*out.ofTarget);
    // Its uncertainty is that of the advised setting near by.
    if (std::abs(out.ofTarget->si() - 1) + advised.indicated.uncertainty.si() <=
        project.job().matchingBand.value.si()) {
        out.stand = AdviceStand::HoldsToEnd;
        out.reason = base::Fault{&kHoldsToEnd, tag, {here, share}};
    } else if (advice.status == AdviceStatus::Verified) {
        // Nothing is turned any more: the others stay as they were read.
        out.stand = AdviceStand::HoldsToEnd;
        out.reason = base::Fault{&kAdviceVerified, tag, {}};
    } else {
        out.stand = AdviceStand::HoldsForNow;
        out.reason = base::Fault{&kHoldsForNow, tag, {here, share, there}};
    }
    return out;
}

/// Whether the word turns the valve towards the advised setting; AtStop asks for no turn that is possible.
bool turnsTowards(AimWord word, const SettingAdvice& advised, Setting at) {
    if (word == AimWord::AtStop) {
        return standsAt(advised, at);
    }
    return !standsAt(advised, at) && (word == AimWord::Open) == (advised.setting > at);
}

}  // namespace

bool namesSetting(const SettingAdvice& advised) {
    return advised.reach == BalanceReach::Set || advised.reach == BalanceReach::FullyOpen ||
           advised.reach == BalanceReach::BelowScale;
}

bool standsAt(const SettingAdvice& advised, Setting at) {
    constexpr double kRounding = 1e-9;
    return std::abs((advised.setting - at).si()) <= advised.step.si() / 2 + kRounding;
}

std::optional<AdviceBesideWord> adviceBesideWord(const project::Project& project, std::size_t branch,
                                                 AimWord word, Setting at, const LearnedLoop& learned,
                                                 const Advice& advice) {
    const auto own = std::find_if(advice.settings.begin(), advice.settings.end(),
                                  [&](const SettingAdvice& each) { return each.branch == branch; });
    if (own == advice.settings.end() || !namesSetting(*own) || word == AimWord::ReadAgain) {
        return std::nullopt;
    }
    if (word == AimWord::Hold) {
        return besideHold(project, *own, at, learned, advice);
    }
    AdviceBesideWord out;
    if (!turnsTowards(word, *own, at)) {
        out.stand = AdviceStand::ReadingLeads;
        const project::Branch& record = project.branches()[branch];
        out.reason = base::Fault{word == AimWord::AtStop ? &kStopsForNow : &kReadingLeads,
                                 record.tag,
                                 {project::settingText(project, record, own->setting)}};
    }
    return out;
}

}  // namespace ww::balancing
