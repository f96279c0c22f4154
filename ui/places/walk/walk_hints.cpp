// The keys that act in the place Walk, by what it shows and what has the keys.
#include "ui/places/walk/walk_place.h"
#include "ui/widgets/control_keys.h"
#include "ui/widgets/entry_field.h"
#include "ui/widgets/note_field.h"

namespace ww::ui {

KeyHints WalkPlace::hint(const QWidget* inHand) const {
    const project::Round* last = m_bridge.project().lastRound();
    const QWidget* panel = m_side->currentWidget();
    if (panel != m_valve && inHand != nullptr && panel->isAncestorOf(inHand)) {
        return panelHint(*inHand);
    }
    if (m_grid->isRefused() && m_grid->editor() == inHand) {
        return KeyHints().add(tr("Enter stores")).add(tr("Esc restores"));
    }
    KeyHints keys;
    if (inHand == m_find) {
        return keys.add(tr("Enter goes to the valve"), !m_find->text().trimmed().isEmpty())
            .add(tr("Esc back to the grid"));
    }
    const bool isEntry = isEntryInHand(inHand);
    if (inHand != nullptr && !isEntry && isAncestorOf(inHand)) {
        keys.add(controlKeys(*inHand));
    }
    if (isConvergenceShown()) {
        return keys.add(tr("Ctrl+T numbers as a table")).add(tr("Ctrl+G back to the grid"));
    }
    if (m_model->rowCount() == 0) {
        return keys.add(tr("Alt+2 system"));
    }
    if (last == nullptr) {
        return keys.add(tr("Ctrl+Shift+N opens round 1"), !m_bridge.isReadOnly());
    }
    return keys.add(readingHint(isEntry));
}

bool WalkPlace::isEntryInHand(const QWidget* inHand) const {
    return m_isCard ? inHand == m_card->dp() || inHand == m_card->setting()
                    : inHand == m_grid || inHand == m_grid->editor();
}

KeyHints WalkPlace::panelHint(const QWidget& inHand) const {
    const QWidget* panel = m_side->currentWidget();
    KeyHints keys;
    if (panel == m_opening) {
        const bool isSpeed = qobject_cast<const SpeedFields*>(inHand.parentWidget()) != nullptr;
        return keys.add(isSpeed ? tr("Enter takes the speed") : tr("Enter opens the round"))
            .add(tr("Tab next choice"))
            .add(tr("Esc back to the grid"));
    }
    if (panel == m_closing &&
        &inHand == m_closing->findChild<QPushButton*>(QString(), Qt::FindDirectChildrenOnly)) {
        return keys.add(tr("Enter closes the round"), m_closing->isReady()).add(tr("Esc back to the grid"));
    }
    if (panel == m_closing) {
        keys.add(tr("Ctrl+Alt+X marks the rest as not turned"), m_closing->offersNotTurned());
    }
    const auto* field = qobject_cast<const EntryField*>(&inHand);
    const auto* note = qobject_cast<const NoteField*>(&inHand);
    const bool isTyped = (field != nullptr && field->isTyped()) || (note != nullptr && note->isTyped());
    if (panel == m_closing && isTyped) {
        return keys.add(tr("Enter stores the reason")).add(tr("Esc restores")).add(tr("Tab next item"));
    }
    return keys.add(controlKeys(inHand))
        .add(panel == m_notes ? tr("Esc back to the walk") : tr("Esc back to the grid"), !isTyped);
}

KeyHints WalkPlace::entryHint() const {
    const project::Project& project = m_bridge.project();
    const auto inHand = branchInHand();
    const project::Branch* branch = inHand ? project.branches().find(*inHand) : nullptr;
    const project::RoundState state = project.lastRound()->state;
    const bool takes = !m_bridge.isReadOnly() && branch != nullptr && m_bridge.openRoundOrNull() != nullptr;
    const bool corrects = !m_bridge.isReadOnly() && branch != nullptr &&
                          !m_model->isUnread(m_grid->currentRow()) &&
                          (state == project::RoundState::Closed || state == project::RoundState::SentBack);
    const bool isAtSetting =
        m_isCard ? m_card->setting()->hasFocus() : m_grid->currentIndex().column() == WalkModel::Setting;
    return KeyHints()
        .add(tr("digits Enter next valve"), takes)
        .add(tr("digits Enter correct the reading"), corrects)
        .add(tr("Tab setting"), takes && branch->valve.has_value() && !isAtSetting)
        .add(tr("x cannot read"), takes && !isAtSetting);
}

KeyHints WalkPlace::readingHint(bool isEntry) const {
    const bool takes = !m_bridge.isReadOnly() && m_bridge.openRoundOrNull() != nullptr;
    const bool isRead = branchInHand() && !m_model->isUnread(m_grid->currentRow());
    KeyHints keys;
    if (isEntry) {
        keys.add(entryHint());
    }
    return keys.add(tr("Ctrl+Shift+N opens the next round"), !m_bridge.isReadOnly() && !takes)
        .add(tr("Alt+4 adjust"), !takes)
        .add(tr("Ctrl+J find"))
        .add(tr("Ctrl+R again"), takes && isRead)
        .add(tr("Ctrl+G convergence"), !takes)
        .add(tr("F6 leaves the grid"), isEntry && !m_isCard);
}

}  // namespace ww::ui
