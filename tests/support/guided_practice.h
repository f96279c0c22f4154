// A technician who works a practice building by the program's advice: surveys, sets what is advised, reads
// again. Not for the classical method (core/practice/classical.h).
#pragma once

#include <string>
#include <vector>

#include "core/balancing/advice/advice.h"
#include "core/balancing/learning/learned_loop.h"
#include "core/practice/outcome.h"
#include "tests/support/counting_ids.h"

namespace ww::support {

/// Writes readings as records straight away: the same that the walk's edits would leave.
class GuidedPractice {
  public:
    explicit GuidedPractice(const practice::Building& building)
        : m_building(building), m_project(building.design()) {}

    const project::Project& project() const { return m_project; }
    const practice::Building& building() const { return m_building; }
    /// Settings as noted; the newest.
    const balancing::LoopState& noted() const { return m_noted; }
    int rereads() const { return m_rereads; }

    /// Opens the next round, notes the settings, reads every valve and the pump.
    void walk(project::RoundKind kind) {
        openRound(kind);
        if (m_round.number > 1) {
            for (const project::Branch& branch : m_project.branches()) {
                if (const auto found = m_noted.settings.find(branch.id); found != m_noted.settings.end()) {
                    project::Reading set = blank(branch.id);
                    set.setting = onWheel(found->second);
                    m_project.put(set);
                }
            }
        }
        practice::TrueState real = m_building.stateAt(m_noted, moment(0));
        for (std::size_t i = 0; i < m_project.branches().size(); ++i) {
            if (m_project.characteristicOf(m_project.branches()[i]) == nullptr) {
                continue;
            }
            if (clogs()) {
                real = m_building.stateAt(m_noted, moment(i));
            }
            readAt(i, m_building.readDp(real, m_noted, i, moment(i)));
        }
        project::PumpReading pump;
        pump.id = m_ids.next();
        pump.round = m_round.id;
        pump.pump = m_project.pumps()[0].id;
        pump.sequence = ++m_sequence;
        pump.time = now();
        pump.gaugeRise = m_building.readPumpRise(real, moment(0));
        pump.instrument = m_project.instruments()[1].id;
        if (m_noted.speedFraction != 1) {
            const double speed_rpm =
                m_project.pumps()[0].speed->value.in(quantity::Unit::RevolutionPerMinute);
            pump.speed = quantity::measured<quantity::RotationalSpeed>(
                base::Decimal::fromNumber(m_noted.speedFraction * speed_rpm, 1),
                quantity::Unit::RevolutionPerMinute);
        }
        m_project.put(pump);
    }

    /// Reads a valve once more in the round at hand; the earlier reading is superseded. A handle that is seen
    /// to stand elsewhere is noted where it stands, from the start of the round.
    void reread(std::size_t branch) {
        ++m_rereads;
        const practice::DpAnswer answer = m_building.readDp(m_noted, branch, moment(branch));
        const base::Id& id = m_project.branches()[branch].id;
        for (const std::size_t index : std::vector<std::size_t>(m_project.readingsOf(m_round.id))) {
            project::Reading earlier = m_project.readings()[index];
            if (earlier.branch == id && earlier.status == project::ReadingStatus::Standing) {
                earlier.status = project::ReadingStatus::Superseded;
                m_project.put(earlier);
            }
        }
        if (answer.settingSeen) {
            m_noted.settings[id] = *answer.settingSeen;
        }
        readAt(branch, answer);
    }

    /// Reads the valve shut for a moment, and notes it back where it stood.
    void readClosed(std::size_t branch) {
        const base::Id& id = m_project.branches()[branch].id;
        const auto* characteristic = m_project.characteristicOf(m_project.branches()[branch]);
        balancing::LoopState state = m_noted;
        state.closed.push_back(id);
        project::Reading reading = blank(id);
        reading.setting = onWheel(characteristic->lowest());
        reading.dp = m_building.readDp(state, branch, moment(branch)).dp;
        m_project.put(reading);
        ++m_taken;
        ++m_looks[branch];
        project::Reading back = blank(id);
        back.setting = onWheel(settingOf(branch));
        m_project.put(back);
    }

    /// A reading beside the one that stands: their mean counts.
    void repeat(std::size_t branch) {
        project::Reading reading = blank(m_project.branches()[branch].id);
        reading.setting = onWheel(settingOf(branch));
        reading.dp = m_building.readDp(m_noted, branch, moment(branch)).dp;
        reading.isRepeat = true;
        m_project.put(reading);
        ++m_taken;
        ++m_looks[branch];
    }

