// Keys that come right after a text was refused: a hand that types without looking goes on with the next
// value, which is none of the text that waits. Not for what is refused, nor for saying it.
#pragma once

#include <QKeyEvent>
#include <optional>

namespace ww::ui {

class BlindTyping {
  public:
    /// So long a hand rests that has seen the refusal, ms (from trials; no published source).
    static constexpr quint64 kRest = 700;

    /// A text was refused at this key. Without a time of the key nothing is held back.
    void refusedAt(const QKeyEvent& key);
    /// Whether a key belongs to what is typed blindly: one that types or moves and follows the refusal, or
    /// another such key, sooner than a hand that rested.
    bool holdsBack(const QKeyEvent& key);
    /// The text that was refused is taken or given up.
    void end() { m_last.reset(); }

  private:
    std::optional<quint64> m_last;  ///< when the refusal or the last key held back came
};

}  // namespace ww::ui
