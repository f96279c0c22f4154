#include "ui/widgets/blind_typing.h"

namespace ww::ui {

void BlindTyping::refusedAt(const QKeyEvent& key) {
    if (key.timestamp() != 0) {
        m_last = key.timestamp();
    }
}

bool BlindTyping::holdsBack(const QKeyEvent& key) {
    const bool isCommand = key.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier);
    if (!m_last || isCommand || key.key() == Qt::Key_Escape) {
        return false;
    }
    if (key.timestamp() == 0 || key.timestamp() - *m_last >= kRest) {
        m_last.reset();
        return false;
    }
    m_last = key.timestamp();
    return true;
}

}  // namespace ww::ui
