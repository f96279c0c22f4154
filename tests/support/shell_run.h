// Programs of the machine, run by a line of the shell: what they print and their exit status. Not for
// commands of Waterwright that a test calls in its own process (command_run.h).
#pragma once

#include <sys/wait.h>

#include <cstdio>
#include <cstdlib>
#include <string>

namespace ww::support {

struct ShellRun {
    int status = -1;     ///< the exit status; -1 where the shell could not be started
    std::string output;  ///< standard output and standard error, as they came
};

/// Runs a line of the shell with nothing to read on standard input.
inline ShellRun runInShell(const std::string& line) {
    ShellRun ran;
    FILE* pipe = ::popen(("{ " + line + "\n} 2>&1 </dev/null").c_str(), "r");
    if (pipe == nullptr) {
        return ran;
    }
    char buffer[4096];
    while (const std::size_t size = std::fread(buffer, 1, sizeof buffer, pipe)) {
        ran.output.append(buffer, size);
    }
    const int status = ::pclose(pipe);
    ran.status = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return ran;
}

/// Whether the shell finds a program of that name.
inline bool hasTool(const std::string& name) {
    return std::system(("command -v " + name + " >/dev/null 2>&1").c_str()) == 0;
}

}  // namespace ww::support

/// Skips the test on a machine without the program, naming the Debian package that has it.
#define WW_NEEDS_TOOL(tool, package)                                                          \
    if (!ww::support::hasTool(tool)) {                                                        \
        GTEST_SKIP() << "there is no " tool " on this machine; install the package " package; \
    }
