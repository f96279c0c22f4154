#include "core/balancing/walk.h"

#include <algorithm>
#include <cctype>
#include <span>
#include <string_view>
#include <unordered_set>

#include "core/balancing/detail/doubts.h"
#include "core/balancing/detail/setting_rule.h"
#include "core/balancing/doubt_forms.h"
#include "core/balancing/standing_readings.h"
#include "core/balancing/walk_forms.h"
#include "core/balancing/walk_progress.h"
#include "core/project/edit_label.h"
#include "core/project/merge_reason.h"

namespace ww::balancing {

namespace {

using base::Decimal;
using base::Result;
using detail::settingFault;
using project::Branch;
using project::Edit;
using project::Project;
using project::Reading;
using project::ReadingStatus;
using project::Round;
using project::RoundState;
using quantity::Measured;

/// Whether a round takes a reading: an accepted one takes none, a closed one only corrections.
std::optional<base::Fault> refusal(const Round& round, bool isCorrection) {
    if (round.state == RoundState::Accepted) {
        return base::Fault{&kRoundAccepted, {}, {std::to_string(round.number)}};
    }
    if (round.state != RoundState::Open && !isCorrection) {
        return base::Fault{&kRoundClosed, {}, {std::to_string(round.number)}};
    }
    return std::nullopt;
}

/// A reading that stands in place of what was read of its branch on the round's walk. Tries stay: each is
/// true for its own setting and moment.
Result<Edit> replacing(const Project& project, const Round& round, const Branch& branch, Reading made,
                       WalkContext context, std::string label) {
    auto before = standingReadings(project, round.id, branch.id);
    std::erase_if(before,
                  [](const Reading* reading) { return reading->purpose != project::ReadingPurpose::Walk; });
    if (const auto fault = refusal(round, !before.empty())) {
        return *fault;
    }
    Edit edit;
    edit.label = std::move(label);
    for (const Reading* reading : before) {
        Reading old = *reading;
        old.status = ReadingStatus::Superseded;
        edit.put.emplace_back(std::move(old));
    }
    made.id = context.ids.next();
    made.round = round.id;
    made.branch = branch.id;
    made.sequence = nextSequence(project, round.id);
    made.time = context.now;
    made.instrument = context.instrument;
    made.person = context.person;
    if (!before.empty()) {
        made.supersedes = before.back()->id;
        made.note = before.back()->note;
    }
    edit.put.emplace_back(std::move(made));
    return edit;
}

/// Whether the kind of an instrument names dp by its sign, which is the same in every language
/// ("Δp-Messgerät").
bool namesDp(std::string_view kind) {
    const auto isLetter = [kind](std::size_t at) {
        return at < kind.size() && (static_cast<unsigned char>(kind[at]) >= 0x80 ||
                                    std::isalpha(static_cast<unsigned char>(kind[at])) != 0);
    };
    for (const std::string_view sign : {"dp", "DP", "\u0394p", "\u2206p"}) {
        for (std::size_t at = kind.find(sign); at != kind.npos; at = kind.find(sign, at + 1)) {
            if ((at == 0 || !isLetter(at - 1)) && !isLetter(at + sign.size())) {
                return true;
            }
        }
    }
    return false;
}

/// Ranges, floors, displays and zero checks are pressures here: what has one of them is a dp meter too.
bool measuresPressure(const project::Instrument& instrument) {
    return namesDp(instrument.kind) || instrument.range || instrument.accuracyFloor ||
           instrument.resolution || instrument.zeroStart || instrument.zeroEnd;
}

template <class Change>
Result<Edit> changedReading(const Project& project, const Id& reading, const base::MessageForm& what,
                            Change change) {
    Reading changed = project.readings().at(reading);
    const Round& round = project.rounds().at(changed.round);
    if (round.state == RoundState::Accepted) {
        return *refusal(round, true);
    }
    change(changed);
    Edit edit;
    edit.label = project::label(what, {project.branches().at(changed.branch).tag});
    if (!(changed == project.readings().at(reading))) {
        edit.put.emplace_back(std::move(changed));
    }
    return edit;
}

/// Where a correction of the setting begins: the counting reading with what it repeats and all after it.
std::size_t countingGroup(const std::vector<const Reading*>& standing) {
    std::size_t start = 0;
    for (std::size_t i = 0; i < standing.size(); ++i) {
        if (hasContent(*standing[i]) && !(standing[i]->isRepeat && i > 0)) {
            start = i;
        }
    }
    return start;
}

}  // namespace

Result<Edit> openRound(const Project& project, project::RoundKind kind, WalkContext context,
                       std::string readiness) {
    Round made;
    made.number = 1;
    for (const Round& round : project.rounds()) {
        if (round.state == RoundState::Open) {
            return base::Fault{&kAnotherRoundOpen, "", {std::to_string(round.number)}};
        }
        made.number = std::max(made.number, round.number + 1);
    }
    made.id = context.ids.next();
    made.kind = kind;
    made.opened = context.now;
    made.readiness = std::move(readiness);
    Edit edit;
    edit.label = project::label(project::labels::kOpenRound, {std::to_string(made.number)});
    edit.put.emplace_back(std::move(made));
    return edit;
}

Result<Edit> storeDp(const Project& project, const Id& roundId, const Id& branchId,
                     Measured<PressureDifference> dp, std::optional<Decimal> setting, WalkContext context) {
    const Round& round = project.rounds().at(roundId);
    const Branch& branch = project.branches().at(branchId);
    if (isReadByFlow(project, branch)) {
        return base::Fault{&kBranchWithoutTable, branch.tag, {}};
    }
    if (!setting) {
        setting = standingSetting(project, roundId, branchId);
    } else if (const auto fault = settingFault(project, branch, *setting)) {
        return *fault;
    }
    std::string label = project::label(project::labels::kDp, {dp.text(), branch.tag});
    Reading made;
    made.setting = std::move(setting);
    made.dp = std::move(dp);
    return replacing(project, round, branch, std::move(made), context, std::move(label));
}

Result<Edit> storeRepeat(const Project& project, const Id& roundId, const Id& branchId,
                         Measured<PressureDifference> dp, WalkContext context) {
    const Reading* before = countingReading(project, roundId, branchId);
    if (before == nullptr || !before->dp) {
        return storeDp(project, roundId, branchId, std::move(dp), std::nullopt, context);
    }
    const Round& round = project.rounds().at(roundId);
    if (const auto fault = refusal(round, false)) {
        return *fault;
    }
    Edit edit;
    edit.label = project::label(project::labels::kDpAgain, {dp.text(), project.branches().at(branchId).tag});
    Reading made;
    made.id = context.ids.next();
    made.round = roundId;
    made.branch = branchId;
    made.sequence = nextSequence(project, roundId);
    made.time = context.now;
    made.setting = standingSetting(project, roundId, branchId);
    made.dp = std::move(dp);
    made.instrument = context.instrument;
    made.person = context.person;
    made.note = before->note;
    made.isRepeat = true;
    edit.put.emplace_back(std::move(made));
    return edit;
}

Result<Edit> storeSetting(const Project& project, const Id& roundId, const Id& branchId, Decimal setting,
                          WalkContext context) {
    const Round& round = project.rounds().at(roundId);
    const Branch& branch = project.branches().at(branchId);
    if (!branch.valve) {
        return base::Fault{&kBranchWithoutValve, branch.tag, {}};
    }
    if (const auto fault = settingFault(project, branch, setting)) {
        return *fault;
    }
    std::string label = project::label(project::labels::kSetting, {setting.text(), branch.tag});
    const auto before = standingReadings(project, roundId, branchId);
    if (std::none_of(before.begin(), before.end(), [](const Reading* r) { return hasContent(*r); })) {
        Reading made;
        made.setting = std::move(setting);
        return replacing(project, round, branch, std::move(made), context, std::move(label));
    }
    if (const auto fault = refusal(round, true)) {
        return *fault;
    }
    // What was read stays read: the same values go on with the corrected setting.
    Edit edit;
    edit.label = std::move(label);
    int sequence = nextSequence(project, roundId);
    const std::size_t first = countingGroup(before);
    for (const Reading* reading : std::span(before).subspan(first)) {
        if (reading->setting == setting) {
            continue;
        }
        Reading old = *reading;
        old.status = ReadingStatus::Superseded;
        Reading made = *reading;
        made.id = context.ids.next();
        made.sequence = sequence++;
        made.setting = setting;
        made.supersedes = reading->id;
        edit.put.emplace_back(std::move(old));
        edit.put.emplace_back(std::move(made));
    }
    return edit;
}

bool isReadByFlow(const Project& project, const Branch& branch) {
    return project.characteristicOf(branch) == nullptr && !detail::isSelfActing(branch);
}

Result<Edit> storeFlow(const Project& project, const Id& roundId, const Id& branchId,
                       Measured<VolumeFlow> flow, WalkContext context) {
    const Branch& branch = project.branches().at(branchId);
    if (flow.value.si() < 0) {
        return base::Fault{&kNegativeFlow, branch.tag, {flow.text()}};
    }
    const project::Instrument* meter =
        context.instrument ? project.instruments().find(*context.instrument) : nullptr;
    if (meter != nullptr && measuresPressure(*meter)) {
        context.instrument.reset();
    }
    std::string label = project::label(project::labels::kFlow, {flow.text(), branch.tag});
    Reading made;
    made.setting = standingSetting(project, roundId, branchId);
    made.flow = std::move(flow);
    return replacing(project, project.rounds().at(roundId), branch, std::move(made), context,
                     std::move(label));
}

Result<Edit> storeCannotBeRead(const Project& project, const Id& roundId, const Id& branchId,
                               WalkContext context) {
    const Branch& branch = project.branches().at(branchId);
    Reading made;
    made.setting = standingSetting(project, roundId, branchId);
    made.cannotBeRead = true;
    return replacing(project, project.rounds().at(roundId), branch, std::move(made), context,
                     project::label(project::labels::kCannotBeRead, {branch.tag}));
}

std::vector<Id> notTurned(const Project& project, const Id& roundId) {
    const Round& round = project.rounds().at(roundId);
    if (round.kind != project::RoundKind::Adjusting || round.state != RoundState::Open) {
        return {};
    }
    // What has a setting alone was turned, and is still to be read.
    std::unordered_set<Id> entered;
    for (const std::size_t index : project.readingsOf(roundId)) {
        const Reading& reading = project.readings()[index];
        if (reading.status == ReadingStatus::Standing) {
            entered.insert(reading.branch);
        }
    }
    std::vector<Id> left = walkProgress(project, round).unread;
    std::erase_if(left, [&](const Id& branch) { return entered.contains(branch); });
    return left;
}

Edit storeNotTurned(const Project& project, const Id& round, WalkContext context) {
    const std::vector<Id> left = notTurned(project, round);
    Edit edit;
    int sequence = nextSequence(project, round);
    for (const Id& branch : left) {
        Reading made;
        made.id = context.ids.next();
        made.round = round;
        made.branch = branch;
        made.sequence = sequence++;
        made.time = context.now;
        made.person = context.person;
        made.setting = standingSetting(project, round, branch);
        made.cannotBeRead = true;
        made.reason = project::merge_reasons::kNotTurned.text;
        edit.put.emplace_back(std::move(made));
    }
    edit.label =
        project::label(project::labels::kNotTurned,
                       {std::to_string(project.rounds().at(round).number), std::to_string(left.size())});
    return edit;
}

Result<Edit> giveReason(const Project& project, const Id& reading, std::string reason) {
    return changedReading(project, reading,
                          reason.empty() ? project::labels::kNoReason : project::labels::kReason,
                          [&](Reading& changed) { changed.reason = std::move(reason); });
}

Result<Edit> markDoubtful(const Project& project, const Id& reading, bool isDoubtful) {
    return changedReading(project, reading,
                          isDoubtful ? project::labels::kDoubtful : project::labels::kNotDoubtful,
                          [&](Reading& changed) { changed.isDoubtful = isDoubtful; });
}

Result<Edit> setNote(const Project& project, const Id& reading, std::string note) {
    return changedReading(project, reading, note.empty() ? project::labels::kNoNote : project::labels::kNote,
                          [&](Reading& changed) { changed.note = std::move(note); });
}

std::optional<OfferedFix> offeredFix(const Project& project, const Assessment& assessment,
                                     const Id& readingId) {
    const Reading* reading = project.readings().find(readingId);
    if (reading == nullptr || !reading->dp || !assessment.round || reading->round != *assessment.round) {
        return std::nullopt;
    }
    const quantity::Density density = project.fluid().density();
    const Measured<PressureDifference>& dp = *reading->dp;
    const std::string& tag = project.branches().at(reading->branch).tag;
    if (dp.digits.isNegative()) {
        auto positive = Decimal::parse(dp.digits.text().substr(1));
        auto fixed = quantity::measuredDifference(std::move(*positive), dp.unit, density);
        base::Fault why{&kNegativeDp, tag, {dp.text(), fixed.text()}};
        return OfferedFix{std::move(fixed), std::move(why)};
    }
    const bool isSlip =
        std::any_of(assessment.findings.begin(), assessment.findings.end(), [&](const Finding& finding) {
            return finding.reading == readingId &&
                   (finding.fault.is(kUnitSuspected) || finding.fault.is(kPointSuspected));
        });
    if (!isSlip) {
        return std::nullopt;
    }
    const auto numbers =
        detail::roundNumbers(project, project.rounds().find(reading->round), detail::LookBack::ToCompare);
    const auto expected = detail::expectedDp(project, numbers, project.branches().indexOf(reading->branch));
    if (!expected) {
        return std::nullopt;
    }
    auto fixed = detail::fittingDp(dp, expected->dp, density);
    if (!fixed) {
        return std::nullopt;
    }
    base::Fault why = detail::slipFault(tag, dp, expected->dp, *fixed, density);
    return OfferedFix{std::move(fixed->dp), std::move(why)};
}

Result<Edit> closeRound(const Project& project, const Id& roundId, WalkContext context) {
    Round round = project.rounds().at(roundId);
    const std::string number = std::to_string(round.number);
    if (round.state != RoundState::Open) {
        return base::Fault{
            round.state == RoundState::Accepted ? &kRoundAccepted : &kRoundClosedAlready, {}, {number}};
    }
    const auto items = openItems(project, roundId);
    if (!items.empty()) {
        return base::Fault{
            &kItemsOpen, {}, {std::to_string(items.size()), number, items.front().fault.subject}};
    }
    round.state = RoundState::Closed;
    round.closed = context.now;
    Edit edit;
    edit.label = project::label(project::labels::kCloseRound, {number});
    edit.put.emplace_back(std::move(round));
    return edit;
}

}  // namespace ww::balancing
