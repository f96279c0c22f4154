// The worksheet of the dp set-point on the place Pump: its records for typing, and what follows from them.
#pragma once

#include <QPushButton>
#include <vector>

#include "ui/delegates/branch_delegate.h"
#include "ui/models/record_field.h"
#include "ui/places/entry_sheet.h"
#include "ui/places/pump/pump_page.h"
#include "ui/places/section_view.h"

namespace ww::ui {

class SetPointPage : public PumpPage {
    Q_OBJECT

  public:
    explicit SetPointPage(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void show(const pump_room::PumpPicture* picture) override;
    void setTokens(const theme::Tokens& tokens) override;
    void setMetrics(const theme::Metrics& metrics) override;
    void takeFocus() override;
    EntryTable* table() const { return m_table; }
    FieldTableModel* model() const { return m_model; }
    /// Begins a set-point for the first pump.
    bool add();

  private:
    base::Outcome store(int field, int record, const QString& typed);
    void remove();
    void refresh();

    WorkbookBridge& m_bridge;
    std::vector<RecordField<project::SetPoint>> m_fields;
    FieldTableModel* m_model;
    EntryTable* m_table;
    BranchDelegate* m_delegate;
    QPushButton* m_add;
    QPushButton* m_remove;
    SectionView* m_view;
};

}  // namespace ww::ui
