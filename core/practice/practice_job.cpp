#include "core/practice/practice_job.h"

#include <algorithm>
#include <charconv>

#include "core/balancing/standing_readings.h"
#include "core/practice/detail/design.h"
#include "core/project/edit_label.h"

namespace ww::practice {

namespace {

constexpr std::string_view kDifficultyKey = "difficulty=";
constexpr std::string_view kSeedKey = ";seed=";
constexpr std::uint64_t kLargestSeed = 999'999'999;

base::Fault unreadable(std::string_view text) {
    return {&kPracticeUnreadable, "", {std::string(text)}};
}

bool isValueAt(const project::Reading& reading, const base::Id& branch) {
    return reading.branch == branch && (reading.dp || reading.flow);
}

int valuesAt(const project::Project& project, const base::Id& round, const base::Id& branch) {
    const auto& indices = project.readingsOf(round);
    return static_cast<int>(std::count_if(indices.begin(), indices.end(), [&](std::size_t index) {
        return isValueAt(project.readings()[index], branch);
    }));
}

}  // namespace

std::string text(const PracticeKey& key) {
    return std::string(kDifficultyKey) + std::string(name(key.difficulty)) + std::string(kSeedKey) +
           std::to_string(key.seed);
}

base::Result<std::uint64_t> practiceSeed(std::string_view text) {
    std::uint64_t seed = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), seed);
    if (error != std::errc() || end != text.data() + text.size() || seed < 1 || seed > kLargestSeed) {
        return base::Fault{&kPracticeSeed, "", {std::string(text)}};
    }
    return seed;
}

base::Result<PracticeKey> practiceKey(std::string_view text) {
    const std::size_t middle = text.find(kSeedKey);
    if (!text.starts_with(kDifficultyKey) || middle == std::string_view::npos) {
        return unreadable(text);
    }
    const std::string_view word = text.substr(kDifficultyKey.size(), middle - kDifficultyKey.size());
    const auto found = std::find_if(std::begin(kDifficulties), std::end(kDifficulties),
                                    [&](Difficulty difficulty) { return name(difficulty) == word; });
    const auto seed = practiceSeed(text.substr(middle + kSeedKey.size()));
    if (found == std::end(kDifficulties) || !seed) {
        return unreadable(text);
    }
    return PracticeKey{*found, *seed};
}

project::Edit practiceContent(const PracticeKey& key, const std::string& jobName,
                              const base::Wording& wording) {
    const project::Project design = detail::makeDesign(planOf(key.difficulty), key.seed, wording);
    project::Job job = design.job();
    if (!jobName.empty()) {
        job.name = jobName;
    }
    job.practice = text(key);
    project::Edit edit;
    edit.label = project::label(project::labels::kPracticeJob);
    edit.canUndo = false;
    edit.put.emplace_back(job);
    const auto putAll = [&edit](const auto& table) {
        for (const auto& record : table) {
            edit.put.emplace_back(record);
        }
    };
    putAll(design.people());
    putAll(design.instruments());
    putAll(design.valves());
    putAll(design.branches());
    putAll(design.pumps());
    return edit;
}

PracticeJob::PracticeJob(const PracticeKey& key) : m_building(planOf(key.difficulty), key.seed) {}

PracticeJob::PracticeJob(Building building) : m_building(std::move(building)) {}

LoopState PracticeJob::notedState(const project::Project& project, const base::Id& round) const {
    LoopState state;
    for (const project::Branch& branch : m_building.design().branches()) {
        const auto* characteristic = m_building.design().characteristicOf(branch);
        if (characteristic == nullptr || !project.branches().contains(branch.id)) {
            continue;
        }
        if (const auto setting = balancing::standingSetting(project, round, branch.id)) {
            state.settings[branch.id] = std::clamp(quantity::Setting::si(setting->value()),
                                                   characteristic->lowest(), characteristic->fullyOpen());
        }
    }
    return state;
}

