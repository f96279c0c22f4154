// Every action that was ever stored, and the job as it stood after any of them. Only shows and exports;
// nothing is set back.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QTableView>

#include "ui/models/text_table.h"
#include "ui/widgets/ordered_dialog.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

class JournalDialog : public OrderedDialog {
    Q_OBJECT

  public:
    /// A workbook must be open and stay open.
    explicit JournalDialog(WorkbookBridge& bridge, QWidget* parent = nullptr);

    /// Shows the job as it stood after a record; the first is 1.
    void showAfter(std::int64_t sequence);
    const TextTable* actions() const { return m_actions; }
    const TextTable* state() const { return m_state; }
    const project::Project& job() const { return m_job; }

  private:
    void exportTables();

    WorkbookBridge& m_bridge;
    std::vector<workbook::JournalEntry> m_journal;
    TextTable* m_actions;
    QTableView* m_actionTable;
    QLabel* m_said;
    TextTable* m_state;
    QTableView* m_stateTable;
    project::Project m_job;
};

}  // namespace ww::ui
