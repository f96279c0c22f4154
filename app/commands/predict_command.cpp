// waterwright predict: what every circuit would take in another state of the loop. Nothing is stored.
#include <CLI/CLI.hpp>
#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <ostream>

#include "app/commands/open_workbook.h"
#include "app/commands/text_table.h"
#include "core/balancing/prediction.h"
#include "core/quantity/measured.h"

namespace ww::app {

namespace {

using Json = nlohmann::ordered_json;
using balancing::LoopState;
using balancing::Prediction;
using quantity::Unit;

inline constexpr base::MessageForm kTagUnknown{"predict_tag_unknown",
                                               "\"{1}\" is no branch of this job; see the tags with check"};
inline constexpr base::MessageForm kSetForm{"predict_set_form",
                                            "\"{1}\" is not TAG=SETTING; write for example --set B-05=2.3"};
inline constexpr base::MessageForm kSetNoValve{"predict_set_no_valve",
                                               "this branch has no valve with a table; it cannot be set"};
inline constexpr base::MessageForm kSpeedOutside{"predict_speed_outside",
                                                 "\"{1}\" is no speed; give 0 to 120 percent of rated"};
inline constexpr base::MessageForm kImpellerOutside{
    "predict_impeller_outside",
    "\"{1}\" is no impeller for this pump; give {2} to {3} mm, or inches as in 8.5in"};
inline constexpr base::MessageForm kImpellerUnknown{
    "predict_impeller_unknown", "the impeller that is in the pump is not known; enter it with the pump"};

/// Below this share of its diameter an impeller is no longer the same pump (affinity does not hold).
constexpr double kSmallestTrimFraction = 0.6;

class PredictCommand : public Command {
  public:
    void describe(CLI::App& app) override {
        app.add_option("FILE", m_file, "the workbook, FILE.wwj")->required();
        app.add_option("--set", m_set, "TAG=SETTING, may be given several times")->allow_extra_args(false);
        app.add_option("--close", m_close, "TAG to shut off, may be given several times")
            ->allow_extra_args(false);
        app.add_option("--speed", m_speed, "PERCENT of rated speed");
        app.add_option("--impeller", m_impeller, "diameter in mm, or in inches as in 8.5in");
        app.add_flag("--json", m_isJson, "print one JSON document");
    }

    int run(Surroundings& surroundings) override {
        const auto workbook = openWorkbook(surroundings, m_file, workbook::OpenMode::ReadOnly);
        if (workbook == nullptr) {
            return kFileTrouble;
        }
        const project::Project& project = workbook->project();
        LoopState state = balancing::stateOfLastRound(project);
        std::vector<base::Fault> faults;
        takeSettings(project, state, faults);
        takeSpeed(state, faults);
        takeImpeller(project, state, faults);
        if (faults.empty()) {
            balancing::PredictionResult result = balancing::predict(project, state);
            faults = std::move(result.faults);
            if (result.prediction) {
                surroundings.out << (m_isJson ? json(project, *result.prediction)
                                              : table(project, *result.prediction));
                return kDone;
            }
        }
        for (const base::Fault& fault : faults) {
            surroundings.err << base::englishWithSubject(fault) << "\n";
        }
        return kBadInput;
    }

  private:
    void takeSettings(const project::Project& project, LoopState& state,
                      std::vector<base::Fault>& faults) const {
        for (const std::string& pair : m_set) {
            const std::size_t equals = pair.rfind('=');
            const auto number = equals == std::string::npos ? base::Decimal::parse("")
                                                            : base::Decimal::parse(pair.substr(equals + 1));
            if (!number) {
                faults.push_back({&kSetForm, "--set", {pair}});
                continue;
            }
            const std::string tag = pair.substr(0, equals);
            const project::Branch* branch = project.branchTagged(tag);
            if (branch == nullptr) {
                faults.push_back({&kTagUnknown, "--set", {tag}});
            } else if (project.characteristicOf(*branch) == nullptr) {
                faults.push_back({&kSetNoValve, tag, {}});
            } else {
                state.settings[branch->id] = quantity::Setting::si(number->value());
            }
        }
        for (const std::string& tag : m_close) {
            if (const project::Branch* branch = project.branchTagged(tag)) {
                state.closed.push_back(branch->id);
            } else {
                faults.push_back({&kTagUnknown, "--close", {tag}});
            }
        }
    }

    void takeSpeed(LoopState& state, std::vector<base::Fault>& faults) const {
        if (m_speed.empty()) {
            return;
        }
        const std::string digits = m_speed.back() == '%' ? m_speed.substr(0, m_speed.size() - 1) : m_speed;
        const auto number = base::Decimal::parse(digits);
        if (!number || number->value() < 0 || number->value() > 120) {
            faults.push_back({&kSpeedOutside, "--speed", {m_speed}});
            return;
        }
        state.speedFraction = number->value() / 100;
    }

