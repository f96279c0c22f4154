// pumps.csv, pump_curve.csv and instruments.csv.
#include "core/exchange/read_cells.h"
#include "core/exchange/table_columns.h"
#include "core/project/equipment_curves.h"
#include "core/project/units.h"

namespace ww::exchange {

namespace {

inline constexpr base::MessageForm kPumpTagRepeated{
    "pump_tag_repeated", "the pump \"{1}\" stands twice; give every pump its own tag"};
inline constexpr base::MessageForm kPumpUnknown{
    "pump_unknown", "the pump \"{1}\" is not in pumps.csv; did you mean \"{2}\"?"};
inline constexpr base::MessageForm kPumpWithoutCurve{
    "pump_without_curve", "the pump \"{1}\" has no rows in pump_curve.csv; give at least two points"};
inline constexpr base::MessageForm kPumpHasCurve{
    "pump_has_curve", "the pump \"{1}\" has its curve in the job already; leave its rows out"};
inline constexpr base::MessageForm kImpellerOrder{
    "impeller_below_minimum", "the impeller {1} is smaller than its minimum {2}; correct one of them"};
inline constexpr base::MessageForm kInstrumentRepeated{
    "instrument_repeated", "the instrument \"{1}\" stands twice; give every instrument its own tag"};
inline constexpr base::MessageForm kCalibrationOrder{
    "calibration_order", "due {1} is before calibrated {2}; correct one of the dates"};

Measured<quantity::Head> headOf(const TableReader::Entered& entered, quantity::Density density) {
    return quantity::measuredHead(entered.digits, entered.unit, density);
}

/// Every impeller of a pump has a curve of its own, and each must be usable.
void checkCurves(const project::Pump& pump, const std::vector<int>& rows, TableReader& table) {
    std::map<double, std::pair<int, std::vector<curve::PumpPoint>>> byImpeller;
    for (std::size_t i = 0; i < pump.rows.size(); ++i) {
        const project::PumpTableRow& row = pump.rows[i];
        auto& [first, points] = byImpeller[row.impeller ? row.impeller->value.si() : 0.0];
        first = points.empty() ? rows[i] : first;
        points.push_back(project::pumpPoint(row));
    }
    for (const auto& [impeller, entry] : byImpeller) {
        const auto made = curve::PumpCurve::make(entry.second, project::unitsOfTable(pump));
        if (!made) {
            table.faultAt(entry.first, "head", made.fault());
        }
    }
}

}  // namespace

void readPumps(ImportContext& context) {
    TableReader table(context.source, "pumps.csv", columnsOfTable("pumps.csv"), !context.isAdding,
                      context.faults);
    const std::size_t known = context.pumps.size();
    int nextPosition = 0;
    for (const project::Pump& pump : context.pumps) {
        nextPosition = std::max(nextPosition, pump.position + 1);
    }
    while (table.next()) {
        project::Pump pump;
        pump.id = context.ids.next();
        pump.position = nextPosition++;
        pump.tag = table.requiredText("tag");
        pump.isRunning = table.yesNo("running", true);
        pump.speed = table.measured<quantity::RotationalSpeed>("speed", Sign::Positive);
        pump.impeller = table.measured<quantity::Length>("impeller", Sign::Positive);
        pump.impellerMinimum = table.measured<quantity::Length>("impeller_min", Sign::Positive);
        pump.motorPower = table.measured<quantity::Power>("motor_power", Sign::Positive);
        pump.motorEfficiency = table.efficiency("motor_efficiency");
        pump.volts = table.measured<quantity::Voltage>("volts", Sign::Positive);
        pump.amps = table.measured<quantity::Current>("amps", Sign::Positive);
        pump.serviceFactor = table.decimal("service_factor", Sign::Positive);
        pump.throttleTag = table.text("throttle_tag");
        ReadCells io(table, context);
        columns(io, pump);
        if (pump.impeller && pump.impellerMinimum && pump.impeller->value < pump.impellerMinimum->value) {
            table.fault("impeller", kImpellerOrder, {pump.impeller->text(), pump.impellerMinimum->text()});
        }
        const auto [found, isNew] = context.pumpByTag.try_emplace(folded(pump.tag), context.pumps.size());
        if (!isNew && !pump.tag.empty()) {
            table.fault("tag", found->second < known ? kInJobAlready : kPumpTagRepeated, {pump.tag});
        }
        context.pumps.push_back(std::move(pump));
    }
}

void readPumpCurves(ImportContext& context) {
    TableReader table(context.source, "pump_curve.csv", columnsOfTable("pump_curve.csv"), !context.isAdding,
                      context.faults);
    std::vector<std::vector<int>> rows(context.pumps.size());
    std::vector<bool> hasCurve;
    for (const project::Pump& pump : context.pumps) {
        hasCurve.push_back(!pump.rows.empty());
    }
    while (table.next()) {
        const std::string tag = table.requiredText("pump");
        const auto flow = table.measured<quantity::VolumeFlow>("flow", Sign::NotNegative);
        const auto head = table.entered("head", Sign::NotNegative);
        const auto npsh = table.entered("npshr", Sign::NotNegative);
        for (const char* column : {"flow", "head"}) {
            if (table.text(column).empty()) {
                table.fault(column, kCellMissing);
            }
        }
        const auto found = context.pumpByTag.find(folded(tag));
        if (found == context.pumpByTag.end()) {
            if (!tag.empty()) {
                table.unknown(table.row(), "pump", kPumpUnknown, {tag}, tag, "pumps.csv",
                              [&] { return tagsOf(context.pumps); });
            }
            continue;
        }
        if (hasCurve[found->second]) {
            table.fault("pump", kPumpHasCurve, {tag});
            continue;
        }
        project::PumpTableRow row;
        row.efficiency = table.efficiency("efficiency");
        row.power = table.measured<quantity::Power>("power", Sign::Positive);
        row.impeller = table.measured<quantity::Length>("impeller", Sign::Positive);
        if (npsh) {
            row.npshRequired = headOf(*npsh, context.density);
        }
        if (flow && head) {
            row.flow = *flow;
            row.head = headOf(*head, context.density);
            context.pumps[found->second].rows.push_back(std::move(row));
            rows[found->second].push_back(table.row());
        }
    }
    for (std::size_t i = 0; table.isUsable() && i < context.pumps.size(); ++i) {
        if (rows[i].empty() && context.isAdding) {
            continue;
        }
        if (rows[i].empty()) {
            table.faultAt(0, "pump", {&kPumpWithoutCurve, "", {context.pumps[i].tag}});
        } else {
            checkCurves(context.pumps[i], rows[i], table);
        }
    }
}

void readInstruments(ImportContext& context) {
    TableReader table(context.source, "instruments.csv", columnsOfTable("instruments.csv"), false,
                      context.faults);
    const std::size_t known = context.instruments.size();
    while (table.next()) {
        project::Instrument instrument;
        instrument.id = context.ids.next();
        instrument.tag = table.requiredText("tag");
        instrument.kind = table.text("kind");
        instrument.serial = table.text("serial");
        instrument.range = table.difference("range", Sign::Positive, context.density);
        instrument.accuracy = table.measured<quantity::Ratio>("accuracy", Sign::NotNegative);
        instrument.accuracyFloor = table.difference("accuracy_floor", Sign::Positive, context.density);
        instrument.calibrated = table.instant("calibrated");
        instrument.due = table.instant("due");
        ReadCells io(table, context);
        columns(io, instrument);
        if (instrument.calibrated && instrument.due && *instrument.due < *instrument.calibrated) {
            table.fault("due", kCalibrationOrder, {instrument.due->date(), instrument.calibrated->date()});
        }
        const auto [found, isNew] =
            context.instrumentByTag.try_emplace(folded(instrument.tag), context.instruments.size());
        if (!isNew && !instrument.tag.empty()) {
            table.fault("tag", found->second < known ? kInJobAlready : kInstrumentRepeated, {instrument.tag});
        }
        context.instruments.push_back(std::move(instrument));
    }
}

}  // namespace ww::exchange
