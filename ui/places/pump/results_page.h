// What follows from the test sheet of the pump that is chosen.
#pragma once

#include "ui/places/pump/pump_chooser.h"
#include "ui/places/pump/pump_page.h"
#include "ui/places/section_view.h"

namespace ww::ui {

class ResultsPage : public PumpPage {
    Q_OBJECT

  public:
    explicit ResultsPage(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void show(const pump_room::PumpPicture* picture) override;
    void setTokens(const theme::Tokens& tokens) override { m_view->setTokens(tokens); }
    void takeFocus() override;
    SectionView* view() const { return m_view; }

  private:
    void showSections();

    WorkbookBridge& m_bridge;
    PumpChooser* m_chooser;
    SectionView* m_view;
    std::vector<ww::report::Section> m_sections;  ///< of every pump
};

}  // namespace ww::ui