    void takeImpeller(const project::Project& project, LoopState& state,
                      std::vector<base::Fault>& faults) const {
        if (m_impeller.empty()) {
            return;
        }
        const auto pump = std::find_if(project.pumps().begin(), project.pumps().end(),
                                       [](const project::Pump& candidate) { return candidate.isRunning; });
        if (pump == project.pumps().end() || !pump->impeller) {
            faults.push_back({&kImpellerUnknown, "--impeller", {}});
            return;
        }
        std::string digits = m_impeller;
        Unit unit = Unit::Millimetre;
        for (const auto& [suffix, meant] : {std::pair("mm", Unit::Millimetre), std::pair("in", Unit::Inch)}) {
            if (digits.size() > 2 && digits.ends_with(suffix)) {
                unit = meant;
                digits.resize(digits.size() - 2);
            }
        }
        const auto number = base::Decimal::parse(digits);
        const quantity::Length present = pump->impeller->value;
        if (number) {
            const double fraction = quantity::Length::from(number->value(), unit) / present;
            if (fraction >= kSmallestTrimFraction && fraction <= 1.0 + 1e-9) {
                state.diameterFraction = fraction;
                return;
            }
        }
        faults.push_back(
            {&kImpellerOutside,
             "--impeller",
             {m_impeller, quantity::concise((present * kSmallestTrimFraction).in(Unit::Millimetre), 4),
              quantity::concise(present.in(Unit::Millimetre), 4)}});
    }

    static Json optional(const std::optional<quantity::Ratio>& ratio) {
        return ratio ? Json(ratio->si()) : Json(nullptr);
    }

    static std::string json(const project::Project& project, const Prediction& prediction) {
        Json document;
        document["converged"] = prediction.summary.outcome != hydraulics::SolveOutcome::NotConverged;
        document["iterations"] = prediction.summary.iterations;
        document["residual"] =
            std::max(prediction.summary.massFraction(), prediction.summary.energyFraction());
        document["pump"] = {{"flow_m3s", prediction.pumpFlow.si()},
                            {"head_Pa", prediction.pumpRise.si()},
                            {"speed_fraction", prediction.speedFraction}};
        document["branches"] = Json::array();
        for (const std::size_t index : project.tree().walkingOrder()) {
            const balancing::BranchPrediction& branch = prediction.branches[index];
            document["branches"].push_back(
                {{"tag", project.branches()[index].tag},
                 {"flow_m3s", branch.flow.si()},
                 {"share", optional(branch.share)},
                 {"of_target", optional(branch.ofTarget)},
                 {"of_design", optional(branch.ofDesign)},
                 {"dp_valve_Pa", branch.valveDrop ? Json(branch.valveDrop->si()) : Json(nullptr)}});
        }
        return document.dump(2) + "\n";
    }

    static std::string table(const project::Project& project, const Prediction& prediction) {
        const bool isUs = project.job().units == project::UnitSystem::US;
        const Unit flowUnit = project.shownFlowUnit();
        const Unit dpUnit = isUs ? Unit::Psi : Unit::Kilopascal;
        const Unit headUnit = isUs ? Unit::Foot : Unit::Metre;
        const auto symbol = [](Unit unit) { return std::string(quantity::symbol(unit)); };
        const auto percent = [](const std::optional<quantity::Ratio>& ratio) {
            return ratio ? base::Decimal::fromNumber(100 * ratio->si(), 1).text() : "-";
        };
        std::vector<std::vector<std::string>> rows{{"tag", "flow " + symbol(flowUnit), "share %",
                                                    "of target %", "of design %",
                                                    "valve dp " + symbol(dpUnit)}};
        for (const std::size_t index : project.tree().walkingOrder()) {
            const balancing::BranchPrediction& branch = prediction.branches[index];
            rows.push_back({project.branches()[index].tag, quantity::significant(branch.flow.in(flowUnit), 4),
                            percent(branch.share), percent(branch.ofTarget), percent(branch.ofDesign),
                            branch.valveDrop ? quantity::significant(branch.valveDrop->in(dpUnit), 3) : "-"});
        }
        std::string out = project.job().name + ", predicted from the design losses (not a reading)\n\n";
        out += textTable(rows, {0}) + "\n";
        out += "Pump " + quantity::significant(prediction.pumpFlow.in(flowUnit), 4) + " " + symbol(flowUnit) +
               " at " + quantity::significant(project.fluid().head(prediction.pumpRise).in(headUnit), 4) +
               " " + symbol(headUnit) + ", " + quantity::concise(100 * prediction.speedFraction, 4) +
               " % of full speed\n";
        if (prediction.summary.outcome == hydraulics::SolveOutcome::NotConverged) {
            out += "The solution has not settled; take these numbers as rough.\n";
        }
        return out;
    }

    std::string m_file;
    std::vector<std::string> m_set;
    std::vector<std::string> m_close;
    std::string m_speed;
    std::string m_impeller;
    bool m_isJson = false;
};

}  // namespace

std::unique_ptr<Command> predictCommand() {
    return std::make_unique<PredictCommand>();
}

}  // namespace ww::app
