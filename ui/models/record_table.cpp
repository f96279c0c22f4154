#include "ui/models/record_table.h"

namespace ww::ui {

RecordTableModel::RecordTableModel(WorkbookBridge& bridge, RecordTableContent content, QObject* parent)
    : CountedRows(
          bridge, content.kind,
          [count = content.rowCount](const project::Project&) { return static_cast<std::size_t>(count()); },
          parent),
      m_content(std::move(content)) {}

Qt::ItemFlags RecordTableModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = CountedRows::flags(index);
    if (index.isValid() && !m_content.isTyped(index.column())) {
        flags.setFlag(Qt::ItemIsEditable, false);
    }
    return flags;
}

QVariant RecordTableModel::data(const QModelIndex& index, int role) const {
    return CountedRows::data(index, role == Qt::ToolTipRole ? int(Qt::DisplayRole) : role);
}

base::Outcome RecordTableModel::store(const QModelIndex& cell, const QString& text) {
    return m_content.store(cell.row(), cell.column(), text);
}

}  // namespace ww::ui
