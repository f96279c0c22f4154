// A smooth curve through points that never overshoots between two of them; straight beyond the ends; its
// inverse. Pure numbers on both axes: the types that use it (valve_characteristic.h, pump_curve.h) give them
// their units.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace ww::curve {

/// Piecewise cubic of F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238: slopes at the
/// points from the parabola through three neighbours (a parabola is therefore reproduced exactly), then
/// limited to the circle of radius 3 that keeps every piece monotone. A local extremum of the points gets
/// slope 0. The first slope is never less steep than 1/1000 of its piece's chord and the last one, which goes
/// on beyond the end, than 1/10, so that strictly rising or falling points give a strictly rising or falling
/// curve; the largest error this makes in a parabola with its top at the first point is 1/6750 of the first
/// piece's rise.
class MonotoneCubic {
  public:
    /// No points: nothing may be asked of it.
    MonotoneCubic() = default;
    /// At least one point; abscissas strictly rising, everything finite. One point alone is a constant.
    MonotoneCubic(std::span<const double> abscissas, std::span<const double> ordinates);

    /// Made without points.
    bool isEmpty() const { return m_abscissas.empty(); }
    /// The ends of the points; not of an empty one.
    double firstAbscissa() const { return m_abscissas.front(); }
    double lastAbscissa() const { return m_abscissas.back(); }
    /// Whether it lies within the ends.
    bool covers(double abscissa) const {
        return !isEmpty() && abscissa >= firstAbscissa() && abscissa <= lastAbscissa();
    }

    /// The ordinate there; beyond the ends the end slope goes on.
    double value(double abscissa) const;
    /// The derivative there.
    double slope(double abscissa) const;
    /// The abscissa at which value() is this ordinate: the smallest one where the curve is level. Beyond the
    /// end ordinates the end slope goes on. The points must rise throughout or fall throughout (level pieces
    /// allowed, but not at an end beyond which is asked). Accurate to a few units in the last place of the
    /// piece's length, divided by slope over chord slope.
    double inverse(double ordinate) const;

  private:
    /// ordinate + slope t + square t^2 + cube t^3, t from the piece's start.
    struct Piece {
        double ordinate = 0;
        double slope = 0;
        double square = 0;
        double cube = 0;

        double at(double t) const { return ordinate + t * (slope + t * (square + t * cube)); }
        double slopeAt(double t) const { return slope + t * (2 * square + 3 * cube * t); }
    };

    std::size_t pieceAt(double abscissa) const;
    double inverseWithin(std::size_t piece, double ordinate) const;

    std::vector<double> m_abscissas;
    std::vector<Piece> m_pieces;  ///< one from each point; the last is the straight line beyond the end
};

}  // namespace ww::curve
