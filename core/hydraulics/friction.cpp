#include "core/hydraulics/friction.h"

#include <cmath>

#include "core/base/expects.h"

namespace ww::hydraulics {

namespace {

constexpr double kLaminarEnd = 2000;
constexpr double kTurbulentStart = 4000;
constexpr double kPerLn = 0.86858896380650365530;  // 2 / ln 10

FrictionFactor laminar(double reynolds) {
    return {64 / reynolds, -64 / (reynolds * reynolds)};
}

FrictionFactor swameeJain(double reynolds, double roughness) {
    const double rough = roughness / 3.7;
    const double smooth = 5.74 * std::pow(reynolds, -0.9);
    const double root = -kPerLn * std::log(rough + smooth);  // 1/sqrt(f)
    const double rootSlope = kPerLn * 0.9 * smooth / (reynolds * (rough + smooth));
    return {1 / (root * root), -2 * rootSlope / (root * root * root)};
}

/// With x = 1/sqrt(f): x + 2 log10(r/3.7 + 2.51 x/Re) = 0, which is convex enough for Newton's method from
/// any estimate within a few percent to double its digits at each step.
FrictionFactor colebrook(double reynolds, double roughness) {
    const double rough = roughness / 3.7;
    const double smooth = 2.51 / reynolds;
    double root = -kPerLn * std::log(rough + 5.74 * std::pow(reynolds, -0.9));
    double inside = 0;
    for (int i = 0; i < 6; ++i) {
        inside = rough + smooth * root;
        const double miss = root + kPerLn * std::log(inside);
        const double step = miss / (1 + kPerLn * smooth / inside);
        root -= step;
        if (std::abs(step) < 1e-9 * root) {
            break;
        }
    }
    inside = rough + smooth * root;
    const double rootSlope = kPerLn * smooth * root / (reynolds * inside) / (1 + kPerLn * smooth / inside);
    return {1 / (root * root), -2 * rootSlope / (root * root * root)};
}

/// The cubic between the ends of the two laws, in u = (Re - 2000)/2000.
FrictionFactor cubicTransition(double reynolds, const FrictionFactor& end) {
    constexpr double kSpan = kTurbulentStart - kLaminarEnd;
    const FrictionFactor start = laminar(kLaminarEnd);
    const double u = (reynolds - kLaminarEnd) / kSpan;
    const double startSlope = start.slopePerReynolds * kSpan;
    const double endSlope = end.slopePerReynolds * kSpan;
    const double rise = end.factor - start.factor;
    const double square = 3 * rise - 2 * startSlope - endSlope;
    const double cube = startSlope + endSlope - 2 * rise;
    return {start.factor + u * (startSlope + u * (square + u * cube)),
            (startSlope + u * (2 * square + 3 * u * cube)) / kSpan};
}

FrictionFactor linearTransition(double reynolds, double roughness) {
    constexpr double kSpan = kTurbulentStart - kLaminarEnd;
    const double weight = (reynolds - kLaminarEnd) / kSpan;
    const FrictionFactor below = laminar(reynolds);
    const FrictionFactor above = colebrook(reynolds, roughness);
    return {(1 - weight) * below.factor + weight * above.factor, (1 - weight) * below.slopePerReynolds +
                                                                     weight * above.slopePerReynolds +
                                                                     (above.factor - below.factor) / kSpan};
}

}  // namespace

FrictionFactor frictionFactor(FrictionLaw law, double reynoldsNumber, double relativeRoughness) {
    EXPECTS(reynoldsNumber > 0 && relativeRoughness >= 0 && relativeRoughness <= 0.1);
    if (reynoldsNumber <= kLaminarEnd) {
        return laminar(reynoldsNumber);
    }
    const auto turbulent = [&](double reynolds) {
        return law == FrictionLaw::SwameeJain ? swameeJain(reynolds, relativeRoughness)
                                              : colebrook(reynolds, relativeRoughness);
    };
    if (reynoldsNumber >= kTurbulentStart) {
        return turbulent(reynoldsNumber);
    }
    return law == FrictionLaw::ColebrookLinearTransition
               ? linearTransition(reynoldsNumber, relativeRoughness)
               : cubicTransition(reynoldsNumber, turbulent(kTurbulentStart));
}

}  // namespace ww::hydraulics
