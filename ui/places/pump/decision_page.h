// Required head, excess head and what to do about it: for all running pumps, or for one of several by itself.
#pragma once

#include <memory>

#include "ui/background_work.h"
#include "ui/places/pump/pump_page.h"
#include "ui/places/section_view.h"
#include "ui/widgets/quiet_combo.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

class DecisionPage : public PumpPage {
    Q_OBJECT

  public:
    explicit DecisionPage(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void show(const pump_room::PumpPicture* picture) override;
    void setTokens(const theme::Tokens& tokens) override { m_view->setTokens(tokens); }
    void takeFocus() override;
    SectionView* view() const { return m_view; }
    QuietCombo* pumps() const { return m_pumps; }

  signals:
    /// The decision of the pumps chosen stands on the page.
    void decided();

  private:
    void refill();
    void decide();

    WorkbookBridge& m_bridge;
    QWidget* m_top;
    QuietCombo* m_pumps;
    SectionView* m_view;
    BackgroundWork m_work;
    std::shared_ptr<const pump_room::PumpPicture> m_all;
    int m_state = 0;
};

}  // namespace ww::ui
