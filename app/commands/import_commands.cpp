// waterwright new, waterwright record: tables in.
#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>
#include <ostream>

#include "app/commands/open_workbook.h"
#include "core/exchange/table_source.h"

namespace ww::app {

namespace {

/// What both commands print: every fault, or what was written.
int answer(Surroundings& surroundings, bool isJson, const std::string& written,
           const std::vector<exchange::RowFault>& faults, const std::string& summary) {
    for (const exchange::RowFault& fault : faults) {
        surroundings.err << exchange::text(fault) << "\n";
    }
    if (isJson) {
        nlohmann::ordered_json document;
        document["written"] =
            written.empty() ? nlohmann::ordered_json(nullptr) : nlohmann::ordered_json(written);
        document["faults"] = nlohmann::ordered_json::array();
        for (const exchange::RowFault& fault : faults) {
            document["faults"].push_back({{"file", fault.file},
                                          {"row", fault.row},
                                          {"column", fault.column},
                                          {"text", base::englishWithSubject(fault.fault)}});
            if (!fault.cell.empty()) {
                document["faults"].back()["cell"] = fault.cell;
            }
        }
        document["conflicts"] = nlohmann::ordered_json::array();
        surroundings.out << document.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace)
                         << "\n";
    } else if (!written.empty()) {
        surroundings.out << summary << "\n";
    } else {
        surroundings.err << faults.size() << (faults.size() == 1 ? " fault" : " faults")
                         << "; nothing was written\n";
    }
    return written.empty() ? kBadInput : kDone;
}

class ImportCommand : public Command {
  public:
    void describe(CLI::App& app) override {
        app.add_option("FILE", m_file, "the workbook, FILE.wwj")->required();
        app.add_option("--from", m_tables,
                       "folder of CSV tables, or an XLSX spreadsheet with a sheet a table")
            ->required();
        app.add_flag("--json", m_isJson, "print one JSON document");
    }

  protected:
    /// The tables were good and the workbook did not take them.
    int notWritten(Surroundings& surroundings, const base::Fault& fault) const {
        if (m_isJson) {
            answer(surroundings, true, "", {{m_file, 0, "", fault}}, "");
            return kFileTrouble;
        }
        return fileTrouble(surroundings, fault);
    }

    std::string m_file;
    std::string m_tables;
    bool m_isJson = false;
};

std::string count(std::size_t number, const char* one, const char* many) {
    return std::to_string(number) + " " + (number == 1 ? one : many);
}

class NewCommand : public ImportCommand {
  public:
    int run(Surroundings& surroundings) override {
        exchange::ImportPlan plan;
        if (const auto source = exchange::openTables(m_tables, plan.faults)) {
            plan = exchange::readJob(*source, surroundings.ids);
        }
        if (!plan.isAcceptable()) {
            return answer(surroundings, m_isJson, "", plan.faults, "");
        }
        workbook::Session session{surroundings.clock, surroundings.ids, surroundings.person,
                                  surroundings.machine};
        const auto made = workbook::Workbook::create(m_file, plan.edit, session);
        if (!made) {
            return notWritten(surroundings, made.fault());
        }
        const project::Project& project = (*made)->project();
        return answer(surroundings, m_isJson, m_file, {},
                      m_file + ": " + count(project.branches().size(), "branch", "branches") + ", " +
                          count(project.rounds().size(), "round", "rounds") + ", " +
                          count(project.readings().size(), "reading", "readings"));
    }
};

class RecordCommand : public ImportCommand {
  public:
    int run(Surroundings& surroundings) override {
        const auto workbook = openWorkbook(surroundings, m_file, workbook::OpenMode::ReadWrite);
        if (workbook == nullptr) {
            return kFileTrouble;
        }
        exchange::ImportPlan plan;
        if (const auto source = exchange::openTables(m_tables, plan.faults)) {
            plan = exchange::readReadings(*source, workbook->project(), surroundings.ids);
        }
        if (!plan.isAcceptable()) {
            return answer(surroundings, m_isJson, "", plan.faults, "");
        }
        const auto applied = workbook->apply(plan.edit);
        if (!applied) {
            return notWritten(surroundings, applied.fault());
        }
        return answer(surroundings, m_isJson, m_file, {},
                      m_file + ": " + count(plan.edit.put.size(), "record", "records") + " added");
    }
};

}  // namespace

std::unique_ptr<Command> newCommand() {
    return std::make_unique<NewCommand>();
}

std::unique_ptr<Command> recordCommand() {
    return std::make_unique<RecordCommand>();
}

}  // namespace ww::app
