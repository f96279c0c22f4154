// The tables of what stands in the plant room and with what it is read: valves, branches, pumps, instruments.
#include "core/exchange/write_tables.h"

namespace ww::exchange {

namespace {

using project::Project;

/// Each valve keeps the coefficient that it was entered with; the other column stays empty. One without a
/// table has a row for its range of dp.
CsvTable valveTable(const Project& project) {
    CsvTable table(std::vector<std::string>{"model", "size", "scale", "setting", "Cv", "Kv", "minimum_dp",
                                            "maximum_dp", "accuracy", "accuracy_shut"});
    table.setUsualUnit("minimum_dp", Unit::Kilopascal);
    table.setUsualUnit("maximum_dp", Unit::Kilopascal);
    table.setUsualUnit("accuracy", Unit::Percent);
    table.setUsualUnit("accuracy_shut", Unit::Percent);
    for (const project::ValveModel& valve : project.valves()) {
        using Digits = std::optional<base::Decimal>;
        const auto addRow = [&](const Digits& setting, const Digits& coefficient) {
            const bool isCv = valve.coefficientUnit == Unit::Cv;
            table.begin();
            table.add(valve.model);
            table.add(valve.size);
            table.add(std::string(project::name(valve.scale)));
            table.add(setting);
            table.add(isCv ? coefficient : Digits());
            table.add(isCv ? Digits() : coefficient);
            table.add(valve.minimumDp);
            table.add(valve.maximumDp);
            table.add(valve.accuracy);
            table.add(valve.accuracyShut);
        };
        for (const project::ValveTableRow& row : valve.rows) {
            addRow(row.setting, row.coefficient);
        }
        if (valve.rows.empty()) {
            addRow({}, {});
        }
    }
    return table;
}

CsvTable branchTable(const Project& project) {
    CsvTable table(std::vector<std::string>{"tag", "parent", "serves", "kind", "design_flow", "run_loss",
                                            "circuit_loss", "valve_model", "valve_size", "setting", "side",
                                            "upstream_diameters", "downstream_diameters", "return"});
    table.addColumns(columnsOf<project::Branch>());
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
        table.add(branch.setting);
        table.add(std::string(project::name(branch.side)));
        table.add(branch.upstreamDiameters);
        table.add(branch.downstreamDiameters);
        table.add(std::string(project::name(branch.returns)));
        addGained(table, project, branch);
    }
    return table;
}

CsvTable pumpTable(const Project& project) {
    CsvTable table(std::vector<std::string>{"tag", "running", "speed", "impeller", "impeller_min",
                                            "motor_power", "motor_efficiency", "volts", "amps",
                                            "service_factor", "throttle_tag"});
    table.addColumns(columnsOf<project::Pump>());
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
        table.add(pump.serviceFactor);
        table.add(pump.throttleTag);
        addGained(table, project, pump);
    }
    return table;
}

CsvTable pumpCurveTable(const Project& project) {
    CsvTable table(
        std::vector<std::string>{"pump", "flow", "head", "efficiency", "power", "npshr", "impeller"});
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

CsvTable instrumentTable(const Project& project) {
    CsvTable table(std::vector<std::string>{"tag", "kind", "serial", "range", "accuracy", "accuracy_floor",
                                            "calibrated", "due"});
    table.addColumns(columnsOf<project::Instrument>());
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
        table.addDay(instrument.calibrated);
        table.addDay(instrument.due);
        addGained(table, project, instrument);
    }
    return table;
}

}  // namespace

std::vector<NamedTable> systemTables(const Project& project) {
    std::vector<NamedTable> tables;
    tables.emplace_back("valves.csv", valveTable(project));
    tables.emplace_back("branches.csv", branchTable(project));
    tables.emplace_back("pumps.csv", pumpTable(project));
    tables.emplace_back("pump_curve.csv", pumpCurveTable(project));
    tables.emplace_back("instruments.csv", instrumentTable(project));
    return tables;
}

}  // namespace ww::exchange
