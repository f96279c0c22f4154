// Curves of pump and system, the duty with its uncertainty and the check of the index circuit. It shows what
// core computes and decides nothing.
#pragma once

#include <QLabel>

#include "core/report/report.h"
#include "ui/assessed_rounds.h"
#include "ui/charts/chart_view.h"
#include "ui/places/fact_list.h"
#include "ui/places/pump/pump_page.h"
#include "ui/places/section_view.h"
#include "ui/widgets/side_by_side.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

class CurvesPage : public PumpPage {
    Q_OBJECT

  public:
    CurvesPage(WorkbookBridge& bridge, AssessedRounds& rounds, QWidget* parent = nullptr);

    void show(const pump_room::PumpPicture* picture) override;
    void setTokens(const theme::Tokens& tokens) override;
    void setMetrics(const theme::Metrics& metrics) override;
    void takeFocus() override;
    /// The chart in hand becomes its table, or comes back.
    void toggleTable() override;
    bool hasChart() const override { return !m_content->isHidden(); }

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    QWidget* buildPanel();
    /// The rounds that the balancers walked, in their order.
    std::vector<base::Id> ownRounds() const;
    /// The second chart where both have room in sight.
    void placeConvergence();
    void showConvergence();
    void showCharts(const project::Project& project, const ww::report::Report& report,
                    const pump_room::PumpPicture& picture);
    void showFacts(const ww::report::Report& report);

    WorkbookBridge& m_bridge;
    AssessedRounds& m_rounds;
    theme::Tokens m_tokens;
    SectionView* m_message = nullptr;  ///< in place of all else while nothing was computed
    SideBySide* m_content = nullptr;
    charts::ChartView* m_pumpChart = nullptr;
    charts::ChartView* m_convergence = nullptr;
    QLabel* m_dutyTitle = nullptr;
    QLabel* m_doubts = nullptr;
    FactList* m_duty = nullptr;
    QLabel* m_indexTitle = nullptr;
    FactList* m_index = nullptr;
    QLabel* m_cautions = nullptr;
    bool m_hasConvergence = false;
};

}  // namespace ww::ui
