#include "ui/top_row_keys.h"

#include <QAction>
#include <QApplication>
#include <QKeyEvent>
#include <QWidget>
#include <algorithm>
#include <optional>

namespace ww::ui {
namespace {

constexpr quint32 kFirstOfRow = 10;  ///< the key of "1"
constexpr int kKeysOfRow = 10;       ///< the last one is that of "0"

/// The digit of the key; nothing where it writes a digit anyway or stands elsewhere.
std::optional<int> digitOf(const QKeyEvent& key) {
    const bool isDigit = key.key() >= Qt::Key_0 && key.key() <= Qt::Key_9;
    const quint32 code = key.nativeScanCode();
    if (isDigit || code < kFirstOfRow || code >= kFirstOfRow + kKeysOfRow) {
        return std::nullopt;
    }
    return static_cast<int>(code - kFirstOfRow + 1) % kKeysOfRow;
}

QAction* actionWith(const QWidget& window, const QKeySequence& chord) {
    const QList<QAction*> actions = window.findChildren<QAction*>();
    const auto found = std::find_if(actions.begin(), actions.end(), [&](const QAction* action) {
        return action->isEnabled() && action->shortcuts().contains(chord);
    });
    return found == actions.end() ? nullptr : *found;
}

}  // namespace

bool TopRowKeys::eventFilter(QObject* watched, QEvent* event) {
    auto* widget = qobject_cast<QWidget*>(watched);
    if (event->type() != QEvent::KeyPress || widget == nullptr) {
        return QObject::eventFilter(watched, event);
    }
    const auto& key = *static_cast<QKeyEvent*>(event);
    const Qt::KeyboardModifiers held = key.modifiers() & (Qt::AltModifier | Qt::ControlModifier);
    const std::optional<int> digit = held != Qt::NoModifier ? digitOf(key) : std::nullopt;
    QAction* action =
        digit ? actionWith(*widget->window(),
                           QKeySequence(QKeyCombination(key.modifiers() & ~Qt::KeypadModifier,
                                                        static_cast<Qt::Key>(Qt::Key_0 + *digit))))
              : nullptr;
    if (action == nullptr) {
        return QObject::eventFilter(watched, event);
    }
    action->trigger();
    return true;
}

}  // namespace ww::ui
