// Opening a workbook from the command line.
#pragma once

#include "app/commands/command.h"
#include "core/workbook/workbook.h"

namespace ww::app {

/// The workbook, or null after printing why not.
std::unique_ptr<workbook::Workbook> openWorkbook(Surroundings& surroundings, const std::string& file,
                                                 workbook::OpenMode mode);

}  // namespace ww::app
