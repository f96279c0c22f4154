#include "ui/places/pump/pump_place.h"

#include <QTabBar>
#include <QVBoxLayout>

#include "core/report/pump_sections.h"
#include "ui/charts/pump_room_chart_data.h"
#include "ui/places/pump/code_page.h"
#include "ui/places/pump/curves_page.h"
#include "ui/places/pump/data_page.h"
#include "ui/places/pump/decision_page.h"
#include "ui/places/pump/device_page.h"
#include "ui/places/pump/pressure_page.h"
#include "ui/places/pump/results_page.h"
#include "ui/places/pump/section_page.h"
#include "ui/places/pump/set_point_page.h"
#include "ui/places/pump/test_page.h"
#include "ui/places/pump/zone_page.h"

namespace ww::ui {

PumpPlace::PumpPlace(WorkbookBridge& bridge, PumpAdvisor& advisor, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_advisor(advisor),
      m_content(new QStackedWidget(this)),
      m_empty(new QLabel(this)),
      m_chooser(new QuietCombo(this)),
      m_tabs(new QTabWidget(this)) {
    setAccessibleName(tr("Pump"));
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setWordWrap(true);
    m_empty->setObjectName(QStringLiteral("empty_state"));
    m_tabs->setDocumentMode(true);
    m_tabs->setUsesScrollButtons(false);
    m_tabs->setElideMode(Qt::ElideNone);
    m_tabs->setAccessibleName(tr("Pages of the pump"));
    addPage(new CurvesPage(bridge, this), tr("Curves"));
    addPage(new TestPage(bridge, this), tr("Test"));
    addPage(new ResultsPage(bridge, this), tr("Results"));
    addPage(new DecisionPage(bridge, this), tr("Decision"));
    addPage(new SectionPage(
                [this](const pump_room::PumpPicture& picture) {
                    return ww::report::readAndSetSection(m_bridge.project(), picture);
                },
                [this](const pump_room::PumpPicture& picture) {
                    return std::vector<charts::ChartFigure>{
                        charts::readAndSetChart(m_bridge.project(), picture.readAndSet)};
                },
                this),
            tr("Read and Set"));
    addPage(new PressurePage(bridge, this), tr("Pressure"));
    addPage(new CodePage(bridge, this), tr("Energy Code"));
    addPage(new DevicePage(bridge, this), tr("Devices"));
    addPage(new SetPointPage(bridge, this), tr("Set-Point"));
    addPage(new DataPage(bridge, this), tr("Pump Data"));
    addPage(new ZonePage(bridge, this), tr("Zones"));
    m_content->addWidget(m_tabs);
    m_content->addWidget(m_empty);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 4, 0, 0);
    layout->addWidget(m_chooser);
    layout->addWidget(m_content);
    m_chooser->setAccessibleName(tr("Page of the pump"));
    m_chooser->hide();
    connect(m_chooser, &QComboBox::activated, m_tabs, &QTabWidget::setCurrentIndex);
    connect(m_tabs, &QTabWidget::currentChanged, this, [this] { updateGeometry(); });
    connect(m_tabs, &QTabWidget::currentChanged, m_chooser, &QComboBox::setCurrentIndex);
    connect(&m_bridge, &WorkbookBridge::branchSelected, m_shown, [this] {
        m_isBehind.assign(m_pages.size(), true);
        m_shown->want();
    });
    connect(&m_advisor, &PumpAdvisor::changed, m_shown, [this] {
        m_isBehind.assign(m_pages.size(), true);
        m_shown->want();
    });
    connect(&m_bridge, &WorkbookBridge::changed, m_shown, &ShownRefresh::want);
    connect(m_tabs, &QTabWidget::currentChanged, m_shown, &ShownRefresh::want);
}

void PumpPlace::addPage(PumpPage* page, const QString& title) {
    page->setAccessibleName(title);
    m_tabs->addTab(page, title);
    m_chooser->addItem(title);
    m_pages.push_back(page);
    m_isBehind.push_back(true);
}

void PumpPlace::setTokens(const theme::Tokens& tokens) {
    for (PumpPage* page : m_pages) {
        page->setTokens(tokens);
    }
    m_isBehind.assign(m_pages.size(), true);
    m_shown->want();
}

void PumpPlace::setMetrics(const theme::Metrics& metrics) {
    for (PumpPage* page : m_pages) {
        page->setMetrics(metrics);
    }
}

QSize PumpPlace::minimumSizeHint() const {
    return {m_pages[static_cast<std::size_t>(m_tabs->currentIndex())]->minimumSizeHint().width(),
            QWidget::minimumSizeHint().height()};
}

void PumpPlace::setNarrow(bool isNarrow) {
    m_tabs->setUsesScrollButtons(isNarrow);
    m_tabs->tabBar()->setVisible(!isNarrow);
    m_chooser->setVisible(isNarrow);
}

void PumpPlace::takeFocus() {
    m_pages[static_cast<std::size_t>(m_tabs->currentIndex())]->takeFocus();
}

void PumpPlace::showPage(Page page) {
    m_tabs->setCurrentIndex(page);
    takeFocus();
}

void PumpPlace::toggleTable() {
    m_pages[static_cast<std::size_t>(m_tabs->currentIndex())]->toggleTable();
}

void PumpPlace::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    m_advisor.rest();
}

void PumpPlace::refresh() {
    if (!m_bridge.isOpen()) {
        m_empty->setText(tr("No job is open. Open one, or make a new job, in the menu File."));
        m_content->setCurrentWidget(m_empty);
        return;
    }
    m_content->setCurrentWidget(m_tabs);
    m_advisor.want();
    const auto index = static_cast<std::size_t>(m_tabs->currentIndex());
    const auto picture = m_advisor.picture();
    // A picture of the job before its last change stays on the page until the new one is there.
    if (m_isBehind[index] && (picture == nullptr || m_advisor.isCurrent())) {
        m_pages[index]->show(picture.get());
        m_isBehind[index] = picture == nullptr;
    }
}

}  // namespace ww::ui
