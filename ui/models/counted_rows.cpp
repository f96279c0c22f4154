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
    if (!changes.isEmpty() && !changes.touches(m_kind)) {
        return;
    }
    const int count = static_cast<int>(m_count(m_bridge.project()));
    if (changes.isEmpty() || !changes.erased.empty() || count < m_rowCount) {
        renew();
        return;
    }
    if (count > m_rowCount) {
        beginInsertRows({}, m_rowCount, count - 1);
        m_rowCount = count;
        endInsertRows();
    }
    if (count > 0) {
        emit dataChanged(index(0, 0), index(count - 1, columnCount() - 1));
    }
}

void CountedRows::renew() {
    beginResetModel();
    m_rowCount = static_cast<int>(m_count(m_bridge.project()));
    endResetModel();
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
