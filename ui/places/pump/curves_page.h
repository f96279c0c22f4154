// Curves of pump and system, the duty with its uncertainty and the check of the index circuit. It shows what
// core computes and decides nothing.
#pragma once

#include <QLabel>

#include "ui/charts/chart_view.h"
#include "ui/places/fact_list.h"
#include "ui/places/pump/pump_page.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

class CurvesPage : public PumpPage {
    Q_OBJECT

  public:
    explicit CurvesPage(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void show(const pump_room::PumpPicture* picture) override;
    void setTokens(const theme::Tokens& tokens) override;
    void takeFocus() override { m_pumpChart->setFocus(Qt::OtherFocusReason); }
    /// The chart in hand becomes its table, or comes back.
    void toggleTable() override;

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    QWidget* buildPanel();

    WorkbookBridge& m_bridge;
    theme::Tokens m_tokens;
    charts::ChartView* m_pumpChart = nullptr;
    charts::ChartView* m_convergence = nullptr;
    QLabel* m_dutyTitle = nullptr;
    FactList* m_duty = nullptr;
    QLabel* m_indexTitle = nullptr;
    FactList* m_index = nullptr;
    QLabel* m_cautions = nullptr;
    bool m_hasConvergence = false;
};

}  // namespace ww::ui
