// A table of the report on the screen, as high as its rows; where its columns have no room beside one
// another, a line for each value instead. Not for typing.
#pragma once

#include <QTableWidget>

#include "core/report/report.h"

namespace ww::ui {

class SectionTable : public QTableWidget {
    Q_OBJECT

  public:
    explicit SectionTable(QWidget* parent = nullptr);

    void show(const ww::report::Table& table);

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void fit();
    void fillUpright();
    void fillAsLines();
    std::vector<int> leastWidths() const;
    void shareOut(const std::vector<int>& least, int spare);
    static QString headOf(const ww::report::Column& column, QChar between);

    ww::report::Table m_table;
    bool m_isFilled = false;
    bool m_isAsLines = false;
    bool m_isFitting = false;
};

}  // namespace ww::ui
