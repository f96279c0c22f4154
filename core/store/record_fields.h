// Which column holds which field of a record, in one place: writing, reading and the SQL follow from it.
// Not for the tables' definitions (schema.cpp), which name the same columns.
#pragma once

#include <concepts>
#include <type_traits>

#include "core/project/records.h"

namespace ww::store {

template <class T, class Record>
concept Like = std::same_as<std::remove_const_t<T>, Record>;

/// The rows of a pump's or valve's table belong to it by id and position.
template <class Row>
struct OwnedRow {
    project::Id owner;
    int position = 0;
    Row row;
};

template <class Record>
constexpr const char* kTableOf = nullptr;
template <>
inline constexpr const char* kTableOf<project::Job> = "job";
template <>
inline constexpr const char* kTableOf<project::ValveModel> = "valves";
template <>
inline constexpr const char* kTableOf<OwnedRow<project::ValveTableRow>> = "valve_rows";
template <>
inline constexpr const char* kTableOf<project::Branch> = "branches";
template <>
inline constexpr const char* kTableOf<project::Pump> = "pumps";
template <>
inline constexpr const char* kTableOf<OwnedRow<project::PumpTableRow>> = "pump_rows";
template <>
inline constexpr const char* kTableOf<project::Instrument> = "instruments";
template <>
inline constexpr const char* kTableOf<project::Person> = "people";
template <>
inline constexpr const char* kTableOf<project::Round> = "rounds";
template <>
inline constexpr const char* kTableOf<project::Reading> = "readings";
template <>
inline constexpr const char* kTableOf<project::PumpReading> = "pump_readings";

// fields(io, record) calls io.field(column, member) for every column in the tables' order, the key first.

template <class Io, Like<project::Job> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("name", r.name);
    io.field("site", r.site);
    io.field("client", r.client);
    io.field("units", r.units);
    io.field("fluid", r.fluid);
    io.field("concentration", r.concentration);
    io.field("temperature", r.temperature);
    io.field("tolerance_low", r.toleranceLow);
    io.field("tolerance_high", r.toleranceHigh);
    io.field("matching_band", r.matchingBand);
    io.field("power_price", r.powerPrice);
    io.field("currency", r.currency);
    io.field("hours_per_year", r.hoursPerYear);
}

template <class Io, Like<project::ValveModel> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("model", r.model);
    io.field("size", r.size);
    io.field("scale", r.scale);
    io.field("coefficient_unit", r.coefficientUnit);
    io.field("minimum_dp", r.minimumDp);
    io.field("maximum_dp", r.maximumDp);
    io.field("accuracy", r.accuracy);
}

template <class Io, Like<OwnedRow<project::ValveTableRow>> R>
void fields(Io& io, R& r) {
    io.field("valve", r.owner);
    io.field("position", r.position);
    io.field("setting", r.row.setting);
    io.field("coefficient", r.row.coefficient);
}

template <class Io, Like<project::Instrument> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("tag", r.tag);
    io.field("kind", r.kind);
    io.field("serial", r.serial);
    io.field("range", r.range);
    io.field("accuracy", r.accuracy);
    io.field("accuracy_floor", r.accuracyFloor);
    io.field("calibrated", r.calibrated);
    io.field("due", r.due);
}

template <class Io, Like<project::Person> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("name", r.name);
}

template <class Io, Like<project::Branch> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("parent", r.parent);
    io.field("position", r.position);
    io.field("tag", r.tag);
    io.field("serves", r.serves);
    io.field("kind", r.kind);
    io.field("design_flow", r.designFlow);
    io.field("run_loss", r.runLoss);
    io.field("circuit_loss", r.circuitLoss);
    io.field("valve", r.valve);
    io.field("setting", r.setting);
    io.field("side", r.side);
    io.field("upstream_diameters", r.upstreamDiameters);
    io.field("downstream_diameters", r.downstreamDiameters);
    io.field("returns", r.returns);
}

template <class Io, Like<project::Pump> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("position", r.position);
    io.field("tag", r.tag);
    io.field("is_running", r.isRunning);
    io.field("speed", r.speed);
    io.field("impeller", r.impeller);
    io.field("impeller_minimum", r.impellerMinimum);
    io.field("motor_power", r.motorPower);
    io.field("motor_efficiency", r.motorEfficiency);
    io.field("volts", r.volts);
    io.field("amps", r.amps);
    io.field("service_factor", r.serviceFactor);
    io.field("throttle_tag", r.throttleTag);
}

template <class Io, Like<OwnedRow<project::PumpTableRow>> R>
void fields(Io& io, R& r) {
    io.field("pump", r.owner);
    io.field("position", r.position);
    io.field("impeller", r.row.impeller);
    io.field("flow", r.row.flow);
    io.field("head", r.row.head);
    io.field("efficiency", r.row.efficiency);
    io.field("power", r.row.power);
    io.field("npsh_required", r.row.npshRequired);
}

template <class Io, Like<project::Round> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("number", r.number);
    io.field("kind", r.kind);
    io.field("state", r.state);
    io.field("opened", r.opened);
    io.field("closed", r.closed);
}

template <class Io, Like<project::Reading> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("round", r.round);
    io.field("branch", r.branch);
    io.field("sequence", r.sequence);
    io.field("time", r.time);
    io.field("setting", r.setting);
    io.field("dp", r.dp);
    io.field("flow", r.flow);
    io.field("instrument", r.instrument);
    io.field("person", r.person);
    io.field("note", r.note);
    io.field("status", r.status);
    io.field("supersedes", r.supersedes);
    io.field("is_repeat", r.isRepeat);
    io.field("cannot_be_read", r.cannotBeRead);
    io.field("is_doubtful", r.isDoubtful);
    io.field("reason", r.reason);
}

template <class Io, Like<project::PumpReading> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("round", r.round);
    io.field("pump", r.pump);
    io.field("sequence", r.sequence);
    io.field("time", r.time);
    io.field("suction", r.suction);
    io.field("discharge", r.discharge);
    io.field("gauge_rise", r.gaugeRise);
    io.field("speed", r.speed);
    io.field("throttle", r.throttle);
    io.field("flow", r.flow);
    io.field("volts", r.volts);
    io.field("amps", r.amps);
    io.field("power", r.power);
    io.field("instrument", r.instrument);
    io.field("person", r.person);
    io.field("status", r.status);
    io.field("supersedes", r.supersedes);
}

/// Collects the columns that fields() names: one, or two for values with a unit and for moments.
class ColumnNames {
  public:
    template <class T>
    void field(const char* column, const T&) {
        m_names.emplace_back(column);
    }
    template <class Q>
    void field(const char* column, const quantity::Measured<Q>&) {
        m_names.emplace_back(column);
        m_names.push_back(std::string(column) + "_unit");
    }
    template <class Q>
    void field(const char* column, const std::optional<quantity::Measured<Q>>&) {
        m_names.emplace_back(column);
        m_names.push_back(std::string(column) + "_unit");
    }
    void field(const char* column, const std::optional<base::Instant>&) {
        m_names.emplace_back(column);
        m_names.push_back(std::string(column) + "_zone");
    }

    template <class Record>
    static std::vector<std::string> of() {
        ColumnNames names;
        const Record record{};
        fields(names, record);
        return names.m_names;
    }

  private:
    std::vector<std::string> m_names;
};

/// "a,b,c"
inline std::string joined(const std::vector<std::string>& names) {
    std::string out;
    for (const std::string& name : names) {
        out += (out.empty() ? "" : ",") + name;
    }
    return out;
}

}  // namespace ww::store
