#include "core/workbook/cell_history.h"

#include <algorithm>

namespace ww::workbook {

base::Result<std::vector<CellValue>> cellHistory(const Workbook& workbook, const base::Id& branch) {
    const project::Project& project = workbook.project();
    const std::vector<JournalEntry> journal = workbook.journal();
    std::vector<std::pair<std::int64_t, CellValue>> found;
    for (const project::Reading& reading : project.readings()) {
        if (reading.branch != branch) {
            continue;
        }
        auto versions = workbook.historyOf({project::RecordKind::Reading, reading.id});
        if (!versions) {
            return versions.fault();
        }
        for (RecordVersion& version : *versions) {
            auto* then = version.record ? std::get_if<project::Reading>(&*version.record) : nullptr;
            const auto entry = std::find_if(
                journal.begin(), journal.end(),
                [&](const JournalEntry& candidate) { return candidate.sequence == version.sequence; });
            if (then == nullptr || entry == journal.end()) {
                continue;
            }
            const int round = project.rounds().at(then->round).number;
            found.emplace_back(version.sequence,
                               CellValue{std::move(*then), round, entry->time, entry->person, entry->label});
        }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<CellValue> out;
    for (auto& [sequence, value] : found) {
        out.push_back(std::move(value));
    }
    return out;
}

}  // namespace ww::workbook
