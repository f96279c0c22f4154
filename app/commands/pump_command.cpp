// waterwright pump: duty, excess head, what can be done about it, the energy code's test and money.
#include <CLI/CLI.hpp>
#include <ostream>

#include "app/commands/open_workbook.h"
#include "app/commands/pump_json.h"
#include "app/commands/pump_text.h"
#include "core/balancing/learning/learned_loop.h"
#include "core/balancing/learning/model_findings.h"

namespace ww::app {

namespace {

/// Resistances learned from the readings, where they were learned and fit; else none: the design's hold. Very
/// large jobs are not learned here, it takes minutes.
balancing::Resistances learnedResistances(const project::Project& project) {
    if (project.rounds().empty() || project.tree().terminals().size() > balancing::kMostTerminalsToCompare) {
        return {};
    }
    const balancing::LearnedLoop loop = balancing::learn(project);
    const bool isGood = loop.outcome == balancing::LoopLearnOutcome::Learned && !loop.isMisfit;
    return isGood ? loop.resistances : balancing::Resistances{};
}

class PumpCommand : public Command {
  public:
    void describe(CLI::App& app) override {
        app.add_option("FILE", m_file, "the workbook, FILE.wwj")->required();
        app.add_flag("--json", m_isJson, "print one JSON document");
    }

    int run(Surroundings& surroundings) override {
        const auto workbook = openWorkbook(surroundings, m_file, workbook::OpenMode::ReadOnly);
        if (workbook == nullptr) {
            return kFileTrouble;
        }
        const project::Project& project = workbook->project();
        const pump_room::RunningPumps running = pump_room::runningPumps(project);
        if (!running.set) {
            for (const base::Fault& fault : running.faults) {
                surroundings.err << base::englishWithSubject(fault) << "\n";
            }
            return kBadInput;
        }
        PumpAnswer answer;
        pump_room::PumpDecisionOptions options;
        options.learned = learnedResistances(project);
        answer.decision = pump_room::decidePump(project, options);
        answer.readAndSet = pump_room::compareReadAndSet(project, answer.decision, options.learned);
        answer.sheets = pump_room::pumpSheets(project);
        surroundings.out << (m_isJson ? pumpJson(project, answer) : pumpText(project, answer));
        return kDone;
    }

  private:
    std::string m_file;
    bool m_isJson = false;
};

}  // namespace

std::unique_ptr<Command> pumpCommand() {
    return std::make_unique<PumpCommand>();
}

}  // namespace ww::app
