#include "ui/models/field_table.h"

#include <algorithm>

#include "ui/models/branch_roles.h"

namespace ww::ui {

FieldTableModel::FieldTableModel(WorkbookBridge& bridge, FieldTableContent content, QObject* parent)
    : QAbstractTableModel(parent),
      m_bridge(bridge),
      m_content(std::move(content)),
      m_fields(m_content.fieldTitles()),
      m_records(m_content.recordTitles()) {
    connect(&bridge, &WorkbookBridge::changed, this, [this](const project::ChangeSet& changes) {
        const bool isOurs =
            changes.isEmpty() || std::any_of(m_content.kinds.begin(), m_content.kinds.end(),
                                             [&](project::RecordKind kind) { return changes.touches(kind); });
        if (isOurs) {
            renew();
        }
    });
}

void FieldTableModel::renew() {
    const QStringList fields = m_content.fieldTitles();
    const QStringList records = m_content.recordTitles();
    if (fields.size() != m_fields.size() || records.size() != m_records.size()) {
        beginResetModel();
        m_fields = fields;
        m_records = records;
        endResetModel();
        return;
    }
    m_fields = fields;
    m_records = records;
    if (rowCount() > 0) {
        emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
        emit headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
    }
}

int FieldTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_fields.size());
}

int FieldTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_records.size()) + 1;
}

Qt::ItemFlags FieldTableModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) {
        return Qt::NoItemFlags;
    }
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    const bool takes = index.column() > 0 && !m_bridge.isReadOnly() &&
                       (!m_content.takes || m_content.takes(index.column() - 1));
    flags.setFlag(Qt::ItemIsEditable, takes);
    return flags;
}

QVariant FieldTableModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    const auto text = [&] {
        return index.column() == 0 ? m_fields[index.row()] : m_content.text(index.row(), index.column() - 1);
    };
    switch (role) {
        case Qt::DisplayRole:
        case Qt::ToolTipRole:
            return text();
        case Qt::EditRole:
            return text().replace(QChar(0xA0), ' ');
        case Qt::TextAlignmentRole:
            return QVariant::fromValue(int(Qt::AlignVCenter) |
                                       int(index.column() == 0 ? Qt::AlignLeft : Qt::AlignRight));
        case Qt::AccessibleTextRole: {
            const QString value = text();
            return index.column() == 0 ? value
                                       : QStringList{m_records[index.column() - 1], m_fields[index.row()],
                                                     value.isEmpty() ? tr("empty") : value}
                                             .join(QStringLiteral(", "));
        }
        case IsStrongRole:
            return index.column() == 0;
        default:
            return {};
    }
}

QVariant FieldTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) {
        return {};
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(int(Qt::AlignVCenter) |
                                   int(section == 0 ? Qt::AlignLeft : Qt::AlignRight));
    }
    if (role != Qt::DisplayRole) {
        return {};
    }
    return section == 0 ? tr("Item") : m_records[section - 1];
}

base::Outcome FieldTableModel::store(const QModelIndex& cell, const QString& typed) {
    return m_content.store(cell.row(), cell.column() - 1, typed.trimmed());
}

}  // namespace ww::ui
