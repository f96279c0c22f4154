#include "core/pump_room/test_entry.h"

#include <algorithm>
#include <variant>

#include "core/base/expects.h"
#include "core/project/edit_label.h"
#include "core/project/names.h"

namespace ww::pump_room {

namespace {

using project::Project;
using project::PumpReading;

/// The next free place in the order of a round, counted over branches and pumps.
int nextSequence(const Project& project, const Id& round) {
    int last = 0;
    for (const std::size_t index : project.readingsOf(round)) {
        last = std::max(last, project.readings()[index].sequence);
    }
    for (const std::size_t index : project.pumpReadingsOf(round)) {
        last = std::max(last, project.pumpReadings()[index].sequence);
    }
    return last + 1;
}

std::optional<Id> lastGaugeOf(const Project& project, const Id& pump) {
    std::optional<Id> last;
    for (const PumpReading& reading : project.pumpReadings()) {
        if (reading.pump == pump && reading.instrument) {
            last = reading.instrument;
        }
    }
    return last;
}

}  // namespace

const PumpReading* testReading(const Project& project, const Id& round, const Id& pump,
                               project::PumpPoint point) {
    const PumpReading* found = nullptr;
    for (const std::size_t index : project.pumpReadingsOf(round)) {
        const PumpReading& reading = project.pumpReadings()[index];
        if (reading.pump == pump && reading.point == point &&
            reading.status == project::ReadingStatus::Standing) {
            found = &reading;
        }
    }
    return found;
}

PumpReading testReadingToFill(const Project& project, const Id& round, const Id& pump,
                              project::PumpPoint point, balancing::WalkContext context) {
    if (const PumpReading* standing = testReading(project, round, pump, point)) {
        return *standing;
    }
    PumpReading reading;
    reading.id = context.ids.next();
    reading.round = round;
    reading.pump = pump;
    reading.point = point;
    reading.sequence = nextSequence(project, round);
    reading.time = context.now;
    reading.person = context.person;
    reading.instrument = lastGaugeOf(project, pump);
    return reading;
}

std::optional<quantity::Measured<quantity::RotationalSpeed>> lastRunningSpeed(const Project& project,
                                                                              const Id& pump) {
    const auto rounds = project.roundsByNumber();
    for (auto at = rounds.rbegin(); at != rounds.rend(); ++at) {
        const PumpReading* newest = nullptr;
        for (const std::size_t index : project.pumpReadingsOf(project.rounds()[*at].id)) {
            const PumpReading& reading = project.pumpReadings()[index];
            // A pump at rest has none, and one that is shut or throttled is not run so.
            const bool isAsItRuns = reading.point == project::PumpPoint::Running ||
                                    reading.point == project::PumpPoint::FullOpen ||
                                    reading.point == project::PumpPoint::Final;
            if (reading.pump == pump && reading.status == project::ReadingStatus::Standing && reading.speed &&
                isAsItRuns && (newest == nullptr || reading.sequence >= newest->sequence)) {
                newest = &reading;
            }
        }
        if (newest != nullptr) {
            return newest->speed;
        }
    }
    return project.pumps().at(pump).speed;
}

void addSpeeds(const Project& project, project::Edit& opening, const std::vector<ReadSpeed>& speeds,
               balancing::WalkContext context) {
    const auto made = std::find_if(
        opening.put.begin(), opening.put.end(),
        [](const project::AnyRecord& record) { return std::holds_alternative<project::Round>(record); });
    EXPECTS(made != opening.put.end());
    const Id round = std::get<project::Round>(*made).id;
    int sequence = 0;
    for (const ReadSpeed& read : speeds) {
        PumpReading reading =
            testReadingToFill(project, round, read.pump, project::PumpPoint::Running, context);
        reading.sequence = ++sequence;
        reading.speed = read.speed;
        opening.put.emplace_back(std::move(reading));
    }
}

project::Edit storeTestReading(const Project& project, PumpReading reading, bool isAdded,
                               const TestedValue& value, balancing::WalkContext context) {
    const project::Pump& pump = project.pumps().at(reading.pump);
    project::Edit edit;
    const std::string point(project::name(reading.point));
    edit.label = value.text.empty()
                     ? project::label(project::labels::kPumpTestEmptied, {pump.tag, point, value.field})
                     : project::label(project::labels::kPumpTest, {pump.tag, point, value.field, value.text});
    const PumpReading* standing = project.pumpReadings().find(reading.id);
    const bool isOpen = project.rounds().at(reading.round).state == project::RoundState::Open;
    if (standing != nullptr && !(isAdded && isOpen)) {
        PumpReading earlier = *standing;
        earlier.status = project::ReadingStatus::Superseded;
        edit.put.emplace_back(std::move(earlier));
        reading.id = context.ids.next();
        reading.supersedes = standing->id;
        reading.sequence = nextSequence(project, reading.round);
        reading.time = context.now;
        reading.person = context.person ? context.person : reading.person;
    }
    edit.put.emplace_back(std::move(reading));
    return edit;
}

}  // namespace ww::pump_room
