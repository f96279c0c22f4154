// A small job of our own invention for tests of report and screens: two risers with three terminals each, one
// pump, three rounds. Flows are chosen; every dp follows from them by the valve's table, so that the record
// hangs together.
#pragma once

#include <array>
#include <string>

#include "core/curve/valve_flow.h"
#include "core/project/edit.h"
#include "core/project/project.h"
#include "tests/support/counting_ids.h"

namespace ww::support {

/// What a test may want otherwise.
struct DemoOptions {
    project::UnitSystem units = project::UnitSystem::SI;
    bool hasRounds = true;
    bool hasPump = true;
    bool hasOverdueMeter = false;  ///< the dp meter falls due the day before the last round
    int fillerTerminals = 0;       ///< further terminals on riser 2, to fill pages
};

/// Puts the job together; each call gives an equal project.
class DemoProject {
  public:
    explicit DemoProject(DemoOptions options = {}) : m_options(options) {
        putJob();
        putPeopleAndMeters();
        putValves();
        putBranches();
        if (options.hasPump) {
            putPump();
        }
        if (options.hasRounds) {
            for (int round = 1; round <= 3; ++round) {
                putRound(round);
            }
            putSlip();
        }
    }

    project::Project take() { return std::move(m_project); }

  private:
    using Id = base::Id;
    using Unit = quantity::Unit;

    /// A terminal: its riser, design flow in m3/h, of design in each round, setting in each round.
    struct Terminal {
        const char* tag;
        const char* serves;
        int riser;
        double design_m3h;
        std::array<double, 3> ofDesign;
        std::array<const char*, 3> setting;
    };
    static constexpr std::array<Terminal, 6> kTerminals{{
        {"T1", "Air handler 1, level 1", 1, 1.8, {1.45, 1.20, 1.09}, {"4.0", "3.1", "2.4"}},
        {"T2", "Fan coils, level 2", 1, 1.5, {1.30, 1.15, 1.08}, {"4.0", "2.9", "2.3"}},
        {"T3", "Air handler 2, level 3", 1, 2.1, {1.12, 1.10, 1.07}, {"4.0", "4.0", "4.0"}},
        {"T4", "Fan coils north, level 1", 2, 1.2, {1.25, 1.12, 1.07}, {"4.0", "3.2", "2.6"}},
        {"T5", "Fan coils south, level 2", 2, 1.6, {1.05, 1.03, 1.06}, {"4.0", "3.8", "3.1"}},
        {"T6", "Radiant ceiling, level 3", 2, 1.4, {0.80, 0.94, 1.045}, {"4.0", "4.0", "4.0"}},
    }};

    static base::Decimal decimal(const std::string& text) { return base::Decimal::parse(text).value(); }
    static base::Instant moment(const std::string& text) { return *base::Instant::fromText(text); }
    template <class Q>
    static quantity::Measured<Q> entered(const std::string& digits, Unit unit) {
        return quantity::measured<Q>(decimal(digits), unit);
    }
    Id numbered(std::uint64_t number) const { return CountingIds::numbered(number); }

    void putJob() {
        project::Job job;
        job.id = numbered(1);
        job.name = "Harbour Mill, chilled water";
        job.site = "Harbour Mill, 4 Quay Road";
        job.client = "Harbour Mill Estates";
        job.units = m_options.units;
        job.temperature = quantity::Measured<quantity::Temperature>{
            decimal("10"), Unit::Celsius, quantity::Temperature::from(10, Unit::Celsius)};
        job.concentration = entered<quantity::Ratio>("0", Unit::Percent);
        job.toleranceLow = entered<quantity::Ratio>("-10", Unit::Percent);
        job.toleranceHigh = entered<quantity::Ratio>("10", Unit::Percent);
        job.matchingBand = entered<quantity::Ratio>("5", Unit::Percent);
        m_project.put(job);
    }

    void putPeopleAndMeters() {
        m_project.put(project::Person{numbered(10), "A. Fields"});
        m_project.put(project::Person{numbered(11), "K. Moor"});
        project::Instrument meter;
        meter.id = numbered(20);
        meter.tag = "M-2";
        meter.kind = "dp meter";
        meter.serial = "DP-20418";
        meter.range = entered<quantity::PressureDifference>("50", Unit::Kilopascal);
        meter.accuracy = entered<quantity::Ratio>("1", Unit::Percent);
        meter.accuracyFloor = entered<quantity::PressureDifference>("0.1", Unit::Kilopascal);
        meter.calibrated = moment("2025-03-03");
        meter.due = moment(m_options.hasOverdueMeter ? "2026-03-03" : "2026-03-31");
        m_project.put(meter);
        project::Instrument gauge;
        gauge.id = numbered(21);
        gauge.tag = "G-1";
        gauge.kind = "pump gauge";
        gauge.serial = "PG-0077";
        gauge.range = entered<quantity::PressureDifference>("400", Unit::Kilopascal);
        gauge.accuracy = entered<quantity::Ratio>("1", Unit::Percent);
        gauge.accuracyFloor = entered<quantity::PressureDifference>("1", Unit::Kilopascal);
        gauge.calibrated = moment("2025-09-01");
        gauge.due = moment("2026-09-01");
        m_project.put(gauge);
    }

