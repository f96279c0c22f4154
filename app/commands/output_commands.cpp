// waterwright report, export, verify: the job out of its workbook, and the proof of the file.
#include <CLI/CLI.hpp>
#include <fstream>
#include <nlohmann/json.hpp>
#include <ostream>

#include "app/commands/open_workbook.h"
#include "core/exchange/job_folder.h"
#include "core/workbook/output_target.h"

namespace ww::app {

namespace {

inline constexpr base::MessageForm kNotWritten{
    "output_not_written", "the file cannot be written; choose a place with room that can be written"};

class ReportCommand : public Command {
  public:
    void describe(CLI::App& app) override {
        app.add_option("FILE", m_file, "the workbook, FILE.wwj")->required();
        app.add_option("--out", m_out, "the report, REPORT.pdf")->required();
        app.add_option("--round", m_round, "number of the round reported as the last");
    }

    int run(Surroundings& surroundings) override {
        const auto workbook = openWorkbook(surroundings, m_file, workbook::OpenMode::ReadOnly);
        if (workbook == nullptr) {
            return kFileTrouble;
        }
        if (m_round && workbook->project().roundNumbered(*m_round) == nullptr) {
            return badInput(surroundings, roundUnknown(m_file, workbook->project(), *m_round));
        }
        if (const auto refusal = workbook::refusalToReplace(m_out)) {
            return badInput(surroundings, *refusal);
        }
        report::ReportOptions options;
        options.round = m_round;
        options.journalDigest = workbook->newestEntry().digest.text();
        options.workbookId = workbook->workbookId().text();
        // The time of the newest record, so that an unchanged workbook gives an unchanged report.
        options.printed = workbook->newestEntry().time;
        const report::Report report = report::build(workbook->project(), options);
        const base::Outcome written = surroundings.writeReport(report, workbook->project(), m_out);
        if (!written) {
            return fileTrouble(surroundings, written.fault());
        }
        surroundings.out << m_out << "\n";
        return kDone;
    }

  private:
    std::string m_file;
    std::string m_out;
    std::optional<int> m_round;
};

class ExportCommand : public Command {
  public:
    void describe(CLI::App& app) override {
        app.add_option("FILE", m_file, "the workbook, FILE.wwj")->required();
        auto* target = app.add_option_group("target");
        target->add_option("--csv", m_csv, "folder for CSV tables");
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
        if (const auto refusal = workbook::refusalToReplace(m_json)) {
            return badInput(surroundings, *refusal);
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
    std::string m_json;
};

class VerifyCommand : public Command {
  public:
    void describe(CLI::App& app) override {
        app.add_option("FILE", m_file, "the workbook, FILE.wwj")->required();
        app.add_flag("--json", m_isJson, "print one JSON document");
    }

    int run(Surroundings& surroundings) override {
        const auto result = workbook::verify(m_file);
        if (!result) {
            return fileTrouble(surroundings, result.fault());
        }
        for (const base::Fault& finding : result->findings) {
            surroundings.err << base::englishWithSubject(finding) << "\n";
        }
        if (m_isJson) {
            nlohmann::ordered_json document;
            document["kind"] = "workbook";
            document["intact"] = result->isIntact;
            document["journal_records"] = result->journalRecords;
            document["first_bad_record"] = result->firstBadRecord
                                               ? nlohmann::ordered_json(*result->firstBadRecord)
                                               : nlohmann::ordered_json(nullptr);
            document["signatures"] = nlohmann::ordered_json::array();
            surroundings.out << document.dump(2) << "\n";
        } else if (result->isIntact) {
            surroundings.out << m_file << ": intact; every row follows from its " << result->journalRecords
                             << " journal records\n";
        } else {
            surroundings.out << m_file << ": NOT intact\n";
        }
        return result->isIntact ? kDone : kNotAccepted;
    }

  private:
    std::string m_file;
    bool m_isJson = false;
};

}  // namespace

std::unique_ptr<Command> reportCommand() {
    return std::make_unique<ReportCommand>();
}

std::unique_ptr<Command> exportCommand() {
    return std::make_unique<ExportCommand>();
}

std::unique_ptr<Command> verifyCommand() {
    return std::make_unique<VerifyCommand>();
}

}  // namespace ww::app
