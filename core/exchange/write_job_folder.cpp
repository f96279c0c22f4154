// The job as CSV tables: one table a file, digits as typed.
#include <algorithm>
#include <fstream>

#include "core/exchange/job_sheets.h"
#include "core/exchange/write_tables.h"

namespace ww::exchange {

namespace {

using project::Project;
using quantity::Unit;

inline constexpr base::MessageForm kFolderNotMade{
    "folder_not_made", "the folder cannot be made ({1}); choose a place that can be written"};

std::string yes(bool value) {
    return value ? "yes" : "";
}

std::string text(const quantity::Unit unit) {
    return std::string(quantity::symbol(unit));
}

/// Behind the name of a table that is not yet whole.
constexpr const char* kPart = ".part";

/// The rows of job.csv: one for each key, also for those that columns() names.
class WriteKeys {
  public:
    explicit WriteKeys(CsvTable& table) : m_table(table) {}
    template <class Value>
    void add(std::string key, const Value& value) {
        m_table.begin();
        m_table.add(std::move(key));
        m_table.add(value);
    }
    template <class Q>
    void addMeasured(const char* key, const quantity::Measured<Q>& value) {
        add(std::string(key) + "[" + text(value.unit) + "]", value.digits);
    }

    void cell(const char* key, const std::string& value) { add(key, value); }
    void cell(const char* key, const std::optional<base::Decimal>& value) { add(key, value); }
    void cell(const char* key, project::CodeForm value) { add(key, std::string(project::name(value))); }
    template <class Q>
    void cell(const char* key, const std::optional<quantity::Measured<Q>>& value, Sign) {
        if (value) {
            addMeasured(key, *value);
        }
    }

