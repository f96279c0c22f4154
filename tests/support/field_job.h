// Builds a job in memory for tests: valves, branches, rounds and readings by tag, with counted ids.
// Not for programs, and not for files: nothing is checked as an import would.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/project/project.h"
#include "tests/support/counting_ids.h"

namespace ww::support {

/// A job that grows by one call a record; project() is what has been built so far.
class FieldJob {
  public:
    using Unit = quantity::Unit;

    /// Water at 60 F (US) or 20 C (SI); tolerance -10 to +10 % of design, matching band 5 %.
    explicit FieldJob(project::UnitSystem units = project::UnitSystem::SI) {
        project::Job job;
        job.id = m_ids.next();
        job.name = "Test job";
        job.units = units;
        const bool isUS = units == project::UnitSystem::US;
        job.concentration = quantity::measured<quantity::Ratio>(decimal("0"), Unit::Percent);
        job.temperature = quantity::measured<quantity::Temperature>(decimal(isUS ? "60" : "20"),
                                                                    isUS ? Unit::Fahrenheit : Unit::Celsius);
        job.toleranceLow = quantity::measured<quantity::Ratio>(decimal("-10"), Unit::Percent);
        job.toleranceHigh = quantity::measured<quantity::Ratio>(decimal("10"), Unit::Percent);
        job.matchingBand = quantity::measured<quantity::Ratio>(decimal("5"), Unit::Percent);
        m_flowUnit = isUS ? Unit::GallonPerMinute : Unit::CubicMetrePerHour;
        m_dpUnit = isUS ? Unit::Psi : Unit::Kilopascal;
        m_coefficientUnit = isUS ? Unit::Cv : Unit::Kv;
        m_project.put(std::move(job));
    }

    const project::Project& project() const { return m_project; }
    project::Project& project() { return m_project; }
    CountingIds& ids() { return m_ids; }

    static base::Decimal decimal(std::string_view text) { return *base::Decimal::parse(text); }
    quantity::Measured<quantity::PressureDifference> pressure(std::string_view text) const {
        return quantity::measuredDifference(decimal(text), m_dpUnit, m_project.fluid().density());
    }
    quantity::Measured<quantity::VolumeFlow> flowOf(std::string_view text) const {
        return quantity::measured<quantity::VolumeFlow>(decimal(text), m_flowUnit);
    }

