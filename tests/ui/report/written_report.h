// Reports as files and as grey pages, for tests of what stands in them. The tools of poppler stand for any
// reader.
#pragma once

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <QProcess>

#include "tests/support/demo_project.h"
#include "tests/support/temporary_folder.h"
#include "ui/report/report_pages.h"
#include "ui/report/report_writer.h"

namespace ww::ui::report {

using support::demoProject;

inline ww::report::Report built(const project::Project& project) {
    ww::report::ReportOptions options;
    options.journalDigest = "3f9c01ab77e2d4f00112";
    options.workbookId = "0123";
    options.printed = *base::Instant::fromText("2026-03-04T10:00:00Z");
    return ww::report::build(project, options);
}

inline std::string output(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished()) << program.toStdString() << " of poppler-utils is needed";
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return process.readAllStandardOutput().toStdString();
}

/// A report on disk in a folder of its own.
struct Written {
    support::TemporaryFolder folder;
    std::string file;

    explicit Written(const project::Project& project) : file(folder.file("report.pdf")) {
        EXPECT_TRUE(writePdf(built(project), project, file).ok());
    }
    std::string text() const { return output("pdftotext", {"-layout", QString::fromStdString(file), "-"}); }
};

/// What stands on one page of a file.
inline std::string pageText(const Written& written, std::size_t page) {
    const QString number = QString::number(page);
    return output("pdftotext",
                  {"-layout", "-f", number, "-l", number, QString::fromStdString(written.file), "-"});
}

/// The darkest and lightest greys of a page.
inline QImage greyPage(const ReportPages& pages, std::size_t page) {
    const QSizeF size = pages.size(page) / kDotsPerInch * 96;
    QImage image(size.toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    renderPage(painter, pages, page, QRectF(QPointF(0, 0), size));
    painter.end();
    return image.convertToFormat(QImage::Format_Grayscale8);
}

/// The demo job as if a practice building answered it.
inline project::Project simulatedProject() {
    project::Project project = demoProject();
    project::Job job = project.job();
    job.practice = "difficulty=steady;seed=17";
    project.put(job);
    return project;
}

}  // namespace ww::ui::report
