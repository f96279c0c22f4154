// The place Walk: read every valve in route order with digits and Enter. Not for rules of the trade; the
// bridge and what rests under it hold those.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QWidget>

#include "ui/places/walk/round_panels.h"
#include "ui/places/walk/valve_panel.h"
#include "ui/places/walk/walk_grid.h"
#include "ui/practice/practice_desk.h"

namespace ww::ui {

namespace charts {
class ChartView;
}

class WalkPlace : public QWidget {
    Q_OBJECT

  public:
    WalkPlace(WorkbookBridge& bridge, const LoopAdvisor& advisor, QWidget* parent = nullptr);

    void setTokens(const theme::Tokens& tokens);
    void setMetrics(const theme::Metrics& metrics);
    /// Puts the keys where the next reading is typed.
    void takeFocus();
    /// The keys that work in what the place shows now.
    QString hint() const;
    WalkGrid* grid() const { return m_grid; }
    WalkModel* model() const { return m_model; }

  public slots:
    void findValve();
    void editNote();
    void beginRound();
    void beginClosing();
    void readAgain();
    void takeFix();
    void toggleDoubtful();
    void recordNotReadable();
    void paste();
    /// The convergence of the rounds in place of the grid, and back.
    void toggleConvergence();
    /// The convergence becomes its table, or comes back.
    void toggleTable();
    /// Stores what the practice building's meter shows at the valve in hand and goes to the next one.
    void takeMeter(PracticeDesk& desk);
    /// Shows a branch: the cursor goes to its dp.
    void showBranch(const ww::base::Id& branch);

  signals:
    void hintChanged();

  private:
    void refresh(const project::ChangeSet& changes);
    void refreshTotals();
    void showWhatThereIs();
    void showPanel(QWidget* panel);
    void showConvergence();
    bool isConvergenceShown() const;
    bool store(const QModelIndex& cell, const QString& text);
    void jump();
    void buildLayout();
    std::optional<base::Id> branchInHand() const;

    WorkbookBridge& m_bridge;
    const LoopAdvisor& m_advisor;
    WalkModel* m_model;
    WalkGrid* m_grid;
    QStackedWidget* m_content;
    QWidget* m_gridPage;
    charts::ChartView* m_convergence;
    QLabel* m_empty;
    QLabel* m_totals;
    QLineEdit* m_find;
    QStackedWidget* m_side;
    ValvePanel* m_valve;
    OpenRoundPanel* m_opening;
    CloseRoundPanel* m_closing;
    QPushButton* m_roundButton;
    std::optional<base::Id> m_repeatBranch;  ///< the next dp typed here is a repeated reading
    theme::Tokens m_tokens;
    theme::Metrics m_metrics;
};

}  // namespace ww::ui
