#include "core/balancing/history.h"

#include <algorithm>

#include "core/balancing/detail/pump_duty.h"
#include "core/balancing/detail/round_readings.h"

namespace ww::balancing {

namespace {

using project::Branch;
using project::Project;
using project::PumpReading;
using project::Reading;
using project::ReadingStatus;

/// Read while the pump ran in the loop as it stands: not against a shut or throttled discharge, nor at rest.
bool counts(const PumpReading& reading) {
    return detail::isDuty(reading.point) && !reading.isDoubtful;
}

bool hasValue(const PumpReading& reading) {
    return reading.gaugeRise || (reading.suction && reading.discharge) || reading.flow || reading.speed;
}

/// Writes the job down event by event.
class Chronicle {
  public:
    Chronicle(const Project& project, std::span<const RoundOrder> orders) : m_project(project) {
        const auto& branches = project.branches();
        m_at.resize(branches.size());
        m_out.readings.reserve(project.readings().size());
        for (std::size_t i = 0; i < branches.size(); ++i) {
            const curve::ValveCharacteristic* curve = project.characteristicOf(branches[i]);
            if (curve == nullptr) {
                continue;
            }
            m_at[i] = curve->fullyOpen();
            if (branches[i].setting && isOnTable(*curve, *branches[i].setting)) {
                m_at[i] = Setting::si(branches[i].setting->value());
            }
        }
        m_out.settingsAtStart = m_at;
        m_out.orders.assign(orders.begin(), orders.end());
        for (std::size_t i = m_out.orders.size(); i < project.rounds().size(); ++i) {
            m_out.orders.push_back(usualOrder(project.rounds()[i]));
        }
        if (project.hasEarlierDesigns()) {
            for (std::size_t i = 0; i < branches.size(); ++i) {
                if (isLater(branches[i])) {
                    m_later.push_back(i);
                }
                const Branch* parent = branches[i].parent ? branches.find(*branches[i].parent) : nullptr;
                // What hangs on a branch that is shut off takes nothing either.
                if (isLater(branches[i]) && (parent == nullptr || !isLater(*parent))) {
                    m_out.notInLoopAtStart.push_back(branches[i].id);
                }
            }
        }
        for (std::size_t i = 0; i < project.rounds().size(); ++i) {
            if (isReadValveByValve(project, project.rounds()[i])) {
                m_out.orders[i] = RoundOrder::AsRead;
            }
        }
    }

    History write() {
        for (const std::size_t round : m_project.roundsByNumber()) {
            joinBefore(round);
            writeRound(round);
        }
        if (!m_project.rounds().empty()) {
            join(m_project.rounds().size() - 1, [](const Branch&) { return true; });
        }
        return std::move(m_out);
    }

  private:
    static bool isOnTable(const curve::ValveCharacteristic& curve, const base::Decimal& setting) {
        return curve.covers(Setting::si(setting.value())) || setting.value() == 0;
    }

    /// Whether a branch came after a round was closed.
    static bool isLater(const Branch& branch) {
        return std::any_of(branch.earlierDesigns.begin(), branch.earlierDesigns.end(),
                           [](const project::EarlierDesign& design) { return !design.isInLoop; });
    }
    /// Joins the later branches that belong to a round.
    void joinBefore(std::size_t round) {
        const base::Id& id = m_project.rounds()[round].id;
        join(round, [&](const Branch& branch) {
            return std::none_of(
                branch.earlierDesigns.begin(), branch.earlierDesigns.end(),
                [&](const project::EarlierDesign& design) { return !design.isInLoop && design.round == id; });
        });
    }
    template <class Belongs>
    void join(std::size_t round, Belongs belongs) {
        std::erase_if(m_later, [&](std::size_t branch) {
            if (!belongs(m_project.branches()[branch])) {
                return false;
            }
            Move move;
            move.round = round;
            move.branch = branch;
            move.from = m_at[branch];
            move.to = m_at[branch];
            move.isJoining = true;
            m_out.moves.push_back(std::move(move));
            return true;
        });
    }

    static bool hasMove(const Reading& reading) {
        return reading.setting && reading.purpose != project::ReadingPurpose::ShutValve;
    }

    /// Standing readings of a round in order, each with the index of its branch.
    std::vector<std::pair<const Reading*, std::size_t>> readingsOf(std::size_t round) const {
        std::vector<std::pair<const Reading*, std::size_t>> found;
        for (const std::size_t index : m_project.readingsOf(m_project.rounds()[round].id)) {
            const Reading& reading = m_project.readings()[index];
            const std::optional<std::size_t> branch = m_project.branches().findIndex(reading.branch);
            if (reading.status == ReadingStatus::Standing && branch) {
                found.emplace_back(&reading, *branch);
            }
        }
        return found;
    }

    std::vector<const PumpReading*> pumpReadingsOf(std::size_t round) const {
        std::vector<const PumpReading*> found;
        for (const std::size_t index : m_project.pumpReadingsOf(m_project.rounds()[round].id)) {
            const PumpReading& reading = m_project.pumpReadings()[index];
            if (reading.status == ReadingStatus::Standing && m_project.pumps().contains(reading.pump) &&
                hasValue(reading) && counts(reading)) {
                found.push_back(&reading);
            }
        }
        return found;
    }

