// One CSV table with its header understood: cells by column name, numbers with their units, every fault noted
// with file, row and column. Not for what the rows mean together.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/exchange/csv_text.h"
#include "core/exchange/table_source.h"
#include "core/project/record_kind.h"
#include "core/quantity/measured.h"

namespace ww::exchange {

using project::RecordKind;
using quantity::Dimension;
using quantity::Measured;
using quantity::Unit;

inline constexpr base::MessageForm kColumnMissing{"column_missing",
                                                  "the column \"{1}\" is missing; add it to the header row"};
inline constexpr base::MessageForm kColumnUnknown{
    "column_unknown", "the column \"{1}\" is not known; did you mean \"{2}\"? Known are: {3}"};
inline constexpr base::MessageForm kColumnRepeated{"column_repeated",
                                                   "the column \"{1}\" stands twice; keep one of them"};
inline constexpr base::MessageForm kColumnUnitMissing{
    "column_unit_missing", "the column \"{1}\" needs its unit in brackets; use one of {2}"};
inline constexpr base::MessageForm kColumnUnitUnknown{
    "column_unit_unknown", "\"{1}\" is not a unit that the column \"{2}\" can have; use one of {3}"};
inline constexpr base::MessageForm kColumnUnitUnwanted{
    "column_unit_unwanted", "the column \"{1}\" has no unit; write it without brackets"};
inline constexpr base::MessageForm kRowTooLong{
    "row_too_long",
    "the row has {1} cells and the header {2}; put a text that has a separator into quotation marks"};
inline constexpr base::MessageForm kCellMissing{"cell_missing", "the cell is empty; give a value"};
inline constexpr base::MessageForm kCellNegative{"cell_negative",
                                                 "{1} is negative; this value must be {2}, correct it"};
inline constexpr base::MessageForm kCellZero{"cell_zero", "this value must be above 0, not {1}; correct it"};
inline constexpr base::MessageForm kCellEfficiency{
    "cell_efficiency", "{1} is more than a whole; give an efficiency of 100 % at most"};
inline constexpr base::MessageForm kCellHuge{"cell_huge",
                                             "{1} is too large to be true; check digits and unit"};
inline constexpr base::MessageForm kCellNotOneOf{"cell_not_one_of",
                                                 "\"{1}\" is not known here; use one of {2}"};
inline constexpr base::MessageForm kCellNotADate{
    "cell_not_a_date", "\"{1}\" is not a date or time; write it as 2026-03-04 or 2026-03-04T14:02"};
inline constexpr base::MessageForm kCellNotWhole{"cell_not_whole",
                                                 "\"{1}\" is not a whole number from 1 to {2}; correct it"};
inline constexpr base::MessageForm kCellTextTooLong{"cell_text_too_long",
                                                    "the text has more than {1} characters; shorten it"};

/// What a column may carry.
struct ColumnSpec {
    std::string_view name;
    std::optional<Dimension> dimension;  ///< nothing: text or a plain number, no unit
    bool isRequired = false;             ///< the column must be there
};

inline constexpr base::MessageForm kNameNotKnown{"name_not_known",
                                                 "\"{1}\" is not known; write it as in {2}, or add it there"};

/// The known word nearest to `word` by edit distance; empty where there is none.
std::string nearest(std::string_view word, const std::vector<std::string>& known);

enum class Sign { Any, NotNegative, Positive };

/// Walks the rows of one table. Faults go to the list given; a cell with a fault reads as absent.
class TableReader {
  public:
    /// Reads the table; a missing one is a fault only where `isRequired`.
    TableReader(const TableSource& source, std::string file, std::vector<ColumnSpec> columns, bool isRequired,
                std::vector<RowFault>& faults);

    /// Whether the file could be read and its header understood.
    bool isUsable() const { return m_isUsable; }
    /// Steps to the next row; false at the end or where the table is unusable.
    bool next();
    /// The physical line of the row.
    int row() const { return m_row == nullptr ? 0 : m_row->line; }
    bool hasColumn(std::string_view column) const;

