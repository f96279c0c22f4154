#include "ui/places/pump/circuit_list.h"

#include <algorithm>
#include <utility>

namespace ww::ui {

void CircuitList::show(std::vector<CircuitEntry> entries) {
    beginResetModel();
    m_entries = std::move(entries);
    endResetModel();
}

int CircuitList::rowOf(int branch) const {
    const auto found = std::find_if(m_entries.begin(), m_entries.end(),
                                    [&](const CircuitEntry& entry) { return entry.branch == branch; });
    return found == m_entries.end() ? -1 : static_cast<int>(found - m_entries.begin());
}

int CircuitList::longestName() const {
    qsizetype longest = 0;
    for (const CircuitEntry& entry : m_entries) {
        longest = std::max(longest, entry.name.size());
    }
    return static_cast<int>(longest);
}

int CircuitList::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_entries.size());
}

QVariant CircuitList::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    const CircuitEntry& entry = m_entries[static_cast<std::size_t>(index.row())];
    switch (role) {
        case Qt::DisplayRole:
        case Qt::EditRole:
            return entry.name;
        case Qt::UserRole:
            return entry.branch;
        default:
            return {};
    }
}

}  // namespace ww::ui
