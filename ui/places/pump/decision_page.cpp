#include "ui/places/pump/decision_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "core/report/pump_sections.h"
#include "ui/places/pump/section_page.h"

namespace ww::ui {

DecisionPage::DecisionPage(WorkbookBridge& bridge, QWidget* parent)
    : PumpPage(parent),
      m_bridge(bridge),
      m_top(new QWidget(this)),
      m_pumps(new QuietCombo(this)),
      m_view(new SectionView(this)) {
    m_pumps->setAccessibleName(tr("Pumps that run"));
    m_pumps->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* label = new QLabel(tr("Pumps &that run"), m_top);
    label->setBuddy(m_pumps);
    auto* line = new QHBoxLayout(m_top);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(label);
    line->addWidget(m_pumps);
    line->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 4, 4, 4);
    column->addWidget(m_top);
    column->addWidget(m_view, 1);
    connect(m_pumps, &QComboBox::activated, this, &DecisionPage::decide);
    connect(&bridge, &WorkbookBridge::changed, this, [this] { ++m_state; });
}

/// All that are marked as running, then each by itself.
void DecisionPage::refill() {
    const QVariant chosen = m_pumps->currentData();
    m_pumps->clear();
    m_pumps->addItem(tr("all that are marked"), -1);
    const auto& pumps = m_bridge.project().pumps();
    for (std::size_t i = 0; i < pumps.size(); ++i) {
        m_pumps->addItem(tr("%1 alone").arg(QString::fromStdString(pumps[i].tag)), static_cast<int>(i));
    }
    m_pumps->setCurrentIndex(std::max(0, m_pumps->findData(chosen)));
    m_top->setVisible(pumps.size() > 1);
}

void DecisionPage::show(const pump_room::PumpPicture* picture) {
    m_all = picture != nullptr ? std::make_shared<pump_room::PumpPicture>(*picture) : nullptr;
    refill();
    decide();
}

void DecisionPage::decide() {
    ++m_state;
    if (m_all == nullptr) {
        m_view->showMessage(computingMessage());
        return;
    }
    const project::Project& project = m_bridge.project();
    const int chosen = m_pumps->currentData().toInt();
    if (chosen < 0 || static_cast<std::size_t>(chosen) >= project.pumps().size()) {
        m_view->show(ww::report::pumpDecisionSection(project, *m_all));
        emit decided();
        return;
    }
    auto alone = std::make_shared<pump_room::PumpPicture>(*m_all);
    const base::Id pump = project.pumps()[static_cast<std::size_t>(chosen)].id;
    m_work.run(
        [alone, project, pump] {
            alone->decision =
                pump_room::decidePump(project, pump_room::decisionOptions(project, alone->learned, {pump}));
        },
        [this, alone, state = m_state] {
            if (state == m_state) {
                m_view->show(ww::report::pumpDecisionSection(m_bridge.project(), *alone));
                emit decided();
            }
        });
}

void DecisionPage::takeFocus() {
    (m_pumps->isVisible() ? static_cast<QWidget*>(m_pumps) : m_view)->setFocus(Qt::OtherFocusReason);
}

}  // namespace ww::ui
