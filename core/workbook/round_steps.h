// Every step of review that the rounds of a job took, as the journal holds it: who, when, why. Not for the
// steps that a round may take (review_rules.h).
#pragma once

#include <vector>

#include "core/project/round_step.h"
#include "core/workbook/workbook.h"

namespace ww::workbook {

/// All steps of all rounds, oldest first. Of a round that came into the job with its decision (imported) that
/// is one step too. What was undone shows as a step taken back; a round that is not in the job any more has
/// none. Fails where the journal cannot be read.
base::Result<std::vector<project::RoundStep>> roundSteps(const Workbook& workbook);

}  // namespace ww::workbook
