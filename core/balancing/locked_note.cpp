#include "core/balancing/locked_note.h"

#include "core/balancing/standing_readings.h"
#include "core/project/edit_label.h"

namespace ww::balancing {

project::Edit noteAnew(const project::Project& project, const base::Id& reading, std::string note,
                       base::IdSource& ids) {
    const project::Reading& before = project.readings().at(reading);
    project::Edit edit;
    edit.label = project::label(note.empty() ? project::labels::kNoNote : project::labels::kNote,
                                {project.branches().at(before.branch).tag});
    if (before.note == note) {
        return edit;
    }
    project::Reading old = before;
    old.status = project::ReadingStatus::Superseded;
    project::Reading made = before;
    made.id = ids.next();
    made.sequence = nextSequence(project, before.round);
    made.supersedes = before.id;
    made.note = std::move(note);
    edit.put.emplace_back(std::move(old));
    edit.put.emplace_back(std::move(made));
    return edit;
}

}  // namespace ww::balancing
