#include "ui/models/system_model.h"

#include <algorithm>

#include "core/project/names.h"
#include "ui/models/branch_roles.h"
#include "ui/text/format.h"
#include "ui/text/typed_word.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

bool isTextColumn(int column) {
    return column <= SystemModel::Valve;
}

}  // namespace

SystemModel::SystemModel(WorkbookBridge& bridge, QObject* parent)
    : QAbstractTableModel(parent), m_bridge(bridge) {
    connect(&bridge, &WorkbookBridge::changed, this, &SystemModel::refresh);
    reset();
}

std::vector<SystemModel::Row> SystemModel::rowsNow() const {
    const project::Project& project = m_bridge.project();
    const project::BranchTree& tree = project.tree();
    const std::vector<quantity::VolumeFlow> designs = project::designFlows(project);
    quantity::VolumeFlow total;
    for (const std::size_t terminal : tree.terminals()) {
        total += designs[terminal];
    }
    std::vector<Row> rows;
    rows.reserve(tree.size());
    // Depth first without recursion: a tree may be as deep as it is long.
    std::vector<std::pair<std::size_t, int>> open;
    for (auto root = tree.roots().rbegin(); root != tree.roots().rend(); ++root) {
        open.emplace_back(*root, 0);
    }
    while (!open.empty()) {
        const auto [branch, depth] = open.back();
        open.pop_back();
        const double share = total.si() > 0 ? designs[branch] / total : 0;
        rows.push_back(
            {branch, project.branches()[branch].id, depth, designs[branch], quantity::Ratio::si(share)});
        const auto children = tree.children(branch);
        for (auto child = children.rbegin(); child != children.rend(); ++child) {
            open.emplace_back(*child, depth + 1);
        }
    }
    return rows;
}

void SystemModel::reset() {
    beginResetModel();
    m_rows = rowsNow();
    endResetModel();
}

void SystemModel::refresh(const project::ChangeSet& changes) {
    using project::RecordKind;
    if (changes.isEmpty()) {
        reset();
        return;
    }
    const bool isShown = changes.touches(RecordKind::Branch) || changes.touches(RecordKind::ValveModel) ||
                         changes.touches(RecordKind::Job);
    if (!isShown) {
        return;  // readings do not change what was designed
    }
    std::vector<Row> now = rowsNow();
    const bool isSameTree =
        std::equal(now.begin(), now.end(), m_rows.begin(), m_rows.end(), [](const Row& a, const Row& b) {
            return a.id == b.id && a.depth == b.depth && a.branch == b.branch;
        });
    if (!isSameTree) {
        reset();
        return;
    }
    m_rows = std::move(now);
    if (!m_rows.empty()) {
        // One design flow changes every target share.
        emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
        emit headerDataChanged(Qt::Horizontal, 0, ColumnCount - 1);
    }
}

int SystemModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int SystemModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

Qt::ItemFlags SystemModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) {
        return Qt::NoItemFlags;
    }
    const int column = index.column();
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    flags.setFlag(Qt::ItemIsEditable, !m_bridge.isReadOnly() && column != FullyOpen &&
                                          column != TargetShare && column != MinimumDp);
    return flags;
}

QString SystemModel::cellText(const Row& row, int column) const {
    const project::Project& project = m_bridge.project();
    const project::Branch& branch = project.branches()[row.branch];
    const project::ValveModel* valve = branch.valve ? project.valves().find(*branch.valve) : nullptr;
    const curve::ValveCharacteristic* curve = project.characteristicOf(branch);
    switch (column) {
        case Tag:
            return QString::fromStdString(branch.tag);
        case Serves:
            return QString::fromStdString(branch.serves);
        case Parent: {
            const project::Branch* parent = branch.parent ? project.branches().find(*branch.parent) : nullptr;
            return parent != nullptr ? QString::fromStdString(parent->tag) : QString();
        }
        case Kind:
            return text::word(branch.kind);
        case Valve:
            return valve != nullptr ? QString::fromStdString(valve->model + " " + valve->size).trimmed()
                                    : QString();
        case Setting:
            return branch.setting
                       ? text::setting(quantity::Setting::si(branch.setting->value()), project, branch)
                       : QString();
        case FullyOpen:
            return curve == nullptr ? QString()
                                    : text::setting(curve->fullyOpen(), project, branch) + QChar(0xA0) +
                                          text::nameOf(valve->scale);
        case Design:
            if (branch.designFlow) {
                return text::entered(branch.designFlow);
            }
            return text::flow(row.design, project) + QChar(0xA0) + text::symbol(text::flowUnit(project));
        case TargetShare:
            return text::percent(row.targetShare);
        case RunLoss:
            return text::entered(branch.runLoss);
        case CircuitLoss:
            return text::entered(branch.circuitLoss);
        case MinimumDp:
            return valve != nullptr ? text::entered(valve->minimumDp) : QString();
        default:
            return {};
    }
}

QVariant SystemModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    const Row& row = m_rows[static_cast<std::size_t>(index.row())];
    const project::Branch& branch = m_bridge.project().branches()[row.branch];
    const int column = index.column();
    switch (role) {
        case Qt::DisplayRole:
            return cellText(row, column);
        case Qt::EditRole:
            if (column == Kind) {
                return text::nameOf(branch.kind);
            }
            if (column == Setting && branch.setting) {
                return QString::fromStdString(branch.setting->text());  // as it was typed
            }
            return column == Design && !branch.designFlow ? QString()
                                                          : cellText(row, column).replace(QChar(0xA0), ' ');
        case Qt::TextAlignmentRole:
            return QVariant::fromValue(int(Qt::AlignVCenter) |
                                       int(isTextColumn(column) ? Qt::AlignLeft : Qt::AlignRight));
        case Qt::AccessibleTextRole: {
            const QString value = cellText(row, column);
            return QStringList{
                cellText(row, Tag),
                headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().replace('\n', ' '),
                value.isEmpty() ? tr("empty") : value}
                .join(QStringLiteral(", "));
        }
        case DepthRole:
            return column == Tag ? row.depth : 0;
        case IsStrongRole:
            return column == Tag;
        case IsSoftRole:
            return column == FullyOpen || column == TargetShare || column == MinimumDp || column == Parent ||
                   (column == Design && !branch.designFlow);
        default:
            return {};
    }
}

QVariant SystemModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= ColumnCount) {
        return {};
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(int(Qt::AlignVCenter) |
                                   int(isTextColumn(section) ? Qt::AlignLeft : Qt::AlignRight));
    }
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) {
        return {};
    }
    const QString names[] = {tr("Tag"),         tr("Serves"),        tr("Fed by"),
                             tr("Kind"),        tr("Valve"),         tr("Setting\nfound"),
                             tr("Fully\nopen"), tr("Design\nflow"),  tr("Target\nshare %"),
                             tr("Run\nloss"),   tr("Circuit\nloss"), tr("Readable\nfrom")};
    static_assert(std::size(names) == ColumnCount, "a title for each column");
    return names[section];
}

int SystemModel::rowOf(const base::Id& branch) const {
    const auto found =
        std::find_if(m_rows.begin(), m_rows.end(), [&](const Row& row) { return row.id == branch; });
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

}  // namespace ww::ui
