// Tables of a report: heads that repeat, cells that wrap, states as shape and word.
#include <QCoreApplication>
#include <QFontMetricsF>
#include <QRegularExpression>
#include <QSet>
#include <algorithm>
#include <numeric>

#include "ui/report/builder_shared.h"
#include "ui/text/words.h"
#include "ui/theme/state_shape.h"

namespace ww::ui::report {
namespace {

constexpr double kText = 8.0;
constexpr double kHead = 7.5;
constexpr double kTitle = 9.0;
/// Left and right of what stands in a cell, in points; the columns of a table stand closer before a word
/// breaks.
constexpr double kWideCells = 3.8;
constexpr double kCloseCells = 2.2;
/// A row that is written into by hand, in points: 8 mm.
constexpr double kFormRow = 22.7;
/// What the shape of a state takes before its word, in points.
constexpr double kStateRoom = 11.0;

double rowLineHeight(const QFont& font) {
    return QFontMetricsF(font).height() * 1.04;
}

/// Numbers, dates and times read as something else when they are broken. A serial number may be longer than
/// a column has room for.
bool isNumber(const QString& word) {
    constexpr qsizetype kLongestKept = 14;
    return word.size() <= kLongestKept && !word.isEmpty() && word.front().isDigit();
}

bool isDate(const QString& word) {
    static const QRegularExpression kDate(QStringLiteral("^\\d{4}-\\d\\d-\\d\\d"));
    return isNumber(word) && kDate.match(word).hasMatch();
}

/// Any word but one that no column has room for: a digest, a path.
bool isWord(const QString& word) {
    constexpr qsizetype kLongestWord = 32;
    return word.size() <= kLongestWord;
}

bool staysWhole(const QString& word, Whole whole) {
    switch (whole) {
        case Whole::Words:
            return isWord(word);
        case Whole::Numbers:
            return isNumber(word);
        case Whole::Dates:
            return isDate(word);
        case Whole::Nothing:
            break;
    }
    return false;
}

QString cellWords(const ww::report::Cell& cell) {
    return cell.state ? text::word(*cell.state, cell.isSelfActing, cell.isOver) : words(cell);
}

bool hasWords(const std::vector<ww::report::Cell>& row, std::size_t column) {
    return column < row.size() && (!row[column].text.empty() || row[column].state);
}

/// The columns in which something stands, and the first; all of a form, which is written into by hand.
std::vector<std::size_t> columnsInUse(const ww::report::Table& table) {
    std::vector<std::size_t> used;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const auto isUsed = [i](const auto& row) { return hasWords(row, i); };
        if (i == 0 || table.isForm || table.rows.empty() || isUsed(table.totals) ||
            std::any_of(table.rows.begin(), table.rows.end(), isUsed)) {
            used.push_back(i);
        }
    }
    return used;
}

/// For each of these columns the widest word of its heading, and of those words of its cells that stay whole.
WidestWords widestWords(const ww::report::Table& table, const std::vector<std::size_t>& columns,
                        TextMeasure& texts) {
    const QFont head = paperFont(kHead, true);
    const QFont text = paperFont(kText);
    WidestWords widest;
    for (const std::size_t i : columns) {
        double ofHead = 0;
        for (const QString& word : unbrokenParts(words(table.columns[i].heading))) {
            ofHead = std::max(ofHead, texts.advance(word, head));
        }
        std::array<double, kWholes.size()> most{};
        most.fill(ofHead);
        QSet<QString> seen;
        for (const auto& row : table.rows) {
            if (i >= row.size()) {
                continue;
            }
            const QString cell = cellWords(row[i]);
            if (seen.contains(cell)) {
                continue;
            }
            seen.insert(cell);
            const double mark = row[i].state ? points(kStateRoom) : 0.0;
            for (const QString& word : unbrokenParts(cell)) {
                const double width = mark + texts.advance(word, text);
                for (std::size_t at = 0; at < kWholes.size(); ++at) {
                    most[at] = staysWhole(word, kWholes[at]) ? std::max(most[at], width) : most[at];
                }
            }
        }
        for (std::size_t at = 0; at < kWholes.size(); ++at) {
            widest[at].push_back(most[at]);
        }
    }
    return widest;
}

/// The least widths of columns: their widest words, and what stands beside them.
std::vector<double> withPadding(std::vector<double> widest, double padding) {
    for (double& width : widest) {
        width += padding + points(1);
    }
    return widest;
}

QString notesOf(const ww::report::Table& table) {
    QStringList notes;
    for (const ww::report::Statement& note : table.notes) {
        notes << words(note);
    }
    return notes.join(QStringLiteral("     "));
}

}  // namespace