    void putValves() {
        const auto put = [this](std::uint64_t id, const char* model, const char* size,
                                std::initializer_list<std::pair<const char*, const char*>> rows) {
            project::ValveModel valve;
            valve.id = numbered(id);
            valve.model = model;
            valve.size = size;
            valve.coefficientUnit = Unit::Kv;
            for (const auto& [setting, coefficient] : rows) {
                valve.rows.push_back({decimal(setting), decimal(coefficient)});
            }
            valve.minimumDp = entered<quantity::PressureDifference>("1.0", Unit::Kilopascal);
            valve.accuracy = entered<quantity::Ratio>("3", Unit::Percent);
            m_project.put(valve);
        };
        put(30, "V-25", "DN 25",
            {{"0.5", "0.55"}, {"1.0", "1.1"}, {"2.0", "2.7"}, {"3.0", "4.7"}, {"4.0", "6.5"}});
        put(31, "V-50", "DN 50",
            {{"0.5", "2.4"}, {"1.0", "4.6"}, {"2.0", "12.0"}, {"3.0", "22.0"}, {"4.0", "30.0"}});
    }

    void putBranches() {
        for (int riser = 1; riser <= 2; ++riser) {
            project::Branch branch;
            branch.id = riserId(riser);
            branch.position = (riser - 1) * 100;
            branch.tag = "R" + std::to_string(riser);
            branch.serves = riser == 1 ? "West riser" : "East riser";
            branch.valve = numbered(31);
            m_project.put(branch);
        }
        for (std::size_t i = 0; i < kTerminals.size(); ++i) {
            const Terminal& terminal = kTerminals[i];
            putTerminal(terminalId(i), terminal.riser, terminal.riser * 100 - 99 + static_cast<int>(i),
                        terminal.tag, terminal.serves, terminal.design_m3h);
        }
        for (int i = 0; i < m_options.fillerTerminals; ++i) {
            putTerminal(fillerId(i), 2, 200 + i, "F" + std::to_string(i + 1),
                        "Fan coil " + std::to_string(i + 1), 0.9);
        }
    }

    void putTerminal(const Id& id, int riser, int position, const std::string& tag, const std::string& serves,
                     double design_m3h) {
        project::Branch branch;
        branch.id = id;
        branch.parent = riserId(riser);
        branch.position = position;
        branch.tag = tag;
        branch.serves = serves;
        branch.valve = numbered(30);
        branch.designFlow = quantity::measured<quantity::VolumeFlow>(base::Decimal::fromNumber(design_m3h, 2),
                                                                     Unit::CubicMetrePerHour);
        m_project.put(branch);
    }

    void putPump() {
        project::Pump pump;
        pump.id = numbered(60);
        pump.tag = "P1";
        pump.speed = entered<quantity::RotationalSpeed>("1450", Unit::RevolutionPerMinute);
        pump.impeller = entered<quantity::Length>("165", Unit::Millimetre);
        pump.impellerMinimum = entered<quantity::Length>("148", Unit::Millimetre);
        pump.motorPower = entered<quantity::Power>("0.75", Unit::Kilowatt);
        for (const auto& [flow, head] :
             {std::pair{"0", "12.0"}, std::pair{"4", "11.6"}, std::pair{"8", "10.6"}, std::pair{"12", "8.8"},
              std::pair{"16", "6.0"}}) {
            project::PumpTableRow row;
            row.flow = entered<quantity::VolumeFlow>(flow, Unit::CubicMetrePerHour);
            row.head = entered<quantity::Head>(head, Unit::Metre);
            pump.rows.push_back(row);
        }
        m_project.put(pump);
    }

    Id riserId(int riser) const { return numbered(40 + static_cast<std::uint64_t>(riser)); }
    Id terminalId(std::size_t terminal) const { return numbered(50 + terminal); }
    Id fillerId(int filler) const { return numbered(1000 + static_cast<std::uint64_t>(filler)); }
    Id roundId(int round) const { return numbered(70 + static_cast<std::uint64_t>(round)); }

    std::string timeOf(int round, int minute) const {
        const std::string hour = minute < 60 ? "09:" : "10:";
        const std::string text = std::to_string(minute % 60);
        return "2026-03-0" + std::to_string(round + 1) + "T" + hour + (text.size() < 2 ? "0" : "") + text +
               ":07Z";
    }

