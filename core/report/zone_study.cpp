#include "core/report/zone_study.h"

#include "core/balancing/assess.h"
#include "core/report/detail/pump_words.h"
#include "core/report/detail/sections.h"
#include "core/report/pump_sections.h"

namespace ww::report {

Report zoneStudy(const project::Project& project, const pump_room::WhatIf& whatIf,
                 const ReportOptions& options) {
    Report study;
    study.kind = ReportKind::Study;
    study.jobName = project.job().name;
    study.simulated = detail::simulated(project);
    study.digest = options.journalDigest.substr(0, 12);
    study.journalDigest = options.journalDigest;
    study.workbookId = options.workbookId;
    study.printed = options.printed;
    const project::Round* last = project.lastRound();
    study.roundNumber = last == nullptr ? 0 : last->number;
    const project::Job& job = project.job();
    if (!job.site.empty() || !job.client.empty()) {
        study.titleLines.push_back(job.site + (job.site.empty() || job.client.empty() ? "" : " · ") +
                                   job.client);
    }
    Section section = zoneSection(whatIf);
    section.number = kResult;
    section.closing.push_back(detail::say(last == nullptr ? detail::kStudyOnDesign : detail::kStudyOnRound,
                                          {std::to_string(study.roundNumber)}));
    section.closing.push_back(detail::say(detail::kStudyCaution));
    study.sections.push_back(std::move(section));
    return study;
}

}  // namespace ww::report
