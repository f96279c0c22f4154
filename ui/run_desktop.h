// The desktop program: one window for each workbook. Not for commands without a display.
#pragma once

namespace ww::ui {

/// Runs until the last window is closed. File arguments are opened, each in a window. Gives the exit status.
int runDesktop(int argc, char** argv);

}  // namespace ww::ui
