// The blocks a builder of pages sets one below the other: title, verdict, facts, sentences, figures.
#include <QFontMetricsF>
#include <algorithm>
#include <utility>

#include "ui/report/page_builder.h"
#include "ui/report/page_size.h"

namespace ww::ui::report {
namespace {

/// The labels of facts: as wide as this at least, and as their longest word, up to the most.
constexpr double kLabelWidth = 27.0 * kDotsPerMillimetre;
constexpr double kMostLabelWidth = 55.0 * kDotsPerMillimetre;
constexpr double kBehindLabel = 8.0;  ///< points
constexpr double kBody = 9.0;
constexpr double kFigureTexts = 3.0;  ///< lines kept with a figure

}  // namespace

void PageBuilder::titleBlock(const QString& kind, const QString& job, const std::vector<QString>& lines,
                             const QString& stamp) {
    const QFont large = paperFont(22, true);
    const QFont medium = paperFont(13, true);
    const QFont small = paperFont(kBody);
    const QFontMetricsF metrics(large);
    if (!stamp.isEmpty()) {
        const QFont stampFont = paperFont(10, true);
        const QFontMetricsF stampMetrics(stampFont);
        const double boxWidth = stampMetrics.horizontalAdvance(stamp) + points(14);
        const QRectF box(left() + width() - boxWidth, m_y + points(4), boxWidth,
                         stampMetrics.height() + points(8));
        // A title that is too long for both stands below the stamp.
        if (metrics.horizontalAdvance(kind) + points(12) > width() - boxWidth) {
            m_y += box.height() + points(8);
        }
        const theme::Tokens tokens = m_tokens;
        add([=](QPainter& painter) {
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(tokens.ink, points(1.6)));
            painter.drawRect(box);
        });
        addText(QPointF(box.left() + points(7), box.top() + points(4) + stampMetrics.ascent()), stamp,
                stampFont, m_tokens.ink);
    }
    m_y += addLines(wrapped(kind, large, width()), left(), m_y, large, m_tokens.ink) + points(2);
    m_y += addLines(wrapped(job, medium, width()), left(), m_y, medium, m_tokens.ink) + points(2);
    for (const QString& line : lines) {
        m_y += addLines(wrapped(line, small, width()), left(), m_y, small, m_tokens.soft);
    }
    m_y += points(5);
    addLine(QPointF(left(), m_y), QPointF(left() + width(), m_y), 2.4, m_tokens.ink);
    m_y += points(12);
}

void PageBuilder::verdictBox(const ww::report::Fact& fact) {
    const QFont font = paperFont(16, true);
    const QFontMetricsF metrics(font);
    const double mark = points(17);
    const double inset = points(9);
    const QStringList lines = wrapped(words(fact.value), font, width() - mark - 4 * inset);
    const double height = lineHeight(font) * static_cast<double>(lines.size()) + 2 * inset;
    ensure(height);
    addFrame(height);
    addMark(QRectF(left() + inset, m_y + (height - mark) / 2, mark, mark), fact.mark);
    addLines(lines, left() + mark + 2 * inset,
             m_y + (height - lineHeight(font) * static_cast<double>(lines.size())) / 2, font, m_tokens.ink);
    m_y += height + points(8);
}

void PageBuilder::notice(const QString& text) {
    const QFont font = paperFont(11, true);
    const double inset = points(8);
    const QStringList lines = wrapped(text, font, width() - 2 * inset);
    const double height = lineHeight(font) * static_cast<double>(lines.size()) + 2 * inset;
    ensure(height);
    addFrame(height);
    addLines(lines, left() + inset, m_y + inset, font, m_tokens.ink);
    m_y += height + points(8);
}

void PageBuilder::addFrame(double height) {
    const QRectF box(left(), m_y, width(), height);
    const theme::Tokens tokens = m_tokens;
    add([=](QPainter& painter) {
        painter.setBrush(tokens.panel);
        painter.setPen(QPen(tokens.ink, points(1.6)));
        painter.drawRect(box);
    });
}

void PageBuilder::beginFacts(const std::vector<ww::report::Fact>& facts) {
    const QFontMetricsF metrics(paperFont(kBody, true));
    m_labelWidth = kLabelWidth;
    for (const ww::report::Fact& fact : facts) {
        for (const QString& word : unbrokenParts(words(fact.label))) {
            m_labelWidth = std::max(m_labelWidth, metrics.horizontalAdvance(word) + points(kBehindLabel));
        }
    }
    m_labelWidth = std::min(m_labelWidth, kMostLabelWidth);
}

