// How the records of a job hang together: what each refers to, whom it names, which table holds it.
// Not for what a job refuses (edit_rules.h).
#pragma once

#include <functional>
#include <string>

#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::workbook {

/// Calls `visit(kind, id)` for everything that a record refers to.
void eachReference(const project::AnyRecord& any,
                   const std::function<void(project::RecordKind, const project::Id&)>& visit);

/// Whether a record keeps this name of a person: who sent, decided, wrote or signed it.
bool namesPerson(const project::AnyRecord& any, const std::string& person);

/// Whether the job has a record of this kind and id.
bool isIn(const project::Project& project, project::RecordKind kind, const project::Id& id);

/// The name that must be unique among records of one kind; empty where there is none.
std::string uniqueName(const project::AnyRecord& any);

/// What a refusal calls a record of that kind.
std::string wordFor(project::RecordKind kind);

/// Calls `visit(table)` for every table of the job, the job's own record left out.
template <class Visit>
void eachTable(const project::Project& project, Visit visit) {
    visit(project.branches());
    visit(project.valves());
    visit(project.pumps());
    visit(project.instruments());
    visit(project.people());
    visit(project.rounds());
    visit(project.readings());
    visit(project.pumpReadings());
    visit(project.setPoints());
    visit(project.readiness());
    visit(project.deficiencies());
    visit(project.comments());
    visit(project.attachments());
    visit(project.findingReasons());
    visit(project.signedReports());
    visit(project.mergeConflicts());
}

}  // namespace ww::workbook
