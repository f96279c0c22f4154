#include "ui/widgets/key_hints.h"

#include <QStringList>

namespace ww::ui {
namespace {

QString joined(const QStringList& words) {
    return words.join(QStringLiteral("   |   "));
}

}  // namespace

KeyHints& KeyHints::add(const QString& words, bool isActing, const QString& shorter) {
    if (isActing && !words.isEmpty()) {
        m_hints.append({words, shorter.isEmpty() ? words : shorter});
    }
    return *this;
}

KeyHints& KeyHints::add(const KeyHints& others, bool isActing) {
    if (isActing) {
        m_hints += others.m_hints;
    }
    return *this;
}

QString KeyHints::line() const {
    QStringList words;
    for (const Hint& hint : m_hints) {
        words << hint.words;
    }
    return joined(words);
}

QString KeyHints::line(const QFontMetrics& metrics, int room) const {
    const auto fits = [&](const QString& words) { return metrics.horizontalAdvance(words) <= room; };
    if (const QString whole = line(); fits(whole)) {
        return whole;
    }
    QStringList words;
    for (const Hint& hint : m_hints) {
        words << hint.shorter;
    }
    while (!words.isEmpty() && !fits(joined(words))) {
        words.removeLast();
    }
    return joined(words);
}

}  // namespace ww::ui
