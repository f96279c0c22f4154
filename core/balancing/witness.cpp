#include "core/balancing/witness.h"

#include <algorithm>
#include <cmath>
#include <random>
#include <set>

#include "core/balancing/assess.h"
#include "core/balancing/standing_readings.h"
#include "core/balancing/walk_forms.h"
#include "core/project/edit_label.h"

namespace ww::balancing {

namespace {

using project::Project;
using project::Round;

/// A number below `limit`, each equally likely. Written out because the standard's distributions differ
/// between libraries, and a sample must be the same everywhere; the engine is the same by the standard.
std::size_t below(std::mt19937& engine, std::size_t limit) {
    const std::uint32_t most = static_cast<std::uint32_t>(limit);
    const std::uint32_t rest = (std::mt19937::max() % most + 1) % most;
    std::uint32_t drawn = static_cast<std::uint32_t>(engine());
    while (drawn > std::mt19937::max() - rest) {
        drawn = static_cast<std::uint32_t>(engine());
    }
    return drawn % most;
}

/// Terminals with a flow that was read, in walking order.
std::vector<std::size_t> candidates(const Project& project, const Assessment& reported) {
    std::vector<std::size_t> found;
    for (const std::size_t index : project.tree().walkingOrder()) {
        const BranchResult& result = reported.branches[index];
        const bool isRead = result.flow && !result.isFromEarlierRound &&
                            result.source != FlowSource::SumOfChildren && result.source != FlowSource::Range;
        if (result.isTerminal && isRead) {
            found.push_back(index);
        }
    }
    return found;
}

bool hasValue(const Project& project, const Round& round) {
    const auto& readings = project.readingsOf(round.id);
    return std::any_of(readings.begin(), readings.end(), [&](std::size_t index) {
        return project.readings()[index].dp || project.readings()[index].flow;
    });
}

}  // namespace

std::vector<Id> witnessSample(const Project& project, const Assessment& reported, std::uint32_t seed,
                              Ratio fraction) {
    const std::vector<std::size_t> all = candidates(project, reported);
    if (all.empty()) {
        return {};
    }
    std::set<std::size_t> chosen;
    const auto byDesign = [&](std::size_t a, std::size_t b) {
        const auto& left = reported.branches[a].ofDesign;
        const auto& right = reported.branches[b].ofDesign;
        return (left ? left->si() : 1.0) < (right ? right->si() : 1.0);
    };
    const auto [lowest, highest] = std::minmax_element(all.begin(), all.end(), byDesign);
    chosen.insert({*lowest, *highest});
    if (reported.index.terminal && std::find(all.begin(), all.end(), *reported.index.terminal) != all.end()) {
        chosen.insert(*reported.index.terminal);
    }
    std::mt19937 engine(seed);
    std::vector<std::size_t> left = all;
    for (std::size_t i = left.size(); i > 1; --i) {
        std::swap(left[i - 1], left[below(engine, i)]);
    }
    std::set<std::size_t> groups;
    for (const std::size_t index : chosen) {
        groups.insert(project.tree().parent(index));
    }
    for (const std::size_t index : left) {
        if (groups.insert(project.tree().parent(index)).second) {
            chosen.insert(index);
        }
    }
    const auto wanted = static_cast<std::size_t>(
        std::ceil(std::clamp(fraction.si(), 0.0, 1.0) * static_cast<double>(all.size()) - 1e-9));
    for (std::size_t i = 0; i < left.size() && chosen.size() < wanted; ++i) {
        chosen.insert(left[i]);
    }
    std::vector<Id> sample;
    for (const std::size_t index : all) {
        if (chosen.contains(index)) {
            sample.push_back(project.branches()[index].id);
        }
    }
    return sample;
}

const Round* reportedRound(const Project& project, const Round* witness) {
    const Round* newest = nullptr;
    const auto order = project.roundsByNumber();
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        const Round& round = project.rounds()[*at];
        const bool isBefore = witness == nullptr || round.number < witness->number;
        if (!isBefore || round.kind == project::RoundKind::Witness || !hasValue(project, round)) {
            continue;
        }
        if (round.kind == project::RoundKind::Final) {
            return &round;
        }
        newest = newest == nullptr ? &round : newest;
    }
    return newest;
}

base::Result<project::Edit> openWitnessRound(const Project& project, std::uint32_t seed, Ratio fraction,
                                             WalkContext context) {
    auto edit = openRound(project, project::RoundKind::Witness, context);
    if (!edit) {
        return edit;
    }
    const Round* reported = reportedRound(project);
    const std::vector<Id> sample =
        reported == nullptr ? std::vector<Id>{}
                            : witnessSample(project, assess(project, reported->id), seed, fraction);
    if (sample.empty()) {
        return base::Fault{&kNothingToWitness, "", {}};
    }
    Round& round = std::get<Round>(edit->put.front());
    round.sampleSeed = *base::Decimal::parse(std::to_string(seed));
    for (const Id& branch : sample) {
        round.sample.push_back({branch});
    }
    edit->label = project::label(project::labels::kOpenWitness,
                                 {std::to_string(round.number), std::to_string(sample.size())});
    return edit;
}

bool WitnessRow::deviates() const {
    return reported && reread && std::abs(*reread / *reported - 1) > kWitnessLimitRatio;
}

WitnessResult witnessResult(const Project& project, const Id& roundId) {
    const Round& round = project.rounds().at(roundId);
    const Round* reported = reportedRound(project, &round);
    const AssessOptions numbers{.fillGaps = false, .numbersOnly = true};
    const Assessment now = assess(project, roundId, numbers);
    const std::optional<Assessment> then =
        reported == nullptr ? std::nullopt : std::optional(assess(project, reported->id, numbers));
    WitnessResult out;
    for (const project::SampleRow& sample : round.sample) {
        if (!project.branches().contains(sample.branch)) {
            continue;
        }
        const std::size_t index = project.branches().indexOf(sample.branch);
        WitnessRow row;
        row.branch = sample.branch;
        row.reread = now.branches[index].flow;
        if (then && then->branches[index].flow && then->branches[index].flow->si() > 0) {
            row.reported = then->branches[index].flow;
        }
        const project::Reading* again = countingReading(project, roundId, sample.branch);
        const project::Reading* before =
            reported == nullptr ? nullptr : countingReading(project, reported->id, sample.branch);
        if (again != nullptr && before != nullptr) {
            row.isSameReader = again->person && again->person == before->person;
            row.isSameInstrument = again->instrument && again->instrument == before->instrument;
        }
        out.unread += row.reread ? 0U : 1U;
        out.failing += row.deviates() ? 1U : 0U;
        out.rows.push_back(row);
    }
    const double most = kWitnessMostFailingFraction * static_cast<double>(out.rows.size());
    if (!out.rows.empty() && out.unread == 0) {
        out.verdict = static_cast<double>(out.failing) > most ? WitnessVerdict::NotConfirmed
                                                              : WitnessVerdict::Confirmed;
    }
    return out;
}

}  // namespace ww::balancing
