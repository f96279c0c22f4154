#include "ui/report/report_file_name.h"

#include <QCoreApplication>

namespace ww::ui::report {
namespace {

/// The texts of this file.
struct FileNameText {
    Q_DECLARE_TR_FUNCTIONS(Report)
};

}  // namespace

QString writableName(const QString& name) {
    QString writable = name.trimmed();
    for (const QChar refused : QStringLiteral("/\\:*?\"<>|")) {
        writable.replace(refused, '-');
    }
    return writable;
}

QString fileNameOf(const ww::report::Report& report) {
    const QString name = writableName(QString::fromStdString(report.jobName));
    if (report.kind == ww::report::ReportKind::Study) {
        return FileNameText::tr("%1, study of a changed zone.pdf")
            .arg(name.isEmpty() ? FileNameText::tr("Job") : name);
    }
    const QString whole =
        report.copyOf    ? FileNameText::tr("%1, balance report, round %2, revision %3 copy.pdf")
        : report.isDraft ? FileNameText::tr("%1, balance report, round %2, revision %3 draft.pdf")
                         : FileNameText::tr("%1, balance report, round %2, revision %3.pdf");
    return whole.arg(name.isEmpty() ? FileNameText::tr("Job") : name)
        .arg(report.roundNumber)
        .arg(report.revision);
}

}  // namespace ww::ui::report
