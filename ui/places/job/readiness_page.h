// The list of what must hold before the loop is surveyed, on the place Job.
#pragma once

#include <QPushButton>
#include <QWidget>

#include "ui/delegates/branch_delegate.h"
#include "ui/models/record_table.h"
#include "ui/widgets/entry_table.h"

namespace ww::ui {

class ReadinessPage : public QWidget {
    Q_OBJECT

  public:
    enum Column { Line, Mandatory, State, Owner, Date, Evidence, ColumnCount };

    ReadinessPage(WorkbookBridge& bridge, BranchDelegate* delegate, QWidget* parent = nullptr);
    EntryTable* table() const { return m_table; }
    /// Puts the keys into the list; where it is empty, on the button that fills it.
    void takeFocus();
    RecordTableModel* model() const { return m_model; }

  private:
    std::vector<project::ReadinessLine> lines() const;
    QString text(int row, int column) const;
    base::Outcome store(int row, int column, const QString& text);
    void fitColumns();
    void refresh();

    WorkbookBridge& m_bridge;
    RecordTableModel* m_model;
    EntryTable* m_table;
    QPushButton* m_usual;
    QPushButton* m_add;
    QPushButton* m_remove;
};

}  // namespace ww::ui
