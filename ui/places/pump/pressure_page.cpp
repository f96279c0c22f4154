#include "ui/places/pump/pressure_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "core/report/pump_sections.h"
#include "ui/charts/pump_room_chart_data.h"
#include "ui/places/pump/section_page.h"
#include "ui/widgets/side_by_side.h"

namespace ww::ui {

PressurePage::PressurePage(WorkbookBridge& bridge, QWidget* parent)
    : PumpPage(parent),
      m_bridge(bridge),
      m_circuit(new QuietCombo(this)),
      m_isOff(new QCheckBox(tr("Pump &off too"), this)),
      m_isOther(new QCheckBox(tr("Valve on the other &side too"), this)),
      m_view(new SectionView(this)) {
    m_circuit->setAccessibleName(tr("Circuit"));
    m_circuit->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_isOff->setChecked(true);
    m_isOther->setChecked(true);
    auto* label = new QLabel(tr("Cir&cuit"), this);
    label->setBuddy(m_circuit);
    auto* choice = new QWidget(this);
    auto* chosen = new QHBoxLayout(choice);
    chosen->setContentsMargins(0, 0, 0, 0);
    chosen->addWidget(label);
    chosen->addWidget(m_circuit, 1);
    auto* sides = new QWidget(this);
    auto* both = new QHBoxLayout(sides);
    both->setContentsMargins(0, 0, 0, 0);
    both->addWidget(m_isOff);
    both->addWidget(m_isOther);
    both->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 4, 4);
    column->addWidget(new SideBySide({choice, 0, 0, 0}, {sides, 0, 1, 0}, this));
    column->addWidget(m_view, 1);
    // What was computed counts by index into the job before its change.
    connect(&bridge, &WorkbookBridge::changed, this, [this] {
        m_isComputed = false;
        m_index.reset();
    });
    connect(m_circuit, &QComboBox::activated, this, &PressurePage::showCircuit);
    connect(m_isOff, &QCheckBox::toggled, this, &PressurePage::showCircuit);
    connect(m_isOther, &QCheckBox::toggled, this, &PressurePage::showCircuit);
}

/// The index circuit first, then every terminal in walking order.
void PressurePage::refill() {
    const QVariant chosen = m_circuit->currentData();
    m_circuit->clear();
    const project::Project& project = m_bridge.project();
    const auto tagOf = [&](std::size_t branch) {
        return QString::fromStdString(project.branches()[branch].tag);
    };
    if (m_index) {
        m_circuit->addItem(tr("%1, index circuit").arg(tagOf(m_index->terminal)), -1);
    }
    for (const std::size_t branch : project.tree().walkingOrder()) {
        if (project.tree().isTerminal(branch)) {
            m_circuit->addItem(tagOf(branch), static_cast<int>(branch));
        }
    }
    m_circuit->setCurrentIndex(std::max(0, m_circuit->findData(chosen)));
    // Its least size is that of the items it once had.
    m_circuit->setMinimumWidth(m_circuit->sizeHint().width());
}

void PressurePage::show(const pump_room::PumpPicture* picture) {
    m_isComputed = picture != nullptr;
    m_index = picture != nullptr ? picture->circuit : std::nullopt;
    m_learned = picture != nullptr ? picture->learned : balancing::Resistances{};
    refill();
    showCircuit();
}

void PressurePage::showCircuit() {
    if (!m_isComputed || m_circuit->count() == 0) {
        m_view->showMessage(m_isComputed ? tr("The job has no circuits yet; add branches in System.")
                                         : computingMessage());
        return;
    }
    const project::Project& project = m_bridge.project();
    const int chosen = m_circuit->currentData().toInt();
    const bool isIndex = chosen < 0 && m_index && m_index->terminal < project.branches().size();
    if (!isIndex && static_cast<std::size_t>(std::max(chosen, 0)) >= project.branches().size()) {
        return;
    }
    const pump_room::CircuitComparison circuit =
        isIndex ? *m_index
                : pump_room::circuitOf(project, static_cast<std::size_t>(std::max(chosen, 0)), m_learned);
    std::vector<charts::ChartFigure> figures;
    figures.push_back(
        charts::pressureChart(project, circuit, {m_isOff->isChecked(), m_isOther->isChecked()}));
    m_view->show(ww::report::pressureSection(project, circuit), std::move(figures));
}

}  // namespace ww::ui
