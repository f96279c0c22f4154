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

namespace ww::ui {

class WalkPlace : public QWidget {
    Q_OBJECT

  public:
    explicit WalkPlace(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void setTokens(const theme::Tokens& tokens);
    void setMetrics(const theme::Metrics& metrics);
    /// Puts the keys where the next reading is typed.
    void takeFocus();
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
    /// Shows a branch: the cursor goes to its dp.
    void showBranch(const ww::base::Id& branch);

  private:
    void refresh(const project::ChangeSet& changes);
    void refreshTotals();
    void showWhatThereIs();
    void showPanel(QWidget* panel);
    bool store(const QModelIndex& cell, const QString& text);
    bool took(const base::Outcome& outcome);
    void noticeOf(const base::Id& branch);
    void jump();
    void buildLayout();
    std::optional<base::Id> branchInHand() const;

    WorkbookBridge& m_bridge;
    WalkModel* m_model;
    WalkGrid* m_grid;
    QStackedWidget* m_content;
    QWidget* m_gridPage;
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
