// What the keys do in an EntryTable: where they lead, and what opens, stores or gives up the open editor.
#include <QKeyEvent>
#include <utility>

#include "ui/widgets/entry_table.h"

namespace ww::ui {
namespace {

/// Whether F6 or Ctrl+Tab is asked for, which elsewhere lead to the next part: the table is left with them.
bool isLeaving(const QEvent& event) {
    if (event.type() != QEvent::ShortcutOverride) {
        return false;
    }
    const auto& key = static_cast<const QKeyEvent&>(event);
    return key.key() == Qt::Key_F6 ||
           (key.key() == Qt::Key_Tab && key.modifiers().testFlag(Qt::ControlModifier));
}

}  // namespace

QModelIndex EntryTable::cellAfterEnter(const QModelIndex& cell) {
    if (m_entersByRow) {
        const QModelIndex next = cellAfterTab(cell);
        return next != cell ? next : QModelIndex();
    }
    return cell.siblingAtRow(cell.row() + 1);
}

QModelIndex EntryTable::cellBeforeEnter(const QModelIndex& cell) {
    if (m_entersByRow) {
        const QModelIndex before = cellBeforeTab(cell);
        return before != cell ? before : model()->index(cell.row() - 1, model()->columnCount() - 1);
    }
    return cell.siblingAtRow(cell.row() - 1);
}

/// A column that has no room and is hidden is passed over.
bool EntryTable::takesTyping(const QModelIndex& cell) const {
    return cell.flags().testFlag(Qt::ItemIsEditable) && !isColumnHidden(cell.column());
}

QModelIndex EntryTable::cellAfterTab(const QModelIndex& cell) const {
    for (int column = cell.column() + 1; column < model()->columnCount(); ++column) {
        const QModelIndex next = cell.siblingAtColumn(column);
        if (takesTyping(next)) {
            return next;
        }
    }
    // A row is done: on with the first cell of the next one.
    for (int column = 0; column < model()->columnCount(); ++column) {
        const QModelIndex next = model()->index(cell.row() + 1, column);
        if (takesTyping(next)) {
            return next;
        }
    }
    return cell;
}

QModelIndex EntryTable::cellBeforeTab(const QModelIndex& cell) const {
    for (int column = cell.column() - 1; column >= 0; --column) {
        const QModelIndex next = cell.siblingAtColumn(column);
        if (takesTyping(next)) {
            return next;
        }
    }
    return cell;
}

void EntryTable::goTo(const QModelIndex& cell) {
    if (cell.isValid()) {
        setCurrentIndex(cell);
    }
}

void EntryTable::leave(bool forward) {
    if (commitEdit()) {
        focusNextPrevChild(forward);
    }
}

bool EntryTable::commitAt(const QKeyEvent& key) {
    const bool isTaken = commitEdit();
    if (!isTaken) {
        m_blind.refusedAt(key);
    }
    return isTaken;
}

bool EntryTable::handleMovingKey(QKeyEvent* event) {
    const QModelIndex cell = m_cell.isValid() && isEditing() ? QModelIndex(m_cell) : currentIndex();
    const bool isShift = event->modifiers().testFlag(Qt::ShiftModifier);
    const bool isCtrl = event->modifiers().testFlag(Qt::ControlModifier);
    switch (event->key()) {
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (isCtrl) {
                return false;
            }
            m_isOffered = false;
            if (commitAt(*event)) {
                const QModelIndex next = isShift ? cellBeforeEnter(cell) : cellAfterEnter(cell);
                goTo(next);
                if (!isShift && !next.isValid()) {
                    emit enteredAtEnd();
                }
            }
            return true;
        case Qt::Key_Tab:
        case Qt::Key_Backtab: {
            const bool isBack = event->key() == Qt::Key_Backtab || isShift;
            if (isCtrl) {
                leave(!isBack);
                return true;
            }
            if (!isEditing() && !keepsTab()) {
                return false;
            }
            if (commitAt(*event)) {
                const QModelIndex next = isBack ? cellBeforeTab(cell) : cellAfterTab(cell);
                goTo(next);
                if (next.isValid() && next != cell && typingCell(next) == next) {
                    beginEdit(next);
                }
            }
            return true;
        }
        case Qt::Key_Up:
        case Qt::Key_Down: {
            if (isCtrl || !commitAt(*event)) {
                return !isCtrl;
            }
            goTo(cell.siblingAtRow(cell.row() + (event->key() == Qt::Key_Up ? -1 : 1)));
            return true;
        }
        case Qt::Key_F6:
            leave(!isShift);
            return true;
        default:
            return false;
    }
}

bool EntryTable::event(QEvent* event) {
    if (isLeaving(*event)) {
        event->accept();
        return true;
    }
    if (event->type() == QEvent::KeyPress) {
        auto* key = static_cast<QKeyEvent*>(event);
        // Tab never reaches keyPressEvent: the widget hands it to the focus chain before.
        if ((key->key() == Qt::Key_Tab || key->key() == Qt::Key_Backtab) && handleMovingKey(key)) {
            return true;
        }
    }
    return QTableView::event(event);
}

/// A cell with a tick changes it by Space, and takes no text.
bool EntryTable::isTicked(const QModelIndex& cell, const QString& text) const {
    return text == QLatin1String(" ") && cell.flags().testFlag(Qt::ItemIsUserCheckable);
}

void EntryTable::keyPressEvent(QKeyEvent* event) {
    if (handleMovingKey(event)) {
        event->accept();
        return;
    }
    if (event->key() == Qt::Key_Escape) {
        event->ignore();
        return;
    }
    if (event->key() == Qt::Key_F2) {
        canType() ? beginEdit(typingCell(currentIndex())) : emit typingRefused(currentIndex());
        return;
    }
    const QString text = event->text();
    const bool isTyped = !text.isEmpty() && text.front().isPrint() &&
                         !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
    if (isTyped && !isTicked(currentIndex(), text)) {
        canType() ? beginEdit(typingCell(currentIndex()), &text) : emit typingRefused(currentIndex());
        event->accept();
        return;
    }
    QTableView::keyPressEvent(event);
}

bool EntryTable::eventFilter(QObject* watched, QEvent* event) {
    if (watched != m_editor) {
        return QTableView::eventFilter(watched, event);
    }
    if (isLeaving(*event)) {
        event->accept();
        return true;
    }
    if (event->type() == QEvent::KeyPress) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Escape) {
            const bool wasOffered = m_isOffered;
            cancelEdit();
            if (std::exchange(m_isRefused, false) || wasOffered) {
                emit refusalGivenUp();
                emit refusalChanged();
            }
            return true;
        }
        return m_blind.holdsBack(*key) || handleMovingKey(key);
    }
    if (event->type() == QEvent::FocusOut && isEditing()) {
        const Qt::FocusReason reason = static_cast<QFocusEvent*>(event)->reason();
        const bool isBrief = reason == Qt::PopupFocusReason || reason == Qt::ActiveWindowFocusReason ||
                             reason == Qt::MenuBarFocusReason;
        if (!isBrief && !m_isCommitting && !m_isClosing) {
            // A refused text stays as it was typed, with the message that says why.
            commitEdit();
        }
    }
    return false;
}

}  // namespace ww::ui
