// The one-line diagram in the place System, with its key and its zoom.
#include <QHBoxLayout>

#include "ui/places/system/system_place.h"

namespace ww::ui {

QWidget* SystemPlace::zoomButtons() {
    auto* made = new QWidget(this);
    auto* line = new QHBoxLayout(made);
    line->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& text, const QString& name, auto&& act) {
        auto* button = new QPushButton(text, made);
        button->setAccessibleName(name);
        connect(button, &QPushButton::clicked, m_diagram, act);
        line->addWidget(button);
        m_zooms << button;
    };
    add(QStringLiteral("\u2212"), tr("Show the diagram smaller"),
        [this] { m_diagram->zoomBy(1 / schematic::SchematicView::kZoomStep); });
    add(tr("Fit"), tr("Fit the whole loop into the diagram"), [this] { m_diagram->fit(); });
    add(QStringLiteral("+"), tr("Show the diagram larger"),
        [this] { m_diagram->zoomBy(schematic::SchematicView::kZoomStep); });
    return made;
}

/// Diagram and bench cost more than a row; they follow the job only while they are seen.
void SystemPlace::refreshDiagram() {
    const bool hasBranches = m_model->rowCount() > 0;
    m_drawing->setVisible(hasBranches && !m_isTableOnly);
    if (!hasBranches || !isVisible()) {
        return;
    }
    m_diagram->show(m_bridge.project(), m_bridge.assessment());
    m_key->show(m_diagram->drawing());
    if (m_whatIf->isChecked()) {
        teachBench();
        m_bench->setJob(m_bridge.project(), m_bridge.assessment());
    }
    if (const auto selected = m_bridge.selectedBranch()) {
        m_diagram->setCurrent(*selected);
        m_bench->setCurrent(*selected);
    }
}

void SystemPlace::toggleTable() {
    m_isTableOnly = !m_isTableOnly;
    refreshDiagram();
}

}  // namespace ww::ui
