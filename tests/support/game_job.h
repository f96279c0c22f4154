// A job from a file of tests/data/games: a loop with hidden true resistances, seeded readings of several
// rounds and another program's estimates. Not a reader of anything else.
#pragma once

#include <fstream>
#include <nlohmann/json.hpp>
#include <string>

#include "core/balancing/prediction.h"
#include "tests/support/field_job.h"

namespace ww::support {

/// The job of one file, and its truth.
class GameJob {
  public:
    explicit GameJob(const std::string& name) {
        std::ifstream file(std::string(WW_SOURCE_DIR) + "/tests/data/games/" + name + ".json");
        m_game = nlohmann::json::parse(file);
        m_cases = m_game.at("known").at("path_matrix_rows").get<std::vector<std::vector<std::size_t>>>();
        addPump();
        addBranches();
        addInstruments();
    }

    const nlohmann::json& game() const { return m_game; }
    FieldJob& job() { return m_job; }
    const project::Project& project() const { return m_job.project(); }
    std::size_t terminalCount() const { return m_cases.size(); }
    std::string tag(std::size_t terminal) const {
        return m_game.at("known").at("terminals").at(terminal).get<std::string>();
    }

    /// A round from the readings of that name, all valves set before it; its settings as typed digits.
    void addRound(const std::string& name, project::RoundKind kind) {
        m_job.round(kind);
        const auto& round = m_game.at("readings").at(name);
        addHead(round.at("head").get<double>());
        for (std::size_t i = 0; i < terminalCount(); ++i) {
            addDp(i, round.at("dp").at(i).get<double>(), round.at("pos").at(i).get<double>());
        }
    }
    void addDp(std::size_t terminal, double dp_kPa, double turns) {
        m_job.dp(tag(terminal), base::Decimal::fromNumber(dp_kPa, 2).text(),
                 base::Decimal::fromNumber(turns, 2).text());
    }

    /// The loop as it really is.
    balancing::Resistances truth() const {
        balancing::Resistances out;
        const auto& hidden = m_game.at("hidden");
        const auto resistance = [](double number) {
            // kPa/(m3/h)^2
            return quantity::Resistance::si(number * 1e3 * 3600.0 * 3600.0);
        };
        for (std::size_t i = 0; i < terminalCount(); ++i) {
            out[m_job.idOf(tag(i))].circuit = resistance(hidden.at("kc").at(i).get<double>());
        }
        for (const auto& [segment, branch] : m_branchOfSegment) {
            out[branch].run = resistance(hidden.at("kp").at(segment).get<double>());
        }
        return out;
    }
    double truePumpFactor() const { return m_game.at("hidden").at("pump_scale").get<double>(); }

    /// The largest true error of a share where valves stand in this state.
    double largestShareError(balancing::LoopState state) const {
        state.pumpCurveFactor = truePumpFactor();
        const auto result = balancing::predict(project(), state, truth());
        double largest = 0;
        for (const std::size_t terminal : project().tree().terminals()) {
            largest = std::max(largest, std::abs(result.prediction->branches[terminal].ofTarget->si() - 1));
        }
        return largest;
    }

  private:
    static std::string text(double number, int decimals) {
        return base::Decimal::fromNumber(number, decimals).text();
    }

    void addPump() {
        project::Pump pump;
        pump.id = m_job.ids().next();
        pump.tag = "P-1";
        for (const auto& point : m_game.at("known").at("pump").at("points")) {
            project::PumpTableRow row;
            row.flow = m_job.flowOf(text(point.at(0).get<double>(), 6));
            row.head = quantity::measuredHead(FieldJob::decimal(text(point.at(1).get<double>(), 6)),
                                              quantity::Unit::Kilopascal, project().fluid().density());
            pump.rows.push_back(std::move(row));
        }
        m_pump = pump.id;
        m_job.project().put(std::move(pump));
    }

