#include "core/workbook/edit_rules.h"

#include <algorithm>
#include <concepts>
#include <unordered_map>
#include <unordered_set>

#include "core/base/term.h"
#include "core/project/names.h"
#include "core/workbook/review_rules.h"

namespace ww::workbook {

namespace {

using base::Fault;
using project::AnyRecord;
using project::Branch;
using project::Edit;
using project::Id;
using project::Project;
using project::PumpReading;
using project::Reading;
using project::ReadingStatus;
using project::RecordKind;
using project::RecordTable;
using project::Round;
using project::RoundState;

template <class R>
concept AnyReading = std::same_as<R, Reading> || std::same_as<R, PumpReading>;

const RecordTable<Reading>& tableOf(const Project& project, const Reading*) {
    return project.readings();
}
const RecordTable<PumpReading>& tableOf(const Project& project, const PumpReading*) {
    return project.pumpReadings();
}

/// What a refusal calls a record of that kind.
std::string wordFor(RecordKind kind) {
    return std::string(project::name(kind == RecordKind::PumpReading ? RecordKind::Reading : kind));
}

/// Calls `visit(kind, id)` for everything that a record refers to.
template <class Visit>
void eachReference(const AnyRecord& any, Visit visit) {
    const auto visitOptional = [&](RecordKind kind, const std::optional<Id>& id) {
        if (id) {
            visit(kind, *id);
        }
    };
    if (const auto* branch = std::get_if<Branch>(&any)) {
        visitOptional(RecordKind::Branch, branch->parent);
        visitOptional(RecordKind::ValveModel, branch->valve);
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

/// Whether a record keeps this name of a person: who sent, decided, wrote or signed it.
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

/// The records of one table, with the kind that refusals name.
template <class Visit>
void eachTable(const Project& project, Visit visit) {
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
    visit(project.clockOffsets());
}

/// The name that must be unique among records of one kind; empty where there is none.
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

/// Looks at an edit against the job before it.
class Examination {
  public:
    Examination(const Project& project, const Edit& edit) : m_project(project), m_edit(edit) {
        for (const project::RecordRef& record : edit.erase) {
            m_erased.insert(record.id);
        }
        for (const AnyRecord& record : edit.put) {
            m_put[project::idOf(record)] = &record;
            m_erased.erase(project::idOf(record));
        }
    }

    std::optional<Fault> run() {
        checkJob();
        for (const AnyRecord& record : m_edit.put) {
            checkReferences(record);
            checkRoundPut(record);
            checkReadingPut(std::get_if<Reading>(&record));
            checkReadingPut(std::get_if<PumpReading>(&record));
        }
        for (const Id& id : m_erased) {
            checkRoundErased(id);
            checkReadingErased(m_project.readings().find(id));
            checkReadingErased(m_project.pumpReadings().find(id));
        }
        if (!m_erased.empty()) {
            eachTable(m_project, [&](const auto& table) { checkStillInUse(table); });
            eachTable(m_project, [&](const auto& table) { checkStillNamed(table); });
        }
        eachTable(m_project, [&](const auto& table) { checkNames(table); });
        checkRoundNumbers();
        checkSequences(static_cast<const Reading*>(nullptr));
        checkSequences(static_cast<const PumpReading*>(nullptr));
        checkParents();
        return m_fault;
    }

  private:
    void refuse(const base::MessageForm& form, std::string subject, std::vector<std::string> arguments) {
        if (!m_fault) {
            m_fault = Fault{&form, std::move(subject), std::move(arguments)};
        }
    }
    bool isUntouched(const Id& id) const { return !m_put.contains(id) && !m_erased.contains(id); }
    /// A record as it will be after the edit; null where it will not be.
    template <class R>
    const R* after(const RecordTable<R>& before, const Id& id) const {
        if (const auto put = m_put.find(id); put != m_put.end()) {
            return std::get_if<R>(put->second);
        }
        return m_erased.contains(id) ? nullptr : before.find(id);
    }
    /// How people call a record: a reading by the place it was read at.
    std::string nameFor(const AnyRecord& record) const {
        if (const auto* reading = std::get_if<Reading>(&record)) {
            const Branch* branch = after(m_project.branches(), reading->branch);
            return branch == nullptr ? "" : branch->tag;
        }
        if (const auto* reading = std::get_if<PumpReading>(&record)) {
            const project::Pump* pump = after(m_project.pumps(), reading->pump);
            return pump == nullptr ? "" : pump->tag;
        }
        return project::nameOf(record);
    }

    void checkJob() {
        for (const AnyRecord& record : m_edit.put) {
            const auto* job = std::get_if<project::Job>(&record);
            if (job != nullptr && job->id != m_project.job().id) {
                refuse(kExactlyOneJob, job->name, {});
            }
        }
        if (m_erased.contains(m_project.job().id)) {
            refuse(kExactlyOneJob, m_project.job().name, {});
        }
    }

    void checkReferences(const AnyRecord& record) {
        eachReference(record, [&](RecordKind kind, const Id& id) {
            const auto put = m_put.find(id);
            const bool willBe = put != m_put.end() ? project::kindOf(*put->second) == kind
                                                   : !m_erased.contains(id) && isIn(m_project, kind, id);
            if (!willBe) {
                refuse(kReferenceMissing, nameFor(record), {wordFor(kind)});
            }
        });
    }

    template <class R>
    void checkStillInUse(const RecordTable<R>& table) {
        for (const R& record : table) {
            if (!isUntouched(record.id)) {
                continue;
            }
            const AnyRecord any = record;
            eachReference(any, [&](RecordKind kind, const Id& id) {
                if (m_erased.contains(id)) {
                    refuse(kStillInUse, "", {wordFor(kind), nameOfErased(id), usedBy(any), nameFor(any)});
                }
            });
        }
    }
    template <class R>
    void checkStillNamed(const RecordTable<R>& table) {
        for (const Id& id : m_erased) {
            const project::Person* person = m_project.people().find(id);
            if (person == nullptr || person->name.empty()) {
                continue;
            }
            for (const R& record : table) {
                const AnyRecord any = record;
                if (!m_erased.contains(record.id) && namesPerson(any, person->name)) {
                    refuse(kPersonNamed, "", {person->name, wordFor(project::kindOf(any))});
                }
            }
        }
    }
    std::string nameOfErased(const Id& id) const {
        std::string name;
        eachTable(m_project, [&](const auto& table) {
            if (const auto* record = table.find(id)) {
                name = project::nameOf(*record);
            }
        });
        return name.empty() ? std::string("?") : name;
    }
    std::string usedBy(const AnyRecord& user) const {
        const RecordKind kind = project::kindOf(user);
        const bool isReading = kind == RecordKind::Reading || kind == RecordKind::PumpReading;
        return isReading ? base::term("a reading of") : wordFor(kind);
    }

    /// Names among records of one kind: those put against each other and against those that stay.
    template <class R>
    void checkNames(const RecordTable<R>& table) {
        if constexpr (!std::same_as<R, Round> && !AnyReading<R>) {
            std::unordered_set<std::string> names;
            for (const auto& [id, record] : m_put) {
                if (std::holds_alternative<R>(*record)) {
                    const std::string name = uniqueName(*record);
                    if (!name.empty() && !names.insert(name).second) {
                        refuseName(*record);
                    }
                }
            }
            if (names.empty()) {
                return;
            }
            for (const R& record : table) {
                const AnyRecord any = record;
                if (isUntouched(record.id) && names.contains(uniqueName(any))) {
                    refuseName(any);
                }
            }
        }
    }
    void refuseName(const AnyRecord& record) {
        refuse(kNameTaken, project::nameOf(record), {wordFor(project::kindOf(record))});
    }

    void checkRoundNumbers() {
        std::unordered_set<int> numbers;
        const auto add = [&](const Round& round) {
            if (!numbers.insert(round.number).second) {
                refuse(kRoundNumberTaken, "", {std::to_string(round.number)});
            }
        };
        for (const auto& [id, record] : m_put) {
            if (const auto* round = std::get_if<Round>(record)) {
                add(*round);
            }
        }
        if (numbers.empty()) {
            return;
        }
        for (const Round& round : m_project.rounds()) {
            if (isUntouched(round.id)) {
                add(round);
            }
        }
    }

    static std::string stateOf(const Round& round) { return std::string(project::name(round.state)); }
    static bool isLocked(const Round* round) { return round != nullptr && round->state != RoundState::Open; }

    void checkRoundPut(const AnyRecord& record) {
        const auto* after = std::get_if<Round>(&record);
        const Round* before = after == nullptr ? nullptr : m_project.rounds().find(after->id);
        const bool isRenamed =
            isLocked(before) && (before->number != after->number || before->kind != after->kind);
        const bool isTouched = before != nullptr && before->state == RoundState::Accepted &&
                               after->state == RoundState::Accepted && !(*before == *after);
        if (isRenamed || isTouched) {
            refuse(kRoundLocked, "", {std::to_string(before->number), stateOf(*before)});
        }
    }
    void checkRoundErased(const Id& id) {
        const Round* before = m_project.rounds().find(id);
        if (isLocked(before)) {
            refuse(kRoundLocked, "", {std::to_string(before->number), stateOf(*before)});
        }
    }

    template <AnyReading R>
    void checkReadingPut(const R* reading) {
        if (reading == nullptr) {
            return;
        }
        const auto& table = tableOf(m_project, reading);
        const R* before = table.find(reading->id);
        const Round* round = m_project.rounds().find(reading->round);
        if (before != nullptr) {
            const Round* earlier = m_project.rounds().find(before->round);
            if (isLocked(earlier) && !(*before == *reading) && !isMarkedSuperseded(*before, *reading)) {
                refuse(kReadingLocked, nameFor(*reading),
                       {std::to_string(earlier->number), stateOf(*earlier)});
            }
            if (before->round == reading->round) {
                return;
            }
        }
        if (!isLocked(round)) {
            return;
        }
        const std::string number = std::to_string(round->number);
        if (round->state == RoundState::Accepted) {
            refuse(kRoundAccepted, nameFor(*reading), {number});
        } else if (!corrects(*reading)) {
            refuse(kRoundTakesCorrectionsOnly, nameFor(*reading), {number, stateOf(*round)});
        }
    }
    template <AnyReading R>
    void checkReadingErased(const R* before) {
        const Round* round = before == nullptr ? nullptr : m_project.rounds().find(before->round);
        if (isLocked(round)) {
            refuse(kReadingLocked, nameFor(*before), {std::to_string(round->number), stateOf(*round)});
        }
    }

    static const Id& placeOf(const Reading& reading) { return reading.branch; }
    static const Id& placeOf(const PumpReading& reading) { return reading.pump; }

    /// Whether a reading names one of the same place and round.
    template <AnyReading R>
    bool corrects(const R& reading) const {
        const R* corrected =
            reading.supersedes ? tableOf(m_project, &reading).find(*reading.supersedes) : nullptr;
        return corrected != nullptr && corrected->round == reading.round &&
               placeOf(*corrected) == placeOf(reading);
    }
    /// Whether the only change is that a reading of this edit supersedes it, with a reason. A place that was
    /// read twice is corrected as a whole: its correction names the last of the readings.
    template <AnyReading R>
    bool isMarkedSuperseded(R before, const R& after) const {
        const bool isCorrected = std::any_of(m_put.begin(), m_put.end(), [&](const auto& entry) {
            const R* other = std::get_if<R>(entry.second);
            return other != nullptr && tableOf(m_project, other).find(other->id) == nullptr &&
                   other->round == before.round && placeOf(*other) == placeOf(before) && corrects(*other);
        });
        const Round* round = m_project.rounds().find(before.round);
        if (!isCorrected || after.status != ReadingStatus::Superseded ||
            round->state == RoundState::Accepted) {
            return false;
        }
        before.status = after.status;
        if constexpr (std::same_as<R, Reading>) {
            before.reason = after.reason;
        }
        return before == after;
    }

    /// Sequences within each round that the edit puts readings into.
    template <AnyReading R>
    void checkSequences(const R* kind) {
        std::unordered_map<Id, std::unordered_set<int>> sequences;
        const auto clash = [&](const R& reading) {
            const Round* round = after(m_project.rounds(), reading.round);
            refuse(
                kSequenceTaken, nameFor(reading),
                {round == nullptr ? "?" : std::to_string(round->number), std::to_string(reading.sequence)});
        };
        for (const auto& [id, record] : m_put) {
            const R* reading = std::get_if<R>(record);
            if (reading != nullptr && !sequences[reading->round].insert(reading->sequence).second) {
                clash(*reading);
            }
        }
        const auto& table = tableOf(m_project, kind);
        for (const auto& [round, put] : sequences) {
            const std::vector<std::size_t>* indices;
            if constexpr (std::same_as<R, Reading>) {
                indices = &m_project.readingsOf(round);
            } else {
                indices = &m_project.pumpReadingsOf(round);
            }
            for (const std::size_t index : *indices) {
                const R& reading = table[index];
                if (put.contains(reading.sequence) && isUntouched(reading.id)) {
                    clash(reading);
                }
            }
        }
    }

    void checkParents() {
        for (const auto& [id, record] : m_put) {
            const auto* branch = std::get_if<Branch>(record);
            // A branch whose parent stays as it was cannot close a ring.
            const Branch* before = branch == nullptr ? nullptr : m_project.branches().find(id);
            if (branch == nullptr || !branch->parent ||
                (before != nullptr && before->parent == branch->parent)) {
                continue;
            }
            std::unordered_set<Id> seen{id};
            const Branch* at = branch;
            while (at != nullptr && at->parent) {
                if (!seen.insert(*at->parent).second) {
                    refuse(kFedFromItself, branch->tag, {});
                    break;
                }
                at = after(m_project.branches(), *at->parent);
            }
        }
    }

    const Project& m_project;
    const Edit& m_edit;
    std::unordered_map<Id, const AnyRecord*> m_put;
    std::unordered_set<Id> m_erased;
    std::optional<Fault> m_fault;
};

}  // namespace

std::optional<Fault> refusal(const Project& project, const Edit& edit) {
    const auto fault = Examination(project, edit).run();
    return fault ? fault : reviewRefusal(project, edit);
}

std::optional<Fault> refusalOfContent(const Edit& content) {
    const project::Job* job = nullptr;
    for (const AnyRecord& record : content.put) {
        if (const auto* found = std::get_if<project::Job>(&record)) {
            if (job != nullptr && job->id != found->id) {
                return Fault{&kExactlyOneJob, found->name, {}};
            }
            job = found;
        }
    }
    if (job == nullptr) {
        return Fault{&kExactlyOneJob, "", {}};
    }
    Project empty;
    empty.put(*job);
    return refusal(empty, content);
}

bool movesReview(const Project& project, const Edit& edit) {
    const auto isUnderReview = [](const Round* round) {
        return round != nullptr && round->state != RoundState::Open && round->state != RoundState::Closed;
    };
    return std::any_of(edit.put.begin(), edit.put.end(), [&](const AnyRecord& record) {
        const auto* after = std::get_if<Round>(&record);
        const Round* before = after == nullptr ? nullptr : project.rounds().find(after->id);
        const bool isMoved = after != nullptr && (before == nullptr || before->state != after->state);
        return isMoved && (isUnderReview(before) || isUnderReview(after));
    });
}

}  // namespace ww::workbook
