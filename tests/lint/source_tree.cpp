#include "tests/lint/source_tree.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace ww::lint {
namespace {

namespace fs = std::filesystem;

constexpr std::array<std::string_view, 6> kSourceFolders{"app",   "core",      "ui",
                                                         "tests", "resources", "sample_projects"};

bool isHidden(const fs::path& path) {
    return path.filename().string().starts_with('.');
}

std::string contents(const fs::path& path) {
    std::ifstream stream(path, std::ios::binary);
    if (!stream) {
        throw std::runtime_error("cannot read " + path.string());
    }
    return std::string(std::istreambuf_iterator<char>(stream), {});
}

void readBelow(const fs::path& top, const fs::path& folder, std::vector<SourceFile>& files) {
    for (auto entry = fs::recursive_directory_iterator(folder); entry != fs::recursive_directory_iterator();
         ++entry) {
        if (isHidden(entry->path())) {
            entry.disable_recursion_pending();
            continue;
        }
        if (entry->is_regular_file()) {
            files.push_back(
                {entry->path().lexically_relative(top).generic_string(), contents(entry->path())});
        }
    }
}

}  // namespace

std::string_view SourceFile::ending() const {
    const std::string_view name = std::string_view(path).substr(path.rfind('/') + 1);
    const std::size_t point = name.rfind('.');
    return point == std::string_view::npos ? std::string_view() : name.substr(point);
}

std::string_view SourceFile::folder() const {
    const std::size_t slash = path.rfind('/');
    return slash == std::string::npos ? std::string_view() : std::string_view(path).substr(0, slash);
}

std::string listed(const std::vector<Violation>& violations) {
    std::string lines;
    for (const Violation& violation : violations) {
        lines += violation.path;
        if (violation.line > 0) {
            lines += ":" + std::to_string(violation.line);
        }
        lines += ": " + violation.what + "\n";
    }
    return lines;
}

std::vector<SourceFile> readSourceTree(const fs::path& top) {
    std::vector<SourceFile> files;
    for (const auto& entry : fs::directory_iterator(top)) {
        if (entry.is_regular_file() && !isHidden(entry.path())) {
            files.push_back({entry.path().filename().string(), contents(entry.path())});
        }
    }
    for (const std::string_view folder : kSourceFolders) {
        if (fs::is_directory(top / folder)) {
            readBelow(top, top / folder, files);
        }
    }
    std::sort(files.begin(), files.end(),
              [](const SourceFile& a, const SourceFile& b) { return a.path < b.path; });
    return files;
}

std::vector<std::string> namesAtTop(const fs::path& top) {
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(top)) {
        const std::string name = entry.path().filename().string();
        if (!isHidden(entry.path()) && name != "build" && !name.starts_with("build-")) {
            names.push_back(name);
        }
    }
    std::sort(names.begin(), names.end());
    return names;
}

}  // namespace ww::lint
