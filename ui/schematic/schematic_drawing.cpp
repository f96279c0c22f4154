#include "ui/schematic/schematic_drawing.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <algorithm>

#include "core/project/setting_text.h"
#include "ui/schematic/schematic_signs.h"
#include "ui/text/narrow_letters.h"
#include "ui/theme/state_shape.h"

namespace ww::ui::schematic {

namespace {

QString percent(std::optional<quantity::Ratio> ratio) {
    return ratio ? QString::number(100.0 * ratio->si(), 'f', 0) + QStringLiteral(" %") : QString();
}

constexpr const char* kBetweenWords = "  ";
/// Between a shape and the words beside it, scene units.
constexpr double kBesideShape = 4;
/// A shape is seen at this size at least where no words stand beside it, scene units.
constexpr double kLeastShape = 14;
constexpr double kShapeAlone = 18;
/// Larger it would touch that of the next row.
constexpr double kMostShape = 26;

QString joined(const QString& one, const QString& other) {
    return one.isEmpty() || other.isEmpty() ? one + other : one + QLatin1String(kBetweenWords) + other;
}

/// What letters take of a line, from the top of a capital to the lowest foot.
double lettersHeight(const QFontMetricsF& metrics) {
    return metrics.capHeight() + metrics.descent();
}

/// The shape of a branch's state and as many words as have room; a pipe under them is broken.
void paintLabel(QPainter& painter, const BranchPlace& place, const BranchPicture& picture,
                const SchematicStyle& style) {
    const QRectF box = place.label;
    const QFontMetricsF metrics(style.font);
    const double unit = style.unit;
    double side = std::min(kMostShape, std::max(kLeastShape, metrics.height() * unit));
    const QSizeF room(box.width() - side - kBesideShape, box.height());
    const bool isStacked = place.direction == Direction::Down;
    const std::optional<BranchWords> words = wordsOf(picture, room / unit, isStacked, style.font);
    side = words ? side : std::max(kShapeAlone, side);
    const double secondLine = words && words->isBelow ? metrics.height() : 0;
    const QFontMetricsF ofTag(words ? words->tagFont : style.font);
    const double behindTag = words ? ofTag.horizontalAdvance(words->tag + QLatin1String(kBetweenWords)) : 0;
    // The middle of the capitals of the first line.
    const double middle = box.center().y() - (secondLine + (words ? metrics.descent() : 0)) * unit / 2;
    const QRectF shape(box.left(), middle - side / 2, side, side);
    if (!isStacked) {
        const double wide =
            words ? kBesideShape + (behindTag + metrics.horizontalAdvance(words->rest)) * unit : 0;
        painter.fillRect(shape.adjusted(-2, 0, wide + 2, 0), style.tokens.paper);
    }
    theme::paintState(painter, shape, picture.state, picture.isOver, style.tokens);
    if (!words) {
        return;
    }
    painter.save();
    painter.translate(shape.right() + kBesideShape, middle);
    painter.scale(unit, unit);
    const double baseline = metrics.capHeight() / 2;
    painter.setFont(words->tagFont);
    painter.setPen(style.tokens.ink);
    painter.drawText(QPointF(0, baseline), words->tag);
    painter.setFont(style.font);
    painter.setPen(style.tokens.soft);
    painter.drawText(QPointF(words->isBelow ? 0 : behindTag, baseline + secondLine), words->rest);
    painter.restore();
}

void paintBranch(QPainter& painter, const BranchPlace& place, const BranchPicture& picture,
                 const SchematicStyle& style) {
    if (picture.hasValve) {
        paintValve(painter, place.valve, place.direction == Direction::Down, picture.openFraction,
                   style.tokens);
    }
    if (picture.isTerminal) {
        paintUnit(painter, place.pipe.p2(), style.tokens);
    }
    paintLabel(painter, place, picture, style);
}

}  // namespace

SchematicDrawing drawingOf(const project::Project& project, const balancing::Assessment& assessment) {
    SchematicDrawing drawing;
    const project::BranchTree& tree = project.tree();
    drawing.layout = layOut(tree);
    drawing.fromPumpOut.assign(tree.topDown().begin(), tree.topDown().end());
    drawing.pictures.assign(project.branches().size(), {});
    const bool isJudged = assessment.branches.size() == project.branches().size();
    for (std::size_t i = 0; i < drawing.pictures.size(); ++i) {
        const project::Branch& branch = project.branches()[i];
        BranchPicture& picture = drawing.pictures[i];
        picture.id = branch.id;
        picture.tag = QString::fromStdString(branch.tag);
        picture.isTerminal = tree.isTerminal(i);
        picture.isSelfActing = project::isSelfActing(branch);
        const auto* characteristic = project.characteristicOf(branch);
        picture.hasValve = characteristic != nullptr;
        if (!isJudged) {
            continue;
        }
        const balancing::BranchResult& result = assessment.branches[i];
        picture.state = result.state;
        picture.isOver = result.ofTarget && result.ofTarget->si() > 1;
        picture.share = percent(result.ofTarget);
        if (characteristic != nullptr) {
            const quantity::Setting open = characteristic->fullyOpen();
            const quantity::Setting setting = result.setting.value_or(open);
            picture.openFraction = std::clamp(setting / open, 0.0, 1.0);
            picture.setting = QString::fromStdString(project::settingText(project, branch, setting));
        }
        picture.isIndexTerminal = assessment.index.terminal == i;
    }
    for (const std::size_t branch : assessment.index.path) {
        if (branch < drawing.pictures.size()) {
            drawing.pictures[branch].isOnIndexPath = true;
        }
    }
    return drawing;
}

std::optional<BranchWords> wordsOf(const BranchPicture& picture, QSizeF room, bool isStacked,
                                   const QFont& font) {
    const QFontMetricsF metrics(font);
    const double line = lettersHeight(metrics);
    // Before anything is measured: of a large loop seen from afar every branch is in sight.
    if (line > room.height()) {
        return std::nullopt;
    }
    BranchWords words;
    words.tag = picture.isIndexTerminal ? picture.tag + QStringLiteral(" *") : picture.tag;
    words.tagFont = font;
    words.tagFont.setBold(picture.isIndexTerminal);
    const double tag = QFontMetricsF(words.tagFont).horizontalAdvance(words.tag);
    const QString setting = picture.setting.isEmpty()
                                ? QString()
                                : QCoreApplication::translate("SchematicView", "at %1").arg(picture.setting);
    for (const QString& rest : {joined(picture.share, setting), picture.share}) {
        const double wide = metrics.horizontalAdvance(rest);
        const double gap = QFontMetricsF(words.tagFont).horizontalAdvance(QLatin1String(kBetweenWords));
        words.rest = rest;
        words.isBelow = isStacked && !rest.isEmpty() && line + metrics.height() <= room.height();
        if (words.isBelow ? std::max(tag, wide) <= room.width()
                          : !rest.isEmpty() && tag + gap + wide <= room.width()) {
            return words;
        }
    }
    words.rest.clear();
    words.isBelow = false;
    const auto fitting = text::widestThatFits(words.tagFont, [&](const QFont& tried) {
        return QFontMetricsF(tried).horizontalAdvance(words.tag) <= room.width();
    });
    if (!fitting) {
        return std::nullopt;
    }
    words.tagFont = *fitting;
    return words;
}

void paintSchematic(QPainter& painter, const SchematicDrawing& drawing, const QRectF& exposed,
                    const SchematicStyle& style) {
    if (drawing.pictures.empty()) {
        return;
    }
    // A diagram is not mirrored: what is written on it runs as its own letters do.
    painter.setLayoutDirection(Qt::LayoutDirectionAuto);
    paintPipe(painter, drawing.layout.mainPipe, false, style.tokens);
    for (std::size_t i = 0; i < drawing.pictures.size(); ++i) {
        paintPipe(painter, drawing.layout.places[i].pipe, false, style.tokens);
    }
    // The index circuit from the pump outward: each pipe only as far as the next take-off on the path.
    QPointF from = drawing.layout.pump;
    for (std::size_t i = 0; i < drawing.pictures.size(); ++i) {
        const std::size_t branch = drawing.fromPumpOut[i];
        if (drawing.pictures[branch].isOnIndexPath) {
            paintPipe(painter, QLineF(from, drawing.layout.places[branch].takeOff), true, style.tokens);
            from = drawing.layout.places[branch].takeOff;
            if (drawing.pictures[branch].isTerminal) {
                paintPipe(painter, drawing.layout.places[branch].pipe, true, style.tokens);
            }
        }
    }
    for (std::size_t i = 0; i < drawing.pictures.size(); ++i) {
        const QRectF reach = QRectF(drawing.layout.places[i].pipe.p1(), drawing.layout.places[i].pipe.p2())
                                 .normalized()
                                 .united(drawing.layout.places[i].label)
                                 .adjusted(-20, -20, 20, 20);
        if (reach.intersects(exposed)) {
            paintBranch(painter, drawing.layout.places[i], drawing.pictures[i], style);
        }
    }
    paintPump(painter, drawing.layout.pump, style.tokens);
}

}  // namespace ww::ui::schematic
