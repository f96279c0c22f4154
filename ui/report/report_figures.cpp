#include "ui/report/report_figures.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QImageReader>
#include <algorithm>
#include <cmath>

#include "core/balancing/assess.h"
#include "ui/charts/chart_painter.h"
#include "ui/charts/convergence_chart_data.h"
#include "ui/charts/pump_chart_data.h"
#include "ui/charts/pump_room_chart_data.h"
#include "ui/schematic/schematic_drawing.h"
#include "ui/text/words.h"

namespace ww::ui::report {
namespace {

using ww::report::Figure;
using ww::report::FigureKind;

constexpr double kPumpHeightMm = 92;
constexpr double kConvergenceHeightMm = 78;
constexpr double kPhotoHeightMm = 80;
/// Longer sides of a photo are made smaller: about 300 dots an inch at that height.
constexpr int kPhotoPixels = 1400;
/// Dots of paper for one unit of the diagram: at most, and as long as its texts can be read (5.5 points).
constexpr double kLargestScale = kDotsPerInch / 96.0 * 0.85;
constexpr double kReadableScale = 5.5 * kDotsPerPoint / 12.0;
constexpr double kWellReadScale = 7.0 * kDotsPerPoint / 12.0;
/// Parts of a diagram overlap by this much, so that no label is cut on both sides.
constexpr double kOverlap = 130;
constexpr int kMostParts = 24;

/// The texts of this file.
struct FigureText {
    Q_DECLARE_TR_FUNCTIONS(Report)
};

void addChart(PageBuilder& builder, const Figure& figure, charts::ChartFigure chart, double heightMm) {
    if (chart.isEmpty()) {
        return;
    }
    const charts::ChartStyle style{theme::printTokens(), paperFont(8), kDotsPerInch / 96.0 * 0.85};
    builder.figure(words(figure.title), text::text(figure.reading), heightMm,
                   [chart = std::move(chart), style](QPainter& painter, const QRectF& box) {
                       charts::paintChart(painter, box, chart, style);
                   });
}

/// Words that are never smaller than can be read at that scale.
schematic::SchematicStyle onPaper(double scale) {
    constexpr int kWordHeight = 12;
    QFont words(paperFont(8).family());
    words.setPixelSize(kWordHeight);
    words.setHintingPreference(QFont::PreferNoHinting);
    return {theme::printTokens(), words, std::max(1.0, kReadableScale / scale)};
}

/// Draws a piece of the diagram into the upper left of a box.
void addPiece(PageBuilder& builder, const QString& title, const QString& sentence,
              const schematic::SchematicDrawing& drawing, const QRectF& piece, double scale) {
    builder.figure(title, sentence, piece.height() * scale / kDotsPerMillimetre,
                   [=](QPainter& painter, const QRectF& box) {
                       const double left = box.left() + (box.width() - piece.width() * scale) / 2;
                       painter.setClipRect(QRectF(QPointF(left, box.top()), piece.size() * scale));
                       painter.translate(left, box.top());
                       painter.scale(scale, scale);
                       painter.translate(-piece.topLeft());
                       schematic::paintSchematic(painter, drawing, piece, onPaper(scale));
                   });
}

void addOneLine(PageBuilder& builder, const Figure& figure, const ww::report::Report& report,
                const project::Project& project) {
    const balancing::Assessment shown =
        report.rounds.empty() ? balancing::assessLast(project) : report.rounds.back();
    const schematic::SchematicDrawing drawing = schematic::drawingOf(project, shown);
    const QRectF all = drawing.layout.bounds;
    const QSizeF room = builder.figureRoom();
    const double whole =
        std::min({kLargestScale, room.width() / all.width(), room.height() * 0.86 / all.height()});
    // Somewhat smaller rather than on a page of its own, as long as it is well read.
    const double onThisPage = builder.figureHeightLeft() / all.height();
    const double fitting = onThisPage >= kWellReadScale ? std::min(whole, onThisPage) : whole;
    addPiece(builder, words(figure.title), text::text(figure.reading), drawing, all, fitting);
    if (fitting >= kReadableScale) {
        return;
    }
    const QSizeF part = room / kReadableScale;
    const int across = static_cast<int>(std::ceil((all.width() - kOverlap) / (part.width() - kOverlap)));
    const int down = static_cast<int>(std::ceil((all.height() - kOverlap) / (part.height() - kOverlap)));
    if (across * down > kMostParts) {
        builder.paragraph(
            FigureText::tr("The loop is too large to be drawn with its names; section %1 lists every branch.")
                .arg(static_cast<int>(ww::report::kFinal)));
        return;
    }
    for (int y = 0; y < down; ++y) {
        for (int x = 0; x < across; ++x) {
            const QPointF corner =
                all.topLeft() + QPointF(x * (part.width() - kOverlap), y * (part.height() - kOverlap));
            const QRectF piece = QRectF(corner, part).intersected(all);
            addPiece(builder,
                     FigureText::tr("Part %1 of %2, from the pump outward, top to bottom")
                         .arg(y * across + x + 1)
                         .arg(across * down),
                     QString(), drawing, piece, kReadableScale);
        }
    }
}

/// A photo is read when it is painted, so that no more than one is in memory.
void addPhoto(PageBuilder& builder, const Figure& figure, const project::Project& project) {
    const project::Attachment* file =
        figure.attachment ? project.attachments().find(*figure.attachment) : nullptr;
    if (file == nullptr) {
        return;
    }
    builder.figure(words(figure.title), text::text(figure.reading), kPhotoHeightMm,
                   [content = file->content](QPainter& painter, const QRectF& box) {
                       QByteArray bytes(reinterpret_cast<const char*>(content.bytes().data()),
                                        static_cast<qsizetype>(content.bytes().size()));
                       QBuffer buffer(&bytes);
                       QImageReader reader(&buffer);
                       reader.setAutoTransform(true);
                       const QSize size = reader.size();
                       if (size.isValid() && std::max(size.width(), size.height()) > kPhotoPixels) {
                           reader.setScaledSize(size.scaled(kPhotoPixels, kPhotoPixels, Qt::KeepAspectRatio));
                       }
                       const QImage read = reader.read();
                       if (read.isNull()) {
                           painter.setPen(theme::printTokens().ink);
                           painter.setFont(paperFont(9));
                           painter.drawText(box, Qt::AlignCenter,
                                            FigureText::tr("This picture cannot be read."));
                           return;
                       }
                       // Paper knows no transparency.
                       QImage image(read.size(), QImage::Format_RGB32);
                       image.fill(Qt::white);
                       QPainter(&image).drawImage(0, 0, read);
                       const QSizeF shown = QSizeF(image.size()).scaled(box.size(), Qt::KeepAspectRatio);
                       painter.drawImage(QRectF(box.topLeft(), shown), image);
                   });
}

}  // namespace

bool wantsLandscape(const ww::report::Section& section, const project::Project& project) {
    const bool isTable = !section.tables.empty() && section.tables.front().isLandscape &&
                         (section.figures.empty() || section.figures.front().kind == FigureKind::Photo);
    if (isTable || section.figures.empty() || section.figures.front().kind != FigureKind::OneLine) {
        return isTable;
    }
    const QRectF all = schematic::layOut(project.tree()).bounds;
    // Upright as long as its texts are well read there, so that it follows the section before on the same
    // page.
    const QSizeF upright = PageBuilder(project.job().units == project::UnitSystem::US).figureRoom();
    return all.width() > 1.1 * all.height() && upright.width() < kWellReadScale * all.width();
}

void addFigure(PageBuilder& builder, const Figure& figure, const ww::report::Report& report,
               const project::Project& project) {
    switch (figure.kind) {
        case FigureKind::PumpAndSystem:
            addChart(builder, figure, charts::pumpChart(project, report.rounds, &report.pumps->decision),
                     kPumpHeightMm);
            return;
        case FigureKind::ReadAndSet:
            addChart(builder, figure, charts::readAndSetChart(project, report.pumps->readAndSet),
                     kConvergenceHeightMm);
            return;
        case FigureKind::PressureProfile:
            if (report.pumps->circuit) {
                addChart(builder, figure, charts::pressureChart(project, *report.pumps->circuit),
                         kConvergenceHeightMm);
            }
            return;
        case FigureKind::Convergence:
            addChart(builder, figure, charts::convergenceChart(project, report.rounds), kConvergenceHeightMm);
            return;
        case FigureKind::OneLine:
            addOneLine(builder, figure, report, project);
            return;
        case FigureKind::Photo:
            addPhoto(builder, figure, project);
            return;
    }
}

}  // namespace ww::ui::report
