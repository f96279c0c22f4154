// What the sheets of one XLSX file share: their list, the strings, the number formats.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/spreadsheet/number_format.h"
#include "core/spreadsheet/xml_part.h"

namespace ww::spreadsheet::detail {

struct SheetEntry {
    std::string name;
    std::string part;
};

struct BookParts {
    std::vector<SheetEntry> sheets;
    bool is1904 = false;
    std::vector<std::string> strings;
    std::vector<NumberFormat> formats;  ///< by the style number of a cell
};

base::Result<BookParts> readBookParts(PackedFile& file);

/// Text with its _xHHHH_ escapes (ISO/IEC 29500-1, 22.9.2.19) put back.
std::string unescaped(std::string text);

/// A whole number from 0; nothing for any other text.
std::optional<std::size_t> wholeNumber(std::string_view text);

}  // namespace ww::spreadsheet::detail