ReadingMoment PracticeJob::nextMoment(const project::Project& project, const base::Id& round,
                                      const base::Id& branch) const {
    ReadingMoment moment;
    moment.round = project.rounds().at(round).number;
    moment.look = valuesAt(project, round, branch) + 1;
    moment.takenBefore = static_cast<int>(
        std::count_if(project.readings().begin(), project.readings().end(),
                      [](const project::Reading& reading) { return reading.dp || reading.flow; }));
    for (const PlantedFault& fault : m_building.truth().faults) {
        if (fault.kind == FaultKind::SettingMisread && fault.round == moment.round) {
            const base::Id& there = m_building.design().branches()[fault.branch].id;
            moment.isHandleSeen = valuesAt(project, round, there) >= 2;
        }
    }
    return moment;
}

base::Result<std::size_t> PracticeJob::indexOf(const project::Project& project,
                                               const base::Id& branch) const {
    const auto& branches = m_building.design().branches();
    if (!branches.contains(branch)) {
        const project::Branch* record = project.branches().find(branch);
        const std::string tag = record != nullptr ? record->tag : branch.text();
        return base::Fault{&kPracticeNotABranch, tag, {tag}};
    }
    return branches.indexOf(branch);
}

base::Result<DpAnswer> PracticeJob::answer(const project::Project& project, const base::Id& round,
                                           const base::Id& branch, bool isClosed,
                                           std::optional<quantity::Setting> handle) const {
    const auto index = indexOf(project, branch);
    if (!index) {
        return index.fault();
    }
    const project::Branch& record = m_building.design().branches()[*index];
    if (m_building.design().characteristicOf(record) == nullptr) {
        return base::Fault{&kPracticeNoValve, record.tag, {record.tag}};
    }
    LoopState state = notedState(project, round);
    if (isClosed) {
        state.closed.push_back(branch);
    }
    ReadingMoment moment = nextMoment(project, round, branch);
    if (handle) {
        state.settings[branch] = *handle;
        moment.isHandleSeen = true;
    }
    return m_building.readDp(state, *index, moment);
}

base::Result<DpAnswer> PracticeJob::dpAt(const project::Project& project, const base::Id& branch,
                                         quantity::Setting handle) const {
    EXPECTS(project.lastRound() != nullptr);
    return answer(project, project.lastRound()->id, branch, false, handle);
}

base::Result<DpAnswer> PracticeJob::dp(const project::Project& project, const base::Id& round,
                                       const base::Id& branch) const {
    return answer(project, round, branch, false);
}

base::Result<DpAnswer> PracticeJob::closedDp(const project::Project& project, const base::Id& round,
                                             const base::Id& branch) const {
    return answer(project, round, branch, true);
}

base::Result<Measured<VolumeFlow>> PracticeJob::flow(const project::Project& project, const base::Id& round,
                                                     const base::Id& branch) const {
    const auto index = indexOf(project, branch);
    if (!index) {
        return index.fault();
    }
    return m_building.readFlow(notedState(project, round), *index, nextMoment(project, round, branch));
}

base::Result<Measured<PressureDifference>> PracticeJob::pumpRise(const project::Project& project,
                                                                 const base::Id& round,
                                                                 const base::Id& pump) const {
    if (!m_building.design().pumps().contains(pump)) {
        const project::Pump* record = project.pumps().find(pump);
        const std::string tag = record != nullptr ? record->tag : pump.text();
        return base::Fault{&kPracticeNoPump, tag, {tag}};
    }
    ReadingMoment moment = nextMoment(project, round, pump);
    moment.look = static_cast<int>(project.pumpReadingsOf(round).size()) + 1;
    return m_building.readPumpRise(notedState(project, round), moment);
}

base::Id PracticeJob::gauge() const {
    return detail::gaugeId(m_building.seed());
}

}  // namespace ww::practice
