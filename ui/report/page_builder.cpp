// The pages of a builder: where they begin and end, their headings, head bars and footers.
#include "ui/report/page_builder.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <algorithm>
#include <utility>

#include "ui/report/builder_shared.h"
#include "ui/report/page_size.h"
#include "ui/theme/mark_shape.h"

namespace ww::ui::report {
namespace {

constexpr double kMargin = 15.0 * kDotsPerMillimetre;
constexpr double kFooter = 9.0 * kDotsPerMillimetre;
constexpr double kHeading = 13.0;
constexpr double kHeadBar = 22.0;
constexpr double kHeadBarHeight = 32.0;  ///< points, as the following
constexpr double kBelowHeadBar = 10.0;
constexpr double kAboveHeading = 11.0;
constexpr double kBelowHeading = 7.0;
constexpr double kBesideNumber = 7.0;  ///< the two sides of a section's number, in points
/// What stands below a heading at the foot of a page at least, in points: some lines of text.
constexpr double kLeastBelowHeading = 36.0;

double headingHeight() {
    return lineHeight(paperFont(kHeading, true)) * 1.05 + points(kBelowHeading);
}

}  // namespace

PageBuilder::PageBuilder(bool isLetter, bool isLandscape, Watch watch)
    : m_isLetter(isLetter), m_shared(std::make_shared<Shared>()), m_tokens(theme::printTokens()) {
    m_shared->watch = std::move(watch);
    newPage(isLandscape);
}

bool PageBuilder::goesOn() {
    if (!m_isTrial) {
        m_shared->pages = m_pages.size();
    }
    if (!m_shared->isGivenUp && m_shared->watch) {
        m_shared->isGivenUp = !m_shared->watch(m_shared->pages);
    }
    return !m_shared->isGivenUp;
}

double PageBuilder::advance(const QString& text, const QFont& font) const {
    return m_shared->texts.advance(text, font);
}

QStringList PageBuilder::wrapped(const QString& text, const QFont& font, double width) const {
    return m_shared->texts.wrapped(text, font, width);
}

double PageBuilder::width() const {
    return pageSize(m_isLetter, m_pages.back().isLandscape).width() - 2 * kMargin;
}

double PageBuilder::left() const {
    return kMargin;
}

double PageBuilder::top() const {
    return kMargin + (m_headBar.isEmpty() ? 0 : points(kHeadBarHeight + kBelowHeadBar));
}

double PageBuilder::bottom() const {
    return pageSize(m_isLetter, m_pages.back().isLandscape).height() - kMargin - kFooter;
}

void PageBuilder::newPage(bool isLandscape) {
    m_pages.push_back(Page{isLandscape, {}, {}});
    if (m_section > 0) {
        m_pages.back().sections.push_back(m_section);
    }
    addHeadBar();
    m_y = top();
}

void PageBuilder::headBar(const QString& word) {
    m_headBar = word;
    addHeadBar();
    m_y = top();
}

void PageBuilder::addHeadBar() {
    if (m_headBar.isEmpty()) {
        return;
    }
    const QFont font = paperFont(kHeadBar, true);
    const QFontMetricsF metrics(font);
    const QRectF bar(left(), kMargin, width(), points(kHeadBarHeight));
    const theme::Tokens tokens = m_tokens;
    add([=](QPainter& painter) { painter.fillRect(bar, tokens.ink); });
    addText(QPointF(bar.center().x() - metrics.horizontalAdvance(m_headBar) / 2,
                    bar.center().y() + metrics.capHeight() / 2),
            m_headBar, font, m_tokens.paper);
}

void PageBuilder::ensure(double height) {
    if (!m_heading) {
        if (m_y + height > bottom() && m_y > top()) {
            newPage(m_pages.back().isLandscape);
        }
        return;
    }
    const Heading heading = *std::exchange(m_heading, std::nullopt);
    m_section = heading.number;
    const double wanted =
        points(kAboveHeading) + headingHeight() + std::max(height, points(kLeastBelowHeading));
    const bool isFresh = m_y <= top();
    if (!isFresh && m_y + wanted > bottom()) {
        newPage(m_pages.back().isLandscape);
    } else {
        std::vector<int>& sections = m_pages.back().sections;
        if (sections.empty() || sections.back() != heading.number) {
            sections.push_back(heading.number);
        }
        gap(isFresh ? 0 : kAboveHeading);
    }
    drawHeading(heading);
}

void PageBuilder::gap(double size) {
    m_y += points(size);
}

void PageBuilder::add(Stroke stroke) {
    if (!m_isTrial) {
        m_pages.back().strokes.push_back(std::move(stroke));
    }
}

void PageBuilder::addText(QPointF baseline, const QString& text, const QFont& font, const QColor& color) {
    if (text.isEmpty() || m_isTrial) {
        return;
    }
    add([=](QPainter& painter) {
        painter.setFont(font);
        painter.setPen(color);
        painter.drawText(baseline, text);
    });
}

void PageBuilder::addLine(QPointF from, QPointF to, double size, const QColor& color) {
    add([=](QPainter& painter) {
        QPen pen(color, points(size));
        pen.setCapStyle(Qt::FlatCap);
        painter.setPen(pen);
        painter.drawLine(from, to);
    });
}

void PageBuilder::addMark(const QRectF& box, ww::report::Mark mark) {
    const theme::Tokens tokens = m_tokens;
    add([=](QPainter& painter) { theme::paintMark(painter, box, mark, tokens); });
}

double PageBuilder::addLines(const QStringList& lines, double x, double y, const QFont& font,
                             const QColor& color) {
    const QFontMetricsF metrics(font);
    double used = 0;
    for (const QString& line : lines) {
        addText(QPointF(x, y + used + metrics.ascent()), line, font, color);
        used += lineHeight(font);
    }
    return used;
}

void PageBuilder::beginSection(int number, const QString& title, bool isLandscape) {
    if (m_heading) {
        ensure(0);
    }
    m_keepsDirection = false;
    if (m_pages.back().isLandscape != isLandscape) {
        m_section = number;
        if (m_y <= top()) {
            m_pages.pop_back();
        }
        newPage(isLandscape);
    }
    m_heading = Heading{number, title};
}

PageBuilder PageBuilder::trial() const {
    PageBuilder other(m_isLetter, m_pages.back().isLandscape);
    other.m_isTrial = true;
    other.m_shared = m_shared;
    other.m_headBar = m_headBar;
    other.m_y = m_y;
    other.m_section = m_section;
    other.m_heading = m_heading;
    return other;
}

void PageBuilder::drawHeading(const Heading& heading) {
    const QFont font = paperFont(kHeading, true);
    const QString numberText = QString::number(heading.number);
    const QFontMetricsF metrics(font);
    const double height = lineHeight(font) * 1.05;
    // A square for one digit, wider for two.
    const double wide = std::max(height, metrics.horizontalAdvance(numberText) + points(kBesideNumber));
    const theme::Tokens tokens = m_tokens;
    const QRectF box(left(), m_y, wide, height);
    add([=](QPainter& painter) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(tokens.ink);
        painter.drawRect(box);
    });
    const double baseline = m_y + (height + metrics.capHeight()) / 2;
    addText(QPointF(left() + (wide - metrics.horizontalAdvance(numberText)) / 2, baseline), numberText, font,
            m_tokens.paper);
    addText(QPointF(left() + wide + points(7), baseline), heading.title, font, m_tokens.ink);
    addLine(QPointF(left() + wide, m_y + height), QPointF(left() + width(), m_y + height), 1.2, m_tokens.ink);
    m_y += height + points(kBelowHeading);
}

std::vector<Page> PageBuilder::finish(const QString& text) {
    ensure(0);
    const QFont font = paperFont(7.5);
    const QFontMetricsF metrics(font);
    const theme::Tokens tokens = m_tokens;
    for (std::size_t i = 0; i < m_pages.size(); ++i) {
        const QSizeF size = pageSize(m_isLetter, m_pages[i].isLandscape);
        const double y = size.height() - kMargin - kFooter + points(12);
        const double right = size.width() - kMargin;
        const QString number =
            QCoreApplication::translate("Report", "page %1 of %2").arg(i + 1).arg(m_pages.size());
        m_pages[i].strokes.push_back([=](QPainter& painter) {
            painter.setPen(QPen(tokens.rule, points(0.7)));
            painter.drawLine(QPointF(kMargin, y), QPointF(right, y));
            painter.setFont(font);
            painter.setPen(tokens.soft);
            const double baseline = y + points(3) + metrics.ascent();
            painter.drawText(QPointF(kMargin, baseline), text);
            painter.drawText(QPointF(right - metrics.horizontalAdvance(number), baseline), number);
        });
    }
    return std::move(m_pages);
}

}  // namespace ww::ui::report
