#include "ui/places/pump/pump_place.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QResizeEvent>
#include <QScrollArea>
#include <QShowEvent>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/charts/chart_view.h"
#include "ui/charts/convergence_chart_data.h"
#include "ui/charts/pump_chart_data.h"
#include "ui/places/fact_list.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

constexpr int kPanelWidth = 380;
constexpr int kNarrowPanel = 300;
/// Below this height there is room for one chart only, below this width for a narrow panel only.
constexpr int kTwoCharts = 520;
constexpr int kWide = 1000;
constexpr std::size_t kPumpSection = 4;
constexpr std::size_t kIndexSection = 5;

QLabel* heading(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    QFont font = label->font();
    font.setBold(true);
    font.setPointSizeF(font.pointSizeF() * 1.2);
    label->setFont(font);
    return label;
}

}  // namespace

PumpPlace::PumpPlace(WorkbookBridge& bridge, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_tokens(theme::tokens(theme::Display::Office)),
      m_content(new QStackedWidget(this)),
      m_empty(new QLabel(this)),
      m_page(new QWidget(this)),
      m_pumpChart(new charts::ChartView(this)),
      m_convergence(new charts::ChartView(this)) {
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setWordWrap(true);
    auto* left = new QVBoxLayout;
    left->setSpacing(10);
    left->addWidget(m_pumpChart, 3);
    left->addWidget(m_convergence, 2);
    auto* row = new QHBoxLayout(m_page);
    row->setContentsMargins(12, 10, 12, 10);
    row->setSpacing(16);
    row->addLayout(left, 1);
    row->addWidget(buildPanel());
    m_content->addWidget(m_page);
    m_content->addWidget(m_empty);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_content);

    connect(&m_bridge, &WorkbookBridge::changed, m_shown, &ShownRefresh::want);
    connect(&m_bridge, &WorkbookBridge::branchSelected, m_shown, &ShownRefresh::want);
}

QWidget* PumpPlace::buildPanel() {
    auto* panel = new QWidget;
    auto* column = new QVBoxLayout(panel);
    column->setContentsMargins(0, 0, 8, 0);
    column->setSpacing(8);
    m_duty = new FactList(panel);
    m_indexTitle = heading(tr("Index-circuit check"), panel);
    m_index = new FactList(panel);
    m_cautions = new QLabel(panel);
    m_cautions->setWordWrap(true);
    m_cautions->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_dutyTitle = heading(tr("Duty and design flow"), panel);
    column->addWidget(m_dutyTitle);
    column->addWidget(m_duty);
    column->addSpacing(10);
    column->addWidget(m_indexTitle);
    column->addWidget(m_index);
    column->addSpacing(10);
    column->addWidget(m_cautions);
    column->addStretch(1);
    m_panel = new QScrollArea;
    QScrollArea* scroll = m_panel;
    scroll->setWidget(panel);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFixedWidth(kPanelWidth);
    scroll->setAccessibleName(tr("Duty and index-circuit check"));
    return scroll;
}

void PumpPlace::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    m_pumpChart->setTokens(tokens);
    m_convergence->setTokens(tokens);
    m_shown->want();
}

void PumpPlace::takeFocus() {
    m_pumpChart->setFocus(Qt::OtherFocusReason);
}

void PumpPlace::toggleTable() {
    const bool isConvergence =
        m_convergence->focusProxy() != nullptr && m_convergence->focusProxy()->hasFocus();
    (isConvergence ? m_convergence : m_pumpChart)->toggleTable();
}

void PumpPlace::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    m_panel->setFixedWidth(width() < kWide ? kNarrowPanel : kPanelWidth);
    m_convergence->setVisible(m_hasConvergence && height() >= kTwoCharts);
}

void PumpPlace::refresh() {
    const project::Project& project = m_bridge.project();
    const ww::report::Report report = ww::report::build(project, {});
    charts::ChartFigure figure = charts::pumpChart(project, report.rounds);
    if (!m_bridge.isOpen() || figure.isEmpty()) {
        m_empty->setText(m_bridge.isOpen()
                             ? tr("Enter two pump points or import a curve.")
                             : tr("No job is open. Open one, or make a new job, in the menu File."));
        m_content->setCurrentWidget(m_empty);
        return;
    }
    m_pumpChart->setFigure(std::move(figure));
    charts::ChartFigure convergence =
        charts::convergenceChart(project, report.rounds, m_bridge.selectedBranch());
    m_hasConvergence = !convergence.isEmpty();
    m_convergence->setVisible(m_hasConvergence && height() >= kTwoCharts);
    m_convergence->setFigure(std::move(convergence));

    const ww::report::Section& pump = report.sections[kPumpSection];
    const ww::report::Section& index = report.sections[kIndexSection];
    std::vector<ww::report::Fact> duty = pump.facts;
    if (duty.empty()) {
        duty.push_back({pump.title, pump.figures.front().reading, ww::report::Mark::Open});
    }
    m_duty->show(duty, m_tokens);
    m_index->show(index.facts, m_tokens);
    m_indexTitle->setVisible(!index.facts.empty());
    QStringList cautions;
    for (const ww::report::Statement& statement : pump.closing) {
        cautions << text::text(statement);
    }
    m_cautions->setText(cautions.join(QStringLiteral("\n\n")));
    m_content->setCurrentWidget(m_page);
}

}  // namespace ww::ui
