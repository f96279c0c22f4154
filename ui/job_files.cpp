#include "ui/job_files.h"

#include <QDir>
#include <QFile>
#include <QFileDialog>

#include "core/exchange/job_folder.h"
#include "core/project/edit_label.h"
#include "ui/long_work.h"
#include "ui/table_faults_dialog.h"
#include "ui/text/joined.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

QString workbooks() {
    return QObject::tr("Workbooks (*.wwj)");
}

}  // namespace

QString folderOf(const QString& file) {
    return file.isEmpty() ? QDir::homePath() : QFileInfo(file).absolutePath();
}

QString askWorkbookToOpen(QWidget* parent, const QString& folder) {
    return QFileDialog::getOpenFileName(parent, QObject::tr("Open a Workbook"), folder, workbooks());
}

QString askWorkbookToWrite(QWidget* parent, const QString& title, const QString& proposal) {
    QString file = QFileDialog::getSaveFileName(parent, title, proposal, workbooks());
    if (!file.isEmpty() && !file.endsWith(QStringLiteral(".wwj"))) {
        file += QStringLiteral(".wwj");
    }
    return file;
}

QString askFolder(QWidget* parent, const QString& title, const QString& folder) {
    return QFileDialog::getExistingDirectory(parent, title, folder);
}

std::optional<std::string> bytesOfFile(const QString& name, qint64 most) {
    QFile file(name);
    if (name.isEmpty() || !file.open(QIODevice::ReadOnly) || file.size() > most) {
        return std::nullopt;
    }
    return file.readAll().toStdString();
}

project::Edit emptyJob(const base::Id& id, const QString& name) {
    using quantity::Unit;
    const auto percent = [](const char* digits) {
        return quantity::measured<quantity::Ratio>(*base::Decimal::parse(digits), Unit::Percent);
    };
    project::Job job;
    job.id = id;
    job.name = name.toStdString();
    job.concentration = percent("0");
    const base::Decimal twenty = *base::Decimal::parse("20");
    job.temperature = {twenty, Unit::Celsius, quantity::Temperature::from(20.0, Unit::Celsius)};
    job.toleranceLow = percent("-10");
    job.toleranceHigh = percent("10");
    job.matchingBand = percent("5");
    return {project::label(project::labels::kNewJob), {job}, {}, false};
}

bool createFromTables(QWidget* parent, WorkbookBridge& bridge, const QString& folder, const QString& file) {
    base::RandomIds ids;
    exchange::ImportPlan plan;
    bridge.doWaitedFor(isLargeTable(folder), QObject::tr("Reading %1").arg(QFileInfo(folder).fileName()),
                       [&] { plan = exchange::readJobFolder(folder.toStdString(), ids); });
    if (!plan.isAcceptable()) {
        QStringList faults;
        for (const exchange::RowFault& fault : plan.faults) {
            faults << text::labelled(QString::fromStdString(exchange::placeOf(fault)),
                                     text::text(fault.fault));
        }
        TableFaultsDialog(faults, parent).exec();
        return false;
    }
    const base::Outcome made = bridge.create(file, plan.edit);
    if (!made) {
        emit bridge.messageRaised(made.fault());
    }
    return made.ok();
}

}  // namespace ww::ui
