// Keys for a hand in gloves: digits, point, Enter, one digit back, the mark that a valve cannot be read, and
// steps of the setting. Says which key was touched; who types it says the window. Knows no workbook.
#pragma once

#include <QPushButton>
#include <QWidget>
#include <vector>

#include "ui/theme/theme.h"

namespace ww::ui {

class NumberPad : public QWidget {
    Q_OBJECT

  public:
    /// Device-independent pixels.
    static constexpr int kKeyWidth = 72;
    static constexpr int kKeyHeight = 64;
    /// On a small screen every row and column counts; a target stays large enough for a finger.
    static constexpr int kLeastTarget = 48;
    static constexpr int kTightDigitWidth = 56;
    /// Between the keys of a small screen and around them.
    static constexpr int kTightGap = 8;

    explicit NumberPad(QWidget* parent = nullptr);

    /// `isTight`: as on a small screen, the least keys with the least gaps.
    void setMetrics(const theme::Metrics& metrics, bool isTight);
    /// The height of a tight pad, device-independent pixels.
    static int leastHeight();
    /// The key that says `text`, or the one with that accessible name; null where there is none.
    QPushButton* keyOf(const QString& text) const;

  signals:
    /// A key for the field in hand, as a keyboard would send it.
    void keyTouched(int key, const QString& text);
    /// The setting of the valve in hand is to go one step up (1) or down (-1).
    void settingStepped(int steps);

  private:
    std::vector<QPushButton*> m_keys;
};

}  // namespace ww::ui
