// What is told of a spreadsheet that cannot be read or written.
#pragma once

#include "core/base/fault.h"

namespace ww::spreadsheet {

inline constexpr base::MessageForm kSpreadsheetMissing{
    "spreadsheet_missing", "there is no such file; give the name of a spreadsheet or a folder of tables"};
inline constexpr base::MessageForm kSpreadsheetTooLarge{
    "spreadsheet_too_large",
    "the file has {1} MB, more than the {2} MB that a spreadsheet may have; take out what is not needed"};
inline constexpr base::MessageForm kNoSpreadsheet{
    "no_spreadsheet", "the file is no XLSX spreadsheet, or is damaged ({1w}); save it anew as XLSX"};
inline constexpr base::MessageForm kSpreadsheetOldOrLocked{
    "spreadsheet_old_or_locked",
    "the file has a password or is of the older binary kind; save it as XLSX without a password"};
inline constexpr base::MessageForm kSpreadsheetUnpacksTooLarge{
    "spreadsheet_unpacks_too_large",
    "the part \"{1}\" unpacks to more than a sheet of tables can need, so it is not read; save the tables "
    "alone as a new XLSX"};
inline constexpr base::MessageForm kSpreadsheetDoctype{
    "spreadsheet_doctype",
    "the part \"{1}\" declares a document type, which no spreadsheet does, so it is not read; save it anew"};
inline constexpr base::MessageForm kSpreadsheetPartBroken{
    "spreadsheet_part_broken",
    "the part \"{1}\" cannot be understood (line {2}); open the file in a spreadsheet program and save it "
    "anew as XLSX"};
inline constexpr base::MessageForm kSpreadsheetPartMissing{
    "spreadsheet_part_missing",
    "the part \"{1}\" is missing; open the file in a spreadsheet program and save it anew as XLSX"};
inline constexpr base::MessageForm kSheetTooMuch{
    "sheet_too_much", "the sheet \"{1}\" has more than {2} cells; take out what is not needed"};
inline constexpr base::MessageForm kSheetTooWide{
    "sheet_too_wide", "the cell {1} lies beyond column {2}, where no table reaches; clear it"};
inline constexpr base::MessageForm kCellBroken{
    "cell_broken", "the cell holds {1w} and not a value; mend its formula or write the value"};
inline constexpr base::MessageForm kCellWithoutResult{
    "cell_without_result",
    "the cell has a formula whose result was not stored; open the file in a spreadsheet program and save it"};
inline constexpr base::MessageForm kSpreadsheetNotWritten{
    "spreadsheet_not_written", "the spreadsheet cannot be written ({1w}); choose a place with room"};

}  // namespace ww::spreadsheet
