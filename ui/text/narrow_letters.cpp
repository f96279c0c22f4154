#include "ui/text/narrow_letters.h"

namespace ww::ui::text {

QFont narrowed(const QFont& font, int stretch) {
    QFont made = font;
    if (stretch < 100) {
        made.setStretch(stretch);
    }
    return made;
}

QFont narrowest(const QFont& font) {
    return narrowed(font, kLeastStretch);
}

}  // namespace ww::ui::text
