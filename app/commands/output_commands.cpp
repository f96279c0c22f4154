// waterwright export: the job out of its workbook.
#include <CLI/CLI.hpp>
#include <fstream>
#include <ostream>

#include "app/commands/open_workbook.h"
#include "core/exchange/job_folder.h"
#include "core/report/job_spreadsheet.h"
#include "core/report/walk_sheet.h"
#include "core/workbook/output_target.h"

namespace ww::app {

namespace {

inline constexpr base::MessageForm kNotWritten{
    "output_not_written", "the file cannot be written; choose a place with room that can be written"};

inline constexpr base::MessageForm kSheetEnding{
    "walk_sheet_ending", "a walk sheet is written as PDF or CSV; give it a name that ends in .pdf or .csv"};

class ExportCommand : public Command {
  public:
    void describe(CLI::App& app) override {
        app.add_option("FILE", m_file, "the workbook, FILE.wwj")->required();
        auto* target = app.add_option_group("target");
        target->add_option("--csv", m_csv, "folder for CSV tables");
        target->add_option("--xlsx", m_xlsx, "XLSX spreadsheet: a summary and a sheet a table");
        target->add_option("--json", m_json, "JSON file");
        auto* sheet =
            target->add_option("--walk-sheet", m_walkSheet,
                               "walk sheet to fill in: PDF for paper, or CSV that record takes back");
        addLanguage(app, m_language)->needs(sheet);
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
        const std::string& target = !m_walkSheet.empty() ? m_walkSheet : m_xlsx.empty() ? m_json : m_xlsx;
        if (const auto refusal = workbook::refusalToReplace(target)) {
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
        return m_walkSheet.empty() ? writeText(surroundings, m_json, exchange::jobJson(workbook->project()))
                                   : writeSheet(surroundings, workbook->project());
    }

  private:
    int writeSheet(Surroundings& surroundings, const project::Project& project) const {
        const std::string ending = std::filesystem::path(m_walkSheet).extension().string();
        if (ending == ".csv" || ending == ".CSV") {
            return writeText(surroundings, m_walkSheet, report::walkSheetCsv(project));
        }
        if ((ending != ".pdf" && ending != ".PDF") || !surroundings.writeWalkSheet) {
            return badInput(surroundings, {&kSheetEnding, m_walkSheet, {}});
        }
        surroundings.language = m_language;
        const base::Outcome written = surroundings.writeWalkSheet(project, m_walkSheet);
        if (!written) {
            return fileTrouble(surroundings, written.fault());
        }
        surroundings.out << m_walkSheet << "\n";
        return kDone;
    }

    /// Under another name first, so that no half file stands at the final path.
    static int writeText(Surroundings& surroundings, const std::string& file, const std::string& document) {
        const std::filesystem::path temporary = file + ".part";
        std::ofstream stream(temporary, std::ios::binary | std::ios::trunc);
        stream << document;
        stream.close();
        std::error_code error;
        if (stream) {
            std::filesystem::rename(temporary, file, error);
        }
        if (!stream || error) {
            std::filesystem::remove(temporary, error);
            return fileTrouble(surroundings, {&kNotWritten, file, {}});
        }
        surroundings.out << file << "\n";
        return kDone;
    }

    std::string m_file;
    std::string m_csv;
    std::string m_xlsx;
    std::string m_walkSheet;
    std::string m_json;
    std::string m_language;
};

}  // namespace

std::unique_ptr<Command> exportCommand() {
    return std::make_unique<ExportCommand>();
}

}  // namespace ww::app
