#include "ui/report/report_pages.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <span>

#include "core/project/earlier_design.h"
#include "ui/report/page_builder.h"
#include "ui/report/page_size.h"
#include "ui/report/report_figures.h"
#include "ui/text/words.h"

namespace ww::ui::report {
namespace {

constexpr double kBlockHeightMm = 27;

/// Sections that follow one another.
using SectionRun = std::span<const ww::report::Section>;

/// The texts of this file.
struct ReportText {
    Q_DECLARE_TR_FUNCTIONS(Report)
};

void addCautions(PageBuilder& builder, const std::vector<ww::report::Statement>& cautions) {
    for (const ww::report::Statement& statement : cautions) {
        builder.caution(text::text(statement));
    }
}

void addStatements(PageBuilder& builder, const ww::report::Section& section) {
    for (const ww::report::Statement& statement : section.statements) {
        if (!builder.goesOn()) {
            return;
        }
        if (section.statements.size() > 1) {
            builder.bullet(text::text(statement));
        } else {
            builder.paragraph(text::text(statement));
        }
    }
}

/// The blocks of those who sign, with what they sign; or that nobody has.
void addSignatures(PageBuilder& builder, const ww::report::Report& report, ReportPages& laid);

/// What a section holds, below its heading.
void addParts(PageBuilder& builder, const ww::report::Section& section, const ww::report::Report& report,
              const project::Project& project, ReportPages& laid) {
    using ww::report::FigureKind;
    const bool isCover =
        section.number == ww::report::kResult && report.kind == ww::report::ReportKind::Balance;
    addCautions(builder, section.opening);
    builder.beginFacts(section.facts);
    for (std::size_t i = 0; i < section.facts.size(); ++i) {
        if (isCover && i == 0) {
            builder.verdictBox(section.facts[i]);
        } else {
            builder.fact(section.facts[i]);
        }
    }
    if (!section.facts.empty() && !section.statements.empty()) {
        builder.gap(4);
    }
    addStatements(builder, section);
    if (isCover && !report.isDraft) {
        addSignatures(builder, report, laid);
    }
    for (const ww::report::Figure& figure : section.figures) {
        if (figure.kind != FigureKind::Photo) {
            addFigure(builder, figure, report, project);
        }
    }
    for (const ww::report::Table& table : section.tables) {
        builder.table(table);
    }
    for (const ww::report::Figure& figure : section.figures) {
        if (figure.kind == FigureKind::Photo) {
            addFigure(builder, figure, report, project);
        }
    }
    addCautions(builder, section.closing);
}

/// Whether a section may be laid out on pages that lie the way the present one does. The final round lies on
/// its side always, and so does a diagram that is well read there alone.
bool mayStay(const PageBuilder& builder, const ww::report::Section& section) {
    if (builder.isLandscape()) {
        return true;
    }
    const bool isTurned = section.number == ww::report::kFinal || section.number == ww::report::kOneLine;
    return !isTurned && std::all_of(section.tables.begin(), section.tables.end(),
                                    [&](const auto& table) { return builder.fits(table); });
}

/// Lays sections out one after the other, each as it wants its pages to lie or against that.
void addSections(PageBuilder& builder, SectionRun run, bool areKept, const ww::report::Report& report,
                 const project::Project& project, ReportPages& laid) {
    for (const ww::report::Section& section : run) {
        if (!builder.goesOn()) {
            return;
        }
        builder.beginSection(section.number, words(section.title),
                             wantsLandscape(section, project) != areKept);
        if (areKept) {
            builder.keepDirection();
        }
        addParts(builder, section, report, project, laid);
    }
}

/// Pages turn only where that takes no more of them than going on as the present one lies. A run of sections
/// that fill no page stays as the present page lies also where the next section wants that.
bool stayAsThePageLies(const PageBuilder& builder, SectionRun run, bool isWantedBehind,
                       const ww::report::Report& report, const project::Project& project) {
    if (!std::all_of(run.begin(), run.end(),
                     [&](const auto& section) { return mayStay(builder, section); })) {
        return false;
    }
    const auto pagesTaken = [&](bool areKept) {
        PageBuilder trial = builder.trial();
        ReportPages unused;
        addSections(trial, run, areKept, report, project, unused);
        return trial.pageCount();
    };
    const std::size_t staying = pagesTaken(true);
    const std::size_t turning = pagesTaken(false);
    return staying < turning || (staying == turning && staying <= 2 && isWantedBehind);
}

void addAllSections(PageBuilder& builder, const ww::report::Report& report, const project::Project& project,
                    ReportPages& laid) {
    const SectionRun all(report.sections);
    const auto lies = [&](std::size_t i) { return wantsLandscape(all[i], project); };
    for (std::size_t first = 0; first < all.size() && builder.goesOn();) {
        if (lies(first) == builder.isLandscape()) {
            addSections(builder, all.subspan(first, 1), false, report, project, laid);
            ++first;
            continue;
        }
        std::size_t end = first + 1;
        while (end < all.size() && lies(end) == lies(first)) {
            ++end;
        }
        const SectionRun run = all.subspan(first, end - first);
        const bool isWhole = stayAsThePageLies(builder, run, end < all.size(), report, project);
        const SectionRun taken = isWhole ? run : run.first(1);
        const bool areKept = isWhole || stayAsThePageLies(builder, taken, false, report, project);
        addSections(builder, taken, areKept, report, project, laid);
        first += taken.size();
    }
}

/// "3f9c 01ab 77e2": groups are easier to compare by eye.
QString grouped(const std::string& digest) {
    QString text = QString::fromStdString(digest);
    for (qsizetype i = 4; i < text.size(); i += 5) {
        text.insert(i, ' ');
    }
    return text;
}

/// A place on a page as PDF counts it, from below. Qt rounds a page to whole points.
seal::PaperPlace paperPlace(const QRectF& place, std::size_t page, const QSizeF& size) {
    constexpr double kPerDot = 1000.0 / kDotsPerPoint;
    const double height = std::round(size.height() / kDotsPerPoint) * 1000.0;
    const auto whole = [](double value) { return static_cast<int>(std::lround(value)); };
    return {static_cast<int>(page),
            {whole(place.left() * kPerDot), whole(height - place.bottom() * kPerDot)},
            {whole(place.width() * kPerDot), whole(place.height() * kPerDot)}};
}

void addSignatures(PageBuilder& builder, const ww::report::Report& report, ReportPages& laid) {
    std::vector<seal::Role> roles{seal::Role::Technician};
    if (report.signers == ww::report::Signers::TechnicianAndSupervisor) {
        roles.push_back(seal::Role::Supervisor);
    }
    builder.gap(4);
    const std::vector<QRectF> places = builder.spaces(roles.size(), kBlockHeightMm);
    const QSizeF size = pageSize(laid.isLetter, false);
    for (std::size_t i = 0; i < roles.size(); ++i) {
        laid.spaces.push_back({roles[i], paperPlace(places[i], builder.lastPage(), size)});
    }
    builder.paragraph(ReportText::tr("Workbook %1").arg(grouped(report.workbookId)), true);
    builder.paragraph(ReportText::tr("Newest record %1").arg(grouped(report.journalDigest)), true);
    builder.paragraph(
        ReportText::tr("The signatures cover this file with the tables attached to it. A block is only a "
                       "picture: the signature panel of a PDF viewer, or Waterwright's verify, tells whether "
                       "the file is unchanged and who signed it."),
        true);
}

}  // namespace

QSizeF ReportPages::size(std::size_t page) const {
    return pageSize(isLetter, pages[page].isLandscape);
}

ReportPages layOut(const ww::report::Report& report, const project::Project& project) {
    return *layOut(report, project, Watch());
}

std::optional<ReportPages> layOut(const ww::report::Report& report, const project::Project& today,
                                  const Watch& watch) {
    const project::Round* reported = today.roundNumbered(report.roundNumber);
    const auto then = reported != nullptr ? project::asJudged(today, *reported) : std::nullopt;
    const project::Project& project = then ? *then : today;
    ReportPages laid;
    laid.isLetter = project.job().units == project::UnitSystem::US;
    PageBuilder builder(laid.isLetter, false, watch);
    std::vector<QString> lines;
    for (const std::string& line : report.titleLines) {
        lines.push_back(QString::fromStdString(line));
    }
    if (report.revisionLine) {
        lines.push_back(words(*report.revisionLine));
    }
    const QString job = QString::fromStdString(report.jobName);
    const bool isStudy = report.kind == ww::report::ReportKind::Study;
    const QString stamp = isStudy          ? ReportText::tr("A FORECAST, NO READINGS")
                          : report.copyOf  ? ReportText::tr("COPY, NOT SIGNED")
                          : report.isDraft ? ReportText::tr("DRAFT, NOT SIGNED")
                                           : QString();
    if (report.simulated) {
        builder.headBar(ReportText::tr("SIMULATED"));
    }
    builder.titleBlock(isStudy ? ReportText::tr("Study of a changed zone") : ReportText::tr("Balance report"),
                       job, lines, stamp);
    if (report.simulated) {
        builder.notice(text::text(*report.simulated));
    }
    addAllSections(builder, report, project, laid);
    if (!builder.goesOn()) {
        return std::nullopt;
    }
    QString footer = job + QStringLiteral(" · ") + ReportText::tr("round %1").arg(report.roundNumber);
    if (!report.digest.empty()) {
        footer += QStringLiteral(" · ") + ReportText::tr("data %1").arg(grouped(report.digest));
    }
    if (isStudy) {
        footer += QStringLiteral(" · ") + ReportText::tr("a study, never signed");
    } else if (report.copyOf) {
        footer += QStringLiteral(" · ") + ReportText::tr("copy of the signed report");
    } else if (report.isDraft) {
        footer += QStringLiteral(" · ") + ReportText::tr("draft until signed");
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
        laid.names.push_back(titles.join('\n'));
    }
    return laid;
}

void renderPage(QPainter& painter, const ReportPages& pages, std::size_t page, const QRectF& target) {
    const QSizeF size = pages.size(page);
    painter.save();
    // Paper has no layout of a desk: each text runs as its own letters do.
    painter.setLayoutDirection(Qt::LayoutDirectionAuto);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::TextAntialiasing);
    painter.translate(target.topLeft());
    painter.scale(target.width() / size.width(), target.height() / size.height());
    for (const Stroke& stroke : pages.pages[page].strokes) {
        stroke(painter);
    }
    painter.restore();
}

bool paintPages(const ReportPages& pages, QPagedPaintDevice& device, const Watch& watch) {
    const auto layoutOf = [&](std::size_t page) {
        return QPageLayout(QPageSize(pages.isLetter ? QPageSize::Letter : QPageSize::A4),
                           pages.pages[page].isLandscape ? QPageLayout::Landscape : QPageLayout::Portrait,
                           QMarginsF());
    };
    device.setPageLayout(layoutOf(0));
    QPainter painter(&device);
    for (std::size_t page = 0; page < pages.pages.size(); ++page) {
        if (watch && !watch(page)) {
            return false;
        }
        if (page > 0) {
            device.setPageLayout(layoutOf(page));
            device.newPage();
        }
        const double scale = painter.device()->logicalDpiX() / static_cast<double>(kDotsPerInch);
        renderPage(painter, pages, page, QRectF(QPointF(0, 0), pages.size(page) * scale));
    }
    return true;
}

}  // namespace ww::ui::report
