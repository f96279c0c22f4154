// pump_readings.csv: what was read at the pumps.
#include <algorithm>
#include <array>

#include "core/exchange/read_cells.h"
#include "core/exchange/reading_rows.h"
#include "core/exchange/table_columns.h"

namespace ww::exchange {

namespace {

inline constexpr base::MessageForm kReadingPumpUnknown{
    "reading_pump_unknown", "the pump \"{1}\" is not in the job; did you mean \"{2}\"?"};
inline constexpr base::MessageForm kPumpReadingEmpty{
    "pump_reading_empty", "the row has no reading at all; give what was read or take the row out"};

/// The columns of which a row needs one.
constexpr std::array kValueColumns{"suction", "discharge", "gauge_rise", "speed", "throttle",
                                   "flow",    "volts",     "amps",       "power"};

class PumpReadingReader {
  public:
    explicit PumpReadingReader(ImportContext& context)
        : m_context(context),
          m_table(context.source, "pump_readings.csv", columnsOfTable("pump_readings.csv"), false,
                  context.faults),
          m_rounds(context) {}

    void run() {
        std::vector<ReadingRow<project::PumpReading>> rows;
        while (m_table.next()) {
            if (auto row = takeRow()) {
                rows.push_back(std::move(*row));
            }
        }
        finishRows(rows, m_table, m_context, m_context.pumpReadings);
    }

  private:
    std::optional<ReadingRow<project::PumpReading>> takeRow() {
        const project::Round* round = m_rounds.roundOf(m_table, std::nullopt);
        ReadingRow<project::PumpReading> row;
        project::PumpReading& reading = row.reading;
        row.row = m_table.row();
        row.corrects = m_table.wholeNumber("corrects", 9'999'999);
        reading.id = m_context.ids.next();
        reading.time = m_table.instant("time");
        takeValues(reading);
        reading.instrument = instrumentOf(m_context, m_table);
        reading.person = personOf(m_context, m_table);
        ReadCells io(m_table, m_context);
        columns(io, reading);
        reading.status =
            nameCell<project::ReadingStatus>(m_table, "status").value_or(project::ReadingStatus::Standing);
        if (std::all_of(kValueColumns.begin(), kValueColumns.end(),
                        [&](const char* column) { return m_table.text(column).empty(); })) {
            m_table.fault("discharge", kPumpReadingEmpty);
        }
        const project::Pump* pump = pumpOf(m_table.requiredText("pump"));
        if (round == nullptr || pump == nullptr) {
            return std::nullopt;
        }
        row.round = round->number;
        reading.round = round->id;
        reading.pump = pump->id;
        return row;
    }

    void takeValues(project::PumpReading& reading) {
        const quantity::Density density = m_context.density;
        if (const auto suction = m_table.entered("suction", Sign::Any)) {
            reading.suction = quantity::measuredGauge(suction->digits, suction->unit, density);
        }
        if (const auto discharge = m_table.entered("discharge", Sign::Any)) {
            reading.discharge = quantity::measuredGauge(discharge->digits, discharge->unit, density);
        }
        if (const auto rise = m_table.entered("gauge_rise", Sign::Any)) {
            reading.gaugeRise = quantity::measuredDifference(rise->digits, rise->unit, density);
        }
        reading.speed = m_table.measured<quantity::RotationalSpeed>("speed", Sign::NotNegative);
        reading.throttle = m_table.decimal("throttle", Sign::NotNegative);
        reading.flow = m_table.measured<quantity::VolumeFlow>("flow", Sign::NotNegative);
        reading.volts = m_table.measured<quantity::Voltage>("volts", Sign::NotNegative);
        reading.amps = m_table.measured<quantity::Current>("amps", Sign::NotNegative);
        reading.power = m_table.measured<quantity::Power>("power", Sign::NotNegative);
    }

    const project::Pump* pumpOf(const std::string& tag) {
        const auto found = m_context.pumpByTag.find(folded(tag));
        if (found != m_context.pumpByTag.end()) {
            return &m_context.pumps[found->second];
        }
        if (!tag.empty()) {
            m_table.unknown(m_table.row(), "pump", kReadingPumpUnknown, {tag}, tag, "pumps.csv",
                            [&] { return tagsOf(m_context.pumps); });
        }
        return nullptr;
    }

    ImportContext& m_context;
    TableReader m_table;
    RoundCells m_rounds;
};

}  // namespace

void readPumpReadings(ImportContext& context) {
    PumpReadingReader(context).run();
}

}  // namespace ww::exchange
