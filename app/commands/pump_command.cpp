// waterwright pump: duty, excess head, what can be done about it, the energy code's test and money.
#include <CLI/CLI.hpp>
#include <ostream>

#include "app/commands/open_workbook.h"
#include "app/commands/pump_json.h"
#include "app/commands/pump_text.h"

namespace ww::app {

namespace {

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
        const pump_room::PumpPicture answer =
            pump_room::pumpPicture(project, pump_room::learnedResistances(project));
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
