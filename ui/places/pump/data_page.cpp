#include "ui/places/pump/data_page.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include "core/project/edit_label.h"
#include "ui/places/pump/pump_fields.h"
#include "ui/widgets/side_by_side.h"

namespace ww::ui {

namespace {

using quantity::Unit;

Unit curveHeadUnit(const project::Project& project) {
    return text::headUnit(project.job().units);
}

constexpr int kTitleDigits = 29;
constexpr int kValueDigits = 16;

}  // namespace

DataPage::DataPage(WorkbookBridge& bridge, QWidget* parent)
    : PumpPage(parent),
      m_bridge(bridge),
      m_fields(pumpFields()),
      m_chooser(new PumpChooser(bridge, this)),
      m_model(new FieldTableModel(
          bridge,
          {[this] { return titlesOf(m_fields); },
           [this] {
               QStringList titles;
               for (const project::Pump& pump : m_bridge.project().pumps()) {
                   titles << QString::fromStdString(pump.tag);
               }
               return titles;
           },
           [this](int field, int pump) {
               return m_fields[static_cast<std::size_t>(field)].text(
                   m_bridge.project(), m_bridge.project().pumps()[static_cast<std::size_t>(pump)]);
           },
           [this](int field, int pump, const QString& typed) { return store(field, pump, typed); },
           {project::RecordKind::Pump}},
          this)),
      m_table(new EntryTable(this)),
      m_delegate(new BranchDelegate(this)),
      m_add(new QPushButton(tr("Add Pump"), this)),
      m_curveRows(curveContent()),
      m_loadRows(loadContent()),
      m_curve(panel(m_curveRows, project::RecordKind::Pump, tr("Maker's curve"), tr("Remove Point"))),
      m_load(panel(m_loadRows, project::RecordKind::Job, tr("Load of a year"), tr("Remove Hours"))),
      m_jobFields(new JobFields(bridge, this)) {
    setUpEntry(*m_table, *m_model, *m_delegate, bridge, tr("Plate and data of the pumps"));
    auto* top = new QHBoxLayout;
    auto* label = new QLabel(tr("&Curve of pump"), this);
    label->setBuddy(m_chooser);
    top->addWidget(m_add);
    top->addStretch(1);
    top->addWidget(label);
    top->addWidget(m_chooser);
    auto* sheet = new QWidget(this);
    auto* left = new QVBoxLayout(sheet);
    left->setContentsMargins(0, 0, 0, 0);
    left->addLayout(top);
    left->addWidget(m_table, 1);
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    m_jobFields->add(form, JobField::HoursPerYear, tr("Hours a &year, if no table"));
    m_jobFields->add(form, JobField::PowerPrice, tr("Price of a &kWh"));
    auto* rows = new QWidget(this);
    auto* right = new QVBoxLayout(rows);
    right->setContentsMargins(0, 0, 0, 0);
    right->addWidget(m_curve, 3);
    right->addWidget(m_load, 2);
    right->addLayout(form);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 6, 8, 6);
    row->addWidget(
        new SideBySide({sheet, kSheetWidth, 1, kSheetHeight}, {rows, kSheetWidth, 1, kSheetHeight}, this));
    connect(m_add, &QPushButton::clicked, this, [this] { addPump(); });
    connect(m_table, &EntryTable::resized, this,
            [this] { fitFieldColumns(*m_table, kTitleDigits, kValueDigits); });
    connect(m_model, &QAbstractItemModel::modelReset, this,
            [this] { fitFieldColumns(*m_table, kTitleDigits, kValueDigits); });
    connect(m_chooser, &PumpChooser::chosen, this, [this] { m_curve->renew(); });
    connect(&bridge, &WorkbookBridge::changed, this,
            [this] { m_add->setEnabled(m_bridge.isOpen() && !m_bridge.isReadOnly()); });
}

template <class Row>
RowPanel* DataPage::panel(RowSheet<Row>& sheet, project::RecordKind kind, const QString& title,
                          const QString& removeWords) {
    RowPanel::Content content;
    content.title = title;
    content.removeWords = removeWords;
    content.table = {
        sheet.titles(),
        kind,
        [&sheet] { return sheet.rowCount(); },
        [this, &sheet](int row, int column) { return sheet.text(m_bridge.project(), row, column); },
        [](int) { return true; },
        [this, &sheet](int row, int column, const QString& typed) {
            return sheet.take(m_bridge.project(), row, column, typed);
        }};
    offerRows(content, sheet, m_bridge);
    return new RowPanel(m_bridge, std::move(content), this);
}

