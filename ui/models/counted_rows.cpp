#include "ui/models/counted_rows.h"

#include <utility>

#include "ui/models/branch_roles.h"

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

int CountedRows::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(titles().size());
}

QVariant CountedRows::alignment(int column) const {
    return QVariant::fromValue(int(Qt::AlignVCenter) |
                               int(isNumber(column) ? Qt::AlignRight : Qt::AlignLeft));
}

QVariant CountedRows::data(const QModelIndex& index, int role) const {
    // A record may be gone before the views are told.
    const bool isThere = checkIndex(index, CheckIndexOption::IndexIsValid) &&
                         static_cast<std::size_t>(index.row()) < m_count(m_bridge.project());
    if (!isThere) {
        return {};
    }
    switch (role) {
        case Qt::DisplayRole:
            return cellText(index.row(), index.column());
        case Qt::EditRole:
            // Between digits and unit a person types a plain space.
            return cellText(index.row(), index.column()).replace(QChar(0xA0), ' ');
        case Qt::TextAlignmentRole:
            return alignment(index.column());
        case Qt::AccessibleTextRole: {
            const QString text = cellText(index.row(), index.column());
            return QStringList{cellText(index.row(), 0), titles()[index.column()],
                               text.isEmpty() ? tr("empty") : text}
                .join(QStringLiteral(", "));
        }
        case IsStrongRole:
            return index.column() == 0;
        default:
            return {};
    }
}

QVariant CountedRows::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) {
        return {};
    }
    if (role == Qt::TextAlignmentRole) {
        return alignment(section);
    }
    return role == Qt::DisplayRole ? QVariant(titles()[section]) : QVariant();
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
