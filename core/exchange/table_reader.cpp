#include "core/exchange/table_reader.h"

#include <algorithm>
#include <cmath>

#include "core/spreadsheet/cell_name.h"

namespace ww::exchange {

namespace {

constexpr std::size_t kLongestText = 4000;
/// No quantity of a building's loop comes near this in any unit of the table.
constexpr double kHuge = 1e9;

std::string_view trimmed(std::string_view text) {
    const auto isBlank = [](char c) { return c == ' ' || c == '\t'; };
    while (!text.empty() && isBlank(text.front())) {
        text.remove_prefix(1);
    }
    while (!text.empty() && isBlank(text.back())) {
        text.remove_suffix(1);
    }
    return text;
}

std::string lower(std::string_view text) {
    std::string out(text);
    std::transform(out.begin(), out.end(), out.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return out;
}

std::string unitsOf(Dimension dimension) {
    return dimension == Dimension::Pressure ? quantity::pressureSymbols() : quantity::symbolsOf(dimension);
}

std::string shortened(std::string_view text) {
    return std::string(text.substr(0, 60));
}

std::size_t distance(std::string_view a, std::string_view b) {
    std::vector<std::size_t> line(b.size() + 1);
    for (std::size_t k = 0; k <= b.size(); ++k) {
        line[k] = k;
    }
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = line[0];
        line[0] = i;
        for (std::size_t k = 1; k <= b.size(); ++k) {
            const std::size_t above = line[k];
            line[k] = std::min({line[k] + 1, line[k - 1] + 1, diagonal + (a[i - 1] == b[k - 1] ? 0 : 1)});
            diagonal = above;
        }
    }
    return line[b.size()];
}

}  // namespace

std::string nearest(std::string_view word, const std::vector<std::string>& known) {
    std::string best;
    std::size_t least = static_cast<std::size_t>(-1);
    const std::string wanted = lower(word.substr(0, 60));
    for (const std::string& candidate : known) {
        const std::size_t apart = distance(wanted, lower(candidate));
        if (apart < least) {
            least = apart;
            best = candidate;
        }
    }
    return best;
}

std::optional<Unit> unitFor(std::string_view symbol, Dimension dimension, std::string_view column) {
    if (dimension == Dimension::FlowCoefficient) {
        return quantity::unitFromSymbol(column, dimension);
    }
    return dimension == Dimension::Pressure ? quantity::pressureOrHeadUnit(symbol)
                                            : quantity::unitFromSymbol(symbol, dimension);
}

std::string headingName(std::string_view heading) {
    return lower(trimmed(heading.substr(0, heading.find('['))));
}

TableReader::TableReader(const TableSource& source, std::string file, std::vector<ColumnSpec> columns,
                         bool isRequired, std::vector<RowFault>& faults)
    : m_file(std::move(file)), m_faults(faults) {
    for (ColumnSpec& spec : columns) {
        m_columns.push_back({spec, std::nullopt, std::nullopt});
    }
    SourceTable table = source.table(m_file);
    for (const CsvFailure& failure : table.failures) {
        if (isRequired || table.isThere) {
            m_faults.push_back({m_file, failure.line, "", failure.fault});
        }
    }
    if (!table.failures.empty()) {
        return;
    }
    m_text = std::move(table.text);
    for (CellFailure& broken : table.cellFailures) {
        m_broken.emplace(std::pair(broken.line, broken.index), std::move(broken.fault));
    }
    readHeader();
}

void TableReader::readHeader() {
    const std::size_t before = m_faults.size();
    m_row = &m_text.rows.front();
    tellBroken();
    for (std::size_t i = 0; i < m_row->cells.size(); ++i) {
        takeHeaderCell(trimmed(m_row->cells[i]), i);
    }
    for (const Column& column : m_columns) {
        if (column.spec.isRequired && !column.index) {
            fault(column.spec.name, kColumnMissing, {std::string(column.spec.name)});
        }
    }
    m_isUsable = m_faults.size() == before;
    m_row = nullptr;
}

void TableReader::takeHeaderCell(std::string_view cell, std::size_t index) {
    if (cell.empty()) {
        return;
    }
    const std::size_t bracket = cell.find('[');
    const std::string_view name = trimmed(cell.substr(0, bracket));
    std::optional<std::string_view> unit;
    if (bracket != std::string_view::npos && cell.back() == ']') {
        unit = trimmed(cell.substr(bracket + 1, cell.size() - bracket - 2));
    }
    Column* column = find(name);
    if (column == nullptr) {
        std::vector<std::string> known;
        std::string all;
        for (const Column& candidate : m_columns) {
            known.emplace_back(candidate.spec.name);
            all += (all.empty() ? "" : ", ") + known.back();
        }
        fault(name, kColumnUnknown, {shortened(name), nearest(name, known), all});
        return;
    }
    const std::string own(column->spec.name);
    if (column->index) {
        fault(own, kColumnRepeated, {own});
        return;
    }
    column->index = index;
    if (!column->spec.dimension) {
        if (unit || bracket != std::string_view::npos) {
            fault(own, kColumnUnitUnwanted, {own});
        }
        return;
    }
    const Dimension dimension = *column->spec.dimension;
    if (!unit || unit->empty()) {
        fault(own, kColumnUnitMissing, {own, unitsOf(dimension)});
        return;
    }
    column->unit = unitFor(*unit, dimension, own);
    if (!column->unit) {
        fault(own, kColumnUnitUnknown, {shortened(*unit), own, unitsOf(dimension)});
    }
}

TableReader::Column* TableReader::find(std::string_view name) {
    const std::string wanted = lower(name);
    const auto found = std::find_if(m_columns.begin(), m_columns.end(),
                                    [&](const Column& column) { return lower(column.spec.name) == wanted; });
    return found == m_columns.end() ? nullptr : &*found;
}

const TableReader::Column* TableReader::find(std::string_view name) const {
    const auto found = std::find_if(m_columns.begin(), m_columns.end(),
                                    [&](const Column& column) { return column.spec.name == name; });
    EXPECTS(found != m_columns.end());
    return &*found;
}

bool TableReader::hasColumn(std::string_view column) const {
    return find(column)->index.has_value();
}

bool TableReader::next() {
    if (!m_isUsable || m_next >= m_text.rows.size()) {
        m_row = nullptr;
        return false;
    }
    m_row = &m_text.rows[m_next++];
    tellBroken();
    const std::size_t wanted = m_text.rows.front().cells.size();
    std::size_t used = m_row->cells.size();
    while (used > wanted && trimmed(m_row->cells[used - 1]).empty()) {
        --used;
    }
    if (used > wanted) {
        fault("", kRowTooLong, {std::to_string(used), std::to_string(wanted)});
    }
    return true;
}

std::string_view TableReader::cell(std::string_view column) const {
    const Column* found = find(column);
    if (!found->index || m_row == nullptr || *found->index >= m_row->cells.size()) {
        return {};
    }
    return trimmed(m_row->cells[*found->index]);
}

std::string TableReader::text(std::string_view column) {
    const std::string_view written = withoutGuard(cell(column));
    if (written.size() > kLongestText) {
        fault(column, kCellTextTooLong, {std::to_string(kLongestText)});
        return {};
    }
    return std::string(written);
}

std::string TableReader::requiredText(std::string_view column) {
    std::string out = text(column);
    if (out.empty()) {
        fault(column, kCellMissing);
    }
    return out;
}

std::optional<base::Decimal> TableReader::parseNumber(std::string_view column, std::string_view digits,
                                                      Sign sign) {
    const auto comma = m_text.separator == ',' ? base::CommaMeaning::Refused : base::CommaMeaning::Careful;
    auto number = base::Decimal::parse(digits, comma);
    if (!number) {
        fault(column, base::Fault(number.fault()));
        return std::nullopt;
    }
    if (sign != Sign::Any && number->value() < 0) {
        fault(column, kCellNegative, {number->text(), sign == Sign::Positive ? "above 0" : "0 or more"});
        return std::nullopt;
    }
    if (sign == Sign::Positive && number->value() == 0) {
        fault(column, kCellZero, {number->text()});
        return std::nullopt;
    }
    if (std::abs(number->value()) > kHuge) {
        fault(column, kCellHuge, {number->text()});
        return std::nullopt;
    }
    return std::move(*number);
}

std::optional<base::Decimal> TableReader::decimal(std::string_view column, Sign sign) {
    const std::string_view written = cell(column);
    return written.empty() ? std::nullopt : parseNumber(column, written, sign);
}

std::optional<int> TableReader::wholeNumber(std::string_view column, int largest) {
    const std::string_view written = cell(column);
    if (written.empty()) {
        return std::nullopt;
    }
    const auto number = base::Decimal::parse(written, base::CommaMeaning::Refused);
    const bool isGood =
        number.ok() && number->decimals() == 0 && number->value() >= 1 && number->value() <= largest;
    if (!isGood) {
        fault(column, kCellNotWhole, {shortened(written), std::to_string(largest)});
        return std::nullopt;
    }
    return static_cast<int>(number->value());
}

std::optional<base::Instant> TableReader::instant(std::string_view column) {
    const std::string_view written = cell(column);
    if (written.empty()) {
        return std::nullopt;
    }
    const auto moment = base::Instant::fromText(written);
    if (!moment) {
        fault(column, kCellNotADate, {shortened(written)});
    }
    return moment;
}

bool TableReader::yesNo(std::string_view column, bool otherwise) {
    const std::string written = lower(cell(column));
    if (written.empty()) {
        return otherwise;
    }
    for (const char* yes : {"yes", "true", "1"}) {
        if (written == yes) {
            return true;
        }
    }
    for (const char* no : {"no", "false", "0"}) {
        if (written == no) {
            return false;
        }
    }
    fault(column, kCellNotOneOf, {shortened(written), "yes, no"});
    return otherwise;
}

std::optional<TableReader::Entered> TableReader::entered(std::string_view column, Sign sign) {
    const std::string_view written = cell(column);
    if (written.empty()) {
        return std::nullopt;
    }
    const Column* found = find(column);
    const Dimension dimension = *found->spec.dimension;
    Unit unit = *found->unit;
    // A cell that was typed in another unit than its column's carries that unit behind a blank.
    std::string_view digits = written;
    if (const std::size_t blank = written.find_last_of(' '); blank != std::string_view::npos) {
        const std::string_view behind = written.substr(blank + 1);
        const bool isWord = !behind.empty() && (behind.front() < '0' || behind.front() > '9') &&
                            behind.front() != '.' && behind.front() != ',';
        if (isWord) {
            const auto own = unitFor(behind, dimension, column);
            if (!own) {
                fault(column, kColumnUnitUnknown,
                      {shortened(behind), std::string(column), unitsOf(dimension)});
                return std::nullopt;
            }
            unit = *own;
            digits = written.substr(0, blank);
        }
    }
    auto number = parseNumber(column, digits, sign);
    return number ? std::optional(Entered{std::move(*number), unit}) : std::nullopt;
}

std::optional<Measured<quantity::Ratio>> TableReader::efficiency(std::string_view column) {
    auto value = measured<quantity::Ratio>(column, Sign::Positive);
    if (value && value->value.si() > 1) {
        fault(column, kCellEfficiency, {value->text()});
        return std::nullopt;
    }
    return value;
}

std::optional<Measured<quantity::PressureDifference>> TableReader::difference(std::string_view column,
                                                                              Sign sign,
                                                                              quantity::Density density) {
    const auto got = entered(column, sign);
    return got ? std::optional(quantity::measuredDifference(got->digits, got->unit, density)) : std::nullopt;
}

void TableReader::fault(std::string_view column, const base::MessageForm& form,
                        std::vector<std::string> arguments) {
    fault(column, base::Fault{&form, "", std::move(arguments)});
}

void TableReader::fault(std::string_view column, base::Fault made) {
    faultAt(row(), column, std::move(made));
}

bool TableReader::hasFaults(std::string_view file) const {
    return std::any_of(m_faults.begin(), m_faults.end(),
                       [&](const RowFault& fault) { return fault.file == file; });
}

void TableReader::tellBroken() {
    const int line = row();
    for (auto at = m_broken.lower_bound({line, 0}); at != m_broken.end() && at->first.first == line; ++at) {
        const std::size_t index = at->first.second;
        const auto& heads = m_text.rows.front().cells;
        m_faults.push_back({m_file, line, index < heads.size() ? headingName(heads[index]) : std::string(),
                            at->second, spreadsheet::cellName({line, index})});
    }
}

void TableReader::faultAt(int row, std::string_view column, base::Fault made) {
    // A cell without a value has been told; that it is empty besides says nothing more.
    const auto found = std::find_if(m_columns.begin(), m_columns.end(),
                                    [&](const Column& known) { return known.spec.name == column; });
    if (found != m_columns.end() && found->index && m_broken.contains({row, *found->index})) {
        return;
    }
    m_faults.push_back({m_file, row, std::string(column), std::move(made)});
}

}  // namespace ww::exchange
