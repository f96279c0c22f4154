#include "core/store/kept_copies.h"

#include <algorithm>
#include <charconv>
#include <optional>
#include <string>
#include <vector>

#include "core/store/open_file.h"
#include "core/store/record_reader.h"
#include "core/store/schema.h"

namespace ww::store {

namespace {

constexpr std::string_view kBeforeVersion = ".schema-";

/// The schema in the name of a kept copy of this file; nothing for any other name.
std::optional<std::int64_t> versionInName(const std::filesystem::path& copy,
                                          const std::filesystem::path& file) {
    const std::string start = file.stem().string() + std::string(kBeforeVersion);
    const std::string name = copy.stem().string();
    if (copy.extension() != file.extension() || !name.starts_with(start)) {
        return std::nullopt;
    }
    std::int64_t version = 0;
    const char* end = name.data() + name.size();
    const auto read = std::from_chars(name.data() + start.size(), end, version);
    const bool isNamedSo =
        read.ec == std::errc() && read.ptr == end && keptCopyOf(file, version).filename() == copy.filename();
    return isNamedSo ? std::optional(version) : std::nullopt;
}

bool holdsWorkbook(const std::filesystem::path& copy, const std::string& workbookId) {
    const auto database = openUnchecked(copy);
    if (!database) {
        return false;
    }
    const auto id = readMeta(*database, kWorkbookIdKey);
    return id && *id == workbookId;
}

}  // namespace

std::filesystem::path keptCopyOf(const std::filesystem::path& file, std::int64_t version) {
    const std::string name = file.stem().string() + std::string(kBeforeVersion) + std::to_string(version) +
                             file.extension().string();
    return file.parent_path() / name;
}

void removeOldKeptCopies(const Database& database) {
    const std::filesystem::path& file = database.file();
    const auto id = readMeta(database, kWorkbookIdKey);
    if (!id || !*id) {
        return;
    }
    const std::filesystem::path folder = file.parent_path().empty() ? "." : file.parent_path();
    std::vector<std::int64_t> versions;
    std::error_code error;
    for (std::filesystem::directory_iterator at(folder, error), end; !error && at != end;
         at.increment(error)) {
        const auto version = versionInName(at->path(), file);
        if (version && holdsWorkbook(at->path(), **id)) {
            versions.push_back(*version);
        }
    }
    std::sort(versions.rbegin(), versions.rend());
    for (std::size_t i = kMostKeptCopies; i < versions.size(); ++i) {
        std::error_code ignored;
        std::filesystem::remove(keptCopyOf(file, versions[i]), ignored);
    }
}

}  // namespace ww::store
