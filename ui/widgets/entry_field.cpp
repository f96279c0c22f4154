#include "ui/widgets/entry_field.h"

#include <QKeyEvent>
#include <QPointer>
#include <utility>

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
    m_isRefused = false;
    // Setting a text also ends the line's own undo, which knows nothing of what is stored.
    if (isTyped() || isUndoAvailable() || isRedoAvailable()) {
        const int cursor = isTyped() ? 0 : cursorPosition();
        setText(text);
        setCursorPosition(cursor);
    }
}

void EntryField::renewStored(const QString& text) {
    if (isRefused()) {
        m_stored = text;
    } else {
        setStored(text);
    }
}

void EntryField::setRefused(const QString& text) {
    setText(text);
    m_isRefused = true;
}

bool EntryField::commit() {
    if (!isTyped() || !m_store || m_isCommitting) {
        return true;
    }
    // What is stored may take the page of this field away.
    const QPointer<EntryField> self(this);
    m_isCommitting = true;
    const bool isTaken = m_store(text());
    if (!self) {
        return isTaken;
    }
    m_isCommitting = false;
    m_isRefused = !isTaken;
    if (m_isRefused) {
        selectAll();
    }
    return isTaken;
}

void EntryField::restore() {
    const bool wasRefused = std::exchange(m_isRefused, false);
    setText(m_stored);
    selectAll();
    if (wasRefused) {
        emit refusalGivenUp();
    }
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

void EntryField::focusInEvent(QFocusEvent* event) {
    HintedField::focusInEvent(event);
    // Why a text was refused is said again where it comes to hand again.
    if (isRefused() && event->reason() != Qt::PopupFocusReason &&
        event->reason() != Qt::ActiveWindowFocusReason) {
        commit();
    }
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
