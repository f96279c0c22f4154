#include "core/curve/monotone_cubic.h"

#include <algorithm>
#include <cmath>

#include "core/base/expects.h"

namespace ww::curve {

namespace {

constexpr double kLeastFirstSlope = 1e-3;
constexpr double kLeastLastSlope = 0.1;

/// Slope at the middle of three points from the parabola through them; 0 at a local extremum or a level
/// piece.
double middleSlope(double stepBefore, double stepAfter, double chordBefore, double chordAfter) {
    if (chordBefore * chordAfter <= 0) {
        return 0;
    }
    return (stepAfter * chordBefore + stepBefore * chordAfter) / (stepBefore + stepAfter);
}

/// Slope at the end next to `chordNear`, from the parabola through the three points nearest to it.
double endSlope(double stepNear, double stepFar, double chordNear, double chordFar) {
    if (chordNear == 0) {
        return 0;
    }
    const double parabola =
        ((2 * stepNear + stepFar) * chordNear - stepNear * chordFar) / (stepNear + stepFar);
    return chordNear * std::clamp(parabola / chordNear, 0.0, 3.0);
}

std::vector<double> slopesBeforeLimiting(std::span<const double> steps, std::span<const double> chords) {
    const std::size_t pieces = chords.size();
    std::vector<double> slopes(pieces + 1, 0.0);
    if (pieces == 1) {
        slopes = {chords[0], chords[0]};
        return slopes;
    }
    for (std::size_t i = 1; i < pieces; ++i) {
        slopes[i] = middleSlope(steps[i - 1], steps[i], chords[i - 1], chords[i]);
    }
    slopes.front() = endSlope(steps[0], steps[1], chords[0], chords[1]);
    slopes.back() = endSlope(steps[pieces - 1], steps[pieces - 2], chords[pieces - 1], chords[pieces - 2]);
    return slopes;
}

double ratio(double slope, double chord) {
    return chord == 0 ? 0 : slope / chord;
}

/// Shortens the pair of end slopes of each piece to the circle within which a cubic cannot turn.
void limitSlopes(std::span<const double> chords, std::vector<double>& slopes) {
    for (std::size_t i = 0; i < chords.size(); ++i) {
        if (chords[i] == 0) {
            slopes[i] = slopes[i + 1] = 0;
            continue;
        }
        const double atStart = slopes[i] / chords[i];
        const double atEnd = slopes[i + 1] / chords[i];
        const double radius = std::hypot(atStart, atEnd);
        if (radius > 3) {
            slopes[i] *= 3 / radius;
            slopes[i + 1] *= 3 / radius;
        }
    }
    // Raising a slope that is this far inside the square of side 3 keeps the piece monotone.
    slopes.front() = chords.front() * std::max(ratio(slopes.front(), chords.front()), kLeastFirstSlope);
    slopes.back() = chords.back() * std::max(ratio(slopes.back(), chords.back()), kLeastLastSlope);
}

}  // namespace

MonotoneCubic::MonotoneCubic(std::span<const double> abscissas, std::span<const double> ordinates)
    : m_abscissas(abscissas.begin(), abscissas.end()), m_pieces(abscissas.size()) {
    EXPECTS(!abscissas.empty() && abscissas.size() == ordinates.size());
    const std::size_t pieces = abscissas.size() - 1;
    m_pieces.back().ordinate = ordinates.back();
    EXPECTS(std::isfinite(abscissas.back()) && std::isfinite(ordinates.back()));
    if (pieces == 0) {
        return;
    }
    std::vector<double> steps(pieces);
    std::vector<double> chords(pieces);
    for (std::size_t i = 0; i < pieces; ++i) {
        steps[i] = abscissas[i + 1] - abscissas[i];
        EXPECTS(steps[i] > 0);
        chords[i] = (ordinates[i + 1] - ordinates[i]) / steps[i];
        EXPECTS(std::isfinite(chords[i]));
    }
    std::vector<double> slopes = slopesBeforeLimiting(steps, chords);
    limitSlopes(chords, slopes);
    for (std::size_t i = 0; i < pieces; ++i) {
        m_pieces[i] = {ordinates[i], slopes[i], (3 * chords[i] - 2 * slopes[i] - slopes[i + 1]) / steps[i],
                       (slopes[i] + slopes[i + 1] - 2 * chords[i]) / (steps[i] * steps[i])};
    }
    m_pieces.back().slope = slopes.back();
}

std::size_t MonotoneCubic::pieceAt(double abscissa) const {
    EXPECTS(!m_abscissas.empty());
    // A halving search without unpredictable branches: this runs millions of times in a solve.
    const double* first = m_abscissas.data();
    std::size_t count = m_abscissas.size();
    while (count > 1) {
        const std::size_t half = count / 2;
        first += first[half] <= abscissa ? half : 0;
        count -= half;
    }
    return static_cast<std::size_t>(first - m_abscissas.data());
}

double MonotoneCubic::value(double abscissa) const {
    const std::size_t i = pieceAt(abscissa);
    const double t = abscissa - m_abscissas[i];
    return t < 0 ? m_pieces[0].ordinate + t * m_pieces[0].slope : m_pieces[i].at(t);
}

double MonotoneCubic::slope(double abscissa) const {
    const std::size_t i = pieceAt(abscissa);
    const double t = abscissa - m_abscissas[i];
    return t < 0 ? m_pieces[0].slope : m_pieces[i].slopeAt(t);
}

double MonotoneCubic::inverse(double ordinate) const {
    EXPECTS(m_abscissas.size() >= 2);
    const Piece& first = m_pieces.front();
    const Piece& last = m_pieces.back();
    const double direction = last.ordinate > first.ordinate ? 1.0 : -1.0;
    const auto isBefore = [&](const Piece& piece, double wanted) {
        return direction * piece.ordinate < direction * wanted;
    };
    if (direction * ordinate < direction * first.ordinate) {
        EXPECTS(first.slope != 0);
        return firstAbscissa() + (ordinate - first.ordinate) / first.slope;
    }
    if (direction * ordinate > direction * last.ordinate) {
        EXPECTS(last.slope != 0);
        return lastAbscissa() + (ordinate - last.ordinate) / last.slope;
    }
    const auto end = std::lower_bound(m_pieces.begin(), m_pieces.end(), ordinate, isBefore);
    const auto index = static_cast<std::size_t>(end - m_pieces.begin());
    return end->ordinate == ordinate ? m_abscissas[index] : inverseWithin(index - 1, ordinate);
}

double MonotoneCubic::inverseWithin(std::size_t index, double ordinate) const {
    const Piece& piece = m_pieces[index];
    const double length = m_abscissas[index + 1] - m_abscissas[index];
    const double rise = m_pieces[index + 1].ordinate - piece.ordinate;
    double low = 0;
    double high = length;
    double t = length * (ordinate - piece.ordinate) / rise;
    // Newton's step, or a halving where it would leave the bracket; 100 halvings exhaust a double.
    for (int i = 0; i < 100; ++i) {
        const double miss = piece.at(t) - ordinate;
        if (miss == 0) {
            break;
        }
        (miss * rise < 0 ? low : high) = t;
        const double newton = t - miss / piece.slopeAt(t);
        const double next = newton > low && newton < high ? newton : 0.5 * (low + high);
        const bool isSettled = std::abs(next - t) <= 1e-16 * length;
        t = next;
        if (isSettled) {
            break;
        }
    }
    return m_abscissas[index] + t;
}

}  // namespace ww::curve
