// Two files become a third: merging without changing either. Not for merging into an open workbook
// (Workbook::merge).
#pragma once

#include "core/workbook/workbook.h"

namespace ww::workbook {

/// What merging two files gave.
struct MergedFiles {
    MergeReport report;
    std::vector<project::MergeConflict> open;  ///< all conflicts that nobody has decided yet, older ones too
};

/// Writes the workbook `first` with what its copy `second` did beside it, into a file that does not exist
/// yet. Both are only read. Fails, leaving nothing behind, where `out` exists (kFileExists) or as
/// Workbook::merge() does.
base::Result<MergedFiles> mergeFiles(const std::filesystem::path& first, const std::filesystem::path& second,
                                     const std::filesystem::path& out, const Session& session);

/// The conflicts of a job that nobody has decided yet, in order of first entry.
std::vector<project::MergeConflict> openConflicts(const project::Project& project);

}  // namespace ww::workbook
