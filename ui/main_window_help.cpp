#include <QApplication>
#include <QDir>

#include "core/base/version.h"
#include "ui/ask_dialog.h"
#include "ui/handbook/handbook_window.h"
#include "ui/installed_files.h"
#include "ui/job_files.h"
#include "ui/key_list.h"
#include "ui/language.h"
#include "ui/main_window.h"
#include "ui/tell_dialog.h"
#include "ui/widgets/quiet_combo.h"

// What the main window does for people who are new here: handbook, keys, release notes, sample jobs.
namespace ww::ui {
namespace {

constexpr base::MessageForm kHandbookMissing{
    "handbook_missing", "the handbook does not stand beside the program; install the program anew"};
constexpr base::MessageForm kSamplesMissing{
    "samples_missing", "the sample jobs do not stand beside the program; install the program anew"};

/// The chapters on the places, in the order of MainWindow::Place.
constexpr const char* kPlaceChapters[] = {"job.md",  "system.md", "walk.md",  "adjust.md",
                                          "pump.md", "review.md", "report.md"};

}  // namespace

void MainWindow::connectHelpCommands() {
    static_assert(std::size(kPlaceChapters) == kPlaces, "every place has its chapter");
    connect(m_commands->handbook, &QAction::triggered, this, [this] {
        if (HandbookWindow* handbook = showHandbook()) {
            handbook->showChapter(m_bridge.isOpen() ? QString::fromLatin1(kPlaceChapters[place()])
                                                    : QStringLiteral("first_steps.md"));
        }
    });
    connect(m_commands->releaseNotes, &QAction::triggered, this, [this] {
        if (HandbookWindow* handbook = showHandbook()) {
            handbook->showReleaseNotes();
        }
    });
    connect(m_commands->keys, &QAction::triggered, this, [this] { KeyList(*m_commands, this).exec(); });
    connect(m_commands->about, &QAction::triggered, this, &MainWindow::showAbout);
    connect(m_commands->newFromSample, &QAction::triggered, this, &MainWindow::newJobFromSample);
}

HandbookWindow* MainWindow::showHandbook() {
    if (m_handbook == nullptr) {
        const QString folder = installedFile(QStringLiteral("handbook"));
        if (folder.isEmpty()) {
            raise(base::Fault{&kHandbookMissing, {}, {}});
            return nullptr;
        }
        const QString language = usedLanguage(*qApp);
        m_handbook = new HandbookWindow(folder, language, releaseNotesFile(language), this);
    }
    m_handbook->show();
    m_handbook->raise();
    m_handbook->activateWindow();
    return m_handbook;
}

void MainWindow::newJobFromSample() {
    const QList<SampleJob> samples = sampleJobs();
    if (samples.isEmpty()) {
        raise(base::Fault{&kSamplesMissing, {}, {}});
        return;
    }
    auto* choice = new QuietCombo;
    for (const SampleJob& sample : samples) {
        choice->addItem(sample.name, sample.folder);
    }
    AskDialog dialog(tr("New Job from a Sample"), tr("Invented jobs, each with rounds that were read."),
                     tr("&Sample"), choice, tr("&Make Job…"), this);
    if (dialog.exec() != QDialog::Accepted) {
        return;
    }
    const QString folder = choice->currentData().toString();
    const QString file =
        askWorkbookToWrite(this, tr("Write the New Workbook"),
                           QDir::homePath() + '/' + QFileInfo(folder).fileName() + QStringLiteral(".wwj"));
    if (!file.isEmpty()) {
        createFrom(folder, file);
    }
}

void MainWindow::createFrom(const QString& folder, const QString& file) {
    if (createFromTables(this, m_bridge, folder, file)) {
        m_preferences.rememberFile(file);
        refreshRecent();
        showPlace(Walk);
    }
}

void MainWindow::showAbout() {
    TellDialog(tr("Waterwright"),
               tr("Waterwright %1\n\nA field-balancing workbook for closed water loops.\n\nFree software "
                  "under the GNU General Public License, version 3 or later. There is no warranty: check "
                  "results before you act on them.")
                   .arg(QString::fromStdString(std::string(base::version()))),
               this)
        .exec();
}

}  // namespace ww::ui
