#include "ui/report/report_pages.h"

#include <QCoreApplication>

#include "ui/charts/convergence_chart_data.h"
#include "ui/charts/pump_chart_data.h"
#include "ui/report/page_builder.h"
#include "ui/report/page_size.h"
#include "ui/text/words.h"

namespace ww::ui::report {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Report", text);
}

void addFigure(PageBuilder& builder, const ww::report::Figure& figure, const ww::report::Report& report,
               const project::Project& project) {
    const bool isPump = figure.kind == ww::report::FigureKind::PumpAndSystem;
    builder.figure(
        words(figure.title),
        isPump ? charts::pumpChart(project, report.rounds) : charts::convergenceChart(project, report.rounds),
        text::text(figure.reading), isPump ? 92 : 78);
}

void addClosing(PageBuilder& builder, const std::vector<ww::report::Statement>& closing) {
    for (const ww::report::Statement& statement : closing) {
        builder.caution(text::text(statement));
    }
}

void addSection(PageBuilder& builder, const ww::report::Section& section, const ww::report::Report& report,
                const project::Project& project) {
    const bool isLandscape =
        !section.tables.empty() && section.tables.front().isLandscape && section.figures.empty();
    builder.beginSection(section.number, words(section.title), isLandscape);
    for (std::size_t i = 0; i < section.facts.size(); ++i) {
        if (section.number == 1 && i == 0) {
            builder.verdictBox(section.facts[i]);
        } else {
            builder.fact(section.facts[i]);
        }
    }
    if (!section.facts.empty() && !section.statements.empty()) {
        builder.gap(4);
    }
    for (const ww::report::Statement& statement : section.statements) {
        if (section.statements.size() > 1) {
            builder.bullet(text::text(statement));
        } else {
            builder.paragraph(text::text(statement));
        }
    }
    for (const ww::report::Figure& figure : section.figures) {
        addFigure(builder, figure, report, project);
    }
    for (const ww::report::Table& table : section.tables) {
        builder.table(table);
    }
    addClosing(builder, section.closing);
}

/// "3f9c 01ab 77e2": groups are easier to compare by eye.
QString grouped(const std::string& digest) {
    QString text = QString::fromStdString(digest);
    for (qsizetype i = 4; i < text.size(); i += 5) {
        text.insert(i, ' ');
    }
    return text;
}

}  // namespace

QSizeF ReportPages::size(std::size_t page) const {
    return pageSize(isLetter, pages[page].isLandscape);
}

ReportPages layOut(const ww::report::Report& report, const project::Project& project) {
    ReportPages laid;
    laid.isLetter = project.job().units == project::UnitSystem::US;
    PageBuilder builder(laid.isLetter);
    std::vector<QString> lines;
    for (const std::string& line : report.titleLines) {
        lines.push_back(QString::fromStdString(line));
    }
    const QString job = QString::fromStdString(report.jobName);
    builder.titleBlock(tr("Balance report"), job, lines,
                       report.isDraft ? tr("DRAFT, NOT SIGNED") : QString());
    for (const ww::report::Section& section : report.sections) {
        addSection(builder, section, report, project);
    }
    QString footer = job + QStringLiteral(" · ") + tr("round %1").arg(report.roundNumber);
    if (!report.digest.empty()) {
        footer += QStringLiteral(" · ") + tr("data %1").arg(grouped(report.digest));
    }
    if (report.isDraft) {
        footer += QStringLiteral(" · ") + tr("draft until signed");
    }
    laid.pages = builder.finish(footer);
    for (const Page& page : laid.pages) {
        QStringList titles;
        for (const int number : page.sections) {
            for (const ww::report::Section& section : report.sections) {
                if (section.number == number) {
                    titles << QStringLiteral("%1 %2").arg(number).arg(words(section.title));
                }
            }
        }
        laid.names.push_back(titles.join(QStringLiteral(", ")));
    }
    return laid;
}

void renderPage(QPainter& painter, const ReportPages& pages, std::size_t page, const QRectF& target) {
    const QSizeF size = pages.size(page);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::TextAntialiasing);
    painter.translate(target.topLeft());
    painter.scale(target.width() / size.width(), target.height() / size.height());
    for (const Stroke& stroke : pages.pages[page].strokes) {
        stroke(painter);
    }
    painter.restore();
}

}  // namespace ww::ui::report
