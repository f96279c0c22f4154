// One page of the report on the screen, as wide as there is room. Knows no workbook.
#pragma once

#include <QPixmap>
#include <QWidget>
#include <memory>

#include "ui/report/report_pages.h"
#include "ui/theme/theme.h"

namespace ww::ui {

class PagePreview : public QWidget {
    Q_OBJECT

  public:
    explicit PagePreview(QWidget* parent = nullptr);

    void show(std::shared_ptr<const report::ReportPages> pages, std::size_t page);
    void setTokens(const theme::Tokens& tokens);
    int heightForWidth(int width) const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    std::shared_ptr<const report::ReportPages> m_pages;
    std::size_t m_page = 0;
    QPixmap m_drawn;  ///< the page at the size it was last shown
    theme::Tokens m_tokens;
};

}  // namespace ww::ui
