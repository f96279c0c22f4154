// The sheets of an XLSX file as tables: the sheet "readings" is readings.csv. Not for writing (job_sheets.h).
#pragma once

#include "core/exchange/table_source.h"
#include "core/spreadsheet/sheet.h"

namespace ww::exchange {

/// The sheet's cells as a table. Row numbers are the sheet's own. A number whose format shows a unit behind
/// it carries that unit, so that it is not taken for the heading's.
SourceTable tableOf(const spreadsheet::ReadSheet& sheet);

class SpreadsheetSource : public TableSource {
  public:
    /// Faults: those of spreadsheet::readSpreadsheet.
    static base::Result<std::unique_ptr<SpreadsheetSource>> open(const std::filesystem::path& file);

    SourceTable table(const std::string& file) const override;
    std::string name() const override { return m_file.filename().string(); }
    /// The folder "NAME_attachments" beside NAME.xlsx.
    std::filesystem::path attachments() const override;
    void locate(std::vector<RowFault>& faults) const override;

  private:
    SpreadsheetSource(std::filesystem::path file, std::vector<spreadsheet::ReadSheet> sheets)
        : m_file(std::move(file)), m_sheets(std::move(sheets)) {}
    const spreadsheet::ReadSheet* find(const std::string& file) const;

    std::filesystem::path m_file;
    std::vector<spreadsheet::ReadSheet> m_sheets;
};

/// Where the files of attachments.csv stand beside a spreadsheet.
std::filesystem::path attachmentsBeside(const std::filesystem::path& spreadsheet);

}  // namespace ww::exchange
