// What undo and redo would act on, as it follows from the journal alone: the same after reopening.
// Not for carrying it out.
#pragma once

#include <optional>
#include <vector>

#include "core/workbook/workbook.h"

namespace ww::workbook {

class UndoState {
  public:
    /// Takes the next journal entry into account; entries must come in order.
    void add(const JournalEntry& entry);

    /// Sequence of the action that undo takes back; nothing where there is none. An action that cannot be
    /// undone is a wall: nothing before it is undone either.
    std::optional<std::int64_t> toUndo() const;
    /// Sequence of the action that redo applies again.
    std::optional<std::int64_t> toRedo() const;

  private:
    std::vector<std::int64_t> m_done;
    std::vector<std::int64_t> m_undone;
};

}  // namespace ww::workbook
