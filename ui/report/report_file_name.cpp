#include "ui/report/report_file_name.h"

#include <QCoreApplication>

namespace ww::ui::report {

QString fileNameOf(const ww::report::Report& report) {
    QString name = QString::fromStdString(report.jobName).trimmed();
    for (const QChar refused : QStringLiteral("/\\:*?\"<>|")) {
        name.replace(refused, '-');
    }
    const auto words = [](const char* source) { return QCoreApplication::translate("Report", source); };
    if (report.kind == ww::report::ReportKind::Study) {
        return words("%1, study of a changed zone.pdf").arg(name.isEmpty() ? words("Job") : name);
    }
    return words("%1, balance report, round %2, revision %3.pdf")
        .arg(name.isEmpty() ? words("Job") : name)
        .arg(report.roundNumber)
        .arg(report.revision);
}

}  // namespace ww::ui::report
