#include "ui/widgets/note_field.h"

#include <QKeyEvent>
#include <QMimeData>

namespace ww::ui {
namespace {

bool isEnter(const QKeyEvent& event) {
    return event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
}

}  // namespace

NoteField::NoteField(QWidget* parent) : QPlainTextEdit(parent) {
    setTabChangesFocus(true);
}

void NoteField::setStored(const QString& text) {
    m_stored = text;
    if (isTyped()) {
        setPlainText(text);
    }
}

bool NoteField::commit() {
    if (!isTyped() || !m_store) {
        return true;
    }
    const QString typed = toPlainText();
    if (!m_store(typed)) {
        return false;
    }
    m_stored = typed;
    return true;
}

void NoteField::keyPressEvent(QKeyEvent* event) {
    if (isEnter(*event) && event->modifiers().testFlag(Qt::ControlModifier)) {
        if (commit()) {
            emit done();
        }
        event->accept();
        return;
    }
    if (event->key() == Qt::Key_Escape) {
        if (isTyped()) {
            setPlainText(m_stored);
        } else {
            emit done();
        }
        event->accept();
        return;
    }
    QPlainTextEdit::keyPressEvent(event);
}

void NoteField::focusOutEvent(QFocusEvent* event) {
    QPlainTextEdit::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason) {
        commit();
    }
}

void NoteField::insertFromMimeData(const QMimeData* source) {
    if (!source->formats().isEmpty()) {
        QPlainTextEdit::insertFromMimeData(source);
    }
}

bool NoteField::event(QEvent* event) {
    // Here Ctrl+Enter ends the text; the program's own meaning of it comes after.
    if (event->type() == QEvent::ShortcutOverride && isEnter(*static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
    }
    return QPlainTextEdit::event(event);
}

}  // namespace ww::ui
