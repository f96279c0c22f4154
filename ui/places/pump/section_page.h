// A page of Pump that only shows a section of the report.
#pragma once

#include <QLabel>
#include <functional>

#include "ui/places/pump/pump_page.h"
#include "ui/places/section_view.h"

namespace ww::ui {

class SectionPage : public PumpPage {
    Q_OBJECT

  public:
    using Make = std::function<ww::report::Section(const pump_room::PumpPicture& picture)>;
    using Draw = std::function<std::vector<charts::ChartFigure>(const pump_room::PumpPicture& picture)>;

    SectionPage(Make make, Draw draw, QWidget* parent = nullptr);

    void show(const pump_room::PumpPicture* picture) override;
    void setTokens(const theme::Tokens& tokens) override;
    void takeFocus() override { m_view->setFocus(Qt::OtherFocusReason); }
    void toggleTable() override { m_view->toggleTable(); }
    bool hasChart() const override { return !m_view->charts().empty(); }
    SectionView* view() const { return m_view; }

  private:
    Make m_make;
    Draw m_draw;
    SectionView* m_view;
};

/// What a page says while nothing was computed yet.
QString computingMessage();

}  // namespace ww::ui
