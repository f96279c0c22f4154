// Terminals that cast doubt on the index circuit. Not for how the circuit is found (assess.h).
#pragma once

#include <span>
#include <vector>

#include "core/balancing/assessment.h"

namespace ww::balancing {

/// Terminals off the index circuit that are fully open and still take less of design than its terminal: while
/// there is one, the circuit found level by level is not yet the one that governs the pump (common practice,
/// no source). Self-acting valves are left out. Indices into Project::branches(), in their order; none while
/// the index is unknown.
std::vector<std::size_t> indexRivals(std::span<const BranchResult> branches, const IndexCircuit& index);

/// Standard uncertainty of the distance between two flows, each over its design, when both are read again.
/// Both must have a flow and a design flow.
Ratio distanceUncertainty(const BranchResult& rival, const BranchResult& index);
/// Whether the readings tell that a rival takes less of design than the index terminal: their distance is
/// more than its standard uncertainty, as the verdict judges a share.
bool isSurelyLess(const BranchResult& rival, const BranchResult& index);

}  // namespace ww::balancing
