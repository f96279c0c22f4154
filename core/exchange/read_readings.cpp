// rounds.csv, readings.csv and pump_readings.csv: what was read, in which round, by whom.
#include <algorithm>

#include "core/exchange/import_context.h"
#include "core/exchange/table_reader.h"
#include "core/project/names.h"

namespace ww::exchange {

namespace {

inline constexpr base::MessageForm kRoundMissing{"round_missing",
                                                 "the row names no round; give its number, 1 is the survey"};
inline constexpr base::MessageForm kRoundRepeated{"round_repeated",
                                                  "round {1} stands twice; keep one row for it"};
inline constexpr base::MessageForm kRoundKindDiffers{
    "round_kind_differs", "round {1} is \"{2}\" in an earlier row; write the same kind in all its rows"};
inline constexpr base::MessageForm kRoundKindMissing{"round_kind_missing",
                                                     "the kind of round {1} is not given; write one of {2}"};
inline constexpr base::MessageForm kReadingTagUnknown{
    "reading_tag_unknown", "the tag \"{1}\" is not among the branches; did you mean \"{2}\"?"};
inline constexpr base::MessageForm kReadingPumpUnknown{
    "reading_pump_unknown", "the pump \"{1}\" is not in the job; did you mean \"{2}\"?"};
inline constexpr base::MessageForm kReadingInstrumentUnknown{
    "reading_instrument_unknown", "the instrument \"{1}\" is not in the job; did you mean \"{2}\"?"};
inline constexpr base::MessageForm kReadingSettingOff{
    "reading_setting_off", "{1} is off this valve's scale, {2} to {3}; correct the setting"};
inline constexpr base::MessageForm kReadingEmpty{
    "reading_empty",
    "the row has neither setting, dp, flow nor a note; give what was read or take the row out"};
inline constexpr base::MessageForm kPumpReadingEmpty{
    "pump_reading_empty", "the row has no reading at all; give what was read or take the row out"};
inline constexpr base::MessageForm kReadingNoTable{
    "reading_no_table",
    "a dp is given for a branch whose valve has no table; give its valve in branches.csv"};
inline constexpr base::MessageForm kReadingBeforeRound{
    "reading_before_round", "{1} is before a reading of round {2} ({3}); correct the date or the round"};

template <class Map>
std::vector<std::string> tagsOf(const Map& records) {
    std::vector<std::string> tags;
    for (const auto& [key, record] : records) {
        tags.push_back(record.tag);
    }
    return tags;
}

/// The round that a row names; one is made on first use.
project::Round* roundOf(ImportContext& context, TableReader& table, std::optional<project::RoundKind> kind) {
    const auto number = table.wholeNumber("round", 9999);
    if (!number) {
        if (table.text("round").empty()) {
            table.fault("round", kRoundMissing);
        }
        return nullptr;
    }
    const auto [found, isNew] = context.rounds.try_emplace(*number);
    project::Round& round = found->second;
    if (isNew) {
        round.id = context.ids.next();
        round.number = *number;
        if (kind) {
            round.kind = *kind;
        } else if (*number != 1) {
            table.fault("kind", kRoundKindMissing,
                        {std::to_string(*number), project::namesOf<project::RoundKind>()});
        }
    } else if (kind && round.kind != *kind) {
        table.fault("kind", kRoundKindDiffers,
                    {std::to_string(*number), std::string(project::name(round.kind))});
    }
    return &round;
}

template <class Enumeration>
std::optional<Enumeration> nameCell(TableReader& table, std::string_view column) {
    const std::string written = table.text(column);
    const auto value = written.empty() ? std::nullopt : project::fromName<Enumeration>(written);
    if (!value && !written.empty()) {
        table.fault(column, kCellNotOneOf, {written, project::namesOf<Enumeration>()});
    }
    return value;
}

std::optional<base::Id> instrumentOf(ImportContext& context, TableReader& table) {
    const std::string tag = table.text("instrument");
    if (tag.empty()) {
        return std::nullopt;
    }
    const auto found = context.instruments.find(folded(tag));
    if (found == context.instruments.end()) {
        table.fault("instrument", kReadingInstrumentUnknown,
                    {tag, nearest(tag, tagsOf(context.instruments))});
        return std::nullopt;
    }
    return found->second.id;
}

std::optional<base::Id> personOf(ImportContext& context, TableReader& table) {
    const std::string name = table.text("person");
    return name.empty() ? std::nullopt : std::optional(context.personNamed(name));
}

/// Times of a later round may not lie before those of an earlier one.
class RoundTimes {
  public:
    void note(const project::Round* round, const std::optional<base::Instant>& time, int row) {
        if (round == nullptr || !time) {
            return;
        }
        auto [found, isNew] = m_spans.try_emplace(round->number, Span{*time, *time, row});
        if (!isNew && *time < found->second.first) {
            found->second.first = *time;
            found->second.firstRow = row;
        }
        found->second.last = std::max(found->second.last, *time);
    }
    void check(TableReader& table) const {
        const std::pair<const int, Span>* before = nullptr;
        for (const auto& span : m_spans) {
            if (before != nullptr && span.second.first < before->second.last) {
                table.faultAt(
                    span.second.firstRow, "time",
                    {&kReadingBeforeRound,
                     "",
                     {span.second.first.text(), std::to_string(before->first), before->second.last.text()}});
            }
            before = &span;
        }
    }

