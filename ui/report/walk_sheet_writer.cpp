#include "ui/report/walk_sheet_writer.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPdfWriter>

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
    builder.titleBlock(WalkSheetText::tr("Walk sheet"), job, lines,
                       WalkSheetText::tr("Round %1, %2").arg(sheet.roundNumber).arg(text::word(sheet.kind)));
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

base::Outcome writeWalkSheet(const project::Project& project, const std::filesystem::path& out) {
    return writeWhole(out, [&] {
        QByteArray bytes;
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        const bool isLetter = project.job().units == project::UnitSystem::US;
        {
            QPdfWriter writer(&buffer);
            writer.setResolution(kDotsPerInch);
            writer.setTitle(QString::fromStdString(project.job().name));
            writer.setCreator(QStringLiteral("Waterwright"));
            paintPages(layOutWalkSheet(ww::report::walkSheet(project), isLetter), writer);
        }
        buffer.close();
        return bytes;
    });
}

}  // namespace ww::ui::report
