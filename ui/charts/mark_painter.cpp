#include "ui/charts/mark_painter.h"

#include <QFontMetricsF>
#include <QLineF>
#include <algorithm>
#include <cmath>
#include <iterator>
#include <optional>

namespace ww::ui::charts {
namespace {

constexpr double kDisc = 8.5;
constexpr double kCross = 6.5;
/// How far a bracket stands behind the fall that it holds, and how long its ends are.
constexpr double kBracket = 7;

/// Whether a mark is a length along y, and no point.
bool isLength(const PointMark& mark) {
    return mark.kind == MarkKind::Bracket || mark.kind == MarkKind::Gap;
}

/// Such a length on the plot.
QLineF lengthOf(const PointMark& mark, const QRectF& plot, const ChartFigure& figure) {
    return {place(mark.at + QPointF(0, mark.errorY), plot, figure),
            place(mark.at - QPointF(0, mark.errorY), plot, figure)};
}

/// Where the numbered discs stand: on their points, or beside them where they would cover one another.
std::vector<QPointF> discPlaces(const QRectF& plot, const ChartFigure& figure, const ChartStyle& style) {
    const double clear = (2 * kDisc + 2) * style.pixel;
    std::vector<QPointF> places;
    // A disc on the design cross would hide it.
    std::vector<QPointF> crosses;
    for (const PointMark& mark : figure.marks) {
        if (mark.kind == MarkKind::Design) {
            crosses.push_back(place(mark.at, plot, figure));
        }
    }
    const auto isFree = [&](QPointF at) {
        const auto isNear = [&at](const std::vector<QPointF>& others, double distance) {
            return std::any_of(others.begin(), others.end(),
                               [&](const QPointF& other) { return QLineF(at, other).length() < distance; });
        };
        return !isNear(places, clear) && !isNear(crosses, (kDisc + kCross) * style.pixel);
    };
    for (const PointMark& mark : figure.marks) {
        const QPointF point = place(mark.at, plot, figure);
        QPointF best = point;
        if (mark.kind == MarkKind::Duty && !isFree(point)) {
            // Up and to the sides first: below lie the curves at lower speed.
            for (const double distance : {1.4, 2.2, 3.0}) {
                for (const double degrees : {90.0, 45.0, 135.0, 20.0, 160.0, -45.0, -135.0}) {
                    const QPointF moved = point + QLineF::fromPolar(distance * clear, degrees).p2();
                    if (best == point && plot.contains(moved) && isFree(moved)) {
                        best = moved;
                    }
                }
            }
        }
        places.push_back(best);
    }
    return places;
}

bool crosses(const QLineF& line, const QRectF& box) {
    if (box.contains(line.p1()) || box.contains(line.p2())) {
        return true;
    }
    const QPolygonF corners{box.topLeft(), box.topRight(), box.bottomRight(), box.bottomLeft(),
                            box.topLeft()};
    for (qsizetype i = 1; i < corners.size(); ++i) {
        if (line.intersects(QLineF(corners[i - 1], corners[i]), nullptr) == QLineF::BoundedIntersection) {
            return true;
        }
    }
    return false;
}

/// What names must not cover.
struct Obstacles {
    std::vector<QRectF> boxes;
    std::vector<QPolygonF> lines;
    std::vector<QLineF> grid;

