#include "core/balancing/round_before.h"

#include <algorithm>

#include "core/balancing/detail/round_numbers.h"

namespace ww::balancing {

/// The numbers point into the copy, which nothing changes.
struct RoundBefore::Kept {
    Kept(const project::Project& job, const base::Id& roundId)
        : project(job),
          round(project.rounds().at(roundId)),
          numbers(detail::roundNumbers(project, &round, detail::LookBack::ForSettings)) {}

    /// Whether a record is a reading of a round after this one, or none at all.
    bool isLaterReading(const project::Project& job, const project::RecordRef& record) const {
        if (record.kind != project::RecordKind::Reading) {
            return false;
        }
        const project::Reading* reading = job.readings().find(record.id);
        return reading == nullptr || job.rounds().at(reading->round).number > round.number;
    }

    project::Project project;
    const project::Round& round;
    detail::RoundNumbers numbers;
};

void RoundBefore::take(const project::Project& project, const project::ChangeSet& changes) {
    if (m_kept == nullptr) {
        return;
    }
    const auto isLater = [&](const project::RecordRef& record) {
        return m_kept->isLaterReading(project, record) && m_kept->isLaterReading(m_kept->project, record);
    };
    if (!std::all_of(changes.put.begin(), changes.put.end(), isLater) ||
        !std::all_of(changes.erased.begin(), changes.erased.end(), isLater)) {
        forget();
    }
}

const detail::RoundNumbers& RoundBefore::numbers(const project::Project& project,
                                                 const project::Round& round) {
    if (m_kept == nullptr || m_kept->round.id != round.id) {
        m_kept = std::make_shared<const Kept>(project, round.id);
    }
    return m_kept->numbers;
}

}  // namespace ww::balancing