    void writeRound(std::size_t round) {
        const auto readings = readingsOf(round);
        const std::vector<const PumpReading*> pumps = pumpReadingsOf(round);
        if (m_out.orders[round] == RoundOrder::SetBefore) {
            std::vector<bool> isNamed(m_at.size(), false);
            for (const auto& [reading, branch] : readings) {
                if (hasMove(*reading) && !isNamed[branch]) {
                    isNamed[branch] = true;
                    moveValve(round, *reading, branch);
                }
            }
            if (const auto first =
                    std::find_if(pumps.begin(), pumps.end(), [](const auto* p) { return p->speed; });
                first != pumps.end()) {
                moveSpeed(round, **first);
            }
        }
        const std::size_t movesBefore = m_out.moves.size();
        const std::size_t pumpReadingsBefore = m_out.pumpReadings.size();
        auto pump = pumps.begin();
        for (const auto& [reading, branch] : readings) {
            while (pump != pumps.end() &&
                   (!(*pump)->time || !reading->time || *(*pump)->time <= *reading->time)) {
                takePump(round, **pump++);
            }
            if (hasMove(*reading)) {
                moveValve(round, *reading, branch);
            }
            if (reading->dp || reading->flow) {
                const bool isShut = reading->purpose == project::ReadingPurpose::ShutValve;
                m_out.readings.push_back({reading->id, round, m_out.moves.size(), isShut, true});
            }
        }
        while (pump != pumps.end()) {
            takePump(round, **pump++);
        }
        if (m_out.moves.size() != movesBefore) {
            for (std::size_t i = pumpReadingsBefore; i < m_out.pumpReadings.size(); ++i) {
                const PumpReading& reading = m_project.pumpReadings().at(m_out.pumpReadings[i].reading);
                m_out.pumpReadings[i].isStateKnown = reading.time.has_value();
            }
        }
    }

    void moveValve(std::size_t round, const Reading& reading, std::size_t branch) {
        const curve::ValveCharacteristic* curve = m_project.characteristicOf(m_project.branches()[branch]);
        if (curve == nullptr || !isOnTable(*curve, *reading.setting)) {
            return;
        }
        const Setting to = Setting::si(reading.setting->value());
        if (m_at[branch] && detail::isSameSetting(*m_at[branch], to)) {
            return;
        }
        Move move;
        move.round = round;
        move.branch = branch;
        move.from = m_at[branch];
        move.to = to;
        move.reading = reading.id;
        m_at[branch] = to;
        m_out.moves.push_back(std::move(move));
    }

    void moveSpeed(std::size_t round, const PumpReading& reading) {
        const project::Pump& pump = m_project.pumps().at(reading.pump);
        if (!reading.speed || !pump.isRunning || !pump.speed || pump.speed->value.si() <= 0) {
            return;
        }
        const double to = reading.speed->value / pump.speed->value;
        if (!m_isSpeedKnown) {
            // The first speed that is read is the one that was there all the time.
            m_isSpeedKnown = true;
            m_speed = to;
            m_out.speedFractionAtStart = to;
            return;
        }
        if (to == m_speed) {
            return;
        }
        Move move;
        move.round = round;
        move.pump = m_project.pumps().indexOf(reading.pump);
        move.speedFractionFrom = m_speed;
        move.speedFractionTo = to;
        move.reading = reading.id;
        m_speed = to;
        m_out.moves.push_back(std::move(move));
    }

    void takePump(std::size_t round, const PumpReading& reading) {
        moveSpeed(round, reading);
        m_out.pumpReadings.push_back({reading.id, round, m_out.moves.size(), false, true});
    }

    const Project& m_project;
    std::vector<std::optional<Setting>> m_at;
    std::vector<std::size_t> m_later;  ///< branches that are not in the loop yet
    double m_speed = 1;
    bool m_isSpeedKnown = false;
    History m_out;
};

}  // namespace

RoundOrder usualOrder(const project::Round& round) {
    return round.kind == project::RoundKind::Adjusting ? RoundOrder::AsRead : RoundOrder::SetBefore;
}

bool isReadValveByValve(const Project& project, const project::Round& round) {
    const auto& indices = project.readingsOf(round.id);
    return std::any_of(indices.begin(), indices.end(), [&](std::size_t index) {
        const Reading& reading = project.readings()[index];
        return reading.status == ReadingStatus::Standing &&
               (reading.purpose == project::ReadingPurpose::Try ||
                reading.purpose == project::ReadingPurpose::Hold);
    });
}

History history(const Project& project, std::span<const RoundOrder> orders) {
    return Chronicle(project, orders).write();
}

void carryOut(const Project& project, const Move& move, LoopState& state) {
    if (!move.branch) {
        state.speedFraction = move.speedFractionTo;
        return;
    }
    const base::Id& branch = project.branches()[*move.branch].id;
    if (move.isJoining) {
        std::erase(state.closed, branch);
    }
    if (move.to) {
        state.settings[branch] = *move.to;
    }
}

LoopState stateAfter(const Project& project, const History& history, std::size_t moves) {
    EXPECTS(moves <= history.moves.size());
    LoopState state;
    state.speedFraction = history.speedFractionAtStart;
    state.settings.reserve(history.settingsAtStart.size());
    for (std::size_t i = 0; i < history.settingsAtStart.size(); ++i) {
        if (history.settingsAtStart[i]) {
            state.settings[project.branches()[i].id] = *history.settingsAtStart[i];
        }
    }
    state.closed = history.notInLoopAtStart;
    for (std::size_t i = 0; i < moves; ++i) {
        carryOut(project, history.moves[i], state);
    }
    return state;
}

bool isShutSetting(const Project& project, const Branch& branch, Setting setting) {
    const curve::ValveCharacteristic* curve = project.characteristicOf(branch);
    if (curve == nullptr) {
        return false;
    }
    constexpr double kNothing = 1e-3;
    return setting.si() <= 0 || (curve->covers(setting) && curve->coefficient(setting).si() <
                                                               kNothing * curve->coefficientFullyOpen().si());
}

}  // namespace ww::balancing
