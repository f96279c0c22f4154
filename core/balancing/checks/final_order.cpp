#include "core/balancing/checks/support.h"
#include "core/project/clock_offset.h"

namespace ww::balancing::checks {

namespace {

/// The last change in the round: a valve, or the speed of a pump.
struct LastChange {
    std::string tag;
    int sequence = 0;  ///< among the readings of branches; 0 for a pump
    std::optional<base::Instant> time;
};

std::optional<LastChange> lastValveMove(const CheckContext& context) {
    std::optional<LastChange> last;
    const auto moves = movesInRound(context);
    for (std::size_t i = 0; i < moves.size(); ++i) {
        if (moves[i] && (!last || moves[i]->sequence > last->sequence)) {
            last = LastChange{context.project.branches()[i].tag, moves[i]->sequence, moves[i]->time};
        }
    }
    return last;
}

/// A speed that differs from the one read before in the same round.
std::optional<LastChange> lastSpeedChange(const CheckContext& context) {
    std::optional<LastChange> last;
    std::vector<std::optional<double>> speeds(context.project.pumps().size());
    for (const std::size_t index : context.project.pumpReadingsOf(context.round.id)) {
        const project::PumpReading& reading = context.project.pumpReadings()[index];
        const bool counts = reading.speed && reading.time &&
                            reading.status == project::ReadingStatus::Standing &&
                            context.project.pumps().contains(reading.pump);
        if (!counts) {
            continue;
        }
        auto& before = speeds[context.project.pumps().indexOf(reading.pump)];
        if (before && *before != reading.speed->value.si()) {
            last = LastChange{context.project.pumps().at(reading.pump).tag, 0, reading.time};
        }
        before = reading.speed->value.si();
    }
    return last;
}

/// When a branch was read, where that is told by a clock that nobody found wrong.
std::optional<base::Instant> sureTime(const CheckContext& context, const detail::BranchReadings& readings) {
    const bool isSure = readings.hasValue() && readings.counting->time &&
                        project::uncertainTime(context.project, *readings.counting->time) == nullptr;
    return isSure ? readings.counting->time : std::nullopt;
}

void afterEarlierRound(const CheckContext& context, std::vector<Finding>& found) {
    std::optional<base::Instant> end;
    for (const detail::BranchReadings& readings : context.before->readings) {
        const auto time = sureTime(context, readings);
        end = time && (!end || *time > *end) ? time : end;
    }
    for (std::size_t i = 0; end && i < context.now.readings.size(); ++i) {
        const auto time = sureTime(context, context.now.readings[i]);
        if (time && *time < *end) {
            found.push_back(
                aboutBranch(context, i, kTimeBeforeEarlierRound,
                            {time->text(), std::to_string(context.before->round->number), end->text()},
                            Severity::Warning, true));
        }
    }
}

}  // namespace

/// Final readings come after every change; and no round is read before the round before it.
void finalOrder(const CheckContext& context, std::vector<Finding>& found) {
    if (context.before != nullptr) {
        afterEarlierRound(context, found);
    }
    if (context.round.kind != project::RoundKind::Final) {
        return;
    }
    const auto valve = lastValveMove(context);
    const auto speed = lastSpeedChange(context);
    for (std::size_t i = 0; i < context.now.readings.size(); ++i) {
        const detail::BranchReadings& readings = context.now.readings[i];
        if (!readings.hasValue()) {
            continue;
        }
        const project::Reading& reading = *readings.counting;
        const bool isBeforeValve = valve && reading.sequence < valve->sequence;
        const bool isBeforeSpeed = speed && reading.time && *reading.time < *speed->time;
        if (isBeforeValve || isBeforeSpeed) {
            found.push_back(aboutBranch(context, i,
                                        isBeforeValve ? kReadBeforeLastMove : kReadBeforeLastSpeed,
                                        {isBeforeValve ? valve->tag : speed->tag}, Severity::Error, true));
        }
    }
}

}  // namespace ww::balancing::checks
