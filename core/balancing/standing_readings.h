// What stands at a branch in a round: its readings, the one that counts, the setting of its valve.
// Not for storing (walk.h).
#pragma once

#include <optional>
#include <vector>

#include "core/project/project.h"

namespace ww::balancing {

/// Whether a reading says something: a value, or that the valve cannot be read.
bool hasContent(const project::Reading& reading);
/// The next free place in the order of a round's readings of branches, from 1.
int nextSequence(const project::Project& project, const project::Id& round);
/// The branch's standing readings of a round, in order of entry, without those of a shut valve.
std::vector<const project::Reading*> standingReadings(const project::Project& project,
                                                      const project::Id& round, const project::Id& branch);
/// The setting that stands at a branch in a round: of its readings there, else of the newest earlier round,
/// else the branch's own, else fully open.
std::optional<base::Decimal> standingSetting(const project::Project& project, const project::Id& round,
                                             const project::Id& branch);
/// The reading that counts for a branch in a round; null where there is none.
const project::Reading* countingReading(const project::Project& project, const project::Id& round,
                                        const project::Id& branch);
/// The same for every branch of the job at once, by index into Project::branches(); null where there is none.
std::vector<const project::Reading*> countingReadings(const project::Project& project,
                                                      const project::Id& round);
/// The newest counting reading of an earlier round with a dp; null where there is none.
const project::Reading* earlierReading(const project::Project& project, const project::Id& round,
                                       const project::Id& branch);

}  // namespace ww::balancing
