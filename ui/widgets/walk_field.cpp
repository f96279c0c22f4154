#include "ui/widgets/walk_field.h"

#include <QApplication>
#include <QClipboard>
#include <QKeyEvent>
#include <optional>

namespace ww::ui {
namespace {

std::optional<WalkField::Way> wayOf(const QKeyEvent& event) {
    using Way = WalkField::Way;
    const bool isShift = event.modifiers().testFlag(Qt::ShiftModifier);
    const bool isCtrl = event.modifiers().testFlag(Qt::ControlModifier);
    switch (event.key()) {
        case Qt::Key_Return:
        case Qt::Key_Enter:
            return isCtrl ? std::nullopt : std::optional(isShift ? Way::Back : Way::Next);
        case Qt::Key_Tab:
        case Qt::Key_Backtab: {
            const bool isBack = isShift || event.key() == Qt::Key_Backtab;
            if (isCtrl) {
                return isBack ? Way::LeaveBack : Way::LeaveOn;
            }
            return isBack ? Way::LeaveBack : Way::Across;
        }
        case Qt::Key_F6:
            return isShift ? Way::LeaveBack : Way::LeaveOn;
        case Qt::Key_Up:
            return isCtrl ? std::nullopt : std::optional(Way::Up);
        case Qt::Key_Down:
            return isCtrl ? std::nullopt : std::optional(Way::Down);
        default:
            return std::nullopt;
    }
}

}  // namespace

bool WalkField::isColumn(const QString& text) {
    return text.trimmed().contains('\n');
}

void WalkField::keyPressEvent(QKeyEvent* event) {
    if (m_blind.holdsBack(*event)) {
        event->accept();
        return;
    }
    const auto way = wayOf(*event);
    if (!way) {
        EntryField::keyPressEvent(event);
        return;
    }
    if (*way == Way::Next || *way == Way::Back) {
        takeOffered();
    }
    if (commit()) {
        emit gone(*way);
    } else {
        m_blind.refusedAt(*event);
    }
    event->accept();
}

bool WalkField::event(QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        auto* key = static_cast<QKeyEvent*>(event);
        // Tab never reaches keyPressEvent: the widget hands it to the focus chain before.
        if (key->key() == Qt::Key_Tab || key->key() == Qt::Key_Backtab) {
            keyPressEvent(key);
            return true;
        }
    }
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool isCtrlTab = key->key() == Qt::Key_Tab && key->modifiers().testFlag(Qt::ControlModifier);
        if (key->key() == Qt::Key_F6 || isCtrlTab) {
            // Elsewhere they lead to the next part; the field is left with them.
            event->accept();
            return true;
        }
    }
    // While nothing is typed the chords of the program come before those of the field; a column of values is
    // pasted by the program always, as it does not fit into one field.
    if (event->type() == QEvent::ShortcutOverride) {
        auto* key = static_cast<QKeyEvent*>(event);
        const bool isColumnPasted =
            key->matches(QKeySequence::Paste) && isColumn(QApplication::clipboard()->text());
        if (isColumnPasted || (!isTyped() && key->modifiers().testFlag(Qt::ControlModifier))) {
            event->ignore();
            return true;
        }
    }
    return EntryField::event(event);
}

void WalkField::focusInEvent(QFocusEvent* event) {
    EntryField::focusInEvent(event);
    selectAll();
}

}  // namespace ww::ui