const MeasuredTable& PageBuilder::Shared::measured(const ww::report::Table& table) {
    const auto [found, isNew] = tables.try_emplace(&table);
    if (isNew) {
        found->second.columns = columnsInUse(table);
        found->second.widest = widestWords(table, found->second.columns, texts);
    }
    return found->second;
}

/// The width of a table in which no word breaks.
double PageBuilder::leastWidth(const ww::report::Table& table, double padding) const {
    const auto least = withPadding(m_shared->measured(table).widest.front(), 2 * padding);
    return std::accumulate(least.begin(), least.end(), 0.0);
}

/// The widths of the columns: their shares, but none so narrow that a word of its heading breaks. All words
/// of the cells stay whole too where there is room for them, else numbers and dates, else dates alone.
std::vector<double> PageBuilder::columnWidths(const ww::report::Table& table, double padding) const {
    const double whole = width();
    std::vector<double> least;
    const MeasuredTable& measured = m_shared->measured(table);
    for (const std::vector<double>& widest : measured.widest) {
        least = withPadding(widest, 2 * padding);
        if (std::accumulate(least.begin(), least.end(), 0.0) <= whole) {
            break;
        }
    }
    double sum = 0;
    for (const std::size_t column : measured.columns) {
        sum += table.columns[column].widthShare;
    }
    // What the narrow ones need more is taken from the others in proportion to what they can spare.
    std::vector<double> widths;
    double missing = 0;
    double spare = 0;
    for (std::size_t i = 0; i < least.size(); ++i) {
        widths.push_back(whole * table.columns[measured.columns[i]].widthShare / sum);
        missing += std::max(0.0, least[i] - widths[i]);
        spare += std::max(0.0, widths[i] - least[i]);
    }
    const double part = spare > 0 ? std::min(1.0, missing / spare) : 0;
    for (std::size_t i = 0; i < least.size(); ++i) {
        widths[i] = widths[i] < least[i] ? least[i] : widths[i] - part * (widths[i] - least[i]);
    }
    return widths;
}

struct PageBuilder::TableLayout {
    const ww::report::Table& table;
    const std::vector<std::size_t>& columns;  ///< of the table, that are drawn
    std::vector<double> lefts;
    std::vector<double> widths;  ///< without the padding
    QFont font = paperFont(kText);
    QFont bold = paperFont(kText, true);
    QFont head = paperFont(kHead, true);
    QFont unit = paperFont(kHead);
    double padding = points(kWideCells);
};

struct PageBuilder::LaidRow {
    const std::vector<ww::report::Cell>& cells;
    std::vector<QStringList> lines;
    bool isBold = false;
    double height = 0;
};

PageBuilder::LaidRow PageBuilder::laidRow(const TableLayout& layout,
                                          const std::vector<ww::report::Cell>& cells, bool isBold) const {
    LaidRow row{cells, {}, isBold, 0};
    const QFont& font = isBold ? layout.bold : layout.font;
    std::size_t most = 1;
    for (std::size_t i = 0; i < layout.lefts.size() && layout.columns[i] < cells.size(); ++i) {
        const ww::report::Cell& cell = cells[layout.columns[i]];
        const double room = layout.widths[i] - (cell.state ? points(kStateRoom) : 0);
        row.lines.push_back(wrapped(cellWords(cell), font, room));
        most = std::max(most, static_cast<std::size_t>(row.lines.back().size()));
    }
    row.height = rowLineHeight(font) * static_cast<double>(most) + 2 * points(1.45);
    if (layout.table.isForm) {
        row.height = std::max(row.height, points(kFormRow));
    }
    return row;
}

