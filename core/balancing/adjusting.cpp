#include "core/balancing/adjusting.h"

#include <algorithm>
#include <unordered_map>

#include "core/balancing/advice/order_of_work.h"
#include "core/balancing/detail/branch_flow.h"
#include "core/balancing/detail/setting_rule.h"
#include "core/balancing/doubt_forms.h"
#include "core/balancing/standing_readings.h"
#include "core/balancing/walk_forms.h"
#include "core/project/edit_label.h"
#include "core/project/review.h"

namespace ww::balancing {

namespace {

using base::Decimal;
using base::Result;
using detail::settingFault;
using project::Branch;
using project::Edit;
using project::Project;
using project::Reading;
using project::ReadingPurpose;
using project::ReadingStatus;
using project::Round;
using project::RoundKind;
using project::RoundState;
using quantity::Measured;

bool isTry(const Reading& reading) {
    return reading.purpose == ReadingPurpose::Try || reading.purpose == ReadingPurpose::Hold;
}

/// An edit that stores one reading in the open round, or in one that it opens.
Result<Edit> stored(const Project& project, const Branch& branch, Reading made, WalkContext context,
                    std::string label) {
    Edit edit;
    const Round* round = project::roundInHand(project);
    if (round == nullptr) {
        auto opened = openRound(project, RoundKind::Adjusting, context);
        if (!opened) {
            return opened.fault();
        }
        edit = std::move(opened).value();
        made.round = std::get<Round>(edit.put.front()).id;
        made.sequence = 1;
    } else {
        made.round = round->id;
        made.sequence = nextSequence(project, round->id);
    }
    made.id = context.ids.next();
    made.branch = branch.id;
    made.time = context.now;
    made.instrument = context.instrument;
    made.person = context.person;
    edit.label = std::move(label);
    edit.put.emplace_back(std::move(made));
    return edit;
}

/// The setting that stands at a branch now.
std::optional<Decimal> settingNow(const Project& project, const Branch& branch) {
    const Round* last = project.lastRound();
    return last != nullptr ? standingSetting(project, last->id, branch.id) : branch.setting;
}

std::optional<base::Fault> valveFault(const Project& project, const Branch& branch) {
    if (project.characteristicOf(branch) == nullptr) {
        return base::Fault{&kBranchWithoutTable, branch.tag, {}};
    }
    return std::nullopt;
}

/// The newest try of the branch, where it was read at this setting and no valve was turned since.
const Reading* tryReadAnew(const Project& project, const Id& branch, const Decimal& setting) {
    const auto tries = triesOf(project, branch);
    const bool isHere =
        !tries.empty() && tries.back()->setting && tries.back()->setting->value() == setting.value();
    return isHere && lastTried(project) == branch ? tries.back() : nullptr;
}

}  // namespace

Result<Edit> storeTry(const Project& project, const Id& branchId, TryEntry entry, WalkContext context) {
    const Branch& branch = project.branches().at(branchId);
    if (const auto fault = valveFault(project, branch)) {
        return *fault;
    }
    if (const auto fault = settingFault(project, branch, entry.setting)) {
        return *fault;
    }
    const Round* round = project::roundInHand(project);
    if (round != nullptr && round->kind != RoundKind::Adjusting) {
        return base::Fault{&kRoundOfOneState, branch.tag, {std::to_string(round->number)}};
    }
    Reading made;
    made.purpose = entry.isHold ? ReadingPurpose::Hold : ReadingPurpose::Try;
    made.isRepeat = entry.isRepeat;
    std::string label =
        project::label(project::labels::kDpAt, {entry.dp.text(), entry.setting.text(), branch.tag});
    made.dp = std::move(entry.dp);
    made.setting = std::move(entry.setting);
    const Reading* replaced = made.isRepeat ? nullptr : tryReadAnew(project, branchId, *made.setting);
    if (replaced != nullptr) {
        made.supersedes = replaced->id;
        made.isRepeat = replaced->isRepeat;
        label =
            project::label(project::labels::kDpInPlace, {made.dp->text(), replaced->dp->text(), branch.tag});
    }
    auto edit = stored(project, branch, std::move(made), context, std::move(label));
    if (edit && replaced != nullptr) {
        Reading old = *replaced;
        old.status = ReadingStatus::Superseded;
        edit->put.insert(edit->put.begin(), std::move(old));
    }
    return edit;
}

Result<Edit> holdHere(const Project& project, const Id& branchId, const Decimal& setting) {
    const Branch& branch = project.branches().at(branchId);
    const auto tries = triesOf(project, branchId);
    if (tries.empty() || !tries.back()->setting || tries.back()->setting->value() != setting.value()) {
        return base::Fault{&kNotTriedHere, branch.tag, {setting.text()}};
    }
    Edit edit;
    edit.label = project::label(project::labels::kHold, {setting.text(), branch.tag});
    if (tries.back()->purpose != ReadingPurpose::Hold) {
        Reading held = *tries.back();
        held.purpose = ReadingPurpose::Hold;
        edit.put.emplace_back(std::move(held));
    }
    return edit;
}

Result<Edit> storeReference(const Project& project, const Id& branchId, Measured<PressureDifference> dp,
                            WalkContext context) {
    const Branch& branch = project.branches().at(branchId);
    if (const auto fault = valveFault(project, branch)) {
        return *fault;
    }
    Reading made;
    made.purpose = ReadingPurpose::Reference;
    made.setting = settingNow(project, branch);
    std::string label = project::label(project::labels::kDpAtReference, {dp.text(), branch.tag});
    made.dp = std::move(dp);
    return stored(project, branch, std::move(made), context, std::move(label));
}

Result<Edit> storeShutValve(const Project& project, const Id& branchId, Measured<PressureDifference> dp,
                            WalkContext context) {
    const Branch& branch = project.branches().at(branchId);
    if (!branch.valve) {
        return base::Fault{&kBranchWithoutValve, branch.tag, {}};
    }
    if (dp.value.si() <= 0) {
        return base::Fault{&kShutDpUnreadable, branch.tag, {dp.text()}};
    }
    Reading made;
    made.purpose = ReadingPurpose::ShutValve;
    made.setting = *Decimal::parse("0");
    std::string label = project::label(project::labels::kDpShut, {dp.text(), branch.tag});
    made.dp = std::move(dp);
    return stored(project, branch, std::move(made), context, std::move(label));
}

Result<Edit> correctReading(const Project& project, const Id& readingId,
                            std::optional<Measured<PressureDifference>> dp, std::optional<Decimal> setting,
                            WalkContext context) {
    const Reading& before = project.readings().at(readingId);
    const Branch& branch = project.branches().at(before.branch);
    const Round& round = project.rounds().at(before.round);
    if (round.state == RoundState::Accepted) {
        return base::Fault{&kRoundAccepted, {}, {std::to_string(round.number)}};
    }
    if (setting) {
        if (const auto fault = settingFault(project, branch, *setting)) {
            return *fault;
        }
    }
    Edit edit;
    const std::string now = dp ? dp->text() : setting ? setting->text() : "";
    const std::string was = dp && before.dp  ? before.dp->text()
                            : before.setting ? before.setting->text()
                                             : "";
    edit.label = project::label(dp ? project::labels::kDpInPlace : project::labels::kSettingInPlace,
                                {now, was, branch.tag});
    Reading old = before;
    old.status = ReadingStatus::Superseded;
    Reading made = before;
    made.id = context.ids.next();
    made.sequence = nextSequence(project, round.id);
    made.supersedes = before.id;
    made.isDoubtful = false;
    made.reason.clear();
    if (dp) {
        made.dp = std::move(dp);
    }
    if (setting) {
        made.setting = std::move(setting);
    }
    edit.put.emplace_back(std::move(old));
    edit.put.emplace_back(std::move(made));
    return edit;
}

namespace {

/// Calls `visit(reading)` for the standing tries in the open round, newest first, as long as it returns true.
template <class Visit>
void eachTryBackwards(const Project& project, Visit visit) {
    const Round* round = project::roundInHand(project);
    if (round == nullptr) {
        return;
    }
    const auto& indices = project.readingsOf(round->id);
    for (auto at = indices.rbegin(); at != indices.rend(); ++at) {
        const Reading& reading = project.readings()[*at];
        if (reading.status == ReadingStatus::Standing && isTry(reading) && !visit(reading)) {
            return;
        }
    }
}

/// Whether the newest try of each branch that was tried left its valve where it stands.
std::unordered_map<Id, bool> leftByNewestTry(const Project& project) {
    std::unordered_map<Id, bool> isLeft;
    eachTryBackwards(project, [&](const Reading& reading) {
        isLeft.try_emplace(reading.branch, reading.purpose == ReadingPurpose::Hold);
        return true;
    });
    return isLeft;
}

/// The branches of the order that `isWanted` names and nobody holds, in turn after `branch`. Everything above
/// one of them waits for it.
std::vector<std::size_t> leftAfter(const Project& project, const std::vector<std::size_t>& order,
                                   std::size_t branch, const std::vector<bool>& isWanted) {
    const auto isLeft = leftByNewestTry(project);
    const auto isDone = [&](std::size_t other) {
        const auto newest = isLeft.find(project.branches()[other].id);
        return other == branch || !isWanted[other] || (newest != isLeft.end() && newest->second);
    };
    // Above one that waits already all do.
    const project::BranchTree& tree = project.tree();
    std::vector<bool> isWaiting(project.branches().size(), false);
    for (const std::size_t other : order) {
        if (isDone(other)) {
            continue;
        }
        std::size_t above = tree.parent(other);
        while (above != project::BranchTree::kNone && !isWaiting[above]) {
            isWaiting[above] = true;
            above = tree.parent(above);
        }
    }
    const auto own = std::find(order.begin(), order.end(), branch);
    const std::size_t start = own == order.end() ? 0 : static_cast<std::size_t>(own - order.begin()) + 1;
    std::vector<std::size_t> left;
    for (std::size_t step = 0; step < order.size(); ++step) {
        const std::size_t candidate = order[(start + step) % order.size()];
        if (!isDone(candidate) && !isWaiting[candidate]) {
            left.push_back(candidate);
        }
    }
    return left;
}

}  // namespace

std::vector<const Reading*> triesOf(const Project& project, const Id& branch) {
    std::vector<const Reading*> found;
    eachTryBackwards(project, [&](const Reading& reading) {
        if (reading.dp && reading.branch == branch) {
            found.push_back(&reading);
        }
        return !reading.dp || reading.branch == branch;
    });
    std::reverse(found.begin(), found.end());
    return found;
}

bool hasEarlierTries(const Project& project, const Id& branch) {
    bool isAnotherAfter = false;
    bool isFound = false;
    eachTryBackwards(project, [&](const Reading& reading) {
        if (reading.dp) {
            isAnotherAfter = isAnotherAfter || reading.branch != branch;
            isFound = isAnotherAfter && reading.branch == branch;
        }
        return !isFound;
    });
    return isFound;
}

std::optional<Id> lastTried(const Project& project) {
    std::optional<Id> last;
    eachTryBackwards(project, [&](const Reading& reading) {
        if (reading.dp) {
            last = reading.branch;
        }
        return !reading.dp.has_value();
    });
    return last;
}

const Reading* shutReading(const Project& project, const Id& branch) {
    const Round* last = project.lastRound();
    if (last == nullptr) {
        return nullptr;
    }
    const auto& indices = project.readingsOf(last->id);
    const auto newest = std::find_if(indices.rbegin(), indices.rend(), [&](std::size_t index) {
        const Reading& reading = project.readings()[index];
        return reading.branch == branch && reading.purpose == ReadingPurpose::ShutValve &&
               reading.status == ReadingStatus::Standing && reading.dp;
    });
    return newest != indices.rend() ? &project.readings()[*newest] : nullptr;
}

bool mustBeReadAgain(const Assessment& assessment, const Id& reading) {
    return std::any_of(assessment.findings.begin(), assessment.findings.end(), [&](const Finding& finding) {
        const base::Fault& fault = finding.fault;
        return finding.reading == reading && finding.severity != Severity::Note &&
               (fault.is(kMarkedDoubtful) || fault.is(kNegativeDp) || fault.is(kAboveInstrumentRange) ||
                fault.is(kUnitSuspected) || fault.is(kPointSuspected) || fault.is(kImplausible) ||
                fault.is(kImplausibleFirst));
    });
}

bool isHeld(const Project& project, const Id& branch) {
    bool isLeft = false;
    eachTryBackwards(project, [&](const Reading& reading) {
        isLeft = reading.branch == branch && reading.purpose == ReadingPurpose::Hold;
        return reading.branch != branch;
    });
    return isLeft;
}

std::vector<std::size_t> workingOrder(const Project& project, const Assessment& assessment,
                                      const Advice* advice) {
    std::vector<std::size_t> order;
    const auto canBeSet = [&](std::size_t branch) {
        const Branch& record = project.branches()[branch];
        return project.characteristicOf(record) != nullptr && !detail::isSelfActing(record) &&
               assessment.branches[branch].designFlow.si() > 0;
    };
    if (advice != nullptr && !advice->settings.empty()) {
        for (const SettingAdvice& setting : advice->settings) {
            if (canBeSet(setting.branch) && !setting.isReference) {
                order.push_back(setting.branch);
            }
        }
        return order;
    }
    std::vector<bool> isReference(project.branches().size(), false);
    for (const GroupResult& group : assessment.groups) {
        if (group.reference) {
            isReference[*group.reference] = true;
        }
    }
    std::vector<Ratio> excess;
    for (const BranchResult& result : assessment.branches) {
        excess.push_back(result.ofTarget.value_or(Ratio()));
    }
    for (const std::size_t branch : orderOfWork(project, excess)) {
        if (canBeSet(branch) && !isReference[branch]) {
            order.push_back(branch);
        }
    }
    return order;
}

std::optional<std::size_t> nextToAdjust(const Project& project, const std::vector<std::size_t>& order,
                                        std::size_t branch, const std::vector<Id>& leftAsRead) {
    std::vector<bool> isWanted(project.branches().size(), true);
    for (const Id& each : leftAsRead) {
        isWanted[project.branches().indexOf(each)] = false;
    }
    const auto left = leftAfter(project, order, branch, isWanted);
    return left.empty() ? std::nullopt : std::optional(left.front());
}

std::vector<std::size_t> leftToTurn(const Project& project, const std::vector<std::size_t>& order,
                                    std::size_t branch, const Advice& advice,
                                    const std::vector<Id>& leftAsRead) {
    std::vector<bool> isToTurn(project.branches().size(), false);
    for (const SettingAdvice& advised : advice.settings) {
        isToTurn[advised.branch] = !advised.isSet;
    }
    for (const Id& each : leftAsRead) {
        isToTurn[project.branches().indexOf(each)] = false;
    }
    return leftAfter(project, order, branch, isToTurn);
}

}  // namespace ww::balancing
