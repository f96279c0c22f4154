#include "ui/import/column_words.h"

#include <QCoreApplication>
#include <map>
#include <string>

namespace ww::ui {
namespace {

/// The texts of this file.
struct ColumnText {
    Q_DECLARE_TR_FUNCTIONS(ImportColumn)
};

std::map<std::string, QString, std::less<>> wordsOfColumns() {
    return {
        {"accuracy", ColumnText::tr("Accuracy")},
        {"accuracy_floor", ColumnText::tr("Accuracy, at least")},
        {"accuracy_shut", ColumnText::tr("Accuracy, more shut")},
        {"amps", ColumnText::tr("Current, A")},
        {"amps_second", ColumnText::tr("Current, second phase")},
        {"amps_third", ColumnText::tr("Current, third phase")},
        {"arrangement", ColumnText::tr("Several pumps: how")},
        {"calibrated", ColumnText::tr("Calibrated")},
        {"cannot_read", ColumnText::tr("Cannot be read")},
        {"certificate", ColumnText::tr("Certificate")},
        {"circuit_loss", ColumnText::tr("Loss of the circuit")},
        {"corrects", ColumnText::tr("Corrects")},
        {"design_flow", ColumnText::tr("Design flow")},
        {"discharge", ColumnText::tr("Discharge")},
        {"discharge_diameter", ColumnText::tr("Discharge bore")},
        {"discharge_gauge_height", ColumnText::tr("Height of the discharge gauge")},
        {"disturbance", ColumnText::tr("Before the valve")},
        {"doubtful", ColumnText::tr("Doubtful")},
        {"downstream_diameters", ColumnText::tr("Straight pipe behind, diameters")},
        {"dp", ColumnText::tr("DP")},
        {"drive", ColumnText::tr("Has a drive")},
        {"due", ColumnText::tr("Due")},
        {"efficiency", ColumnText::tr("Efficiency")},
        {"elevation", ColumnText::tr("Height")},
        {"flow", ColumnText::tr("Flow")},
        {"gauge_rise", ColumnText::tr("Rise on one gauge")},
        {"guards_source", ColumnText::tr("Feeds the chiller or boiler alone")},
        {"head", ColumnText::tr("Head")},
        {"impeller", ColumnText::tr("Impeller")},
        {"impeller_min", ColumnText::tr("Smallest impeller")},
        {"instrument", ColumnText::tr("Instrument")},
        {"kind", ColumnText::tr("Kind")},
        {"last_dp", ColumnText::tr("Last DP")},
        {"maximum_dp", ColumnText::tr("Most DP")},
        {"minimum_dp", ColumnText::tr("Least DP")},
        {"minimum_speed", ColumnText::tr("Lowest speed")},
        {"model", ColumnText::tr("Model")},
        {"motor_efficiency", ColumnText::tr("Efficiency of the motor")},
        {"motor_power", ColumnText::tr("Power of the motor")},
        {"no_load_amps", ColumnText::tr("Current without load")},
        {"note", ColumnText::tr("Note")},
        {"notes", ColumnText::tr("Notes")},
        {"npshr", ColumnText::tr("NPSH required")},
        {"overdue_reason", ColumnText::tr("Reason where overdue")},
        {"parent", ColumnText::tr("Fed by")},
        {"person", ColumnText::tr("Person")},
        {"plate_speed", ColumnText::tr("Speed on the plate")},
        {"point", ColumnText::tr("Point of the test")},
        {"policy", ColumnText::tr("Dealt with as")},
        {"policy_reason", ColumnText::tr("Why so")},
        {"positive_displacement", ColumnText::tr("Positive displacement")},
        {"power", ColumnText::tr("Power")},
        {"power_factor", ColumnText::tr("Power factor")},
        {"pump", ColumnText::tr("Pump")},
        {"purpose", ColumnText::tr("Purpose")},
        {"range", ColumnText::tr("Range")},
        {"reason", ColumnText::tr("Reason")},
        {"repeat", ColumnText::tr("Repeated")},
        {"resolution", ColumnText::tr("Resolution")},
        {"return", ColumnText::tr("Return")},
        {"round", ColumnText::tr("Round")},
        {"run_loss", ColumnText::tr("Loss of the run")},
        {"running", ColumnText::tr("Running")},
        {"scale", ColumnText::tr("Scale")},
        {"serial", ColumnText::tr("Serial number")},
        {"serves", ColumnText::tr("Serves")},
        {"service_factor", ColumnText::tr("Service factor")},
        {"setting", ColumnText::tr("Setting")},
        {"setting_now", ColumnText::tr("Setting now")},
        {"side", ColumnText::tr("Side")},
        {"size", ColumnText::tr("Size")},
        {"speed", ColumnText::tr("Speed")},
        {"status", ColumnText::tr("Status")},
        {"suction", ColumnText::tr("Suction")},
        {"suction_diameter", ColumnText::tr("Suction bore")},
        {"suction_gauge_height", ColumnText::tr("Height of the suction gauge")},
        {"synchronous_speed", ColumnText::tr("Synchronous speed")},
        {"tag", ColumnText::tr("Tag")},
        {"throttle", ColumnText::tr("Discharge valve open")},
        {"throttle_tag", ColumnText::tr("Tag of the discharge valve")},
        {"time", ColumnText::tr("Time")},
        {"upstream_diameters", ColumnText::tr("Straight pipe before, diameters")},
        {"valve", ColumnText::tr("Valve")},
        {"valve_model", ColumnText::tr("Model of the valve")},
        {"valve_size", ColumnText::tr("Size of the valve")},
        {"volts", ColumnText::tr("Voltage, V")},
        {"volts_second", ColumnText::tr("Voltage, second phase")},
        {"volts_third", ColumnText::tr("Voltage, third phase")},
        {"zero_end", ColumnText::tr("Zero at the end")},
        {"zero_start", ColumnText::tr("Zero at the start")},
    };
}

}  // namespace

QString columnWords(std::string_view name) {
    // In the language of the moment.
    const auto words = wordsOfColumns();
    const auto found = words.find(name);
    return found != words.end() ? found->second
                                : QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()))
                                      .replace(QChar('_'), QChar(' '));
}

}  // namespace ww::ui
