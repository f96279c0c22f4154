#include "ui/alt_chords.h"

#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTextEdit>

namespace ww::ui {
namespace {

bool takesText(const QObject& receiver) {
    return qobject_cast<const QLineEdit*>(&receiver) != nullptr ||
           qobject_cast<const QPlainTextEdit*>(&receiver) != nullptr ||
           qobject_cast<const QTextEdit*>(&receiver) != nullptr ||
           qobject_cast<const QAbstractSpinBox*>(&receiver) != nullptr ||
           qobject_cast<const QComboBox*>(&receiver) != nullptr ||
           qobject_cast<const QAbstractItemView*>(&receiver) != nullptr;
}

bool isChordOfAlt(const QKeyEvent& key) {
    const Qt::KeyboardModifiers held = key.modifiers();
    return held.testFlag(Qt::AltModifier) && !held.testFlag(Qt::ControlModifier) &&
           !held.testFlag(Qt::GroupSwitchModifier) && !key.text().isEmpty() && key.text().front().isPrint();
}

}  // namespace

bool AltChords::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress && takesText(*watched) &&
        isChordOfAlt(*static_cast<QKeyEvent*>(event))) {
        event->ignore();
        return true;
    }
    return QObject::eventFilter(watched, event);
}

}  // namespace ww::ui