  private:
    struct Span {
        base::Instant first;
        base::Instant last;
        int firstRow = 0;
    };
    std::map<int, Span> m_spans;
};

/// The standing reading that comes next at the same branch corrects a superseded one.
void joinCorrections(std::vector<project::Reading>& readings) {
    std::map<std::pair<base::Id, base::Id>, base::Id> waiting;
    for (project::Reading& reading : readings) {
        const auto place = std::pair(reading.round, reading.branch);
        if (const auto found = waiting.find(place); found != waiting.end()) {
            reading.supersedes = found->second;
            waiting.erase(found);
        }
        if (reading.status == project::ReadingStatus::Superseded) {
            waiting[place] = reading.id;
        }
    }
}

class ReadingReader {
  public:
    ReadingReader(ImportContext& context, bool isRequired)
        : m_context(context),
          m_table(context.folder / "readings.csv",
                  {{"round", {}, true},
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
                   {"reason", {}, false}},
                  isRequired, context.faults) {
        for (const auto& [key, valve] : context.valves) {
            auto made = curve::ValveCharacteristic::make(project::valvePoints(valve));
            if (made) {
                m_curves.emplace(valve.id, std::move(*made));
            }
        }
    }

    void run() {
        std::map<base::Id, int> sequence;
        for (const project::Reading& reading : m_context.readings) {
            sequence[reading.round] = std::max(sequence[reading.round], reading.sequence);
        }
        std::vector<project::Reading> fresh;
        while (m_table.next()) {
            if (auto reading = takeRow()) {
                reading->sequence = ++sequence[reading->round];
                fresh.push_back(std::move(*reading));
            }
        }
        m_times.check(m_table);
        joinCorrections(fresh);
        std::move(fresh.begin(), fresh.end(), std::back_inserter(m_context.readings));
    }

  private:
    std::optional<project::Reading> takeRow() {
        const project::Round* round =
            roundOf(m_context, m_table, nameCell<project::RoundKind>(m_table, "kind"));
        project::Reading reading;
        reading.id = m_context.ids.next();
        reading.time = m_table.instant("time");
        const std::string tag = m_table.requiredText("tag");
        reading.setting = m_table.decimal("setting", Sign::NotNegative);
        if (const auto dp = m_table.entered("dp", Sign::Any)) {
            reading.dp = quantity::measuredDifference(dp->digits, dp->unit, m_context.density);
        }
        reading.flow = m_table.measured<quantity::VolumeFlow>("flow", Sign::NotNegative);
        reading.instrument = instrumentOf(m_context, m_table);
        reading.person = personOf(m_context, m_table);
        reading.note = m_table.text("note");
        reading.status =
            nameCell<project::ReadingStatus>(m_table, "status").value_or(project::ReadingStatus::Standing);
        reading.isRepeat = m_table.yesNo("repeat", false);
        reading.cannotBeRead = m_table.yesNo("cannot_read", false);
        reading.isDoubtful = m_table.yesNo("doubtful", false);
        reading.reason = m_table.text("reason");
        const bool hasAnything = !m_table.text("setting").empty() || !m_table.text("dp").empty() ||
                                 !m_table.text("flow").empty() || reading.cannotBeRead ||
                                 !reading.note.empty();
        if (!hasAnything) {
            m_table.fault("dp", kReadingEmpty);
        }
        m_times.note(round, reading.time, m_table.row());
        const project::Branch* branch = branchOf(tag);
        if (round == nullptr || branch == nullptr) {
            return std::nullopt;
        }
        reading.round = round->id;
        reading.branch = branch->id;
        checkValve(*branch, reading);
        return reading;
    }

    const project::Branch* branchOf(const std::string& tag) {
        const auto found = m_context.branchByTag.find(folded(tag));
        if (found != m_context.branchByTag.end()) {
            return &m_context.branches[found->second];
        }
        if (!tag.empty()) {
            std::vector<std::string> known;
            for (const project::Branch& branch : m_context.branches) {
                known.push_back(branch.tag);
            }
            m_table.fault("tag", kReadingTagUnknown, {tag, nearest(tag, known)});
        }
        return nullptr;
    }

