// One command of the command line. Not for the desktop.
#pragma once

#include <filesystem>
#include <functional>
#include <iosfwd>
#include <memory>
#include <string>

#include "core/base/id.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/project/project.h"
#include "core/report/report.h"
#include "core/workbook/report_signing.h"

namespace CLI {
class App;
class Option;
}  // namespace CLI

namespace ww::app {

/// Exit status of a command (the outside contract).
enum Exit {
    kDone = 0,         ///< done; of a judging command: accepted, valid
    kNotAccepted = 1,  ///< judged and not accepted or not valid; conflicts are left
    kBadInput = 2,     ///< bad usage or bad input
    kFileTrouble = 3,  ///< a file could not be read or written
};

/// Draws a report as PDF. Given by the main, since drawing needs what core does not have.
using ReportWriter = std::function<base::Outcome(const report::Report&, const project::Project&,
                                                 const std::filesystem::path&)>;

/// What a command works with. The references outlive it.
struct Surroundings {
    std::ostream& out;
    std::ostream& err;
    base::Clock& clock;
    base::IdSource& ids;
    std::string person;
    std::string machine;
    ReportWriter writeReport;
    /// Draws a report with places for signatures; given by the main likewise.
    std::function<base::Result<workbook::ReportToSign>(const report::Report&, const project::Project&)>
        reportToSign = {};
    seal::BlockDrawer drawBlock = {};
    /// Draws the walk sheet of a job as PDF; given by the main likewise.
    std::function<base::Outcome(const project::Project&, const std::filesystem::path&)> writeWalkSheet = {};
    /// Of what is drawn, an ISO 639-1 code; set by the command before it draws. Empty: that of the system.
    std::string language = {};
};

/// Declares --language, which says what a PDF is written in.
CLI::Option* addLanguage(CLI::App& app, std::string& language);

class Command {
  public:
    virtual ~Command() = default;
    /// Declares name, arguments and options.
    virtual void describe(CLI::App& app) = 0;
    /// Does it; called once, after the arguments have been read.
    virtual int run(Surroundings& surroundings) = 0;
};

/// Prints "subject: sentence" and gives the exit status of a fault that a file caused.
int fileTrouble(Surroundings& surroundings, const base::Fault& fault);
/// The same for a fault of usage or input.
int badInput(Surroundings& surroundings, const base::Fault& fault);

inline constexpr base::MessageForm kRoundUnknown{"command_round_unknown",
                                                 "there is no round {1}; it has {2}"};
/// The fault of a round number that the job does not have; subject: the workbook's file.
inline base::Fault roundUnknown(const std::string& file, const project::Project& project, int number) {
    return {&kRoundUnknown, file, {std::to_string(number), std::to_string(project.rounds().size())}};
}

std::unique_ptr<Command> newCommand();
std::unique_ptr<Command> recordCommand();
std::unique_ptr<Command> checkCommand();
std::unique_ptr<Command> predictCommand();
std::unique_ptr<Command> adviseCommand();
std::unique_ptr<Command> pumpCommand();
std::unique_ptr<Command> reportCommand();
std::unique_ptr<Command> exportCommand();
std::unique_ptr<Command> mergeCommand();
std::unique_ptr<Command> verifyCommand();

}  // namespace ww::app
