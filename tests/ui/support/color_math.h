// Contrast and distance of colours, computed here from the published definitions, apart from the program's
// own.
#pragma once

#include <QColor>
#include <algorithm>
#include <array>
#include <cmath>

namespace ww::support {

using Triple = std::array<double, 3>;
using Matrix = std::array<Triple, 3>;

/// sRGB components without their gamma (IEC 61966-2-1).
inline Triple linearRgb(const QColor& color) {
    const auto linear = [](double c) {
        return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return {linear(color.redF()), linear(color.greenF()), linear(color.blueF())};
}

/// Contrast ratio (WCAG 2.2, definitions).
inline double contrastRatio(const QColor& left, const QColor& right) {
    const auto luminance = [](const QColor& color) {
        const Triple c = linearRgb(color);
        return 0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2] + 0.05;
    };
    const double a = luminance(left);
    const double b = luminance(right);
    return std::max(a, b) / std::min(a, b);
}

inline Triple times(const Matrix& matrix, const Triple& v) {
    Triple out{};
    for (std::size_t i = 0; i < 3; ++i) {
        out[i] = matrix[i][0] * v[0] + matrix[i][1] * v[1] + matrix[i][2] * v[2];
    }
    return out;
}

/// OKLab (B. Ottosson, "A perceptual color space for image processing", 2020) of linear RGB.
inline Triple okLab(Triple rgb) {
    for (double& c : rgb) {
        c = std::clamp(c, 0.0, 1.0);
    }
    constexpr Matrix kCones{{{0.4122214708, 0.5363325363, 0.0514459929},
                             {0.2119034982, 0.6806995451, 0.1073969566},
                             {0.0883024619, 0.2817188376, 0.6299787005}}};
    constexpr Matrix kLab{{{0.2104542553, 0.7936177850, -0.0040720468},
                           {1.9779984951, -2.4285922050, 0.4505937099},
                           {0.0259040371, 0.7827717662, -0.8086757660}}};
    Triple cones = times(kCones, rgb);
    for (double& c : cones) {
        c = std::cbrt(c);
    }
    return times(kLab, cones);
}

/// How eyes see linear RGB: all, and without red, green or blue cones (G. Machado, M. Oliveira, L. Fernandes,
/// "A physiologically-based model for simulation of color vision deficiency", 2009, severity 1.0).
inline constexpr std::array<Matrix, 4> kEyes{
    {{{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}},
     {{{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}},
     {{{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}},
     {{{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}}}};

/// The smallest distance in OKLab that any of these eyes sees, in hundredths.
inline double smallestDistance(const QColor& left, const QColor& right) {
    double smallest = 1e9;
    for (const Matrix& eye : kEyes) {
        const Triple a = okLab(times(eye, linearRgb(left)));
        const Triple b = okLab(times(eye, linearRgb(right)));
        smallest = std::min(smallest, 100 * std::hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]));
    }
    return smallest;
}

}  // namespace ww::support
