// The rows of a walk: which valves they are, what changes them, how they are found.
#include "ui/models/walk_model.h"

#include "core/balancing/standing_readings.h"
#include "core/balancing/walk.h"
#include "ui/models/branch_finder.h"

namespace ww::ui {
namespace {

bool showsTheSame(const balancing::BranchResult& a, const balancing::BranchResult& b) {
    return a.setting == b.setting && a.dp == b.dp && a.flow == b.flow && a.share == b.share &&
           a.targetShare == b.targetShare && a.ofTarget == b.ofTarget && a.state == b.state &&
           a.isFromEarlierRound == b.isFromEarlierRound && a.reading == b.reading &&
           a.unreadable == b.unreadable && a.flowLow == b.flowLow;
}

}  // namespace

WalkModel::WalkModel(WorkbookBridge& bridge, QObject* parent)
    : QAbstractTableModel(parent), m_bridge(bridge) {
    connect(&bridge, &WorkbookBridge::changed, this, &WalkModel::refresh);
    connect(&bridge, &WorkbookBridge::instrumentChanged, this, [this] {
        // The unit of the dp columns follows the meter.
        emit headerDataChanged(Qt::Horizontal, Dp, Last);
        repaintRows(std::vector<bool>(m_rows.size(), true));
    });
    reset();
}

void WalkModel::reset() {
    beginResetModel();
    const project::Project& project = m_bridge.project();
    m_rows.clear();
    m_hasFlowEntry = false;
    m_rowOf.clear();
    m_earlier.clear();
    const project::BranchTree& tree = project.tree();
    for (const std::size_t branch : tree.walkingOrder()) {
        const project::Branch& record = project.branches()[branch];
        if (tree.isTerminal(branch) || record.valve) {
            m_rowOf.emplace(record.id, static_cast<int>(m_rows.size()));
            const bool isReadByFlow = balancing::isReadByFlow(project, record);
            m_rows.push_back({branch, record.id, isReadByFlow});
            m_hasFlowEntry = m_hasFlowEntry || isReadByFlow;
        }
    }
    m_shown = m_bridge.assessment();
    endResetModel();
}

void WalkModel::refresh(const project::ChangeSet& changes) {
    using project::RecordKind;
    for (const RecordKind kind : {RecordKind::Job, RecordKind::ValveModel, RecordKind::Branch,
                                  RecordKind::Round, RecordKind::Instrument}) {
        if (changes.isEmpty() || changes.touches(kind)) {
            reset();
            return;
        }
    }
    balancing::Assessment before = std::move(m_shown);
    m_shown = m_bridge.assessment();
    // An erased record no longer says which row was its own.
    const bool isAllChanged = before.isComplete != m_shown.isComplete || !changes.erased.empty();
    std::vector<bool> isChanged(m_rows.size(), isAllChanged);
    for (std::size_t i = 0; i < m_rows.size() && !isAllChanged; ++i) {
        isChanged[i] = !showsTheSame(before.branches[m_rows[i].branch], m_shown.branches[m_rows[i].branch]);
    }
    const auto mark = [&isChanged](int row) {
        if (row >= 0) {
            isChanged[static_cast<std::size_t>(row)] = true;
        }
    };
    for (const project::RecordRef& ref : changes.put) {
        if (ref.kind == RecordKind::Comment) {
            const project::Comment* comment = m_bridge.project().comments().find(ref.id);
            mark(comment != nullptr && comment->branch ? rowOf(*comment->branch) : -1);
        }
        if (ref.kind == RecordKind::Reading) {
            const project::Reading* reading = m_bridge.project().readings().find(ref.id);
            mark(reading != nullptr ? rowOf(reading->branch) : -1);
        }
    }
    repaintRows(isChanged);
}

void WalkModel::repaintRows(const std::vector<bool>& isChanged) {
    for (std::size_t from = 0; from < isChanged.size(); ++from) {
        if (!isChanged[from]) {
            continue;
        }
        std::size_t to = from;
        while (to + 1 < isChanged.size() && isChanged[to + 1]) {
            ++to;
        }
        emit dataChanged(index(static_cast<int>(from), 0), index(static_cast<int>(to), ColumnCount - 1));
        from = to;
    }
}

int WalkModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int WalkModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

Qt::ItemFlags WalkModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) {
        return Qt::NoItemFlags;
    }
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    flags.setFlag(Qt::ItemIsEditable,
                  index.column() == Setting || index.column() == entryColumn(index.row()));
    return flags;
}

const balancing::BranchResult& WalkModel::result(int row) const {
    return m_shown.branches[m_rows[static_cast<std::size_t>(row)].branch];
}

const project::Reading* WalkModel::reading(int row) const {
    const balancing::BranchResult& shown = result(row);
    const std::optional<base::Id>& own = shown.isFromEarlierRound ? shown.unreadable : shown.reading;
    return own ? m_bridge.project().readings().find(*own) : nullptr;
}

const project::Reading* WalkModel::earlier(int row) const {
    if (!m_shown.round) {
        return nullptr;
    }
    const base::Id& branch = branchAt(row);
    const auto [found, isNew] = m_earlier.try_emplace(branch);
    if (isNew) {
        const project::Reading* reading =
            balancing::earlierReading(m_bridge.project(), *m_shown.round, branch);
        found->second = reading != nullptr ? reading->id : base::Id{};
    }
    return found->second.isNull() ? nullptr : m_bridge.project().readings().find(found->second);
}

bool WalkModel::hasOwnReading(int row) const {
    const project::Reading* own = reading(row);
    return own != nullptr && (own->dp || own->flow);
}

balancing::State WalkModel::stateOf(int row) const {
    return result(row).isFromEarlierRound ? balancing::State::NotRead : result(row).state;
}

WalkModel::Column WalkModel::entryColumn(int row) const {
    return m_rows[static_cast<std::size_t>(row)].isReadByFlow ? Flow : Dp;
}

QModelIndex WalkModel::entryCell(int row) const {
    return row >= 0 && row < rowCount() ? index(row, entryColumn(row)) : QModelIndex();
}

int WalkModel::rowOf(const base::Id& branch) const {
    const auto found = m_rowOf.find(branch);
    return found == m_rowOf.end() ? -1 : found->second;
}

int WalkModel::rowFound(const QString& text) const {
    std::vector<std::size_t> order;
    for (const Row& row : m_rows) {
        order.push_back(row.branch);
    }
    const auto place = placeFound(m_bridge.project(), order, text);
    return place ? static_cast<int>(*place) : -1;
}

bool WalkModel::isUnread(int row) const {
    const project::Reading* own = reading(row);
    return own == nullptr || (!own->dp && !own->flow && !own->cannotBeRead);
}

int WalkModel::unreadAfter(int row) const {
    for (int step = 1; step <= rowCount(); ++step) {
        const int candidate = (row + step) % rowCount();
        if (isUnread(candidate)) {
            return candidate;
        }
    }
    return -1;
}

}  // namespace ww::ui