    void checkValve(const project::Branch& branch, const project::Reading& reading) {
        const auto found = branch.valve ? m_curves.find(*branch.valve) : m_curves.end();
        if (found == m_curves.end()) {
            // A table with faults of its own is reported where it stands.
            if (!branch.valve && reading.dp) {
                m_table.fault("dp", kReadingNoTable);
            }
            return;
        }
        const curve::ValveCharacteristic& curve = found->second;
        if (reading.setting && !curve.covers(quantity::Setting::si(reading.setting->value()))) {
            m_table.fault("setting", kReadingSettingOff,
                          {reading.setting->text(), quantity::concise(curve.lowest().si(), 6),
                           quantity::concise(curve.fullyOpen().si(), 6)});
        }
    }

    ImportContext& m_context;
    TableReader m_table;
    RoundTimes m_times;
    std::map<base::Id, curve::ValveCharacteristic> m_curves;
};

}  // namespace

void readRounds(ImportContext& context) {
    TableReader table(context.folder / "rounds.csv",
                      {{"round", {}, true},
                       {"kind", {}, true},
                       {"state", {}, false},
                       {"opened", {}, false},
                       {"closed", {}, false}},
                      false, context.faults);
    while (table.next()) {
        const auto kind = nameCell<project::RoundKind>(table, "kind");
        const auto number = table.wholeNumber("round", 9999);
        if (number && context.rounds.contains(*number)) {
            table.fault("round", kRoundRepeated, {std::to_string(*number)});
            continue;
        }
        if (project::Round* round = roundOf(context, table, kind)) {
            round->state =
                nameCell<project::RoundState>(table, "state").value_or(project::RoundState::Closed);
            round->opened = table.instant("opened");
            round->closed = table.instant("closed");
        }
    }
}

void readReadingTable(ImportContext& context, bool isRequired) {
    ReadingReader(context, isRequired).run();
}

void readPumpReadings(ImportContext& context) {
    TableReader table(context.folder / "pump_readings.csv",
                      {{"round", {}, true},
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
                       {"status", {}, false}},
                      false, context.faults);
    std::map<base::Id, int> sequence;
    for (const project::PumpReading& reading : context.pumpReadings) {
        sequence[reading.round] = std::max(sequence[reading.round], reading.sequence);
    }
    RoundTimes times;
    while (table.next()) {
        const auto number = table.wholeNumber("round", 9999);
        const bool isKnown = number && context.rounds.contains(*number);
        const project::Round* round =
            isKnown ? &context.rounds[*number] : roundOf(context, table, std::nullopt);
        project::PumpReading reading;
        reading.id = context.ids.next();
        reading.time = table.instant("time");
        if (const auto suction = table.entered("suction", Sign::Any)) {
            reading.suction = quantity::measuredGauge(suction->digits, suction->unit, context.density);
        }
        if (const auto discharge = table.entered("discharge", Sign::Any)) {
            reading.discharge = quantity::measuredGauge(discharge->digits, discharge->unit, context.density);
        }
        if (const auto rise = table.entered("gauge_rise", Sign::Any)) {
            reading.gaugeRise = quantity::measuredDifference(rise->digits, rise->unit, context.density);
        }
        reading.speed = table.measured<quantity::RotationalSpeed>("speed", Sign::NotNegative);
        reading.throttle = table.decimal("throttle", Sign::NotNegative);
        reading.flow = table.measured<quantity::VolumeFlow>("flow", Sign::NotNegative);
        reading.volts = table.measured<quantity::Voltage>("volts", Sign::NotNegative);
        reading.amps = table.measured<quantity::Current>("amps", Sign::NotNegative);
        reading.power = table.measured<quantity::Power>("power", Sign::NotNegative);
        reading.instrument = instrumentOf(context, table);
        reading.person = personOf(context, table);
        reading.status =
            nameCell<project::ReadingStatus>(table, "status").value_or(project::ReadingStatus::Standing);
        bool hasAnything = false;
        for (const char* column :
             {"suction", "discharge", "gauge_rise", "speed", "throttle", "flow", "volts", "amps", "power"}) {
            hasAnything = hasAnything || !table.text(column).empty();
        }
        if (!hasAnything) {
            table.fault("discharge", kPumpReadingEmpty);
        }
        times.note(round, reading.time, table.row());
        const std::string tag = table.requiredText("pump");
        const auto pump = context.pumpByTag.find(folded(tag));
        if (pump == context.pumpByTag.end()) {
            std::vector<std::string> known;
            for (const project::Pump& candidate : context.pumps) {
                known.push_back(candidate.tag);
            }
            if (!tag.empty()) {
                table.fault("pump", kReadingPumpUnknown, {tag, nearest(tag, known)});
            }
        } else if (round != nullptr) {
            reading.round = round->id;
            reading.pump = context.pumps[pump->second].id;
            reading.sequence = ++sequence[round->id];
            context.pumpReadings.push_back(std::move(reading));
        }
    }
    times.check(table);
}

}  // namespace ww::exchange
