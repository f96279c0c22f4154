#include "core/workbook/edited_project.h"

#include "core/project/names.h"

namespace ww::workbook {

using project::AnyRecord;
using project::Branch;
using project::Edit;
using project::Project;
using project::PumpReading;
using project::Reading;

EditedProject::EditedProject(const Project& before, const Edit& edit) : m_before(before) {
    for (const project::RecordRef& record : edit.erase) {
        m_erased.insert(record.id);
    }
    for (const AnyRecord& record : edit.put) {
        m_put[project::idOf(record)] = &record;
        m_erased.erase(project::idOf(record));
    }
}

std::string EditedProject::nameFor(const AnyRecord& record) const {
    if (const auto* reading = std::get_if<Reading>(&record)) {
        const Branch* branch = after(m_before.branches(), reading->branch);
        return branch == nullptr ? "" : branch->tag;
    }
    if (const auto* reading = std::get_if<PumpReading>(&record)) {
        const project::Pump* pump = after(m_before.pumps(), reading->pump);
        return pump == nullptr ? "" : pump->tag;
    }
    return project::nameOf(record);
}

}  // namespace ww::workbook
