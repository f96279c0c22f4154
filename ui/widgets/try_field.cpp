#include "ui/widgets/try_field.h"

#include <QKeyEvent>

namespace ww::ui {

TryField::TryField(QWidget* parent) : QLineEdit(parent) {}

bool TryField::commit() {
    const QString typed = text();
    if (typed.trimmed().isEmpty()) {
        clear();
        return true;
    }
    if (!m_store || !m_store(typed)) {
        selectAll();
        return false;
    }
    clear();
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
            text().isEmpty() ? emit givenUp() : clear();
            break;
        case Qt::Key_Up:
        case Qt::Key_Down:
            // What is typed was read at the setting that stands, so it is stored before the setting moves.
            if (commit()) {
                emit stepped(event->key() == Qt::Key_Up ? 1 : -1);
            }
            break;
        case Qt::Key_PageUp:
        case Qt::Key_PageDown:
            if (commit()) {
                emit turned(event->key() == Qt::Key_PageUp ? 1 : -1);
            }
            break;
        default:
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
