#include "core/workbook/cell_history.h"

#include <algorithm>
#include <tuple>
#include <unordered_map>

namespace ww::workbook {

base::Result<std::vector<CellValue>> cellHistory(const Workbook& workbook, const base::Id& branch) {
    const project::Project& project = workbook.project();
    const std::vector<JournalEntry>& journal = workbook.journal();
    auto versions = workbook.historyOfAll(project::RecordKind::Reading);
    if (!versions) {
        return versions.fault();
    }
    std::vector<CellValue> out;
    std::unordered_map<base::Id, project::Reading> known;
    for (auto& [ref, found] : *versions) {
        RecordVersion& version = found;
        auto* then = version.record ? std::get_if<project::Reading>(&*version.record) : nullptr;
        const bool isUndone = then == nullptr;
        const auto before = known.find(ref.id);
        if (isUndone && before == known.end()) {
            continue;
        }
        const project::Reading reading = isUndone ? before->second : *then;
        known.insert_or_assign(ref.id, reading);
        const auto entry = std::find_if(journal.begin(), journal.end(), [&](const JournalEntry& candidate) {
            return candidate.sequence == version.sequence;
        });
        if (reading.branch != branch || entry == journal.end()) {
            continue;
        }
        const project::Round* round = project.rounds().find(reading.round);
        const bool isGone = project.readings().find(reading.id) == nullptr;
        out.push_back({reading, round == nullptr ? 0 : round->number, version.sequence, entry->time,
                       entry->person, entry->label, isUndone, isGone && !isUndone});
    }
    // One entry may hold readings of several rounds, an import those of all.
    std::stable_sort(out.begin(), out.end(), [](const CellValue& a, const CellValue& b) {
        return std::tie(a.sequence, a.round, a.reading.sequence) <
               std::tie(b.sequence, b.round, b.reading.sequence);
    });
    return out;
}

}  // namespace ww::workbook
