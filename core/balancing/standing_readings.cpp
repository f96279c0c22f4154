#include "core/balancing/standing_readings.h"

#include <algorithm>

namespace ww::balancing {

namespace {

using base::Decimal;
using project::Branch;
using project::Id;
using project::Project;
using project::Reading;
using project::ReadingStatus;
using project::Round;

/// The rounds before this one, newest first.
std::vector<const Round*> roundsBefore(const Project& project, const Round& round) {
    std::vector<const Round*> found;
    const auto order = project.roundsByNumber();
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        if (project.rounds()[*at].number < round.number) {
            found.push_back(&project.rounds()[*at]);
        }
    }
    return found;
}

/// The setting as entered at which the valve's table says fully open.
std::optional<Decimal> fullyOpenSetting(const Project& project, const Branch& branch) {
    const project::ValveModel* valve = branch.valve ? project.valves().find(*branch.valve) : nullptr;
    if (valve == nullptr || valve->rows.empty()) {
        return std::nullopt;
    }
    return std::max_element(
               valve->rows.begin(), valve->rows.end(),
               [](const auto& a, const auto& b) { return a.setting.value() < b.setting.value(); })
        ->setting;
}

/// Whether a reading stands and says something of its branch; the dp of a shut valve is no flow.
bool isStandingAtBranch(const Reading& reading) {
    return reading.status == ReadingStatus::Standing && reading.purpose != project::ReadingPurpose::ShutValve;
}

}  // namespace

bool hasContent(const Reading& reading) {
    return reading.dp || reading.flow || reading.cannotBeRead;
}

int nextSequence(const Project& project, const Id& round) {
    const auto& indices = project.readingsOf(round);
    return indices.empty() ? 1 : project.readings()[indices.back()].sequence + 1;
}

std::vector<const Reading*> standingReadings(const Project& project, const Id& round, const Id& branch) {
    std::vector<const Reading*> found;
    for (const std::size_t index : project.readingsOf(round)) {
        const Reading& reading = project.readings()[index];
        if (reading.branch == branch && isStandingAtBranch(reading)) {
            found.push_back(&reading);
        }
    }
    return found;
}

std::optional<Decimal> standingSetting(const Project& project, const Id& roundId, const Id& branchId) {
    const Branch& branch = project.branches().at(branchId);
    if (!branch.valve) {
        return std::nullopt;
    }
    std::vector<const Round*> rounds = roundsBefore(project, project.rounds().at(roundId));
    rounds.insert(rounds.begin(), &project.rounds().at(roundId));
    for (const Round* round : rounds) {
        const auto readings = standingReadings(project, round->id, branchId);
        const auto newest = std::find_if(readings.rbegin(), readings.rend(),
                                         [](const Reading* reading) { return reading->setting.has_value(); });
        if (newest != readings.rend()) {
            return (*newest)->setting;
        }
    }
    return branch.setting ? branch.setting : fullyOpenSetting(project, branch);
}

const Reading* countingReading(const Project& project, const Id& round, const Id& branch) {
    const auto readings = standingReadings(project, round, branch);
    const auto newest = std::find_if(readings.rbegin(), readings.rend(),
                                     [](const Reading* reading) { return hasContent(*reading); });
    return newest == readings.rend() ? nullptr : *newest;
}

std::vector<const Reading*> countingReadings(const Project& project, const Id& round) {
    std::vector<const Reading*> counting(project.branches().size(), nullptr);
    for (const std::size_t index : project.readingsOf(round)) {
        const Reading& reading = project.readings()[index];
        const std::optional<std::size_t> branch = project.branches().findIndex(reading.branch);
        if (branch && isStandingAtBranch(reading) && hasContent(reading)) {
            counting[*branch] = &reading;
        }
    }
    return counting;
}

const Reading* earlierReading(const Project& project, const Id& roundId, const Id& branch) {
    for (const Round* round : roundsBefore(project, project.rounds().at(roundId))) {
        const Reading* counting = countingReading(project, round->id, branch);
        if (counting != nullptr && counting->dp) {
            return counting;
        }
    }
    return nullptr;
}

}  // namespace ww::balancing
