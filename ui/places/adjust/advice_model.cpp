#include "ui/places/adjust/advice_model.h"

#include <algorithm>

#include "core/balancing/adjusting.h"
#include "ui/models/branch_roles.h"
#include "ui/text/format.h"

namespace ww::ui {
namespace {

QString percent(const balancing::ExpectedShare& share) {
    return QStringLiteral("%1 ± %2").arg(
        QString::number(share.ofTarget.in(quantity::Unit::Percent), 'f', 0),
        QString::number(share.uncertainty.in(quantity::Unit::Percent), 'f', 1));
}

}  // namespace

AdviceModel::AdviceModel(const WorkbookBridge& bridge, const LoopAdvisor& advisor, QObject* parent)
    : QAbstractTableModel(parent), m_bridge(bridge), m_advisor(advisor) {
    connect(&advisor, &LoopAdvisor::changed, this, [this] {
        if (m_advisor.picture() == nullptr && m_shown != nullptr) {
            refresh();
        }
    });
}

void AdviceModel::setInHand(const std::optional<base::Id>& branch,
                            std::optional<balancing::AdviceStand> stand) {
    m_inHand = branch;
    m_stand = stand;
}

void AdviceModel::refresh() {
    auto next = m_advisor.sharedPicture();
    const int count = next != nullptr ? static_cast<int>(next->advice.settings.size()) : 0;
    if (count != rowCount()) {
        beginResetModel();
        m_shown = std::move(next);
        putInOrder();
        endResetModel();
    } else {
        m_shown = std::move(next);
        putInOrder();
        if (count > 0) {
            emit dataChanged(index(0, 0), index(count - 1, ColumnCount - 1));
        }
    }
    emit headerDataChanged(Qt::Horizontal, 0, ColumnCount - 1);
}

void AdviceModel::setWork(std::vector<std::size_t> order, const std::optional<base::Id>& offered) {
    m_order = std::move(order);
    m_offered = offered;
}

void AdviceModel::putInOrder() {
    m_rows.clear();
    m_ordered = 0;
    if (m_shown == nullptr) {
        return;
    }
    const auto& settings = m_shown->advice.settings;
    std::vector<std::size_t> place(m_bridge.project().branches().size(), m_order.size());
    for (std::size_t i = 0; i < m_order.size(); ++i) {
        place[m_order[i]] = i;
    }
    for (std::size_t i = 0; i < settings.size(); ++i) {
        m_rows.push_back(i);
        m_ordered += place[settings[i].branch] < m_order.size() ? 1 : 0;
    }
    std::stable_sort(m_rows.begin(), m_rows.end(), [&](std::size_t left, std::size_t right) {
        return place[settings[left].branch] < place[settings[right].branch];
    });
}

int AdviceModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() || m_shown == nullptr ? 0 : static_cast<int>(m_shown->advice.settings.size());
}

int AdviceModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

const balancing::SettingAdvice& AdviceModel::at(int row) const {
    return m_shown->advice.settings[m_rows[static_cast<std::size_t>(row)]];
}

const base::Id& AdviceModel::branchAt(int row) const {
    return m_bridge.project().branches()[at(row).branch].id;
}

int AdviceModel::rowOf(const base::Id& branch) const {
    for (int row = 0; row < rowCount(); ++row) {
        if (branchAt(row) == branch) {
            return row;
        }
    }
    return -1;
}

QString AdviceModel::settingOf(const balancing::SettingAdvice& advised, quantity::Setting setting) const {
    const project::Project& project = m_bridge.project();
    return text::setting(setting, project, project.branches()[advised.branch]);
}

bool AdviceModel::isLeft(const balancing::SettingAdvice& advised) const {
    return m_shown->advice.status == balancing::AdviceStatus::Verified && advised.present && !advised.isSet &&
           balancing::indexStepAt(m_shown->advice, advised.branch) == nullptr;
}

quantity::Setting AdviceModel::askedFor(const balancing::SettingAdvice& advised) const {
    if (const auto* step = balancing::indexStepAt(m_shown->advice, advised.branch)) {
        return step->setting;
    }
    return isLeft(advised) ? *advised.present : advised.setting;
}

