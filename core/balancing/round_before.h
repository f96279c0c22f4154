// The numbers of the round before the one that is judged, kept from one judgement to the next. Not for
// judging (assess.h).
#pragma once

#include <memory>

#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::balancing {

namespace detail {
struct RoundNumbers;
}

/// While a round is read, the rounds before it stand still, and what they came to need not be computed for
/// each reading again. Whoever keeps one tells it of every change of the job. Copies share what is kept.
class RoundBefore {
  public:
    /// Gives up what a change has made untrue (touched_rounds.h). `project` is the job after the change.
    void take(const project::Project& project, const project::ChangeSet& changes);
    /// Gives up everything: another job.
    void forget() { m_kept.reset(); }

    /// The numbers of a round of the job, computed if they are not those that are kept. They point into a
    /// copy of the job and hold until take(), forget() or the next call.
    const detail::RoundNumbers& numbers(const project::Project& project, const project::Round& round);

  private:
    struct Kept;
    std::shared_ptr<const Kept> m_kept;
};

}  // namespace ww::balancing
