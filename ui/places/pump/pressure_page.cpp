#include "ui/places/pump/pressure_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "core/report/pump_sections.h"
#include "ui/charts/pump_room_chart_data.h"
#include "ui/places/pump/section_page.h"
#include "ui/widgets/side_by_side.h"

namespace ww::ui {

namespace {

/// The names of more circuits are not measured one by one.
constexpr int kMostCircuitsMeasured = 200;

}  // namespace

PressurePage::PressurePage(WorkbookBridge& bridge, QWidget* parent)
    : PumpPage(parent),
      m_bridge(bridge),
      m_circuits(new CircuitList(this)),
      m_circuit(new QuietCombo(this)),
      m_isOff(new QCheckBox(tr("Pump &off too"), this)),
      m_isOther(new QCheckBox(tr("Valve on the other &side too"), this)),
      m_view(new SectionView(this)) {
    m_circuit->setAccessibleName(tr("Circuit"));
    m_circuit->setModel(m_circuits);
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
std::vector<CircuitEntry> PressurePage::entries() const {
    const project::Project& project = m_bridge.project();
    const auto tagOf = [&](std::size_t branch) {
        return QString::fromStdString(project.branches()[branch].tag);
    };
    std::vector<CircuitEntry> entries;
    if (m_index) {
        entries.push_back({tr("%1, index circuit").arg(tagOf(m_index->terminal)), kIndexCircuit});
    }
    for (const std::size_t branch : project.tree().walkingOrder()) {
        if (project.tree().isTerminal(branch)) {
            entries.push_back({tagOf(branch), static_cast<int>(branch)});
        }
    }
    return entries;
}

void PressurePage::refill() {
    const QVariant chosen = m_circuit->currentData();
    m_circuit->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_circuits->show(entries());
    m_circuit->setCurrentIndex(std::max(0, chosen.isValid() ? m_circuits->rowOf(chosen.toInt()) : 0));
    fitChoice();
}

/// As wide as its longest name. Its least size is that of the names it once had.
void PressurePage::fitChoice() {
    const bool isLong = m_circuits->rowCount() > kMostCircuitsMeasured;
    m_circuit->setMinimumContentsLength(isLong ? m_circuits->longestName() : 0);
    if (!isLong) {
        m_circuit->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    } else if (auto* list = qobject_cast<QListView*>(m_circuit->view())) {
        list->setUniformItemSizes(true);
        list->setLayoutMode(QListView::Batched);
    }
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
    m_isOff->setEnabled(circuit.isFillKnown);
    std::vector<charts::ChartFigure> figures;
    figures.push_back(
        charts::pressureChart(project, circuit, {m_isOff->isChecked(), m_isOther->isChecked()}));
    m_view->show(ww::report::pressureSection(project, circuit), std::move(figures));
}

}  // namespace ww::ui
