// What the desktop costs a person: the time from its start to a usable window and its memory, with a sample
// job open, against those of a bare window of Qt Widgets and Qt Charts; a key until its row is repainted,
// from 100 to 10,000 terminals. Prints figures; judges nothing. On the screen that QT_QPA_PLATFORM names.
//
//   desk_bench [TERMINALS ...]      100, 1000 and 10000 unless said otherwise

#include <QApplication>
#include <QChart>
#include <QChartView>
#include <QKeyEvent>
#include <QLineSeries>
#include <QMainWindow>
#include <QMenuBar>
#include <QPointer>
#include <QProcess>
#include <QTableWidget>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <memory>
#include <string>
#include <vector>

#include "core/exchange/job_folder.h"
#include "core/workbook/workbook.h"
#include "tests/support/counting_ids.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/walk_job.h"
#include "ui/main_window.h"
#include "ui/places/walk/walk_place.h"
#include "ui/run_desktop.h"

namespace ww::bench {
namespace {

constexpr int kStarts = 9;
constexpr int kReadings = 40;
constexpr QSize kWindow(1366, 694);
/// That of a window which no settings say anything of.
constexpr QSize kFirstWindow(1280, 720);

std::int64_t now_ns() {
    return std::chrono::duration_cast<std::chrono::nanoseconds>(
               std::chrono::steady_clock::now().time_since_epoch())
        .count();
}

double median(std::vector<double> values) {
    std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2),
                     values.end());
    return values[values.size() / 2];
}

/// Memory of this process that is in RAM, MB.
double resident_MB() {
    std::ifstream status("/proc/self/status");
    std::string word;
    while (status >> word) {
        if (word == "VmRSS:") {
            double kilobytes = 0;
            status >> kilobytes;
            return kilobytes / 1024;
        }
    }
    return 0;
}

/// Tells the parent when the window is painted and waits for a hand, then ends.
int tellWhenUsable(QApplication& application, std::int64_t begin_ns) {
    QTimer::singleShot(0, &application, [&application, begin_ns] {
        QApplication::processEvents();
        std::printf("%.3f %.3f\n", double(now_ns() - begin_ns) / 1e6, resident_MB());
        std::fflush(stdout);
        application.quit();
    });
    return QApplication::exec();
}

int showBare(int argc, char** argv, std::int64_t begin_ns) {
    QApplication application(argc, argv);
    QMainWindow window;
    window.menuBar()->addMenu("File")->addAction("Quit");
    auto* line = new QLineSeries;
    for (int i = 0; i < 20; ++i) {
        line->append(i, i * i);
    }
    auto* chart = new QChart;
    chart->addSeries(line);
    chart->createDefaultAxes();
    auto* table = new QTableWidget(30, 8);
    for (int row = 0; row < table->rowCount(); ++row) {
        for (int column = 0; column < table->columnCount(); ++column) {
            table->setItem(row, column, new QTableWidgetItem(QString::number(row * column)));
        }
    }
    auto* splitter = new QWidget;
    auto* column = new QVBoxLayout(splitter);
    column->addWidget(new QChartView(chart));
    column->addWidget(table);
    window.setCentralWidget(splitter);
    window.resize(kFirstWindow);
    window.show();
    return tellWhenUsable(application, begin_ns);
}

int showDesk(int argc, char** argv, std::int64_t begin_ns, const QString& file) {
    QApplication application(argc, argv);
    const support::TemporaryFolder folder;
    support::FixedClock clock{"2026-03-02T10:00:00Z"};
    support::CountingIds ids(1'000'000);
    ui::Preferences preferences(QString::fromStdString(folder.file("settings.ini")));
    ui::openFirstWindows(ui::Desk{clock, ids, "A. Fields", "LT-1"}, preferences, {file});
    // It goes when it is closed.
    QPointer<ui::MainWindow> window;
    for (QWidget* widget : QApplication::topLevelWidgets()) {
        if (auto* first = qobject_cast<ui::MainWindow*>(widget)) {
            window = first;
        }
    }
    const int code = window && window->bridge().isOpen() ? tellWhenUsable(application, begin_ns) : 1;
    delete window.data();
    return code;
}

struct Start {
    double time_ms;
    double memory_MB;
};

/// The screen that the offscreen platform has by itself is smaller than the window: it is given that of a
/// laptop, in a file.
void takeScreenOfALaptop(const QString& file) {
    const QString platform = qEnvironmentVariable("QT_QPA_PLATFORM");
    if (platform == QStringLiteral("offscreen")) {
        std::ofstream(file.toStdString())
            << R"({"screens":[{"name":"laptop","x":0,"y":0,"width":1366,"height":768,"logicalDpi":96,)"
            << R"("logicalBaseDpi":96,"dpr":1}]})";
        qputenv("QT_QPA_PLATFORM", (platform + QStringLiteral(":configfile=") + file).toLocal8Bit());
    }
}

