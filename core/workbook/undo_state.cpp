#include "core/workbook/undo_state.h"

namespace ww::workbook {

void UndoState::add(const JournalEntry& entry) {
    if (entry.undoes) {
        if (!m_done.empty()) {
            m_done.pop_back();
        }
        m_undone.push_back(*entry.undoes);
        return;
    }
    if (entry.redoes) {
        if (!m_undone.empty()) {
            m_undone.pop_back();
        }
        m_done.push_back(*entry.redoes);
        return;
    }
    m_undone.clear();
    if (entry.isPartOfMerge) {
        return;
    }
    if (entry.canUndo) {
        m_done.push_back(entry.sequence);
    } else {
        m_done.clear();
    }
}

std::optional<std::int64_t> UndoState::toUndo() const {
    return m_done.empty() ? std::nullopt : std::optional(m_done.back());
}

std::optional<std::int64_t> UndoState::toRedo() const {
    return m_undone.empty() ? std::nullopt : std::optional(m_undone.back());
}

}  // namespace ww::workbook
