#include "ui/places/pump/device_page.h"

#include <QLabel>
#include <QSplitter>
#include <QVBoxLayout>

#include "core/project/edit_label.h"
#include "core/report/pump_sections.h"
#include "ui/places/column_fit.h"
#include "ui/places/pump/section_page.h"
#include "ui/text/typed_word.h"

namespace ww::ui {

namespace {

using project::Branch;

std::vector<RecordField<Branch>> deviceFields() {
    return {
        fields::words(DevicePage::tr("Tag"), &Branch::tag),
        fields::choice(DevicePage::tr("Side"), &Branch::side),
        fields::choice(DevicePage::tr("Before it"), &Branch::disturbance),
        fields::number(DevicePage::tr("D before"), &Branch::upstreamDiameters, FieldSign::NotNegative),
        fields::number(DevicePage::tr("D behind"), &Branch::downstreamDiameters, FieldSign::NotNegative),
        fields::measured(DevicePage::tr("Height"), &Branch::elevation, fields::lengthUnit),
        fields::choice(DevicePage::tr("Dealt with as"), &Branch::policy),
        fields::words(DevicePage::tr("Reason"), &Branch::policyReason),
        fields::words(DevicePage::tr("Notes"), &Branch::notes),
    };
}

}  // namespace

DevicePage::DevicePage(WorkbookBridge& bridge, QWidget* parent)
    : PumpPage(parent),
      m_bridge(bridge),
      m_fields(deviceFields()),
      m_model(new RecordTableModel(
          bridge,
          {titlesOf(m_fields), project::RecordKind::Branch,
           [this] { return static_cast<int>(m_bridge.project().branches().size()); },
           [this](int row, int column) {
               const Branch* branch = at(row);
               return branch != nullptr
                          ? m_fields[static_cast<std::size_t>(column)].text(m_bridge.project(), *branch)
                          : QString();
           },
           [](int column) { return column > 0; },
           [this](int row, int column, const QString& typed) -> base::Outcome {
               Branch changed = *at(row);
               if (auto refusal = m_fields[static_cast<std::size_t>(column)].take(m_bridge.project(), changed,
                                                                                  typed.trimmed())) {
                   refusal->subject = changed.tag;
                   return *refusal;
               }
               return changed == *at(row)
                          ? base::Outcome(base::Done{})
                          : m_bridge.apply({project::label(project::labels::kDevice, {changed.tag}),
                                            {changed},
                                            {},
                                            true});
           }},
          this)),
      m_table(new EntryTable(this)),
      m_delegate(new BranchDelegate(this)),
      m_others(new QPushButton(tr("Show Other Columns"), this)),
      m_view(new SectionView(this)) {
    setUpEntry(*m_table, *m_model, *m_delegate, bridge, tr("Where the devices sit"));
    auto* splitter = new QSplitter(Qt::Vertical, this);
    splitter->addWidget(m_table);
    splitter->addWidget(m_view);
    splitter->setSizes({250, 300});
    splitter->setChildrenCollapsible(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 4, 4);
    auto* hint =
        new QLabel(tr("D: straight pipe in diameters. Before it: %1. Dealt with as: %2. Type a word "
                      "or its first letters.")
                       .arg(text::namesOf<project::Disturbance>(), text::namesOf<project::BalancingPolicy>()),
                   this);
    hint->setWordWrap(true);
    column->addWidget(hint);
    column->addWidget(m_others, 0, Qt::AlignLeft);
    m_others->setCheckable(true);
    m_others->hide();
    column->addWidget(splitter, 1);
    connect(m_table, &EntryTable::resized, this, &DevicePage::fit);
    connect(m_others, &QPushButton::toggled, this, &DevicePage::fit);
}

/// Branches stand in walking order.
const project::Branch* DevicePage::at(int row) const {
    const auto& order = m_bridge.project().tree().walkingOrder();
    return row >= 0 && static_cast<std::size_t>(row) < order.size()
               ? &m_bridge.project().branches()[order[static_cast<std::size_t>(row)]]
               : nullptr;
}

void DevicePage::fit() {
    const int digits[] = {8, 7, 10, 8, 8, 8, 28, 14, 10};
    m_others->setVisible(fitColumnsOrHide(*m_table, digits, 8, m_others->isChecked()));
}

void DevicePage::show(const pump_room::PumpPicture* picture) {
    if (picture == nullptr) {
        m_view->showMessage(computingMessage());
    } else {
        m_view->show(ww::report::deviceSection(m_bridge.project(), *picture));
    }
}

void DevicePage::setTokens(const theme::Tokens& tokens) {
    m_delegate->setTokens(tokens);
    m_view->setTokens(tokens);
    m_table->viewport()->update();
}

void DevicePage::setMetrics(const theme::Metrics& metrics) {
    setRowHeight(*m_table, metrics);
    fit();
}

}  // namespace ww::ui
