// Where the tables of a job come from: a folder, a single file, a spreadsheet, or what somebody made of them.
// Every one is read by the same readers with the same faults. Not for what cells mean (table_reader.h).
#pragma once

#include <filesystem>
#include <map>
#include <memory>
#include <string>
#include <vector>

#include "core/exchange/csv_text.h"
#include "core/exchange/job_folder.h"

namespace ww::exchange {

inline constexpr base::MessageForm kSheetMissing{
    "sheet_missing", "there is no sheet \"{1}\" in the spreadsheet; add it, or give a sheet that name"};
inline constexpr base::MessageForm kSheetEmpty{"sheet_empty",
                                               "the sheet is empty; give it a row of headings and data"};

/// A cell that holds no value, and why.
struct CellFailure {
    int line = 0;
    std::size_t index = 0;  ///< into the row's cells
    base::Fault fault;
};

struct SourceTable {
    bool isThere = false;
    CsvText text;
    std::vector<CsvFailure> failures;  ///< why the table as a whole cannot be read; empty, or one
    std::vector<CellFailure> cellFailures;
};

class TableSource {
  public:
    virtual ~TableSource() = default;
    /// A table by the name of its file, "readings.csv". One that is not there has a failure that says so.
    virtual SourceTable table(const std::string& file) const = 0;
    /// What the undo list calls it.
    virtual std::string name() const = 0;
    /// The folder with the files of attachments.csv.
    virtual std::filesystem::path attachments() const = 0;
    /// Tells of each fault where its cell stands in the file that a person has before them.
    virtual void locate(std::vector<RowFault>&) const {}
};

class FolderSource : public TableSource {
  public:
    explicit FolderSource(std::filesystem::path folder) : m_folder(std::move(folder)) {}
    SourceTable table(const std::string& file) const override;
    std::string name() const override { return m_folder.filename().string(); }
    std::filesystem::path attachments() const override;

  private:
    std::filesystem::path m_folder;
};

/// Some tables that were read already.
class GivenTables : public TableSource {
  public:
    GivenTables(std::string name, std::map<std::string, SourceTable> tables)
        : m_name(std::move(name)), m_tables(std::move(tables)) {}
    SourceTable table(const std::string& file) const override;
    std::string name() const override { return m_name; }
    std::filesystem::path attachments() const override { return {}; }

  private:
    std::string m_name;
    std::map<std::string, SourceTable> m_tables;
};

/// The tables at a path: a folder, one CSV file (by its own name where that is a table's, else readings), or
/// an XLSX spreadsheet, told by what it is. Null, with the fault noted, where it cannot be opened.
std::unique_ptr<TableSource> openTables(const std::filesystem::path& path, std::vector<RowFault>& faults);

/// The names of the files of a job folder, in the order in which people work.
const std::vector<std::string>& tableFiles();

/// A new job; as readJobFolder().
ImportPlan readJob(const TableSource& source, base::IdSource& ids);
/// Rounds and readings for an existing job; as readReadings().
ImportPlan readReadings(const TableSource& source, const project::Project& project, base::IdSource& ids);
/// Everything of valves.csv, branches.csv, pumps.csv, pump_curve.csv, instruments.csv, readings.csv and
/// pump_readings.csv that is there, for an existing job. A record whose name the job has already is a fault;
/// a pump without a curve takes one.
ImportPlan addTables(const TableSource& source, const project::Project& project, base::IdSource& ids);

}  // namespace ww::exchange
