// The whole job as one JSON document: what was typed beside what it means in SI.
#include <nlohmann/json.hpp>

#include "core/base/digest.h"
#include "core/exchange/record_columns.h"
#include "core/project/names.h"

namespace ww::exchange {

namespace {

using Json = nlohmann::ordered_json;
using project::Project;

template <class Q>
Json entered(const quantity::Measured<Q>& value) {
    return {{"digits", value.digits.text()},
            {"unit", std::string(quantity::symbol(value.unit))},
            {"si", value.value.si()}};
}

template <class Q>
Json entered(const std::optional<quantity::Measured<Q>>& value) {
    return value ? entered(*value) : Json(nullptr);
}

Json number(const std::optional<base::Decimal>& value) {
    return value ? Json(value->text()) : Json(nullptr);
}

Json moment(const std::optional<base::Instant>& value) {
    return value ? Json(value->text()) : Json(nullptr);
}

template <class Table, class Field>
Json nameOf(const Table& table, const std::optional<base::Id>& id, Field field) {
    const auto* record = id ? table.find(*id) : nullptr;
    return record != nullptr ? Json(record->*field) : Json(nullptr);
}

/// Adds the columns of a record to its object.
class JsonCells {
  public:
    JsonCells(Json& object, const Project& project) : m_object(object), m_project(project) {}

    void cell(const char* key, const std::string& text) { m_object[key] = text; }
    void cell(const char* key, bool value) { m_object[key] = value; }
    void cell(const char* key, int number) { m_object[key] = number; }
    void cell(const char* key, const base::Decimal& digits) { m_object[key] = digits.text(); }
    void cell(const char* key, const std::optional<base::Decimal>& digits) { m_object[key] = number(digits); }
    void cell(const char* key, const std::optional<base::Instant>& time) { m_object[key] = moment(time); }
    template <class Enumeration>
    requires std::is_enum_v<Enumeration>
    void cell(const char* key, Enumeration word) { m_object[key] = std::string(project::name(word)); }
    template <class Q>
    void cell(const char* key, const std::optional<quantity::Measured<Q>>& value, Sign) {
        m_object[key] = entered(value);
    }
    void refers(const char* key, RecordKind kind, const std::optional<base::Id>& id) {
        m_object[key] = id ? Json(referenceText(m_project, kind, *id)) : Json(nullptr);
    }
    void record(const char* key, RecordKind kind, const base::Id& id) {
        m_object[key] = referenceText(m_project, kind, id);
    }
    void file(const char* key, const base::SharedBytes& bytes, const std::string&) {
        m_object[key] = {{"bytes", bytes.bytes().size()}, {"sha256", base::sha256(bytes.bytes()).text()}};
    }

