#include "ui/places/pump/results_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "core/report/pump_sections.h"
#include "ui/places/pump/section_page.h"

namespace ww::ui {

ResultsPage::ResultsPage(WorkbookBridge& bridge, QWidget* parent)
    : PumpPage(parent),
      m_bridge(bridge),
      m_chooser(new PumpChooser(bridge, this)),
      m_view(new SectionView(this)) {
    auto* label = new QLabel(tr("Pump"), this);
    label->setBuddy(m_chooser);
    auto* top = new QHBoxLayout;
    top->addWidget(label);
    top->addWidget(m_chooser);
    top->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 4, 4);
    column->addLayout(top);
    column->addWidget(m_view, 1);
    connect(m_chooser, &PumpChooser::chosen, this, &ResultsPage::showSections);
}

void ResultsPage::show(const pump_room::PumpPicture* picture) {
    m_sections.clear();
    for (std::size_t i = 0; picture != nullptr && i < picture->sheets.size(); ++i) {
        m_sections.push_back(ww::report::pumpTestSection(m_bridge.project(), *picture, i));
    }
    showSections();
}

void ResultsPage::showSections() {
    const auto pump = m_chooser->index();
    if (!pump) {
        m_view->showMessage(tr("The job has no pump yet; add one on the page Pump Data."));
    } else if (*pump < m_sections.size()) {
        m_view->show(m_sections[*pump]);
    } else {
        m_view->showMessage(computingMessage());
    }
}

void ResultsPage::takeFocus() {
    (m_chooser->isEnabled() ? static_cast<QWidget*>(m_chooser) : m_view)->setFocus(Qt::OtherFocusReason);
}

}  // namespace ww::ui
