// The pressure round a circuit that is chosen: valve on return and supply, pump on and off.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <vector>

#include "ui/places/pump/circuit_list.h"
#include "ui/places/pump/pump_page.h"
#include "ui/places/section_view.h"
#include "ui/widgets/quiet_combo.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

class PressurePage : public PumpPage {
    Q_OBJECT

  public:
    explicit PressurePage(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void show(const pump_room::PumpPicture* picture) override;
    void setTokens(const theme::Tokens& tokens) override { m_view->setTokens(tokens); }
    void takeFocus() override { m_circuit->setFocus(Qt::OtherFocusReason); }
    void toggleTable() override { m_view->toggleTable(); }
    bool hasChart() const override { return !m_view->charts().empty(); }
    QuietCombo* circuit() const { return m_circuit; }
    SectionView* view() const { return m_view; }

  private:
    static constexpr int kIndexCircuit = -1;
    std::vector<CircuitEntry> entries() const;
    void refill();
    void fitChoice();
    void showCircuit();

    WorkbookBridge& m_bridge;
    CircuitList* m_circuits;
    QuietCombo* m_circuit;
    QCheckBox* m_isOff;
    QCheckBox* m_isOther;
    SectionView* m_view;
    balancing::Resistances m_learned;
    std::optional<pump_room::CircuitComparison> m_index;
    bool m_isComputed = false;
};

}  // namespace ww::ui
