#include "ui/places/pump/curves_page.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QResizeEvent>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "core/pump_room/pump_picture.h"
#include "ui/charts/convergence_chart_data.h"
#include "ui/charts/pump_chart_data.h"
#include "ui/places/pump/section_page.h"
#include "ui/text/words.h"
#include "ui/widgets/panel_area.h"
#include "ui/widgets/panel_title.h"

namespace ww::ui {
namespace {

constexpr int kPanelWidth = 300;
constexpr int kChartWidth = 480;
/// With its sentence; in larger text the page scrolls before a plot is lower.
constexpr double kLeastChart = 230;

QString paragraphs(const std::vector<ww::report::Statement>& statements) {
    QStringList lines;
    for (const ww::report::Statement& statement : statements) {
        lines << text::text(statement);
    }
    return lines.join(QStringLiteral("\n\n"));
}

}  // namespace

CurvesPage::CurvesPage(WorkbookBridge& bridge, AssessedRounds& rounds, QWidget* parent)
    : PumpPage(parent),
      m_bridge(bridge),
      m_rounds(rounds),
      m_tokens(theme::tokens(theme::Display::Office)),
      m_message(new SectionView(this)),
      m_pumpChart(new charts::ChartView(this)),
      m_convergence(new charts::ChartView(this)) {
    auto* charts = new QWidget(this);
    auto* left = new QVBoxLayout(charts);
    left->setContentsMargins(0, 0, 0, 0);
    left->setSpacing(10);
    left->addWidget(m_pumpChart, 3);
    left->addWidget(m_convergence, 2);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 8, 12, 8);
    m_content = new SideBySide({charts, kChartWidth, 2, SideBySide::kAsItAsks},
                               {buildPanel(), kPanelWidth, 1, SideBySide::kAsItAsks}, this);
    m_message->hide();
    row->addWidget(m_message);
    row->addWidget(m_content);
}

QWidget* CurvesPage::buildPanel() {
    auto* panel = new QWidget;
    auto* column = new QVBoxLayout(panel);
    column->setContentsMargins(0, 0, 8, 0);
    column->setSpacing(8);
    m_doubts = new QLabel(panel);
    m_doubts->setWordWrap(true);
    m_doubts->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_duty = new FactList(panel);
    m_indexTitle = panelTitle(tr("Index-circuit check"), panel);
    m_index = new FactList(panel);
    m_cautions = new QLabel(panel);
    m_cautions->setWordWrap(true);
    m_cautions->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_dutyTitle = panelTitle(tr("Duty and design flow"), panel);
    column->addWidget(m_dutyTitle);
    column->addWidget(m_doubts);
    column->addWidget(m_duty);
    column->addSpacing(10);
    column->addWidget(m_indexTitle);
    column->addWidget(m_index);
    column->addSpacing(10);
    column->addWidget(m_cautions);
    column->addStretch(1);
    auto* scroll = new PanelArea(panel, kPanelWidth, this);
    scroll->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
    scroll->setAccessibleName(tr("Duty and index-circuit check"));
    return scroll;
}

void CurvesPage::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    m_message->setTokens(tokens);
    m_pumpChart->setTokens(tokens);
    m_convergence->setTokens(tokens);
}

void CurvesPage::setMetrics(const theme::Metrics& metrics) {
    const double scale = std::max(1.0, metrics.textPoints / 10.0);
    for (charts::ChartView* chart : {m_pumpChart, m_convergence}) {
        chart->setMinimumHeight(static_cast<int>(kLeastChart * scale));
    }
    m_content->setFirstWidth(static_cast<int>(kChartWidth * scale));
}

void CurvesPage::toggleTable() {
    const bool isConvergence =
        m_convergence->focusProxy() != nullptr && m_convergence->focusProxy()->hasFocus();
    (isConvergence ? m_convergence : m_pumpChart)->toggleTable();
}

void CurvesPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    placeConvergence();
}