  private:
    CsvTable& m_table;
};

CsvTable jobTable(const Project& project) {
    const project::Job& job = project.job();
    CsvTable table(std::vector<std::string>{"key", "value"});
    WriteKeys io(table);
    io.add("name", job.name);
    io.add("site", job.site);
    io.add("client", job.client);
    io.add("units", std::string(project::name(job.units)));
    io.add("fluid", std::string(project::name(job.fluid)));
    io.addMeasured("concentration", job.concentration);
    io.addMeasured("temperature", job.temperature);
    io.addMeasured("tolerance_low", job.toleranceLow);
    io.addMeasured("tolerance_high", job.toleranceHigh);
    io.addMeasured("matching_band", job.matchingBand);
    io.add("power_price[1/kWh]", job.powerPrice);
    io.add("currency", job.currency);
    io.add("hours[h/yr]", job.hoursPerYear);
    columns(io, job);
    return table;
}

CsvTable roundTable(const Project& project) {
    CsvTable table(std::vector<std::string>{"round", "kind", "state", "opened", "closed"});
    table.addColumns(columnsOf<project::Round>());
    for (const std::size_t index : project.roundsByNumber()) {
        const project::Round& round = project.rounds()[index];
        table.begin();
        table.add(round.number);
        table.add(std::string(project::name(round.kind)));
        table.add(std::string(project::name(round.state)));
        table.add(round.opened);
        table.add(round.closed);
        addGained(table, project, round);
    }
    return table;
}

std::string instrumentTag(const Project& project, const std::optional<base::Id>& id) {
    const project::Instrument* instrument = id ? project.instruments().find(*id) : nullptr;
    return instrument != nullptr ? instrument->tag : std::string();
}

std::string personName(const Project& project, const std::optional<base::Id>& id) {
    const project::Person* person = id ? project.people().find(*id) : nullptr;
    return person != nullptr ? person->name : std::string();
}

std::string statusText(project::ReadingStatus status) {
    return status == project::ReadingStatus::Standing ? std::string() : std::string(project::name(status));
}

/// Which row of its round, counted from 1, holds the reading with this id; nothing where there is none.
template <class Readings>
std::optional<base::Decimal> placeInRound(const Readings& readings, const std::vector<std::size_t>& rows,
                                          const std::optional<base::Id>& id) {
    for (std::size_t i = 0; id && i < rows.size(); ++i) {
        if (readings[rows[i]].id == *id) {
            return base::Decimal::fromNumber(static_cast<double>(i + 1), 0);
        }
    }
    return std::nullopt;
}

CsvTable peopleTable(const Project& project) {
    CsvTable table(std::vector<std::string>{"name"});
    table.addColumns(columnsOf<project::Person>());
    for (const project::Person& person : project.people()) {
        table.begin();
        table.add(person.name);
        addGained(table, project, person);
    }
    return table;
}

CsvTable readingTable(const Project& project) {
    CsvTable table(std::vector<std::string>{"round", "kind", "time", "tag", "setting", "dp", "flow",
                                            "instrument", "person", "note", "status", "repeat", "cannot_read",
                                            "doubtful", "reason", "corrects"});
    table.addColumns(columnsOf<project::Reading>());
    table.setUsualUnit("dp", Unit::Kilopascal);
    table.setUsualUnit("flow", Unit::LitrePerSecond);
    for (const std::size_t roundIndex : project.roundsByNumber()) {
        const project::Round& round = project.rounds()[roundIndex];
        for (const std::size_t index : project.readingsOf(round.id)) {
            const project::Reading& reading = project.readings()[index];
            table.begin();
            table.add(round.number);
            table.add(std::string(project::name(round.kind)));
            table.add(reading.time);
            table.add(project.branches().at(reading.branch).tag);
            table.add(reading.setting);
            table.add(reading.dp);
            table.add(reading.flow);
            table.add(instrumentTag(project, reading.instrument));
            table.add(personName(project, reading.person));
            table.add(reading.note);
            table.add(statusText(reading.status));
            table.add(yes(reading.isRepeat));
            table.add(yes(reading.cannotBeRead));
            table.add(yes(reading.isDoubtful));
            table.add(reading.reason);
            table.add(placeInRound(project.readings(), project.readingsOf(round.id), reading.supersedes));
            addGained(table, project, reading);
        }
    }
    return table;
}

CsvTable pumpReadingTable(const Project& project) {
    CsvTable table(std::vector<std::string>{"round", "time", "pump", "suction", "discharge", "gauge_rise",
                                            "speed", "throttle", "flow", "volts", "amps", "power",
                                            "instrument", "person", "status", "corrects"});
    table.addColumns(columnsOf<project::PumpReading>());
    for (const char* column : {"suction", "discharge", "gauge_rise"}) {
        table.setUsualUnit(column, Unit::Kilopascal);
    }
    table.setUsualUnit("speed", Unit::RevolutionPerMinute);
    table.setUsualUnit("flow", Unit::LitrePerSecond);
    table.setUsualUnit("volts", Unit::Volt);
    table.setUsualUnit("amps", Unit::Ampere);
    table.setUsualUnit("power", Unit::Kilowatt);
    for (const std::size_t roundIndex : project.roundsByNumber()) {
        const project::Round& round = project.rounds()[roundIndex];
        for (const std::size_t index : project.pumpReadingsOf(round.id)) {
            const project::PumpReading& reading = project.pumpReadings()[index];
            table.begin();
            table.add(round.number);
            table.add(reading.time);
            table.add(project.pumps().at(reading.pump).tag);
            table.add(reading.suction);
            table.add(reading.discharge);
            table.add(reading.gaugeRise);
            table.add(reading.speed);
            table.add(reading.throttle);
            table.add(reading.flow);
            table.add(reading.volts);
            table.add(reading.amps);
            table.add(reading.power);
            table.add(instrumentTag(project, reading.instrument));
            table.add(personName(project, reading.person));
            table.add(statusText(reading.status));
            table.add(
                placeInRound(project.pumpReadings(), project.pumpReadingsOf(round.id), reading.supersedes));
            addGained(table, project, reading);
        }
    }
    return table;
}

/// Files named by what they hold: one that is there already holds the same.
base::Outcome writeFiles(const FilesBeside& files, const std::filesystem::path& folder) {
    std::error_code error;
    if (!files.empty()) {
        std::filesystem::create_directories(folder, error);
    }
    for (const auto& [name, bytes] : files) {
        std::ofstream stream(folder / name, std::ios::binary | std::ios::trunc);
        stream.write(reinterpret_cast<const char*>(bytes.bytes().data()),
                     static_cast<std::streamsize>(bytes.bytes().size()));
        stream.close();
        if (!stream) {
            return base::Fault{&kTableNotWritten, (folder / name).string(), {}};
        }
    }
    return base::Done{};
}

/// All tables, and the files that stand beside them.
std::vector<NamedTable> tablesOf(const Project& project, FilesBeside& files) {
    std::vector<NamedTable> tables = {{"job.csv", jobTable(project)},
                                      {"people.csv", peopleTable(project)},
                                      {"rounds.csv", roundTable(project)},
                                      {"readings.csv", readingTable(project)},
                                      {"pump_readings.csv", pumpReadingTable(project)}};
    for (NamedTable& table : systemTables(project)) {
        tables.push_back(std::move(table));
    }
    for (NamedTable& table : reviewTables(project, files)) {
        tables.push_back(std::move(table));
    }
    return tables;
}

}  // namespace

std::vector<JobTable> jobTables(const Project& project) {
    std::vector<JobTable> all;
    FilesBeside files;
    for (const auto& [name, table] : tablesOf(project, files)) {
        all.push_back({name, table.written()});
    }
    return all;
}

std::vector<spreadsheet::WrittenSheet> jobSheets(const Project& project) {
    FilesBeside files;
    std::vector<NamedTable> tables = tablesOf(project, files);
    std::vector<spreadsheet::WrittenSheet> sheets;
    for (const std::string& file : tableFiles()) {
        const auto found = std::find_if(tables.begin(), tables.end(),
                                        [&](const NamedTable& table) { return table.first == file; });
        if (found != tables.end()) {
            sheets.push_back(found->second.sheet(file.substr(0, file.rfind('.'))));
        }
    }
    return sheets;
}

base::Outcome writeAttachments(const Project& project, const std::filesystem::path& folder) {
    FilesBeside files;
    tablesOf(project, files);
    return writeFiles(files, folder);
}

base::Outcome writeJobFolder(const Project& project, const std::filesystem::path& folder) {
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (error) {
        return base::Fault{&kFolderNotMade, folder.string(), {error.message()}};
    }
    FilesBeside files;
    const std::vector<NamedTable> tables = tablesOf(project, files);
    // All tables stand beside their places before the first takes its place, so that a full disk spoils none.
    base::Outcome outcome = writeFiles(files, folder / kAttachmentFolder);
    for (const auto& [name, table] : tables) {
        outcome = outcome ? table.write(folder / (std::string(name) + kPart)) : outcome;
    }
    for (const auto& [name, table] : tables) {
        const std::filesystem::path part = folder / (std::string(name) + kPart);
        if (outcome) {
            std::filesystem::rename(part, folder / name, error);
            outcome =
                error ? base::Outcome(base::Fault{&kTableNotWritten, (folder / name).string(), {}}) : outcome;
        }
        std::error_code ignored;
        std::filesystem::remove(part, ignored);
    }
    return outcome;
}

}  // namespace ww::exchange
