// A section of a report as one text, cells with lines between them: for finding what it says.
#pragma once

#include <string>

#include "core/report/report.h"

namespace ww::support {

inline std::string textOf(const report::Section& section) {
    std::string all;
    for (const report::Statement& statement : section.opening) {
        all += base::english(statement) + "\n";
    }
    for (const report::Fact& fact : section.facts) {
        all += base::english(fact.label) + ": " + base::english(fact.value) + "\n";
    }
    for (const report::Statement& statement : section.statements) {
        all += base::english(statement) + "\n";
    }
    for (const report::Table& table : section.tables) {
        for (const auto& row : table.rows) {
            for (const report::Cell& cell : row) {
                all += cell.text + "|";
            }
            all += "\n";
        }
    }
    for (const report::Statement& statement : section.closing) {
        all += base::english(statement) + "\n";
    }
    return all;
}

}  // namespace ww::support
