#include "core/balancing/round_memory.h"

#include <algorithm>

#include "core/balancing/detail/doubts.h"
#include "core/balancing/detail/round_numbers.h"
#include "core/balancing/touched_rounds.h"
#include "core/project/earlier_design.h"

namespace ww::balancing {

namespace {

using project::Project;
using project::RecordKind;

/// Whether a record has no part in the numbers of a round.
bool isBesideNumbers(RecordKind kind) {
    return kind == RecordKind::PumpReading || kind == RecordKind::Comment || kind == RecordKind::Attachment ||
           kind == RecordKind::SignedReport;
}

}  // namespace

/// The numbers point into the copy, which nothing changes.
struct RoundMemory::Kept {
    using Compute = detail::RoundNumbers (*)(const Project&, const project::Round*, detail::LookBack);

    Kept(const Project& job, const base::Id& roundId, detail::LookBack asked, Compute compute)
        : project(job),
          round(project.rounds().at(roundId)),
          lookBack(asked),
          numbers(compute(project, &round, asked)) {}

    Project project;
    const project::Round& round;
    detail::LookBack lookBack;
    detail::RoundNumbers numbers;
    std::vector<std::vector<Finding>> doubts;  ///< of terminals, by branch; of the round that is read
};

void RoundMemory::forget() {
    m_before.reset();
    forgetNow();
}

void RoundMemory::forgetNow() {
    m_now.reset();
    m_readSince.clear();
}

void RoundMemory::touch(const Project& project, const base::Id& reading) {
    for (const Project* job : {&m_now->project, &project}) {
        const project::Reading* record = job->readings().find(reading);
        const auto branch = record != nullptr ? job->branches().findIndex(record->branch) : std::nullopt;
        if (branch && !m_isReadSince[*branch]) {
            m_isReadSince[*branch] = true;
            m_readSince.push_back(*branch);
        }
    }
}

void RoundMemory::take(const Project& project, const project::ChangeSet& changes) {
    if (m_before != nullptr) {
        const auto first = firstRoundTouched(m_before->project, project, changes);
        if (first && *first <= m_before->round.number) {
            m_before.reset();
        }
    }
    if (m_now == nullptr) {
        return;
    }
    bool isTrue = !changes.isEmpty();
    for (const auto* records : {&changes.put, &changes.erased}) {
        for (const project::RecordRef& record : *records) {
            if (record.kind == RecordKind::Reading) {
                touch(project, record.id);
            } else {
                isTrue = isTrue && isBesideNumbers(record.kind);
            }
        }
    }
    // Beyond this computing all of them anew, once, is the shorter way.
    constexpr std::size_t kFew = 8;
    if (!isTrue || m_readSince.size() * kFew > project.branches().size()) {
        forgetNow();
    }
}

const detail::RoundNumbers& RoundMemory::before(const Project& project, const project::Round& round) {
    if (m_before == nullptr || m_before->round.id != round.id) {
        const std::optional<Project> then = project::asJudged(project, round);
        m_before = std::make_shared<const Kept>(then ? *then : project, round.id,
                                                detail::LookBack::ForSettings, &detail::roundNumbers);
    }
    return m_before->numbers;
}

detail::RoundNumbers RoundMemory::now(const Project& project, const project::Round& round,
                                      detail::LookBack lookBack) {
    if (m_now == nullptr || m_now->round.id != round.id || m_now->lookBack != lookBack) {
        auto kept = std::make_shared<Kept>(project, round.id, lookBack, &detail::ownNumbers);
        kept->doubts.resize(project.branches().size());
        for (const std::size_t terminal : project.tree().terminals()) {
            kept->doubts[terminal] = detail::doubts(kept->project, kept->numbers, terminal);
        }
        forgetNow();
        m_now = std::move(kept);
        m_isReadSince.assign(project.branches().size(), false);
    }
    detail::RoundNumbers numbers = m_now->numbers;
    numbers.round = &round;
    detail::readAgain(project, lookBack, m_readSince, numbers);
    detail::addUp(project, lookBack, numbers);
    return numbers;
}

const std::vector<Finding>* RoundMemory::doubts(std::size_t branch) const {
    const bool isKept =
        m_now != nullptr && !m_isReadSince[branch] && m_now->numbers.branches[branch].isTerminal;
    return isKept ? &m_now->doubts[branch] : nullptr;
}

}  // namespace ww::balancing
