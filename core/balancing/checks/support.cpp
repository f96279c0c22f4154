#include "core/balancing/checks/support.h"

#include <algorithm>
#include <cmath>

#include "core/base/root_sum_square.h"

namespace ww::balancing::checks {

Finding aboutBranch(const CheckContext& context, std::size_t branch, const base::MessageForm& form,
                    std::vector<std::string> arguments, Severity severity, bool canBeExplained) {
    const project::Branch& record = context.project.branches()[branch];
    Finding finding{base::Fault{&form, record.tag, std::move(arguments)}, severity, record.id, std::nullopt};
    if (const project::Reading* reading = context.now.readings[branch].counting) {
        finding.reading = reading->id;
        if (canBeExplained && !reading->reason.empty()) {
            finding.severity = Severity::Note;
        }
    }
    return finding;
}

Turn turnOf(const CheckContext& context, std::size_t branch) {
    if (context.before == nullptr) {
        return Turn::Unknown;
    }
    const auto& now = context.now.branches[branch].setting;
    const auto& then = context.before->branches[branch].setting;
    if (now.has_value() != then.has_value()) {
        return Turn::Unknown;
    }
    if (!now || detail::isSameSetting(*now, *then)) {
        return Turn::Unmoved;
    }
    return *now > *then ? Turn::Opened : Turn::Closed;
}

std::vector<bool> movedBelow(const CheckContext& context) {
    const project::BranchTree& tree = context.project.tree();
    std::vector<bool> moved(tree.size(), false);
    const auto order = tree.topDown();
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        moved[*at] = moved[*at] || turnOf(context, *at) != Turn::Unmoved;
        if (moved[*at] && tree.parent(*at) != project::BranchTree::kNone) {
            moved[tree.parent(*at)] = true;
        }
    }
    return moved;
}

bool isPumpChanged(const CheckContext& context) {
    if (context.pumpsBefore == nullptr || context.pumpsBefore->size() != context.pumps.size()) {
        return true;
    }
    constexpr double kSameSpeedRatio = 0.002;  // a tachometer's last digits
    for (std::size_t i = 0; i < context.pumps.size(); ++i) {
        const PumpDuty& now = context.pumps[i];
        const PumpDuty& then = (*context.pumpsBefore)[i];
        if (now.pump != then.pump || std::abs(now.speedFraction - then.speedFraction) > kSameSpeedRatio) {
            return true;
        }
        const base::Id& pump = context.project.pumps()[now.pump].id;
        const auto* reading = detail::countingPumpReading(context.project, context.round.id, pump);
        const auto* earlier = detail::countingPumpReading(context.project, context.before->round->id, pump);
        if (reading != nullptr && earlier != nullptr && reading->throttle && earlier->throttle &&
            reading->throttle->value() != earlier->throttle->value()) {
            return true;
        }
    }
    return false;
}

std::vector<bool> selfActingBelow(const CheckContext& context) {
    const project::BranchTree& tree = context.project.tree();
    std::vector<bool> has(tree.size(), false);
    const auto order = tree.topDown();
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        has[*at] = has[*at] || context.now.branches[*at].isSelfActing;
        if (has[*at] && tree.parent(*at) != project::BranchTree::kNone) {
            has[tree.parent(*at)] = true;
        }
    }
    return has;
}

std::vector<std::optional<MoveInRound>> movesInRound(const CheckContext& context) {
    const auto& branches = context.project.branches();
    const auto& readings = context.project.readings();
    std::vector<std::optional<MoveInRound>> moves(branches.size());
    std::vector<std::optional<Setting>> last(branches.size());
    std::vector<bool> isOfThisRound(branches.size(), false);
    for (std::size_t i = 0; i < branches.size(); ++i) {
        if (context.before != nullptr) {
            last[i] = context.before->branches[i].setting;
        }
    }
    for (const std::size_t index : context.project.readingsOf(context.round.id)) {
        const project::Reading& reading = readings[index];
        const std::optional<std::size_t> branch = branches.findIndex(reading.branch);
        if (!branch || !reading.setting || reading.status == project::ReadingStatus::Struck ||
            reading.purpose == project::ReadingPurpose::ShutValve) {
            continue;
        }
        const std::size_t at = *branch;
        const Setting setting = Setting::si(reading.setting->value());
        const bool isAnother = last[at] && !detail::isSameSetting(*last[at], setting);
        const bool isSettingOnly = !reading.dp && !reading.flow && !reading.cannotBeRead;
        const project::Reading* corrected = reading.supersedes ? readings.find(*reading.supersedes) : nullptr;
        const bool isCorrection = corrected != nullptr && corrected->time == reading.time;
        if (isAnother && !isCorrection && (isOfThisRound[at] || isSettingOnly)) {
            moves[at] = MoveInRound{reading.sequence, reading.time};
        }
        last[at] = setting;
        isOfThisRound[at] = true;
    }
    return moves;
}

