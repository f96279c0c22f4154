// The bytes of a file that a command was given.
#pragma once

#include <string>

#include "core/base/result.h"

namespace ww::app {

inline constexpr base::MessageForm kFileUnreadable{
    "command_file_unreadable", "the file cannot be read; give the path of a file that is there"};

/// Everything in a file; fails where it cannot be read or is larger than 1 GiB.
base::Result<std::string> wholeFile(const std::string& file);

}  // namespace ww::app
