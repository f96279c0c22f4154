// Keys for a hand in gloves: digits, point, Enter, one digit back, the mark that a valve cannot be read,
// steps of the setting, and a note. Says which key was touched; who types it says the window. Knows no
// workbook.
#pragma once

#include <QPushButton>
#include <QRect>
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

    /// `isTight`: as on a small screen, the least keys with the least gaps, and no key for a note, which the
    /// card beside it has: four rows of four columns. `isLow`: else four rows of five columns in place of
    /// five of four.
    void setMetrics(const theme::Metrics& metrics, bool isTight, bool isLow);
    /// The height of a tight pad, device-independent pixels.
    static int leastHeight();
    /// The key that says `text`, or the one with that accessible name; null where there is none.
    QPushButton* keyOf(const QString& text) const;

  signals:
    /// A key for the field in hand, as a keyboard would send it.
    void keyTouched(int key, const QString& text);
    /// The setting of the valve in hand is to go one step up (1) or down (-1).
    void settingStepped(int steps);
    /// A note on the valve in hand is to be written.
    void noteWanted();

  private:
    /// Where a key lies: column, row, and how many of each.
    struct Cells {
        QRect high;
        QRect low;
    };
    void putInPlace(bool isLow);

    std::vector<QPushButton*> m_keys;
    std::vector<Cells> m_cells;  ///< beside them
    bool m_isLow = false;
};

}  // namespace ww::ui
