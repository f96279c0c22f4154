// The desktop program: one window for each workbook. Not for commands without a display.
#pragma once

#include <QStringList>

#include "ui/preferences.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

/// The windows that a session begins with: one for each file; without files one for each workbook that the
/// last session did not close (it was killed, the battery died), and where there is none an empty one. A
/// window deletes itself when it is closed. `preferences` must outlive the windows.
void openFirstWindows(const Desk& desk, Preferences& preferences, const QStringList& files);

/// Runs until the last window is closed. File arguments are opened, each in a window. Gives
/// the exit status: 2 for an option that neither this program nor Qt has.
int runDesktop(int argc, char** argv);

}  // namespace ww::ui
