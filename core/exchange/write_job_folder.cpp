// The job as CSV tables: one table a file, digits as typed.
#include <algorithm>
#include <fstream>
#include <map>

#include "core/exchange/csv_text.h"
#include "core/exchange/job_folder.h"
#include "core/project/names.h"

namespace ww::exchange {

namespace {

using project::Project;
using quantity::Unit;

inline constexpr base::MessageForm kFolderNotMade{
    "folder_not_made", "the folder cannot be made ({1}); choose a place that can be written"};
inline constexpr base::MessageForm kTableNotWritten{
    "table_not_written", "the table cannot be written; check room and permissions there"};

std::string text(const std::optional<base::Decimal>& number) {
    return number ? number->text() : std::string();
}

std::string text(const std::optional<base::Instant>& moment) {
    return moment ? moment->text() : std::string();
}

std::string dateText(const std::optional<base::Instant>& moment) {
    return moment ? moment->date() : std::string();
}

std::string yes(bool value) {
    return value ? "yes" : "";
}

std::string text(const quantity::Unit unit) {
    return std::string(quantity::symbol(unit));
}

/// Behind the name of a table that is not yet whole.
constexpr const char* kPart = ".part";

/// A table being built: a unit column takes the unit that most of its cells were entered in.
class Table {
  public:
    explicit Table(std::vector<std::string> columns) : m_columns(std::move(columns)) {}

    void begin() { m_rows.emplace_back(); }
    void add(std::string cell) { m_rows.back().push_back({std::move(cell), std::nullopt}); }
    template <class Q>
    void add(const quantity::Measured<Q>& value) {
        m_rows.back().push_back({value.digits.text(), value.unit});
    }
    template <class Q>
    void add(const std::optional<quantity::Measured<Q>>& value) {
        if (value) {
            add(*value);
        } else {
            add(std::string());
        }
    }

    /// Unit of a column where no cell has one: still needed in the header.
    void setUsualUnit(const std::string& column, Unit unit) { m_usual.emplace(column, unit); }

    base::Outcome write(const std::filesystem::path& file) const {
        std::vector<std::string> header;
        std::vector<std::optional<Unit>> units;
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            units.push_back(unitOf(i));
            header.push_back(units[i] ? m_columns[i] + bracketed(*units[i]) : m_columns[i]);
        }
        std::string out = csvRecord(header);
        for (const auto& row : m_rows) {
            std::vector<std::string> cells;
            for (std::size_t i = 0; i < row.size(); ++i) {
                const bool isForeign = row[i].unit && row[i].unit != units[i];
                cells.push_back(isForeign ? row[i].text + " " + text(*row[i].unit) : row[i].text);
            }
            out += csvRecord(cells);
        }
        std::ofstream stream(file, std::ios::binary | std::ios::trunc);
        stream << out;
        stream.close();
        if (!stream) {
            return base::Fault{&kTableNotWritten, file.string(), {}};
        }
        return base::Done{};
    }

  private:
    struct Cell {
        std::string text;
        std::optional<Unit> unit;
    };

    static std::string bracketed(Unit unit) { return "[" + text(unit) + "]"; }

    std::optional<Unit> unitOf(std::size_t column) const {
        std::map<Unit, int> votes;
        for (const auto& row : m_rows) {
            if (row[column].unit) {
                ++votes[*row[column].unit];
            }
        }
        const auto usual = m_usual.find(m_columns[column]);
        if (votes.empty()) {
            return usual == m_usual.end() ? std::nullopt : std::optional(usual->second);
        }
        return std::max_element(votes.begin(), votes.end(),
                                [](const auto& a, const auto& b) { return a.second < b.second; })
            ->first;
    }

