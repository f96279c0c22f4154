// The keys that act in the place System, by what it shows and what has the keys.
#include "ui/places/system/system_place.h"

namespace ww::ui {

KeyHints SystemPlace::hint(const QWidget* inHand) const {
    const bool isWritable = !m_bridge.isReadOnly();
    const bool hasBranches = m_model->rowCount() > 0;
    const bool isSystemShown = hasBranches && !m_showValves->isChecked();
    return KeyHints()
        .add(tr("arrows follow the pipe"), inHand == m_diagram)
        .add(tr("Enter opens the valve"), inHand == m_diagram && m_bridge.selectedBranch())
        .add(tr("+, - zoom"), inHand == m_diagram)
        .add(tr("Enter goes to the branch"), inHand == m_find && !m_find->text().trimmed().isEmpty())
        .add(tr("Ctrl+Shift+A adds a branch"), isWritable && !hasBranches)
        .add(tr("Ctrl+J find"), hasBranches && inHand != m_find)
        .add(tr("Ctrl+T diagram"), isSystemShown)
        .add(tr("Ctrl+Alt+F what if"), isSystemShown)
        .add(tr("Alt+Shift+Up, Alt+Shift+Down along the route"),
             isSystemShown && isWritable && m_bridge.selectedBranch().has_value());
}

}  // namespace ww::ui
