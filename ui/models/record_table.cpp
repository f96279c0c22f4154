#include "ui/models/record_table.h"

#include "ui/models/branch_roles.h"

namespace ww::ui {

RecordTableModel::RecordTableModel(WorkbookBridge& bridge, RecordTableContent content, QObject* parent)
    : CountedRows(
          bridge, content.kind,
          [count = content.rowCount](const project::Project&) { return static_cast<std::size_t>(count()); },
          parent),
      m_content(std::move(content)) {}

int RecordTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_content.titles.size());
}

Qt::ItemFlags RecordTableModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = CountedRows::flags(index);
    if (index.isValid() && !m_content.isTyped(index.column())) {
        flags.setFlag(Qt::ItemIsEditable, false);
    }
    return flags;
}

QVariant RecordTableModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || index.row() >= m_content.rowCount()) {
        return {};
    }
    switch (role) {
        case Qt::DisplayRole:
        case Qt::EditRole:
        case Qt::ToolTipRole:
            return m_content.text(index.row(), index.column());
        case Qt::TextAlignmentRole:
            return QVariant::fromValue(int(Qt::AlignVCenter) | int(Qt::AlignLeft));
        case Qt::AccessibleTextRole: {
            const QString text = m_content.text(index.row(), index.column());
            return QStringList{m_content.text(index.row(), 0), m_content.titles[index.column()],
                               text.isEmpty() ? tr("empty") : text}
                .join(QStringLiteral(", "));
        }
        case IsStrongRole:
            return index.column() == 0;
        default:
            return {};
    }
}

QVariant RecordTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= m_content.titles.size()) {
        return {};
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(int(Qt::AlignVCenter) | int(Qt::AlignLeft));
    }
    return role == Qt::DisplayRole ? QVariant(m_content.titles[section]) : QVariant();
}

base::Outcome RecordTableModel::store(const QModelIndex& cell, const QString& text) {
    return m_content.store(cell.row(), cell.column(), text);
}

}  // namespace ww::ui
