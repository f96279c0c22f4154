#include "core/energy/dp_set_point.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/measured.h"
#include "core/quantity/shown_units.h"

namespace ww::energy {

DpAtFlow dpAtFlow(const DpResetLaw& law, VolumeFlow flow) {
    DpAtFlow out;
    out.computed = law.dpAtReference;
    if (law.form != ResetLaw::None) {
        EXPECTS(law.reference.si() > 0);
        const double part = flow / law.reference;
        out.computed = law.dpAtReference * (law.form == ResetLaw::Square ? part * part : part) + law.margin;
    }
    out.setPoint = out.computed;
    if (law.low) {
        out.setPoint = std::max(out.setPoint, *law.low);
    }
    if (law.high) {
        out.setPoint = std::min(out.setPoint, *law.high);
    }
    return out;
}

std::vector<base::Fault> setPointFindings(const SetPointCheckInput& in) {
    std::vector<base::Fault> findings;
    if (!in.zero) {
        findings.push_back({&kSetPointZeroMissing, "", {}});
    } else if (in.accuracy && std::abs(in.zero->si()) > in.accuracy->si()) {
        findings.push_back({&kSetPointZero, "", {in.units.text(*in.zero), in.units.text(*in.accuracy)}});
    }
    constexpr double kMostOfNeed = 1.10;
    if (in.need && in.need->si() > 0 && in.setPoint / *in.need > kMostOfNeed * (1 + 1e-9)) {
        findings.push_back(
            {&kSetPointTooHigh,
             "",
             {in.units.text(in.setPoint), quantity::percentDigits(in.setPoint / *in.need, 4)}});
    }
    if (in.indexOfDesign) {
        const double low = 1 + in.toleranceLow.si();
        const double high = 1 + in.toleranceHigh.si();
        if (in.indexOfDesign->si() < low || in.indexOfDesign->si() > high) {
            findings.push_back({&kSetPointIndex,
                                "",
                                {quantity::percentDigits(in.indexOfDesign->si(), 4),
                                 quantity::percentDigits(low, 4), quantity::percentDigits(high, 4)}});
        }
    }
    if (in.low && in.high && *in.low > *in.high) {
        findings.push_back({&kSetPointLimits, "", {in.units.text(*in.low), in.units.text(*in.high)}});
    }
    findings.push_back({&kSetPointVariable, "", {}});
    return findings;
}

}  // namespace ww::energy
