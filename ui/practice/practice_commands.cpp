#include <QDir>
#include <QFileInfo>
#include <QRandomGenerator>

#include "ui/job_files.h"
#include "ui/main_window.h"
#include "ui/places/adjust/adjust_place.h"
#include "ui/places/walk/walk_place.h"
#include "ui/practice/new_practice_dialog.h"
#include "ui/practice/truth_window.h"
#include "ui/report/report_file_name.h"
#include "ui/text/words.h"

// What the main window does for practice jobs.
namespace ww::ui {

void MainWindow::connectPracticeCommands() {
    connect(m_commands->newPractice, &QAction::triggered, this, &MainWindow::newPracticeJob);
    connect(m_commands->takeMeter, &QAction::triggered, this, &MainWindow::takeMeter);
    connect(m_commands->takeGauges, &QAction::triggered, this, [this] {
        const base::Outcome taken = m_practice.takeGauges();
        if (!taken) {
            raise(taken.fault());
        }
    });
    connect(m_commands->showTruth, &QAction::triggered, this, &MainWindow::showTruth);
}

void MainWindow::refreshPracticeCommands() {
    const bool isPractice = m_practice.isPractice();
    // While no round is open they say so.
    m_commands->takeMeter->setEnabled(isPractice && !m_bridge.isReadOnly());
    m_commands->takeGauges->setEnabled(isPractice && !m_bridge.isReadOnly());
    m_commands->showTruth->setEnabled(isPractice);
}

void MainWindow::newPracticeJob() {
    constexpr quint32 kProposedSeeds = 9999;
    NewPracticeDialog dialog(1 + QRandomGenerator::global()->bounded(kProposedSeeds), this);
    if (dialog.exec() != QDialog::Accepted) {
        return;
    }
    const QString named = report::writableName(dialog.name());
    const QString proposed = named.isEmpty() ? tr("/practice_%1.wwj").arg(dialog.key().seed)
                                             : QStringLiteral("/%1.wwj").arg(named);
    const QString file =
        askWorkbookToWrite(this, tr("Make a Practice Job"), folderOf(m_bridge.file()) + proposed);
    if (file.isEmpty()) {
        return;
    }
    const base::Outcome made = m_bridge.create(
        file, practice::practiceContent(dialog.key(), dialog.name().toStdString(), text::wording()));
    if (!made) {
        raise(made.fault());
        return;
    }
    m_preferences.rememberFile(file);
    refreshRecent();
    showPlace(Walk);
}

void MainWindow::takeMeter() {
    if (place() == Adjust) {
        adjust()->takeMeter(m_practice);
        return;
    }
    if (place() != Walk) {
        showPlace(Walk);
    }
    walk()->takeMeter(m_practice);
}

void MainWindow::showTruth() {
    const auto job = m_practice.job();
    if (!job) {
        raise(job.fault());
        return;
    }
    TruthWindow(**job, m_bridge.project(), this).exec();
}

}  // namespace ww::ui
