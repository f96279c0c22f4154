// What is known of the pumps before anything is read, for typing: plate and pump data, the maker's curve, and
// how the loop is used over a year.
#pragma once

#include <QPushButton>
#include <vector>

#include "ui/delegates/branch_delegate.h"
#include "ui/places/entry_sheet.h"
#include "ui/places/job/job_fields.h"
#include "ui/places/pump/pump_chooser.h"
#include "ui/places/pump/pump_page.h"
#include "ui/places/row_panel.h"
#include "ui/places/row_sheet.h"

namespace ww::ui {

/// A row of a pump's table while it is typed.
struct CurveRow {
    std::optional<quantity::Measured<quantity::Length>> impeller;
    std::optional<quantity::Measured<quantity::VolumeFlow>> flow;
    std::optional<quantity::Measured<quantity::Head>> head;
    std::optional<quantity::Measured<quantity::Ratio>> efficiency;
    std::optional<quantity::Measured<quantity::Power>> power;
    std::optional<quantity::Measured<quantity::Head>> npshRequired;
};

/// A row of the load profile while it is typed.
struct LoadProfileRow {
    std::optional<base::Decimal> hours;
    std::optional<quantity::Measured<quantity::Ratio>> flowFraction;
};

class DataPage : public PumpPage {
    Q_OBJECT

  public:
    explicit DataPage(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void show(const pump_room::PumpPicture*) override {}
    void setTokens(const theme::Tokens& tokens) override;
    void setMetrics(const theme::Metrics& metrics) override;
    void takeFocus() override;
    FieldTableModel* plateModel() const { return m_model; }
    RowPanel* curve() const { return m_curve; }
    RowPanel* load() const { return m_load; }
    EntryField* field(JobField field) const { return m_jobFields->field(field); }
    bool addPump();

  private:
    base::Outcome store(int field, int pump, const QString& typed);
    RowSheet<CurveRow>::Content curveContent();
    RowSheet<LoadProfileRow>::Content loadContent();
    template <class Row>
    RowPanel* panel(RowSheet<Row>& sheet, project::RecordKind kind, const QString& title,
                    const QString& removeWords);

    WorkbookBridge& m_bridge;
    std::vector<RecordField<project::Pump>> m_fields;
    PumpChooser* m_chooser;
    FieldTableModel* m_model;
    EntryTable* m_table;
    BranchDelegate* m_delegate;
    QPushButton* m_add;
    RowSheet<CurveRow> m_curveRows;
    RowSheet<LoadProfileRow> m_loadRows;
    RowPanel* m_curve;
    RowPanel* m_load;
    JobFields* m_jobFields;
};

}  // namespace ww::ui
