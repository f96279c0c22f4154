#include "core/exchange/spreadsheet_source.h"

#include <algorithm>

#include "core/exchange/import_context.h"
#include "core/exchange/table_reader.h"
#include "core/spreadsheet/cell_name.h"
#include "core/spreadsheet/read_spreadsheet.h"

namespace ww::exchange {

namespace {

/// Whether a text behind a number is a unit that a column can have.
bool isUnit(std::string_view text) {
    const auto rows = quantity::unitTable();
    return std::any_of(rows.begin(), rows.end(), [&](const quantity::UnitRow& row) {
        return quantity::unitFromSymbol(text, row.dimension) == row.unit;
    });
}

/// The cell as it would stand in a CSV file.
std::string cellText(const spreadsheet::ReadCell& cell) {
    if (cell.isText) {
        return guarded(cell.text);
    }
    const std::string suffix = cell.remark ? cell.remark->suffix : std::string();
    return isUnit(suffix) ? cell.text + " " + suffix : cell.text;
}

/// "readings" of "readings.csv".
std::string sheetName(const std::string& file) {
    return file.substr(0, file.rfind('.'));
}

}  // namespace

SourceTable tableOf(const spreadsheet::ReadSheet& sheet) {
    SourceTable table;
    table.isThere = true;
    for (const spreadsheet::ReadRow& row : sheet.rows) {
        CsvRow& made = table.text.rows.emplace_back();
        made.line = row.number;
        for (const spreadsheet::ReadCell& cell : row.cells) {
            made.cells.resize(cell.column + 1);
            if (cell.remark && cell.remark->fault) {
                table.cellFailures.push_back({row.number, cell.column, *cell.remark->fault});
            } else {
                made.cells[cell.column] = cellText(cell);
            }
        }
    }
    if (table.text.rows.empty()) {
        table.failures.push_back({0, {&kSheetEmpty, "", {}}});
    }
    return table;
}

std::filesystem::path attachmentsBeside(const std::filesystem::path& spreadsheet) {
    return spreadsheet.parent_path() / (spreadsheet.stem().string() + "_attachments");
}

base::Result<std::unique_ptr<SpreadsheetSource>> SpreadsheetSource::open(const std::filesystem::path& file) {
    auto sheets = spreadsheet::readSpreadsheet(file);
    if (!sheets) {
        return sheets.fault();
    }
    return std::unique_ptr<SpreadsheetSource>(new SpreadsheetSource(file, std::move(*sheets)));
}

const spreadsheet::ReadSheet* SpreadsheetSource::find(const std::string& file) const {
    const std::string wanted = sheetName(file);
    const auto found =
        std::find_if(m_sheets.begin(), m_sheets.end(),
                     [&](const spreadsheet::ReadSheet& sheet) { return folded(sheet.name) == wanted; });
    return found == m_sheets.end() ? nullptr : &*found;
}

SourceTable SpreadsheetSource::table(const std::string& file) const {
    if (const spreadsheet::ReadSheet* sheet = find(file)) {
        return tableOf(*sheet);
    }
    SourceTable table;
    table.failures.push_back({0, {&kSheetMissing, "", {sheetName(file)}}});
    return table;
}

std::filesystem::path SpreadsheetSource::attachments() const {
    return attachmentsBeside(m_file);
}

void SpreadsheetSource::locate(std::vector<RowFault>& faults) const {
    for (RowFault& fault : faults) {
        const spreadsheet::ReadSheet* sheet = find(fault.file);
        const std::string known = fault.cell;
        fault.cell = sheet != nullptr ? sheet->name : sheetName(fault.file);
        if (!known.empty()) {
            fault.cell += "!" + known;
        } else if (fault.row > 0) {
            std::size_t column = 0;
            if (sheet != nullptr && !sheet->rows.empty()) {
                for (const spreadsheet::ReadCell& head : sheet->rows.front().cells) {
                    const bool isIt = !fault.column.empty() && headingName(head.text) == folded(fault.column);
                    column = isIt ? head.column : column;
                }
            }
            fault.cell += "!" + spreadsheet::cellName({fault.row, column});
        }
        fault.file = name();
    }
}

}  // namespace ww::exchange