    /// Leaves readings out of the learning, as marked by hand.
    void markDoubtful(const std::vector<base::Id>& readings) {
        for (const base::Id& id : readings) {
            if (const project::Reading* found = m_project.readings().find(id)) {
                project::Reading marked = *found;
                marked.isDoubtful = true;
                marked.reason = "does not fit the others";
                m_project.put(marked);
            }
        }
    }

    balancing::LearnedLoop learn(const balancing::LearnLoopOptions& options = {}) const {
        return balancing::learn(m_project, options);
    }
    balancing::Advice advise(const balancing::LearnedLoop& learned, bool findHelpful = false) const {
        balancing::AdviceOptions options;
        options.step = m_building.plan().settingStep;
        options.findHelpfulReading = findHelpful;
        return balancing::advise(m_project, learned, options);
    }
    /// Turns every valve to its advised setting; gives how many were moved.
    int set(const balancing::Advice& advice) {
        int moves = 0;
        for (const balancing::SettingAdvice& one : advice.settings) {
            const quantity::Setting to = m_building.onScale(one.setting, one.branch);
            moves += to == settingOf(one.branch) ? 0 : 1;
            m_noted.settings[m_project.branches()[one.branch].id] = to;
        }
        return moves;
    }
    /// Turns one valve, from the next round on.
    void turn(std::size_t branch, quantity::Setting setting) {
        m_noted.settings[m_project.branches()[branch].id] = setting;
    }
    /// Sets the pump's speed, from the next round on.
    void setSpeed(quantity::Ratio ofRated) { m_noted.speedFraction = ofRated.si(); }
    practice::Outcome outcome() const { return practice::outcomeOf(m_building, m_noted, m_taken); }

  private:
    bool clogs() const {
        for (const practice::PlantedFault& fault : m_building.truth().faults) {
            if (fault.kind == practice::FaultKind::CloggingStrainer) {
                return true;
            }
        }
        return false;
    }
    base::Instant now() const {
        base::Instant instant;
        instant.seconds = 1'790'000'000 + 60 * m_minute;
        return instant;
    }
    quantity::Setting settingOf(std::size_t branch) const {
        const project::Branch& record = m_project.branches()[branch];
        const auto found = m_noted.settings.find(record.id);
        return found == m_noted.settings.end() ? m_project.characteristicOf(record)->fullyOpen()
                                               : found->second;
    }
    static base::Decimal onWheel(quantity::Setting setting) {
        return base::Decimal::fromNumber(setting.si(), 2);
    }
    void openRound(project::RoundKind kind) {
        m_round = {};
        m_round.id = m_ids.next();
        m_round.number = static_cast<int>(m_project.rounds().size()) + 1;
        m_round.kind = kind;
        m_round.opened = now();
        m_project.put(m_round);
        m_sequence = 0;
        m_looks.assign(m_project.branches().size(), 0);
    }
    practice::ReadingMoment moment(std::size_t branch) const {
        practice::ReadingMoment moment;
        moment.round = m_round.number;
        moment.look = m_looks[branch] + 1;
        moment.takenBefore = m_taken;
        for (const practice::PlantedFault& fault : m_building.truth().faults) {
            if (fault.kind == practice::FaultKind::SettingMisread && fault.round == m_round.number) {
                moment.isHandleSeen = m_looks[fault.branch] >= 2;
            }
        }
        return moment;
    }
    project::Reading blank(const base::Id& branch) {
        project::Reading reading;
        reading.id = m_ids.next();
        reading.round = m_round.id;
        reading.branch = branch;
        reading.sequence = ++m_sequence;
        ++m_minute;
        reading.time = now();
        reading.instrument = m_project.instruments()[0].id;
        return reading;
    }
    void readAt(std::size_t branch, const practice::DpAnswer& answer) {
        project::Reading reading = blank(m_project.branches()[branch].id);
        reading.setting = onWheel(settingOf(branch));
        reading.dp = answer.dp;
        m_project.put(reading);
        ++m_taken;
        ++m_looks[branch];
    }

    const practice::Building& m_building;
    project::Project m_project;
    balancing::LoopState m_noted;
    project::Round m_round;
    CountingIds m_ids;
    int m_sequence = 0;
    int m_taken = 0;
    int m_rereads = 0;
    std::int64_t m_minute = 0;
    std::vector<int> m_looks;
};

}  // namespace ww::support
