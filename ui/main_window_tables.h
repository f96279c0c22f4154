// What the main window tells of tables and files that went out or came in.
#pragma once

#include "core/base/fault.h"

namespace ww::ui {

inline constexpr base::MessageForm kFileWritten{"file_written",
                                                "what was asked for is in {1}; open it from there"};
inline constexpr base::MessageForm kImported{"imported", "{1} is in the job; Ctrl+Z takes it back"};

}  // namespace ww::ui