void PageBuilder::fact(const ww::report::Fact& fact) {
    const QFont labelFont = paperFont(kBody, true);
    const QFont font = paperFont(kBody);
    const double mark = points(8.5);
    const double markRoom = points(14);
    const double labelWidth = std::max(m_labelWidth, kLabelWidth);
    const QStringList lines = wrapped(words(fact.value), font, width() - labelWidth - markRoom);
    const QStringList label = wrapped(words(fact.label), labelFont, labelWidth);
    const double height = std::max(lineHeight(font) * static_cast<double>(lines.size()),
                                   lineHeight(labelFont) * static_cast<double>(label.size()));
    ensure(height);
    addLines(label, left(), m_y, labelFont, m_tokens.ink);
    if (fact.mark != ww::report::Mark::None) {
        addMark(QRectF(left() + labelWidth, m_y + (lineHeight(font) - mark) / 2, mark, mark), fact.mark);
    }
    addLines(lines, left() + labelWidth + markRoom, m_y, font, m_tokens.ink);
    m_y += height + points(3.2);
}

void PageBuilder::paragraph(const QString& text, bool isSoft) {
    const QFont font = paperFont(isSoft ? 8 : kBody);
    const QStringList lines = wrapped(text, font, width());
    ensure(lineHeight(font) * static_cast<double>(lines.size()));
    m_y += addLines(lines, left(), m_y, font, isSoft ? m_tokens.soft : m_tokens.ink) + points(3);
}

void PageBuilder::bullet(const QString& text) {
    const QFont font = paperFont(kBody);
    const double indent = points(12);
    const QStringList lines = wrapped(text, font, width() - indent);
    ensure(lineHeight(font) * static_cast<double>(lines.size()));
    const double dash = m_y + lineHeight(font) / 2;
    addLine(QPointF(left(), dash), QPointF(left() + points(6), dash), 1.2, m_tokens.ink);
    m_y += addLines(lines, left() + indent, m_y, font, m_tokens.ink) + points(3);
}

void PageBuilder::caution(const QString& text) {
    const QFont font = paperFont(8.5);
    const double indent = points(9);
    const QStringList lines = wrapped(text, font, width() - indent);
    const double height = lineHeight(font) * static_cast<double>(lines.size());
    ensure(height + points(6));
    gap(4);
    addLine(QPointF(left() + points(1.5), m_y), QPointF(left() + points(1.5), m_y + height), 3, m_tokens.ink);
    m_y += addLines(lines, left() + indent, m_y, font, m_tokens.ink) + points(3);
}

void PageBuilder::figure(const QString& title, const QString& sentence, double heightMm,
                         std::function<void(QPainter&, const QRectF&)> paint) {
    const QFont titleFont = paperFont(kBody, true);
    const double height = heightMm * kDotsPerMillimetre;
    ensure(height + kFigureTexts * lineHeight(titleFont) + points(12));
    gap(4);
    m_y += addLines({title}, left(), m_y, titleFont, m_tokens.ink) + points(3);
    const QRectF box(left(), m_y, width(), height);
    add([box, paint = std::move(paint)](QPainter& painter) {
        painter.save();
        paint(painter, box);
        painter.restore();
    });
    m_y += height + points(3);
    paragraph(sentence);
    gap(4);
}

QSizeF PageBuilder::figureRoom() const {
    const double texts = kFigureTexts * lineHeight(paperFont(kBody, true)) + points(12);
    return {width(), bottom() - top() - texts};
}

double PageBuilder::figureHeightLeft() const {
    const double texts = kFigureTexts * lineHeight(paperFont(kBody, true)) + points(12);
    return bottom() - m_y - texts - 1;
}

std::vector<QRectF> PageBuilder::spaces(std::size_t count, double heightMm) {
    const double height = heightMm * kDotsPerMillimetre;
    const double between = points(12);
    ensure(height);
    // Never wider than half a page, so that one block looks like two.
    const double each = (width() - between) / 2;
    std::vector<QRectF> places;
    for (std::size_t i = 0; i < count; ++i) {
        places.emplace_back(left() + static_cast<double>(i) * (each + between), m_y, each, height);
    }
    m_y += height + points(6);
    return places;
}

}  // namespace ww::ui::report
