#include <algorithm>
#include <cmath>
#include <map>

#include "core/balancing/advice/advice.h"
#include "core/project/setting_text.h"
#include "core/report/detail/once.h"
#include "core/report/detail/pump_numbers.h"
#include "core/report/detail/pump_words.h"
#include "core/report/detail/sections.h"
#include "core/report/pump_sections.h"

namespace ww::report {

namespace {

using namespace detail;
using pump_room::WhatIf;
using pump_room::ZoneBranch;

std::string zoneSetting(const WhatIf& whatIf, const ZoneBranch& branch,
                        const std::optional<quantity::Setting>& setting) {
    return setting ? project::settingText(whatIf.project, whatIf.project.branches()[branch.branch], *setting)
                   : std::string();
}

/// New settings as they can be read on the scale, like those that Adjust advises.
class ReadableSettings {
  public:
    explicit ReadableSettings(const WhatIf& whatIf) : m_whatIf(whatIf) {}

    std::optional<quantity::Setting> of(const ZoneBranch& branch) {
        const project::Branch& record = m_whatIf.project.branches()[branch.branch];
        const auto* curve = m_whatIf.project.characteristicOf(record);
        if (!branch.setting || curve == nullptr || branch.isFullyOpen) {
            return branch.setting;
        }
        const auto [step, isNew] = m_steps.try_emplace(*record.valve);
        if (isNew) {
            step->second = balancing::readableStep(m_whatIf.project, record);
        }
        return std::clamp(step->second * std::round(*branch.setting / step->second), curve->lowest(),
                          curve->fullyOpen());
    }

  private:
    const WhatIf& m_whatIf;
    std::map<base::Id, quantity::Setting> m_steps;
};

Table branchTable(const WhatIf& whatIf) {
    const PumpNumbers numbers(whatIf.project);
    ReadableSettings settings(whatIf);
    Table table;
    table.title = say(kZoneTable);
    table.columns = {column(kTagColumn, 22),
                     column(kServesColumn, 44),
                     column(kFlowBeforeColumn, 30, Alignment::Right, numbers.flowUnit()),
                     column(kOfTargetColumn, 18, Alignment::Right, "%"),
                     column(kOfDesignColumn, 18, Alignment::Right, "%"),
                     column(kPresentColumn, 20, Alignment::Right),
                     column(kNewSettingColumn, 24, Alignment::Right),
                     column(kNewDpColumn, 20, Alignment::Right, numbers.pressureUnit())};
    for (const ZoneBranch& branch : whatIf.branches) {
        // A branch on the way has a row where its valve is to be set; else nothing is done there.
        if (!whatIf.project.tree().isTerminal(branch.branch) && !branch.setting) {
            continue;
        }
        const project::Branch& record = whatIf.project.branches()[branch.branch];
        const std::string setting = zoneSetting(whatIf, branch, settings.of(branch));
        table.rows.push_back({cell(record.tag), cell(record.serves), cell(numbers.flow(branch.flowBefore)),
                              cell(PumpNumbers::percent(branch.ofTargetBefore, 0)),
                              cell(PumpNumbers::percent(branch.ofDesignBefore, 0)),
                              cell(zoneSetting(whatIf, branch, branch.present)),
                              branch.isFullyOpen && !setting.empty()
                                  ? cell({say(kOpenSetting, {setting})}, "")
                                  : cell(setting),
                              cell(numbers.pressure(branch.dp))});
    }
    return table;
}

std::vector<Fact> factsOf(const WhatIf& whatIf) {
    const quantity::ShownUnits units = project::shownUnits(whatIf.project);
    std::vector<Fact> facts;
    facts.push_back({say(kZoneBasisLabel), say(whatIf.isFromLearned ? kZoneFromLearned : kZoneFromDesign)});
    std::string path;
    for (const std::size_t branch : whatIf.indexPath) {
        path += (path.empty() ? "" : " → ") + whatIf.project.branches()[branch].tag;
    }
    facts.push_back({say(kNewIndexLabel), path.empty() ? say(kNotKnown) : plain(path)});
    if (whatIf.headAvailable && whatIf.requiredHead) {
        std::vector<std::string> arguments{units.written(*whatIf.headAvailable),
                                           units.written(*whatIf.requiredHead)};
        if (whatIf.speedFraction) {
            arguments.push_back(PumpNumbers::percent(whatIf.speedFraction));
        }
        facts.push_back({say(kPumpCanLabel),
                         say(whatIf.speedFraction ? kPumpCanAt : kPumpCan, std::move(arguments)),
                         whatIf.canPump ? Mark::Pass : Mark::Fail});
    }
    if (whatIf.canMotor) {
        facts.push_back({say(kMotorCanLabel), say(*whatIf.canMotor ? kMotorCan : kMotorCannot),
                         *whatIf.canMotor ? Mark::Pass : Mark::Fail});
    }
    const bool canKeep = !whatIf.edit.isEmpty();
    facts.push_back(
        {say(kKeepLabel), say(canKeep ? kKeepPossible : kKeepImpossible), canKeep ? Mark::None : Mark::Fail});
    return facts;
}

}  // namespace

Section zoneSection(const WhatIf& whatIf) {
    Section section;
    section.title = say(kZoneTitle);
    section.statements = whatIf.changes;
    if (whatIf.faults.empty()) {
        section.opening = whatIf.curve.reasons;
        section.facts = factsOf(whatIf);
        section.tables.push_back(branchTable(whatIf));
    }
    addOnce(whatIf.faults, section.closing);
    addOnce(whatIf.findings, section.closing);
    return section;
}

}  // namespace ww::report
