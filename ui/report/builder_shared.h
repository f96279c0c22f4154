// What a builder of pages and its trials have in common. Part of page_builder.
#pragma once

#include <array>
#include <unordered_map>

#include "ui/report/page_builder.h"

namespace ww::ui::report {

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

struct PageBuilder::Shared {
    /// Measured when it is first asked for.
    const MeasuredTable& measured(const ww::report::Table& table);

    TextMeasure texts;
    std::unordered_map<const ww::report::Table*, MeasuredTable> tables;  ///< of the report
    Watch watch;
    std::size_t pages = 0;  ///< there so far, without those of trials
    bool isGivenUp = false;
};

}  // namespace ww::ui::report
