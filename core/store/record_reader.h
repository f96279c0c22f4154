// Rows of a workbook turned back into records, exactly as they were entered.
// Not for what follows from records (project/).
#pragma once

#include <optional>

#include "core/project/edit.h"
#include "core/project/project.h"
#include "core/store/database.h"

namespace ww::store {

/// The whole job. Fails where a value cannot be read, with table and column, or where there is not exactly
/// one job.
base::Result<project::Project> readProject(const Database& database);

/// One record as it stands; nothing where there is none. `density` of the job's fluid turns heads into
/// pressures.
base::Result<std::optional<project::AnyRecord>> readRecord(const Database& database,
                                                           const project::RecordRef& record,
                                                           quantity::Density density);

/// A fact about the file itself; nothing where it is not there.
base::Result<std::optional<std::string>> readMeta(const Database& database, std::string_view key);

}  // namespace ww::store