    void putReading(int round, const Id& branch, const char* setting, double flow_m3h) {
        const curve::ValveCharacteristic* valve = m_project.characteristicOf(m_project.branches().at(branch));
        const auto coefficient = valve->coefficient(quantity::Setting::si(decimal(setting).value()));
        const auto drop =
            curve::valveDrop(coefficient, quantity::VolumeFlow::from(flow_m3h, Unit::CubicMetrePerHour),
                             m_project.fluid().density());
        project::Reading reading;
        reading.id = numbered(m_nextReading++);
        reading.round = roundId(round);
        reading.branch = branch;
        reading.sequence = m_sequence++;
        reading.time = moment(timeOf(round, m_sequence));
        reading.setting = decimal(setting);
        reading.dp = quantity::measured<quantity::PressureDifference>(
            base::Decimal::fromNumber(drop.in(Unit::Kilopascal), 2), Unit::Kilopascal);
        reading.instrument = numbered(20);
        reading.person = numbered(round == 3 ? 11 : 10);
        m_project.put(reading);
    }

    void putRound(int number) {
        m_sequence = 1;
        project::Round round;
        round.id = roundId(number);
        round.number = number;
        round.kind = number == 1   ? project::RoundKind::Survey
                     : number == 2 ? project::RoundKind::Adjusting
                                   : project::RoundKind::Final;
        round.state = project::RoundState::Closed;
        round.opened = moment(timeOf(number, 0));
        round.closed = moment(timeOf(number, 59));
        m_project.put(round);
        const auto at = static_cast<std::size_t>(number - 1);
        std::array<double, 2> riser_m3h{};
        for (const Terminal& terminal : kTerminals) {
            riser_m3h[static_cast<std::size_t>(terminal.riser - 1)] +=
                terminal.design_m3h * terminal.ofDesign[at];
        }
        riser_m3h[1] += 0.9 * m_options.fillerTerminals;
        constexpr std::array<const char*, 3> kWestSetting{"4.0", "3.0", "2.2"};
        putReading(number, riserId(1), kWestSetting[at], riser_m3h[0]);
        putReading(number, riserId(2), "4.0", riser_m3h[1]);
        for (std::size_t i = 0; i < kTerminals.size(); ++i) {
            const Terminal& terminal = kTerminals[i];
            putReading(number, terminalId(i), terminal.setting[at],
                       terminal.design_m3h * terminal.ofDesign[at]);
        }
        for (int i = 0; i < m_options.fillerTerminals; ++i) {
            putReading(number, fillerId(i), "3.0", 0.9);
        }
        if (m_options.hasPump) {
            putPumpReading(number, riser_m3h[0] + riser_m3h[1]);
        }
    }

    void putPumpReading(int round, double flow_m3h) {
        const auto head = m_project.pumpCurve(numbered(60))
                              ->head(quantity::VolumeFlow::from(flow_m3h, Unit::CubicMetrePerHour));
        project::PumpReading reading;
        reading.id = numbered(m_nextReading++);
        reading.round = roundId(round);
        reading.pump = numbered(60);
        reading.sequence = m_sequence++;
        reading.time = moment(timeOf(round, m_sequence));
        reading.gaugeRise = quantity::measured<quantity::PressureDifference>(
            base::Decimal::fromNumber(m_project.fluid().pressure(head).in(Unit::Kilopascal), 1),
            Unit::Kilopascal);
        reading.volts = entered<quantity::Voltage>("400", Unit::Volt);
        reading.amps = entered<quantity::Current>("1.4", Unit::Ampere);
        reading.instrument = numbered(21);
        reading.person = numbered(10);
        m_project.put(reading);
    }

    /// In round 2 a digit was lost at T4 and corrected; in round 3 the reading of T2 is doubtful and kept.
    void putSlip() {
        for (const project::Reading& stored : m_project.readings()) {
            if (stored.round == roundId(2) && stored.branch == terminalId(3)) {
                project::Reading slip = stored;
                slip.id = numbered(m_nextReading++);
                slip.sequence = 0;
                slip.dp = entered<quantity::PressureDifference>("48.8", Unit::Kilopascal);
                slip.status = project::ReadingStatus::Superseded;
                slip.note = "point lost";
                project::Reading right = stored;
                right.supersedes = slip.id;
                m_project.put(slip);
                m_project.put(right);
                break;
            }
        }
        for (const project::Reading& stored : m_project.readings()) {
            if (stored.round == roundId(3) && stored.branch == terminalId(1)) {
                project::Reading kept = stored;
                kept.reason = "strainer cleaned between the rounds";
                m_project.put(kept);
                break;
            }
        }
    }

    DemoOptions m_options;
    project::Project m_project;
    std::uint64_t m_nextReading = 100;
    int m_sequence = 1;
};

inline project::Project demoProject(DemoOptions options = {}) {
    return DemoProject(options).take();
}

/// Everything of a job as one edit, to make a workbook from.
inline project::Edit contentOf(const project::Project& project) {
    project::Edit edit;
    edit.label = "New job";
    edit.put.emplace_back(project.job());
    const auto putAll = [&edit](const auto& table) {
        for (const auto& record : table) {
            edit.put.emplace_back(record);
        }
    };
    putAll(project.people());
    putAll(project.instruments());
    putAll(project.valves());
    putAll(project.branches());
    putAll(project.pumps());
    putAll(project.rounds());
    putAll(project.readings());
    putAll(project.pumpReadings());
    return edit;
}

}  // namespace ww::support
