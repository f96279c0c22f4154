#include "ui/widgets/entry_field.h"

#include <QKeyEvent>

namespace ww::ui {

EntryField::EntryField(QWidget* parent) : QLineEdit(parent) {}

void EntryField::setStored(const QString& text) {
    m_stored = text;
    if (this->text() != text) {
        setText(text);
        setCursorPosition(0);
    }
}

bool EntryField::commit() {
    if (text() == m_stored || !m_store) {
        return true;
    }
    if (!m_store(text())) {
        selectAll();
        return false;
    }
    return true;
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
        setText(m_stored);
        selectAll();
        event->accept();
        return;
    }
    QLineEdit::keyPressEvent(event);
}

void EntryField::focusOutEvent(QFocusEvent* event) {
    QLineEdit::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason &&
        !commit()) {
        // The text is kept as typed so that it can be mended; what is stored has not changed.
        deselect();
    }
}

}  // namespace ww::ui