RowSheet<CurveRow>::Content DataPage::curveContent() {
    using fields::measured;
    const FieldSign least = FieldSign::NotNegative;
    RowSheet<CurveRow>::Content content;
    content.fields = {measured(tr("Impeller"), &CurveRow::impeller, fields::boreUnit, FieldSign::Positive),
                      measured(tr("Flow"), &CurveRow::flow, text::flowUnit, least),
                      measured(tr("Head"), &CurveRow::head, curveHeadUnit, least),
                      fields::efficiency(tr("Efficiency"), &CurveRow::efficiency),
                      measured(tr("Power"), &CurveRow::power, fields::powerUnit, FieldSign::Positive),
                      measured(tr("NPSH"), &CurveRow::npshRequired, curveHeadUnit, least)};
    content.needs = tr("flow and head");
    content.needed = {1, 2};
    content.owner = [this] {
        const project::Pump* pump = m_chooser->pump();
        return pump != nullptr ? std::optional(pump->id) : std::nullopt;
    };
    content.rows = [this] {
        std::vector<CurveRow> rows;
        if (const project::Pump* pump = m_chooser->pump()) {
            for (const project::PumpTableRow& row : pump->rows) {
                rows.push_back(
                    {row.impeller, row.flow, row.head, row.efficiency, row.power, row.npshRequired});
            }
        }
        return rows;
    };
    content.store = [this](const std::vector<CurveRow>& rows) -> base::Outcome {
        const project::Pump* before = m_chooser->pump();
        if (before == nullptr) {
            return base::Done{};
        }
        project::Pump pump = *before;
        pump.rows.clear();
        for (const CurveRow& row : rows) {
            pump.rows.push_back(
                {row.impeller, *row.flow, *row.head, row.efficiency, row.power, row.npshRequired});
        }
        return pump == *before
                   ? base::Outcome(base::Done{})
                   : m_bridge.apply({project::label(project::labels::kCurve, {pump.tag}), {pump}, {}, true});
    };
    return content;
}

RowSheet<LoadProfileRow>::Content DataPage::loadContent() {
    RowSheet<LoadProfileRow>::Content content;
    content.fields = {fields::number(tr("Hours a year"), &LoadProfileRow::hours, FieldSign::Positive),
                      fields::measured(tr("Of design flow"), &LoadProfileRow::flowFraction, Unit::Percent,
                                       FieldSign::Positive)};
    content.needs = tr("hours and a part of the design flow");
    content.needed = {0, 1};
    content.owner = [this] {
        return m_bridge.isOpen() ? std::optional(m_bridge.project().job().id) : std::nullopt;
    };
    content.rows = [this] {
        std::vector<LoadProfileRow> rows;
        for (const project::LoadRow& row : m_bridge.project().job().loadRows) {
            rows.push_back({row.hours, row.flowFraction});
        }
        return rows;
    };
    content.store = [this](const std::vector<LoadProfileRow>& rows) -> base::Outcome {
        project::Job job = m_bridge.project().job();
        job.loadRows.clear();
        for (const LoadProfileRow& row : rows) {
            job.loadRows.push_back({*row.hours, *row.flowFraction});
        }
        return job == m_bridge.project().job()
                   ? base::Outcome(base::Done{})
                   : m_bridge.apply({project::label(project::labels::kLoad), {job}, {}, true});
    };
    return content;
}

base::Outcome DataPage::store(int field, int index, const QString& typed) {
    const project::Project& project = m_bridge.project();
    const project::Pump& before = project.pumps()[static_cast<std::size_t>(index)];
    project::Pump pump = before;
    if (auto refusal = m_fields[static_cast<std::size_t>(field)].take(project, pump, typed)) {
        refusal->subject = before.tag;
        return *refusal;
    }
    if (pump == before) {
        return base::Done{};
    }
    const std::string what = project::fieldInLabel(m_fields[static_cast<std::size_t>(field)].title.english);
    return m_bridge.apply({project::label(project::labels::kField, {what, pump.tag}), {pump}, {}, true});
}

bool DataPage::addPump() {
    if (!m_table->settleEdit()) {
        return false;
    }
    const project::Project& project = m_bridge.project();
    project::Pump pump;
    pump.id = m_bridge.newId();
    for (std::size_t number = project.pumps().size() + 1; pump.tag.empty(); ++number) {
        const std::string tag = "P-" + std::to_string(number);
        bool isTaken = false;
        for (const project::Pump& other : project.pumps()) {
            pump.position = std::max(pump.position, other.position + 1);
            isTaken = isTaken || other.tag == tag;
        }
        pump.tag = isTaken ? std::string() : tag;
    }
    if (!m_bridge.tellOrClear(
            m_bridge.apply({project::label(project::labels::kNewPump, {pump.tag}), {pump}, {}, true}))) {
        return false;
    }
    m_table->setFocus(Qt::OtherFocusReason);
    m_table->beginEdit(m_model->index(0, m_model->columnCount() - 1));
    return true;
}

void DataPage::takeFocus() {
    if (m_model->columnCount() > 1) {
        beginAtValues(*m_table);
    } else {
        m_add->setFocus(Qt::OtherFocusReason);
    }
}

void DataPage::setTokens(const theme::Tokens& tokens) {
    m_delegate->setTokens(tokens);
    m_curve->setTokens(tokens);
    m_load->setTokens(tokens);
    m_table->viewport()->update();
}

void DataPage::setMetrics(const theme::Metrics& metrics) {
    setRowHeight(*m_table, metrics);
    m_curve->setMetrics(metrics);
    m_load->setMetrics(metrics);
    fitFieldColumns(*m_table, kTitleDigits, kValueDigits);
}

}  // namespace ww::ui
