// A chart as plain data in the units of the screen: lines, marks, bands, axes, its sentence and its table.
// Built by plain functions, drawn by chart_painter.h and chart_view.h.
#pragma once

#include <QPointF>
#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

namespace ww::ui::charts {

/// What a line stands for; the painter gives each role its own dash and width, so that none is told by colour
/// alone.
enum class LineRole {
    PumpCurve,    ///< solid, 2.5 px, ink
    FirstPump,    ///< solid, 1.2 px: the pump at its speed in the first round, where that was another
    Proposed,     ///< long dash
    Trimmed,      ///< dash and dot: the pump with its impeller cut
    FirstSystem,  ///< dotted
    ReturnPipe,   ///< short heavy dash, 2.5 px, ink: the way back, where PumpCurve is the way out
    LastSystem,   ///< solid, 1.5 px
    OneOfMany,    ///< thin rule line without a name
    Summary,      ///< soft, long dash, with a name at its end: what many lines come to
    Singled,      ///< ink, with a name at its end
    Limit,        ///< thin, short dash: an edge of a band
};
/// Whether each point of such a line is a dot of its own: a value of one round, not of a curve.
bool hasDots(LineRole role);

struct Line {
    LineRole role{};
    QString name;  ///< written at the line's end; may be empty
    std::vector<QPointF> points;
};

enum class MarkKind {
    Duty,
    Design,
    Dot,
    Bracket,  ///< a bracket beside a fall: from errorY above its point to errorY below
    Gap,      ///< a thin upright line over the same length: the distance between two lines
};
/// A point with what is not known about it.
struct PointMark {
    MarkKind kind{};
    QPointF at;
    double errorX = 0;  ///< half length of its bar along x; 0: no bar
    double errorY = 0;
    QString name;            ///< a number inside a disc, or a name beside a cross or a bracket
    bool isAssumed = false;  ///< drawn with a dashed ring: it was not read
};

struct Axis {
    QString title;
    double least = 0;
    double most = 1;
    double step = 1;
    int decimals = 0;
    std::vector<double> ticks() const;
};

/// A stripe between two values of y, drawn under everything else.
struct Band {
    double low = 0;
    double high = 0;
};

struct ChartFigure {
    QString name;      ///< what the chart is, for a screen reader
    QString sentence;  ///< what it says
    std::vector<Line> lines;
    std::vector<PointMark> marks;
    std::optional<Band> band;
    Axis x;
    Axis y;
    QString rowLabel;  ///< a row of words under the x axis, one a tick; empty: none
    QStringList rowCells;
    QStringList tableHeads;  ///< the same as a table
    std::vector<QStringList> tableRows;

    bool isEmpty() const { return lines.empty() && marks.empty(); }
};

/// A scale from `least` to `most` or a little beyond, in steps of 1, 2 or 5 times a power of ten, about
/// `wanted` of them. `most` must be greater than `least`.
Axis niceAxis(QString title, double least, double most, int wanted);

}  // namespace ww::ui::charts
