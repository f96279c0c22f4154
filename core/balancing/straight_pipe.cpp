#include "core/balancing/straight_pipe.h"

#include <algorithm>

namespace ww::balancing {

StraightPipe straightPipe(const project::Branch& branch) {
    const bool isMeter = branch.kind == project::BranchKind::Orifice;
    const bool isDisturbed = branch.disturbance != project::Disturbance::Ordinary;
    StraightPipe out;
    out.upstreamNeed = Ratio::si((isMeter ? 10.0 : 5.0) * (isDisturbed ? 2 : 1));
    out.downstreamNeed = Ratio::si(isMeter ? 5.0 : 2.0);
    out.isRecorded = branch.upstreamDiameters && branch.downstreamDiameters;
    double least = 1;
    const auto compare = [&](const std::optional<base::Decimal>& has, Ratio need) {
        if (has) {
            least = std::min(least, has->value() / need.si());
        }
    };
    compare(branch.upstreamDiameters, out.upstreamNeed);
    compare(branch.downstreamDiameters, out.downstreamNeed);
    out.isShort = least < 1;
    out.addedUncertainty = Ratio::si(least < 0.5 ? 0.05 : least < 1 ? 0.03 : 0.0);
    return out;
}

}  // namespace ww::balancing