void CurvesPage::placeConvergence() {
    // Where two charts have no room in sight there is one.
    const QWidget* seen = this;
    for (const QWidget* up = parentWidget(); up != nullptr && seen == this; up = up->parentWidget()) {
        if (const auto* area = qobject_cast<const QScrollArea*>(up)) {
            seen = area->viewport();
        }
    }
    constexpr int kMargins = 30;
    const bool isRoom = seen->height() >= 2 * m_pumpChart->minimumHeight() + kMargins;
    m_convergence->setVisible(m_hasConvergence && isRoom);
}

void CurvesPage::takeFocus() {
    (m_content->isHidden() ? static_cast<QWidget*>(m_message) : m_pumpChart)->setFocus(Qt::OtherFocusReason);
}

std::vector<base::Id> CurvesPage::ownRounds() const {
    const project::Project& project = m_bridge.project();
    std::vector<base::Id> own;
    for (const std::size_t index : project.roundsByNumber()) {
        const project::Round& round = project.rounds()[index];
        if (round.kind != project::RoundKind::Witness) {
            own.push_back(round.id);
        }
    }
    return own;
}

void CurvesPage::show(const pump_room::PumpPicture* picture) {
    const bool hadFocus = isAncestorOf(QApplication::focusWidget());
    m_message->setVisible(picture == nullptr);
    m_content->setVisible(picture != nullptr);
    if (hadFocus && !isAncestorOf(QApplication::focusWidget())) {
        takeFocus();
    }
    if (picture == nullptr) {
        m_message->showMessage(computingMessage());
        return;
    }
    const project::Project& project = m_bridge.project();
    ww::report::ReportOptions options;
    // The page needs no more than it is given; what nobody draws is not computed.
    options.pumps = std::make_shared<pump_room::PumpPicture>(*picture);
    std::vector<balancing::Assessment> rounds;
    for (const base::Id& round : ownRounds()) {
        rounds.push_back(m_rounds.of(round));
    }
    const ww::report::Report report = ww::report::buildOfPump(project, options, std::move(rounds));
    showCharts(project, report, *picture);
    showFacts(report);
}

void CurvesPage::showCharts(const project::Project& project, const ww::report::Report& report,
                            const pump_room::PumpPicture& picture) {
    charts::ChartFigure figure = charts::pumpChart(project, report.rounds, &picture.decision);
    if (figure.isEmpty()) {
        figure.sentence =
            tr("Enter two points of the pump's curve on the page Pump Data (Ctrl+Alt+0), or make the "
               "job from tables that have a curve.");
    }
    m_pumpChart->setFigure(std::move(figure));
    showConvergence();
}

void CurvesPage::showConvergence() {
    std::vector<const balancing::Assessment*> rounds;
    for (const base::Id& round : ownRounds()) {
        rounds.push_back(&m_rounds.shown(round));
    }
    charts::ChartFigure convergence =
        charts::convergenceChartOver(m_bridge.project(), rounds, m_bridge.selectedBranch());
    m_hasConvergence = !convergence.isEmpty();
    placeConvergence();
    m_convergence->setFigure(std::move(convergence));
}

void CurvesPage::showFacts(const ww::report::Report& report) {
    const ww::report::Section& pump = ww::report::sectionOf(report, ww::report::kPump);
    const ww::report::Section& index = ww::report::sectionOf(report, ww::report::kIndex);
    std::vector<ww::report::Fact> duty = pump.facts;
    if (duty.empty() && !pump.figures.empty()) {
        duty.push_back({pump.title, pump.figures.front().reading, ww::report::Mark::Open});
    }
    m_doubts->setText(paragraphs(pump.opening));
    m_doubts->setVisible(!pump.opening.empty());
    m_duty->show(duty, m_tokens);
    m_index->show(index.facts, m_tokens);
    m_indexTitle->setVisible(!index.facts.empty());
    m_cautions->setText(paragraphs(pump.closing));
}

}  // namespace ww::ui
