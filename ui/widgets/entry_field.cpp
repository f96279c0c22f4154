#include "ui/widgets/entry_field.h"

#include <QKeyEvent>

namespace ww::ui {

namespace {

bool isUndo(const QKeyEvent& event) {
    return event.matches(QKeySequence::Undo);
}

bool isUndoOrRedo(const QKeyEvent& event) {
    return isUndo(event) || event.matches(QKeySequence::Redo);
}

}  // namespace

EntryField::EntryField(QWidget* parent) : HintedField(parent) {}

void EntryField::setStored(const QString& text) {
    m_stored = text;
    // Setting a text also ends the line's own undo, which knows nothing of what is stored.
    if (isTyped() || isUndoAvailable() || isRedoAvailable()) {
        const int cursor = isTyped() ? 0 : cursorPosition();
        setText(text);
        setCursorPosition(cursor);
    }
}

bool EntryField::commit() {
    if (!isTyped() || !m_store) {
        return true;
    }
    if (!m_store(text())) {
        selectAll();
        return false;
    }
    return true;
}

void EntryField::restore() {
    setText(m_stored);
    selectAll();
}

bool EntryField::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && !isTyped() &&
        isUndoOrRedo(*static_cast<QKeyEvent*>(event))) {
        event->ignore();
        return true;
    }
    return HintedField::event(event);
}

void EntryField::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (commit()) {
            selectAll();
        }
        event->accept();
        return;
    }
    if (event->key() == Qt::Key_Escape) {
        restore();
        event->accept();
        return;
    }
    if (isUndoOrRedo(*event)) {
        if (isUndo(*event) && isTyped()) {
            restore();
        }
        event->accept();
        return;
    }
    HintedField::keyPressEvent(event);
}

void EntryField::focusOutEvent(QFocusEvent* event) {
    HintedField::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason &&
        !commit()) {
        // The text is kept as typed so that it can be mended; what is stored has not changed.
        deselect();
    }
}

}  // namespace ww::ui
