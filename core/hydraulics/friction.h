// The Darcy friction factor of a full round pipe over Reynolds number and relative roughness.
// Not for the drop of a pipe (element.h); not for open channels.
#pragma once

namespace ww::hydraulics {

/// Which formula is taken above a Reynolds number of 4000 and how it joins the laminar 64/Re below 2000.
/// Between 2000 and 4000 real pipes are undefined; every law below is one continuous convention.
enum class FrictionLaw {
    /// Colebrook (J. Inst. Civ. Eng. 11 (1939) 133), joined by the cubic in Re that keeps value and slope at
    /// both ends.
    Colebrook,
    /// Colebrook; in between the mean of 64/Re and Colebrook weighted linearly in Re. Its slope has small
    /// steps at 2000 and 4000. For reproducing networks computed with this convention.
    ColebrookLinearTransition,
    /// Swamee and Jain (J. Hydraul. Div. ASCE 102 (1976) 657), joined by the cubic of Dunlop, which keeps
    /// value and slope at both ends.
    SwameeJain,
};

/// The friction factor, and its derivative with Re.
struct FrictionFactor {
    double factor = 0;
    double slopePerReynolds = 0;
};

/// Darcy friction factor; Reynolds number above 0, relative roughness (height over diameter) from 0 to 0.1.
/// Outside is a broken contract. Colebrook is solved to the last places of a double.
FrictionFactor frictionFactor(FrictionLaw law, double reynoldsNumber, double relativeRoughness);

}  // namespace ww::hydraulics
