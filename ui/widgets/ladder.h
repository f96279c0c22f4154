// A vertical scale of dp at a valve: the band as a block, the aim as a line, the last tries as numbered
// ticks. The band always stands at the same height, so that the eye need not look for it. Knows no workbook.
#pragma once

#include <QString>
#include <QWidget>
#include <optional>
#include <vector>

#include "ui/theme/theme.h"

namespace ww::ui {

/// Numbers in any one unit, with the words that are written for them.
struct LadderMark {
    double at = 0;
    QString words;
};
struct LadderMarks {
    LadderMark aim;
    LadderMark low;  ///< the band
    LadderMark high;
    std::vector<LadderMark> tries;  ///< oldest first; `words` is the number of the try
    bool isSoft = false;            ///< the aim rests on something old
};

class Ladder : public QWidget {
    Q_OBJECT

  public:
    explicit Ladder(QWidget* parent = nullptr);

    /// Nothing: an empty scale. `sentence` says the same for a screen reader.
    void show(std::optional<LadderMarks> marks, const QString& head, const QString& sentence);
    void setTokens(const theme::Tokens& tokens);
    QSize sizeHint() const override { return {168, 260}; }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    std::optional<LadderMarks> m_marks;
    QString m_head;
    theme::Tokens m_tokens;
};

}  // namespace ww::ui