void addReadingsBehind(const project::Project& project, const detail::RoundNumbers& numbers,
                       std::size_t branch, std::vector<Id>& found) {
    const BranchResult& result = numbers.branches[branch];
    if (result.source == FlowSource::SumOfChildren) {
        for (const std::size_t child : project.tree().children(branch)) {
            addReadingsBehind(project, numbers, child, found);
        }
    } else if (result.reading) {
        found.push_back(*result.reading);
    }
}

bool isOfOneState(const CheckContext& context, const GroupResult& group, std::vector<Id> readings,
                  ReadingStates& states) {
    const project::Project& project = context.project;
    for (const std::size_t member : group.members) {
        addReadingsBehind(project, context.now, member, readings);
    }
    return std::all_of(readings.begin(), readings.end(),
                       [&](const Id& id) { return project.readings().at(id).round == context.round.id; }) &&
           states.isUnmoved(readings, valvesAround(project, group), true);
}

std::vector<bool> valvesAround(const project::Project& project, const GroupResult& group) {
    const project::BranchTree& tree = project.tree();
    if (!group.parent) {
        return std::vector<bool>(tree.size(), true);
    }
    std::vector<bool> around(tree.size(), false);
    around[*group.parent] = true;
    for (const std::size_t branch : tree.topDown()) {
        const std::size_t parent = tree.parent(branch);
        around[branch] = around[branch] || (parent != project::BranchTree::kNone && around[parent]);
    }
    for (std::size_t at = *group.parent; at != project::BranchTree::kNone; at = tree.parent(at)) {
        around[at] = true;
    }
    return around;
}

void ReadingStates::make() {
    const std::vector<RoundOrder> orders(m_project.rounds().size(), RoundOrder::SetBefore);
    m_history = history(m_project, orders);
    m_movesBefore.resize(m_project.readings().size());
    for (const TakenReading& taken : m_history->readings) {
        m_movesBefore[m_project.readings().indexOf(taken.reading)] = taken.movesBefore;
    }
}

bool ReadingStates::isUnmoved(const std::vector<Id>& readings, const std::vector<bool>& valves,
                              bool countsSpeed) {
    if (!m_history) {
        make();
    }
    std::size_t first = m_history->moves.size();
    std::size_t last = 0;
    for (const Id& reading : readings) {
        const std::optional<std::size_t>& moves = m_movesBefore[m_project.readings().indexOf(reading)];
        if (!moves) {
            return false;
        }
        first = std::min(first, *moves);
        last = std::max(last, *moves);
    }
    for (std::size_t i = first; i < last; ++i) {
        const Move& move = m_history->moves[i];
        if (move.branch ? valves[*move.branch] : countsSpeed) {
            return false;
        }
    }
    return true;
}

std::optional<FlowRatio> flowRatio(const CheckContext& context, std::size_t branch) {
    if (context.before == nullptr) {
        return std::nullopt;
    }
    const BranchResult& now = context.now.branches[branch];
    const BranchResult& then = context.before->branches[branch];
    const bool isUsable = now.flow && then.flow && now.flow->si() > 0 && then.flow->si() > 0 &&
                          now.source != FlowSource::Range && then.source != FlowSource::Range &&
                          !now.isFromEarlierRound;
    if (!isUsable) {
        return std::nullopt;
    }
    return FlowRatio{*now.flow / *then.flow, base::rootSumSquare(*now.readingUncertainty / *now.flow,
                                                                 *then.readingUncertainty / *then.flow)};
}

}  // namespace ww::balancing::checks