    /// The loss of a segment at the design flow of everything behind it.
    double carried(std::size_t segment) const {
        double sum = 0;
        for (std::size_t i = 0; i < terminalCount(); ++i) {
            const auto& path = m_cases[i];
            if (std::find(path.begin(), path.end(), segment) != path.end()) {
                sum += m_game.at("known").at("design_flow").at(i).get<double>();
            }
        }
        return sum;
    }

    void addBranch(const std::string& name, const std::string& parent, std::size_t segment,
                   std::optional<std::size_t> terminal) {
        const auto& known = m_game.at("known");
        std::optional<base::Id> valve;
        std::string design;
        if (terminal) {
            valve = valveOf(known.at("valve_cvmax").at(*terminal).get<double>());
            design = text(known.at("design_flow").at(*terminal).get<double>(), 2);
        }
        const base::Id id = m_job.branch(name, parent, design, valve,
                                         terminal ? project::BranchKind::Manual : project::BranchKind::None);
        m_branchOfSegment[segment] = id;
        m_job.change(project().branches().at(id), [&](project::Branch& branch) {
            const double flow = carried(segment);
            branch.runLoss =
                m_job.pressure(text(known.at("design_kp").at(segment).get<double>() * flow * flow, 9));
            if (terminal) {
                const double own = known.at("design_flow").at(*terminal).get<double>();
                branch.circuitLoss =
                    m_job.pressure(text(known.at("design_kc").at(*terminal).get<double>() * own * own, 9));
            }
        });
    }

    void addBranches() {
        const auto& known = m_game.at("known");
        addBranch("plant", "", 0, std::nullopt);
        const bool hasBranches = known.at("segments").at(1).get<std::string>().ends_with(".main");
        std::map<int, std::string> mains;
        for (std::size_t i = 0; i < terminalCount(); ++i) {
            std::string parent = "plant";
            const auto& path = m_cases[i];
            if (hasBranches) {
                const int branch = known.at("branch").at(i).get<int>();
                if (!mains.contains(branch)) {
                    mains[branch] = "b" + std::to_string(branch + 1);
                    // The main's own segment comes before the first terminal's pipe.
                    addBranch(mains[branch], "plant", path[path.size() - 2], std::nullopt);
                }
                parent = mains[branch];
            }
            addBranch(tag(i), parent, path.back(), i);
        }
    }

    base::Id valveOf(double cvOpen) {
        const auto found = m_valves.find(cvOpen);
        if (found != m_valves.end()) {
            return found->second;
        }
        const auto& curve = m_game.at("known").at("valve_curve");
        project::ValveModel model;
        model.id = m_job.ids().next();
        model.model = "V-" + text(cvOpen, 1);
        model.coefficientUnit = quantity::Unit::Cv;
        for (std::size_t i = 0; i < curve.at("turns").size(); ++i) {
            model.rows.push_back(
                {FieldJob::decimal(text(curve.at("turns").at(i).get<double>(), 1)),
                 FieldJob::decimal(text(cvOpen * curve.at("cv_over_cvmax").at(i).get<double>(), 6))});
        }
        m_valves[cvOpen] = model.id;
        m_job.project().put(model);
        return model.id;
    }

    void addInstruments() {
        const auto& given = m_game.at("known").at("instrument");
        m_gauge = m_job.instrument(text(100 * given.at("head_rel_sd").get<double>(), 2), "");
        m_job.instrument(text(100 * given.at("dp_rel_sd").get<double>(), 2), "");
    }

    void addHead(double head_kPa) {
        project::PumpReading made;
        made.id = m_job.ids().next();
        made.round = m_job.newestRound();
        made.pump = m_pump;
        made.sequence = 1;
        made.instrument = m_gauge;
        made.gaugeRise = m_job.pressure(text(head_kPa, 1));
        m_job.project().put(std::move(made));
    }

    nlohmann::json m_game;
    std::vector<std::vector<std::size_t>> m_cases;
    FieldJob m_job;
    std::map<double, base::Id> m_valves;
    std::map<std::size_t, base::Id> m_branchOfSegment;
    base::Id m_pump;
    base::Id m_gauge;
};

}  // namespace ww::support
