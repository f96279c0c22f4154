// A job whose readings come from a solved loop: the design is wrong by seeded factors, and the true loop
// answers what would be read at any settings. Not for real buildings.
#pragma once

#include <cmath>
#include <random>
#include <string>

#include "core/balancing/prediction.h"
#include "core/project/edit.h"
#include "tests/support/field_job.h"

namespace ww::support {

/// Terminals T-01, T-02 ... on one main, a pump, one valve of 0 to 4 turns, a meter and a person; a closed
/// survey with every valve fully open. Units SI, dp in kPa. At another speed than the rated one the pump has
/// a drive, and the survey reads its speed.
class SolvedJob {
  public:
    explicit SolvedJob(int terminals, unsigned seed = 7, double speedFraction = 1)
        : m_speedFraction(speedFraction) {
        std::mt19937 random(seed);
        const auto within = [&](double low, double high) {
            return low + (high - low) * static_cast<double>(random()) / 4294967296.0;
        };
        const auto text = [](double number) { return base::Decimal::fromNumber(number, 2).text(); };
        const base::Id valve = m_job.valve(
            {{"0", "0"}, {"0.5", "0.35"}, {"1", "0.8"}, {"2", "2.1"}, {"3", "3.9"}, {"4", "5.8"}});
        const double total = 1.5 * terminals;
        m_job.pump("P-1", {{"0", "14"},
                           {text(0.5 * total), "13"},
                           {text(total), "11"},
                           {text(1.5 * total), "7"},
                           {text(2.0 * total), "1"}});
        for (int i = 1; i <= terminals; ++i) {
            const std::string tag = tagOf(i);
            m_job.branch(tag, "", text(within(1.0, 2.0)), valve);
            m_job.change(m_job.project().branches().at(m_job.idOf(tag)), [&](project::Branch& branch) {
                branch.runLoss = m_job.pressure(text(within(10, 40) / terminals));
                branch.circuitLoss = m_job.pressure(text(within(10, 30)));
            });
        }
        m_job.instrument("1", "0.05");
        project::Person person;
        person.id = m_job.ids().next();
        person.name = "A. Fields";
        m_job.project().put(person);
        for (const project::Branch& branch : m_job.project().branches()) {
            balancing::BranchResistance made;
            const double design = branch.designFlow->value.si();
            made.circuit = quantity::Resistance::si(branch.circuitLoss->value.si() / (design * design) *
                                                    std::exp(within(-0.3, 0.3)));
            m_truth[branch.id] = made;
        }
        m_job.round(project::RoundKind::Survey);
        for (int i = 1; i <= terminals; ++i) {
            m_job.dp(tagOf(i), readAt({}, tagOf(i)), "4");
        }
        if (speedFraction != 1) {
            readSpeed();
        }
    }

    static std::string tagOf(int number) { return (number < 10 ? "T-0" : "T-") + std::to_string(number); }

    /// The dp to be read at a valve, to 0.1 kPa, with all valves fully open but those given by tag.
    std::string readAt(const std::vector<std::pair<std::string, double>>& settings,
                       const std::string& tag) const {
        const project::Project& project = m_job.project();
        balancing::LoopState state;
        state.speedFraction = m_speedFraction;
        for (const project::Branch& branch : project.branches()) {
            state.settings[branch.id] = quantity::Setting::si(4);
        }
        for (const auto& [name, setting] : settings) {
            state.settings[m_job.idOf(name)] = quantity::Setting::si(setting);
        }
        const auto result = balancing::predict(project, state, m_truth);
        const auto& branch = result.prediction->branches[project.branches().indexOf(m_job.idOf(tag))];
        return base::Decimal::fromNumber(branch.valveDrop->in(quantity::Unit::Kilopascal), 1).text();
    }

    const project::Project& project() const { return m_job.project(); }
    /// The content of a new workbook.
    project::Edit content() const {
        project::Edit edit;
        edit.label = "new job";
        edit.canUndo = false;
        const project::Project& made = m_job.project();
        edit.put.emplace_back(made.job());
        const auto add = [&](const auto& table) {
            edit.put.insert(edit.put.end(), table.begin(), table.end());
        };
        add(made.valves());
        add(made.branches());
        add(made.pumps());
        add(made.instruments());
        add(made.people());
        add(made.rounds());
        add(made.readings());
        add(made.pumpReadings());
        return edit;
    }

  private:
    void readSpeed() {
        const project::Pump& pump = m_job.project().pumps()[0];
        m_job.change(pump, [](project::Pump& driven) { driven.hasDrive = true; });
        project::PumpReading reading;
        reading.id = m_job.ids().next();
        reading.round = m_job.newestRound();
        reading.pump = pump.id;
        reading.sequence = 1;
        reading.speed = quantity::measured<quantity::RotationalSpeed>(
            base::Decimal::fromNumber(m_speedFraction * pump.speed->digits.value(), 0), pump.speed->unit);
        m_job.project().put(reading);
    }

    FieldJob m_job;
    double m_speedFraction = 1;
    balancing::Resistances m_truth;
};

}  // namespace ww::support