void PageBuilder::addCell(const TableLayout& layout, std::size_t column, const LaidRow& row) {
    const ww::report::Cell& cell = row.cells[layout.columns[column]];
    QFont font = row.isBold ? layout.bold : layout.font;
    font.setStrikeOut(cell.isStruck);
    const QFontMetricsF metrics(font);
    const ww::report::Alignment alignment = layout.table.columns[layout.columns[column]].alignment;
    double y = m_y + points(1.45);
    double x = layout.lefts[column] + layout.padding;
    if (cell.state) {
        const double side = points(8);
        const QRectF box(x, y + (rowLineHeight(font) - side) / 2, side, side);
        const theme::Tokens tokens = m_tokens;
        const balancing::State state = *cell.state;
        const bool isOver = cell.isOver;
        add([=](QPainter& painter) { theme::paintState(painter, box, state, isOver, tokens); });
        x += points(kStateRoom);
    }
    for (const QString& line : row.lines[column]) {
        double shift = 0;
        if (alignment != ww::report::Alignment::Left) {
            shift = layout.widths[column] - advance(line, font);
            shift = alignment == ww::report::Alignment::Center ? shift / 2 : shift;
        }
        addText(QPointF(x + shift, y + metrics.ascent()), line, font, m_tokens.ink);
        y += rowLineHeight(font);
    }
}

void PageBuilder::addRow(const TableLayout& layout, const LaidRow& row) {
    if (m_isTrial) {
        m_y += row.height;
        return;
    }
    for (std::size_t i = 0; i < row.lines.size(); ++i) {
        addCell(layout, i, row);
    }
    if (layout.table.isForm) {
        for (std::size_t i = 0; i <= layout.lefts.size(); ++i) {
            const double x = i < layout.lefts.size() ? layout.lefts[i] : left() + width();
            addLine(QPointF(x, m_y), QPointF(x, m_y + row.height), 0.4, m_tokens.rule);
        }
    }
    m_y += row.height;
    addLine(QPointF(left(), m_y), QPointF(left() + width(), m_y), 0.4, m_tokens.rule);
}

void PageBuilder::tableHead(const TableLayout& layout, bool isContinued) {
    QString title = words(layout.table.title);
    if (isContinued) {
        title = QCoreApplication::translate("Report", "%1 (continued)").arg(title);
    }
    const QFont titleFont = paperFont(kTitle, true);
    m_y += addLines(wrapped(title, titleFont, width()), left(), m_y, titleFont, m_tokens.ink) + points(2.5);
    std::vector<QStringList> heads;
    std::size_t most = 1;
    bool hasUnits = false;
    for (std::size_t i = 0; i < layout.lefts.size(); ++i) {
        heads.push_back(
            wrapped(words(layout.table.columns[layout.columns[i]].heading), layout.head, layout.widths[i]));
        most = std::max(most, static_cast<std::size_t>(heads.back().size()));
        hasUnits = hasUnits || !layout.table.columns[layout.columns[i]].unit.empty();
    }
    const double headHeight = rowLineHeight(layout.head) * static_cast<double>(most);
    const double height = headHeight + (hasUnits ? rowLineHeight(layout.unit) : 0) + 2 * points(2);
    const QRectF box(left(), m_y, width(), height);
    const theme::Tokens tokens = m_tokens;
    add([=](QPainter& painter) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(tokens.panel);
        painter.drawRect(box);
    });
    const auto put = [&](std::size_t column, const QString& text, const QFont& font, double y) {
        const QFontMetricsF metrics(font);
        double shift = 0;
        if (layout.table.columns[layout.columns[column]].alignment != ww::report::Alignment::Left) {
            shift = layout.widths[column] - advance(text, font);
            shift = layout.table.columns[layout.columns[column]].alignment == ww::report::Alignment::Center
                        ? shift / 2
                        : shift;
        }
        addText(QPointF(layout.lefts[column] + layout.padding + shift, y + metrics.ascent()), text, font,
                m_tokens.ink);
    };
    for (std::size_t i = 0; i < layout.lefts.size(); ++i) {
        double y = m_y + points(2);
        for (const QString& line : heads[i]) {
            put(i, line, layout.head, y);
            y += rowLineHeight(layout.head);
        }
        put(i, text::term(layout.table.columns[layout.columns[i]].unit), layout.unit,
            m_y + points(2) + headHeight);
    }
    m_y += height;
    addLine(QPointF(left(), m_y), QPointF(left() + width(), m_y), 1.0, m_tokens.ink);
}

