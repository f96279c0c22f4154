// A job of risers and terminals whose true resistances the design does not know, read with noise in rounds.
#pragma once

#include <cmath>
#include <random>
#include <string>
#include <unordered_set>
#include <vector>

#include "core/balancing/advice/advice.h"
#include "core/balancing/prediction.h"
#include "core/hydraulics/solve.h"
#include "tests/support/field_job.h"

namespace ww::support {

/// Risers with a valve each, terminals along them, and a truth that the design does not know.
class HiddenJob {
  public:
    HiddenJob(int risers, int terminalsOfRiser) {
        const int total = risers * terminalsOfRiser;
        const base::Id small = m_job.valve(table(4));
        const base::Id large = m_job.valve(table(4.0 * terminalsOfRiser));
        m_job.pump("P-1", {{"0", "20"},
                           {written(0.6 * total, 3), "18.5"},
                           {written(1.2 * total, 3), "15"},
                           {written(2.4 * total, 3), "4"}});
        m_job.instrument("1", "");
        for (int r = 1; r <= risers; ++r) {
            const std::string riser = "R" + std::to_string(r);
            add(riser, "", "", large, 30.0 / risers, 2);
            for (int i = 1; i <= terminalsOfRiser; ++i) {
                add(riser + "-" + std::to_string(i), riser, written(uniform(0.6, 1.4), 2), small,
                    30.0 / terminalsOfRiser, uniform(10, 30));
            }
        }
    }

    const project::Project& project() const { return m_job.project(); }

    /// Reads everything in a state, with 1 % noise and two decimals.
    void readRound(project::RoundKind kind, const balancing::LoopState& state) {
        m_job.round(kind);
        m_stands = state;
        const auto predicted = balancing::predict(project(), state, m_truth);
        m_job.pumpRise(written(project().fluid().head(predicted.prediction->pumpRise).si() * noise(), 2));
        for (const std::size_t index : project().tree().walkingOrder()) {
            const project::Branch& branch = project().branches()[index];
            const auto drop = predicted.prediction->branches[index].valveDrop;
            const auto at = state.settings.find(branch.id);
            m_job.dp(branch.tag, written(drop->in(quantity::Unit::Kilopascal)*noise(), 2),
                     at == state.settings.end() ? "4.0" : written(at->second.si(), 2));
        }
    }

    /// Turns valve after valve to a state and reads each right after it was turned.
    void adjustRound(const balancing::LoopState& state) {
        m_job.round(project::RoundKind::Adjusting);
        const auto built = balancing::hydraulicModel(project(), m_stands, m_truth);
        hydraulics::Network network = built.model->network;
        hydraulics::Solution solution = hydraulics::solve(network);
        for (const std::size_t index : project().tree().walkingOrder()) {
            const project::Branch& branch = project().branches()[index];
            const quantity::Setting setting = state.settings.at(branch.id);
            const auto coefficient = project().characteristicOf(branch)->coefficient(setting);
            const hydraulics::LinkIndex link = *built.model->valveLink[index];
            const hydraulics::LinkChange change{
                link, hydraulics::Element::valve(coefficient, project().fluid().density())};
            network = *network.with(std::span(&change, 1)).network;
            hydraulics::SolveOptions warm;
            warm.start = &solution;
            solution = hydraulics::solve(network, warm);
            const auto drop = solution.drop(network, link);
            m_job.dp(branch.tag, written(drop->in(quantity::Unit::Kilopascal)*noise(), 2),
                     written(setting.si(), 2));
        }
        m_stands = state;
    }

    void markDoubtful(const std::unordered_set<base::Id>& readings) {
        for (const base::Id& reading : readings) {
            m_job.change(project().readings().at(reading),
                         [](project::Reading& record) { record.isDoubtful = true; });
        }
    }

  private:
    static std::string written(double number, int decimals) {
        return base::Decimal::fromNumber(number, decimals).text();
    }
    static std::vector<std::pair<std::string, std::string>> table(double kvOpen) {
        const double parts[] = {0.035, 0.09, 0.17, 0.28, 0.42, 0.59, 0.79, 1.0};
        std::vector<std::pair<std::string, std::string>> rows;
        for (int i = 0; i < 8; ++i) {
            rows.emplace_back(written(0.5 * (i + 1), 1), written(kvOpen * parts[i], 4));
        }
        return rows;
    }

    void add(const std::string& tag, const std::string& parent, const std::string& design, base::Id valve,
             double run_kPa, double circuit_kPa) {
        const base::Id id = m_job.branch(tag, parent, design, valve);
        m_job.change(project().branches().at(id), [&](project::Branch& branch) {
            branch.runLoss = m_job.pressure(written(run_kPa, 4));
            branch.circuitLoss = m_job.pressure(written(circuit_kPa, 4));
        });
        m_losses.push_back({id, run_kPa, circuit_kPa});
    }

  public:
    /// The truth, once all branches are there.
    void hide() {
        const auto design = project::designFlows(project());
        const project::BranchTree& tree = project().tree();
        std::vector<double> carried(design.size(), 0.0);
        const auto fill = [&](std::span<const std::size_t> members) {
            double sum = 0;
            for (auto at = members.rbegin(); at != members.rend(); ++at) {
                sum += design[*at].si();
                carried[*at] = sum;
            }
        };
        fill(tree.roots());
        for (std::size_t i = 0; i < design.size(); ++i) {
            fill(tree.children(i));
        }
        for (std::size_t i = 0; i < m_losses.size(); ++i) {
            balancing::BranchResistance made;
            made.run =
                quantity::Resistance::si(1e3 * m_losses[i].run_kPa * factor(0.3) / (carried[i] * carried[i]));
            made.circuit = quantity::Resistance::si(1e3 * m_losses[i].circuit_kPa * factor(0.3) /
                                                    (design[i].si() * design[i].si()));
            m_truth[m_losses[i].branch] = made;
        }
    }

  private:
    struct Loss {
        base::Id branch;
        double run_kPa;
        double circuit_kPa;
    };

    double uniform(double low, double high) {
        return low + (high - low) * static_cast<double>(m_random()) / 4294967296.0;
    }
    double normal() {
        double sum = -6;
        for (int i = 0; i < 12; ++i) {
            sum += uniform(0, 1);
        }
        return sum;
    }
    double factor(double sd) { return std::exp(sd * normal()); }
    double noise() { return std::exp(0.01 * normal()); }

    std::mt19937 m_random{20260302};
    FieldJob m_job;
    balancing::LoopState m_stands;
    std::vector<Loss> m_losses;
    balancing::Resistances m_truth;
};

}  // namespace ww::support
