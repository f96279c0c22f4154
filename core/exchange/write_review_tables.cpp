#include "core/exchange/write_tables.h"

#include <algorithm>

namespace ww::exchange {

namespace {

using project::Project;

/// The records of a table in the order of its rows.
template <class Record>
std::vector<const Record*> inOrder(const project::RecordTable<Record>& table) {
    std::vector<const Record*> rows;
    for (const Record& record : table) {
        rows.push_back(&record);
    }
    if constexpr (std::same_as<Record, project::ReadinessLine>) {
        std::stable_sort(rows.begin(), rows.end(),
                         [](const Record* a, const Record* b) { return a->position < b->position; });
    }
    return rows;
}

template <class Record>
std::string rowText(const project::RecordTable<Record>& table, const base::Id& id) {
    const auto rows = inOrder(table);
    const auto found =
        std::find_if(rows.begin(), rows.end(), [&](const Record* record) { return record->id == id; });
    return found == rows.end() ? std::string() : std::to_string(found - rows.begin() + 1);
}

template <class Record, class Name>
std::string nameText(const project::RecordTable<Record>& table, const base::Id& id, Name name) {
    const Record* record = table.find(id);
    return record == nullptr ? std::string() : name(*record);
}

template <class Record>
std::string readingText(const Project& project, const project::RecordTable<Record>& table,
                        const std::vector<std::size_t>& (Project::*inRound)(const base::Id&) const,
                        const base::Id& id) {
    const Record* reading = table.find(id);
    const project::Round* round = reading == nullptr ? nullptr : project.rounds().find(reading->round);
    if (round == nullptr) {
        return {};
    }
    const auto& rows = (project.*inRound)(round->id);
    const auto found = std::find(rows.begin(), rows.end(), table.indexOf(id));
    return std::to_string(round->number) + ":" + std::to_string(found - rows.begin() + 1);
}

CsvTable loadTable(const Project& project) {
    CsvTable table(std::vector<std::string>{"hours", "flow"});
    table.setUsualUnit("flow", Unit::Percent);
    for (const project::LoadRow& row : project.job().loadRows) {
        table.begin();
        table.add(row.hours);
        table.add(row.flowFraction);
    }
    return table;
}

CsvTable sampleTable(const Project& project) {
    CsvTable table(std::vector<std::string>{"round", "tag"});
    for (const std::size_t index : project.roundsByNumber()) {
        const project::Round& round = project.rounds()[index];
        for (const project::SampleRow& row : round.sample) {
            table.begin();
            table.add(round.number);
            table.add(referenceText(project, RecordKind::Branch, row.branch));
        }
    }
    return table;
}

CsvTable earlierDesignTable(const Project& project) {
    CsvTable table(std::vector<std::string>{"round", "tag", "in_loop", "design_flow"});
    table.setUsualUnit("design_flow", Unit::LitrePerSecond);
    for (const std::size_t index : project.tree().walkingOrder()) {
        const project::Branch& branch = project.branches()[index];
        for (const project::EarlierDesign& design : branch.earlierDesigns) {
            table.begin();
            table.add(referenceText(project, RecordKind::Round, design.round));
            table.add(branch.tag);
            table.add(std::string(design.isInLoop ? "yes" : "no"));
            table.add(design.designFlow);
        }
    }
    return table;
}

}  // namespace

std::string referenceText(const Project& project, RecordKind kind, const base::Id& id) {
    switch (kind) {
        case RecordKind::Job:
            return project.job().id == id ? "job" : "";
        case RecordKind::ValveModel:
            return nameText(project.valves(), id, [](const auto& valve) {
                return valve.size.empty() ? valve.model : valve.model + " / " + valve.size;
            });
        case RecordKind::Branch:
            return nameText(project.branches(), id, [](const auto& branch) { return branch.tag; });
        case RecordKind::Pump:
            return nameText(project.pumps(), id, [](const auto& pump) { return pump.tag; });
        case RecordKind::Instrument:
            return nameText(project.instruments(), id, [](const auto& instrument) { return instrument.tag; });
        case RecordKind::Person:
            return nameText(project.people(), id, [](const auto& person) { return person.name; });
        case RecordKind::Round:
            return nameText(project.rounds(), id,
                            [](const auto& round) { return std::to_string(round.number); });
        case RecordKind::Reading:
            return readingText(project, project.readings(), &Project::readingsOf, id);
        case RecordKind::PumpReading:
            return readingText(project, project.pumpReadings(), &Project::pumpReadingsOf, id);
        case RecordKind::Deficiency:
            return nameText(project.deficiencies(), id,
                            [](const auto& deficiency) { return std::to_string(deficiency.number); });
        case RecordKind::SetPoint:
            return rowText(project.setPoints(), id);
        case RecordKind::ReadinessLine:
            return rowText(project.readiness(), id);
        case RecordKind::Comment:
            return rowText(project.comments(), id);
        case RecordKind::Attachment:
            return rowText(project.attachments(), id);
        case RecordKind::FindingReason:
            return rowText(project.findingReasons(), id);
        case RecordKind::SignedReport:
            return rowText(project.signedReports(), id);
        case RecordKind::MergeConflict:
            return rowText(project.mergeConflicts(), id);
        case RecordKind::ClockOffset:
            return rowText(project.clockOffsets(), id);
    }
    return {};
}

std::vector<NamedTable> reviewTables(const Project& project, FilesBeside& files) {
    std::vector<NamedTable> tables;
    tables.emplace_back("load.csv", loadTable(project));
    tables.emplace_back("witness_sample.csv", sampleTable(project));
    tables.emplace_back("earlier_designs.csv", earlierDesignTable(project));
    eachReviewTable([&](const char* file, auto records) {
        using Record = std::remove_cvref_t<decltype(*(project.*records)().begin())>;
        CsvTable table(columnsOf<Record>());
        WriteCells io(table, project, files);
        for (const Record* record : inOrder((project.*records)())) {
            table.begin();
            columns(io, *record);
        }
        tables.emplace_back(file, std::move(table));
    });
    return tables;
}

}  // namespace ww::exchange
