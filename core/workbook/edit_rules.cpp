#include "core/workbook/edit_rules.h"

#include <algorithm>
#include <concepts>
#include <unordered_set>

#include "core/base/term.h"
#include "core/project/names.h"
#include "core/workbook/edited_project.h"
#include "core/workbook/lock_rules.h"
#include "core/workbook/record_references.h"
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
using project::RecordKind;
using project::RecordTable;
using project::Round;
using project::RoundState;

/// Looks at an edit against the job before it.
class Examination {
  public:
    Examination(const Project& project, const Edit& edit)
        : m_project(project), m_edit(edit), m_edited(project, edit) {}

    std::optional<Fault> run() {
        checkJob();
        for (const AnyRecord& record : m_edit.put) {
            checkReferences(record);
            take(lockRefusal(m_edited, record));
        }
        for (const Id& id : m_edited.erased()) {
            take(lockRefusal(m_edited, id));
        }
        if (!m_edited.erased().empty()) {
            eachTable(m_project, [&](const auto& table) { checkStillInUse(table); });
            eachTable(m_project, [&](const auto& table) { checkStillNamed(table); });
        }
        eachTable(m_project, [&](const auto& table) { checkNames(table); });
        checkRoundNumbers();
        take(sequenceRefusal(m_edited));
        checkParents();
        return m_fault;
    }

  private:
    /// The first fault stands.
    void take(std::optional<Fault> fault) {
        if (!m_fault) {
            m_fault = std::move(fault);
        }
    }
    void refuse(const base::MessageForm& form, std::string subject, std::vector<std::string> arguments) {
        take(Fault{&form, std::move(subject), std::move(arguments)});
    }
    void checkJob() {
        for (const AnyRecord& record : m_edit.put) {
            const auto* job = std::get_if<project::Job>(&record);
            if (job != nullptr && job->id != m_project.job().id) {
                refuse(kExactlyOneJob, job->name, {});
            }
        }
        if (m_edited.erased().contains(m_project.job().id)) {
            refuse(kExactlyOneJob, m_project.job().name, {});
        }
    }

    void checkReferences(const AnyRecord& record) {
        eachReference(record, [&](RecordKind kind, const Id& id) {
            const auto put = m_edited.put().find(id);
            const bool willBe = put != m_edited.put().end()
                                    ? project::kindOf(*put->second) == kind
                                    : !m_edited.erased().contains(id) && isIn(m_project, kind, id);
            if (!willBe) {
                refuse(kReferenceMissing, m_edited.nameFor(record), {wordFor(kind)});
            }
        });
    }

    template <class R>
    void checkStillInUse(const RecordTable<R>& table) {
        for (const R& record : table) {
            if (!m_edited.isUntouched(record.id)) {
                continue;
            }
            const AnyRecord any = record;
            eachReference(any, [&](RecordKind kind, const Id& id) {
                if (m_edited.erased().contains(id)) {
                    refuse(kStillInUse, "",
                           {wordFor(kind), nameOfErased(id), usedBy(any), m_edited.nameFor(any)});
                }
            });
        }
    }
    template <class R>
    void checkStillNamed(const RecordTable<R>& table) {
        for (const Id& id : m_edited.erased()) {
            const project::Person* person = m_project.people().find(id);
            if (person == nullptr || person->name.empty()) {
                continue;
            }
            for (const R& record : table) {
                const AnyRecord any = record;
                if (!m_edited.erased().contains(record.id) && namesPerson(any, person->name)) {
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
        if constexpr (!std::same_as<R, Round> && !std::same_as<R, Reading> && !std::same_as<R, PumpReading>) {
            std::unordered_set<std::string> names;
            for (const auto& [id, record] : m_edited.put()) {
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
                if (m_edited.isUntouched(record.id) && names.contains(uniqueName(any))) {
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
        for (const auto& [id, record] : m_edited.put()) {
            if (const auto* round = std::get_if<Round>(record)) {
                add(*round);
            }
        }
        if (numbers.empty()) {
            return;
        }
        for (const Round& round : m_project.rounds()) {
            if (m_edited.isUntouched(round.id)) {
                add(round);
            }
        }
    }

    void checkParents() {
        for (const auto& [id, record] : m_edited.put()) {
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
                at = m_edited.after(m_project.branches(), *at->parent);
            }
        }
    }

    const Project& m_project;
    const Edit& m_edit;
    EditedProject m_edited;
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
