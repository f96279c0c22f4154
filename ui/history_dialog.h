// Every value that a valve ever had, with who, when and why, as the journal holds it; any can be used again.
#pragma once

#include <QPushButton>
#include <QTableView>

#include "core/workbook/cell_history.h"
#include "ui/models/text_table.h"
#include "ui/widgets/ordered_dialog.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

class HistoryDialog : public OrderedDialog {
    Q_OBJECT

  public:
    HistoryDialog(WorkbookBridge& bridge, const base::Id& branch, QWidget* parent = nullptr);
    TextTable* values() const { return m_values; }

  private:
    /// The values of the branch, newest first; where the journal cannot be read, what is wrong is told.
    void readHistory();
    static TextRow rowOf(const workbook::CellValue& value);
    void use();

    WorkbookBridge& m_bridge;
    base::Id m_branch;
    std::vector<workbook::CellValue> m_history;
    TextTable* m_values;
    QTableView* m_table = nullptr;
    QPushButton* m_use;
};

}  // namespace ww::ui