double PageBuilder::tableHeadHeight(const TableLayout& layout) const {
    const auto title = wrapped(words(layout.table.title), paperFont(kTitle, true), width());
    std::size_t most = 1;
    bool hasUnits = false;
    for (std::size_t i = 0; i < layout.lefts.size(); ++i) {
        const ww::report::Column& column = layout.table.columns[layout.columns[i]];
        const auto lines = wrapped(words(column.heading), layout.head, layout.widths[i]);
        most = std::max(most, static_cast<std::size_t>(lines.size()));
        hasUnits = hasUnits || !column.unit.empty();
    }
    return rowLineHeight(paperFont(kTitle, true)) * static_cast<double>(title.size()) + points(12) +
           rowLineHeight(layout.head) * static_cast<double>(most) +
           (hasUnits ? rowLineHeight(layout.unit) : 0);
}

PageBuilder::TableLayout PageBuilder::tableLayout(const ww::report::Table& table) const {
    TableLayout layout{table, m_shared->measured(table).columns, {}, {}};
    layout.padding = paddingOf(table);
    const std::vector<double> wide = columnWidths(table, layout.padding);
    double x = left();
    for (const double column : wide) {
        layout.lefts.push_back(x);
        layout.widths.push_back(column - 2 * layout.padding);
        x += column;
    }
    return layout;
}

bool PageBuilder::fits(const ww::report::Table& table) const {
    return leastWidth(table, points(kCloseCells)) <= width();
}

double PageBuilder::paddingOf(const ww::report::Table& table) const {
    return points(leastWidth(table, points(kWideCells)) <= width() ? kWideCells : kCloseCells);
}

void PageBuilder::table(const ww::report::Table& table) {
    // A table made for an upright page has room on one that lies; the other way round only where it was
    // tried.
    if (table.isLandscape && !isLandscape() && !m_keepsDirection) {
        newPage(true);
    }
    const TableLayout layout = tableLayout(table);
    // The head never stands without rows at the foot of a page, and no page has the last row alone.
    constexpr std::size_t kFirstRows = 2;
    const std::size_t together = table.rows.size() == kFirstRows + 1 ? kFirstRows + 1 : kFirstRows;
    double first = points(4) + tableHeadHeight(layout);
    for (std::size_t i = 0; i < std::min(together, table.rows.size()); ++i) {
        first += laidRow(layout, table.rows[i], false).height;
    }
    ensure(first);
    gap(4);
    tableHead(layout, false);
    // The last rows, their sum and what the marks mean stay together.
    const QString notes = notesOf(table);
    const LaidRow totals = laidRow(layout, table.totals, true);
    double tail = table.totals.empty() ? 0 : totals.height;
    if (!notes.isEmpty()) {
        tail += points(10) +
                rowLineHeight(layout.font) * static_cast<double>(wrapped(notes, layout.font, width()).size());
    }
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        if (!goesOn()) {
            return;
        }
        const LaidRow row = laidRow(layout, table.rows[i], false);
        const bool isLast = i + 1 == table.rows.size();
        const bool isBeforeLast = i >= kFirstRows && i + 2 == table.rows.size();
        const double behind = isLast         ? tail
                              : isBeforeLast ? laidRow(layout, table.rows[i + 1], false).height + tail
                                             : 0;
        if (m_y + row.height + behind > bottom()) {
            newPage(isLandscape());
            tableHead(layout, true);
        }
        addRow(layout, row);
    }
    if (!table.totals.empty()) {
        addLine(QPointF(left(), m_y), QPointF(left() + width(), m_y), 1.0, m_tokens.ink);
        addRow(layout, totals);
    }
    gap(4);
    if (!notes.isEmpty()) {
        paragraph(notes, true);
    }
    gap(6);
}

}  // namespace ww::ui::report
