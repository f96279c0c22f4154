#include "ui/report/signature_drawing.h"

#include <QPainterPath>
#include <QTransform>
#include <algorithm>
#include <cmath>

#include "ui/report/page_builder.h"

namespace ww::ui::report {
namespace {

/// Thousandths of a point.
constexpr double kPoint = 1000.0;
constexpr double kBlockMargin = 6 * kPoint;
constexpr double kFrame = 0.7 * kPoint;
constexpr int kInk = 0;
constexpr int kSoft = 90;

seal::PaperPoint pointOf(const QPainterPath::Element& element) {
    return {static_cast<int>(std::lround(element.x)), static_cast<int>(std::lround(element.y))};
}

seal::FilledShape shapeOf(const QPainterPath& path, int gray) {
    using Kind = seal::OutlineStep::Kind;
    seal::FilledShape shape;
    shape.gray = gray;
    for (int i = 0; i < path.elementCount(); ++i) {
        const QPainterPath::Element element = path.elementAt(i);
        switch (element.type) {
            case QPainterPath::MoveToElement:
                shape.steps.push_back({Kind::Move, {pointOf(element)}});
                break;
            case QPainterPath::LineToElement:
                shape.steps.push_back({Kind::Line, {pointOf(element)}});
                break;
            case QPainterPath::CurveToElement:
                shape.steps.push_back(
                    {Kind::Curve,
                     {pointOf(element), pointOf(path.elementAt(i + 1)), pointOf(path.elementAt(i + 2))}});
                i += 2;
                break;
            case QPainterPath::CurveToDataElement:
                break;
        }
    }
    return shape;
}

/// One line of text with its baseline at (x, y), at most so wide.
seal::FilledShape lineOf(const QString& text, double points, bool isBold, double x, double y, double width,
                         int gray) {
    // A large font: what is rounded to its pixels is small then.
    constexpr int kPixels = 1000;
    QFont font = paperFont(1, isBold);
    font.setPixelSize(kPixels);
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0);
    QPainterPath path;
    path.addText(0, 0, font, text);
    const double scale = points * kPoint / kPixels;
    const double wide = path.boundingRect().right() * scale;
    const double narrower = wide > width ? width / wide : 1.0;
    return shapeOf(QTransform(scale * narrower, 0, 0, -scale, x, y).map(path), gray);
}

seal::FilledShape frameOf(const seal::PaperSize& size, int gray) {
    QPainterPath frame;
    frame.addRect(0, 0, size.width, size.height);
    // Wound the other way, so that the inside stays empty.
    QPainterPath inside;
    inside.addRect(kFrame, kFrame, size.width - 2 * kFrame, size.height - 2 * kFrame);
    frame.addPath(inside.toReversed());
    return shapeOf(frame, gray);
}

}  // namespace

seal::BlockDrawing drawBlock(const seal::BlockText& text, const seal::PaperSize& size) {
    seal::BlockDrawing drawing;
    const int gray = text.isWaiting ? kSoft : kInk;
    const double width = size.width - 2 * kBlockMargin;
    double y = size.height - kBlockMargin - 9 * kPoint;
    drawing.shapes.push_back(frameOf(size, gray));
    drawing.shapes.push_back(lineOf(words(text.heading), 9.5, true, kBlockMargin, y, width, gray));
    y -= 6 * kPoint;
    for (std::size_t i = 0; i < text.lines.size(); ++i) {
        const bool isName = !text.isWaiting && i == 0;
        const double points = isName ? 11 : text.isWaiting ? 9 : 7.5;
        y -= (points + 4) * kPoint;
        drawing.shapes.push_back(lineOf(words(text.lines[i]), points, isName, kBlockMargin, y, width, gray));
    }
    return drawing;
}

}  // namespace ww::ui::report
