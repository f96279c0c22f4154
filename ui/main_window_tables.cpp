// Tables and files out of the job and into it, from the main window: export, import, the walk sheet.
#include <QFileDialog>
#include <QFileInfo>
#include <QPrintDialog>
#include <QPrinter>
#include <QRegularExpression>
#include <QSaveFile>

#include "core/exchange/job_folder.h"
#include "core/report/job_spreadsheet.h"
#include "core/report/walk_sheet.h"
#include "core/workbook/output_target.h"
#include "ui/file_messages.h"
#include "ui/import/import_dialog.h"
#include "ui/job_files.h"
#include "ui/long_work.h"
#include "ui/main_window.h"
#include "ui/places/system/system_place.h"
#include "ui/report/walk_sheet_writer.h"

namespace ww::ui {

namespace {

constexpr base::MessageForm kFileNotWritten{"file_not_written",
                                            "{1} cannot be written ({2}); choose a place with room"};

base::Outcome writeText(const std::string& text, const std::filesystem::path& out) {
    QSaveFile file(QString::fromStdString(out.string()));
    const auto size = static_cast<qint64>(text.size());
    const bool isWritten =
        file.open(QIODevice::WriteOnly) && file.write(text.data(), size) == size && file.commit();
    return isWritten ? base::Outcome(base::Done{})
                     : base::Fault{&kFileNotWritten, {}, {out.string(), file.errorString().toStdString()}};
}

}  // namespace

void MainWindow::connectTableCommands() {
    connect(m_commands->exportCsv, &QAction::triggered, this, &MainWindow::exportTables);
    connect(m_commands->exportSpreadsheet, &QAction::triggered, this, [this] {
        exportFile(tr("Export a Spreadsheet"), tr("Spreadsheets (*.xlsx)"), QStringLiteral(".xlsx"),
                   [this](const std::filesystem::path& out) {
                       return ww::report::writeJobSpreadsheet(m_bridge.project(), out);
                   });
    });
    connect(m_commands->exportJson, &QAction::triggered, this, [this] {
        exportFile(tr("Export as JSON"), tr("JSON documents (*.json)"), QStringLiteral(".json"),
                   [this](const std::filesystem::path& out) {
                       return writeText(exchange::jobJson(m_bridge.project()), out);
                   });
    });
    connect(m_commands->saveWalkSheet, &QAction::triggered, this, [this] {
        exportFile(tr("Write the Walk Sheet"), tr("Paper (*.pdf);;Table to fill in (*.csv)"),
                   QStringLiteral(".pdf"), [this](const std::filesystem::path& out) {
                       return out.extension() == ".csv"
                                  ? writeText(ww::report::walkSheetCsv(m_bridge.project()), out)
                                  : report::writeWalkSheet(m_bridge.project(), out);
                   });
    });
    connect(m_commands->printWalkSheet, &QAction::triggered, this, &MainWindow::printWalkSheet);
    connect(m_commands->importTable, &QAction::triggered, this, [this] {
        const QString file = QFileDialog::getOpenFileName(
            this, tr("Import a Table"), folderOf(m_bridge.file()), tr("Tables (*.csv *.xlsx *.xlsm)"));
        if (!file.isEmpty()) {
            importFile(file);
        }
    });
}

void MainWindow::importPasted(const QString& table, const QString& text) {
    if (!m_bridge.isReadOnly()) {
        runImport(pastedSource(text), table);
    }
}

base::Outcome MainWindow::writtenOut(const QString& file, const std::function<base::Outcome()>& write) {
    std::optional<base::Outcome> outcome;
    m_bridge.doWaitedFor(isLarge(m_bridge.file()), tr("Writing %1").arg(QFileInfo(file).fileName()),
                         [&] { outcome = write(); });
    return *outcome;
}

void MainWindow::exportTables() {
    const QString folder = askFolder(this, tr("Folder for the Tables"), folderOf(m_bridge.file()));
    if (folder.isEmpty()) {
        return;
    }
    const base::Outcome done = writtenOut(
        folder, [&] { return exchange::writeJobFolder(m_bridge.project(), folder.toStdString()); });
    raise(done ? base::Fault{&kFileWritten, {}, {folder.toStdString()}} : done.fault());
}

void MainWindow::exportFile(const QString& title, const QString& filter, const QString& ending,
                            const std::function<base::Outcome(const std::filesystem::path&)>& write) {
    const QFileInfo workbook(m_bridge.file());
    const QString proposal = workbook.absolutePath() + '/' + workbook.completeBaseName() + ending;
    QString chosen;
    QString file = QFileDialog::getSaveFileName(this, title, proposal, filter, &chosen);
    if (file.isEmpty()) {
        return;
    }
    if (QFileInfo(file).suffix().isEmpty()) {
        file += chosen.contains(QStringLiteral("*.csv")) ? QStringLiteral(".csv") : ending;
    }
    // A file is what its ending says.
    const QString suffix = QStringLiteral("*.") + QFileInfo(file).suffix().toLower();
    if (!filter.contains(suffix + ')') && !filter.contains(suffix + ' ')) {
        static const QRegularExpression kEndings(QStringLiteral("\\*(\\.\\w+)"));
        QStringList endings;
        for (auto found = kEndings.globalMatch(filter); found.hasNext();) {
            endings << found.next().captured(1);
        }
        raise(base::Fault{
            &kOtherEnding,
            {},
            {QFileInfo(file).fileName().toStdString(), endings.join(QStringLiteral(", ")).toStdString()}});
        return;
    }
    const std::filesystem::path out = file.toStdString();
    if (const auto refusal = workbook::refusalToReplace(out)) {
        raise(*refusal);
        return;
    }
    const base::Outcome done = writtenOut(file, [&] { return write(out); });
    raise(done ? base::Fault{&kFileWritten, {}, {out.string()}} : done.fault());
}

void MainWindow::printWalkSheet() {
    const bool isLetter = m_bridge.project().job().units == project::UnitSystem::US;
    const report::ReportPages pages =
        report::layOutWalkSheet(ww::report::walkSheet(m_bridge.project()), isLetter);
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(tr("Walk sheet"));
    printer.setPageOrientation(QPageLayout::Landscape);
    printer.setFullPage(true);
    QPrintDialog dialog(&printer, this);
    dialog.setWindowTitle(tr("Print the Walk Sheet"));
    if (dialog.exec() == QDialog::Accepted) {
        report::paintPages(pages, printer);
    }
}

void MainWindow::importFile(const QString& file) {
    std::optional<base::Result<ImportSource>> source;
    m_bridge.doWaitedFor(isLargeTable(file), tr("Reading %1").arg(QFileInfo(file).fileName()),
                         [&] { source = readImportSource(file); });
    runImport(std::move(*source), {});
}

void MainWindow::runImport(base::Result<ImportSource> source, const QString& table) {
    if (!source) {
        raise(source.fault());
        return;
    }
    const std::string name = source->name.toStdString();
    ImportDialog dialog(m_bridge, m_preferences, std::move(source).value(), table, this);
    if (dialog.exec() == QDialog::Accepted) {
        raise(base::Fault{&kImported, {}, {name}});
    }
}

}  // namespace ww::ui
