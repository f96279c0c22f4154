// What judging keeps from one reading to the next, so that a key costs what it changed. Not for judging
// (assess.h).
#pragma once

#include <memory>
#include <vector>

#include "core/balancing/assessment.h"
#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::balancing {

namespace detail {
enum class LookBack;
struct RoundNumbers;
}  // namespace detail

/// While a round is read, the rounds before it stand still, and so does what was read at all other branches.
/// Whoever keeps one tells it of every change of the job. Copies share what is kept.
class RoundMemory {
  public:
    /// Gives up what a change has made untrue. `project` is the job after the change.
    void take(const project::Project& project, const project::ChangeSet& changes);
    /// Gives up everything: another job.
    void forget();

    /// The numbers of a round that is looked back at (touched_rounds.h) by the design of its closing,
    /// computed if they are not those that are kept. They point into a copy of the job and hold until take(),
    /// forget() or the next call.
    const detail::RoundNumbers& before(const project::Project& project, const project::Round& round);

    /// The numbers of the round that is read: what detail::roundNumbers() gives, but only the branches are
    /// computed that were read since the first call for this round. They point partly into a copy of the job
    /// and hold until take() or forget().
    detail::RoundNumbers now(const project::Project& project, const project::Round& round,
                             detail::LookBack lookBack);
    /// The doubts about the reading of a branch of the round last asked for with now(); null where they are
    /// to be found anew (detail::doubts): it was read since, or it is fed to others, whose flows they rest
    /// on.
    const std::vector<Finding>* doubts(std::size_t branch) const;

  private:
    struct Kept;
    void forgetNow();
    void touch(const project::Project& project, const base::Id& reading);

    std::shared_ptr<const Kept> m_before;
    std::shared_ptr<const Kept> m_now;     ///< without sums and shares
    std::vector<std::size_t> m_readSince;  ///< branches read since m_now, each once
    std::vector<bool> m_isReadSince;       ///< the same, by branch
};

}  // namespace ww::balancing
