// The place Pump: pump and system curves, the duty and what would bring design flow, the check of the index
// circuit. Not for deciding anything: it shows what core computes.
#pragma once

#include <QWidget>

#include "ui/theme/theme.h"
#include "ui/widgets/shown_refresh.h"
#include "ui/workbook_bridge.h"

class QLabel;
class QScrollArea;
class QStackedWidget;

namespace ww::ui {

class FactList;
namespace charts {
class ChartView;
}

class PumpPlace : public QWidget {
    Q_OBJECT

  public:
    explicit PumpPlace(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void setTokens(const theme::Tokens& tokens);
    /// Puts the keys on the chart.
    void takeFocus();

  public slots:
    /// The chart in hand becomes its table, or comes back (Ctrl+T).
    void toggleTable();

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void refresh();
    QWidget* buildPanel();

    WorkbookBridge& m_bridge;
    theme::Tokens m_tokens;
    QStackedWidget* m_content = nullptr;
    QLabel* m_empty = nullptr;
    QWidget* m_page = nullptr;
    charts::ChartView* m_pumpChart = nullptr;
    charts::ChartView* m_convergence = nullptr;
    QScrollArea* m_panel = nullptr;
    QLabel* m_dutyTitle = nullptr;
    FactList* m_duty = nullptr;
    QLabel* m_indexTitle = nullptr;
    FactList* m_index = nullptr;
    QLabel* m_cautions = nullptr;
    bool m_hasConvergence = false;
    ShownRefresh* m_shown = new ShownRefresh(this, [this] { refresh(); });
};

}  // namespace ww::ui
