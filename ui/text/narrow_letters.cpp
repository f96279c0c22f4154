#include "ui/text/narrow_letters.h"

namespace ww::ui::text {

QFont narrowed(const QFont& font, int stretch) {
    QFont made = font;
    if (stretch < 100) {
        made.setStretch(stretch);
    }
    return made;
}

int stretchOf(const QFont& font) {
    // A font that nobody narrowed has none.
    return font.stretch() == QFont::AnyStretch ? 100 : font.stretch();
}

QFont narrowest(const QFont& font) {
    return narrowed(font, kLeastStretch);
}

}  // namespace ww::ui::text
