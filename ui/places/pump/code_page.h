// The energy code on the place Pump: which form and clause, typed by the user, and what the test says.
#pragma once

#include "ui/places/job/job_fields.h"
#include "ui/places/pump/pump_page.h"
#include "ui/places/section_view.h"
#include "ui/widgets/quiet_combo.h"

namespace ww::ui {

class CodePage : public PumpPage {
    Q_OBJECT

  public:
    explicit CodePage(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void show(const pump_room::PumpPicture* picture) override;
    void setTokens(const theme::Tokens& tokens) override;
    void takeFocus() override { m_form->setFocus(Qt::OtherFocusReason); }
    EntryField* field(JobField field) const { return m_fields->field(field); }
    QuietCombo* form() const { return m_form; }

  private:
    void refresh();

    WorkbookBridge& m_bridge;
    JobFields* m_fields;
    QuietCombo* m_form;
    SectionView* m_view;
};

}  // namespace ww::ui
