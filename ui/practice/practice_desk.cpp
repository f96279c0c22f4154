#include "ui/practice/practice_desk.h"

#include <algorithm>

#include "core/project/edit_label.h"
#include "core/project/setting_text.h"
#include "core/pump_room/test_entry.h"
#include "core/quantity/measured.h"

namespace ww::ui {

bool PracticeDesk::isPractice() const {
    return m_bridge.isOpen() && !m_bridge.project().job().practice.empty();
}

base::Result<const practice::PracticeJob*> PracticeDesk::job() {
    if (!m_bridge.isOpen()) {
        return base::Fault{&kNoWorkbookOpen, {}, {}};
    }
    const std::string& text = m_bridge.project().job().practice;
    if (text.empty()) {
        return base::Fault{&kNotPractice, {}, {}};
    }
    if (m_job == nullptr || m_text != text) {
        const auto key = practice::practiceKey(text);
        if (!key) {
            return key.fault();
        }
        m_job = std::make_unique<practice::PracticeJob>(*key);
        m_text = text;
    }
    return m_job.get();
}

base::Fault PracticeDesk::noRound() const {
    const project::Round* last = m_bridge.project().lastRound();
    return last == nullptr ? base::Fault{&kNoRoundOpen, {}, {}}
                           : base::Fault{&kNoRoundForMeter, {}, {std::to_string(last->number)}};
}

base::Result<std::optional<base::Fault>> PracticeDesk::takeDp(const base::Id& branch, bool isRepeat) {
    const auto practice = job();
    if (!practice) {
        return practice.fault();
    }
    const project::Round* round = m_bridge.openRoundOrNull();
    if (round == nullptr) {
        return noRound();
    }
    const auto answer = (*practice)->dp(m_bridge.project(), round->id, branch);
    if (!answer) {
        return answer.fault();
    }
    std::optional<base::Fault> toTell;
    if (answer->settingSeen) {
        const project::Project& project = m_bridge.project();
        const std::string seen =
            project::settingText(project, project.branches().at(branch), *answer->settingSeen);
        const base::Outcome noted = m_bridge.storeSetting(branch, QString::fromStdString(seen));
        if (!noted) {
            return noted.fault();
        }
        toTell = base::Fault{&kHandleSeen, m_bridge.project().branches().at(branch).tag, {seen}};
    }
    const QString shown = QString::fromStdString(answer->dp.text());
    const base::Outcome stored =
        isRepeat ? m_bridge.storeRepeat(branch, shown) : m_bridge.storeDp(branch, shown);
    if (!stored) {
        return stored.fault();
    }
    return toTell;
}

base::Result<QString> PracticeDesk::tryDp(const base::Id& branch, std::optional<quantity::Setting> handle,
                                          bool isShut) {
    const auto practice = job();
    if (!practice) {
        return practice.fault();
    }
    const project::Project& project = m_bridge.project();
    const project::Round* round = project.lastRound();
    if (round == nullptr) {
        return base::Fault{&kNoRoundOpen, {}, {}};
    }
    const auto answer = isShut   ? (*practice)->closedDp(project, round->id, branch)
                        : handle ? (*practice)->dpAt(project, branch, *handle)
                                 : (*practice)->dp(project, round->id, branch);
    if (!answer) {
        return answer.fault();
    }
    return QString::fromStdString(answer->dp.text());
}

base::Outcome PracticeDesk::takeGauge(const practice::PracticeJob& job, const project::Round& round,
                                      const project::Pump& pump) {
    const project::Project& project = m_bridge.project();
    const auto rise = job.pumpRise(project, round.id, pump.id);
    if (!rise) {
        return rise.fault();
    }
    // The point as it runs: what else was read of it, such as a speed, stays.
    project::PumpReading reading = pump_room::testReadingToFill(
        project, round.id, pump.id, project::PumpPoint::Running, m_bridge.context());
    const bool isAdded = !reading.gaugeRise && !reading.suction && !reading.discharge;
    reading.gaugeRise = *rise;
    reading.suction.reset();
    reading.discharge.reset();
    if (const base::Id gauge = job.gauge(); project.instruments().contains(gauge)) {
        reading.instrument = gauge;
    }
    // A gauge without a speed says nothing of the pump: the building shows both.
    if (!reading.speed) {
        reading.speed = pump_room::lastRunningSpeed(project, pump.id);
    }
    const std::string speed = reading.speed ? reading.speed->text() : "–";
    project::Edit edit =
        pump_room::storeTestReading(project, std::move(reading), isAdded, {}, m_bridge.context());
    edit.label = project::label(project::labels::kGaugeRise, {rise->text(), pump.tag});
    const base::Outcome done = m_bridge.apply(edit);
    if (done) {
        emit m_bridge.messageRaised(base::Fault{&kGaugesRead, {}, {pump.tag, rise->text(), speed}});
    }
    return done;
}

base::Outcome PracticeDesk::takeGauges() {
    const auto practice = job();
    if (!practice) {
        return practice.fault();
    }
    const project::Round* open = m_bridge.openRoundOrNull();
    if (open == nullptr) {
        return noRound();
    }
    const project::Round round = *open;
    std::vector<project::Pump> pumps;
    std::copy_if(m_bridge.project().pumps().begin(), m_bridge.project().pumps().end(),
                 std::back_inserter(pumps), [](const project::Pump& pump) { return pump.isRunning; });
    for (const project::Pump& pump : pumps) {
        const base::Outcome done = takeGauge(**practice, round, pump);
        if (!done) {
            return done;
        }
    }
    return base::Done{};
}

}  // namespace ww::ui
