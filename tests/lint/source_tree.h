// The files of this source folder as texts, and what a rule says about one of them.
// Not the rules themselves: those are in the *_rules.h beside this file.
#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace ww::lint {

/// A file by its path from the top of the source folder, with slashes, and its bytes.
struct SourceFile {
    std::string path;
    std::string text;

    /// The path's ending, ".cpp"; empty where the name has no point.
    std::string_view ending() const;
    /// The path up to and without the last slash; empty at the top.
    std::string_view folder() const;
    /// Whether it is C++: .h or .cpp.
    bool isCode() const { return ending() == ".h" || ending() == ".cpp"; }
};

/// One place where a rule is broken. Line 0 means the file as a whole.
struct Violation {
    std::string path;
    std::size_t line = 0;
    std::string what;
};

/// "path:line: what", one violation a line; empty where there are none.
std::string listed(const std::vector<Violation>& violations);

/// Every file below the folders that hold sources (app, core, ui, tests, resources, sample_projects) and at
/// the top, hidden files left out, in order of path. Throws where the disk refuses.
std::vector<SourceFile> readSourceTree(const std::filesystem::path& top);

/// The names at the top, without hidden ones and build folders.
std::vector<std::string> namesAtTop(const std::filesystem::path& top);

}  // namespace ww::lint
