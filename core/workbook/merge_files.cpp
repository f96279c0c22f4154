#include "core/workbook/merge_files.h"

#include <algorithm>
#include <iterator>

#include "core/store/file_steps.h"
#include "core/store/store_messages.h"

namespace ww::workbook {

namespace {

using base::Fault;
using base::Result;

Result<MergedFiles> mergeIntoPart(const Workbook& first, const std::filesystem::path& second,
                                  const std::filesystem::path& part, const Session& session) {
    if (auto copied = first.saveCopy(part); !copied) {
        return copied.fault();
    }
    auto merged = Workbook::open(part, OpenMode::ReadWrite, session);
    if (!merged) {
        return merged.fault();
    }
    auto report = (*merged)->merge(second);
    if (!report) {
        return report.fault();
    }
    return MergedFiles{std::move(*report), openConflicts((*merged)->project())};
}

}  // namespace

std::vector<project::MergeConflict> openConflicts(const project::Project& project) {
    std::vector<project::MergeConflict> open;
    std::copy_if(project.mergeConflicts().begin(), project.mergeConflicts().end(), std::back_inserter(open),
                 [](const auto& conflict) { return conflict.choice == project::ConflictChoice::Open; });
    return open;
}

Result<MergedFiles> mergeFiles(const std::filesystem::path& first, const std::filesystem::path& second,
                               const std::filesystem::path& out, const Session& session) {
    std::error_code ignored;
    if (std::filesystem::exists(out, ignored)) {
        return Fault{&store::kFileExists, out.string(), {}};
    }
    if (std::filesystem::equivalent(first, second, ignored)) {
        return Fault{&kMergeWithItself, second.string(), {}};
    }
    const auto opened = Workbook::open(first, OpenMode::ReadOnly, session);
    if (!opened) {
        return opened.fault();
    }
    const auto part = store::nameBeside(out);
    auto merged = mergeIntoPart(**opened, second, part, session);
    if (merged) {
        if (auto moved = store::moveToNewName(part, out); !moved) {
            merged = moved.fault();
        }
    }
    if (!merged) {
        store::removeDatabaseFile(part);
        Fault fault = merged.fault();
        // The name beside means nothing to the person.
        fault.subject = fault.subject == part.string() ? out.string() : fault.subject;
        return fault;
    }
    return merged;
}

}  // namespace ww::workbook
