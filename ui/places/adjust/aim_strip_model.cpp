#include "ui/places/adjust/aim_strip_model.h"

#include <cmath>

#include "ui/models/branch_roles.h"
#include "ui/text/format.h"

namespace ww::ui {

AimStripModel::AimStripModel(const WorkbookBridge& bridge, const ValveInHand& valve, QObject* parent)
    : QAbstractTableModel(parent), m_bridge(bridge), m_valve(valve) {}

int AimStripModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : RowCount;
}

int AimStripModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : kColumns;
}

void AimStripModel::refresh() {
    emit dataChanged(index(0, 0), index(RowCount - 1, kColumns - 1));
    emit headerDataChanged(Qt::Vertical, 0, RowCount - 1);
}

int AimStripModel::currentColumn() const {
    const auto& rows = m_valve.rows();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (std::abs((rows[i].setting - m_valve.setting()).si()) < 1e-6) {
            return static_cast<int>(i);
        }
    }
    return -1;
}

QString AimStripModel::cell(int row, int column) const {
    const auto at = static_cast<std::size_t>(column);
    if (at >= m_valve.rows().size()) {
        return {};
    }
    const balancing::AimRow& aim = m_valve.rows()[at];
    const project::Project& project = m_bridge.project();
    const auto words = [&](quantity::PressureDifference dp) {
        return text::dp(dp, text::dpUnit(project, m_bridge.instrument()), project.fluid());
    };
    switch (row) {
        case SettingRow:
            return QString::fromStdString(m_valve.settingText(aim.setting).text());
        case AimRow:
            return words(aim.dp);
        case HoldRow:
            return words(aim.low) + QChar(0x2013) + words(aim.high);
        case ExpectRow: {
            const auto& expected = m_valve.expected();
            return at < expected.size() && expected[at] ? words(*expected[at]) : QString(QChar(0x2013));
        }
        default:
            return {};
    }
}

QVariant AimStripModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    const bool isCurrent = index.column() == currentColumn();
    switch (role) {
        case Qt::DisplayRole:
            return cell(index.row(), index.column());
        case Qt::TextAlignmentRole:
            return int(Qt::AlignCenter);
        case Qt::AccessibleTextRole:
            return tr("setting %1, %2, %3")
                .arg(cell(SettingRow, index.column()),
                     headerData(index.row(), Qt::Vertical, Qt::DisplayRole).toString(),
                     cell(index.row(), index.column()));
        case IsStrongRole:
            return isCurrent;
        default:
            return {};
    }
}

QVariant AimStripModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Vertical || (role != Qt::DisplayRole && role != Qt::AccessibleTextRole)) {
        return {};
    }
    const QString unit = text::symbol(text::dpUnit(m_bridge.project(), m_bridge.instrument()));
    const QString names[RowCount] = {tr("setting"), tr("aim %1").arg(unit), tr("hold %1").arg(unit),
                                     tr("expect %1").arg(unit)};
    return section >= 0 && section < RowCount ? names[section] : QVariant();
}

}  // namespace ww::ui
