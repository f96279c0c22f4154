// A small table of rows of one record under its title, with a button that takes a row out.
#pragma once

#include <QLabel>
#include <QPushButton>

#include "ui/delegates/branch_delegate.h"
#include "ui/places/entry_sheet.h"
#include "ui/places/row_sheet.h"

namespace ww::ui {

class RowPanel : public QWidget {
    Q_OBJECT

  public:
    struct Content {
        QString title;
        QString removeWords;  ///< of the button
        RecordTableContent table;
        std::function<base::Outcome(int row)> remove;
        std::function<bool(int row)> holds;  ///< whether there is anything in a row
        std::function<int()> missing;        ///< the column that the row begun lacks; -1: none
        std::function<std::optional<base::Fault>()> faultOfBegun;
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
    void refresh();
    void finishRow();
    bool tellBegun();
    void takeOut();

    WorkbookBridge& m_bridge;
    Content m_content;
    QLabel* m_title;
    RecordTableModel* m_model;
    EntryTable* m_table;
    BranchDelegate* m_delegate;
    QPushButton* m_remove;
};

/// The rows of a sheet for a panel.
template <class Row>
void offerRows(RowPanel::Content& content, RowSheet<Row>& sheet, const WorkbookBridge& bridge) {
    content.remove = [&sheet](int row) { return sheet.remove(row); };
    content.holds = [&sheet, &bridge](int row) { return sheet.holds(bridge.project(), row); };
    content.missing = [&sheet, &bridge] { return sheet.missing(bridge.project()); };
    content.faultOfBegun = [&sheet, &bridge] { return sheet.faultOfBegun(bridge.project()); };
}

}  // namespace ww::ui
