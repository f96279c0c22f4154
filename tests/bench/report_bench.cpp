// A report of 1,000 terminals and 6 rounds: pages a second and memory at its peak, beside the time that an
// office program takes to turn the table of readings into a PDF, where one is installed.
#include <sys/resource.h>

#include <QGuiApplication>
#include <QProcess>
#include <QStandardPaths>
#include <chrono>
#include <cstdio>
#include <functional>
#include <random>

#include "core/exchange/job_folder.h"
#include "tests/support/field_job.h"
#include "tests/support/temporary_folder.h"
#include "ui/report/report_pages.h"
#include "ui/report/report_writer.h"

namespace ww::bench {
namespace {

constexpr int kRisers = 10;
constexpr int kBranchesPerRiser = 10;
constexpr int kTerminalsPerBranch = 10;
constexpr int kRounds = 6;

std::string number(double dimensionless, int decimals) {
    return base::Decimal::fromNumber(dimensionless, decimals).text();
}

/// Shares come nearer to their targets from round to round, by seeded numbers.
project::Project largeJob() {
    support::FieldJob job;
    std::mt19937 random(20260302);
    const auto within = [&](double low, double high) {
        return low + (high - low) * static_cast<double>(random()) / 4294967296.0;
    };
    const base::Id valve =
        job.valve({{"0.5", "0.6"}, {"1", "1.1"}, {"2", "2.6"}, {"3", "4.1"}, {"4", "5.2"}});
    std::vector<std::string> tags;
    for (int riser = 1; riser <= kRisers; ++riser) {
        const std::string above = "R" + std::to_string(riser);
        job.branch(above, "", "", {}, project::BranchKind::None);
        for (int branch = 1; branch <= kBranchesPerRiser; ++branch) {
            const std::string group = above + "-" + std::to_string(branch);
            job.branch(group, above, "", valve);
            for (int terminal = 1; terminal <= kTerminalsPerBranch; ++terminal) {
                tags.push_back(group + "-" + std::to_string(terminal));
                job.branch(tags.back(), group, number(within(1.0, 2.6), 2), valve);
            }
        }
    }
    job.instrument("1.5", "0.05");
    for (int round = 1; round <= kRounds; ++round) {
        job.round(round == 1         ? project::RoundKind::Survey
                  : round == kRounds ? project::RoundKind::Final
                                     : project::RoundKind::Adjusting);
        for (const std::string& tag : tags) {
            job.dp(tag, number(20.0 + within(-15.0, 15.0) / round, 2), number(within(1.5, 4.0), 1));
        }
    }
    return job.project();
}

double secondsOf(const std::function<void()>& work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

long peakMegabytes() {
    rusage usage{};
    ::getrusage(RUSAGE_SELF, &usage);
    return usage.ru_maxrss / 1024;
}

void run() {
    const project::Project project = largeJob();
    ww::report::ReportOptions options;
    options.journalDigest = std::string(64, 'b');
    options.workbookId = std::string(32, 'a');
    options.printed = *base::Instant::fromText("2026-03-04T10:00:00Z");
    const long before = peakMegabytes();
    ww::report::Report report;
    const double building = secondsOf([&] { report = ww::report::build(project, options); });
    QByteArray bytes;
    const double writing = secondsOf([&] { bytes = ui::report::pdf(report, project); });
    const std::size_t pages = ui::report::layOut(report, project).pages.size();
    std::printf("%zu terminals, %d rounds, %zu pages, %.1f MB\n", project.tree().terminals().size(), kRounds,
                pages, static_cast<double>(bytes.size()) / 1e6);
    std::printf("judging        %8.2f s\n", building);
    std::printf("pages          %8.2f s, %.0f pages a second\n", writing,
                static_cast<double>(pages) / writing);
    std::printf("memory         %5ld MB at its peak, %ld MB before (to stay below 300)\n", peakMegabytes(),
                before);

    const QString office = QStandardPaths::findExecutable(QStringLiteral("soffice"));
    if (office.isEmpty()) {
        std::printf("office program not installed (soffice of libreoffice-calc)\n");
        return;
    }
    const support::TemporaryFolder folder;
    for (const exchange::JobTable& table : exchange::jobTables(project)) {
        if (table.file == "readings.csv") {
            folder.write("readings.csv", table.text);
        }
    }
    const QString path = QString::fromStdString(folder.path().string());
    const double converting = secondsOf([&] {
        QProcess process;
        process.start(office, {"--headless", "-env:UserInstallation=file://" + path + "/profile",
                               "--convert-to", "pdf", "--outdir", path, path + "/readings.csv"});
        process.waitForFinished(-1);
    });
    std::printf("office program %8.2f s for the table of readings alone: the whole report takes %.2f of it\n",
                converting, (building + writing) / converting);
}

}  // namespace
}  // namespace ww::bench

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    ww::bench::run();
    return 0;
}
