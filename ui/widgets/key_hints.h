// The keys that act now with what they do, the most important first, as one line of words. Not for which keys
// these are: who adds them says so.
#pragma once

#include <QFontMetrics>
#include <QList>
#include <QString>

namespace ww::ui {

class KeyHints {
  public:
    /// Adds a key with what it does where it acts; an empty text adds nothing. `shorter`: the same in fewer
    /// words, taken before a key is left out for want of room.
    KeyHints& add(const QString& words, bool isActing = true, const QString& shorter = {});
    /// Adds all that others hold behind what is there, where they act.
    KeyHints& add(const KeyHints& others, bool isActing = true);

    /// All keys.
    QString line() const;
    /// As many keys from the first on as have room, px; no word is cut.
    QString line(const QFontMetrics& metrics, int room) const;

  private:
    struct Hint {
        QString words;
        QString shorter;
    };
    QList<Hint> m_hints;
};

}  // namespace ww::ui
