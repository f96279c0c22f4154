// The steps that put a whole file in place: beside its name, on the disk, then renamed. Not for what is in
// it.
#pragma once

#include <filesystem>

#include "core/base/result.h"

namespace ww::store {

/// Waits until the bytes of a file are on the disk.
base::Outcome syncFile(const std::filesystem::path& file);

/// A name beside `file` that nothing has yet.
std::filesystem::path nameBeside(const std::filesystem::path& file);

/// Gives a finished file its name, replacing what has it, and waits for the disk.
base::Outcome moveReplacing(const std::filesystem::path& from, const std::filesystem::path& to);

/// The same, but fails where the name is taken.
base::Outcome moveToNewName(const std::filesystem::path& from, const std::filesystem::path& to);

/// Removes a file and the rollback journal that belongs to it, where they are.
void removeDatabaseFile(const std::filesystem::path& file);

}  // namespace ww::store
