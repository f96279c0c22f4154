// The round that shows a loop as advised. Not for the advice itself (advice/).
#pragma once

#include <optional>
#include <span>

#include "core/balancing/detail/round_numbers.h"
#include "core/balancing/learning/learned_loop.h"

namespace ww::balancing::detail {

/// The numbers of the last round where each of these terminals was read in the state that stands and its
/// share was within the band; nothing otherwise, and where a reading is doubtful.
std::optional<RoundNumbers> confirmingRound(const project::Project& project, const LearnedLoop& learned,
                                            std::span<const std::size_t> terminals);

}  // namespace ww::balancing::detail
