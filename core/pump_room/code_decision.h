// The energy code's test for the pumps of a job: the pump nearest to its limit, and whether a reduction asked
// for is done. Not for the clause itself (energy/code_test.h).
#pragma once

#include <optional>
#include <vector>

#include "core/curve/pump_set.h"
#include "core/energy/code_test.h"
#include "core/project/project.h"

namespace ww::pump_room {

using quantity::Head;
using quantity::Ratio;
using quantity::VolumeFlow;

/// What is tested. Heads are of the whole set at design flow.
struct CodeCase {
    const curve::PumpSet* set = nullptr;  ///< at full speed; not null
    std::vector<std::size_t> pumps;       ///< indices into Project::pumps(), beside the set's members
    VolumeFlow designFlow;                ///< above 0
    Head available;                       ///< at full speed
    Head required;
    std::optional<Head> presentExcess;       ///< at the speed of the last round
    std::optional<Ratio> efficiency;         ///< throttled
    std::optional<Ratio> efficiencyReduced;  ///< slowed
};

struct CodeOutcome {
    energy::CodeTest test;                            ///< one efficiency for both duties
    std::optional<energy::CodeTest> ownEfficiencies;  ///< each duty with its own
    energy::CodeTest otherForm;  ///< of the same pump, by the form that the job does not name
    bool isMet = false;          ///< exempt, or reduced
    bool isReduced = false;      ///< what is left at the present speed lies within the limit
};

/// Each pump of a set is held to its own plate: with its part of the flow in parallel, of the head in series.
CodeOutcome testCode(const project::Project& project, const CodeCase& what);

}  // namespace ww::pump_room