    std::vector<std::string> m_columns;
    std::vector<std::vector<Cell>> m_rows;
    std::map<std::string, Unit> m_usual;
};

Table jobTable(const Project& project) {
    const project::Job& job = project.job();
    Table table({"key", "value"});
    const auto add = [&](std::string key, std::string value) {
        table.begin();
        table.add(std::move(key));
        table.add(std::move(value));
    };
    const auto addMeasured = [&](const std::string& key, const auto& value) {
        add(key + "[" + text(value.unit) + "]", value.digits.text());
    };
    add("name", job.name);
    add("site", job.site);
    add("client", job.client);
    add("units", std::string(project::name(job.units)));
    add("fluid", std::string(project::name(job.fluid)));
    addMeasured("concentration", job.concentration);
    addMeasured("temperature", job.temperature);
    addMeasured("tolerance_low", job.toleranceLow);
    addMeasured("tolerance_high", job.toleranceHigh);
    addMeasured("matching_band", job.matchingBand);
    add("power_price[1/kWh]", text(job.powerPrice));
    add("currency", job.currency);
    add("hours[h/yr]", text(job.hoursPerYear));
    return table;
}

/// Each valve keeps the coefficient that it was entered with; the other column stays empty. One without a
/// table has a row for its range of dp.
Table valveTable(const Project& project) {
    Table table({"model", "size", "scale", "setting", "Cv", "Kv", "minimum_dp", "maximum_dp", "accuracy"});
    table.setUsualUnit("minimum_dp", Unit::Kilopascal);
    table.setUsualUnit("maximum_dp", Unit::Kilopascal);
    table.setUsualUnit("accuracy", Unit::Percent);
    for (const project::ValveModel& valve : project.valves()) {
        const auto addRow = [&](const std::string& setting, const std::string& coefficient) {
            const bool isCv = valve.coefficientUnit == Unit::Cv;
            table.begin();
            table.add(valve.model);
            table.add(valve.size);
            table.add(std::string(project::name(valve.scale)));
            table.add(setting);
            table.add(isCv ? coefficient : std::string());
            table.add(isCv ? std::string() : coefficient);
            table.add(valve.minimumDp);
            table.add(valve.maximumDp);
            table.add(valve.accuracy);
        };
        for (const project::ValveTableRow& row : valve.rows) {
            addRow(row.setting.text(), row.coefficient.text());
        }
        if (valve.rows.empty()) {
            addRow("", "");
        }
    }
    return table;
}

Table branchTable(const Project& project) {
    Table table({"tag", "parent", "serves", "kind", "design_flow", "run_loss", "circuit_loss", "valve_model",
                 "valve_size", "setting", "side", "upstream_diameters", "downstream_diameters", "return"});
    table.setUsualUnit("design_flow", Unit::LitrePerSecond);
    table.setUsualUnit("run_loss", Unit::Kilopascal);
    table.setUsualUnit("circuit_loss", Unit::Kilopascal);
    for (const std::size_t index : project.tree().walkingOrder()) {
        const project::Branch& branch = project.branches()[index];
        const project::ValveModel* valve = branch.valve ? project.valves().find(*branch.valve) : nullptr;
        const project::Branch* parent = branch.parent ? project.branches().find(*branch.parent) : nullptr;
        table.begin();
        table.add(branch.tag);
        table.add(parent != nullptr ? parent->tag : std::string());
        table.add(branch.serves);
        table.add(std::string(project::name(branch.kind)));
        table.add(branch.designFlow);
        table.add(branch.runLoss);
        table.add(branch.circuitLoss);
        table.add(valve != nullptr ? valve->model : std::string());
        table.add(valve != nullptr ? valve->size : std::string());
        table.add(text(branch.setting));
        table.add(std::string(project::name(branch.side)));
        table.add(text(branch.upstreamDiameters));
        table.add(text(branch.downstreamDiameters));
        table.add(std::string(project::name(branch.returns)));
    }
    return table;
}

Table pumpTable(const Project& project) {
    Table table({"tag", "running", "speed", "impeller", "impeller_min", "motor_power", "motor_efficiency",
                 "volts", "amps", "service_factor", "throttle_tag"});
    table.setUsualUnit("speed", Unit::RevolutionPerMinute);
    table.setUsualUnit("impeller", Unit::Millimetre);
    table.setUsualUnit("impeller_min", Unit::Millimetre);
    table.setUsualUnit("motor_power", Unit::Kilowatt);
    table.setUsualUnit("motor_efficiency", Unit::Percent);
    table.setUsualUnit("volts", Unit::Volt);
    table.setUsualUnit("amps", Unit::Ampere);
    for (const project::Pump& pump : project.pumps()) {
        table.begin();
        table.add(pump.tag);
        table.add(std::string(pump.isRunning ? "yes" : "no"));
        table.add(pump.speed);
        table.add(pump.impeller);
        table.add(pump.impellerMinimum);
        table.add(pump.motorPower);
        table.add(pump.motorEfficiency);
        table.add(pump.volts);
        table.add(pump.amps);
        table.add(text(pump.serviceFactor));
        table.add(pump.throttleTag);
    }
    return table;
}

Table pumpCurveTable(const Project& project) {
    Table table({"pump", "flow", "head", "efficiency", "power", "npshr", "impeller"});
    table.setUsualUnit("flow", Unit::LitrePerSecond);
    table.setUsualUnit("head", Unit::Metre);
    table.setUsualUnit("efficiency", Unit::Percent);
    table.setUsualUnit("power", Unit::Kilowatt);
    table.setUsualUnit("npshr", Unit::Metre);
    table.setUsualUnit("impeller", Unit::Millimetre);
    for (const project::Pump& pump : project.pumps()) {
        for (const project::PumpTableRow& row : pump.rows) {
            table.begin();
            table.add(pump.tag);
            table.add(row.flow);
            table.add(row.head);
            table.add(row.efficiency);
            table.add(row.power);
            table.add(row.npshRequired);
            table.add(row.impeller);
        }
    }
    return table;
}

Table instrumentTable(const Project& project) {
    Table table({"tag", "kind", "serial", "range", "accuracy", "accuracy_floor", "calibrated", "due"});
    table.setUsualUnit("range", Unit::Kilopascal);
    table.setUsualUnit("accuracy", Unit::Percent);
    table.setUsualUnit("accuracy_floor", Unit::Kilopascal);
    for (const project::Instrument& instrument : project.instruments()) {
        table.begin();
        table.add(instrument.tag);
        table.add(instrument.kind);
        table.add(instrument.serial);
        table.add(instrument.range);
        table.add(instrument.accuracy);
        table.add(instrument.accuracyFloor);
        table.add(dateText(instrument.calibrated));
        table.add(dateText(instrument.due));
    }
    return table;
}

Table roundTable(const Project& project) {
    Table table({"round", "kind", "state", "opened", "closed"});
    for (const std::size_t index : project.roundsByNumber()) {
        const project::Round& round = project.rounds()[index];
        table.begin();
        table.add(std::to_string(round.number));
        table.add(std::string(project::name(round.kind)));
        table.add(std::string(project::name(round.state)));
        table.add(text(round.opened));
        table.add(text(round.closed));
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

/// Which row of its round, counted from 1, holds the reading with this id; empty where there is none.
template <class Readings>
std::string placeInRound(const Readings& readings, const std::vector<std::size_t>& rows,
                         const std::optional<base::Id>& id) {
    for (std::size_t i = 0; id && i < rows.size(); ++i) {
        if (readings[rows[i]].id == *id) {
            return std::to_string(i + 1);
        }
    }
    return {};
}

Table peopleTable(const Project& project) {
    Table table({"name"});
    for (const project::Person& person : project.people()) {
        table.begin();
        table.add(person.name);
    }
    return table;
}

Table readingTable(const Project& project) {
    Table table({"round", "kind", "time", "tag", "setting", "dp", "flow", "instrument", "person", "note",
                 "status", "repeat", "cannot_read", "doubtful", "reason", "corrects"});
    table.setUsualUnit("dp", Unit::Kilopascal);
    table.setUsualUnit("flow", Unit::LitrePerSecond);
    for (const std::size_t roundIndex : project.roundsByNumber()) {
        const project::Round& round = project.rounds()[roundIndex];
        for (const std::size_t index : project.readingsOf(round.id)) {
            const project::Reading& reading = project.readings()[index];
            table.begin();
            table.add(std::to_string(round.number));
            table.add(std::string(project::name(round.kind)));
            table.add(text(reading.time));
            table.add(project.branches().at(reading.branch).tag);
            table.add(text(reading.setting));
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
        }
    }
    return table;
}

Table pumpReadingTable(const Project& project) {
    Table table({"round", "time", "pump", "suction", "discharge", "gauge_rise", "speed", "throttle", "flow",
                 "volts", "amps", "power", "instrument", "person", "status", "corrects"});
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
            table.add(std::to_string(round.number));
            table.add(text(reading.time));
            table.add(project.pumps().at(reading.pump).tag);
            table.add(reading.suction);
            table.add(reading.discharge);
            table.add(reading.gaugeRise);
            table.add(reading.speed);
            table.add(text(reading.throttle));
            table.add(reading.flow);
            table.add(reading.volts);
            table.add(reading.amps);
            table.add(reading.power);
            table.add(instrumentTag(project, reading.instrument));
            table.add(personName(project, reading.person));
            table.add(statusText(reading.status));
            table.add(
                placeInRound(project.pumpReadings(), project.pumpReadingsOf(round.id), reading.supersedes));
        }
    }
    return table;
}

}  // namespace

base::Outcome writeJobFolder(const Project& project, const std::filesystem::path& folder) {
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (error) {
        return base::Fault{&kFolderNotMade, folder.string(), {error.message()}};
    }
    const std::pair<const char*, Table> tables[] = {{"job.csv", jobTable(project)},
                                                    {"valves.csv", valveTable(project)},
                                                    {"branches.csv", branchTable(project)},
                                                    {"pumps.csv", pumpTable(project)},
                                                    {"pump_curve.csv", pumpCurveTable(project)},
                                                    {"instruments.csv", instrumentTable(project)},
                                                    {"people.csv", peopleTable(project)},
                                                    {"rounds.csv", roundTable(project)},
                                                    {"readings.csv", readingTable(project)},
                                                    {"pump_readings.csv", pumpReadingTable(project)}};
    // All tables stand beside their places before the first takes its place, so that a full disk spoils none.
    base::Outcome outcome = base::Done{};
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
