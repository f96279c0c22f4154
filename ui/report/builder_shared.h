// What a builder of pages and its trials have in common. Part of page_builder.
#pragma once

#include <unordered_map>

#include "ui/report/page_builder.h"
#include "ui/report/table_widths.h"

namespace ww::ui::report {

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
