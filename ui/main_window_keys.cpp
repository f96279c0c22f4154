// The line of keys at the bottom of the main window: what acts in the place that is shown, and nothing else.
#include "ui/main_window.h"
#include "ui/places/adjust/adjust_place.h"
#include "ui/places/walk/walk_place.h"
#include "ui/widgets/key_hints.h"

namespace ww::ui {

QString MainWindow::usualHint(Place place) const {
    const bool isWritable = !m_bridge.isReadOnly();
    const bool hasBranches = !m_bridge.project().branches().empty();
    KeyHints keys;
    switch (place) {
        case Job:
            keys.add(tr("Enter stores"), isWritable)
                .add(tr("Esc restores"), isWritable)
                .add(tr("Tab next field"));
            break;
        case System:
            keys.add(tr("Ctrl+Shift+A adds a branch"), isWritable && !hasBranches)
                .add(tr("type to change a cell"), isWritable && hasBranches)
                .add(tr("Enter down"), hasBranches)
                .add(tr("Tab right"), isWritable && hasBranches)
                .add(tr("Ctrl+J find"), hasBranches)
                .add(tr("F6 leaves the table"), hasBranches);
            break;
        case Pump:
            keys.add(tr("Ctrl+Alt+1 to 0, Ctrl+Alt+Z pages"))
                .add(tr("Ctrl+T numbers as a table"))
                .add(tr("Enter stores"), isWritable);
            break;
        case Review:
            keys.add(tr("Ctrl+Alt+C comment on the cell"), m_commands->comment->isEnabled())
                .add(tr("Ctrl+H its history"), !m_bridge.project().rounds().empty())
                .add(tr("Ctrl+Shift+Down next open item"));
            break;
        case Report:
            keys.add(tr("Up, Down pages")).add(tr("Ctrl+P export as PDF"));
            break;
        case Walk:
        case Adjust:
            break;
    }
    return keys.line();
}

bool MainWindow::takesMeter() const {
    if (!m_commands->takeMeter->isEnabled()) {
        return false;
    }
    const auto* walking = there<WalkPlace>(Walk);
    const auto* adjusting = there<AdjustPlace>(Adjust);
    return (place() == Walk && walking != nullptr && walking->takesReadings()) ||
           (place() == Adjust && adjusting != nullptr && adjusting->takesReadings());
}

void MainWindow::refreshKeyLine() {
    KeyHints keys;
    if (!m_bridge.isOpen()) {
        keys.add(tr("Ctrl+O opens a workbook"))
            .add(tr("Ctrl+N new job"))
            .add(tr("Ctrl+Shift+P practice"))
            .add(tr("F1 handbook"));
    } else {
        const QString undo = m_bridge.undoLabel();
        keys.add(tr("Ctrl+L takes the meter's value"), takesMeter())
            .add(m_places[place()].hint())
            .add(tr("Ctrl+Z undo %1").arg(undo), !undo.isEmpty());
    }
    m_keyLine->setText(keys.line());
}

}  // namespace ww::ui
