#include "app/commands/run_commands.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <ostream>

#include "core/base/version.h"

namespace ww::app {

namespace {

struct NamedCommand {
    const char* name;
    const char* purpose;
    std::unique_ptr<Command> (*make)();
};

constexpr NamedCommand kCommands[] = {
    {"new", "Make a workbook from CSV tables or a spreadsheet", newCommand},
    {"record", "Add rounds and readings from CSV tables or a spreadsheet to a workbook", recordCommand},
    {"check", "Shares, groups, index circuit, findings and verdict of a round", checkCommand},
    {"predict", "Flows in another state of the loop: settings, closures, speed, impeller", predictCommand},
    {"advise", "Every valve's setting for a proportional balance, learned from the readings", adviseCommand},
    {"pump", "Duty, excess head, trim, speed or throttle, energy code and cost", pumpCommand},
    {"report", "Write the balance report as PDF", reportCommand},
    {"export", "Write the job as CSV tables, as a spreadsheet or as JSON", exportCommand},
    {"merge", "Bring two copies of one workbook together", mergeCommand},
    {"verify", "Prove a workbook by its journal, or a signed report by its signatures", verifyCommand},
};

bool isCommand(const std::string& word) {
    return std::any_of(std::begin(kCommands), std::end(kCommands),
                       [&](const NamedCommand& command) { return word == command.name; });
}

bool isOption(const std::string& word) {
    return word.empty() || word.front() == '-';
}

/// Whether the desktop can open it: a file that is there, or the name of a workbook.
bool isForDesktop(const std::string& word) {
    std::error_code error;
    return word.ends_with(".wwj") || std::filesystem::exists(word, error);
}

}  // namespace

int fileTrouble(Surroundings& surroundings, const base::Fault& fault) {
    surroundings.err << base::englishWithSubject(fault) << "\n";
    return kFileTrouble;
}

int badInput(Surroundings& surroundings, const base::Fault& fault) {
    surroundings.err << base::englishWithSubject(fault) << "\n";
    return kBadInput;
}

CLI::Option* addLanguage(CLI::App& app, std::string& language) {
    return app
        .add_option("--language", language,
                    "language of the PDF; without it that of the system, as LANG has it")
        ->check(CLI::IsMember({"en", "es", "de", "fr"}));
}

bool isCommandLine(const std::vector<std::string>& arguments) {
    if (arguments.empty()) {
        return false;
    }
    const std::string& first = arguments.front();
    if (first == "-h" || first == "--help" || first == "--version") {
        return true;
    }
    return isCommand(first) || (!isOption(first) && !isForDesktop(first));
}

int runCommands(const std::vector<std::string>& arguments, Surroundings& surroundings) {
    if (!arguments.empty() && !isOption(arguments.front()) && !isCommand(arguments.front())) {
        surroundings.err << "\"" << arguments.front()
                         << "\" is no command and no workbook; see waterwright --help\n";
        return kBadInput;
    }
    CLI::App app{
        "Waterwright: a field-balancing workbook for closed water loops.\n"
        "Without a command the desktop opens: waterwright [FILE.wwj ...]",
        "waterwright"};
    app.set_version_flag("--version", "waterwright " + std::string(base::version()));
    app.require_subcommand(1);
    app.footer(
        "Exit status: 0 done or accepted, 1 judged and not accepted, 2 bad usage or input, 3 file trouble.");
    std::vector<std::pair<CLI::App*, std::unique_ptr<Command>>> commands;
    for (const NamedCommand& named : kCommands) {
        CLI::App* sub = app.add_subcommand(named.name, named.purpose);
        commands.emplace_back(sub, named.make());
        commands.back().second->describe(*sub);
    }
    // CLI11 takes arguments from the back.
    std::vector<std::string> reversed(arguments.rbegin(), arguments.rend());
    try {
        app.parse(reversed);
    } catch (const CLI::ParseError& error) {
        const bool isAnswer = app.exit(error, surroundings.out, surroundings.err) == 0;
        return isAnswer ? kDone : kBadInput;
    }
    for (const auto& [sub, command] : commands) {
        if (sub->parsed()) {
            return command->run(surroundings);
        }
    }
    return kBadInput;
}

}  // namespace ww::app
