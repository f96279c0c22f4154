#include "ui/charts/figure_table.h"

namespace ww::ui::charts {

void FigureTable::show(const QStringList& heads, const std::vector<QStringList>& rows) {
    beginResetModel();
    m_heads = heads;
    m_rows = rows;
    endResetModel();
}

int FigureTable::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int FigureTable::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_heads.size());
}

QVariant FigureTable::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    if (role == Qt::DisplayRole) {
        return m_rows[static_cast<std::size_t>(index.row())].value(index.column());
    }
    const Qt::Alignment side = index.column() == 0 ? Qt::AlignLeft : Qt::AlignRight;
    return role == Qt::TextAlignmentRole ? QVariant::fromValue(int(side | Qt::AlignVCenter)) : QVariant();
}

QVariant FigureTable::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return QAbstractTableModel::headerData(section, orientation, role);
    }
    return m_heads.value(section);
}

}  // namespace ww::ui::charts
