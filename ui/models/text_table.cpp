#include "ui/models/text_table.h"

#include <QFont>

#include "ui/models/branch_roles.h"

namespace ww::ui {

TextTable::TextTable(QStringList titles, int stateColumn, QObject* parent)
    : QAbstractTableModel(parent), m_titles(std::move(titles)), m_stateColumn(stateColumn) {}

void TextTable::setRows(std::vector<TextRow> rows) {
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

void TextTable::setTitle(int column, const QString& title) {
    if (m_titles[column] != title) {
        m_titles[column] = title;
        emit headerDataChanged(Qt::Horizontal, column, column);
    }
}

int TextTable::rowOf(const base::Id& id) const {
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        if (m_rows[i].id == id) {
            return static_cast<int>(i);
        }
    }
    return -1;
}

int TextTable::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int TextTable::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_titles.size());
}

QVariant TextTable::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    const TextRow& shown = row(index.row());
    const QString text = shown.cells.value(index.column());
    switch (role) {
        case Qt::DisplayRole:
        case Qt::ToolTipRole:
            return text;
        case Qt::FontRole:
            if (shown.isStruck) {
                QFont font;
                font.setStrikeOut(true);
                return font;
            }
            return {};
        case Qt::TextAlignmentRole:
            return QVariant::fromValue(int(Qt::AlignVCenter) | int(Qt::AlignLeft));
        case Qt::AccessibleTextRole:
            return QStringList{shown.cells.value(0), m_titles.value(index.column()),
                               text.isEmpty() ? tr("empty") : text,
                               shown.isStruck ? tr("struck through") : QString()}
                .join(QStringLiteral(", "));
        case StateRole:
            return shown.state && index.column() == m_stateColumn ? QVariant(*shown.state) : QVariant();
        case IsOverRole:
            return shown.isOver;
        case IsStateCellRole:
            return shown.state.has_value() && index.column() == m_stateColumn;
        case IsStrongRole:
            return index.column() == 0;
        default:
            return {};
    }
}

QVariant TextTable::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= m_titles.size()) {
        return {};
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(int(Qt::AlignVCenter) | int(Qt::AlignLeft));
    }
    return role == Qt::DisplayRole ? QVariant(m_titles[section]) : QVariant();
}

}  // namespace ww::ui
