// How wide the columns of a report's table are, so that no more of its words break than must. Not for drawing
// (page_table.cpp).
#pragma once

#include <array>
#include <vector>

#include "ui/report/paper_text.h"

namespace ww::ui::report {

/// Sizes of the type of a table, and what the shape of a state takes before its word; in points.
inline constexpr double kTableText = 8.0;
inline constexpr double kTableHead = 7.5;
inline constexpr double kStateRoom = 11.0;

/// Which words of the cells of a table stay whole; each leaves more to be broken than the one before.
enum class Whole { Words, Numbers, Dates, Nothing };
inline constexpr std::array kWholes{Whole::Words, Whole::Numbers, Whole::Dates, Whole::Nothing};

/// The widest unbroken word of each column, in dots, for each of kWholes.
using WidestWords = std::array<std::vector<double>, kWholes.size()>;

/// What is drawn of a table, and how wide its words are.
struct MeasuredTable {
    std::vector<std::size_t> columns;  ///< those in which something stands
    WidestWords widest;                ///< of these columns, in their order
};

MeasuredTable measuredTable(const ww::report::Table& table, TextMeasure& texts);

/// The width in dots of a table in which no word breaks, with so many dots left and right of each cell.
double leastWidth(const MeasuredTable& measured, double padding);

/// The widths in dots of the drawn columns, `width` together: their shares, but none so narrow that a word of
/// its heading breaks. All words of the cells stay whole too where there is room for them, else numbers and
/// dates, else dates alone.
std::vector<double> columnWidths(const ww::report::Table& table, const MeasuredTable& measured, double width,
                                 double padding);

}  // namespace ww::ui::report
