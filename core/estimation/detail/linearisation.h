// The linearised fit of solved cases: which enter as one sparse system, which reading by reading.
// Inside estimation only.
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "core/estimation/detail/factorisation.h"

namespace ww::estimation::detail {

/// Positions in Learning::observations, by case.
std::vector<std::vector<std::size_t>> readingsByCase(const Learning& learning);
/// Cases that enter as a sparse system, those with most readings first.
std::vector<std::size_t> sparseCases(const std::vector<std::vector<std::size_t>>& readingsOf,
                                     const LearnOptions& options);
/// `states` by case, nothing where it has no readings; `weightOfReadings` by position, 1/sd^2 or 0. Probes
/// need their case among the sparse ones.
std::shared_ptr<const Factorisation> linearisation(const Learning& learning, const FreeUnknowns& unknowns,
                                                   std::span<const std::optional<CaseState>> states,
                                                   std::span<const std::size_t> sparse,
                                                   std::span<const double> weightOfReadings,
                                                   std::span<const FlowProbe> probes = {});

}  // namespace ww::estimation::detail
