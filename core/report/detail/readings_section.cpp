#include <algorithm>
#include <set>
#include <string_view>

#include "core/balancing/round_comparison.h"
#include "core/base/term.h"
#include "core/project/names.h"
#include "core/report/detail/pump_words.h"
#include "core/report/detail/sections.h"

namespace ww::report::detail {
namespace {

bool isOut(project::ReadingStatus status) {
    return status != project::ReadingStatus::Standing;
}

/// How a flow that no valve's dp gave was measured: by the kind of its meter, else as the note says.
base::Fault methodOf(const Source& source, const project::Reading& reading) {
    const project::Instrument* meter =
        reading.instrument ? source.project.instruments().find(*reading.instrument) : nullptr;
    if (meter != nullptr && !meter->kind.empty()) {
        return say(kFlowMeasuredWith, {meter->kind});
    }
    return say(reading.note.empty() && reading.reason.empty() ? kFlowMethodMissing : kFlowMeasured);
}

Cell noteOf(const Source& source, const project::Reading& reading) {
    std::vector<base::Fault> parts;
    if (reading.flow && !reading.dp) {
        parts.push_back(methodOf(source, reading));
    }
    const auto addIf = [&parts](bool isSo, const char* what) {
        if (isSo) {
            parts.push_back(word(what));
        }
    };
    addIf(reading.status == project::ReadingStatus::Superseded, base::term("superseded"));
    addIf(reading.status == project::ReadingStatus::Struck, base::term("struck"));
    addIf(reading.cannotBeRead, base::term("cannot be read"));
    addIf(reading.isDoubtful, base::term("doubtful"));
    addIf(reading.isRepeat, base::term("repeat"));
    addIf(isCorrection(source.project, reading), base::term("correction"));
    if (!reading.reason.empty()) {
        parts.push_back(reasonPart(reading.reason));
    }
    if (!reading.note.empty()) {
        parts.push_back(plain(reading.note));
    }
    return cell(std::move(parts), "; ");
}

/// Settings that were entered before their readings: each stands in the row of the reading that completed it.
std::set<base::Id> completedSettings(const Source& source) {
    std::set<base::Id> completed;
    for (const project::Reading* reading : source.readings()) {
        const project::Reading* earlier =
            reading->supersedes ? source.project.readings().find(*reading->supersedes) : nullptr;
        if (earlier != nullptr && earlier->reason.empty() && !balancing::isCorrection(*earlier, *reading)) {
            completed.insert(earlier->id);
        }
    }
    return completed;
}

constexpr std::string_view kInUtc = " UTC";

/// Whether all times of a table are of one zone, which its head can name for all.
template <class R>
bool isAllInUtc(const std::vector<const R*>& readings) {
    return std::all_of(readings.begin(), readings.end(), [](const R* reading) {
        return !reading->time || timeText(reading->time).ends_with(kInUtc);
    });
}

Column timeColumn(bool isAllUtc) {
    return column(kTimeColumn, isAllUtc ? 36 : 44, Alignment::Left, isAllUtc ? "UTC" : "");
}

Cell timeCell(const std::optional<base::Instant>& time, bool isAllUtc) {
    std::string text = timeText(time);
    text.resize(text.size() - (isAllUtc && time ? kInUtc.size() : 0));
    return cell(std::move(text));
}

Table branchReadings(const Source& source) {
    const std::vector<const project::Reading*> readings = source.readings();
    const std::set<base::Id> completed = completedSettings(source);
    const bool isAllUtc = isAllInUtc(readings);
    Table table;
    table.isLandscape = true;
    table.title = say(kReadingsTable);
    table.columns = {column(kRoundColumn, 14, Alignment::Right),
                     timeColumn(isAllUtc),
                     column(kTagColumn, 24),
                     column(kSettingColumn, 18, Alignment::Right),
                     column(kDpColumn, 26, Alignment::Right),
                     column(kFlowColumn, 24, Alignment::Right, base::term("as typed")),
                     column(kInstrumentColumn, 22),
                     column(kPersonColumn, 34),
                     column(kNoteColumn, 62)};
    for (const project::Reading* reading : readings) {
        if (completed.contains(reading->id)) {
            continue;
        }
        const project::Branch* branch = source.project.branches().find(reading->branch);
        const bool isStruck = isOut(reading->status);
        table.rows.push_back({cell(std::to_string(source.roundNumber(reading->round))),
                              timeCell(reading->time, isAllUtc),
                              cell(branch != nullptr ? branch->tag : std::string()),
                              cell(reading->setting ? reading->setting->text() : "", isStruck),
                              cell(typed(reading->dp), isStruck), cell(typed(reading->flow), isStruck),
                              cell(source.instrument(reading->instrument)),
                              cell(source.person(reading->person)), noteOf(source, *reading)});
    }
    return table;
}

/// "463 / 464 / 466 V": what was read of three phases.
template <class Q>
std::string phases(const std::optional<quantity::Measured<Q>>& first,
                   const std::optional<quantity::Measured<Q>>& second,
                   const std::optional<quantity::Measured<Q>>& third) {
    std::string text;
    for (const auto* one : {&first, &second, &third}) {
        if (one->has_value()) {
            const std::string unit = ' ' + printed((*one)->unit);
            // One that follows in the same unit says it for both.
            text.erase(text.ends_with(unit) ? text.size() - unit.size() : text.size());
            text += (text.empty() ? "" : " / ") + typed(**one);
        }
    }
    return text;
}

std::string electricalOf(const project::PumpReading& reading) {
    std::string text;
    for (const std::string& part :
         {phases(reading.volts, reading.voltsSecond, reading.voltsThird),
          phases(reading.amps, reading.ampsSecond, reading.ampsThird), typed(reading.power)}) {
        if (!part.empty()) {
            text += text.empty() ? part : ", " + part;
        }
    }
    return text;
}

Table pumpReadings(const Source& source) {
    const std::vector<const project::PumpReading*> readings = source.pumpReadings();
    const bool isAllUtc = isAllInUtc(readings);
    Table table;
    table.isLandscape = true;
    table.title = say(kPumpReadingsTable);
    table.columns = {column(kRoundColumn, 14, Alignment::Right),
                     timeColumn(isAllUtc),
                     column(kPumpColumn, 16),
                     column(kPointColumn, 26),
                     column(kSuctionColumn, 22, Alignment::Right),
                     column(kDischargeColumn, 22, Alignment::Right),
                     column(kRiseColumn, 22, Alignment::Right),
                     column(kSpeedColumn, 24, Alignment::Right),
                     column(kThrottleColumn, 18, Alignment::Right),
                     column(kFlowColumn, 24, Alignment::Right),
                     column(kElectricalColumn, 62),
                     column(kInstrumentColumn, 22),
                     column(kPersonColumn, 36)};
    for (const project::PumpReading* reading : readings) {
        const project::Pump* pump = source.project.pumps().find(reading->pump);
        const bool isStruck = isOut(reading->status);
        table.rows.push_back(
            {cell(std::to_string(source.roundNumber(reading->round))), timeCell(reading->time, isAllUtc),
             cell(pump != nullptr ? pump->tag : std::string()),
             wordCell(std::string(project::name(reading->point))), cell(typed(reading->suction), isStruck),
             cell(typed(reading->discharge), isStruck), cell(typed(reading->gaugeRise), isStruck),
             cell(typed(reading->speed), isStruck),
             cell(reading->throttle ? reading->throttle->text() : "", isStruck),
             cell(typed(reading->flow), isStruck), cell(electricalOf(*reading), isStruck),
             cell(source.instrument(reading->instrument)), cell(source.person(reading->person))});
    }
    return table;
}

}  // namespace

Section readingsSection(const Source& source) {
    Section section;
    section.number = kReadings;
    section.title = say(kReadingsTitle);
    Table readings = branchReadings(source);
    Table pumps = pumpReadings(source);
    if (readings.rows.empty() && pumps.rows.empty()) {
        section.statements.push_back(say(kNoReadings));
        return section;
    }
    section.statements.push_back(say(kReadingsText));
    if (!readings.rows.empty()) {
        section.tables.push_back(std::move(readings));
    }
    if (!pumps.rows.empty()) {
        section.tables.push_back(std::move(pumps));
    }
    return section;
}

}  // namespace ww::report::detail
