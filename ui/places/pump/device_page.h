// Balancing devices on the place Pump: where each valve sits and how its branch is dealt with, for typing,
// and the list of what is missing.
#pragma once

#include <QPushButton>
#include <vector>

#include "ui/delegates/branch_delegate.h"
#include "ui/models/record_field.h"
#include "ui/places/entry_sheet.h"
#include "ui/places/pump/pump_page.h"
#include "ui/places/section_view.h"

namespace ww::ui {

class DevicePage : public PumpPage {
    Q_OBJECT

  public:
    explicit DevicePage(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void show(const pump_room::PumpPicture* picture) override;
    void setTokens(const theme::Tokens& tokens) override;
    void setMetrics(const theme::Metrics& metrics) override;
    void takeFocus() override { beginAtValues(*m_table); }
    EntryTable* table() const { return m_table; }
    RecordTableModel* model() const { return m_model; }
    /// Shown where not all columns have room.
    QPushButton* others() const { return m_others; }

  private:
    const project::Branch* at(int row) const;
    void fit();

    WorkbookBridge& m_bridge;
    std::vector<RecordField<project::Branch>> m_fields;
    RecordTableModel* m_model;
    EntryTable* m_table;
    BranchDelegate* m_delegate;
    QPushButton* m_others;
    SectionView* m_view;
};

}  // namespace ww::ui
