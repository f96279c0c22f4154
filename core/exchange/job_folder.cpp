#include "core/exchange/job_folder.h"

#include <algorithm>

#include "core/exchange/import_context.h"
#include "core/project/edit_label.h"
#include "core/project/names.h"

namespace ww::exchange {

namespace {

inline constexpr base::MessageForm kFolderMissing{
    "folder_missing", "there is no such folder; give the folder that holds job.csv and the other tables"};
bool folderIsThere(const std::filesystem::path& folder, std::vector<RowFault>& faults) {
    std::error_code error;
    if (std::filesystem::is_directory(folder, error)) {
        return true;
    }
    faults.push_back({folder.string(), 0, "", {&kFolderMissing, "", {}}});
    return false;
}

}  // namespace

void sortFaults(std::vector<RowFault>& faults) {
    const auto rank = [](const RowFault& fault) {
        return std::find(tableFiles().begin(), tableFiles().end(), fault.file) - tableFiles().begin();
    };
    std::stable_sort(faults.begin(), faults.end(), [&](const RowFault& a, const RowFault& b) {
        return std::pair(rank(a), a.row) < std::pair(rank(b), b.row);
    });
}

std::string folded(std::string_view text) {
    std::string out(text);
    std::transform(out.begin(), out.end(), out.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return out;
}

base::Id ImportContext::personNamed(const std::string& name) {
    const auto [found, isNew] = personByName.try_emplace(name, people.size());
    if (isNew) {
        project::Person person;
        person.id = ids.next();
        person.name = name;
        people.push_back(std::move(person));
    }
    return people[found->second].id;
}

base::Id ImportContext::idOfRow(project::RecordKind kind, int row) {
    const auto [found, isNew] = idsByRow[kind].try_emplace(row);
    if (isNew) {
        found->second = ids.next();
    }
    return found->second;
}

std::string placeOf(const RowFault& fault) {
    if (!fault.cell.empty()) {
        return fault.file + ":" + fault.cell;
    }
    const std::string column = fault.column.empty() ? "-" : fault.column;
    return fault.file + ":" + std::to_string(std::max(fault.row, 1)) + ":" + column;
}

std::string text(const RowFault& fault) {
    return placeOf(fault) + ": " + base::englishWithSubject(fault.fault);
}

ImportPlan readJobFolder(const std::filesystem::path& folder, base::IdSource& ids) {
    ImportPlan plan;
    return folderIsThere(folder, plan.faults) ? readJob(FolderSource(folder), ids) : plan;
}

ImportPlan readJob(const TableSource& source, base::IdSource& ids) {
    ImportPlan plan;
    ImportContext context(source, ids, plan.faults);
    readJob(context);
    readValves(context);
    readBranches(context);
    readPumps(context);
    readPumpCurves(context);
    readInstruments(context);
    readPeople(context);
    readRounds(context);
    readReadingTable(context, true);
    readPumpReadings(context);
    readReviewTables(context);
    sortFaults(plan.faults);
    if (!plan.faults.empty()) {
        source.locate(plan.faults);
        return plan;
    }
    // Rounds without a table of their own: all but the last have been walked to their end.
    if (!context.hasRoundTable && !context.rounds.empty()) {
        for (auto& [number, round] : context.rounds) {
            round.state = project::RoundState::Closed;
        }
        context.rounds.rbegin()->second.state = project::RoundState::Open;
    }
    project::Edit& edit = plan.edit;
    edit.label = project::label(project::labels::kNewJobNamed, {context.job.name});
    edit.put.emplace_back(std::move(context.job));
    const auto putList = [&](auto& records) {
        std::move(records.begin(), records.end(), std::back_inserter(edit.put));
    };
    putList(context.valves);
    putList(context.branches);
    putList(context.pumps);
    putList(context.instruments);
    putList(context.people);
    for (auto& [number, round] : context.rounds) {
        edit.put.emplace_back(std::move(round));
    }
    putList(context.readings);
    putList(context.pumpReadings);
    putList(context.reviewRecords);
    return plan;
}

ImportPlan readReadings(const std::filesystem::path& folder, const project::Project& project,
                        base::IdSource& ids) {
    ImportPlan plan;
    return folderIsThere(folder, plan.faults) ? readReadings(FolderSource(folder), project, ids) : plan;
}

}  // namespace ww::exchange
