// A cell that holds one word of an enumeration. Not for free text.
#pragma once

#include "core/exchange/table_reader.h"
#include "core/project/names.h"

namespace ww::exchange {

/// The value; nothing where the cell is empty, and nothing with a fault that lists the words where it is
/// none.
template <class Enumeration>
std::optional<Enumeration> nameCell(TableReader& table, std::string_view column) {
    const std::string written = table.text(column);
    if (written.empty()) {
        return std::nullopt;
    }
    const auto value = project::fromName<Enumeration>(written);
    if (!value) {
        table.fault(column, kCellNotOneOf, {written, project::namesOf<Enumeration>()});
    }
    return value;
}

}  // namespace ww::exchange
