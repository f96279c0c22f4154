#include "core/exchange/table_columns.h"

#include "core/exchange/record_columns.h"

namespace ww::exchange {

namespace {

std::vector<ColumnSpec> valvesColumns() {
    return {{"model", {}, true},
            {"size", {}, true},
            {"scale", {}, true},
            {"setting", {}, true},
            {"Cv", {}, false},
            {"Kv", {}, false},
            {"minimum_dp", Dimension::Pressure, false},
            {"maximum_dp", Dimension::Pressure, false},
            {"accuracy", Dimension::Fraction, false},
            {"accuracy_shut", Dimension::Fraction, false}};
}

std::vector<ColumnSpec> branchesColumns() {
    return columnsOf<project::Branch>({{"tag", {}, true},
                                       {"parent", {}, true},
                                       {"serves", {}, false},
                                       {"kind", {}, false},
                                       {"design_flow", Dimension::Flow, true},
                                       {"run_loss", Dimension::Pressure, false},
                                       {"circuit_loss", Dimension::Pressure, false},
                                       {"valve_model", {}, false},
                                       {"valve_size", {}, false},
                                       {"setting", {}, false},
                                       {"side", {}, false},
                                       {"upstream_diameters", {}, false},
                                       {"downstream_diameters", {}, false},
                                       {"return", {}, false}});
}

std::vector<ColumnSpec> pumpsColumns() {
    return columnsOf<project::Pump>({{"tag", {}, true},
                                     {"running", {}, false},
                                     {"speed", Dimension::RotationalSpeed, false},
                                     {"impeller", Dimension::Length, false},
                                     {"impeller_min", Dimension::Length, false},
                                     {"motor_power", Dimension::Power, false},
                                     {"motor_efficiency", Dimension::Fraction, false},
                                     {"volts", Dimension::Voltage, false},
                                     {"amps", Dimension::Current, false},
                                     {"service_factor", {}, false},
                                     {"throttle_tag", {}, false}});
}

std::vector<ColumnSpec> pumpCurveColumns() {
    return {{"pump", {}, true},
            {"flow", Dimension::Flow, true},
            {"head", Dimension::Pressure, true},
            {"efficiency", Dimension::Fraction, false},
            {"power", Dimension::Power, false},
            {"npshr", Dimension::Pressure, false},
            {"impeller", Dimension::Length, false}};
}

std::vector<ColumnSpec> instrumentsColumns() {
    return columnsOf<project::Instrument>({{"tag", {}, true},
                                           {"kind", {}, false},
                                           {"serial", {}, false},
                                           {"range", Dimension::Pressure, false},
                                           {"accuracy", Dimension::Fraction, false},
                                           {"accuracy_floor", Dimension::Pressure, false},
                                           {"calibrated", {}, false},
                                           {"due", {}, false}});
}

std::vector<ColumnSpec> readingsColumns() {
    return columnsOf<project::Reading>({{"round", {}, true},
                                        {"kind", {}, false},
                                        {"time", {}, false},
                                        {"tag", {}, true},
                                        {"setting", {}, false},
                                        {"dp", Dimension::Pressure, false},
                                        {"flow", Dimension::Flow, false},
                                        {"instrument", {}, false},
                                        {"person", {}, false},
                                        {"note", {}, false},
                                        {"status", {}, false},
                                        {"repeat", {}, false},
                                        {"cannot_read", {}, false},
                                        {"doubtful", {}, false},
                                        {"reason", {}, false},
                                        {"corrects", {}, false},
                                        {"serves", {}, false},
                                        {"valve", {}, false},
                                        {"setting_now", {}, false},
                                        {"last_dp", Dimension::Pressure, false}});
}

std::vector<ColumnSpec> pumpReadingsColumns() {
    return columnsOf<project::PumpReading>({{"round", {}, true},
                                            {"time", {}, false},
                                            {"pump", {}, true},
                                            {"suction", Dimension::Pressure, false},
                                            {"discharge", Dimension::Pressure, false},
                                            {"gauge_rise", Dimension::Pressure, false},
                                            {"speed", Dimension::RotationalSpeed, false},
                                            {"throttle", {}, false},
                                            {"flow", Dimension::Flow, false},
                                            {"volts", Dimension::Voltage, false},
                                            {"amps", Dimension::Current, false},
                                            {"power", Dimension::Power, false},
                                            {"instrument", {}, false},
                                            {"person", {}, false},
                                            {"status", {}, false},
                                            {"corrects", {}, false}});
}

}  // namespace

std::vector<ColumnSpec> columnsOfTable(std::string_view file) {
    if (file == "valves.csv") {
        return valvesColumns();
    }
    if (file == "branches.csv") {
        return branchesColumns();
    }
    if (file == "pumps.csv") {
        return pumpsColumns();
    }
    if (file == "pump_curve.csv") {
        return pumpCurveColumns();
    }
    if (file == "instruments.csv") {
        return instrumentsColumns();
    }
    if (file == "readings.csv") {
        return readingsColumns();
    }
    if (file == "pump_readings.csv") {
        return pumpReadingsColumns();
    }
    return {};
}

std::span<const std::string_view> filledInColumns() {
    static constexpr std::string_view kFilledIn[] = {"setting", "dp",          "flow",
                                                     "note",    "cannot_read", "doubtful"};
    return kFilledIn;
}

}  // namespace ww::exchange
