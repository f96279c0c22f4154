#include "ui/schematic/schematic_drawing.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <algorithm>

#include "core/project/setting_text.h"
#include "ui/theme/state_shape.h"

namespace ww::ui::schematic {

namespace {

QString percent(std::optional<quantity::Ratio> ratio) {
    return ratio ? QString::number(100.0 * ratio->si(), 'f', 0) + QStringLiteral(" %") : QString();
}

void paintPipe(QPainter& painter, const QLineF& pipe, bool isDouble, const SchematicStyle& style) {
    const double width = style.tokens.isDaylight ? 2.5 : 1.8;
    painter.setPen(QPen(isDouble ? style.tokens.ink : style.tokens.rule, isDouble ? 1.6 : width,
                        Qt::SolidLine, Qt::FlatCap));
    if (!isDouble) {
        painter.drawLine(pipe);
        return;
    }
    painter.setPen(QPen(style.tokens.paper, 5));
    painter.drawLine(pipe);
    painter.setPen(QPen(style.tokens.ink, 1.6, Qt::SolidLine, Qt::FlatCap));
    const QPointF aside = pipe.dx() == 0 ? QPointF(2.0, 0) : QPointF(0, 2.0);
    painter.drawLine(pipe.translated(aside));
    painter.drawLine(pipe.translated(-aside));
}

void paintValve(QPainter& painter, const BranchPlace& place, const BranchPicture& picture,
                const SchematicStyle& style) {
    painter.save();
    painter.translate(place.valve);
    if (place.direction == Direction::Down) {
        painter.rotate(90);
    }
    QPainterPath bow;
    bow.moveTo(-10, -7);
    bow.lineTo(10, 7);
    bow.lineTo(10, -7);
    bow.lineTo(-10, 7);
    bow.closeSubpath();
    painter.setPen(QPen(style.tokens.ink, 1.4));
    painter.setBrush(style.tokens.paper);
    painter.drawPath(bow);
    // The wedge fills the valve from its waist outward, as far as it is open.
    const double reach = 10 * picture.openFraction;
    QPainterPath wedge;
    wedge.moveTo(0, 0);
    wedge.lineTo(reach, 7 * picture.openFraction);
    wedge.lineTo(reach, -7 * picture.openFraction);
    wedge.closeSubpath();
    wedge.moveTo(0, 0);
    wedge.lineTo(-reach, 7 * picture.openFraction);
    wedge.lineTo(-reach, -7 * picture.openFraction);
    wedge.closeSubpath();
    painter.fillPath(wedge, style.tokens.ink);
    painter.restore();
}

void paintLabel(QPainter& painter, const BranchPlace& place, const BranchPicture& picture,
                const SchematicStyle& style) {
    const QRectF box = place.label;
    const QRectF shape(box.left(), box.top() + 1, 14, 14);
    theme::paintState(painter, shape, picture.state, picture.isOver, style.tokens);
    QFont font = style.family.isEmpty() ? painter.font() : QFont(style.family);
    font.setPixelSize(12);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setBold(picture.isIndexTerminal);
    painter.setFont(font);
    painter.setPen(style.tokens.ink);
    const QString tag = picture.isIndexTerminal ? picture.tag + QStringLiteral(" *") : picture.tag;
    const QString setting = picture.setting.isEmpty()
                                ? QString()
                                : QCoreApplication::translate("SchematicView", "at %1").arg(picture.setting);
    const bool isStacked = place.direction == Direction::Down;
    const QString first = isStacked ? tag : tag + QStringLiteral("  ") + picture.share;
    const QString second =
        !isStacked || picture.share.isEmpty() ? setting : picture.share + QStringLiteral("  ") + setting;
    const QRectF line(shape.right() + 4, box.top(), box.right() - shape.right() - 4, 16);
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, first);
    // A branch that goes right has all in one line above its pipe.
    const QPointF beside =
        isStacked ? QPointF(0, 15) : QPointF(painter.fontMetrics().horizontalAdvance(first) + 8, 0);
    font.setBold(false);
    font.setPixelSize(11);
    painter.setFont(font);
    painter.setPen(style.tokens.soft);
    painter.drawText(line.translated(beside), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, second);
}

void paintBranch(QPainter& painter, const BranchPlace& place, const BranchPicture& picture,
                 const SchematicStyle& style) {
    if (picture.hasValve) {
        paintValve(painter, place, picture, style);
    }
    if (picture.isTerminal) {
        // The unit that the circuit serves, where it turns back into the return.
        painter.setPen(QPen(style.tokens.ink, 1.4));
        painter.setBrush(style.tokens.paper);
        painter.drawRect(QRectF(place.pipe.p2() - QPointF(4, 4), QSizeF(8, 8)));
    }
    if (style.hasTexts) {
        paintLabel(painter, place, picture, style);
    } else {
        theme::paintState(painter, QRectF(place.label.topLeft(), QSizeF(18, 18)), picture.state,
                          picture.isOver, style.tokens);
    }
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

void paintSchematic(QPainter& painter, const SchematicDrawing& drawing, const QRectF& exposed,
                    const SchematicStyle& style) {
    if (drawing.pictures.empty()) {
        return;
    }
    // A diagram is not mirrored: what is written on it runs as its own letters do.
    painter.setLayoutDirection(Qt::LayoutDirectionAuto);
    paintPipe(painter, drawing.layout.mainPipe, false, style);
    for (std::size_t i = 0; i < drawing.pictures.size(); ++i) {
        paintPipe(painter, drawing.layout.places[i].pipe, false, style);
    }
    // The index circuit from the pump outward: each pipe only as far as the next take-off on the path.
    QPointF from = drawing.layout.pump;
    for (std::size_t i = 0; i < drawing.pictures.size(); ++i) {
        const std::size_t branch = drawing.fromPumpOut[i];
        if (drawing.pictures[branch].isOnIndexPath) {
            paintPipe(painter, QLineF(from, drawing.layout.places[branch].takeOff), true, style);
            from = drawing.layout.places[branch].takeOff;
            if (drawing.pictures[branch].isTerminal) {
                paintPipe(painter, drawing.layout.places[branch].pipe, true, style);
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
    painter.setPen(QPen(style.tokens.ink, 2));
    painter.setBrush(style.tokens.paper);
    painter.drawEllipse(drawing.layout.pump, 14, 14);
    QPainterPath arrow;
    arrow.moveTo(drawing.layout.pump + QPointF(-6, -9));
    arrow.lineTo(drawing.layout.pump + QPointF(13, 0));
    arrow.lineTo(drawing.layout.pump + QPointF(-6, 9));
    painter.drawPath(arrow);
}

}  // namespace ww::ui::schematic
