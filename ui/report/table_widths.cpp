#include "ui/report/table_widths.h"

#include <QRegularExpression>
#include <QSet>
#include <algorithm>
#include <numeric>

namespace ww::ui::report {
namespace {

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
    const QFont head = paperFont(kTableHead, true);
    const QFont text = paperFont(kTableText);
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

}  // namespace

MeasuredTable measuredTable(const ww::report::Table& table, TextMeasure& texts) {
    MeasuredTable measured{columnsInUse(table), {}};
    measured.widest = widestWords(table, measured.columns, texts);
    return measured;
}

double leastWidth(const MeasuredTable& measured, double padding) {
    const auto least = withPadding(measured.widest.front(), 2 * padding);
    return std::accumulate(least.begin(), least.end(), 0.0);
}

std::vector<double> columnWidths(const ww::report::Table& table, const MeasuredTable& measured, double width,
                                 double padding) {
    std::vector<double> least;
    for (const std::vector<double>& widest : measured.widest) {
        least = withPadding(widest, 2 * padding);
        if (std::accumulate(least.begin(), least.end(), 0.0) <= width) {
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
        widths.push_back(width * table.columns[measured.columns[i]].widthShare / sum);
        missing += std::max(0.0, least[i] - widths[i]);
        spare += std::max(0.0, widths[i] - least[i]);
    }
    const double part = spare > 0 ? std::min(1.0, missing / spare) : 0;
    for (std::size_t i = 0; i < least.size(); ++i) {
        widths[i] = widths[i] < least[i] ? least[i] : widths[i] - part * (widths[i] - least[i]);
    }
    return widths;
}

}  // namespace ww::ui::report
