// Which folder may include which, and where a library's headers may be seen.
// Not for what a header contains (file_rules.h, quantity_rules.h).
#pragma once

#include <set>
#include <string>
#include <vector>

#include "tests/lint/source_tree.h"

namespace ww::lint {

/// The folders of core that a folder of core may include, itself and everything its neighbours rest on among
/// them; empty for a folder that the table does not list.
std::set<std::string> foldersAllowed(const std::string& coreFolder);

/// The #include lines of one C++ file against the table of folders and the list of libraries. `paths` are the
/// files of the tree: an include of this program must name one of them from the top.
std::vector<Violation> includeViolations(const SourceFile& file, const std::set<std::string>& paths);

}  // namespace ww::lint
