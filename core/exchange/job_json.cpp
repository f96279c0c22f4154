// The whole job as one JSON document: what was typed beside what it means in SI.
#include <nlohmann/json.hpp>

#include "core/exchange/job_folder.h"
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

Json jobObject(const project::Job& job) {
    return {{"name", job.name},
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
            {"hours", number(job.hoursPerYear)}};
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
                       {"accuracy", entered(valve.accuracy)}});
    }
    return out;
}

Json branchArray(const Project& project) {
    Json out = Json::array();
    for (const std::size_t index : project.tree().walkingOrder()) {
        const project::Branch& branch = project.branches()[index];
        out.push_back({{"tag", branch.tag},
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
                       {"return", std::string(project::name(branch.returns))}});
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
        out.push_back({{"tag", pump.tag},
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
                       {"curve", std::move(curve)}});
    }
    return out;
}

Json instrumentArray(const Project& project) {
    Json out = Json::array();
    for (const project::Instrument& instrument : project.instruments()) {
        out.push_back({{"tag", instrument.tag},
                       {"kind", instrument.kind},
                       {"serial", instrument.serial},
                       {"range", entered(instrument.range)},
                       {"accuracy", entered(instrument.accuracy)},
                       {"accuracy_floor", entered(instrument.accuracyFloor)},
                       {"calibrated", moment(instrument.calibrated)},
                       {"due", moment(instrument.due)}});
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
        out.push_back(
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
             {"corrects", placeOf(project.readings(), project.readingsOf(round), reading.supersedes)}});
    }
    return out;
}

Json pumpReadingArray(const Project& project, const base::Id& round) {
    Json out = Json::array();
    for (const std::size_t index : project.pumpReadingsOf(round)) {
        const project::PumpReading& reading = project.pumpReadings()[index];
        out.push_back(
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
              placeOf(project.pumpReadings(), project.pumpReadingsOf(round), reading.supersedes)}});
    }
    return out;
}

}  // namespace

std::string jobJson(const Project& project) {
    Json people = Json::array();
    for (const project::Person& person : project.people()) {
        people.push_back(person.name);
    }
    Json rounds = Json::array();
    for (const std::size_t index : project.roundsByNumber()) {
        const project::Round& round = project.rounds()[index];
        rounds.push_back({{"round", round.number},
                          {"kind", std::string(project::name(round.kind))},
                          {"state", std::string(project::name(round.state))},
                          {"opened", moment(round.opened)},
                          {"closed", moment(round.closed)},
                          {"readings", readingArray(project, round.id)},
                          {"pump_readings", pumpReadingArray(project, round.id)}});
    }
    const Json document = {{"job", jobObject(project.job())},
                           {"valves", valveArray(project)},
                           {"branches", branchArray(project)},
                           {"pumps", pumpArray(project)},
                           {"instruments", instrumentArray(project)},
                           {"people", std::move(people)},
                           {"rounds", std::move(rounds)}};
    // Names come from people and files; anything that is not UTF-8 is replaced rather than refused.
    return document.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace ww::exchange
