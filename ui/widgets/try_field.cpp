#include "ui/widgets/try_field.h"

#include <QKeyEvent>
#include <utility>

namespace ww::ui {

TryField::TryField(QWidget* parent) : QLineEdit(parent) {}

bool TryField::commit() {
    const QString typed = text();
    if (isBlank()) {
        empty();
        return true;
    }
    if (!m_store || !m_store(typed)) {
        m_isRefused = true;
        selectAll();
        return false;
    }
    m_isRefused = false;
    empty();
    return true;
}

void TryField::keyPressEvent(QKeyEvent* event) {
    const bool isPlain = !(event->modifiers() & ~Qt::KeyboardModifiers(Qt::KeypadModifier));
    switch (isPlain ? event->key() : 0) {
        case Qt::Key_Return:
        case Qt::Key_Enter:
            commit();
            break;
        case Qt::Key_Escape:
            text().isEmpty() ? emit givenUp() : empty();
            if (std::exchange(m_isRefused, false)) {
                emit refusalGivenUp();
            }
            break;
        case Qt::Key_Up:
        case Qt::Key_Down:
            emit stepped(event->key() == Qt::Key_Up ? 1 : -1);
            break;
        case Qt::Key_PageUp:
        case Qt::Key_PageDown:
            emit turned(event->key() == Qt::Key_PageUp ? 1 : -1);
            break;
        default:
            if (text().isEmpty() &&
                (event->matches(QKeySequence::Undo) || event->matches(QKeySequence::Redo))) {
                event->ignore();  // It is for the window, also where that has nothing to take back.
                return;
            }
            QLineEdit::keyPressEvent(event);
            return;
    }
    event->accept();
}

bool TryField::event(QEvent* event) {
    // While nothing is typed the chords of the program come before those of the field.
    if (event->type() == QEvent::ShortcutOverride && text().isEmpty()) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (key->modifiers().testFlag(Qt::ControlModifier) && !key->matches(QKeySequence::Paste)) {
            event->ignore();
            return true;
        }
    }
    return QLineEdit::event(event);
}

}  // namespace ww::ui
