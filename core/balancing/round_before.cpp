#include "core/balancing/round_before.h"

#include "core/balancing/detail/round_numbers.h"
#include "core/balancing/touched_rounds.h"

namespace ww::balancing {

/// The numbers point into the copy, which nothing changes.
struct RoundBefore::Kept {
    Kept(const project::Project& job, const base::Id& roundId)
        : project(job),
          round(project.rounds().at(roundId)),
          numbers(detail::roundNumbers(project, &round, detail::LookBack::ForSettings)) {}

    project::Project project;
    const project::Round& round;
    detail::RoundNumbers numbers;
};

void RoundBefore::take(const project::Project& project, const project::ChangeSet& changes) {
    if (m_kept == nullptr) {
        return;
    }
    const auto first = firstRoundTouched(m_kept->project, project, changes);
    if (first && *first <= m_kept->round.number) {
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
