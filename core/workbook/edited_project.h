// A job together with an edit that is looked at before it is carried out: what stays, what will be.
// Not for carrying it out (workbook.h).
#pragma once

#include <string>
#include <unordered_map>
#include <unordered_set>
#include <variant>

#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::workbook {

/// Borrows both job and edit, which must outlive it.
class EditedProject {
  public:
    EditedProject(const project::Project& before, const project::Edit& edit);

    /// The job before the edit.
    const project::Project& before() const { return m_before; }
    /// What the edit puts, by id.
    const std::unordered_map<project::Id, const project::AnyRecord*>& put() const { return m_put; }
    /// What the edit erases and does not put again.
    const std::unordered_set<project::Id>& erased() const { return m_erased; }

    bool isUntouched(const project::Id& id) const { return !m_put.contains(id) && !m_erased.contains(id); }
    /// A record of one of the job's tables as it will be after the edit; null where it will not be.
    template <class R>
    const R* after(const project::RecordTable<R>& table, const project::Id& id) const {
        if (const auto put = m_put.find(id); put != m_put.end()) {
            return std::get_if<R>(put->second);
        }
        return m_erased.contains(id) ? nullptr : table.find(id);
    }
    /// How people call a record: a reading by the place it was read at.
    std::string nameFor(const project::AnyRecord& record) const;

  private:
    const project::Project& m_before;
    std::unordered_map<project::Id, const project::AnyRecord*> m_put;
    std::unordered_set<project::Id> m_erased;
};

}  // namespace ww::workbook
