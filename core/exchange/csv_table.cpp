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

std::string CsvTable::written() const {
    std::vector<std::string> header;
    std::vector<std::optional<Unit>> units;
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        units.push_back(unitOf(i));
        header.push_back(units[i] ? m_columns[i] + "[" + symbolOf(*units[i]) + "]" : m_columns[i]);
    }
    std::string out = csvRecord(header);
    for (const auto& row : m_rows) {
        std::vector<std::string> cells;
        for (std::size_t i = 0; i < row.size(); ++i) {
            const bool isForeign = row[i].unit && row[i].unit != units[i];
            cells.push_back(isForeign ? row[i].text + " " + symbolOf(*row[i].unit) : row[i].text);
        }
        out += csvRecord(cells);
    }
    return out;
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
