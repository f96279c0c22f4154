// Reads the command line and runs the command that it names.
#pragma once

#include <string>
#include <vector>

#include "app/commands/command.h"

namespace ww::app {

/// Whether the arguments (without the program's name) are for the command line: they name a command, ask for
/// help or version, or begin with a word that is neither an option nor a workbook. Else the desktop is wanted.
bool isCommandLine(const std::vector<std::string>& arguments);

/// Runs the command and returns its exit status. Bad usage prints what is wrong and how to call it, status 2.
int runCommands(const std::vector<std::string>& arguments, Surroundings& surroundings);

}  // namespace ww::app
