// A practice job as it lives in a workbook: one text in the job from which its building follows, and answers
// to what is asked on it. Not for the building itself (building.h).
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/term.h"
#include "core/practice/building.h"
#include "core/project/edit.h"

namespace ww::practice {

inline constexpr base::MessageForm kPracticeUnreadable{
    "practice_unreadable",
    "\"{1}\" does not name a practice building; open the job with the version that made it"};
inline constexpr base::MessageForm kPracticeSeed{
    "practice_seed", "\"{1}\" is no number of a practice building; give a whole number from 1 to 999999999"};
inline constexpr base::MessageForm kPracticeNotABranch{
    "practice_not_a_branch",
    "the practice building has no branch {1}; read one of those that the job was made with"};
inline constexpr base::MessageForm kPracticeNoValve{"practice_no_valve",
                                                    "{1} has no valve to be read; read its neighbours"};
inline constexpr base::MessageForm kPracticeNoPump{
    "practice_no_pump", "the practice building has no pump {1}; read the one that the job was made with"};

/// Which building a practice job is about.
struct PracticeKey {
    Difficulty difficulty = Difficulty::First;
    std::uint64_t seed = 1;  ///< 1 to 999,999,999

    bool operator==(const PracticeKey&) const = default;
};

/// "difficulty=steady;seed=17", as Job::practice holds it.
std::string text(const PracticeKey& key);
/// Refused: an unknown word, a seed outside its range, anything else in the text.
base::Result<PracticeKey> practiceKey(std::string_view text);
/// A seed as typed.
base::Result<std::uint64_t> practiceSeed(std::string_view text);

/// The content of a new practice job, written in the words of `wording`, or in English without one; `jobName`
/// may be empty. What the building answers depends on neither.
project::Edit practiceContent(const PracticeKey& key, const std::string& jobName,
                              const base::Wording& wording = {});

/// What the instruments show on a practice job, for the settings as they stand in a round. Pure: the same
/// records, the same answers; asked again after a reading was stored, the noise is another.
class PracticeJob {
  public:
    explicit PracticeJob(const PracticeKey& key);
    /// For the building of a plan of one's own.
    explicit PracticeJob(Building building);

    const Building& building() const { return m_building; }

    /// Settings as noted: those that stand in the round, else as the branches were found.
    LoopState notedState(const project::Project& project, const base::Id& round) const;
    /// The moment of the next reading of a branch in a round.
    ReadingMoment nextMoment(const project::Project& project, const base::Id& round,
                             const base::Id& branch) const;

    /// The dp at a branch's valve. `round` must exist.
    base::Result<DpAnswer> dp(const project::Project& project, const base::Id& round,
                              const base::Id& branch) const;
    /// The dp across the valve shut for a moment; all others as they stand.
    base::Result<DpAnswer> closedDp(const project::Project& project, const base::Id& round,
                                    const base::Id& branch) const;
    /// The dp with the branch's handle turned to a setting that is not noted yet, by one who looks at it; all
    /// others as they stand after the last round. A round must exist.
    base::Result<DpAnswer> dpAt(const project::Project& project, const base::Id& branch,
                                quantity::Setting handle) const;
    /// What a clamp-on meter shows.
    base::Result<Measured<VolumeFlow>> flow(const project::Project& project, const base::Id& round,
                                            const base::Id& branch) const;
    /// The rise of a pump by its gauges.
    base::Result<Measured<PressureDifference>> pumpRise(const project::Project& project,
                                                        const base::Id& round, const base::Id& pump) const;
    /// The instrument that the pump is read with, whatever the job calls it.
    base::Id gauge() const;

  private:
    base::Result<std::size_t> indexOf(const project::Project& project, const base::Id& branch) const;
    base::Result<DpAnswer> answer(const project::Project& project, const base::Id& round,
                                  const base::Id& branch, bool isClosed,
                                  std::optional<quantity::Setting> handle = {}) const;

    Building m_building;
};

}  // namespace ww::practice
