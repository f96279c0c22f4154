#include "ui/places/pump/set_point_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "core/project/edit_label.h"
#include "core/report/pump_sections.h"
#include "ui/places/pump/section_page.h"
#include "ui/places/row_removal.h"
#include "ui/text/typed_word.h"
#include "ui/widgets/side_by_side.h"

namespace ww::ui {

namespace {

using project::SetPoint;

constexpr base::MessageForm kPumpUnknown{"set_point_pump_unknown",
                                         "no pump is called \"{1}\"; type the tag of one of the job's pumps"};

std::vector<RecordField<SetPoint>> setPointFields() {
    using fields::measured;
    const FieldSign least = FieldSign::NotNegative;
    return {
        fields::words(SetPointPage::tr("Sensor"), &SetPoint::sensor),
        fields::reference(SetPointPage::tr("Pump"), &SetPoint::pump, &project::Project::pumps, kPumpUnknown),
        fields::words(SetPointPage::tr("Place in the loop"), &SetPoint::location),
        fields::choice(SetPointPage::tr("Found by"), &SetPoint::method),
        measured(SetPointPage::tr("Zero, pumps off"), &SetPoint::zero, fields::pressureUnit),
        measured(SetPointPage::tr("Dp set-point"), &SetPoint::dp, fields::pressureUnit, FieldSign::Positive),
        measured(SetPointPage::tr("Flow there"), &SetPoint::flow, text::flowUnit, least),
        measured(SetPointPage::tr("Speed there"), &SetPoint::speed, quantity::Unit::RevolutionPerMinute,
                 least),
        fields::choice(SetPointPage::tr("Reset law"), &SetPoint::reset),
        measured(SetPointPage::tr("Margin"), &SetPoint::margin, fields::pressureUnit),
        measured(SetPointPage::tr("Low limit"), &SetPoint::lowLimit, fields::pressureUnit, least),
        measured(SetPointPage::tr("High limit"), &SetPoint::highLimit, fields::pressureUnit, least),
        fields::words(SetPointPage::tr("Set by"), &SetPoint::setBy),
        fields::words(SetPointPage::tr("Note"), &SetPoint::note),
    };
}

}  // namespace

SetPointPage::SetPointPage(WorkbookBridge& bridge, QWidget* parent)
    : PumpPage(parent),
      m_bridge(bridge),
      m_fields(setPointFields()),
      m_model(new FieldTableModel(
          bridge,
          {[this] { return titlesOf(m_fields); },
           [this] {
               QStringList titles;
               for (std::size_t i = 0; i < m_bridge.project().setPoints().size(); ++i) {
                   titles << tr("Set-point %1").arg(i + 1);
               }
               return titles;
           },
           [this](int field, int record) {
               return m_fields[static_cast<std::size_t>(field)].text(
                   m_bridge.project(), m_bridge.project().setPoints()[static_cast<std::size_t>(record)]);
           },
           [this](int field, int record, const QString& typed) { return store(field, record, typed); },
           {project::RecordKind::SetPoint, project::RecordKind::Pump}},
          this)),
      m_table(new EntryTable(this)),
      m_delegate(new BranchDelegate(this)),
      m_add(new QPushButton(tr("Add Set-Point"), this)),
      m_remove(new QPushButton(tr("Remove Set-Point"), this)),
      m_view(new SectionView(this)) {
    setUpEntry(*m_table, *m_model, *m_delegate, bridge, tr("Dp set-points"));
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_add);
    buttons->addWidget(m_remove);
    buttons->addStretch(1);
    auto* sheet = new QWidget(this);
    auto* left = new QVBoxLayout(sheet);
    left->setContentsMargins(0, 0, 0, 0);
    left->addLayout(buttons);
    left->addWidget(m_table, 1);
    auto* hint =
        new QLabel(tr("Found by: %1. Reset law: %2. Type a word or its first letters.")
                       .arg(text::namesOf<project::SetPointMethod>(), text::namesOf<project::ResetLaw>()),
                   this);
    hint->setWordWrap(true);
    left->addWidget(hint);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 6, 4, 4);
    row->addWidget(new SideBySide({sheet, kSheetWidth, 2, kSheetHeight},
                                  {m_view, kSectionWidth, 3, SideBySide::kAsItAsks}, this));
    connect(m_add, &QPushButton::clicked, this, [this] { add(); });
    connect(m_remove, &QPushButton::clicked, this, &SetPointPage::remove);
    connect(m_table, &EntryTable::resized, this, [this] { fitFieldColumns(*m_table, 17, 24); });
    connect(&bridge, &WorkbookBridge::changed, this, &SetPointPage::refresh);
    refresh();
}

