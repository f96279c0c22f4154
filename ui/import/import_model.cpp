#include "ui/import/import_model.h"

#include <QFont>
#include <algorithm>

#include "ui/text/column_words.h"
#include "ui/text/joined.h"
#include "ui/text/words.h"

namespace ww::ui {

ImportModel::ImportModel(const project::Project& project, QObject* parent)
    : QAbstractTableModel(parent), m_project(project) {}

void ImportModel::show(exchange::SourceTable table, exchange::TableMapping mapping, const QString& name) {
    beginResetModel();
    m_table = std::move(table);
    m_mapping = std::move(mapping);
    m_name = name.toStdString();
    m_leftOut.clear();
    m_matched.clear();
    m_titles.clear();
    m_shown = exchange::mapped(m_table, m_mapping, {});
    const auto columns = exchange::columnsOfTable(m_mapping.file);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (m_mapping.columns[i].source || !m_mapping.columns[i].constant.empty()) {
            m_matched.push_back(i);
            m_titles.emplace_back(columns[i].name);
        }
    }
    makePlan();
    endResetModel();
    emit planned();
}

void ImportModel::makePlan() {
    base::RandomIds ids;
    std::map<std::string, exchange::SourceTable> tables;
    tables.emplace(m_mapping.file, exchange::mapped(m_table, m_mapping, m_leftOut));
    m_plan = exchange::addTables(exchange::GivenTables(m_name, std::move(tables)), m_project, ids);
    m_faults.clear();
    m_faultyCells.clear();
    m_generalFaults.clear();
    std::set<int> lines;
    for (int row = 0; row < rowCount(); ++row) {
        lines.insert(lineOf(row));
    }
    for (const exchange::RowFault& fault : m_plan.faults) {
        const QString words = text::sentence(fault.fault);
        if (lines.contains(fault.row)) {
            m_faults[fault.row] << (fault.column.empty()
                                        ? words
                                        : text::labelled(text::columnWords(fault.column), words));
            m_faultyCells.emplace(fault.row, fault.column);
        } else {
            m_generalFaults << words;
        }
    }
}

int ImportModel::lineOf(int row) const {
    return m_shown.text.rows[static_cast<std::size_t>(row) + 1].line;
}

QString ImportModel::faultOf(int row) const {
    const auto found = m_faults.find(lineOf(row));
    return found == m_faults.end() ? QString() : found->second.join(QStringLiteral("  "));
}

bool ImportModel::isLeftBlank(int row) const {
    const auto isTitle = [this](std::string_view name) {
        return std::find(m_titles.begin(), m_titles.end(), name) != m_titles.end();
    };
    if (m_mapping.file != "readings.csv" || !isTitle(exchange::kWalkSheetColumn)) {
        return false;
    }
    const auto filledIn = exchange::filledInColumns();
    const auto& cells = m_shown.text.rows[static_cast<std::size_t>(row) + 1].cells;
    for (std::size_t own = 0; own < m_titles.size(); ++own) {
        const bool isFilledIn = std::find(filledIn.begin(), filledIn.end(), m_titles[own]) != filledIn.end();
        if (isFilledIn && cells[own].find_first_not_of(" \t") != std::string::npos) {
            return false;
        }
    }
    return true;
}

int ImportModel::takenRowCount() const {
    int count = 0;
    for (int row = 0; row < rowCount(); ++row) {
        count += isLeftOut(row) || isLeftBlank(row) ? 0 : 1;
    }
    return count;
}

bool ImportModel::isLeftOut(int row) const {
    return m_leftOut.contains(lineOf(row));
}

void ImportModel::setLeftOut(int row, bool isLeftOut) {
    isLeftOut ? static_cast<void>(m_leftOut.insert(lineOf(row)))
              : static_cast<void>(m_leftOut.erase(lineOf(row)));
    makePlan();
    emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    emit planned();
}

void ImportModel::leaveOutFaulty() {
    // A row that refers to one left out may become faulty in its turn.
    while (!m_faults.empty()) {
        for (const auto& [line, words] : m_faults) {
            m_leftOut.insert(line);
        }
        makePlan();
    }
    if (rowCount() > 0) {
        emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    }
    emit planned();
}

int ImportModel::nextFaulty(int row) const {
    for (int step = 1; step <= rowCount(); ++step) {
        const int at = (std::max(row, -1) + step) % rowCount();
        if (m_faults.contains(lineOf(at))) {
            return at;
        }
    }
    return -1;
}

int ImportModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() || m_shown.text.rows.empty() ? 0 : static_cast<int>(m_shown.text.rows.size()) - 1;
}

int ImportModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : LeadingCount + static_cast<int>(m_matched.size());
}

bool ImportModel::isFaultyCell(int row, int column) const {
    const int own = column - LeadingCount;
    return own >= 0 && own < static_cast<int>(m_titles.size()) &&
           m_faultyCells.contains({lineOf(row), m_titles[static_cast<std::size_t>(own)]});
}

QVariant ImportModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    const int row = index.row();
    const int column = index.column();
    if (role == Qt::CheckStateRole && column == Taken) {
        return static_cast<int>(isLeftOut(row) ? Qt::Unchecked : Qt::Checked);
    }
    if (role == Qt::FontRole && (isLeftOut(row) || isFaultyCell(row, column))) {
        QFont font;
        font.setStrikeOut(isLeftOut(row));
        font.setBold(!isLeftOut(row));
        return font;
    }
    if (role != Qt::DisplayRole && role != Qt::EditRole && role != Qt::ToolTipRole &&
        role != Qt::AccessibleTextRole) {
        return {};
    }
    if (column == Taken) {
        return role == Qt::AccessibleTextRole || role == Qt::ToolTipRole
                   ? QVariant(isLeftOut(row) ? tr("left out") : tr("taken"))
                   : QVariant();
    }
    if (column == Row) {
        return lineOf(row);
    }
    if (column == Fault) {
        return isLeftBlank(row) && faultOf(row).isEmpty() ? tr("left blank, not taken") : faultOf(row);
    }
    const auto& cells = m_shown.text.rows[static_cast<std::size_t>(row) + 1].cells;
    const auto own = static_cast<std::size_t>(column - LeadingCount);
    // What stands in every row without a column of theirs is a word of the program.
    const bool isTheirs = m_mapping.columns[m_matched[own]].source.has_value();
    const QString text = isTheirs ? QString::fromStdString(cells[own]) : text::term(cells[own]);
    const bool isMarked = role == Qt::DisplayRole && isFaultyCell(row, column) && !isLeftOut(row);
    return isMarked ? QStringLiteral("✗ ") + text : text;
}

bool ImportModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role == Qt::CheckStateRole && index.column() == Taken) {
        setLeftOut(index.row(), value.toInt() == Qt::Unchecked);
        return true;
    }
    if (role != Qt::EditRole || !flags(index).testFlag(Qt::ItemIsEditable)) {
        return false;
    }
    const int line = lineOf(index.row());
    const std::size_t own = m_matched[static_cast<std::size_t>(index.column() - LeadingCount)];
    const std::size_t source = *m_mapping.columns[own].source;
    for (exchange::CsvRow& row : m_table.text.rows) {
        if (row.line == line) {
            row.cells.resize(std::max(row.cells.size(), source + 1));
            row.cells[source] = value.toString().toStdString();
        }
    }
    std::erase_if(m_table.cellFailures, [&](const exchange::CellFailure& failure) {
        return failure.line == line && failure.index == source;
    });
    m_shown.text.rows[static_cast<std::size_t>(index.row()) + 1]
        .cells[static_cast<std::size_t>(index.column() - LeadingCount)] = value.toString().toStdString();
    makePlan();
    emit dataChanged(this->index(0, 0), this->index(rowCount() - 1, columnCount() - 1));
    emit planned();
    return true;
}

QVariant ImportModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole || section < 0 || section >= columnCount()) {
        return {};
    }
    if (section == Taken) {
        return tr("Take");
    }
    if (section == Row) {
        return tr("Row");
    }
    if (section == Fault) {
        return tr("What is wrong; what to do");
    }
    return titleOf(static_cast<std::size_t>(section - LeadingCount));
}

QString ImportModel::titleOf(std::size_t own) const {
    const auto& unit = m_mapping.columns[m_matched[own]].unit;
    const QString words = text::columnWords(m_titles[own]);
    if (!unit) {
        return words;
    }
    const std::string_view symbol = quantity::symbol(*unit);
    return QStringLiteral("%1 [%2]").arg(
        words, QString::fromUtf8(symbol.data(), static_cast<qsizetype>(symbol.size())));
}

Qt::ItemFlags ImportModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) {
        return Qt::NoItemFlags;
    }
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    flags.setFlag(Qt::ItemIsUserCheckable, index.column() == Taken);
    const int own = index.column() - LeadingCount;
    const bool isTheirs = own >= 0 && own < static_cast<int>(m_matched.size()) &&
                          m_mapping.columns[m_matched[static_cast<std::size_t>(own)]].source.has_value();
    flags.setFlag(Qt::ItemIsEditable, isTheirs);
    return flags;
}

}  // namespace ww::ui
