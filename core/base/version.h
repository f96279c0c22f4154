// The version of this program.
#pragma once

#include <string_view>

namespace ww::base {

/// As in "0.6.0": of the build, from the project's CMakeLists.
std::string_view version();

}  // namespace ww::base
