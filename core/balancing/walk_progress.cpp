#include "core/balancing/walk_progress.h"

#include <algorithm>
#include <unordered_map>

#include "core/balancing/detail/doubts.h"
#include "core/balancing/standing_readings.h"
#include "core/balancing/walk_forms.h"
#include "core/project/earlier_design.h"

namespace ww::balancing {

using project::Branch;
using project::Project;
using project::Reading;
using project::ReadingStatus;
using project::Round;

namespace {

/// Whether the walk of a round asks for the reading of a branch (by its index).
bool isAskedFor(const Project& project, const Round& round, std::size_t index) {
    const Branch& branch = project.branches()[index];
    if (!project::isInLoopOf(round, branch)) {
        return false;
    }
    if (round.sample.empty()) {
        return project.tree().isTerminal(index) || branch.valve.has_value();
    }
    return std::any_of(round.sample.begin(), round.sample.end(),
                       [&](const project::SampleRow& row) { return row.branch == branch.id; });
}

}  // namespace

std::vector<Finding> openItems(const Project& project, const Id& roundId) {
    const Round& round = project.rounds().at(roundId);
    const auto numbers = detail::roundNumbers(project, &round, detail::LookBack::ToCompare);
    const bool takesReadings = round.state == project::RoundState::Open;
    std::vector<Finding> found;
    for (const std::size_t index : project.tree().walkingOrder()) {
        const Branch& branch = project.branches()[index];
        const detail::BranchReadings& readings = numbers.readings[index];
        if (readings.hasValue()) {
            // One reason, or one new reading, answers all doubts about a reading.
            auto doubts = detail::doubts(project, numbers, index);
            const auto first = std::find_if(doubts.begin(), doubts.end(), [](const Finding& doubt) {
                return doubt.severity != Severity::Note;
            });
            if (first != doubts.end()) {
                found.push_back(std::move(*first));
            }
        } else if (readings.counting != nullptr) {
            if (readings.counting->reason.empty()) {
                found.push_back({base::Fault{&kNoReasonYet, branch.tag, {}}, Severity::Warning, branch.id,
                                 readings.counting->id});
            }
        } else if ((numbers.branches[index].isTerminal || takesReadings) &&
                   isAskedFor(project, round, index)) {
            found.push_back(
                {base::Fault{&kNotReadYet, branch.tag, {}}, Severity::Warning, branch.id, std::nullopt});
        }
    }
    return found;
}

WalkProgress walkProgress(const Project& project, const Round& round) {
    // The newest entry of a branch counts: a value, or that it cannot be read.
    std::unordered_map<Id, bool> isRead;
    for (const std::size_t index : project.readingsOf(round.id)) {
        const Reading& reading = project.readings()[index];
        if (reading.status == ReadingStatus::Standing && hasContent(reading) &&
            reading.purpose != project::ReadingPurpose::ShutValve) {
            isRead[reading.branch] = reading.dp || reading.flow;
        }
    }
    WalkProgress progress;
    for (const std::size_t index : project.tree().walkingOrder()) {
        const Branch& branch = project.branches()[index];
        if (!isAskedFor(project, round, index)) {
            continue;
        }
        ++progress.all;
        const auto found = isRead.find(branch.id);
        progress.read += found != isRead.end() && found->second ? 1U : 0U;
        if (found == isRead.end()) {
            progress.unread.push_back(branch.id);
        }
    }
    return progress;
}

std::optional<base::Fault> lostByGaps(const Project& project, const Id& roundId) {
    const Round& round = project.rounds().at(roundId);
    if (round.kind != project::RoundKind::Survey && round.kind != project::RoundKind::Final) {
        return std::nullopt;
    }
    const auto numbers = detail::roundNumbers(project, &round, detail::LookBack::ToCompare);
    if (numbers.total) {
        return std::nullopt;
    }
    constexpr std::size_t kNamed = 5;
    const project::BranchTree& tree = project.tree();
    std::string tags;
    std::size_t count = 0;
    for (const std::size_t terminal : tree.walkingOrder()) {
        bool hasFlow = !tree.isTerminal(terminal);
        for (std::size_t at = terminal; !hasFlow && at != project::BranchTree::kNone; at = tree.parent(at)) {
            hasFlow = numbers.branches[at].flow.has_value();
        }
        if (hasFlow) {
            continue;
        }
        if (++count <= kNamed) {
            tags += (count == 1 ? "" : ", ") + project.branches()[terminal].tag;
        }
    }
    if (count == 0) {
        return std::nullopt;
    }
    tags += count > kNamed ? " ..." : "";
    return base::Fault{&kGapsLoseShares, "", {std::to_string(count), tags}};
}

}  // namespace ww::balancing