  private:
    Json& m_object;
    const Project& m_project;
};

/// The object with the columns that its table gained behind those given.
template <class Record>
Json withGained(Json object, const Project& project, const Record& record) {
    JsonCells io(object, project);
    columns(io, record);
    return object;
}

/// Every table of review under the name of its file.
void addReviewTables(Json& document, const Project& project) {
    eachReviewTable([&](const char* file, auto records) {
        Json list = Json::array();
        for (const auto& record : (project.*records)()) {
            list.push_back(withGained(Json::object(), project, record));
        }
        document[std::filesystem::path(file).stem().string()] = std::move(list);
    });
}

Json jobObject(const Project& project) {
    const project::Job& job = project.job();
    Json load = Json::array();
    for (const project::LoadRow& row : job.loadRows) {
        load.push_back({{"hours", row.hours.text()}, {"flow", entered(row.flowFraction)}});
    }
    Json out = {{"name", job.name},
                {"site", job.site},
                {"client", job.client},
                {"units", std::string(project::name(job.units))},
                {"fluid", std::string(project::name(job.fluid))},
                {"concentration", entered(job.concentration)},
                {"temperature", entered(job.temperature)},
                {"tolerance_low", entered(job.toleranceLow)},
                {"tolerance_high", entered(job.toleranceHigh)},
                {"matching_band", entered(job.matchingBand)},
                {"power_price", number(job.powerPrice)},
                {"currency", job.currency},
                {"hours", number(job.hoursPerYear)},
                {"load", std::move(load)}};
    return withGained(std::move(out), project, job);
}

Json valveArray(const Project& project) {
    Json out = Json::array();
    for (const project::ValveModel& valve : project.valves()) {
        Json points = Json::array();
        for (const project::ValveTableRow& row : valve.rows) {
            points.push_back({{"setting", row.setting.text()}, {"coefficient", row.coefficient.text()}});
        }
        out.push_back({{"model", valve.model},
                       {"size", valve.size},
                       {"scale", std::string(project::name(valve.scale))},
                       {"coefficient_unit", std::string(quantity::symbol(valve.coefficientUnit))},
                       {"points", std::move(points)},
                       {"minimum_dp", entered(valve.minimumDp)},
                       {"maximum_dp", entered(valve.maximumDp)},
                       {"accuracy", entered(valve.accuracy)},
                       {"accuracy_shut", entered(valve.accuracyShut)}});
    }
    return out;
}

Json branchArray(const Project& project) {
    Json out = Json::array();
    for (const std::size_t index : project.tree().walkingOrder()) {
        const project::Branch& branch = project.branches()[index];
        Json earlier = Json::array();
        for (const project::EarlierDesign& design : branch.earlierDesigns) {
            earlier.push_back({{"round", referenceText(project, RecordKind::Round, design.round)},
                               {"in_loop", design.isInLoop},
                               {"design_flow", entered(design.designFlow)}});
        }
        out.push_back(
            withGained({{"tag", branch.tag},
                        {"parent", nameOf(project.branches(), branch.parent, &project::Branch::tag)},
                        {"serves", branch.serves},
                        {"kind", std::string(project::name(branch.kind))},
                        {"design_flow", entered(branch.designFlow)},
                        {"run_loss", entered(branch.runLoss)},
                        {"circuit_loss", entered(branch.circuitLoss)},
                        {"valve_model", nameOf(project.valves(), branch.valve, &project::ValveModel::model)},
                        {"valve_size", nameOf(project.valves(), branch.valve, &project::ValveModel::size)},
                        {"setting", number(branch.setting)},
                        {"side", std::string(project::name(branch.side))},
                        {"upstream_diameters", number(branch.upstreamDiameters)},
                        {"downstream_diameters", number(branch.downstreamDiameters)},
                        {"return", std::string(project::name(branch.returns))},
                        {"earlier_designs", std::move(earlier)}},
                       project, branch));
    }
    return out;
}

Json pumpArray(const Project& project) {
    Json out = Json::array();
    for (const project::Pump& pump : project.pumps()) {
        Json curve = Json::array();
        for (const project::PumpTableRow& row : pump.rows) {
            curve.push_back({{"impeller", entered(row.impeller)},
                             {"flow", entered(row.flow)},
                             {"head", entered(row.head)},
                             {"efficiency", entered(row.efficiency)},
                             {"power", entered(row.power)},
                             {"npshr", entered(row.npshRequired)}});
        }
        out.push_back(withGained({{"tag", pump.tag},
                                  {"running", pump.isRunning},
                                  {"speed", entered(pump.speed)},
                                  {"impeller", entered(pump.impeller)},
                                  {"impeller_min", entered(pump.impellerMinimum)},
                                  {"motor_power", entered(pump.motorPower)},
                                  {"motor_efficiency", entered(pump.motorEfficiency)},
                                  {"volts", entered(pump.volts)},
                                  {"amps", entered(pump.amps)},
                                  {"service_factor", number(pump.serviceFactor)},
                                  {"throttle_tag", pump.throttleTag},
                                  {"curve", std::move(curve)}},
                                 project, pump));
    }
    return out;
}

Json instrumentArray(const Project& project) {
    Json out = Json::array();
    for (const project::Instrument& instrument : project.instruments()) {
        out.push_back(withGained({{"tag", instrument.tag},
                                  {"kind", instrument.kind},
                                  {"serial", instrument.serial},
                                  {"range", entered(instrument.range)},
                                  {"accuracy", entered(instrument.accuracy)},
                                  {"accuracy_floor", entered(instrument.accuracyFloor)},
                                  {"calibrated", moment(instrument.calibrated)},
                                  {"due", moment(instrument.due)}},
                                 project, instrument));
    }
    return out;
}

/// Place in the list of the round, from 1, of the reading with this id; null where there is none.
template <class Readings>
Json placeOf(const Readings& readings, const std::vector<std::size_t>& list,
             const std::optional<base::Id>& id) {
    for (std::size_t i = 0; id && i < list.size(); ++i) {
        if (readings[list[i]].id == *id) {
            return i + 1;
        }
    }
    return nullptr;
}

Json readingArray(const Project& project, const base::Id& round) {
    Json out = Json::array();
    for (const std::size_t index : project.readingsOf(round)) {
        const project::Reading& reading = project.readings()[index];
        out.push_back(withGained(
            {{"tag", project.branches().at(reading.branch).tag},
             {"time", moment(reading.time)},
             {"setting", number(reading.setting)},
             {"dp", entered(reading.dp)},
             {"flow", entered(reading.flow)},
             {"instrument", nameOf(project.instruments(), reading.instrument, &project::Instrument::tag)},
             {"person", nameOf(project.people(), reading.person, &project::Person::name)},
             {"note", reading.note},
             {"status", std::string(project::name(reading.status))},
             {"repeat", reading.isRepeat},
             {"cannot_read", reading.cannotBeRead},
             {"doubtful", reading.isDoubtful},
             {"reason", reading.reason},
             {"corrects", placeOf(project.readings(), project.readingsOf(round), reading.supersedes)}},
            project, reading));
    }
    return out;
}

Json pumpReadingArray(const Project& project, const base::Id& round) {
    Json out = Json::array();
    for (const std::size_t index : project.pumpReadingsOf(round)) {
        const project::PumpReading& reading = project.pumpReadings()[index];
        out.push_back(withGained(
            {{"pump", project.pumps().at(reading.pump).tag},
             {"time", moment(reading.time)},
             {"suction", entered(reading.suction)},
             {"discharge", entered(reading.discharge)},
             {"gauge_rise", entered(reading.gaugeRise)},
             {"speed", entered(reading.speed)},
             {"throttle", number(reading.throttle)},
             {"flow", entered(reading.flow)},
             {"volts", entered(reading.volts)},
             {"amps", entered(reading.amps)},
             {"power", entered(reading.power)},
             {"instrument", nameOf(project.instruments(), reading.instrument, &project::Instrument::tag)},
             {"person", nameOf(project.people(), reading.person, &project::Person::name)},
             {"status", std::string(project::name(reading.status))},
             {"corrects",
              placeOf(project.pumpReadings(), project.pumpReadingsOf(round), reading.supersedes)}},
            project, reading));
    }
    return out;
}

}  // namespace

std::string jobJson(const Project& project) {
    Json people = Json::array();
    Json persons = Json::array();
    for (const project::Person& person : project.people()) {
        people.push_back(person.name);
        persons.push_back(withGained({{"name", person.name}}, project, person));
    }
    Json rounds = Json::array();
    for (const std::size_t index : project.roundsByNumber()) {
        const project::Round& round = project.rounds()[index];
        Json sample = Json::array();
        for (const project::SampleRow& row : round.sample) {
            sample.push_back(referenceText(project, RecordKind::Branch, row.branch));
        }
        rounds.push_back(withGained({{"round", round.number},
                                     {"kind", std::string(project::name(round.kind))},
                                     {"state", std::string(project::name(round.state))},
                                     {"opened", moment(round.opened)},
                                     {"closed", moment(round.closed)},
                                     {"readings", readingArray(project, round.id)},
                                     {"pump_readings", pumpReadingArray(project, round.id)},
                                     {"sample", std::move(sample)}},
                                    project, round));
    }
    Json document = {{"job", jobObject(project)},
                     {"valves", valveArray(project)},
                     {"branches", branchArray(project)},
                     {"pumps", pumpArray(project)},
                     {"instruments", instrumentArray(project)},
                     {"people", std::move(people)},
                     {"persons", std::move(persons)},
                     {"rounds", std::move(rounds)}};
    addReviewTables(document, project);
    // Names come from people and files; anything that is not UTF-8 is replaced rather than refused.
    return document.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace ww::exchange
