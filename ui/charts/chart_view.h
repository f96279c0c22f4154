// A chart figure on the screen, with its sentence under it and a table that says the same (Ctrl+T).
// Not for numbers (chart_figure.h).
#pragma once

#include <QWidget>

#include "ui/charts/chart_figure.h"
#include "ui/theme/theme.h"

class QLabel;
class QStackedLayout;
class QTableView;

namespace ww::ui::charts {

class ChartCanvas;
class FigureTable;

/// Shows one figure; setFigure() replaces what is drawn in place. The name and the sentence are given to
/// screen readers.
class ChartView : public QWidget {
    Q_OBJECT

  public:
    explicit ChartView(QWidget* parent = nullptr);

    void setFigure(ChartFigure figure);
    const ChartFigure& figure() const { return m_figure; }
    void setTokens(const theme::Tokens& tokens);
    bool isTableShown() const;

  public slots:
    /// Changes between the drawing and its table; the focus goes along.
    void toggleTable();

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void makeCanvas();
    void draw();
    void placeSentence();

    ChartFigure m_figure;
    theme::Tokens m_tokens;
    QStackedLayout* m_stack = nullptr;
    ChartCanvas* m_canvas = nullptr;  ///< made when it is first shown
    FigureTable* m_cells = nullptr;
    QTableView* m_table = nullptr;
    QLabel* m_sentence = nullptr;
    QLabel* m_empty = nullptr;  ///< the sentence on the canvas of a figure with nothing to draw
};

}  // namespace ww::ui::charts
