#include "core/curve/affinity.h"

#include <algorithm>
#include <cmath>

namespace ww::curve {

double affinityFactor(Head present, Head wanted) {
    EXPECTS(present.si() > 0 && wanted.si() > 0);
    return std::sqrt(wanted / present);
}

VolumeFlow similarFlow(const PumpCurve& curve, VolumeFlow flow, Head head) {
    EXPECTS(flow.si() > 0 && head.si() > 0);
    const double parabola = head.si() / (flow.si() * flow.si());
    double low_m3s = 0;
    double high_m3s = curve.runOut().si();
    double at_m3s = std::min(high_m3s, std::sqrt(curve.shutoffHead().si() / parabola));
    // The curve falls and the parabola rises, so their difference has one root; Newton's step, or a halving
    // where that would leave the bracket.
    for (int i = 0; i < 100; ++i) {
        const double miss_m = curve.head(VolumeFlow::si(at_m3s)).si() - parabola * at_m3s * at_m3s;
        if (miss_m == 0) {
            break;
        }
        (miss_m > 0 ? low_m3s : high_m3s) = at_m3s;
        const double slope = curve.headSlope(VolumeFlow::si(at_m3s)) - 2 * parabola * at_m3s;
        const double newton_m3s = at_m3s - miss_m / slope;
        const bool isInside = newton_m3s > low_m3s && newton_m3s < high_m3s;
        const double next_m3s = isInside ? newton_m3s : 0.5 * (low_m3s + high_m3s);
        const bool isSettled = std::abs(next_m3s - at_m3s) <= 1e-15 * at_m3s;
        at_m3s = next_m3s;
        if (isSettled) {
            break;
        }
    }
    return VolumeFlow::si(at_m3s);
}

double affinityFactor(const PumpCurve& curve, VolumeFlow flow, Head head) {
    return flow / similarFlow(curve, flow, head);
}

Length impellerFromShutoff(Length known, Head headOfKnown, Head measured) {
    return known * affinityFactor(headOfKnown, measured);
}

}  // namespace ww::curve
