// A small table of rows of one record under its title, with a button that takes a row out.
#pragma once

#include <QLabel>
#include <QPushButton>

#include "ui/delegates/branch_delegate.h"
#include "ui/places/entry_sheet.h"

namespace ww::ui {

class RowPanel : public QWidget {
    Q_OBJECT

  public:
    struct Content {
        QString title;
        QString removeWords;  ///< of the button
        RecordTableContent table;
        std::function<base::Outcome(int row)> remove;
    };

    RowPanel(WorkbookBridge& bridge, Content content, QWidget* parent = nullptr);

    EntryTable* table() const { return m_table; }
    RecordTableModel* model() const { return m_model; }
    void setTitle(const QString& title) { m_title->setText(title); }
    void setTokens(const theme::Tokens& tokens);
    void setMetrics(const theme::Metrics& metrics);
    /// Other rows stand here now.
    void renew();

  private:
    void fit();

    WorkbookBridge& m_bridge;
    std::function<base::Outcome(int row)> m_removeRow;
    QLabel* m_title;
    RecordTableModel* m_model;
    EntryTable* m_table;
    BranchDelegate* m_delegate;
    QPushButton* m_remove;
};

}  // namespace ww::ui
