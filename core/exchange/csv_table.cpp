#include "core/exchange/csv_table.h"

#include <algorithm>
#include <fstream>

namespace ww::exchange {

namespace {

std::string symbolOf(Unit unit) {
    return std::string(quantity::symbol(unit));
}

std::optional<Unit> usualUnit(Dimension dimension) {
    switch (dimension) {
        case Dimension::Flow:
            return Unit::LitrePerSecond;
        case Dimension::Pressure:
            return Unit::Kilopascal;
        case Dimension::Length:
            return Unit::Metre;
        case Dimension::Power:
            return Unit::Kilowatt;
        case Dimension::RotationalSpeed:
            return Unit::RevolutionPerMinute;
        case Dimension::Voltage:
            return Unit::Volt;
        case Dimension::Current:
            return Unit::Ampere;
        case Dimension::Fraction:
            return Unit::Percent;
        default:
            return std::nullopt;
    }
}

}  // namespace

CsvTable::CsvTable(const std::vector<ColumnSpec>& columns) {
    addColumns(columns);
}

void CsvTable::addColumns(const std::vector<ColumnSpec>& columns) {
    for (const ColumnSpec& column : columns) {
        m_columns.emplace_back(column.name);
        const auto unit = column.dimension ? usualUnit(*column.dimension) : std::nullopt;
        if (unit) {
            setUsualUnit(m_columns.back(), *unit);
        }
    }
}

std::vector<std::optional<Unit>> CsvTable::units() const {
    std::vector<std::optional<Unit>> all;
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        all.push_back(unitOf(i));
    }
    return all;
}

std::vector<std::string> CsvTable::header(const std::vector<std::optional<Unit>>& units) const {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        names.push_back(units[i] ? m_columns[i] + "[" + symbolOf(*units[i]) + "]" : m_columns[i]);
    }
    return names;
}

std::string CsvTable::written() const {
    const auto columnUnits = units();
    std::string out = csvRecord(header(columnUnits));
    for (const auto& row : m_rows) {
        std::vector<std::string> cells;
        for (std::size_t i = 0; i < row.size(); ++i) {
            const bool isForeign = row[i].unit && row[i].unit != columnUnits[i];
            const std::string text = spreadsheet::plainText(row[i].value);
            cells.push_back(isForeign ? text + " " + symbolOf(*row[i].unit) : text);
        }
        out += csvRecord(cells);
    }
    return out;
}

spreadsheet::WrittenSheet CsvTable::sheet(std::string name) const {
    spreadsheet::WrittenSheet made;
    made.name = std::move(name);
    const auto columnUnits = units();
    std::vector<spreadsheet::WrittenCell> head;
    for (std::string& heading : header(columnUnits)) {
        head.emplace_back(std::move(heading));
    }
    made.rows.push_back(std::move(head));
    for (const auto& row : m_rows) {
        auto& cells = made.rows.emplace_back();
        for (std::size_t i = 0; i < row.size(); ++i) {
            const bool isForeign = row[i].unit && row[i].unit != columnUnits[i];
            cells.push_back(isForeign ? spreadsheet::WrittenCell(spreadsheet::plainText(row[i].value) + " " +
                                                                 symbolOf(*row[i].unit))
                                      : row[i].value);
        }
    }
    return made;
}

base::Outcome CsvTable::write(const std::filesystem::path& file) const {
    std::ofstream stream(file, std::ios::binary | std::ios::trunc);
    stream << written();
    stream.close();
    if (!stream) {
        return base::Fault{&kTableNotWritten, file.string(), {}};
    }
    return base::Done{};
}

std::optional<Unit> CsvTable::unitOf(std::size_t column) const {
    std::map<Unit, int> votes;
    for (const auto& row : m_rows) {
        if (row[column].unit) {
            ++votes[*row[column].unit];
        }
    }
    const auto usual = m_usual.find(m_columns[column]);
    if (votes.empty()) {
        return usual == m_usual.end() ? std::nullopt : std::optional(usual->second);
    }
    return std::max_element(votes.begin(), votes.end(),
                            [](const auto& a, const auto& b) { return a.second < b.second; })
        ->first;
}

}  // namespace ww::exchange
