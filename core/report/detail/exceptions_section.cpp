#include <algorithm>
#include <map>
#include <optional>
#include <set>

#include "core/balancing/checks/check_forms.h"
#include "core/balancing/doubt_forms.h"
#include "core/balancing/standing_readings.h"
#include "core/base/term.h"
#include "core/project/calibration.h"
#include "core/project/clock_offset.h"
#include "core/project/merge_reason.h"
#include "core/project/review.h"
#include "core/report/detail/record_words.h"
#include "core/report/detail/sections.h"

namespace ww::report::detail {
namespace {

std::string tagOf(const Source& source, const base::Id& branch) {
    const project::Branch* found = source.project.branches().find(branch);
    return found != nullptr ? found->tag : std::string();
}

std::vector<Cell> row(std::string about, std::string round, std::string weight, Cell what) {
    return {cell(std::move(about)), cell(std::move(round)), wordCell(std::move(weight)), std::move(what)};
}

/// That a reading was kept although it is doubtful, and why; nothing where neither was said of it.
std::optional<base::Fault> keptAlthoughDoubtful(const project::Reading& reading) {
    if (reading.status != project::ReadingStatus::Standing || reading.cannotBeRead ||
        (!reading.isDoubtful && reading.reason.empty())) {
        return std::nullopt;
    }
    return say(reading.reason.empty() ? kDoubtfulSilent : kDoubtfulKept, {valueOf(reading), reading.reason});
}

/// Whether both say something, with the same weight, of one reading.
bool isOfSameReading(const balancing::Finding& one, const balancing::Finding& other) {
    return one.reading && one.reading == other.reading && one.severity == other.severity;
}

/// Findings that say the same of several branches stand in one row, and so do those about one reading.
/// Returns the readings of which they tell that they are doubtful.
std::set<base::Id> addFindings(const Source& source, Table& table) {
    std::map<std::string, std::size_t> rowOfText;
    std::set<base::Id> told;
    const std::vector<balancing::Finding>& findings = source.last.findings;
    for (auto finding = findings.begin(); finding != findings.end(); ++finding) {
        const auto isWithIt = [&](const balancing::Finding& other) {
            return isOfSameReading(*finding, other);
        };
        // A meter that was overdue has a row of all rounds (addOverdue).
        if (finding->fault.is(balancing::kInstrumentOverdue) ||
            std::any_of(findings.begin(), finding, isWithIt)) {
            continue;
        }
        std::string about = finding->fault.subject;
        if (about.empty() && finding->branch) {
            about = tagOf(source, *finding->branch);
        }
        std::vector<base::Fault> parts;
        for (auto other = finding; other != findings.end(); ++other) {
            if (other == finding || isWithIt(*other)) {
                parts.push_back({other->fault.form, {}, other->fault.arguments});
                if (!other->reason.empty()) {
                    parts.push_back(say(kReasonGiven, {other->reason}));
                }
                if (other->fault.is(balancing::kMarkedDoubtful)) {
                    told.insert(*other->reading);
                }
            }
        }
        const project::Reading* reading =
            isWithIt(*finding) ? source.project.readings().find(*finding->reading) : nullptr;
        const auto kept = reading != nullptr ? keptAlthoughDoubtful(*reading) : std::nullopt;
        // What has its reason is a note.
        if (kept && !reading->reason.empty() && finding->severity == balancing::Severity::Note) {
            parts.push_back(*kept);
            told.insert(reading->id);
        }
        const std::string weight = word(finding->severity);
        const Cell what = cell(std::move(parts), ". ");
        const auto [found, isNew] = rowOfText.emplace(weight + what.text, table.rows.size());
        if (isNew) {
            table.rows.push_back(row(about, std::to_string(source.last.roundNumber), weight, what));
        } else if (!about.empty()) {
            std::string& tags = table.rows[found->second].front().text;
            tags += (tags.empty() ? "" : ", ") + about;
        }
    }
    return told;
}

/// The values of both that are of the same kind: the settings where the readings are the same.
std::pair<std::string, std::string> correctedValues(const project::Reading& earlier,
                                                    const project::Reading& later) {
    const bool isSameRead =
        earlier.dp == later.dp && earlier.flow == later.flow && earlier.cannotBeRead == later.cannotBeRead;
    const bool isOfSetting = earlier.setting && later.setting && earlier.setting != later.setting &&
                             (isSameRead || !balancing::hasContent(earlier));
    const auto settingOf = [](const project::Reading& reading) {
        return base::term("setting ") + reading.setting->text();
    };
    return isOfSetting ? std::pair(settingOf(earlier), settingOf(later))
                       : std::pair(valueOf(earlier), valueOf(later));
}

void addReadings(const Source& source, const std::set<base::Id>& told, Table& table) {
    for (const project::Reading* reading : source.readings()) {
        const std::string tag = tagOf(source, reading->branch);
        const std::string round = std::to_string(source.roundNumber(reading->round));
        const auto add = [&](std::string weight, const base::MessageForm& form,
                             std::vector<std::string> arguments) {
            table.rows.push_back(
                row(tag, round, std::move(weight), cell({say(form, std::move(arguments))}, "")));
        };
        if (isCorrection(source.project, *reading)) {
            const auto [was, is] =
                correctedValues(source.project.readings().at(*reading->supersedes), *reading);
            const std::string who = source.person(reading->person);
            add(base::term("corrected"), who.empty() ? kCorrectionUnknown : kCorrection,
                {was, is, reading->time ? timeText(reading->time) : base::term("a time not written"), who});
        }
        if (reading->status == project::ReadingStatus::Struck) {
            if (const auto merged = project::readMergeReason(reading->reason)) {
                table.rows.push_back(
                    row(tag, round, base::term("struck"),
                        cell({say(kStruckWhileMerging, {valueOf(*reading)}), *merged}, ": ")));
                continue;
            }
            add(base::term("struck"), reading->reason.empty() ? kStruckSilent : kStruck,
                {valueOf(*reading), reading->reason});
        } else if (reading->status == project::ReadingStatus::Standing && reading->cannotBeRead) {
            if (const auto said = project::readMergeReason(reading->reason)) {
                table.rows.push_back(row(tag, round, base::term("not read"), cell({*said}, "")));
                continue;
            }
            add(base::term("not read"), reading->reason.empty() ? kUnreadSilent : kCannotBeRead,
                {reading->reason});
        } else if (const auto kept = keptAlthoughDoubtful(*reading); kept && !told.contains(reading->id)) {
            table.rows.push_back(row(tag, round, base::term("doubtful"), cell({*kept}, "")));
        }
    }
}

/// First comments with their answers.
void addComments(const Source& source, Table& table) {
    for (const project::Comment& comment : source.project.comments()) {
        if (comment.answers) {
            continue;
        }
        const auto said = [](const base::MessageForm& form, const project::Comment& one) {
            return say(form, {one.person.empty() ? "?" : one.person, one.text});
        };
        std::vector<base::Fault> parts{said(kCommentRow, comment)};
        for (const project::Comment* answer : project::answersTo(source.project, comment.id)) {
            parts.push_back(said(kAnswerPart, *answer));
        }
        table.rows.push_back(
            row(comment.branch ? tagOf(source, *comment.branch) : "",
                comment.round ? std::to_string(source.roundNumber(*comment.round)) : "",
                comment.isResolved ? base::term("comment, resolved") : base::term("comment, OPEN"),
                cell(std::move(parts), "; ")));
    }
}

void addOverdue(const Source& source, Table& table) {
    std::map<base::Id, int> late;
    const auto count = [&](const auto& reading) {
        const project::Instrument* meter =
            reading.instrument ? source.project.instruments().find(*reading.instrument) : nullptr;
        if (meter != nullptr &&
            project::isOverdue(*meter, project::takenAt(source.project, reading.time, reading.round))) {
            ++late[*reading.instrument];
        }
    };
    for (const project::Reading* reading : source.readings()) {
        count(*reading);
    }
    for (const project::PumpReading* reading : source.pumpReadings()) {
        count(*reading);
    }
    for (const project::Instrument& meter : source.project.instruments()) {
        if (const auto found = late.find(meter.id); found != late.end()) {
            std::vector<base::Fault> parts{say(kOverdue, {std::to_string(found->second), meter.due->date()})};
            const project::FindingReason* given =
                project::reasonFor(source.project, balancing::kInstrumentOverdue.code, meter.tag);
            if (!meter.overdueReason.empty()) {
                parts.push_back(say(kReasonGiven, {meter.overdueReason}));
            } else if (given != nullptr) {
                parts.push_back(say(kReasonGiven, {given->reason}));
            }
            table.rows.push_back(row(meter.tag, "", base::term("overdue"), cell(std::move(parts), ". ")));
        }
    }
}

/// What was read in one round by one wrong clock.
struct UncertainTimes {
    base::Id round;
    const project::ClockOffset* clock = nullptr;
    std::vector<std::string> tags;
};

std::string joinedTags(const std::vector<std::string>& tags) {
    std::string text;
    for (const std::string& tag : tags) {
        text += (text.empty() ? "" : ", ") + tag;
    }
    return text;
}

void addUncertainTimes(const Source& source, Table& table) {
    std::vector<UncertainTimes> found;
    const auto look = [&](const auto& reading, const std::string& tag) {
        const project::ClockOffset* clock =
            reading.time ? project::uncertainTime(source.project, *reading.time) : nullptr;
        if (clock == nullptr) {
            return;
        }
        auto place = std::find_if(found.begin(), found.end(), [&](const UncertainTimes& one) {
            return one.round == reading.round && one.clock == clock;
        });
        place = place == found.end() ? found.insert(place, {reading.round, clock, {}}) : place;
        if (std::find(place->tags.begin(), place->tags.end(), tag) == place->tags.end()) {
            place->tags.push_back(tag);
        }
    };
    for (const project::Reading* reading : source.readings()) {
        look(*reading, tagOf(source, reading->branch));
    }
    for (const project::PumpReading* reading : source.pumpReadings()) {
        const project::Pump* pump = source.project.pumps().find(reading->pump);
        look(*reading, pump != nullptr ? pump->tag : std::string());
    }
    for (const UncertainTimes& one : found) {
        table.rows.push_back(row(
            joinedTags(one.tags), std::to_string(source.roundNumber(one.round)), base::term("time uncertain"),
            cell({say(kTimesUncertain,
                      {one.clock->uncertainSince->text(), one.clock->showed->text(), one.clock->machine})},
                 "")));
    }
}

/// Every time that a person set the clock of a laptop right, or took that back.
void addClocks(const Source& source, Table& table) {
    for (const project::ClockOffset& offset : source.project.clockOffsets()) {
        const std::string showed = offset.showed ? offset.showed->text() : "?";
        const std::string stated = offset.stated ? offset.stated->text() : "?";
        const std::int64_t added_s = project::added_s(offset);
        const base::Fault what =
            added_s == 0 ? say(kClockTakenBack, {showed, stated, offset.person})
                         : say(kClockSet, {showed, stated, project::offsetText(added_s), offset.person});
        table.rows.push_back(row(offset.machine, "", base::term("clock"), cell({what}, "")));
    }
}

}  // namespace

Section exceptionsSection(const Source& source) {
    Section section;
    section.number = kExceptions;
    section.title = say(kExceptionsTitle);
    Table table;
    table.title = say(kExceptionsTable);
    table.columns = {column(kSubjectColumn, 34), column(kRoundColumn, 12, Alignment::Center),
                     column(kWeightColumn, 22), column(kWhatColumn, 112)};
    if (source.hasRound()) {
        const std::set<base::Id> told = addFindings(source, table);
        addReadings(source, told, table);
        addOverdue(source, table);
        addUncertainTimes(source, table);
    }
    addClocks(source, table);
    addComments(source, table);
    if (table.rows.empty()) {
        section.statements.push_back(say(kNoExceptions));
    } else {
        section.tables.push_back(std::move(table));
    }
    return section;
}

}  // namespace ww::report::detail
