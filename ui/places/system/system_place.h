// The place System: the loop as a one-line diagram, what was designed, branch by branch, and a bench to try
// settings without touching anything. Not for readings (Walk).
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QWidget>

#include "ui/delegates/branch_delegate.h"
#include "ui/models/system_model.h"
#include "ui/places/system/valve_page.h"
#include "ui/places/system/what_if_bench.h"
#include "ui/schematic/schematic_view.h"
#include "ui/widgets/entry_table.h"

namespace ww::ui {

class SystemPlace : public QWidget {
    Q_OBJECT

  public:
    explicit SystemPlace(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void setTokens(const theme::Tokens& tokens);
    void setMetrics(const theme::Metrics& metrics);
    void takeFocus();
    EntryTable* table() const { return m_table; }
    SystemModel* model() const { return m_model; }
    ValvePage* valves() const { return m_valves; }

  public slots:
    void findBranch();
    void addBranch();
    void showBranch(const ww::base::Id& branch);
    /// Puts the bench in the place of the branch table, or takes it away.
    void showWhatIf(bool isShown);
    /// Puts the valve tables in the place of diagram and branches, or takes them away.
    void showValves(bool isShown);

  signals:
    /// A table was pasted into the table of this file ("branches.csv").
    void tablePasted(const QString& file, const QString& text);

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void refresh();
    void refreshDiagram();
    void fitColumns();
    void jump();
    bool store(const QModelIndex& cell, const QString& text);

    WorkbookBridge& m_bridge;
    SystemModel* m_model;
    EntryTable* m_table;
    BranchDelegate* m_delegate;
    QStackedWidget* m_content;
    QLabel* m_empty;
    schematic::SchematicView* m_diagram;
    system::WhatIfBench* m_bench;
    ValvePage* m_valves;
    QSplitter* m_splitter;
    QPushButton* m_whatIf;
    QPushButton* m_showValves;
    QLabel* m_sums;
    QLineEdit* m_find;
    QPushButton* m_add;
    theme::Tokens m_tokens;
};

}  // namespace ww::ui
