// What a person waits for in a big job: each page shown for the first time and again, the grid scrolled and
// the cell moved, a table of readings imported, taken back and merged, tables written and read, against a
// small job. Prints figures; judges nothing. On the screen that QT_QPA_PLATFORM
// names.
//
//   big_job_bench [TERMINALS [ROUNDS]]      10000 and 10 unless said otherwise

#include <QApplication>
#include <QKeyEvent>
#include <QPushButton>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/exchange/job_folder.h"
#include "tests/support/counting_ids.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/walk_job.h"
#include "tests/ui/support/each_page.h"
#include "ui/import/import_dialog.h"
#include "ui/job_files.h"
#include "ui/main_window.h"
#include "ui/places/walk/walk_place.h"

namespace ww::bench {
namespace {

constexpr QSize kWindow(1366, 694);

/// Time of an act and of what it makes the window paint, ms.
template <class Act>
double waited_ms(Act act) {
    const auto begin = std::chrono::steady_clock::now();
    act();
    QApplication::processEvents();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
}

void press(int key) {
    for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease}) {
        QKeyEvent event(type, key, Qt::NoModifier);
        QApplication::sendEvent(QApplication::focusWidget(), &event);
    }
}

/// Pages in order, each with how long it took.
using Waits = std::vector<std::pair<std::string, double>>;

Waits throughAllPages(ui::MainWindow& window) {
    Waits waits;
    auto begin = std::chrono::steady_clock::now();
    support::eachPage(window, [&](const QString& page) {
        QApplication::processEvents();
        const auto end = std::chrono::steady_clock::now();
        waits.emplace_back(page.toStdString(),
                           std::chrono::duration<double, std::milli>(end - begin).count());
        begin = std::chrono::steady_clock::now();
    });
    return waits;
}

/// A reading of every branch, as a table that a meter wrote.
void writeReadings(const project::Project& project, const std::string& file) {
    std::ofstream table(file);
    table << "tag,dp[kPa]\n";
    int row = 0;
    for (const project::Branch& branch : project.branches()) {
        table << branch.tag << ',' << 10 + row++ % 90 << ".5\n";
    }
}

/// Many rows that change at once.
void waitForManyRows(ui::MainWindow& window, ui::Preferences& preferences,
                     const support::TemporaryFolder& folder, Waits& all) {
    ui::WorkbookBridge& bridge = window.bridge();
    const std::string table = folder.file("readings.csv");
    writeReadings(bridge.project(), table);
    std::optional<ui::ImportDialog> dialog;
    all.emplace_back("import: the file read, its columns shown", waited_ms([&] {
                         auto source = ui::readImportSource(QString::fromStdString(table));
                         dialog.emplace(bridge, preferences, std::move(source).value(), "readings.csv",
                                        &window);
                         dialog->show();
                     }));
    all.emplace_back("import: the rows shown", waited_ms([&] { dialog->goOn(); }));
    all.emplace_back("import: rows with faults left out", waited_ms([&] {
                         for (auto* button : dialog->findChildren<QPushButton*>()) {
                             if (button->isVisible() && button->text().remove('&').startsWith("Leave Out")) {
                                 button->click();
                             }
                         }
                     }));
    const int before = bridge.storedCount();
    all.emplace_back("import: stored", waited_ms([&] { dialog->goOn(); }));
    dialog.reset();
    if (bridge.storedCount() == before) {
        std::fprintf(stderr, "nothing was imported\n");
    }
    const QString copy = QString::fromStdString(folder.file("copy.wwj"));
    all.emplace_back("a copy saved", waited_ms([&] { static_cast<void>(bridge.saveCopy(copy)); }));
    all.emplace_back("the import undone", waited_ms([&] { static_cast<void>(bridge.undo()); }));
    all.emplace_back("the import redone", waited_ms([&] { static_cast<void>(bridge.redo()); }));
    all.emplace_back("the import undone again", waited_ms([&] { static_cast<void>(bridge.undo()); }));
    all.emplace_back("the copy merged", waited_ms([&] { static_cast<void>(bridge.merge(copy)); }));
    const std::string tables = folder.file("tables");
    all.emplace_back("tables written", waited_ms([&] {
                         static_cast<void>(exchange::writeJobFolder(bridge.project(), tables));
                     }));
    bridge.close();
    all.emplace_back("a new job from these tables", waited_ms([&] {
                         ui::createFromTables(&window, bridge, QString::fromStdString(tables),
                                              QString::fromStdString(folder.file("new.wwj")));
                     }));
}

Waits waitsIn(int terminals, int rounds) {
    const support::TemporaryFolder folder;
    support::FixedClock clock{"2026-03-02T10:00:00Z"};
    support::CountingIds ids(10'000'000);
    ui::Preferences preferences(QString::fromStdString(folder.file("settings.ini")));
    ui::MainWindow window(ui::Desk{clock, ids, "A. Fields", "LT-1"}, preferences);
    support::WalkJobOptions options;
    options.terminals = terminals;
    options.adjustingRounds = rounds - 1;
    const std::string file = folder.file("big.wwj");
    static_cast<void>(window.bridge().create(QString::fromStdString(file), support::walkJob(options)));
    window.bridge().close();
    window.resize(kWindow);
    window.show();
    window.activateWindow();
    QApplication::processEvents();
    Waits all;
    all.emplace_back("opened, the window alive",
                     waited_ms([&] { window.openFile(QString::fromStdString(file)); }));
    for (const auto& [page, wait] : throughAllPages(window)) {
        all.emplace_back("first shown: " + page, wait);
    }
    for (const auto& [page, wait] : throughAllPages(window)) {
        all.emplace_back("shown again: " + page, wait);
    }
    all.emplace_back("a round opened", waited_ms([&] {
                         static_cast<void>(window.bridge().openRound(project::RoundKind::Adjusting));
                     }));
    window.activateWindow();
    window.showPlace(ui::MainWindow::Walk);
    QApplication::processEvents();
    all.emplace_back("Walk, a page down", waited_ms([] { press(Qt::Key_PageDown); }));
    all.emplace_back("Walk, one row down", waited_ms([] { press(Qt::Key_Down); }));
    all.emplace_back("Walk, to the end", waited_ms([] { press(Qt::Key_End); }));
    for (const auto& [page, wait] : throughAllPages(window)) {
        all.emplace_back("after a new round: " + page, wait);
    }
    waitForManyRows(window, preferences, folder, all);
    return all;
}

int run(int argc, char** argv) {
    QApplication application(argc, argv);
    const int terminals = argc > 1 ? std::atoi(argv[1]) : 10'000;
    const int rounds = argc > 2 ? std::atoi(argv[2]) : 10;
    const Waits small = waitsIn(100, rounds);
    const Waits big = waitsIn(terminals, rounds);
    std::printf("%-44s %10s %10s %8s\n", "waited for, ms", "100", std::to_string(terminals).c_str(), "ratio");
    for (std::size_t i = 0; i < big.size(); ++i) {
        std::printf("%-44s %10.1f %10.1f %8.1f\n", big[i].first.c_str(), small[i].second, big[i].second,
                    big[i].second / small[i].second);
    }
    return 0;
}

}  // namespace
}  // namespace ww::bench

int main(int argc, char** argv) {
    return ww::bench::run(argc, argv);
}
