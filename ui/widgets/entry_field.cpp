#include "ui/widgets/entry_field.h"

#include <QKeyEvent>
#include <QPointer>

namespace ww::ui {

namespace {

bool isUndo(const QKeyEvent& event) {
    return event.matches(QKeySequence::Undo);
}

bool isUndoOrRedo(const QKeyEvent& event) {
    return isUndo(event) || event.matches(QKeySequence::Redo);
}

}  // namespace

EntryField::EntryField(QWidget* parent) : HintedField(parent) {
    // Who types on has taken what was offered.
    connect(this, &QLineEdit::textEdited, this, &EntryField::takeOffered);
}

void EntryField::setStored(const QString& text) {
    m_stored = text;
    m_isRefused = false;
    m_isOffered = false;
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

void EntryField::setOffered(const QString& text) {
    setText(text);
    m_isOffered = true;
}

bool EntryField::commit() {
    if (!isTyped() || !m_store || m_isCommitting) {
        return true;
    }
    if (m_isOffered) {
        emit offerWaits();
        return false;
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
    const bool wasRefused = isRefused();
    m_isRefused = false;
    m_isOffered = false;
    setText(m_stored);
    selectAll();
    if (wasRefused) {
        emit refusalGivenUp();
    }
}

void EntryField::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        takeOffered();
        event->accept();
        if (commit()) {
            selectAll();
            emit returnPressed();
        }
        return;
    }
    if (event->key() == Qt::Key_Escape) {
        // With nothing to restore it is for the panel that the field stands in.
        event->setAccepted(isTyped());
        restore();
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
