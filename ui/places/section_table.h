// A table of the report on the screen, as high as its rows. Not for typing.
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
    void changeEvent(QEvent* event) override;

  private:
    void fit();

    std::vector<double> m_shares;
    bool m_isFitting = false;
};

}  // namespace ww::ui
