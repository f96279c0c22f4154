// waterwright: with a command it does that on the terminal, needing no display; without one the desktop
// opens.
#include <QGuiApplication>
#include <QProcessEnvironment>
#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <memory>

#include <unistd.h>

#include "app/commands/run_commands.h"
#include "core/base/account.h"
#include "ui/language.h"
#include "ui/report/report_writer.h"
#include "ui/report/signature_drawing.h"
#include "ui/report/walk_sheet_writer.h"
#include "ui/run_desktop.h"

namespace {

std::string machineName() {
    char buffer[256] = {};
    return gethostname(buffer, sizeof buffer - 1) == 0 ? buffer : "unknown";
}

/// What Qt says of the machine (no runtime folder, no session bus) does not concern a report.
void printOnlyCritical(QtMsgType type, const QMessageLogContext&, const QString& text) {
    if (type == QtCriticalMsg || type == QtFatalMsg) {
        std::cerr << text.toStdString() << "\n";
    }
}

int runCommand(int argc, char** argv, const std::vector<std::string>& arguments) {
    ww::base::SystemClock clock;
    ww::base::RandomIds ids;
    ww::app::Surroundings surroundings{
        std::cout, std::cerr, clock, ids, ww::base::personAtTheDesk("unknown person"), machineName(), {}};
    std::unique_ptr<QGuiApplication> application;
    const auto needFonts = [&] {
        // Fonts and PDF need a Qt application; no screen is touched, with or without a display.
        if (application == nullptr) {
            setenv("QT_QPA_PLATFORM", "offscreen", 1);
            qInstallMessageHandler(printOnlyCritical);
            application = std::make_unique<QGuiApplication>(argc, argv);
            const QString asked = QString::fromStdString(surroundings.language);
            const auto environment = QProcessEnvironment::systemEnvironment();
            ww::ui::useLanguage(asked.isEmpty() ? ww::ui::languageOf(environment) : asked, *application);
        }
    };
    surroundings.writeReport = [&](const ww::report::Report& report, const ww::project::Project& project,
                                   const std::filesystem::path& out) {
        needFonts();
        return ww::ui::report::writePdf(report, project, out);
    };
    surroundings.reportToSign = [&](const ww::report::Report& report, const ww::project::Project& project) {
        needFonts();
        return ww::ui::report::reportToSign(report, project);
    };
    surroundings.drawBlock = [&](const ww::seal::BlockText& text, const ww::seal::PaperSize& size) {
        needFonts();
        return ww::ui::report::drawBlock(text, size);
    };
    surroundings.writeWalkSheet = [&](const ww::project::Project& project, const std::filesystem::path& out) {
        needFonts();
        return ww::ui::report::writeWalkSheet(project, out);
    };
    return ww::app::runCommands(arguments, surroundings);
}

/// Whether Qt finds a screen to open windows on, as far as the environment and the arguments tell.
bool hasDisplay(const std::vector<std::string>& arguments) {
    const auto isSet = [](const char* name) {
        const char* value = std::getenv(name);
        return value != nullptr && *value != '\0';
    };
    return isSet("DISPLAY") || isSet("WAYLAND_DISPLAY") || isSet("QT_QPA_PLATFORM") ||
           std::find(arguments.begin(), arguments.end(), "-platform") != arguments.end();
}

int runDesktop(int argc, char** argv, const std::vector<std::string>& arguments) {
    if (!hasDisplay(arguments)) {
        std::cerr
            << "there is no display to open the desktop on; work with a command, see waterwright --help\n";
        return ww::app::kBadInput;
    }
    return ww::ui::runDesktop(argc, argv);
}

}  // namespace

int main(int argc, char** argv) {
    const std::vector<std::string> arguments(argv + 1, argv + argc);
    try {
        return ww::app::isCommandLine(arguments) ? runCommand(argc, argv, arguments)
                                                 : runDesktop(argc, argv, arguments);
    } catch (const ww::base::ContractBreach& breach) {
        std::cerr << "Waterwright has a defect and stops: " << breach.what() << "\nNothing stored is lost.\n";
        return EXIT_FAILURE;
    }
}
