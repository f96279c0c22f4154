#include "core/exchange/table_source.h"

#include <algorithm>

#include "core/exchange/import_context.h"
#include "core/exchange/record_columns.h"
#include "core/exchange/spreadsheet_source.h"

namespace ww::exchange {

namespace {

SourceTable tableOf(CsvResult result) {
    SourceTable table;
    table.isThere = result.failures.empty() || !result.failures.front().fault.is(kCsvMissing);
    table.text = std::move(result.text);
    table.failures = std::move(result.failures);
    return table;
}

}  // namespace

SourceTable FolderSource::table(const std::string& file) const {
    return tableOf(readCsv(m_folder / file));
}

std::filesystem::path FolderSource::attachments() const {
    return m_folder / kAttachmentFolder;
}

SourceTable GivenTables::table(const std::string& file) const {
    if (const auto found = m_tables.find(file); found != m_tables.end()) {
        return found->second;
    }
    return tableOf({{}, {{0, {&kCsvMissing, "", {}}}}});
}

std::unique_ptr<TableSource> openTables(const std::filesystem::path& path, std::vector<RowFault>& faults) {
    std::error_code error;
    if (std::filesystem::is_directory(path, error)) {
        return std::make_unique<FolderSource>(path);
    }
    const std::string name = path.filename().string();
    if (folded(path.extension().string()) == ".csv") {
        const auto& known = tableFiles();
        const bool isKnown = std::find(known.begin(), known.end(), folded(name)) != known.end();
        std::map<std::string, SourceTable> tables;
        tables.emplace(isKnown ? folded(name) : "readings.csv", tableOf(readCsv(path)));
        return std::make_unique<GivenTables>(name, std::move(tables));
    }
    auto spreadsheet = SpreadsheetSource::open(path);
    if (!spreadsheet) {
        faults.push_back({path.string(), 0, "", spreadsheet.fault(), ""});
        return nullptr;
    }
    return std::move(*spreadsheet);
}

const std::vector<std::string>& tableFiles() {
    static const std::vector<std::string> kFiles{"job.csv",
                                                 "load.csv",
                                                 "valves.csv",
                                                 "branches.csv",
                                                 "pumps.csv",
                                                 "pump_curve.csv",
                                                 "instruments.csv",
                                                 "people.csv",
                                                 "rounds.csv",
                                                 "witness_sample.csv",
                                                 "earlier_designs.csv",
                                                 "readings.csv",
                                                 "pump_readings.csv",
                                                 "set_points.csv",
                                                 "readiness.csv",
                                                 "deficiencies.csv",
                                                 "comments.csv",
                                                 "attachments.csv",
                                                 "finding_reasons.csv",
                                                 "signed_reports.csv",
                                                 "merge_conflicts.csv",
                                                 "clock_offsets.csv"};
    return kFiles;
}

}  // namespace ww::exchange
