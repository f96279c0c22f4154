// Tables added to a job that is there already.
#include "core/exchange/import_context.h"

#include "core/project/edit_label.h"

namespace ww::exchange {

namespace {

inline constexpr base::MessageForm kNothingToRecord{
    "nothing_to_record",
    "there is neither readings.csv nor pump_readings.csv with rows; put one into the folder"};
inline constexpr base::MessageForm kNothingToAdd{"nothing_to_add",
                                                 "the table has no rows below its headings; fill it in"};

template <class Records, class Map>
void takeTagged(const Records& records,
                std::vector<std::remove_cvref_t<decltype(*std::declval<Records>().begin())>>& list,
                Map& byTag) {
    for (const auto& record : records) {
        byTag.emplace(folded(record.tag), list.size());
        list.push_back(record);
    }
}

/// What the readers must know of the job.
void takeJob(ImportContext& context, const project::Project& project) {
    context.job = project.job();
    context.density = project.fluid().density();
    context.isAdding = true;
    for (const project::ValveModel& valve : project.valves()) {
        context.valveByName.emplace(valveKey(valve.model, valve.size), context.valves.size());
        context.valves.push_back(valve);
    }
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
}

/// The records that are new or no longer as they were.
template <class Records, class Known>
void putChanged(project::Edit& edit, Records& records, const Known& known) {
    for (auto& record : records) {
        const auto* before = known.find(record.id);
        if (before == nullptr || !(*before == record)) {
            edit.put.emplace_back(std::move(record));
        }
    }
}

/// Rounds in order of number. One that is followed by another has been walked to its end.
void putRounds(project::Edit& edit, ImportContext& context, const project::Project& project) {
    const int newest = context.rounds.empty() ? 0 : context.rounds.rbegin()->first;
    for (auto& [number, round] : context.rounds) {
        const bool isOver = number != newest && round.state == project::RoundState::Open;
        if (isOver) {
            round.state = project::RoundState::Closed;
        }
        if (isOver || !project.rounds().contains(round.id)) {
            edit.put.emplace_back(round);
        }
    }
}

void putReadings(project::Edit& edit, ImportContext& context, const project::Project& project) {
    project::Edit readings;
    putChanged(readings, context.readings, project.readings());
    putChanged(readings, context.pumpReadings, project.pumpReadings());
    if (!readings.put.empty()) {
        putChanged(edit, context.people, project.people());
        putRounds(edit, context, project);
        std::move(readings.put.begin(), readings.put.end(), std::back_inserter(edit.put));
    }
}

}  // namespace

ImportPlan readReadings(const TableSource& source, const project::Project& project, base::IdSource& ids) {
    ImportPlan plan;
    ImportContext context(source, ids, plan.faults);
    takeJob(context, project);
    readReadingTable(context, false);
    readPumpReadings(context);
    putReadings(plan.edit, context, project);
    if (plan.edit.put.empty() && plan.faults.empty()) {
        plan.faults.push_back({"readings.csv", 0, "", {&kNothingToRecord, "", {}}});
    }
    plan.edit.label = project::label(project::labels::kRecord, {source.name()});
    sortFaults(plan.faults);
    source.locate(plan.faults);
    return plan;
}

ImportPlan addTables(const TableSource& source, const project::Project& project, base::IdSource& ids) {
    ImportPlan plan;
    ImportContext context(source, ids, plan.faults);
    takeJob(context, project);
    readValves(context);
    readBranches(context);
    readPumps(context);
    readPumpCurves(context);
    readInstruments(context);
    readReadingTable(context, false);
    readPumpReadings(context);
    putChanged(plan.edit, context.valves, project.valves());
    putChanged(plan.edit, context.branches, project.branches());
    putChanged(plan.edit, context.pumps, project.pumps());
    putChanged(plan.edit, context.instruments, project.instruments());
    putReadings(plan.edit, context, project);
    if (plan.edit.put.empty() && plan.faults.empty()) {
        plan.faults.push_back({"", 0, "", {&kNothingToAdd, "", {}}});
    }
    plan.edit.label = project::label(project::labels::kImport, {source.name()});
    sortFaults(plan.faults);
    source.locate(plan.faults);
    return plan;
}

}  // namespace ww::exchange
