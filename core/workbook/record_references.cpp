#include "core/workbook/record_references.h"

#include "core/project/names.h"

namespace ww::workbook {

using project::AnyRecord;
using project::Branch;
using project::Id;
using project::Project;
using project::PumpReading;
using project::Reading;
using project::RecordKind;
using project::Round;

void eachReference(const AnyRecord& any, const std::function<void(RecordKind, const Id&)>& visit) {
    const auto visitOptional = [&](RecordKind kind, const std::optional<Id>& id) {
        if (id) {
            visit(kind, *id);
        }
    };
    if (const auto* branch = std::get_if<Branch>(&any)) {
        visitOptional(RecordKind::Branch, branch->parent);
        visitOptional(RecordKind::ValveModel, branch->valve);
        for (const project::EarlierDesign& design : branch->earlierDesigns) {
            visit(RecordKind::Round, design.round);
        }
    } else if (const auto* reading = std::get_if<Reading>(&any)) {
        visit(RecordKind::Round, reading->round);
        visit(RecordKind::Branch, reading->branch);
        visitOptional(RecordKind::Instrument, reading->instrument);
        visitOptional(RecordKind::Person, reading->person);
        visitOptional(RecordKind::Reading, reading->supersedes);
    } else if (const auto* pumpReading = std::get_if<PumpReading>(&any)) {
        visit(RecordKind::Round, pumpReading->round);
        visit(RecordKind::Pump, pumpReading->pump);
        visitOptional(RecordKind::Instrument, pumpReading->instrument);
        visitOptional(RecordKind::Person, pumpReading->person);
        visitOptional(RecordKind::PumpReading, pumpReading->supersedes);
    } else if (const auto* round = std::get_if<Round>(&any)) {
        for (const project::SampleRow& row : round->sample) {
            visit(RecordKind::Branch, row.branch);
        }
    } else if (const auto* point = std::get_if<project::SetPoint>(&any)) {
        visitOptional(RecordKind::Pump, point->pump);
    } else if (const auto* deficiency = std::get_if<project::Deficiency>(&any)) {
        visitOptional(RecordKind::Branch, deficiency->branch);
        visitOptional(RecordKind::Pump, deficiency->pump);
        visitOptional(RecordKind::Reading, deficiency->reading);
        visitOptional(RecordKind::Reading, deficiency->retestReading);
    } else if (const auto* comment = std::get_if<project::Comment>(&any)) {
        visitOptional(RecordKind::Round, comment->round);
        visitOptional(RecordKind::Branch, comment->branch);
        visitOptional(RecordKind::Pump, comment->pump);
        visitOptional(RecordKind::Comment, comment->answers);
    } else if (const auto* attachment = std::get_if<project::Attachment>(&any)) {
        visitOptional(RecordKind::Branch, attachment->branch);
        visitOptional(RecordKind::Deficiency, attachment->deficiency);
    }
}

bool namesPerson(const AnyRecord& any, const std::string& person) {
    if (const auto* round = std::get_if<Round>(&any)) {
        return round->sentBy == person || round->decidedBy == person;
    }
    if (const auto* line = std::get_if<project::ReadinessLine>(&any)) {
        return line->owner == person;
    }
    if (const auto* deficiency = std::get_if<project::Deficiency>(&any)) {
        return deficiency->raisedBy == person;
    }
    if (const auto* comment = std::get_if<project::Comment>(&any)) {
        return comment->person == person || comment->resolvedBy == person;
    }
    if (const auto* attachment = std::get_if<project::Attachment>(&any)) {
        return attachment->person == person;
    }
    if (const auto* reason = std::get_if<project::FindingReason>(&any)) {
        return reason->person == person;
    }
    if (const auto* report = std::get_if<project::SignedReport>(&any)) {
        return report->signer == person;
    }
    if (const auto* conflict = std::get_if<project::MergeConflict>(&any)) {
        return conflict->decidedBy == person;
    }
    if (const auto* offset = std::get_if<project::ClockOffset>(&any)) {
        return offset->person == person;
    }
    return false;
}

bool isIn(const Project& project, RecordKind kind, const Id& id) {
    switch (kind) {
        case RecordKind::Job:
            return project.job().id == id;
        case RecordKind::ValveModel:
            return project.valves().contains(id);
        case RecordKind::Branch:
            return project.branches().contains(id);
        case RecordKind::Pump:
            return project.pumps().contains(id);
        case RecordKind::Instrument:
            return project.instruments().contains(id);
        case RecordKind::Person:
            return project.people().contains(id);
        case RecordKind::Round:
            return project.rounds().contains(id);
        case RecordKind::Reading:
            return project.readings().contains(id);
        case RecordKind::PumpReading:
            return project.pumpReadings().contains(id);
        case RecordKind::SetPoint:
            return project.setPoints().contains(id);
        case RecordKind::ReadinessLine:
            return project.readiness().contains(id);
        case RecordKind::Deficiency:
            return project.deficiencies().contains(id);
        case RecordKind::Comment:
            return project.comments().contains(id);
        case RecordKind::Attachment:
            return project.attachments().contains(id);
        case RecordKind::FindingReason:
            return project.findingReasons().contains(id);
        case RecordKind::SignedReport:
            return project.signedReports().contains(id);
        case RecordKind::MergeConflict:
            return project.mergeConflicts().contains(id);
        case RecordKind::ClockOffset:
            return project.clockOffsets().contains(id);
    }
    return false;
}

std::string uniqueName(const AnyRecord& any) {
    if (const auto* branch = std::get_if<Branch>(&any)) {
        return branch->tag;
    }
    if (const auto* pump = std::get_if<project::Pump>(&any)) {
        return pump->tag;
    }
    if (const auto* instrument = std::get_if<project::Instrument>(&any)) {
        return instrument->tag;
    }
    if (const auto* person = std::get_if<project::Person>(&any)) {
        return person->name;
    }
    if (const auto* valve = std::get_if<project::ValveModel>(&any)) {
        // A separator that no tag holds, so that "A 1" "2" and "A" "1 2" differ.
        return valve->model.empty() && valve->size.empty() ? "" : valve->model + '\x1F' + valve->size;
    }
    return "";
}

std::string wordFor(RecordKind kind) {
    return std::string(project::name(kind == RecordKind::PumpReading ? RecordKind::Reading : kind));
}

}  // namespace ww::workbook
