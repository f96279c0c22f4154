#include "ui/models/counted_rows.h"

#include <utility>

namespace ww::ui {

CountedRows::CountedRows(WorkbookBridge& bridge, project::RecordKind kind,
                         std::function<std::size_t(const project::Project&)> count, QObject* parent)
    : QAbstractTableModel(parent),
      m_bridge(bridge),
      m_kind(kind),
      m_count(std::move(count)),
      m_rowCount(static_cast<int>(m_count(bridge.project()))) {
    connect(&bridge, &WorkbookBridge::changed, this, &CountedRows::follow);
}

void CountedRows::follow(const project::ChangeSet& changes) {
    const bool isOther = changes.isEmpty() || !changes.erased.empty();
    const int count = static_cast<int>(m_count(m_bridge.project()));
    if (isOther || count < m_rowCount) {
        beginResetModel();
        m_rowCount = count;
        endResetModel();
    } else if (changes.touches(m_kind)) {
        if (count > m_rowCount) {
            beginInsertRows({}, m_rowCount, count - 1);
            m_rowCount = count;
            endInsertRows();
        }
        emit dataChanged(index(0, 0), index(count - 1, columnCount() - 1));
    }
}

int CountedRows::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : m_rowCount;
}

Qt::ItemFlags CountedRows::flags(const QModelIndex& index) const {
    if (!index.isValid()) {
        return Qt::NoItemFlags;
    }
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    flags.setFlag(Qt::ItemIsEditable, !m_bridge.isReadOnly());
    return flags;
}

}  // namespace ww::ui