    /// The trimmed text; empty where absent.
    std::string text(std::string_view column);
    /// The text; an empty one is a fault.
    std::string requiredText(std::string_view column);
    /// Digits without a unit; nothing where empty, and, with a fault, where they are no number of that sign.
    std::optional<base::Decimal> decimal(std::string_view column, Sign sign);
    /// A number from 1 to `largest`; nothing where empty, and, with a fault, where it is none.
    std::optional<int> wholeNumber(std::string_view column, int largest);
    /// A date or a moment (ISO 8601); nothing where empty, and, with a fault, where it is none.
    std::optional<base::Instant> instant(std::string_view column);
    /// yes/no, true/false, 1/0; `otherwise` where empty.
    bool yesNo(std::string_view column, bool otherwise);
    /// Digits and unit as entered; the unit in the cell, else the header's. Nothing where empty or faulty.
    struct Entered {
        base::Decimal digits;
        Unit unit{};
    };
    /// `sign`: what the value may be; another is a fault.
    std::optional<Entered> entered(std::string_view column, Sign sign);
    template <class Q>
    std::optional<Measured<Q>> measured(std::string_view column, Sign sign) {
        const auto got = entered(column, sign);
        return got ? std::optional(quantity::measured<Q>(got->digits, got->unit)) : std::nullopt;
    }
    /// An efficiency, above zero and 100 % at most; another is a fault.
    std::optional<Measured<quantity::Ratio>> efficiency(std::string_view column);
    /// A difference of pressure, or a head of the flowing fluid for which its density is needed.
    std::optional<Measured<quantity::PressureDifference>> difference(std::string_view column, Sign sign,
                                                                     quantity::Density density);

    /// Notes a fault in this row.
    void fault(std::string_view column, const base::MessageForm& form,
               std::vector<std::string> arguments = {});
    void fault(std::string_view column, base::Fault fault);
    /// Notes a fault in an earlier row of this table.
    void faultAt(int row, std::string_view column, base::Fault fault);
    /// Notes that `word` is none of the names given by known(), which belong to the table `where`. The form's
    /// last argument is the nearest of them. Without any, and after many such faults, it is told plainly; not
    /// at all where there are no names because that table is itself at fault.
    template <class Known>
    void unknown(int row, std::string_view column, const base::MessageForm& form,
                 std::vector<std::string> arguments, const std::string& word, const char* where,
                 Known known) {
        const std::vector<std::string> names =
            ++m_suggestions <= kMostSuggestions ? known() : std::vector<std::string>{};
        if (names.empty() && m_suggestions <= kMostSuggestions && hasFaults(where)) {
            --m_suggestions;
            return;
        }
        if (names.empty()) {
            faultAt(row, column, {&kNameNotKnown, "", {word, where}});
            return;
        }
        arguments.push_back(nearest(word, names));
        faultAt(row, column, {&form, "", std::move(arguments)});
    }

  private:
    /// Looking for the nearest name costs time; nobody reads more of them in one table.
    static constexpr int kMostSuggestions = 200;
    struct Column {
        ColumnSpec spec;
        std::optional<std::size_t> index;
        std::optional<Unit> unit;
    };

    void readHeader();
    /// Notes the cells of this row that hold no value.
    void tellBroken();
    void takeHeaderCell(std::string_view cell, std::size_t index);
    /// Whether a table has been told to be at fault.
    bool hasFaults(std::string_view file) const;
    Column* find(std::string_view name);
    const Column* find(std::string_view name) const;
    std::string_view cell(std::string_view column) const;
    std::optional<base::Decimal> parseNumber(std::string_view column, std::string_view digits, Sign sign);

    std::string m_file;
    std::vector<Column> m_columns;
    std::vector<RowFault>& m_faults;
    CsvText m_text;
    const CsvRow* m_row = nullptr;
    std::size_t m_next = 1;
    bool m_isUsable = false;
    int m_suggestions = 0;
    std::map<std::pair<int, std::size_t>, base::Fault>
        m_broken;  ///< cells without a value, by line and index
};

/// The name in a heading, in small letters: "dp" of "dp [kPa]".
std::string headingName(std::string_view heading);

/// The unit a column of this dimension may have; pressures may also be heads, and pump heads pressures.
std::optional<Unit> unitFor(std::string_view symbol, Dimension dimension, std::string_view column);

}  // namespace ww::exchange
