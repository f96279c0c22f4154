#include "ui/places/pump/pump_place.h"

#include <QHBoxLayout>
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
#include "ui/places/section_view.h"
#include "ui/widgets/filled_stack.h"
#include "ui/widgets/focus_ring.h"
#include "ui/widgets/laid_out_later.h"

namespace ww::ui {
namespace {

/// As the pages below it keep from the edge, px.
constexpr int kBesideChooser = 6;

}  // namespace

PumpPlace::PumpPlace(WorkbookBridge& bridge, PumpAdvisor& advisor, AssessedRounds& rounds, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_advisor(advisor),
      m_content(new FilledStack(this)),
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
    new FocusRing(m_tabs->tabBar());
    m_tabs->setAccessibleName(tr("Pages of the pump"));
    addPage(tr("Curves"),
            [this, judged = &rounds](QWidget* parent) { return new CurvesPage(m_bridge, *judged, parent); });
    addPage<TestPage>(tr("Test"));
    addPage<ResultsPage>(tr("Results"));
    addPage<DecisionPage>(tr("Decision"));
    addPage(tr("Read and Set"), [this](QWidget* parent) {
        return new SectionPage(
            [this](const pump_room::PumpPicture& picture) {
                return ww::report::readAndSetSection(m_bridge.project(), picture);
            },
            [this](const pump_room::PumpPicture& picture) {
                return std::vector<charts::ChartFigure>{
                    charts::readAndSetChart(m_bridge.project(), picture.readAndSet)};
            },
            parent);
    });
    addPage<PressurePage>(tr("Pressure"));
    addPage<CodePage>(tr("Energy Code"));
    addPage<DevicePage>(tr("Devices"));
    addPage<SetPointPage>(tr("Set-Point"));
    addPage<DataPage>(tr("Pump Data"));
    addPage<ZonePage>(tr("Zones"));
    m_content->addWidget(laidOutLater(m_tabs));
    m_content->addWidget(m_empty);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 4, 0, 0);
    auto* chooser = new QHBoxLayout;
    chooser->setContentsMargins(kBesideChooser, 0, kBesideChooser, 0);
    chooser->addWidget(m_chooser);
    layout->addLayout(chooser);
    layout->addWidget(m_content);
    m_chooser->setAccessibleName(tr("Page of the pump"));
    m_chooser->hide();
    connect(m_chooser, &QComboBox::activated, m_tabs, &QTabWidget::setCurrentIndex);
    connect(m_tabs, &QTabWidget::currentChanged, this, [this] { updateGeometry(); });
    connect(m_tabs, &QTabWidget::currentChanged, m_chooser, &QComboBox::setCurrentIndex);
    connect(&m_bridge, &WorkbookBridge::branchSelected, m_shown, [this] {
        // No other page shows the branch in hand.
        m_pages[Curves].isBehind = true;
        m_shown->want();
    });
    connect(&m_advisor, &PumpAdvisor::changed, m_shown, [this] { markBehind(); });
    connect(&m_bridge, &WorkbookBridge::changed, m_shown, &ShownRefresh::want);
    connect(m_tabs, &QTabWidget::currentChanged, m_shown, &ShownRefresh::want);
}

template <class Page>
void PumpPlace::addPage(const QString& title) {
    addPage(title, [this](QWidget* parent) { return new Page(m_bridge, parent); });
}

void PumpPlace::addPage(const QString& title, std::function<PumpPage*(QWidget*)> make) {
    auto* area = new PageArea(m_tabs);
    m_tabs->addTab(area, title);
    m_chooser->addItem(title);
    m_pages.push_back({std::move(make), area});
}

PumpPage* PumpPlace::page(Page which) {
    Entry& entry = m_pages[static_cast<std::size_t>(which)];
    if (entry.page == nullptr) {
        entry.page = entry.make(entry.area->shelf());
        entry.page->setAccessibleName(m_tabs->tabText(which));
        entry.area->take(entry.page);
        entry.page->setTokens(m_tokens);
        entry.page->setMetrics(m_metrics);
        emit pageMade();
    }
    return entry.page;
}

void PumpPlace::markBehind() {
    for (Entry& entry : m_pages) {
        entry.isBehind = true;
    }
    m_shown->want();
}

void PumpPlace::forgetUnseen() {
    for (int which = 0; m_advisor.isCurrent() && which < PageCount; ++which) {
        Entry& entry = m_pages[static_cast<std::size_t>(which)];
        // What is tried on Zones is of that page alone.
        if (entry.page == nullptr || entry.page->isVisible() || which == Zones) {
            continue;
        }
        for (SectionView* view : entry.page->findChildren<SectionView*>()) {
            view->forget();
        }
        entry.isBehind = true;
        entry.isForgotten = true;
    }
}

void PumpPlace::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    for (const Entry& entry : m_pages) {
        if (entry.page != nullptr) {
            entry.page->setTokens(tokens);
        }
    }
    markBehind();
}

void PumpPlace::setMetrics(const theme::Metrics& metrics) {
    m_metrics = metrics;
    for (const Entry& entry : m_pages) {
        if (entry.page != nullptr) {
            entry.page->setMetrics(metrics);
        }
    }
}

QSize PumpPlace::minimumSizeHint() const {
    const Entry& shown = m_pages[static_cast<std::size_t>(m_tabs->currentIndex())];
    return {shown.area->minimumSizeHint().width(), QWidget::minimumSizeHint().height()};
}

void PumpPlace::setNarrow(bool isNarrow) {
    m_tabs->setUsesScrollButtons(isNarrow);
    m_tabs->tabBar()->setVisible(!isNarrow);
    m_chooser->setVisible(isNarrow);
}

void PumpPlace::takeFocus() {
    page(shownPage())->takeFocus();
}

void PumpPlace::showPage(Page page) {
    m_tabs->setCurrentIndex(page);
    takeFocus();
}

void PumpPlace::toggleTable() {
    page(shownPage())->toggleTable();
}

bool PumpPlace::hasChart() const {
    const PumpPage* shown = m_pages[static_cast<std::size_t>(m_tabs->currentIndex())].page;
    return m_content->currentWidget() == m_tabs && shown != nullptr && shown->hasChart();
}

void PumpPlace::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    m_advisor.rest();
}

void PumpPlace::refresh() {
    if (!m_bridge.isOpen()) {
        m_empty->setText(tr("No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N)."));
        m_content->setCurrentWidget(m_empty);
        return;
    }
    m_content->setCurrentWidget(m_tabs);
    m_advisor.want();
    PumpPage* shown = page(shownPage());
    Entry& entry = m_pages[static_cast<std::size_t>(shownPage())];
    const auto picture = m_advisor.picture();
    // A picture of the job before its last change stays on the page until the new one is there.
    if (entry.isBehind && (picture == nullptr || m_advisor.isCurrent())) {
        shown->show(picture.get());
        entry.isBehind = picture == nullptr;
        entry.isForgotten = false;
    } else if (entry.isForgotten) {
        shown->show(nullptr);
        entry.isForgotten = false;
    }
}

}  // namespace ww::ui
