// A practice job that was surveyed, set by the advice and read again: tags of two parts, states that changed,
// several rounds. Not for the practice itself.
#pragma once

#include "core/practice/practice_job.h"
#include "tests/support/demo_project.h"
#include "tests/support/guided_practice.h"

namespace ww::support {

inline project::Edit workedPractice() {
    const practice::PracticeKey key{practice::Difficulty::Steady, 17};
    const practice::PracticeJob made(key);
    GuidedPractice technician(made.building());
    technician.walk(project::RoundKind::Survey);
    technician.set(technician.advise(technician.learn()));
    technician.walk(project::RoundKind::Adjusting);
    project::Project project = technician.project();
    project::Job job = project.job();
    job.practice = practice::text(key);
    job.name = "Practice building";
    project.put(job);
    return contentOf(project);
}

}  // namespace ww::support
