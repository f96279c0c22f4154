#include "ui/installed_files.h"

#include <QCoreApplication>
#include <QDir>

#include "core/exchange/job_folder.h"

namespace ww::ui {

QString installedFile(const QString& name) {
    const QFileInfo file(QCoreApplication::applicationDirPath() + QStringLiteral("/../share/waterwright/") +
                         name);
    return file.exists() ? QDir::cleanPath(file.absoluteFilePath()) : QString();
}

QString releaseNotesFile(const QString& language) {
    const QString own = installedFile(QStringLiteral("release_notes_%1.md").arg(language));
    return own.isEmpty() ? installedFile(QStringLiteral("release_notes.md")) : own;
}

QList<SampleJob> sampleJobs() {
    const QString samples = installedFile(QStringLiteral("samples"));
    if (samples.isEmpty()) {
        return {};
    }
    QList<SampleJob> jobs;
    for (const QFileInfo& folder :
         QDir(samples).entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name)) {
        base::RandomIds ids;
        const exchange::ImportPlan plan =
            exchange::readJobFolder(folder.absoluteFilePath().toStdString(), ids);
        for (const project::AnyRecord& record : plan.edit.put) {
            if (const auto* job = std::get_if<project::Job>(&record); job != nullptr && plan.isAcceptable()) {
                jobs << SampleJob{QString::fromStdString(job->name), folder.absoluteFilePath()};
            }
        }
    }
    return jobs;
}

}  // namespace ww::ui
