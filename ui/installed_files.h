// Files that were installed beside the program: samples, handbook, release notes. Not for files of a job.
#pragma once

#include <QString>

namespace ww::ui {

/// The path of a file or folder below share/waterwright, as seen from the program: of the installation, or of
/// the build folder. Empty where there is none: the program was copied away from its files.
QString installedFile(const QString& name);

/// The release notes in a language (ui/language.h), else in English; empty where none were installed.
QString releaseNotesFile(const QString& language);

/// A job that came with the program as a folder of tables.
struct SampleJob {
    QString name;    ///< the job's own name
    QString folder;  ///< path of its tables
};

/// The sample jobs that can be read, in the order of their folders; empty where none were installed.
QList<SampleJob> sampleJobs();

}  // namespace ww::ui
