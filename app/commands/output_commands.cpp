// waterwright export: the job out of its workbook.
#include <CLI/CLI.hpp>
#include <fstream>
#include <ostream>

#include "app/commands/open_workbook.h"
#include "core/exchange/job_folder.h"
#include "core/report/job_spreadsheet.h"
#include "core/workbook/output_target.h"

namespace ww::app {

namespace {

inline constexpr base::MessageForm kNotWritten{
    "output_not_written", "the file cannot be written; choose a place with room that can be written"};

class ExportCommand : public Command {
  public:
    void describe(CLI::App& app) override {
        app.add_option("FILE", m_file, "the workbook, FILE.wwj")->required();
        auto* target = app.add_option_group("target");
        target->add_option("--csv", m_csv, "folder for CSV tables");
        target->add_option("--xlsx", m_xlsx, "XLSX spreadsheet: a summary and a sheet a table");
        target->add_option("--json", m_json, "JSON file");
        target->require_option(1);
    }

    int run(Surroundings& surroundings) override {
        const auto workbook = openWorkbook(surroundings, m_file, workbook::OpenMode::ReadOnly);
        if (workbook == nullptr) {
            return kFileTrouble;
        }
        if (!m_csv.empty()) {
            const base::Outcome written = exchange::writeJobFolder(workbook->project(), m_csv);
            if (!written) {
                return fileTrouble(surroundings, written.fault());
            }
            surroundings.out << m_csv << "\n";
            return kDone;
        }
        if (const auto refusal = workbook::refusalToReplace(m_xlsx.empty() ? m_json : m_xlsx)) {
            return badInput(surroundings, *refusal);
        }
        if (!m_xlsx.empty()) {
            const base::Outcome written = report::writeJobSpreadsheet(workbook->project(), m_xlsx);
            if (!written) {
                return fileTrouble(surroundings, written.fault());
            }
            surroundings.out << m_xlsx << "\n";
            return kDone;
        }
        return writeJson(surroundings, exchange::jobJson(workbook->project()));
    }

  private:
    /// Under another name first, so that no half file stands at the final path.
    int writeJson(Surroundings& surroundings, const std::string& document) const {
        const std::filesystem::path temporary = m_json + ".part";
        std::ofstream stream(temporary, std::ios::binary | std::ios::trunc);
        stream << document;
        stream.close();
        std::error_code error;
        if (stream) {
            std::filesystem::rename(temporary, m_json, error);
        }
        if (!stream || error) {
            std::filesystem::remove(temporary, error);
            return fileTrouble(surroundings, {&kNotWritten, m_json, {}});
        }
        surroundings.out << m_json << "\n";
        return kDone;
    }

    std::string m_file;
    std::string m_csv;
    std::string m_xlsx;
    std::string m_json;
};

}  // namespace

std::unique_ptr<Command> exportCommand() {
    return std::make_unique<ExportCommand>();
}

}  // namespace ww::app
