// Where an import comes from: the sheets of a file, or what was pasted. Not for what the cells mean.
#pragma once

#include <QString>
#include <vector>

#include "core/exchange/table_source.h"

namespace ww::ui {

struct ImportSheet {
    QString name;
    exchange::SourceTable table;
};

struct ImportSource {
    QString name;                     ///< of the file, or of the clipboard
    std::vector<ImportSheet> sheets;  ///< those that hold something
};

inline constexpr base::MessageForm kNothingToImport{
    "nothing_to_import", "there is no row to import; choose a CSV or XLSX file with headings and rows"};
inline constexpr base::MessageForm kNothingToPaste{
    "nothing_to_paste", "there is no row to paste; copy rows with their headings in the spreadsheet first"};

inline constexpr base::MessageForm kNothingPasted{"nothing_pasted", "nothing was pasted: {1}"};

/// A fault that stopped a paste, saying first that nothing of it was taken.
base::Fault nothingPasted(const base::Fault& why);
/// Whether a file is of a kind that can be imported, by its ending.
bool isTableFile(const QString& file);
/// A CSV or XLSX file. Faults: it cannot be read, or holds nothing.
base::Result<ImportSource> readImportSource(const QString& file);
/// Cells copied from a spreadsheet: tabs between, one row a line.
base::Result<ImportSource> pastedSource(const QString& text);

}  // namespace ww::ui
