// The pump test sheet for typing: points side by side, the cautions of a shutoff test in sight before
// anything is typed. Not for what follows from it (the page Results).
#pragma once

#include <QLabel>
#include <vector>

#include "ui/delegates/branch_delegate.h"
#include "ui/models/record_field.h"
#include "ui/places/entry_sheet.h"
#include "ui/places/pump/pump_chooser.h"
#include "ui/places/pump/pump_page.h"
#include "ui/places/section_view.h"

namespace ww::ui {

class TestPage : public PumpPage {
    Q_OBJECT

  public:
    explicit TestPage(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void show(const pump_room::PumpPicture* picture) override;
    void setTokens(const theme::Tokens& tokens) override;
    void setMetrics(const theme::Metrics& metrics) override;
    void takeFocus() override { beginAtValues(*m_table); }
    EntryTable* table() const { return m_table; }
    FieldTableModel* model() const { return m_model; }

  private:
    QString text(int field, int point) const;
    base::Outcome store(int field, int point, const QString& typed);
    void refresh();
    /// What is odd about the reading of a point, and has no reason yet.
    std::vector<base::Fault> doubtsAt(int point) const;
    /// Whether the last round takes a value at a point: any while it is open, then corrections alone.
    bool takes(int point) const;
    void tellWhyNot(const QModelIndex& cell);
    /// Says that what was stored corrects a round that is closed or was sent back.
    void tellCorrection();
    void beginRound(const project::Round* round);

    WorkbookBridge& m_bridge;
    std::vector<RecordField<project::PumpReading>> m_fields;
    PumpChooser* m_chooser;
    FieldTableModel* m_model;
    EntryTable* m_table;
    BranchDelegate* m_delegate;
    QLabel* m_round;
    SectionView* m_cautions;
    std::optional<base::Id> m_begun;  ///< the round in whose first empty cell the keys were set
};

}  // namespace ww::ui
