// Whether an output (report, export) may be written to a path. Not for workbooks themselves.
#pragma once

#include <filesystem>
#include <optional>

#include "core/base/fault.h"

namespace ww::workbook {

inline constexpr base::MessageForm kTargetIsAWorkbook{
    "target_is_a_workbook", "a workbook stands there and would be lost; give the output another name"};

/// The fault that forbids writing there: an existing workbook (told by its content, whatever its name) is
/// never replaced by an output. Nothing where the path is free or holds anything else.
std::optional<base::Fault> refusalToReplace(const std::filesystem::path& target);

}  // namespace ww::workbook
