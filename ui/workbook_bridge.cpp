#include "ui/workbook_bridge.h"

#include <QFileInfo>
#include <unordered_map>

#include "core/balancing/adjusting.h"
#include "core/balancing/walk_forms.h"
#include "core/balancing/witness.h"
#include "core/base/expects.h"
#include "core/project/review.h"
#include "ui/long_work.h"
#include "ui/text/format.h"
#include "ui/text/label.h"

namespace ww::ui {
namespace {

base::Fault fault(const base::MessageForm& form, std::string subject = {},
                  std::vector<std::string> arguments = {}) {
    return base::Fault{&form, std::move(subject), std::move(arguments)};
}

/// The newest instrument and person of the record: what was used last is used next.
std::optional<base::Id> lastInstrument(const project::Project& project) {
    for (std::size_t i = project.readings().size(); i > 0; --i) {
        const project::Reading& reading = project.readings()[i - 1];
        if (reading.instrument && project.instruments().contains(*reading.instrument)) {
            return reading.instrument;
        }
    }
    if (project.instruments().empty()) {
        return std::nullopt;
    }
    return project.instruments()[0].id;
}

std::optional<base::Id> personNamed(const project::Project& project, const std::string& name) {
    for (const project::Person& person : project.people()) {
        if (person.name == name) {
            return person.id;
        }
    }
    return std::nullopt;
}

}  // namespace

WorkbookBridge::WorkbookBridge(Desk desk, QObject* parent) : QObject(parent), m_desk(std::move(desk)) {}
WorkbookBridge::~WorkbookBridge() = default;

base::Outcome WorkbookBridge::guarded(const std::function<base::Outcome()>& action) const {
    try {
        return action();
    } catch (const base::ContractBreach& breach) {
        return fault(kInternalDefect, {}, {breach.what()});
    }
}

void WorkbookBridge::doWaitedFor(bool isLong, const QString& words, const std::function<void()>& work) const {
    if (m_wait && isLong) {
        m_wait(words, work);
    } else {
        work();
    }
}

base::Outcome WorkbookBridge::open(const QString& file, workbook::OpenMode mode) {
    return open(beginOpening(m_desk, file, mode, std::launch::deferred));
}

base::Outcome WorkbookBridge::open(Opening opening) {
    return guarded([&]() -> base::Outcome {
        std::optional<base::Result<std::unique_ptr<workbook::Workbook>>> opened;
        doWaitedFor(isLarge(opening.file), tr("Opening %1").arg(QFileInfo(opening.file).fileName()),
                    [&] { opened = opening.workbook.get(); });
        if (!*opened) {
            return opened->fault();
        }
        takeOver(std::move(*opened).value());
        return base::Done{};
    });
}

base::Outcome WorkbookBridge::create(const QString& file, const project::Edit& content) {
    return guarded([&]() -> base::Outcome {
        workbook::Session session{m_desk.clock, m_desk.ids, m_desk.person, m_desk.machine};
        std::optional<base::Result<std::unique_ptr<workbook::Workbook>>> made;
        doWaitedFor(isLarge(content.put.size()), tr("Writing %1").arg(QFileInfo(file).fileName()), [&] {
            made = workbook::Workbook::create(file.toStdString(), content, std::move(session));
        });
        if (!*made) {
            return made->fault();
        }
        takeOver(std::move(*made).value());
        return base::Done{};
    });
}

void WorkbookBridge::close() {
    takeOver(nullptr);
}

void WorkbookBridge::takeOver(std::unique_ptr<workbook::Workbook> workbook) {
    m_workbook = std::move(workbook);
    m_assessment.reset();
    m_walkProgress.reset();
    m_roundMemory.forget();
    m_notStored.reset();
    m_unstored.clear();
    // The valve that was being turned is in hand again.
    m_selectedBranch = balancing::lastTried(project());
    m_storedCount = 0;
    m_instrument = lastInstrument(project());
    m_person = person() ? m_person : personNamed(project(), m_desk.person);
    followPerson();
    ++m_changeCount;
    emit changed(project::ChangeSet{});
    emit branchSelected();
    emit instrumentChanged();
}

bool WorkbookBridge::isReadOnly() const {
    return !m_workbook || m_workbook->isReadOnly();
}

std::optional<base::Fault> WorkbookBridge::readOnlyReason() const {
    if (!m_workbook || !m_workbook->isReadOnly()) {
        return std::nullopt;
    }
    const auto& reason = m_workbook->readOnlyReason();
    return reason ? reason->fault : fault(kWorkbookReadOnly);
}

bool WorkbookBridge::canGoOnInCopy() const {
    return m_workbook && m_workbook->readOnlyReason() && m_workbook->readOnlyReason()->helpsToCopy;
}

QString WorkbookBridge::file() const {
    return m_workbook ? QString::fromStdString(m_workbook->file().string()) : QString();
}

const project::Project& WorkbookBridge::project() const {
    return m_workbook ? m_workbook->project() : m_none;
}

const balancing::Assessment& WorkbookBridge::assessment() const {
    if (!m_assessment) {
        m_assessment = assessed(true);
    }
    return *m_assessment;
}

balancing::Assessment WorkbookBridge::assessmentInFull() const {
    return assessed(false);
}

balancing::Assessment WorkbookBridge::assessed(bool isNumbersOnly) const {
    const balancing::AssessOptions options{.numbersOnly = isNumbersOnly, .memory = &m_roundMemory};
    const project::Round* last = project().lastRound();
    return last != nullptr ? balancing::assessAsShown(project(), last->id, options)
                           : balancing::assessLast(project(), options);
}

const balancing::WalkProgress& WorkbookBridge::walkProgress() const {
    if (!m_walkProgress) {
        const project::Round* last = project().lastRound();
        m_walkProgress =
            last != nullptr ? balancing::walkProgress(project(), *last) : balancing::WalkProgress{};
    }
    return *m_walkProgress;
}

const project::Round* WorkbookBridge::openRoundOrNull() const {
    return project::roundInHand(project());
}

bool WorkbookBridge::tell(const base::Outcome& outcome) {
    if (!outcome) {
        emit messageRaised(outcome.fault());
    }
    return outcome.ok();
}

bool WorkbookBridge::tellOrClear(const base::Outcome& outcome) {
    if (outcome) {
        emit messageCleared();
    }
    return tell(outcome);
}

std::optional<workbook::JournalEntry> WorkbookBridge::lastStored() const {
    return m_workbook ? std::optional(m_workbook->newestEntry()) : std::nullopt;
}

QString WorkbookBridge::undoLabel() const {
    return m_workbook && !isReadOnly() ? text::label(m_workbook->undoLabel().value_or("")) : QString();
}

QString WorkbookBridge::redoLabel() const {
    return m_workbook && !isReadOnly() ? text::label(m_workbook->redoLabel().value_or("")) : QString();
}

void WorkbookBridge::selectBranch(std::optional<base::Id> branch) {
    if (branch == m_selectedBranch) {
        return;
    }
    m_selectedBranch = branch;
    emit branchSelected();
}

std::optional<base::Id> WorkbookBridge::instrument() const {
    return m_instrument && project().instruments().contains(*m_instrument) ? m_instrument : std::nullopt;
}

std::optional<base::Id> WorkbookBridge::person() const {
    return m_person && project().people().contains(*m_person) ? m_person : std::nullopt;
}

std::optional<base::Id> WorkbookBridge::nextReader() const {
    const project::Round* last = project().lastRound();
    const project::Person* chosen = person() ? project().people().find(*person()) : nullptr;
    const bool hasDecided = last != nullptr && chosen != nullptr && last->decidedBy == chosen->name;
    const auto reader = hasDecided ? project::lastReader(project()) : std::nullopt;
    return reader ? reader : person();
}

void WorkbookBridge::setInstrument(std::optional<base::Id> instrument) {
    m_instrument = instrument;
    emit instrumentChanged();
}

void WorkbookBridge::setPerson(std::optional<base::Id> person) {
    m_person = person;
    followPerson();
    emit instrumentChanged();
}

void WorkbookBridge::followPerson() {
    if (m_workbook) {
        m_workbook->setPerson(reviewContext().person);
    }
}

base::Outcome WorkbookBridge::took(const base::Result<project::ChangeSet>& result, bool isReverted) {
    m_assessment.reset();
    m_walkProgress.reset();
    if (!result) {
        // Refusals of a rule leave the file well; only those of the file itself mean that nothing can be
        // kept.
        if (result.fault().code().starts_with("workbook_")) {
            m_notStored = result.fault();
        }
        return result.fault();
    }
    m_notStored.reset();
    m_unstored.clear();
    if (!result->isEmpty()) {
        m_roundMemory.take(project(), *result);
        ++m_storedCount;
        if (result->touches(project::RecordKind::Person)) {
            followPerson();
        }
        ++m_changeCount;
        emit changed(*result);
        if (isReverted) {
            emit reverted(*result);
        }
    }
    return base::Done{};
}

base::Outcome WorkbookBridge::apply(const project::Edit& edit) {
    if (!m_workbook) {
        return fault(kNoWorkbookOpen);
    }
    if (isReadOnly()) {
        return readOnlyReason().value_or(fault(kWorkbookReadOnly));
    }
    const base::Outcome done = guarded([&] { return took(m_workbook->apply(edit), false); });
    if (!done && m_notStored) {
        m_unstored.push_back(edit);
    }
    return done;
}

base::Outcome WorkbookBridge::undo() {
    return revert(&workbook::Workbook::undo);
}

base::Outcome WorkbookBridge::redo() {
    return revert(&workbook::Workbook::redo);
}

base::Outcome WorkbookBridge::revert(base::Result<project::ChangeSet> (workbook::Workbook::*step)()) {
    if (!m_workbook) {
        return fault(kNoWorkbookOpen);
    }
    return guarded([&]() -> base::Outcome {
        // A reading that is taken back is gone afterwards; whose it was must be known before.
        std::unordered_map<base::Id, base::Id> branchOf;
        if (const project::Round* last = project().lastRound()) {
            for (const std::size_t index : project().readingsOf(last->id)) {
                const project::Reading& reading = project().readings()[index];
                branchOf.emplace(reading.id, reading.branch);
            }
        }
        const auto result = (m_workbook.get()->*step)();
        m_revertedBranch.reset();
        if (result) {
            for (const auto* refs : {&result->erased, &result->put}) {
                for (const project::RecordRef& ref : *refs) {
                    const project::Reading* reading = project().readings().find(ref.id);
                    if (reading != nullptr) {
                        m_revertedBranch = reading->branch;
                    } else if (const auto found = branchOf.find(ref.id); found != branchOf.end()) {
                        m_revertedBranch = found->second;
                    } else if (project().branches().contains(ref.id)) {
                        m_revertedBranch = ref.id;
                    }
                }
            }
        }
        return took(result, true);
    });
}

base::Outcome WorkbookBridge::saveCopy(const QString& file) const {
    if (!m_workbook) {
        return fault(kNoWorkbookOpen);
    }
    return guarded([&] {
        std::optional<base::Outcome> saved;
        doWaitedFor(isLarge(this->file()), tr("Writing %1").arg(QFileInfo(file).fileName()),
                    [&] { saved = m_workbook->saveCopy(file.toStdString()); });
        return *saved;
    });
}

base::Outcome WorkbookBridge::goOnIn(const QString& file) {
    if (const base::Outcome saved = saveCopy(file); !saved) {
        return saved;
    }
    const std::vector<project::Edit> unstored = m_unstored;
    if (const base::Outcome opened = open(file); !opened) {
        return opened;
    }
    for (project::Edit edit : unstored) {
        // Each was made for the job without the others: its readings come behind theirs.
        for (project::AnyRecord& record : edit.put) {
            auto* reading = std::get_if<project::Reading>(&record);
            if (reading != nullptr && !project().readings().contains(reading->id)) {
                for (const std::size_t index : project().readingsOf(reading->round)) {
                    reading->sequence = std::max(reading->sequence, project().readings()[index].sequence + 1);
                }
            }
        }
        if (const base::Outcome stored = apply(edit); !stored) {
            return stored;
        }
    }
    return base::Done{};
}

}  // namespace ww::ui