base::Outcome SetPointPage::store(int field, int record, const QString& typed) {
    const project::Project& project = m_bridge.project();
    const SetPoint& before = project.setPoints()[static_cast<std::size_t>(record)];
    SetPoint changed = before;
    if (auto refusal = m_fields[static_cast<std::size_t>(field)].take(project, changed, typed)) {
        refusal->subject = before.sensor;
        return *refusal;
    }
    if (changed == before) {
        return base::Done{};
    }
    changed.time = m_bridge.now();
    return m_bridge.apply(
        {project::label(project::labels::kSetPoint, {changed.sensor}), {changed}, {}, true});
}

bool SetPointPage::add() {
    if (!m_table->settleEdit()) {
        return false;
    }
    const project::Project& project = m_bridge.project();
    SetPoint made;
    made.id = m_bridge.newId();
    made.sensor = "DPT-" + std::to_string(project.setPoints().size() + 1);
    if (!project.pumps().empty()) {
        made.pump = project.pumps()[0].id;
    }
    made.time = m_bridge.now();
    if (!m_bridge.tellOrClear(m_bridge.apply(
            {project::label(project::labels::kNewSetPoint, {made.sensor}), {made}, {}, true}))) {
        return false;
    }
    m_table->setFocus(Qt::OtherFocusReason);
    m_table->beginEdit(m_model->index(0, m_model->columnCount() - 1));
    return true;
}

void SetPointPage::remove() {
    const QModelIndex cell = m_table->currentIndex();
    if (cell.isValid() && cell.column() > 0) {
        const SetPoint removed = m_bridge.project().setPoints()[static_cast<std::size_t>(cell.column() - 1)];
        m_bridge.tellOrClear(
            m_bridge.apply({project::label(project::labels::kRemoveSetPoint, {removed.sensor}),
                            {},
                            {{project::RecordKind::SetPoint, removed.id}},
                            true}));
    } else {
        m_bridge.tell(base::Fault{&kNoRowInHand, {}, {}});
    }
}

void SetPointPage::refresh() {
    m_add->setEnabled(!m_bridge.isReadOnly());
    offerRemoval(*m_remove, !m_bridge.isReadOnly(), !m_bridge.project().setPoints().empty());
    fitFieldColumns(*m_table, 17, 24);
}

void SetPointPage::takeFocus() {
    if (m_model->columnCount() > 1) {
        beginAtValues(*m_table);
    } else {
        m_add->setFocus(Qt::OtherFocusReason);
    }
}

void SetPointPage::show(const pump_room::PumpPicture* picture) {
    if (picture == nullptr) {
        m_view->showMessage(computingMessage());
    } else if (picture->setPoints.size() == m_bridge.project().setPoints().size()) {
        m_view->show(ww::report::setPointSection(m_bridge.project(), *picture));
    }
}

void SetPointPage::setTokens(const theme::Tokens& tokens) {
    m_delegate->setTokens(tokens);
    m_view->setTokens(tokens);
    m_table->viewport()->update();
}

void SetPointPage::setMetrics(const theme::Metrics& metrics) {
    setRowHeight(*m_table, metrics);
    fitFieldColumns(*m_table, 17, 24);
}

}  // namespace ww::ui
