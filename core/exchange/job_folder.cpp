#include "core/exchange/job_folder.h"

#include <algorithm>

#include "core/exchange/import_context.h"
#include "core/project/names.h"

namespace ww::exchange {

namespace {

inline constexpr base::MessageForm kFolderMissing{
    "folder_missing", "there is no such folder; give the folder that holds job.csv and the other tables"};
inline constexpr base::MessageForm kNothingToRecord{
    "nothing_to_record",
    "there is neither readings.csv nor pump_readings.csv with rows; put one into the folder"};

/// The order in which people work: tables of a folder, then rows.
void sortFaults(std::vector<RowFault>& faults) {
    const auto rank = [](const RowFault& fault) {
        return std::find(tableFiles().begin(), tableFiles().end(), fault.file) - tableFiles().begin();
    };
    std::stable_sort(faults.begin(), faults.end(), [&](const RowFault& a, const RowFault& b) {
        return std::pair(rank(a), a.row) < std::pair(rank(b), b.row);
    });
}

bool folderIsThere(const std::filesystem::path& folder, std::vector<RowFault>& faults) {
    std::error_code error;
    if (std::filesystem::is_directory(folder, error)) {
        return true;
    }
    faults.push_back({folder.string(), 0, "", {&kFolderMissing, "", {}}});
    return false;
}

}  // namespace

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
    edit.label = "New job " + context.job.name;
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

ImportPlan readReadings(const TableSource& source, const project::Project& project, base::IdSource& ids) {
    ImportPlan plan;
    ImportContext context(source, ids, plan.faults);
    context.job = project.job();
    context.density = project.fluid().density();
    context.isRecording = true;
    context.valves.assign(project.valves().begin(), project.valves().end());
    const auto takeTagged = [](const auto& records, auto& list, auto& byTag) {
        for (const auto& record : records) {
            byTag.emplace(folded(record.tag), list.size());
            list.push_back(record);
        }
    };
    takeTagged(project.branches(), context.branches, context.branchByTag);
    takeTagged(project.pumps(), context.pumps, context.pumpByTag);
    takeTagged(project.instruments(), context.instruments, context.instrumentByTag);
    for (const project::Person& person : project.people()) {
        context.personByName.emplace(person.name, context.people.size());
        context.people.push_back(person);
    }
    for (const project::Round& round : project.rounds()) {
        context.rounds.emplace(round.number, round);
    }
    context.readings.assign(project.readings().begin(), project.readings().end());
    context.pumpReadings.assign(project.pumpReadings().begin(), project.pumpReadings().end());
    readReadingTable(context, false);
    readPumpReadings(context);

    project::Edit& edit = plan.edit;
    const auto putNew = [&](auto& records, const auto& known) {
        for (auto& record : records) {
            if (!known.contains(record.id)) {
                edit.put.emplace_back(std::move(record));
            }
        }
    };
    putNew(context.readings, project.readings());
    putNew(context.pumpReadings, project.pumpReadings());
    if (edit.put.empty() && plan.faults.empty()) {
        plan.faults.push_back({"readings.csv", 0, "", {&kNothingToRecord, "", {}}});
    }
    const int newest = context.rounds.empty() ? 0 : context.rounds.rbegin()->first;
    std::vector<project::AnyRecord> first;
    for (const project::Person& person : context.people) {
        if (!project.people().contains(person.id)) {
            first.emplace_back(person);
        }
    }
    for (auto& [number, round] : context.rounds) {
        const bool isNew = !project.rounds().contains(round.id);
        // A round that is followed by another has been walked to its end.
        const bool isOver = number != newest && round.state == project::RoundState::Open;
        if (isOver) {
            round.state = project::RoundState::Closed;
        }
        if (isNew || isOver) {
            first.emplace_back(round);
        }
    }
    edit.put.insert(edit.put.begin(), first.begin(), first.end());
    edit.label = "Record readings from " + source.name();
    sortFaults(plan.faults);
    source.locate(plan.faults);
    return plan;
}

}  // namespace ww::exchange