    /// A valve model with its table, settings and coefficients as text; Cv in a US job, else Kv.
    base::Id valve(const std::vector<std::pair<std::string, std::string>>& rows) {
        project::ValveModel made;
        made.id = m_ids.next();
        made.model = "V-" + std::to_string(m_project.valves().size() + 1);
        made.coefficientUnit = m_coefficientUnit;
        for (const auto& [setting, coefficient] : rows) {
            made.rows.push_back({decimal(setting), decimal(coefficient)});
        }
        m_project.put(made);
        return made.id;
    }
    /// A branch below `parent` (empty: at the pump), placed after those before it. Empty design: none of its
    /// own.
    base::Id branch(std::string_view tag, std::string_view parent, std::string_view design,
                    std::optional<base::Id> valve = {},
                    project::BranchKind kind = project::BranchKind::Manual) {
        project::Branch made;
        made.id = m_ids.next();
        made.tag = tag;
        made.position = static_cast<int>(m_project.branches().size()) + 1;
        made.kind = kind;
        made.valve = valve;
        if (!parent.empty()) {
            made.parent = idOf(parent);
        }
        if (!design.empty()) {
            made.designFlow = flowOf(design);
        }
        m_project.put(made);
        m_idByTag[made.tag] = made.id;
        return made.id;
    }
    base::Id round(project::RoundKind kind, project::RoundState state = project::RoundState::Closed) {
        project::Round made;
        made.id = m_ids.next();
        made.number = static_cast<int>(m_project.rounds().size()) + 1;
        made.kind = kind;
        made.state = state;
        m_project.put(made);
        m_round = made.id;
        return made.id;
    }
    base::Id instrument(std::string_view accuracyPercent, std::string_view floor) {
        project::Instrument made;
        made.id = m_ids.next();
        made.tag = "M-" + std::to_string(m_project.instruments().size() + 1);
        if (!accuracyPercent.empty()) {
            made.accuracy = quantity::measured<quantity::Ratio>(decimal(accuracyPercent), Unit::Percent);
        }
        if (!floor.empty()) {
            made.accuracyFloor = pressure(floor);
        }
        m_project.put(made);
        m_instrument = made.id;
        return made.id;
    }
    /// A dp in the newest round at a branch; an empty setting: as before. One minute after the reading
    /// before.
    base::Id dp(std::string_view tag, std::string_view digits, std::string_view setting = "") {
        project::Reading made = reading(tag, setting);
        made.dp = pressure(digits);
        m_project.put(made);
        return made.id;
    }
    base::Id flow(std::string_view tag, std::string_view digits, std::string_view setting = "") {
        project::Reading made = reading(tag, setting);
        made.flow = flowOf(digits);
        m_project.put(made);
        return made.id;
    }
    base::Id settingOnly(std::string_view tag, std::string_view setting) {
        project::Reading made = reading(tag, setting);
        m_project.put(made);
        return made.id;
    }
    base::Id cannotBeRead(std::string_view tag, std::string reason) {
        project::Reading made = reading(tag, "");
        made.cannotBeRead = true;
        made.reason = std::move(reason);
        m_project.put(made);
        return made.id;
    }
    /// A pump with rated speed 1750 rpm and this table of flow and head.
    base::Id pump(std::string_view tag, const std::vector<std::pair<std::string, std::string>>& rows) {
        project::Pump made;
        made.id = m_ids.next();
        made.tag = tag;
        made.speed =
            quantity::measured<quantity::RotationalSpeed>(decimal("1750"), Unit::RevolutionPerMinute);
        for (const auto& [flow, head] : rows) {
            project::PumpTableRow row;
            row.flow = flowOf(flow);
            row.head = quantity::measuredHead(decimal(head), headUnit(), m_project.fluid().density());
            made.rows.push_back(std::move(row));
        }
        m_project.put(made);
        m_pump = made.id;
        return made.id;
    }
    /// The newest pump in the newest round: gauge rise as a head (ft or m); an empty speed: not read.
    base::Id pumpRise(std::string_view head, std::string_view speed = "") {
        project::PumpReading made;
        made.id = m_ids.next();
        made.round = m_round;
        made.pump = m_pump;
        made.sequence = ++m_sequence;
        made.gaugeRise = quantity::measuredDifference(decimal(head), headUnit(), m_project.fluid().density());
        if (!speed.empty()) {
            made.speed =
                quantity::measured<quantity::RotationalSpeed>(decimal(speed), Unit::RevolutionPerMinute);
        }
        m_project.put(made);
        return made.id;
    }

    base::Id idOf(std::string_view tag) const { return m_idByTag.at(std::string(tag)); }
    std::size_t indexOf(std::string_view tag) const { return m_project.branches().indexOf(idOf(tag)); }
    base::Id newestRound() const { return m_round; }
    /// Changes a record that is there: change(record) on a copy that is put back.
    template <class Record, class Change>
    void change(const Record& record, Change change) {
        Record copy = record;
        change(copy);
        m_project.put(std::move(copy));
    }

  private:
    Unit headUnit() const {
        return m_project.job().units == project::UnitSystem::US ? Unit::Foot : Unit::Metre;
    }
    project::Reading reading(std::string_view tag, std::string_view setting) {
        project::Reading made;
        made.id = m_ids.next();
        made.round = m_round;
        made.branch = idOf(tag);
        made.sequence = ++m_sequence;
        made.time =
            base::Instant{base::Instant::fromText("2026-03-02T08:00:00")->seconds + 60 * m_sequence, {}};
        made.instrument = m_instrument;
        if (!setting.empty()) {
            made.setting = decimal(setting);
        }
        return made;
    }

    CountingIds m_ids;
    std::unordered_map<std::string, base::Id> m_idByTag;
    project::Project m_project;
    Unit m_flowUnit{};
    Unit m_dpUnit{};
    Unit m_coefficientUnit{};
    base::Id m_round;
    base::Id m_pump;
    std::optional<base::Id> m_instrument;
    int m_sequence = 0;
};

}  // namespace ww::support
