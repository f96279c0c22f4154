// Which pump of the job a page is about.
#pragma once

#include "ui/widgets/quiet_combo.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

class PumpChooser : public QuietCombo {
    Q_OBJECT

  public:
    explicit PumpChooser(WorkbookBridge& bridge, QWidget* parent = nullptr);

    /// The pump chosen; null where the job has none.
    const project::Pump* pump() const;
    /// Its index into Project::pumps(); nothing likewise.
    std::optional<std::size_t> index() const;

  signals:
    /// Another pump is meant now.
    void chosen();

  private:
    void refill();
    void tell();

    WorkbookBridge& m_bridge;
    std::optional<base::Id> m_told;  ///< the pump that was meant when chosen() was emitted last
};

}  // namespace ww::ui
