// No number with a unit crosses a function boundary of core as a bare double: its public headers are
// searched. Not for .cpp files and private sections, where a bare double ends in its SI unit.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "tests/lint/source_tree.h"

namespace ww::lint {

/// A double that a header may have although its name does not say that it has no unit, and why.
struct AllowedDouble {
    std::string path;
    std::string name;  ///< the variable's or function's; "*" for every double of this header
    std::string reason;
};

/// The list "path name: reason", one a line; lines that begin with # are remarks. What is not of this form
/// comes back as an entry without a reason.
std::vector<AllowedDouble> readAllowedDoubles(const std::string& text);

/// The public doubles of one header of core that have a unit in their name, or neither a word that says that
/// they are without one nor an entry in the list. Headers of core/quantity (whose work it is to turn doubles
/// into quantities) and in folders named detail have none. `used` collects "path name" of the entries that
/// were needed.
std::vector<Violation> doubleViolations(const SourceFile& header, const std::vector<AllowedDouble>& allowed,
                                        std::set<std::string>& used);

}  // namespace ww::lint
