#include "ui/report/walk_sheet_writer.h"

#include <QCoreApplication>
#include <QPdfWriter>
#include <QSaveFile>

#include "core/workbook/output_target.h"
#include "core/workbook/report_signing.h"
#include "ui/report/page_builder.h"
#include "ui/report/report_writer.h"
#include "ui/text/words.h"

namespace ww::ui::report {

namespace {

/// The texts of this file.
struct WalkSheetText {
    Q_DECLARE_TR_FUNCTIONS(WalkSheet)
};

}  // namespace

ReportPages layOutWalkSheet(const ww::report::WalkSheet& sheet, bool isLetter) {
    ReportPages laid;
    laid.isLetter = isLetter;
    PageBuilder builder(isLetter, sheet.table.isLandscape);
    std::vector<QString> lines;
    for (const std::string& line : sheet.titleLines) {
        lines.push_back(QString::fromStdString(line));
    }
    const QString job = QString::fromStdString(sheet.jobName);
    builder.titleBlock(
        WalkSheetText::tr("Walk sheet"), job, lines,
        WalkSheetText::tr("ROUND %1, %2").arg(sheet.roundNumber).arg(text::word(sheet.kind).toUpper()));
    for (const ww::report::Statement& blank : sheet.blanks) {
        builder.gap(6);
        builder.paragraph(words(blank));
    }
    builder.gap(4);
    for (const ww::report::Statement& caution : sheet.cautions) {
        builder.caution(words(caution));
    }
    builder.table(sheet.table);
    laid.pages =
        builder.finish(job + QStringLiteral(" · ") + WalkSheetText::tr("round %1").arg(sheet.roundNumber) +
                       QStringLiteral(" · ") + WalkSheetText::tr("walk sheet"));
    laid.names.resize(laid.pages.size());
    return laid;
}

void paintPages(const ReportPages& pages, QPagedPaintDevice& device) {
    const auto layoutOf = [&](std::size_t page) {
        return QPageLayout(QPageSize(pages.isLetter ? QPageSize::Letter : QPageSize::A4),
                           pages.pages[page].isLandscape ? QPageLayout::Landscape : QPageLayout::Portrait,
                           QMarginsF());
    };
    device.setPageLayout(layoutOf(0));
    QPainter painter(&device);
    for (std::size_t page = 0; page < pages.pages.size(); ++page) {
        if (page > 0) {
            device.setPageLayout(layoutOf(page));
            device.newPage();
        }
        const double scale = painter.device()->logicalDpiX() / static_cast<double>(kDotsPerInch);
        renderPage(painter, pages, page, QRectF(QPointF(0, 0), pages.size(page) * scale));
    }
}

base::Outcome writeWalkSheet(const project::Project& project, const std::filesystem::path& out) {
    if (auto refusal = workbook::refusalToReplace(out)) {
        return *refusal;
    }
    if (auto refusal = workbook::refusalToReplaceSigned(out)) {
        return *refusal;
    }
    QSaveFile file(QString::fromStdString(out.string()));
    const auto failed = [&] {
        return base::Fault{&kReportNotWritten, {}, {out.string(), file.errorString().toStdString()}};
    };
    if (!file.open(QIODevice::WriteOnly)) {
        return failed();
    }
    const bool isLetter = project.job().units == project::UnitSystem::US;
    {
        QPdfWriter writer(&file);
        writer.setResolution(kDotsPerInch);
        writer.setTitle(QString::fromStdString(project.job().name));
        writer.setCreator(QStringLiteral("Waterwright"));
        paintPages(layOutWalkSheet(ww::report::walkSheet(project), isLetter), writer);
    }
    return file.commit() ? base::Outcome(base::Done{}) : base::Outcome(failed());
}

}  // namespace ww::ui::report
