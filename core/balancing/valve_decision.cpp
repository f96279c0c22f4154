#include "core/balancing/valve_decision.h"

#include <algorithm>

#include "core/balancing/detail/round_numbers.h"
#include "core/balancing/detail/wording.h"
#include "core/project/setting_text.h"

namespace ww::balancing {

namespace {

using project::Project;

const GroupResult* groupWith(const Assessment& assessment, std::size_t branch) {
    const auto found =
        std::find_if(assessment.groups.begin(), assessment.groups.end(), [&](const GroupResult& group) {
            return std::find(group.members.begin(), group.members.end(), branch) != group.members.end();
        });
    return found != assessment.groups.end() ? &*found : nullptr;
}

const SettingAdvice* advisedFor(const Advice& advice, std::size_t branch) {
    const auto found = std::find_if(advice.settings.begin(), advice.settings.end(),
                                    [&](const SettingAdvice& advised) { return advised.branch == branch; });
    return found != advice.settings.end() ? &*found : nullptr;
}

/// Whether another valve of the group is open, so that this one need not be.
bool isAnotherOpen(const Project& project, const Assessment& assessment, const GroupResult& group,
                   std::size_t branch) {
    return std::any_of(group.members.begin(), group.members.end(), [&](std::size_t member) {
        const BranchResult& result = assessment.branches[member];
        return member != branch && result.isMatchable && detail::isUnthrottled(project, result);
    });
}

enum class Stand { Free, StaysOpen, ToBeOpened };

Stand standOf(const Project& project, const Assessment& assessment, const Advice* advice, std::size_t branch,
              Setting at) {
    const auto* curve = project.characteristicOf(project.branches()[branch]);
    const bool isOpen = curve != nullptr && at >= curve->fullyOpen();
    if (advice != nullptr && advice->isReady()) {
        const SettingAdvice* own = advisedFor(*advice, branch);
        if (own == nullptr || !own->isReference || !own->isFullyOpen) {
            return Stand::Free;
        }
        return isOpen ? Stand::StaysOpen : Stand::ToBeOpened;
    }
    const GroupResult* group = groupWith(assessment, branch);
    if (group == nullptr || group->reference != branch) {
        return Stand::Free;
    }
    if (isOpen) {
        return Stand::StaysOpen;
    }
    return isAnotherOpen(project, assessment, *group, branch) ? Stand::Free : Stand::ToBeOpened;
}

/// Whether the word does at the valve what the state of its share asks for.
bool fits(AimWord word, const BranchResult& result) {
    const bool isShort = result.ofTarget && result.ofTarget->si() < 1;
    switch (result.state) {
        case State::NotRead:
        case State::Doubtful:
            return true;
        case State::OnShare:
            return word == AimWord::Hold;
        case State::AtStop:
            return word == AimWord::AtStop;
        case State::Short:
        case State::Over:
        case State::Drifted:
            break;
    }
    return word == (isShort ? AimWord::Open : AimWord::Close) || word == AimWord::AtStop;
}

base::Fault whyApart(const Project& project, const AimFlow& aimed, std::size_t branch) {
    const std::string& tag = project.branches()[branch].tag;
    switch (aimed.basis) {
        case AimBasis::Reference:
            return {
                &kWordMatchesReference,
                tag,
                {project.branches()[*aimed.reference].tag, detail::percentText(*aimed.referenceOfDesign)}};
        case AimBasis::Model:
            return {&kWordCountsOthersSet, tag, {}};
        case AimBasis::Branches:
            break;
    }
    return {&kWordCountsNewest, tag, {}};
}

}  // namespace

std::optional<std::size_t> referenceOf(const Assessment& assessment, const Advice* advice,
                                       std::size_t branch) {
    const GroupResult* group = groupWith(assessment, branch);
    if (group == nullptr) {
        return std::nullopt;
    }
    if (advice != nullptr && advice->isReady()) {
        for (const std::size_t member : group->members) {
            const SettingAdvice* advised = advisedFor(*advice, member);
            if (advised != nullptr && advised->isReference) {
                return member;
            }
        }
    }
    return group->reference;
}

ValveDecision decideValve(const Project& project, const Assessment& assessment, const Advice* advice,
                          const AimFlow& aimed, std::size_t branch, Setting at, AimWord byReading) {
    ValveDecision out;
    out.word = byReading;
    if (byReading == AimWord::ReadAgain) {
        return out;
    }
    const project::Branch& record = project.branches()[branch];
    switch (standOf(project, assessment, advice, branch, at)) {
        case Stand::ToBeOpened:
            out.word = AimWord::Open;
            out.rule = base::Fault{
                &kReferenceToOpen,
                record.tag,
                {project::settingText(project, record, at),
                 project::settingText(project, record, project.characteristicOf(record)->fullyOpen())}};
            break;
        case Stand::StaysOpen:
            out.word = AimWord::Hold;
            out.rule = base::Fault{&kReferenceOpen, record.tag, {}};
            break;
        case Stand::Free:
            break;
    }
    if (!fits(out.word, assessment.branches[branch])) {
        out.apart = out.rule ? out.rule : whyApart(project, aimed, branch);
    }
    return out;
}

ValveDecision decideUntried(const Project& project, const Assessment& assessment, const Advice& advice,
                            std::size_t branch, Setting at, const ValveDecision& decided,
                            const std::optional<AdviceBesideWord>& beside) {
    const IndexStep* step = indexStepAt(advice, branch);
    if (step != nullptr && step->setting > at && decided.word != AimWord::ReadAgain) {
        return {AimWord::Open, step->setting, step->why, std::nullopt};
    }
    const SettingAdvice* own = advisedFor(advice, branch);
    const bool isRight = beside && beside->stand == AdviceStand::HoldsToEnd &&
                         assessment.branches[branch].state == State::OnShare;
    if (advice.status != AdviceStatus::Unverified || own == nullptr || !namesSetting(*own) || isRight ||
        standsAt(*own, at) || decided.rule || decided.word == AimWord::ReadAgain) {
        return decided;
    }
    const project::Branch& record = project.branches()[branch];
    const AimWord word = own->setting > at ? AimWord::Open : AimWord::Close;
    return {word, own->setting,
            base::Fault{word == decided.word ? &kAdviceFirst : &kAdviceBeforeReading,
                        record.tag,
                        {project::settingText(project, record, at),
                         project::settingText(project, record, own->setting)}},
            std::nullopt};
}

}  // namespace ww::balancing
