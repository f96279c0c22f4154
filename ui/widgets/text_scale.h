// How much larger the text is than the one that sizes in pixels are written for.
#pragma once

#include <QFontInfo>
#include <algorithm>

namespace ww::ui {

/// Of a font, against letters of 13 pixels (10 points on a usual screen); at least 1.
inline double textScale(const QFont& font) {
    constexpr double kUsualPixels = 13.0;
    return std::max(1.0, QFontInfo(font).pixelSize() / kUsualPixels);
}

}  // namespace ww::ui
