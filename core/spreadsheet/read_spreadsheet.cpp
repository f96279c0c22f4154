#include "core/spreadsheet/read_spreadsheet.h"

#include <charconv>

#include "core/base/term.h"
#include "core/spreadsheet/cell_name.h"
#include "core/spreadsheet/detail/book_parts.h"
#include "core/spreadsheet/spreadsheet_messages.h"

namespace ww::spreadsheet {

namespace {

using detail::BookParts;

/// What all sheets have used up together.
struct Used {
    std::size_t cells = 0;
    std::size_t text_bytes = 0;
};

std::shared_ptr<const CellRemark> broken(base::Fault fault) {
    return std::make_shared<CellRemark>(CellRemark{std::move(fault), ""});
}

std::string_view withoutBlanks(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t\r\n");
    return first == std::string_view::npos ? std::string_view()
                                           : text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

class SheetListener : public XmlListener {
  public:
    SheetListener(const BookParts& book, ReadSheet& sheet, Used& used)
        : m_book(book), m_sheet(sheet), m_used(used) {}

    void begin(std::string_view element, const XmlAttributes& attributes) override {
        if (element == "row") {
            beginRow(attributes);
        } else if (element == "c") {
            beginCell(attributes);
        } else if (element == "rPh") {
            m_isSpoken = true;
        } else if (element == "f") {
            m_hasFormula = true;
        }
        m_isValue = element == "v" || (element == "t" && !m_isSpoken);
        m_hasValue = m_hasValue || m_isValue;
    }

    void end(std::string_view element) override {
        m_isValue = false;
        if (element == "c") {
            endCell();
        } else if (element == "rPh") {
            m_isSpoken = false;
        }
    }

    void text(std::string_view piece) override {
        if (m_isValue) {
            m_value += piece;
        }
    }

    std::optional<base::Fault> fault() const override { return m_fault; }

  private:
    void beginRow(const XmlAttributes& attributes) {
        const auto number = attributes.find("r") ? detail::wholeNumber(*attributes.find("r"))
                                                 : std::optional<std::size_t>(m_row + 1);
        if (!number || *number <= static_cast<std::size_t>(m_row) ||
            *number > static_cast<std::size_t>(kMostRows)) {
            m_fault = base::Fault{&kSpreadsheetPartBroken, "", {m_sheet.name, std::to_string(m_row + 1)}};
            return;
        }
        m_row = static_cast<int>(*number);
        m_nextColumn = 0;
    }

    void beginCell(const XmlAttributes& attributes) {
        m_column = m_nextColumn;
        if (const auto name = attributes.find("r")) {
            const auto place = cellPlace(*name);
            if (!place || place->row != m_row || place->column < m_nextColumn) {
                m_fault = base::Fault{&kSpreadsheetPartBroken, "", {m_sheet.name, std::to_string(m_row)}};
                return;
            }
            m_column = place->column;
        }
        m_nextColumn = m_column + 1;
        m_type = attributes.text("t");
        const auto style = detail::wholeNumber(attributes.find("s").value_or("0"));
        m_format = style && *style < m_book.formats.size() ? m_book.formats[*style] : NumberFormat{};
        m_value.clear();
        m_hasValue = false;
        m_hasFormula = false;
    }

    void endCell() {
        ReadCell cell;
        cell.column = m_column;
        if (!m_hasValue || (m_type != "inlineStr" && m_type != "str" && withoutBlanks(m_value).empty())) {
            if (!m_hasFormula) {
                return;
            }
            cell.remark = m_type == "str" ? nullptr : broken({&kCellWithoutResult, "", {}});
        } else {
            takeValue(cell);
        }
        if (cell.text.empty() && !cell.remark) {
            return;
        }
        if (m_column >= kMostTableColumns) {
            m_fault = base::Fault{
                &kSheetTooWide,
                "",
                {m_sheet.name + "!" + cellName({m_row, m_column}), columnName(kMostTableColumns - 1)}};
            return;
        }
        m_used.text_bytes += cell.text.size();
        if (++m_used.cells > kMostCells || m_used.text_bytes > kMostText_MB * 1'000'000) {
            m_fault = base::Fault{&kSheetTooMuch, "", {m_sheet.name, std::to_string(kMostCells)}};
            return;
        }
        if (m_sheet.rows.empty() || m_sheet.rows.back().number != m_row) {
            m_sheet.rows.push_back({m_row, {}});
        }
        m_sheet.rows.back().cells.push_back(std::move(cell));
    }

    void takeValue(ReadCell& cell) {
        const std::string_view bare = withoutBlanks(m_value);
        if (m_type == "s") {
            const auto index = detail::wholeNumber(bare);
            cell.isText = true;
            if (index && *index < m_book.strings.size()) {
                cell.text = m_book.strings[*index];
            } else {
                cell.remark = broken({&kCellBroken, "", {base::term("a text that the file does not have")}});
            }
        } else if (m_type == "inlineStr" || m_type == "str") {
            cell.isText = true;
            cell.text = detail::unescaped(m_value);
        } else if (m_type == "b") {
            cell.text = bare == "0" || bare == "false" ? "FALSE" : "TRUE";
        } else if (m_type == "e") {
            cell.remark = broken({&kCellBroken, "", {std::string(bare.substr(0, 60))}});
        } else if (m_type == "d") {
            takeIsoDate(cell, bare);
        } else {
            takeNumber(cell, bare);
        }
    }

    /// Fractions of a second, which no table has, and "Z" where nothing else follows stay as they are written
    /// but for the fraction.
    static void takeIsoDate(ReadCell& cell, std::string_view bare) {
        cell.text = std::string(bare.substr(0, 60));
        const std::size_t point = cell.text.find('.');
        if (point != std::string::npos) {
            const std::size_t end = cell.text.find_first_not_of("0123456789", point + 1);
            cell.text.erase(point, end == std::string::npos ? std::string::npos : end - point);
        }
    }

    void takeNumber(ReadCell& cell, std::string_view bare) {
        double number = 0;
        const auto [end, error] = std::from_chars(bare.data(), bare.data() + bare.size(), number);
        if (error != std::errc() || end != bare.data() + bare.size() || !(number - number == 0)) {
            cell.remark = broken({&kCellBroken, "", {"\"" + std::string(bare.substr(0, 40)) + "\""}});
            return;
        }
        if (!m_format.isDate) {
            cell.text = plainDigits(number, m_format);
            const std::string suffix = m_format.isPercent ? "%" : m_format.suffix;
            if (!suffix.empty()) {
                cell.remark = std::make_shared<CellRemark>(CellRemark{std::nullopt, suffix});
            }
        } else if (const auto moment = momentText(number, m_format, m_book.is1904)) {
            const std::string withZone = *moment + m_format.suffix;
            cell.text = base::Instant::fromText(withZone) ? withZone : *moment;
        } else {
            cell.remark = broken({&kCellBroken, "", {base::term("a date outside the calendar")}});
        }
    }

    const BookParts& m_book;
    ReadSheet& m_sheet;
    Used& m_used;
    std::optional<base::Fault> m_fault;
    NumberFormat m_format;
    std::string m_type;
    std::string m_value;
    std::size_t m_column = 0;
    std::size_t m_nextColumn = 0;
    int m_row = 0;
    bool m_isValue = false;
    bool m_hasValue = false;
    bool m_hasFormula = false;
    bool m_isSpoken = false;
};

}  // namespace

base::Result<std::vector<ReadSheet>> readSpreadsheet(const std::filesystem::path& file) {
    auto packed = PackedFile::open(file);
    if (!packed) {
        return packed.fault();
    }
    const auto book = detail::readBookParts(**packed);
    if (!book) {
        return book.fault();
    }
    std::vector<ReadSheet> sheets;
    Used used;
    for (const detail::SheetEntry& entry : book->sheets) {
        sheets.push_back({entry.name, {}});
        SheetListener listener(*book, sheets.back(), used);
        const base::Outcome outcome = readXml(**packed, entry.part, listener);
        if (!outcome) {
            return outcome.fault();
        }
    }
    return sheets;
}

}  // namespace ww::spreadsheet
