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
template <>
inline constexpr const char* kTableOf<project::SetPoint> = "set_points";
template <>
inline constexpr const char* kTableOf<OwnedRow<project::LoadRow>> = "job_load_rows";
template <>
inline constexpr const char* kTableOf<OwnedRow<project::SampleRow>> = "round_sample";

template <>
inline constexpr const char* kTableOf<OwnedRow<project::EarlierDesign>> = "earlier_designs";

/// The column that names the owner of a row.
template <class Row>
constexpr const char* kOwnerColumnOf = nullptr;
template <>
inline constexpr const char* kOwnerColumnOf<project::ValveTableRow> = "valve";
template <>
inline constexpr const char* kOwnerColumnOf<project::PumpTableRow> = "pump";
template <>
inline constexpr const char* kOwnerColumnOf<project::LoadRow> = "job";
template <>
inline constexpr const char* kOwnerColumnOf<project::SampleRow> = "round";
template <>
inline constexpr const char* kOwnerColumnOf<project::EarlierDesign> = "branch";

/// Rows that belong to a record, in a table of their own. Only such records have an overload.
template <Like<project::ValveModel> R>
auto& rowsOf(R& r) {
    return r.rows;
}
template <Like<project::Pump> R>
auto& rowsOf(R& r) {
    return r.rows;
}
template <Like<project::Job> R>
auto& rowsOf(R& r) {
    return r.loadRows;
}
template <Like<project::Branch> R>
auto& rowsOf(R& r) {
    return r.earlierDesigns;
}
template <Like<project::Round> R>
auto& rowsOf(R& r) {
    return r.sample;
}
template <class R>
concept HasRows = requires(R& r) {
    rowsOf(r);
};
template <HasRows R>
using RowOf = typename std::remove_cvref_t<decltype(rowsOf(std::declval<R&>()))>::value_type;

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
    io.field("practice", r.practice);
    io.field("altitude", r.altitude);
    io.field("fill_pressure", r.fillPressure);
    io.field("reading_age_limit", r.readingAgeLimit);
    io.field("code_form", r.codeForm);
    io.field("code_edition", r.codeEdition);
    io.field("code_clause", r.codeClause);
    io.field("code_exception", r.codeException);
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
    io.field("accuracy_shut", r.accuracyShut);
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
    io.field("resolution", r.resolution);
    io.field("certificate", r.certificate);
    io.field("zero_start", r.zeroStart);
    io.field("zero_end", r.zeroEnd);
    io.field("overdue_reason", r.overdueReason);
}

template <class Io, Like<project::Person> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("name", r.name);
    io.field("role", r.role);
    io.field("certificate", r.certificate);
    io.field("firm", r.firm);
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
    io.field("disturbance", r.disturbance);
    io.field("elevation", r.elevation);
    io.field("policy", r.policy);
    io.field("policy_reason", r.policyReason);
    io.field("notes", r.notes);
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
    io.field("arrangement", r.arrangement);
    io.field("suction_diameter", r.suctionDiameter);
    io.field("discharge_diameter", r.dischargeDiameter);
    io.field("suction_gauge_height", r.suctionGaugeHeight);
    io.field("discharge_gauge_height", r.dischargeGaugeHeight);
    io.field("power_factor", r.powerFactor);
    io.field("no_load_amps", r.noLoadAmps);
    io.field("plate_speed", r.plateSpeed);
    io.field("synchronous_speed", r.synchronousSpeed);
    io.field("minimum_speed", r.minimumSpeed);
    io.field("has_drive", r.hasDrive);
    io.field("is_positive_displacement", r.isPositiveDisplacement);
    io.field("guards_source", r.guardsSource);
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
    io.field("sent", r.sent);
    io.field("decided", r.decided);
    io.field("sent_by", r.sentBy);
    io.field("decided_by", r.decidedBy);
    io.field("reason", r.reason);
    io.field("readiness", r.readiness);
    io.field("sample_seed", r.sampleSeed);
    io.field("tolerance_low", r.toleranceLow);
    io.field("tolerance_high", r.toleranceHigh);
    io.field("matching_band", r.matchingBand);
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
    io.field("purpose", r.purpose);
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
    io.field("point", r.point);
    io.field("volts_second", r.voltsSecond);
    io.field("volts_third", r.voltsThird);
    io.field("amps_second", r.ampsSecond);
    io.field("amps_third", r.ampsThird);
    io.field("power_factor", r.powerFactor);
    io.field("is_doubtful", r.isDoubtful);
    io.field("note", r.note);
    io.field("reason", r.reason);
}

template <class Io, Like<project::SetPoint> R>
void fields(Io& io, R& r) {
    io.field("id", r.id);
    io.field("pump", r.pump);
    io.field("sensor", r.sensor);
    io.field("location", r.location);
    io.field("method", r.method);
    io.field("zero", r.zero);
    io.field("dp", r.dp);
    io.field("flow", r.flow);
    io.field("speed", r.speed);
    io.field("margin", r.margin);
    io.field("low_limit", r.lowLimit);
    io.field("high_limit", r.highLimit);
    io.field("reset", r.reset);
    io.field("set_by", r.setBy);
    io.field("time", r.time);
    io.field("note", r.note);
}
template <class Io, Like<OwnedRow<project::LoadRow>> R>
void fields(Io& io, R& r) {
    io.field("job", r.owner);
    io.field("position", r.position);
    io.field("hours", r.row.hours);
    io.field("flow_fraction", r.row.flowFraction);
}
template <class Io, Like<OwnedRow<project::SampleRow>> R>
void fields(Io& io, R& r) {
    io.field("round", r.owner);
    io.field("position", r.position);
    io.field("branch", r.row.branch);
}
template <class Io, Like<OwnedRow<project::EarlierDesign>> R>
void fields(Io& io, R& r) {
    io.field("branch", r.owner);
    io.field("position", r.position);
    io.field("round", r.row.round);
    io.field("is_in_loop", r.row.isInLoop);
    io.field("design_flow", r.row.designFlow);
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
