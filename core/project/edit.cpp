#include "core/project/edit.h"

#include <algorithm>

namespace ww::project {

namespace {

struct NameOf {
    std::string operator()(const Job& job) const { return job.name; }
    std::string operator()(const ValveModel& valve) const { return valve.model + " " + valve.size; }
    std::string operator()(const Branch& branch) const { return branch.tag; }
    std::string operator()(const Pump& pump) const { return pump.tag; }
    std::string operator()(const Instrument& instrument) const { return instrument.tag; }
    std::string operator()(const Person& person) const { return person.name; }
    std::string operator()(const Round& round) const { return "round " + std::to_string(round.number); }
    std::string operator()(const Reading& reading) const {
        return "reading " + std::to_string(reading.sequence);
    }
    std::string operator()(const PumpReading& reading) const {
        return "pump reading " + std::to_string(reading.sequence);
    }
    std::string operator()(const SetPoint& point) const { return point.sensor; }
    std::string operator()(const ReadinessLine& line) const { return line.text; }
    std::string operator()(const Deficiency& deficiency) const {
        return "deficiency " + std::to_string(deficiency.number);
    }
    std::string operator()(const Comment& comment) const { return comment.text; }
    std::string operator()(const Attachment& attachment) const { return attachment.name; }
    std::string operator()(const FindingReason& reason) const {
        return reason.code + (reason.subject.empty() ? "" : " " + reason.subject);
    }
    std::string operator()(const SignedReport& report) const {
        return "revision " + std::to_string(report.revision) + ", " + report.role;
    }
    std::string operator()(const MergeConflict& conflict) const { return conflict.place; }
    std::string operator()(const ClockOffset& offset) const { return "clock of " + offset.machine; }
};

}  // namespace

RecordKind kindOf(const AnyRecord& record) {
    return static_cast<RecordKind>(record.index());
}

const Id& idOf(const AnyRecord& record) {
    return std::visit([](const auto& r) -> const Id& { return r.id; }, record);
}

std::string nameOf(const AnyRecord& record) {
    return std::visit(NameOf{}, record);
}

bool ChangeSet::touches(RecordKind kind) const {
    const auto isKind = [&](const RecordRef& ref) { return ref.kind == kind; };
    return std::any_of(put.begin(), put.end(), isKind) || std::any_of(erased.begin(), erased.end(), isKind);
}

}  // namespace ww::project
