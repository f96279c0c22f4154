// Widths of a table's columns by what they must hold. Not for tables that hide columns where room is short.
#pragma once

#include <QTableView>
#include <span>

namespace ww::ui {

/// Gives each column room for so many digits, and what is left of the view's width to column `filling`.
void fitColumns(QTableView& table, std::span<const int> digits, int filling);

}  // namespace ww::ui
