// Runs one command as the program does, with what it prints kept. Not for the desktop.
#pragma once

#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "app/commands/run_commands.h"
#include "tests/support/counting_ids.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/small_report.h"

namespace ww::support {

/// What a command printed, and its exit status.
struct CommandRun {
    int status = -1;
    std::string out;
    std::string err;
};

/// Fixed clock, random ids (a workbook may be opened by several runs), a report writer that writes one line;
/// reports to be signed are one small page.
inline CommandRun runCommand(const std::vector<std::string>& arguments) {
    std::ostringstream out;
    std::ostringstream err;
    FixedClock clock;
    base::RandomIds ids;
    app::Surroundings surroundings{out, err, clock, ids, "A. Fields", "bench", {}};
    surroundings.writeReport = [](const report::Report&, const project::Project&,
                                  const std::filesystem::path& file) -> base::Outcome {
        std::ofstream(file) << "report\n";
        return base::Done{};
    };
    surroundings.reportToSign = [](const report::Report&, const project::Project&) {
        const seal::Preparation small = smallPreparation();
        return workbook::ReportToSign{smallPdf(), small.fields, small.attachments};
    };
    surroundings.drawBlock = [](const seal::BlockText& text, const seal::PaperSize&) {
        return squareDrawing(text.isWaiting ? 200 : 0);
    };
    CommandRun run;
    run.status = app::runCommands(arguments, surroundings);
    run.out = out.str();
    run.err = err.str();
    return run;
}

}  // namespace ww::support
