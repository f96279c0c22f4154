#include "ui/places/column_fit.h"

#include <QHeaderView>
#include <QRegularExpression>
#include <QScrollBar>
#include <algorithm>
#include <map>
#include <numeric>
#include <vector>

#include "ui/delegates/fitted_text.h"
#include "ui/models/branch_roles.h"
#include "ui/text/narrow_letters.h"
#include "ui/widgets/wrapped_head.h"

namespace ww::ui {

namespace {

constexpr int kColumnPadding = 12;
/// What a column holds at least of its values.
constexpr int kLeastDigits = 5;
/// Longer texts are a person's own, and wrapped.
constexpr int kMostDigits = 26;
/// Of a longer table the first rows stand for all.
constexpr int kMostRowsMeasured = 200;

/// What a column needs, px.
struct ColumnNeed {
    int column;
    int least;      ///< in the narrowest letters
    int held;       ///< what stands there, in its own letters
    double wanted;  ///< with room for what may yet be typed
};

std::vector<ColumnNeed> needsOf(const QTableView& table, std::span<const int> digits, int filling) {
    std::vector<ColumnNeed> needs;
    for (std::size_t i = 0; i < digits.size(); ++i) {
        const int column = static_cast<int>(i);
        const int words = wordsColumnWidth(table, column);
        const int guessed = columnWidthFor(table, column, digits[i]);
        const int whole = column == filling ? guessed : std::max(guessed, words);
        const int held = std::max(columnWidthFor(table, column, kLeastDigits), words);
        needs.push_back(
            {column, std::min(leastColumnWidth(table, column), whole), std::min(held, whole), double(whole)});
    }
    return needs;
}

/// Shares the room of a table out to these columns; what is left goes to `filling`, or to the last of them
/// where that is not among them.
void shareRoom(QTableView& table, const std::vector<ColumnNeed>& needs, int filling) {
    std::vector<double> wanted;
    std::vector<int> least;
    std::size_t taker = needs.size() - 1;
    const int room = table.viewport()->width();
    const bool isHeld = std::accumulate(needs.begin(), needs.end(), 0, [](int sum, const ColumnNeed& need) {
                            return sum + need.held;
                        }) <= room;
    for (std::size_t i = 0; i < needs.size(); ++i) {
        wanted.push_back(needs[i].wanted);
        least.push_back(isHeld ? std::max(needs[i].held, needs[i].least) : needs[i].least);
        taker = needs[i].column == filling ? i : taker;
    }
    const std::vector<int> widths = sharedOut(least, wanted, room, taker);
    for (std::size_t i = 0; i < widths.size(); ++i) {
        table.setColumnWidth(needs[i].column, widths[i]);
    }
    heightenWhereCut(table);
}

/// Of a head in letters of that width, percent, whatever width it has now.
QFontMetrics headMetrics(const QTableView& table, int letters) {
    QFont font = table.horizontalHeader()->font();
    font.setStretch(letters < 100 ? letters : QFont::AnyStretch);
    return QFontMetrics(font);
}

}  // namespace

int widestWord(const QFontMetrics& metrics, const QString& text) {
    static const QRegularExpression kBetween(QStringLiteral("\\s"));
    int widest = 0;
    for (const QString& word : text.split(kBetween, Qt::SkipEmptyParts)) {
        widest = std::max(widest, metrics.horizontalAdvance(word));
    }
    return widest;
}

std::vector<int> sharedOut(std::span<const int> least, std::span<const double> wanted, int room,
                           std::size_t filling) {
    const int sumLeast = std::accumulate(least.begin(), least.end(), 0);
    const double more = std::accumulate(wanted.begin(), wanted.end(), 0.0) - sumLeast;
    const double kept = more > 0 ? std::clamp((room - sumLeast) / more, 0.0, 1.0) : 1.0;
    std::vector<int> widths;
    int left = room;
    for (std::size_t i = 0; i < least.size(); ++i) {
        widths.push_back(least[i] + static_cast<int>(kept * (wanted[i] - least[i])));
        left -= widths.back();
    }
    widths[filling] += std::max(0, left);
    return widths;
}

int columnWidthFor(const QTableView& table, int column, int digits, ColumnLetters letters) {
    const QFontMetrics head = headMetrics(table, letters.head);
    const QFontMetrics cells(text::narrowed(table.font(), letters.digits));
    int width = digits * cells.horizontalAdvance('0') + kColumnPadding;
    const QString words = table.model()->headerData(column, Qt::Horizontal).toString();
    for (const QString& line : words.split('\n')) {
        width = std::max(width, head.horizontalAdvance(line) + WrappedHead::kMargins);
    }
    return width;
}

int leastColumnWidth(const QTableView& table, int column, ColumnLetters letters) {
    QFont written = table.font();
    written.setStretch(QFont::AnyStretch);
    written = text::narrowed(written, letters.digits);
    int width = kLeastDigits * QFontMetrics(written).horizontalAdvance('0') + kColumnPadding;
    const QString words = table.model()->headerData(column, Qt::Horizontal).toString();
    width = std::max(width, widestWord(headMetrics(table, letters.head), words) + WrappedHead::kMargins);
    const int rows = std::min(table.model()->rowCount(), kMostRowsMeasured);
    // As narrow as its delegate writes them, and there alone a unit may go below its number.
    const auto lettersOf = [&](const QModelIndex& cell) {
        const QFont font = cellFont(cell, written, &table);
        return QFontMetrics(table.wordWrap() ? font : text::narrowest(font));
    };
    // By the weight of their letters.
    std::map<int, QFontMetrics> measured;
    for (int row = 0; row < rows; ++row) {
        const QModelIndex cell = table.model()->index(row, column);
        const int weight = cellFont(cell, table.font(), &table).weight();
        auto metrics = measured.find(weight);
        if (metrics == measured.end()) {
            metrics = measured.emplace(weight, lettersOf(cell)).first;
        }
        const int shape =
            cell.data(IsStateCellRole).toBool() ? table.fontMetrics().height() + kColumnPadding : 0;
        QString text = cell.data().toString();
        if (!table.wordWrap()) {
            text.replace(QChar(QChar::Nbsp), ' ');
        }
        const int words = widestWord(metrics->second, text);
        // The line between two columns takes one pixel.
        width = std::max(width, words > 0 ? shape + words + kColumnPadding + 1 : 0);
    }
    return width;
}

int leastColumnWidth(const QTableView& table, int column) {
    return leastColumnWidth(
        table, column, {text::stretchOf(table.horizontalHeader()->font()), text::stretchOf(table.font())});
}

int wordsColumnWidth(const QTableView& table, int column, int letters) {
    const int most = kMostDigits * table.fontMetrics().horizontalAdvance('0') + kColumnPadding;
    int width = 0;
    for (int row = 0; row < std::min(table.model()->rowCount(), kMostRowsMeasured); ++row) {
        const QModelIndex cell = table.model()->index(row, column);
        const QString words = cell.data().toString();
        if (!words.isEmpty()) {
            // The line between two columns takes one pixel.
            const QFont font = text::narrowed(cellFont(cell, table.font(), &table), letters);
            width = std::max(
                width, QFontMetrics(font).horizontalAdvance(words) + besideWords(cell, table.font()) + 1);
        }
    }
    return std::min(width, most);
}

int twoLinesColumnWidth(const QTableView& table, int column, int headLetters) {
    const QFontMetrics metrics(text::narrowest(table.font()));
    int longest = 0;
    for (int row = 0; row < std::min(table.model()->rowCount(), kMostRowsMeasured); ++row) {
        longest =
            std::max(longest, metrics.horizontalAdvance(table.model()->index(row, column).data().toString()));
    }
    const int most = kMostDigits * metrics.horizontalAdvance('0');
    const int least = leastColumnWidth(table, column, {headLetters});
    // The first line ends before the word that goes over.
    return std::max(least, (std::min(longest, most) + kColumnPadding + least) / 2);
}

void setHeadFont(QTableView& table, const QFont& font) {
    // Under a style sheet a part does not take the font of its whole.
    QHeaderView* head = table.horizontalHeader();
    for (QWidget* part : {static_cast<QWidget*>(head), head->viewport()}) {
        part->setFont(font);
    }
}

int fitLetters(QTableView& table) {
    const auto needed = [&](int letters) {
        int sum = 0;
        for (int column = 0; column < table.model()->columnCount(); ++column) {
            sum += leastColumnWidth(table, column, {letters, letters});
        }
        return sum;
    };
    // Only how wide they are is said, so that they follow the size of the text.
    const QFont fitting = text::widestThatFits(QFont(), [&](const QFont& tried) {
                              return needed(text::stretchOf(tried)) <= table.viewport()->width();
                          }).value_or(text::narrowest(QFont()));
    if (text::stretchOf(fitting) != text::stretchOf(table.font())) {
        table.setFont(fitting);
        setHeadFont(table, fitting);
    }
    return needed(text::kLeastStretch);
}

void heightenWhereCut(QTableView& table) {
    if (table.wordWrap()) {
        return;
    }
    const int usual = table.verticalHeader()->defaultSectionSize();
    // The widest letters are nearly twice as wide as the others: a text so short needs no measuring.
    const int wideLetter = 2 * table.fontMetrics().averageCharWidth();
    QList<int> letters(table.model()->columnCount(), 100);
    for (int row = 0; row < std::min(table.model()->rowCount(), kMostRowsMeasured); ++row) {
        QList<int> ofRow(letters.size(), 100);
        const auto isCutAt = [&](int height) {
            bool isCut = false;
            for (int column = 0; column < letters.size(); ++column) {
                if (table.isColumnHidden(column)) {
                    continue;
                }
                const QModelIndex cell = table.model()->index(row, column);
                const QString words = cell.data().toString();
                // The line between two columns takes one pixel.
                const QSize room(table.columnWidth(column) - besideWords(cell, table.font()) - 1, height);
                if (words.size() * wideLetter > room.width()) {
                    const FittedText fitted = fitText(words, cellFont(cell, table.font(), &table), room);
                    // One long word of a state leaves the others as they are.
                    ofRow[column] = cell.data(IsStateCellRole).toBool() ? 100 : text::stretchOf(fitted.font);
                    isCut = isCut || fitted.isCut;
                }
            }
            return isCut;
        };
        int height = usual;
        if (isCutAt(usual)) {
            height = std::max(usual, twoLinesHeight(table.font()));
            isCutAt(height);
        }
        for (int column = 0; column < letters.size(); ++column) {
            letters[column] = std::min(letters[column], ofRow[column]);
        }
        if (table.rowHeight(row) != height) {
            table.setRowHeight(row, height);
        }
    }
    setColumnLetters(table, letters);
    table.viewport()->update();
}

void leaveRoomFor(QTableView& table, int columns) {
    const int bar = table.verticalScrollBar()->sizeHint().width();
    table.setMinimumWidth(columns + 2 * table.frameWidth() + bar);
}

void fitColumns(QTableView& table, std::span<const int> digits, int filling) {
    const std::vector<ColumnNeed> needs = needsOf(table, digits, filling);
    leaveRoomFor(table, std::accumulate(needs.begin(), needs.end(), 0,
                                        [](int sum, const ColumnNeed& need) { return sum + need.least; }));
    shareRoom(table, needs, filling);
}

bool fitColumnsOrHide(QTableView& table, std::span<const int> digits, int filling, bool isOthers) {
    std::vector<ColumnNeed> needs = needsOf(table, digits, filling);
    int widest = 0;
    for (const ColumnNeed& need : needs) {
        widest = std::max(widest, need.column > 0 ? need.least : 0);
    }
    leaveRoomFor(table, needs.front().least + widest);
    // The bar counts whether it is shown or not: rows that become higher must not hide a column.
    const int room = table.width() - 2 * table.frameWidth() - table.verticalScrollBar()->sizeHint().width();
    std::size_t firstHidden = 1;
    for (int used = needs.front().least; firstHidden < needs.size(); ++firstHidden) {
        used += needs[firstHidden].least;
        if (used > room) {
            break;
        }
    }
    const bool isSome = firstHidden < needs.size();
    for (std::size_t i = 1; i < needs.size(); ++i) {
        const bool isShown = !isSome || (i >= firstHidden) == isOthers;
        table.setColumnHidden(needs[i].column, !isShown);
    }
    std::erase_if(needs, [&](const ColumnNeed& need) { return table.isColumnHidden(need.column); });
    shareRoom(table, needs, filling);
    return isSome;
}

bool fitColumnsInTurn(QTableView& table, std::span<const int> digits, int filling, bool isOthers) {
    const int digit = table.fontMetrics().horizontalAdvance('0');
    const int room = table.viewport()->width();
    const auto widthOf = [&](std::size_t column) {
        const auto at = static_cast<int>(column);
        const int guessed = columnWidthFor(table, at, digits[column]);
        return at == filling ? guessed : std::max(guessed, wordsColumnWidth(table, at));
    };
    std::size_t firstHidden = digits.size();
    int used = 0;
    for (std::size_t column = 0; column < digits.size() && firstHidden == digits.size(); ++column) {
        used += widthOf(column);
        firstHidden = used > room && column > 0 ? column : firstHidden;
    }
    const bool isSome = firstHidden < digits.size();
    int left = room;
    std::vector<int> shown;
    std::vector<int> least;
    std::vector<double> wanted;
    for (std::size_t column = 0; column < digits.size(); ++column) {
        const auto at = static_cast<int>(column);
        const bool isShown = column == 0 || !isSome || (column >= firstHidden) == isOthers;
        table.setColumnHidden(at, !isShown);
        if (isShown) {
            const int width = std::min(widthOf(column), std::max(left, digit));
            const int held = std::max(columnWidthFor(table, at, kLeastDigits), wordsColumnWidth(table, at));
            left -= width;
            shown.push_back(at);
            least.push_back(at == filling ? width : std::min(width, held));
            wanted.push_back(width);
        }
    }
    // What is left goes to the widest use there is for it.
    const auto found = std::find(shown.begin(), shown.end(), filling);
    const auto taker = static_cast<std::size_t>(found != shown.end() ? found - shown.begin()
                                                : isOthers           ? std::ssize(shown) - 1
                                                                     : 0);
    if (found != shown.end()) {
        // Its words come before room for what may yet be typed beside them.
        const int spare = room - std::accumulate(least.begin(), least.end(), 0);
        const int missing = wordsColumnWidth(table, filling) - least[taker];
        least[taker] += std::clamp(missing, 0, std::max(0, spare));
        wanted[taker] = std::max(wanted[taker], double(least[taker]));
    }
    const std::vector<int> widths = sharedOut(least, wanted, room, taker);
    for (std::size_t i = 0; i < shown.size(); ++i) {
        table.setColumnWidth(shown[i], widths[i]);
    }
    heightenWhereCut(table);
    return isSome;
}

}  // namespace ww::ui