QString AdviceModel::doneNow(const balancing::SettingAdvice& advised) const {
    const base::Id& branch = m_bridge.project().branches()[advised.branch].id;
    if (const auto* step = balancing::indexStepAt(m_shown->advice, advised.branch)) {
        return tr("open to %1").arg(settingOf(advised, step->setting));
    }
    if (!advised.isSet && balancing::isHeld(m_bridge.project(), branch)) {
        return tr("held");
    }
    if (isLeft(advised)) {
        return tr("leave it");
    }
    if (m_inHand == branch && m_stand) {
        switch (*m_stand) {
            case balancing::AdviceStand::HoldsToEnd:
                return tr("leave it");
            case balancing::AdviceStand::HoldsForNow:
                return tr("hold for now");
            case balancing::AdviceStand::ReadingLeads:
                return tr("by the reading");
            case balancing::AdviceStand::Agrees:
                return {};
        }
    }
    return {};
}

QString AdviceModel::cell(const balancing::SettingAdvice& advised, int row, int column) const {
    const project::Project& project = m_bridge.project();
    const bool hasSetting = advised.reach != balancing::BalanceReach::NoValve &&
                            advised.reach != balancing::BalanceReach::SelfActing &&
                            advised.reach != balancing::BalanceReach::NoFlow;
    const bool isOfSetting = column == AimDp || column == AsRead || column == InTruth;
    const auto isAskedFor = [&] {
        return !hasSetting || settingOf(advised, askedFor(advised)) == settingOf(advised, advised.setting);
    };
    // What is expected at another setting than the one asked for says nothing here.
    if ((column == SetTo && !isReady()) || (isOfSetting && (!isReady() || !isAskedFor()))) {
        return {};
    }
    switch (column) {
        case Order:
            return static_cast<std::size_t>(row) < m_ordered ? QString::number(row + 1) : QString();
        case Tag:
            return QString::fromStdString(project.branches()[advised.branch].tag);
        case Now:
            return advised.present ? settingOf(advised, *advised.present) : QString();
        case SetTo:
            return hasSetting ? settingOf(advised, askedFor(advised)) : QString();
        case AimDp:
            return hasSetting && !isLeft(advised)
                       ? text::dp(advised.dp, text::dpUnit(project, m_bridge.instrument()), project.fluid())
                       : QString();
        case AsRead:
            return percent(advised.indicated);
        case InTruth:
            return percent(advised.actual);
        case Note:
            if (!hasSetting) {
                return advised.reach == balancing::BalanceReach::SelfActing ? tr("self-acting")
                                                                            : tr("cannot be set");
            }
            if (const QString now = doneNow(advised); !now.isEmpty()) {
                return now;
            }
            if (!isReady()) {
                return {};
            }
            if (advised.reach == balancing::BalanceReach::BelowScale) {
                return tr("scale too short");
            }
            if (advised.isFullyOpen) {
                return tr("fully open");
            }
            return advised.isSet ? tr("set") : QString();
        default:
            return {};
    }
}

QVariant AdviceModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    const balancing::SettingAdvice& advised = at(index.row());
    const QString words = cell(advised, index.row(), index.column());
    switch (role) {
        case Qt::DisplayRole:
            return words;
        case Qt::TextAlignmentRole:
            return int(Qt::AlignVCenter) |
                   int(index.column() == Tag || index.column() == Note ? Qt::AlignLeft : Qt::AlignRight);
        case IsStrongRole:
            // What the hand goes to.
            return (index.column() == SetTo || index.column() == AimDp) &&
                   m_offered == m_bridge.project().branches()[advised.branch].id;
        case Qt::AccessibleTextRole:
            return QStringLiteral("%1, %2, %3")
                .arg(cell(advised, index.row(), Tag),
                     headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                     words.isEmpty() ? tr("empty") : words);
        default:
            return {};
    }
}

QVariant AdviceModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= ColumnCount) {
        return {};
    }
    if (role == Qt::TextAlignmentRole) {
        return int(Qt::AlignVCenter) |
               int(section == Tag || section == Note ? Qt::AlignLeft : Qt::AlignRight);
    }
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) {
        return {};
    }
    const QString unit = text::symbol(text::dpUnit(m_bridge.project(), m_bridge.instrument()));
    const QString names[ColumnCount] = {
        tr("Order"),      tr("Tag"),         tr("Now"),   tr("Set to"), tr("All set %1").arg(unit),
        tr("As read, %"), tr("In truth, %"), tr("Remark")};
    return names[section];
}

}  // namespace ww::ui