    bool isFree(const QRectF& box) const {
        const auto overlaps = [&box](const QRectF& other) { return other.intersects(box); };
        if (std::any_of(boxes.begin(), boxes.end(), overlaps)) {
            return false;
        }
        for (const QPolygonF& line : lines) {
            for (qsizetype i = 1; i < line.size(); ++i) {
                if (crosses(QLineF(line[i - 1], line[i]), box)) {
                    return false;
                }
            }
        }
        return true;
    }
    /// The first free box of these; it is taken from then on. Nothing where none is free.
    std::optional<QRectF> takeFree(const std::vector<QRectF>& candidates) {
        const auto found = std::find_if(candidates.begin(), candidates.end(),
                                        [this](const QRectF& box) { return isFree(box); });
        if (found == candidates.end()) {
            return std::nullopt;
        }
        boxes.push_back(*found);
        return *found;
    }
    /// The first free box of these, else the first that lies on lines only, else the first of all: a name far
    /// from its point would seem to name another.
    QRectF takeNearest(const std::vector<QRectF>& candidates) {
        if (const auto free = takeFree(candidates)) {
            return *free;
        }
        const auto found = std::find_if(candidates.begin(), candidates.end(), [this](const QRectF& box) {
            return std::none_of(boxes.begin(), boxes.end(),
                                [&box](const QRectF& other) { return other.intersects(box); });
        });
        const QRectF taken = found != candidates.end() ? *found : candidates.front();
        boxes.push_back(taken);
        return taken;
    }
    /// The first free box of these that no line of the grid strikes out, else as takeNearest().
    QRectF take(const std::vector<QRectF>& candidates) {
        std::vector<QRectF> clear;
        std::copy_if(candidates.begin(), candidates.end(), std::back_inserter(clear),
                     [this](const QRectF& box) {
                         return std::none_of(grid.begin(), grid.end(),
                                             [&box](const QLineF& line) { return crosses(line, box); });
                     });
        if (const auto free = takeFree(clear)) {
            return *free;
        }
        return takeNearest(candidates);
    }
};

/// The numbers at the axes and the title of the level one, as paintScales() writes them.
std::vector<QRectF> numberBoxes(const QRectF& plot, const ChartFigure& figure, const ChartStyle& style) {
    const QFontMetricsF metrics(style.font);
    const double gap = 5 * style.pixel;
    std::vector<QRectF> boxes;
    for (const double tick : figure.y.ticks()) {
        const QPointF at = place({figure.x.least, tick}, plot, figure);
        const double width = metrics.horizontalAdvance(QString::number(tick, 'f', figure.y.decimals));
        boxes.emplace_back(at.x() - gap - width, at.y() - metrics.capHeight() / 2, width,
                           metrics.capHeight());
    }
    for (const double tick : figure.x.ticks()) {
        const QPointF at = place({tick, figure.y.least}, plot, figure);
        const double width = metrics.horizontalAdvance(QString::number(tick, 'f', figure.x.decimals));
        boxes.emplace_back(at.x() - width / 2, at.y(), width, gap + metrics.ascent());
    }
    const double title = metrics.horizontalAdvance(figure.x.title);
    const double below = gap + (figure.rowLabel.isEmpty() ? 1 : 2) * metrics.height();
    boxes.emplace_back(plot.right() - title, plot.bottom() + below, title, metrics.height());
    return boxes;
}

Obstacles obstaclesOf(const QRectF& plot, const ChartFigure& figure, const ChartStyle& style) {
    Obstacles obstacles;
    // The title of the upright axis, as paintScales() writes it.
    const QFontMetricsF metrics(style.font);
    obstacles.boxes.emplace_back(
        QPointF(plot.left(), plot.top() - 5 * style.pixel - metrics.height()),
        QSizeF(metrics.horizontalAdvance(figure.y.title), metrics.height() + 2 * style.pixel));
    const std::vector<QRectF> numbers = numberBoxes(plot, figure, style);
    obstacles.boxes.insert(obstacles.boxes.end(), numbers.begin(), numbers.end());
    const double radius = (kDisc + 1) * style.pixel;
    const std::vector<QPointF> discs = discPlaces(plot, figure, style);
    for (std::size_t i = 0; i < discs.size(); ++i) {
        if (isLength(figure.marks[i])) {
            const QLineF length = lengthOf(figure.marks[i], plot, figure);
            obstacles.lines.push_back({length.p1(), length.p2()});
        } else {
            obstacles.boxes.emplace_back(discs[i] - QPointF(radius, radius), QSizeF(2 * radius, 2 * radius));
        }
    }
    for (const Line& line : figure.lines) {
        QPolygonF polygon;
        for (const QPointF& point : line.points) {
            polygon << place(point, plot, figure);
        }
        obstacles.lines.push_back(polygon);
    }
    for (const double tick : figure.y.ticks()) {
        obstacles.grid.emplace_back(place({figure.x.least, tick}, plot, figure),
                                    place({figure.x.most, tick}, plot, figure));
    }
    return obstacles;
}

void paintBars(QPainter& painter, QPointF at, QSizeF error, const ChartStyle& style) {
    painter.setPen(QPen(style.tokens.ink, 1.3 * style.pixel));
    const double cap = 3.5 * style.pixel;
    for (const double side : {-1.0, 1.0}) {
        if (error.width() > 0) {
            const QPointF end = at + QPointF(side * error.width(), 0);
            painter.drawLine(at, end);
            painter.drawLine(end - QPointF(0, cap), end + QPointF(0, cap));
        }
        if (error.height() > 0) {
            const QPointF end = at + QPointF(0, side * error.height());
            painter.drawLine(at, end);
            painter.drawLine(end - QPointF(cap, 0), end + QPointF(cap, 0));
        }
    }
}

void paintDuty(QPainter& painter, QPointF at, QPointF disc, const PointMark& mark, const ChartStyle& style) {
    const double radius = kDisc * style.pixel;
    painter.setPen(QPen(style.tokens.ink, 1.0 * style.pixel));
    if (disc != at) {
        painter.drawLine(at, disc);
        painter.setBrush(style.tokens.ink);
        painter.drawEllipse(at, 2.5 * style.pixel, 2.5 * style.pixel);
    }
    painter.setBrush(style.tokens.paper);
    painter.setPen(QPen(style.tokens.ink, 1.8 * style.pixel, mark.isAssumed ? Qt::DashLine : Qt::SolidLine));
    painter.drawEllipse(disc, radius, radius);
    QFont number = style.font;
    number.setBold(true);
    const QFontMetricsF metrics(number);
    painter.setFont(number);
    painter.drawText(disc + QPointF(-metrics.horizontalAdvance(mark.name) / 2, metrics.capHeight() / 2),
                     mark.name);
    painter.setFont(style.font);
}

void paintCross(QPainter& painter, QPointF at, const ChartStyle& style) {
    const double arm = kCross * style.pixel;
    painter.setPen(QPen(style.tokens.ink, 2.4 * style.pixel));
    painter.drawLine(at - QPointF(arm, arm), at + QPointF(arm, arm));
    painter.drawLine(at - QPointF(arm, -arm), at + QPointF(arm, -arm));
}

void paintLength(QPainter& painter, const QLineF& length, bool isBracket, const ChartStyle& style) {
    const QPointF aside((isBracket ? kBracket : 0) * style.pixel, 0);
    painter.setPen(
        QPen(isBracket ? style.tokens.ink : style.tokens.soft, (isBracket ? 1.8 : 1.0) * style.pixel));
    painter.drawLine(length.translated(aside));
    const QPointF cap = isBracket ? QPointF(0.6 * kBracket * style.pixel, 0) : QPointF(3 * style.pixel, 0);
    for (const QPointF& end : {length.p1(), length.p2()}) {
        painter.drawLine(end + aside - cap, isBracket ? end + aside : end + cap);
    }
}

/// Places for a name around a point: to the right, to the left where it may stand inside the plot, then
/// further along.
std::vector<QRectF> placesAround(QPointF at, QSizeF size, double gap, bool mayBeLeft) {
    const double middle = at.y() - size.height() / 2;
    const QPointF right(at.x() + gap, middle);
    const QPointF left(at.x() - gap - size.width(), middle);
    std::vector<QRectF> places{QRectF(right, size)};
    if (mayBeLeft) {
        places.emplace_back(left, size);
    }
    for (const double shift : {0.5, -0.5, 1.0, -1.0, 1.5, -1.5, 2.0, -2.0, 3.0, -3.0, 4.0, -4.0}) {
        places.emplace_back(right + QPointF(0, shift * size.height()), size);
    }
    if (mayBeLeft) {
        for (const double shift : {1.0, -1.0, 1.5, -1.5}) {
            places.emplace_back(left + QPointF(0, shift * size.height()), size);
        }
    }
    return places;
}

/// Places for a name near its point: beside, below, above and at the corners, then the same twice as far.
std::vector<QRectF> placesBeside(QPointF at, QSizeF size, double gap) {
    std::vector<QRectF> places;
    const double middle = at.x() - size.width() / 2;
    const double level = at.y() - size.height() / 2;
    for (const double away : {gap, 2 * gap}) {
        const double right = at.x() + away;
        const double left = at.x() - away - size.width();
        const double above = at.y() - away - size.height();
        const double below = at.y() + away;
        for (const QPointF corner :
             {QPointF(right, level), QPointF(left, level), QPointF(middle, below), QPointF(middle, above),
              QPointF(right, below), QPointF(right, above), QPointF(left, below), QPointF(left, above)}) {
            places.emplace_back(corner, size);
        }
    }
    return places;
}

}  // namespace

void paintMarks(QPainter& painter, const QRectF& plot, const ChartFigure& figure, const ChartStyle& style) {
    const std::vector<QPointF> discs = discPlaces(plot, figure, style);
    for (std::size_t i = 0; i < figure.marks.size(); ++i) {
        const PointMark& mark = figure.marks[i];
        if (isLength(mark)) {
            paintLength(painter, lengthOf(mark, plot, figure), mark.kind == MarkKind::Bracket, style);
            continue;
        }
        const QPointF at = place(mark.at, plot, figure);
        const QPointF corner = place(mark.at + QPointF(mark.errorX, mark.errorY), plot, figure);
        paintBars(painter, at, QSizeF(corner.x() - at.x(), at.y() - corner.y()), style);
        if (mark.kind == MarkKind::Duty) {
            paintDuty(painter, at, discs[i], mark, style);
        } else if (mark.kind == MarkKind::Design) {
            paintCross(painter, at, style);
        } else {
            painter.setPen(Qt::NoPen);
            painter.setBrush(style.tokens.ink);
            painter.drawEllipse(at, 3 * style.pixel, 3 * style.pixel);
        }
    }
}

void paintNames(QPainter& painter, const QRectF& plot, const ChartFigure& figure, const ChartStyle& style) {
    const QFontMetricsF metrics(style.font);
    Obstacles obstacles = obstaclesOf(plot, figure, style);
    painter.setFont(style.font);
    // With air above and below, so that names at the ends of lines do not touch.
    const double lineHeight = 1.2 * metrics.height();
    const auto placesOf = [&](const QString& name, QPointF at, double gap) {
        const QSizeF size(metrics.horizontalAdvance(name) + metrics.averageCharWidth(), lineHeight);
        return placesAround(at, size, gap, at.x() < plot.right() - 0.05 * plot.width());
    };
    const auto write = [&](const QString& name, const QRectF& box, const QColor& color) {
        painter.setPen(color);
        painter.drawText(
            QPointF(box.left(), box.top() + (box.height() - metrics.height()) / 2 + metrics.ascent()), name);
    };
    const auto put = [&](const QString& name, QPointF at, double gap, const QColor& color) {
        write(name, obstacles.take(placesOf(name, at, gap)), color);
    };
    const auto mayBeUnnamed = [](LineRole role) {
        return role == LineRole::Summary || role == LineRole::Limit;
    };
    for (const Line& line : figure.lines) {
        if (!line.name.isEmpty() && !line.points.empty() && !mayBeUnnamed(line.role)) {
            const QColor color = penOf(line.role, style).color();
            put(line.name, place(line.points.back(), plot, figure), 6 * style.pixel,
                color == style.tokens.rule ? style.tokens.soft : color);
        }
    }
    for (const PointMark& mark : figure.marks) {
        const bool isBracket = mark.kind == MarkKind::Bracket;
        if ((mark.kind == MarkKind::Design || isBracket) && !mark.name.isEmpty()) {
            const QPointF at = place(mark.at, plot, figure);
            const auto places = placesBeside(at, QSizeF(metrics.horizontalAdvance(mark.name), lineHeight),
                                             ((isBracket ? kBracket : kCross) + 5) * style.pixel);
            write(mark.name, obstacles.takeNearest(places), style.tokens.ink);
        }
    }
    // In a low chart not every name has room; which line is the largest can be seen, which branch it is not.
    for (const Line& line : figure.lines) {
        if (!mayBeUnnamed(line.role) || line.name.isEmpty() || line.points.empty()) {
            continue;
        }
        const QPointF end = place(line.points.back(), plot, figure);
        auto places = placesOf(line.name, end, 6 * style.pixel);
        // Farther away it would seem to name another line.
        std::erase_if(places, [&](const QRectF& box) {
            return std::abs(box.center().y() - end.y()) > 1.1 * lineHeight;
        });
        if (const auto box = obstacles.takeFree(places)) {
            write(line.name, *box, penOf(line.role, style).color());
        }
    }
}

}  // namespace ww::ui::charts
