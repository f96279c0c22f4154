// A job of 24 terminals on three risers with a survey behind it, for walking a round. Not for judging: its
// readings are seeded numbers, not a solved loop.
#pragma once

#include <cstdio>
#include <random>
#include <string>
#include <vector>

#include "core/project/edit.h"
#include "core/project/project.h"
#include "tests/support/field_job.h"

namespace ww::support {

struct WalkJobOptions {
    int terminals = 24;
    bool hasSurvey = true;           ///< round 1, closed, every terminal read
    int adjustingRounds = 0;         ///< closed after it, likewise
    std::string due = "2027-03-31";  ///< of the meter
};

inline std::string walkTag(int number) {
    char tag[16];
    std::snprintf(tag, sizeof tag, "B-%02d", number);
    return tag;
}

/// The content of a new workbook; equal options give an equal job. One model of valve, 0 to 4 turns;
/// terminals are called B-01, B-02 ... along the route, risers R1, R2, R3 have no valve. Units SI, dp in kPa.
inline project::Edit walkJob(const WalkJobOptions& options = {}) {
    FieldJob job;
    std::mt19937 random(20260302);
    const auto number = [&](double low, double high, int decimals) {
        const double share = static_cast<double>(random()) / 4294967296.0;
        return base::Decimal::fromNumber(low + share * (high - low), decimals).text();
    };
    const base::Id valve =
        job.valve({{"0.5", "0.6"}, {"1", "1.1"}, {"2", "2.6"}, {"3", "4.1"}, {"4", "5.2"}});
    job.change(job.project().valves().at(valve), [](project::ValveModel& model) {
        model.model = "V";
        model.size = "DN 25";
        model.minimumDp = quantity::measured<quantity::PressureDifference>(FieldJob::decimal("1.0"),
                                                                           quantity::Unit::Kilopascal);
    });
    const int risers = 3;
    for (int riser = 1; riser <= risers; ++riser) {
        job.branch("R" + std::to_string(riser), "", "", {}, project::BranchKind::None);
    }
    for (int i = 1; i <= options.terminals; ++i) {
        const int riser = 1 + (i - 1) * risers / options.terminals;
        const base::Id id = job.branch(walkTag(i), "R" + std::to_string(riser), number(1.0, 2.6, 2), valve);
        job.change(job.project().branches().at(id), [&](project::Branch& branch) {
            branch.serves = "Level " + std::to_string(i % 8 + 1) + ", unit " + std::to_string(i);
            branch.setting = FieldJob::decimal("4");
        });
    }
    const base::Id meter = job.instrument("1.5", "0.05");
    job.change(job.project().instruments().at(meter), [&](project::Instrument& record) {
        record.kind = "dp meter";
        record.serial = "4711";
        record.range = job.pressure("200");
        record.calibrated = base::Instant::fromText("2026-01-15");
        record.due = base::Instant::fromText(options.due);
    });
    project::Person person;
    person.id = job.ids().next();
    person.name = "A. Fields";
    job.project().put(person);
    for (int round = options.hasSurvey ? 0 : 1; round <= options.adjustingRounds; ++round) {
        job.round(round == 0 ? project::RoundKind::Survey : project::RoundKind::Adjusting);
        for (int i = 1; i <= options.terminals; ++i) {
            job.dp(walkTag(i), number(12.0, 60.0, 1), "4");
        }
    }
    project::Edit edit;
    edit.label = "new job";
    edit.canUndo = false;
    const project::Project& made = job.project();
    edit.put.emplace_back(made.job());
    const auto add = [&](const auto& table) { edit.put.insert(edit.put.end(), table.begin(), table.end()); };
    add(made.valves());
    add(made.branches());
    add(made.instruments());
    add(made.people());
    add(made.rounds());
    add(made.readings());
    return edit;
}

/// A dp for each terminal near its last reading, as typed: within the plausible range.
inline std::vector<std::string> walkReadings(const project::Project& project) {
    std::vector<std::string> typed;
    for (const project::Reading& reading : project.readings()) {
        if (reading.dp && reading.status == project::ReadingStatus::Standing && typed.size() < 1000) {
            typed.push_back(base::Decimal::fromNumber(reading.dp->digits.value() * 1.05, 1).text());
        }
    }
    return typed;
}

}  // namespace ww::support