Start startOf(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    process.start(program, QStringList{QString::number(now_ns())} + arguments);
    process.waitForFinished(60'000);
    const QList<QByteArray> told = process.readAllStandardOutput().simplified().split(' ');
    return told.size() == 2 ? Start{told[0].toDouble(), told[1].toDouble()} : Start{0, 0};
}

/// In turns, so that both meet the same machine.
void measureStarts(const QString& program, const QString& file) {
    std::vector<double> times[2];
    std::vector<double> memories[2];
    for (int i = 0; i < kStarts; ++i) {
        const QStringList arguments[2] = {{"--bare"}, {"--desk", file}};
        for (int kind = 0; kind < 2; ++kind) {
            const Start start = startOf(program, arguments[kind]);
            times[kind].push_back(start.time_ms);
            memories[kind].push_back(start.memory_MB);
        }
    }
    std::printf("start to usable window   bare %7.0f ms   sample open %7.0f ms   ratio %.2f\n",
                median(times[0]), median(times[1]), median(times[1]) / median(times[0]));
    std::printf("memory                   bare %7.1f MB   sample open %7.1f MB   ratio %.2f\n",
                median(memories[0]), median(memories[1]), median(memories[1]) / median(memories[0]));
}

struct Keys {
    double digit_ms;
    double enter_ms;
};

double pressed_ms(int key, const QString& text) {
    const std::int64_t begin = now_ns();
    for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease}) {
        QKeyEvent event(type, key, Qt::NoModifier, text);
        QApplication::sendEvent(QApplication::focusWidget(), &event);
    }
    // What the key changed is painted with the events that wait.
    QApplication::processEvents();
    return double(now_ns() - begin) / 1e6;
}

Keys measureKeys(int terminals) {
    const support::TemporaryFolder folder;
    support::FixedClock clock{"2026-03-02T10:00:00Z"};
    support::CountingIds ids(10'000'000);
    ui::Preferences preferences(QString::fromStdString(folder.file("settings.ini")));
    ui::MainWindow window(ui::Desk{clock, ids, "A. Fields", "LT-1"}, preferences);
    support::WalkJobOptions options;
    options.terminals = terminals;
    static_cast<void>(
        window.bridge().create(QString::fromStdString(folder.file("walk.wwj")), support::walkJob(options)));
    window.resize(kWindow);
    window.show();
    window.activateWindow();
    static_cast<void>(window.bridge().openRound(project::RoundKind::Adjusting));
    window.showPlace(ui::MainWindow::Walk);
    QApplication::processEvents();
    std::vector<double> digits;
    std::vector<double> enters;
    for (int i = 0; i < kReadings; ++i) {
        for (const QChar c : QString("2%1.5").arg(i % 10)) {
            digits.push_back(pressed_ms(c == '.' ? int(Qt::Key_Period) : c.unicode(), c));
        }
        enters.push_back(pressed_ms(Qt::Key_Return, "\r"));
    }
    return {median(digits), median(enters)};
}

int run(int argc, char** argv) {
    const support::TemporaryFolder folder;
    takeScreenOfALaptop(QString::fromStdString(folder.file("screen.json")));
    QApplication application(argc, argv);
    const std::string file = folder.file("sample.wwj");
    support::CountingIds ids;
    support::FixedClock clock{"2026-03-02T10:00:00Z"};
    const exchange::ImportPlan job =
        exchange::readJobFolder(WW_SOURCE_DIR "/sample_projects/clinic_cooling", ids);
    const auto made = workbook::Workbook::create(file, job.edit, {clock, ids, "A. Fields", "LT-1"});
    if (!made) {
        std::fprintf(stderr, "%s\n", base::englishWithSubject(made.fault()).c_str());
        return 1;
    }
    measureStarts(QApplication::applicationFilePath(), QString::fromStdString(file));
    std::vector<int> sizes;
    for (int i = 1; i < argc; ++i) {
        sizes.push_back(std::atoi(argv[i]));
    }
    if (sizes.empty()) {
        sizes = {100, 1000, 10000};
    }
    double first_ms = 0;
    for (const int terminals : sizes) {
        const Keys keys = measureKeys(terminals);
        const double reading_ms = keys.digit_ms * 4 + keys.enter_ms;
        first_ms = first_ms > 0 ? first_ms : reading_ms;
        std::printf(
            "%6d terminals   digit %7.2f ms   Enter %7.2f ms   a reading of four digits %7.2f ms, %.2f of "
            "the first\n",
            terminals, keys.digit_ms, keys.enter_ms, reading_ms, reading_ms / first_ms);
    }
    return 0;
}

}  // namespace
}  // namespace ww::bench

int main(int argc, char** argv) {
    if (argc == 3 && std::string(argv[2]) == "--bare") {
        return ww::bench::showBare(argc, argv, std::atoll(argv[1]));
    }
    if (argc == 4 && std::string(argv[2]) == "--desk") {
        return ww::bench::showDesk(argc, argv, std::atoll(argv[1]), QString::fromLocal8Bit(argv[3]));
    }
    return ww::bench::run(argc, argv);
}
