// The valve models of a job for typing: their data, their tables of flow coefficients, and the curve through
// them. Not for which branch has which (the table of branches).
#pragma once

#include <QPushButton>
#include <vector>

#include "ui/charts/chart_view.h"
#include "ui/delegates/branch_delegate.h"
#include "ui/models/record_field.h"
#include "ui/places/row_panel.h"
#include "ui/places/row_sheet.h"

namespace ww::ui {

class SideBySide;

/// A point of a valve's table while it is typed.
struct ValvePointRow {
    std::optional<base::Decimal> setting;
    std::optional<base::Decimal> coefficient;
};

class ValvePage : public QWidget {
    Q_OBJECT

  public:
    explicit ValvePage(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void setTokens(const theme::Tokens& tokens);
    void setMetrics(const theme::Metrics& metrics);
    void takeFocus();
    EntryTable* models() const { return m_table; }
    RowPanel* points() const { return m_points; }
    charts::ChartView* chart() const { return m_chart; }
    /// A new model behind the others, ready for its name.
    bool addValve();
    /// Takes the model in hand out; refused while a branch has it.
    bool removeValve();
    /// Takes what is in the clipboard: points where their table has the keys, else whole models.
    void paste();
    /// Puts pasted points in place of those of the model in hand.
    bool pastePoints(const QString& text);

  signals:
    /// A table of whole models was pasted.
    void tablePasted(const QString& text);

  private:
    const project::ValveModel* inHand() const;
    QString cell(int row, int column) const;
    base::Outcome store(int row, int column, const QString& typed);
    RowSheet<ValvePointRow>::Content pointContent();
    RowPanel* pointPanel();
    void fit();
    void refresh();

    WorkbookBridge& m_bridge;
    std::vector<RecordField<project::ValveModel>> m_fields;
    RecordTableModel* m_model;
    EntryTable* m_table;
    BranchDelegate* m_delegate;
    QPushButton* m_add;
    QPushButton* m_remove;
    RowSheet<ValvePointRow> m_pointRows;
    RowPanel* m_points;
    charts::ChartView* m_chart;
    SideBySide* m_content = nullptr;
};

}  // namespace ww::ui
