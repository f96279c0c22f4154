// The place System: the loop as a one-line diagram, what was designed, branch by branch, and a bench to try
// settings without touching anything. Not for readings (Walk).
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSplitter>
#include <QVBoxLayout>
#include <QWidget>

#include "ui/delegates/branch_delegate.h"
#include "ui/loop_advisor.h"
#include "ui/models/system_model.h"
#include "ui/places/system/valve_page.h"
#include "ui/places/system/what_if_bench.h"
#include "ui/schematic/schematic_key.h"
#include "ui/schematic/schematic_view.h"
#include "ui/widgets/current_stack.h"
#include "ui/widgets/entry_table.h"
#include "ui/widgets/key_hints.h"

namespace ww::ui {

class SystemPlace : public QWidget {
    Q_OBJECT

  public:
    explicit SystemPlace(WorkbookBridge& bridge, QWidget* parent = nullptr);

    /// From now on what is tried is computed with what this learned, where it fits the readings.
    void watch(const LoopAdvisor& advisor);

    void setTokens(const theme::Tokens& tokens);
    void setMetrics(const theme::Metrics& metrics);
    void takeFocus();
    /// Diagram, table and sums no lower than can be read; the place scrolls.
    void setNarrow(bool isNarrow);
    EntryTable* table() const { return m_table; }
    schematic::SchematicView* diagram() const { return m_diagram; }
    schematic::SchematicKey* key() const { return m_key; }
    SystemModel* model() const { return m_model; }
    /// The page of valve tables, which is made when it is first wanted.
    ValvePage* valves();
    /// The keys that act here, while this control has them.
    KeyHints hint(const QWidget* inHand) const;

  public slots:
    void findBranch();
    void addBranch();
    /// The table in the clipboard for the one in hand, after its rows were looked at: branches, valve tables,
    /// or the points of one valve.
    void paste();
    /// The branch in hand changes places with its neighbor on the same pipe: walked earlier (-1) or later
    /// (1).
    void moveBranch(int steps);
    /// The table alone, without the diagram, and back.
    void toggleTable();
    void showBranch(const ww::base::Id& branch);
    /// Goes to the first terminal, as valves are read, whose valve has no table.
    void showWithoutTable();
    /// Puts the bench in the place of the branch table, or takes it away.
    void showWhatIf(bool isShown);
    /// The bench in the place of whatever is shown, with the keys.
    void tryWhatIf();
    /// The bench where it is not seen, else the table.
    void toggleWhatIf();
    /// Puts the valve tables in the place of diagram and branches, or takes them away.
    void showValves(bool isShown);

  signals:
    /// A table was pasted into the table of this file ("branches.csv").
    void tablePasted(const QString& file, const QString& text);
    /// A page was made: what the window does for all that a place holds is to be done for it.
    void pageMade();

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void refresh();
    void refreshDiagram();
    QWidget* zoomButtons();
    void refreshSums();
    void teachBench();
    void fitColumns();
    void jump();
    bool store(const QModelIndex& cell, const QString& text);

    WorkbookBridge& m_bridge;
    SystemModel* m_model;
    EntryTable* m_table;
    BranchDelegate* m_delegate;
    CurrentStack* m_content;
    QLabel* m_empty;
    QWidget* m_drawing;  ///< the diagram with its key and the buttons of its zoom
    schematic::SchematicView* m_diagram;
    schematic::SchematicKey* m_key;
    QList<QPushButton*> m_zooms;
    system::WhatIfBench* m_bench;
    const LoopAdvisor* m_advisor = nullptr;
    ValvePage* m_valves = nullptr;
    QVBoxLayout* m_whole = nullptr;
    theme::Metrics m_metrics = theme::metrics(10, false);
    QSplitter* m_splitter;
    QPushButton* m_whatIf;
    QPushButton* m_showValves;
    QWidget* m_below;  ///< the sums, and the way to what they miss
    QLabel* m_sums;
    QPushButton* m_showWithout;
    QLineEdit* m_find;
    QPushButton* m_add;
    QPushButton* m_paste;
    QPushButton* m_others;  ///< the columns that have no room come in place of the first ones
    theme::Tokens m_tokens;
    bool m_isTableOnly = false;
};

}  // namespace ww::ui
