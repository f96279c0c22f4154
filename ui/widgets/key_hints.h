// The keys that act now, as one line of words. Not for which keys these are: who adds them says so.
#pragma once

#include <QStringList>

namespace ww::ui {

class KeyHints {
  public:
    /// Adds a key with what it does where it acts; an empty text adds nothing.
    KeyHints& add(const QString& words, bool isActing = true) {
        if (isActing && !words.isEmpty()) {
            m_words << words;
        }
        return *this;
    }
    /// All that was added, with bars between; empty where no key acts.
    QString line() const { return m_words.join(QStringLiteral("   |   ")); }

  private:
    QStringList m_words;
};

}  // namespace ww::ui
