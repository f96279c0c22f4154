// What every file of this program looks like from outside: its name, its head, its length, the words it must
// not hold. Not for includes (include_rules.h).
#pragma once

#include <set>
#include <string>
#include <vector>

#include "tests/lint/source_tree.h"

namespace ww::lint {

/// A C++ header opens with a comment that says what it is for, and is included once. Other files: none.
std::vector<Violation> headViolations(const SourceFile& file);

/// A C++ file over 700 lines says in its head, in the words "longer than", why it is.
std::vector<Violation> lengthViolations(const SourceFile& file);

/// Words that announce work left undone, and names of papers that a reader of this program does not have. C++
/// files, scripts and CMake files; those of this folder, which must name the words, are left out.
std::vector<Violation> wordViolations(const SourceFile& file);

/// Files and folders are named in snake_case. README.md and CMakeLists.txt are free, and so are the names
/// below resources, which other programs prescribe.
std::vector<Violation> nameViolations(const SourceFile& file);

/// What a page of Markdown names in backticks as a file or folder and `paths` do not hold, wherever it stands
/// in the tree; a name may lack its ending. What holds a capital or a star stands for several and is passed
/// over, and so is what a build makes.
std::vector<Violation> namedPathViolations(const SourceFile& page, const std::set<std::string>& paths);

/// The names at the top of the source folder that do not belong there.
std::vector<Violation> topViolations(const std::vector<std::string>& namesAtTop);

}  // namespace ww::lint
