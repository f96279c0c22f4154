#include "ui/places/section_table_model.h"

#include <QFont>
#include <algorithm>
#include <array>
#include <string_view>
#include <unordered_set>
#include <utility>

#include "ui/places/column_fit.h"
#include "ui/report/page_builder.h"
#include "ui/text/words.h"

namespace ww::ui {

namespace {

using ww::report::Cell;
using ww::report::Table;

/// Of a longer table only some cells are measured.
constexpr std::size_t kMostRowsWholly = 200;
/// So many of each column, the longest.
constexpr std::size_t kLongestMeasured = 32;

/// About how wide each byte of a text is, px.
class ByteWidths {
  public:
    explicit ByteWidths(const QFontMetrics& metrics) {
        constexpr int kFirstLetter = 0x21;
        constexpr int kFirstOfMany = 0x80;
        constexpr int kFirstLead = 0xC0;
        for (int byte = kFirstLetter; byte < kFirstOfMany; ++byte) {
            m_widths[static_cast<std::size_t>(byte)] = metrics.horizontalAdvance(QChar(byte));
        }
        // A letter of several bytes counts once, as a wide one.
        for (std::size_t byte = kFirstLead; byte < m_widths.size(); ++byte) {
            m_widths[byte] = metrics.horizontalAdvance(QChar('W'));
        }
    }

    /// Of the widest word.
    int widest(std::string_view text) const {
        int most = 0;
        int word = 0;
        for (const char letter : text) {
            const bool isBetween = letter == ' ' || letter == '\n';
            word = isBetween ? 0 : word + m_widths[static_cast<unsigned char>(letter)];
            most = std::max(most, word);
        }
        return most;
    }

  private:
    std::array<int, 256> m_widths{};
};

/// The rows whose cells may hold the widest word of a column. A sentence that stands in many rows counts
/// once: in another language its words may be the wider ones.
std::vector<std::size_t> rowsToMeasure(const Table& table, std::size_t column, const ByteWidths& widths) {
    std::vector<std::pair<int, std::size_t>> longest;
    std::unordered_set<std::string_view> sentences;
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        if (column >= table.rows[row].size()) {
            continue;
        }
        const Cell& cell = table.rows[row][column];
        if (cell.parts.empty() || sentences.insert(cell.text).second) {
            longest.emplace_back(widths.widest(cell.text), row);
        }
    }
    if (table.rows.size() > kMostRowsWholly && longest.size() > kLongestMeasured) {
        std::nth_element(longest.begin(), longest.begin() + kLongestMeasured, longest.end(),
                         [](const auto& one, const auto& other) { return one.first > other.first; });
        longest.resize(kLongestMeasured);
    }
    std::vector<std::size_t> rows;
    rows.reserve(longest.size());
    for (const auto& [width, row] : longest) {
        rows.push_back(row);
    }
    return rows;
}

}  // namespace

void SectionTableModel::show(Table table) {
    beginResetModel();
    m_table = std::move(table);
    m_isAsLines = false;
    endResetModel();
}

void SectionTableModel::setAsLines(bool isAsLines) {
    if (isAsLines == m_isAsLines) {
        return;
    }
    beginResetModel();
    m_isAsLines = isAsLines;
    endResetModel();
}

std::vector<int> SectionTableModel::widestWords(const QFontMetrics& ofHeads,
                                                const QFontMetrics& ofCells) const {
    const ByteWidths widths(ofCells);
    std::vector<int> widest;
    for (std::size_t column = 0; column < m_table.columns.size(); ++column) {
        int width = widestWord(ofHeads, headOf(column, QChar('\n')));
        for (const std::size_t row : rowsToMeasure(m_table, column, widths)) {
            width = std::max(width, widestWord(ofCells, wordsOf(row, column)));
        }
        widest.push_back(width);
    }
    return widest;
}

int SectionTableModel::widestHead(const QFontMetrics& ofHeads) const {
    int widest = 0;
    for (std::size_t column = 0; column < m_table.columns.size(); ++column) {
        widest = std::max(widest, widestWord(ofHeads, headOf(column, ' ')));
    }
    return widest;
}

int SectionTableModel::rowCount(const QModelIndex& parent) const {
    if (parent.isValid()) {
        return 0;
    }
    const std::size_t lines = m_isAsLines ? m_table.columns.size() : 1;
    return static_cast<int>(m_table.rows.size() * lines);
}

int SectionTableModel::columnCount(const QModelIndex& parent) const {
    if (parent.isValid()) {
        return 0;
    }
    return m_isAsLines ? 2 : static_cast<int>(m_table.columns.size());
}

QString SectionTableModel::headOf(std::size_t column, QChar between) const {
    const ww::report::Column& shown = m_table.columns[column];
    QString title = report::words(shown.heading);
    if (!shown.unit.empty()) {
        title += between + text::term(shown.unit);
    }
    return title;
}

QString SectionTableModel::wordsOf(std::size_t row, std::size_t column) const {
    const std::vector<Cell>& cells = m_table.rows[row];
    return column < cells.size() ? report::words(cells[column]) : QString();
}

Qt::Alignment SectionTableModel::sideOf(std::size_t column) const {
    return m_table.columns[column].alignment == ww::report::Alignment::Right ? Qt::AlignRight : Qt::AlignLeft;
}

QString SectionTableModel::spoken(std::size_t row, std::size_t column) const {
    return QStringList{wordsOf(row, 0), headOf(column, QChar(' ')), wordsOf(row, column)}.join(
        QStringLiteral(", "));
}

QVariant SectionTableModel::uprightData(std::size_t row, std::size_t column, int role) const {
    if (role == Qt::DisplayRole) {
        return wordsOf(row, column);
    }
    if (role == Qt::AccessibleTextRole) {
        return spoken(row, column);
    }
    return role == Qt::TextAlignmentRole ? QVariant::fromValue(int(sideOf(column) | Qt::AlignVCenter))
                                         : QVariant();
}

/// The first line of each block is bold.
QVariant SectionTableModel::lineData(std::size_t line, bool isHead, int role) const {
    const std::size_t row = line / m_table.columns.size();
    const std::size_t column = line % m_table.columns.size();
    if (role == Qt::DisplayRole) {
        return isHead ? headOf(column, QChar(' ')) : wordsOf(row, column);
    }
    if (role == Qt::AccessibleTextRole) {
        return spoken(row, column);
    }
    if (role == Qt::FontRole && column == 0) {
        QFont bold;
        bold.setBold(true);
        return bold;
    }
    return {};
}

QVariant SectionTableModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    const auto row = static_cast<std::size_t>(index.row());
    return m_isAsLines ? lineData(row, index.column() == 0, role)
                       : uprightData(row, static_cast<std::size_t>(index.column()), role);
}

QVariant SectionTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) {
        return QAbstractTableModel::headerData(section, orientation, role);
    }
    if (m_isAsLines || section < 0 || section >= columnCount()) {
        return {};
    }
    const auto column = static_cast<std::size_t>(section);
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(int(sideOf(column) | Qt::AlignBottom) | int(Qt::TextWordWrap));
    }
    return role == Qt::DisplayRole ? QVariant(headOf(column, QChar('\n'))) : QVariant();
}

}  // namespace ww::ui
