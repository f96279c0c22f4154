// Runs a command of the command line in this process and keeps what it prints.
#pragma once

#include <sstream>
#include <string>
#include <vector>

#include "app/commands/run_commands.h"

namespace ww::support {

struct Ran {
    int status = 0;
    std::string out;
    std::string err;
};

/// `waterwright ARGUMENT ...`; a report is written by `writer` (nothing: it fails with what() of an empty
/// function).
inline Ran run(const std::vector<std::string>& arguments, app::ReportWriter writer = {}) {
    std::ostringstream out;
    std::ostringstream err;
    base::SystemClock clock;
    base::RandomIds ids;
    app::Surroundings surroundings{out, err, clock, ids, "A. Fields", "bench", std::move(writer)};
    const int status = app::runCommands(arguments, surroundings);
    return {status, out.str(), err.str()};
}

}  // namespace ww::support
