// The commands of the main window that open, make and copy files.
#include <QApplication>
#include <QDir>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QLineEdit>
#include <QMenu>
#include <QMimeData>
#include <utility>

#include "core/project/edit_label.h"
#include "ui/ask_dialog.h"
#include "ui/file_messages.h"
#include "ui/import/import_source.h"
#include "ui/job_files.h"
#include "ui/long_work.h"
#include "ui/main_window.h"
#include "ui/mnemonics.h"
#include "ui/text/label.h"
#include "ui/text/words.h"

namespace ww::ui {
bool MainWindow::openFile(const QString& file) {
    return followOpening(file, m_bridge.open(file));
}

bool MainWindow::openFile(Opening opening) {
    const QString file = opening.file;
    return followOpening(file, m_bridge.open(std::move(opening)));
}

bool MainWindow::followOpening(const QString& file, const base::Outcome& opened) {
    if (!opened) {
        raiseWithAdvice(opened.fault(), file);
        return false;
    }
    m_notice->clearMessage();
    m_preferences.rememberFile(file);
    refreshRecent();
    const Place usual = m_bridge.project().branches().empty() ? Job : Walk;
    const auto last = m_preferences.placeIn(m_bridge.workbook()->workbookId());
    const bool isPlace = last && *last >= 0 && *last < kPlaces;
    showPlace(isPlace ? static_cast<Place>(*last) : usual);
    tellOpenComments();
    if (m_bridge.openRoundOrNull() != nullptr && m_bridge.isNobodyChosen()) {
        raise(base::Fault{&kNobodyChosen, {}, {}});
    }
    tellClock();
    offerDrafts();
    return true;
}

bool MainWindow::reopenFile(Opening opening) {
    const QString file = opening.file;
    if (!openFile(std::move(opening))) {
        // Told once: the next start is not held up by it.
        m_preferences.rememberClosed(file);
        return false;
    }
    if (auto reason = m_bridge.readOnlyReason()) {
        m_bridge.close();
        reason->subject = QFileInfo(file).fileName().toStdString();
        raise(*reason);
        return false;
    }
    if (const auto stored = m_bridge.lastStored(); stored && m_notice->message().isEmpty()) {
        raise(base::Fault{&kJobBack, {}, {text::label(*stored).toStdString()}});
    }
    return true;
}

void MainWindow::followOpened() {
    const QString file = m_bridge.isReadOnly() ? QString() : m_bridge.file();
    if (file != m_opened) {
        rememberClosed();
        m_opened = file;
        // Written when the window is there, which is what a person waits for; at once where more is stored.
        m_rememberingOpened.start();
    } else if (m_rememberingOpened.isActive()) {
        rememberOpened();
    }
}

void MainWindow::rememberOpened() {
    m_rememberingOpened.stop();
    if (!m_opened.isEmpty()) {
        m_preferences.rememberOpened(m_opened);
    }
}

void MainWindow::rememberClosed() {
    m_rememberingOpened.stop();
    if (!m_opened.isEmpty()) {
        m_preferences.rememberClosed(m_opened);
        m_opened.clear();
    }
}

void MainWindow::tellLastJob() {
    for (const QString& file : m_preferences.recentFiles()) {
        if (QFileInfo::exists(file)) {
            raise(base::Fault{&kLastJob, {}, {QFileInfo(file).fileName().toStdString()}});
            return;
        }
    }
}

void MainWindow::connectFileCommands() {
    connect(m_commands->newJob, &QAction::triggered, this, &MainWindow::newJob);
    connect(m_commands->newFromFolder, &QAction::triggered, this, &MainWindow::newJobFromTables);
    connectPracticeCommands();
    connect(m_commands->open, &QAction::triggered, this, [this] {
        const QString file = askWorkbookToOpen(this, folderOf(m_bridge.file()));
        if (!file.isEmpty()) {
            canTake(file) ? static_cast<void>(openFile(file)) : emit anotherWindowWanted(file);
        }
    });
    connect(m_commands->save, &QAction::triggered, this, [this] {
        auto* name = new QLineEdit(tr("state at %1").arg(QString::fromStdString(m_bridge.now().timeOfDay())));
        AskDialog dialog(tr("Save a Checkpoint"),
                         tr("Everything is stored already. A checkpoint gives this state of the job a name."),
                         tr("&Name"), name, tr("&Save Checkpoint"), this);
        if (dialog.exec() == QDialog::Accepted && !name->text().trimmed().isEmpty()) {
            storeCheckpoint(name->text().trimmed());
        }
    });
    m_bridge.setWait(
        [this](const QString& words, const std::function<void()>& work) { waitFor(this, words, work); });
    connect(m_commands->saveCopy, &QAction::triggered, this, &MainWindow::saveCopy);
    connect(m_commands->mergeCopy, &QAction::triggered, this, &MainWindow::mergeCopy);
    connect(m_commands->decideConflicts, &QAction::triggered, this, &MainWindow::decideConflicts);
    connect(m_strip, &JobStrip::conflictsWanted, m_commands->decideConflicts, &QAction::trigger);
    connect(m_strip, &JobStrip::copyElsewhereWanted, this, &MainWindow::saveElsewhere);
    m_workInCopy->setObjectName(QStringLiteral("work_in_copy"));
    connect(m_workInCopy, &QPushButton::clicked, this, &MainWindow::saveElsewhere);
    connectTableCommands();
    connectClockCommand();
    connect(m_commands->close, &QAction::triggered, this, [this] {
        m_notice->clearMessage();
        if (storeTyped()) {
            m_bridge.close();
            tellLastJob();
        }
    });
    connect(m_commands->quit, &QAction::triggered, qApp, &QApplication::closeAllWindows);
}

void MainWindow::refreshRecent() {
    QMenu* menu = m_commands->openRecent;
    menu->clear();
    for (const QString& file : m_preferences.recentFiles()) {
        if (QFileInfo::exists(file)) {
            QAction* action = menu->addAction(withoutLetter(QFileInfo(file).fileName()));
            action->setToolTip(file);
            connect(action, &QAction::triggered, this, [this, file] {
                canTake(file) ? static_cast<void>(openFile(file)) : emit anotherWindowWanted(file);
            });
        } else {
            QMenu* missing = menu->addMenu(tr("%1 (missing)").arg(QFileInfo(file).fileName()));
            QAction* gone = missing->addAction(withoutLetter(file));
            gone->setEnabled(false);
            connect(missing->addAction(tr("Remove from List")), &QAction::triggered, this, [this, file] {
                m_preferences.forgetFile(file);
                refreshRecent();
            });
        }
    }
    menu->setEnabled(!menu->isEmpty());
}

bool MainWindow::canTake(const QString& file) const {
    return !m_bridge.isOpen() || QFileInfo(file) == QFileInfo(m_bridge.file());
}

void MainWindow::storeCheckpoint(const QString& name) {
    // A record of the journal that changes nothing; there is nothing in it to undo.
    const base::Outcome done =
        m_bridge.apply({project::label(project::labels::kCheckpoint, {name.toStdString()}),
                        {m_bridge.project().job()},
                        {},
                        false});
    raise(done ? base::Fault{&kCheckpointStored, {}, {name.toStdString()}} : done.fault());
}

void MainWindow::newJob() {
    const QString file =
        askWorkbookToWrite(this, tr("Make a New Job"), folderOf(m_bridge.file()) + tr("/new_job.wwj"));
    if (file.isEmpty()) {
        return;
    }
    const base::Outcome made =
        m_bridge.create(file, emptyJob(m_bridge.newId(), QFileInfo(file).completeBaseName()));
    if (!made) {
        raise(made.fault());
        return;
    }
    m_preferences.rememberFile(file);
    refreshRecent();
    showPlace(Job);
}

void MainWindow::newJobFromTables() {
    const QString folder =
        askFolder(this, tr("Folder with the Tables of the Job"), folderOf(m_bridge.file()));
    if (folder.isEmpty()) {
        return;
    }
    const QString file =
        askWorkbookToWrite(this, tr("Write the New Workbook"), folder + QStringLiteral(".wwj"));
    if (!file.isEmpty()) {
        createFrom(folder, file);
    }
}

void MainWindow::saveCopy() {
    const QFileInfo file(m_bridge.file());
    const QString proposal =
        file.absolutePath() + QStringLiteral("/") + tr("%1 copy.wwj").arg(file.completeBaseName());
    const QString copy = askWorkbookToWrite(this, tr("Save a Copy"), proposal);
    if (!copy.isEmpty()) {
        const base::Outcome done = m_bridge.saveCopy(copy);
        raise(done ? base::Fault{&kCopySaved, {}, {copy.toStdString()}} : done.fault());
    }
}

void MainWindow::refreshReadOnly() {
    const auto reason = m_bridge.readOnlyReason();
    m_readOnly->setText(reason ? tr("Read-only. %1").arg(text::sentence(*reason)) : QString());
    m_readOnly->setVisible(reason.has_value());
    // A copy does not help where this program is too old for the file.
    m_workInCopy->setVisible(m_bridge.canGoOnInCopy());
}

base::Fault MainWindow::onlyInMemory(const base::Fault& fault) {
    QString words = text::sentence(fault);
    words.chop(words.endsWith('.') ? 1 : 0);
    return {&kOnlyInMemory, {}, {words.toStdString()}};
}

void MainWindow::saveElsewhere() {
    const bool wasReadOnly = m_bridge.isReadOnly();
    const QString file = askWorkbookToWrite(this, tr("Save a Copy Elsewhere and Go On There"),
                                            QDir::homePath() + '/' + QFileInfo(m_bridge.file()).fileName());
    if (file.isEmpty()) {
        return;
    }
    const base::Outcome done = m_bridge.goOnIn(file);
    if (done) {
        m_preferences.rememberFile(file);
        refreshRecent();
    }
    const base::MessageForm& gone = wasReadOnly ? kWorkInCopy : kGoneElsewhere;
    raise(done ? base::Fault{&gone, {}, {file.toStdString()}} : done.fault());
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    const QList<QUrl> urls = event->mimeData()->urls();
    const QString file = urls.size() == 1 ? urls.front().toLocalFile() : QString();
    const bool isImport = isTableFile(file) && !m_bridge.isReadOnly();
    if (file.endsWith(QStringLiteral(".wwj")) || isImport) {
        event->acceptProposedAction();
    }
}

void MainWindow::dropEvent(QDropEvent* event) {
    const QList<QUrl> urls = event->mimeData()->urls();
    if (urls.size() != 1) {
        return;
    }
    const QString file = urls.front().toLocalFile();
    event->acceptProposedAction();
    if (isTableFile(file)) {
        // The desktop waits for the drop to be taken before a dialog may come up.
        QMetaObject::invokeMethod(
            this, [this, file] { importFile(file); }, Qt::QueuedConnection);
        return;
    }
    canTake(file) ? static_cast<void>(openFile(file)) : emit anotherWindowWanted(file);
}

}  // namespace ww::ui
