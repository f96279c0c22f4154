// A table of the report on the screen, as high as its rows; where its columns have no room beside one
// another, a line for each value instead. A long one is scrolled, and lays out only the rows that are seen.
// Not for typing.
#pragma once

#include <QTableView>
#include <vector>

#include "ui/places/section_table_model.h"

namespace ww::ui {

class SectionTable : public QTableView {
    Q_OBJECT

  public:
    explicit SectionTable(QWidget* parent = nullptr);

    void show(ww::report::Table table);

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void fit();
    void fitLater();
    void fitHeight();
    void fitRow(int row);
    void fitRowsSeen();
    void forgetHeights();
    const std::vector<int>& leastWidths();
    void setWidths(const std::vector<int>& widths);
    std::vector<int> sharedWidths(const std::vector<int>& least, int spare) const;
    void fitHead();
    int roomFor(int rows) const;

    SectionTableModel* m_model;
    std::vector<int> m_least;   ///< of the table and the letters in hand; empty: not measured
    std::vector<bool> m_isFit;  ///< rows whose height is that of their words
    bool m_isFitting = false;
    bool m_isFitWanted = false;
};

}  // namespace ww::ui
