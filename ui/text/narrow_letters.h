// Letters written narrower where a text has little room: the one way and the one limit of cells and hints.
// Not for where the text breaks or is cut (ui/delegates/fitted_text.h).
#pragma once

#include <QFont>
#include <optional>

namespace ww::ui::text {

/// How narrow letters may become, percent of their width: beyond that they are not read at arm's length.
inline constexpr int kLeastStretch = 70;

/// The font with letters of that width, percent; at 100 the font as it is.
QFont narrowed(const QFont& font, int stretch);
/// How wide the letters of a font are, percent.
int stretchOf(const QFont& font);
/// With the narrowest letters that may be written.
QFont narrowest(const QFont& font);

/// The widest letters of the font that `fits` accepts, in steps from `widest`, percent, down to the
/// narrowest; nothing where it accepts none.
template <class Fits>
std::optional<QFont> widestThatFits(const QFont& font, Fits fits, int widest = 100) {
    // Few widths: a column looks calm, and each width of letters is loaded by itself.
    constexpr int kStep = 15;
    for (int stretch = widest; stretch >= kLeastStretch; stretch -= kStep) {
        if (QFont tried = narrowed(font, stretch); fits(tried)) {
            return tried;
        }
    }
    return std::nullopt;
}

}  // namespace ww::ui::text
