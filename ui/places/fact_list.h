// Facts of a report on the screen: label, mark and value in three columns. Knows no workbook.
#pragma once

#include <QWidget>
#include <vector>

#include "core/report/report.h"
#include "ui/theme/theme.h"

class QGridLayout;
class QLabel;

namespace ww::ui {

/// The mark of a fact: tick, cross or a question in a square, told apart without colour.
class MarkShape : public QWidget {
    Q_OBJECT

  public:
    explicit MarkShape(QWidget* parent = nullptr);

    void show(ww::report::Mark mark, const theme::Tokens& tokens);
    ww::report::Mark mark() const { return m_mark; }
    /// As large as the text beside it.
    QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    ww::report::Mark m_mark = ww::report::Mark::None;
    theme::Tokens m_tokens;
};

/// A list of facts that is filled anew as a whole. Where it is narrow each value stands below its label.
class FactList : public QWidget {
    Q_OBJECT

  public:
    explicit FactList(QWidget* parent = nullptr);

    void show(const std::vector<ww::report::Fact>& facts, const theme::Tokens& tokens);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    struct Line {
        QLabel* label;
        MarkShape* mark;
        QLabel* value;
    };
    /// Whether values have too little room beside their labels.
    bool isNarrow() const;
    void arrange();

    QGridLayout* m_grid = nullptr;
    std::vector<Line> m_lines;
    bool m_isBelow = false;  ///< each value below its label
};

}  // namespace ww::ui
