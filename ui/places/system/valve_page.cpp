#include "ui/places/system/valve_page.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <numeric>

#include "core/project/edit_label.h"
#include "ui/import/import_source.h"
#include "ui/places/column_fit.h"
#include "ui/places/row_removal.h"
#include "ui/places/system/valve_chart.h"
#include "ui/places/system/valve_fields.h"
#include "ui/text/narrow_letters.h"
#include "ui/widgets/side_by_side.h"

namespace ww::ui {

using project::ValveModel;

namespace {

std::string nameOfValve(const ValveModel& valve) {
    return valve.size.empty() ? valve.model : valve.model + " " + valve.size;
}

int branchesWith(const project::Project& project, const base::Id& valve) {
    int count = 0;
    for (const project::Branch& branch : project.branches()) {
        count += branch.valve == valve ? 1 : 0;
    }
    return count;
}

}  // namespace

ValvePage::ValvePage(WorkbookBridge& bridge, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_fields(valveFields()),
      m_model(new RecordTableModel(
          bridge,
          {titlesOf(m_fields) << tr("Points") << tr("Branches"), project::RecordKind::ValveModel,
           [this] { return static_cast<int>(m_bridge.project().valves().size()); },
           [this](int row, int column) { return cell(row, column); },
           [this](int column) { return column < static_cast<int>(m_fields.size()); },
           [this](int row, int column, const QString& typed) { return store(row, column, typed); }},
          this)),
      m_table(new EntryTable(this)),
      m_delegate(new BranchDelegate(this)),
      m_add(new QPushButton(tr("Add Valve &Model"), this)),
      m_remove(new QPushButton(tr("Remove Model"), this)),
      m_pointRows(pointContent()),
      m_points(pointPanel()),
      m_chart(new charts::ChartView(this)) {
    setAccessibleName(tr("Valve tables"));
    setUpEntry(*m_table, *m_model, *m_delegate, bridge, tr("Valve models"));
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_add);
    buttons->addWidget(m_remove);
    buttons->addStretch(1);
    auto* models = new QWidget(this);
    auto* left = new QVBoxLayout(models);
    left->setContentsMargins(0, 0, 0, 0);
    left->addLayout(buttons);
    left->addWidget(m_table, 1);
    left->addWidget(m_chart, 2);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    m_content = new SideBySide({models, 0, 3, SideBySide::kAsItAsks}, {m_points, 0, 1, 0}, this);
    row->addWidget(m_content);
    connect(m_add, &QPushButton::clicked, this, [this] { addValve(); });
    connect(m_remove, &QPushButton::clicked, this, [this] { removeValve(); });
    connect(m_table, &EntryTable::resized, this, &ValvePage::fit);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        m_points->renew();
        refresh();
    });
    connect(m_model, &QAbstractItemModel::modelReset, this, [this] {
        fit();
        m_points->renew();
        refresh();
    });
    connect(&bridge, &WorkbookBridge::changed, this, &ValvePage::refresh);
    refresh();
}

const ValveModel* ValvePage::inHand() const {
    const auto& valves = m_bridge.project().valves();
    const int row = std::max(0, m_table->currentIndex().row());
    return static_cast<std::size_t>(row) < valves.size() ? &valves[static_cast<std::size_t>(row)] : nullptr;
}

QString ValvePage::cell(int row, int column) const {
    const ValveModel& valve = m_bridge.project().valves()[static_cast<std::size_t>(row)];
    const auto at = static_cast<std::size_t>(column);
    if (at < m_fields.size()) {
        return m_fields[at].text(m_bridge.project(), valve);
    }
    return QString::number(at == m_fields.size() ? static_cast<int>(valve.rows.size())
                                                 : branchesWith(m_bridge.project(), valve.id));
}

base::Outcome ValvePage::store(int row, int column, const QString& typed) {
    const ValveModel& before = m_bridge.project().valves()[static_cast<std::size_t>(row)];
    const RecordField<ValveModel>& field = m_fields[static_cast<std::size_t>(column)];
    ValveModel valve = before;
    if (auto refusal = field.take(m_bridge.project(), valve, typed.trimmed())) {
        refusal->subject = nameOfValve(before);
        return *refusal;
    }
    return valve == before
               ? base::Outcome(base::Done{})
               : m_bridge.apply(
                     {project::label(project::labels::kField,
                                     {project::fieldInLabel(field.title.english), nameOfValve(valve)}),
                      {valve},
                      {},
                      true});
}

RowSheet<ValvePointRow>::Content ValvePage::pointContent() {
    RowSheet<ValvePointRow>::Content content;
    content.fields = {fields::number(tr("Setting"), &ValvePointRow::setting, FieldSign::NotNegative),
                      fields::number(tr("Cv or Kv"), &ValvePointRow::coefficient, FieldSign::NotNegative)};
    content.needs = tr("setting and coefficient");
    content.needed = {0, 1};
    content.owner = [this] { return inHand() != nullptr ? std::optional(inHand()->id) : std::nullopt; };
    content.rows = [this] {
        std::vector<ValvePointRow> rows;
        if (const ValveModel* valve = inHand()) {
            for (const project::ValveTableRow& row : valve->rows) {
                rows.push_back({row.setting, row.coefficient});
            }
        }
        return rows;
    };
    content.store = [this](const std::vector<ValvePointRow>& rows) -> base::Outcome {
        const ValveModel* before = inHand();
        if (before == nullptr) {
            return base::Done{};
        }
        ValveModel valve = *before;
        valve.rows.clear();
        for (const ValvePointRow& row : rows) {
            valve.rows.push_back({*row.setting, *row.coefficient});
        }
        return valve == *before
                   ? base::Outcome(base::Done{})
                   : m_bridge.apply({project::label(project::labels::kValveTable, {nameOfValve(valve)}),
                                     {valve},
                                     {},
                                     true});
    };
    return content;
}

RowPanel* ValvePage::pointPanel() {
    RowPanel::Content content;
    content.title = tr("Table of the model");
    content.removeWords = tr("Remove Point");
    content.table = {
        m_pointRows.titles(),
        project::RecordKind::ValveModel,
        [this] { return m_pointRows.rowCount(); },
        [this](int row, int column) { return m_pointRows.text(m_bridge.project(), row, column); },
        [](int) { return true; },
        [this](int row, int column, const QString& typed) {
            return m_pointRows.take(m_bridge.project(), row, column, typed);
        }};
    offerRows(content, m_pointRows, m_bridge);
    return new RowPanel(m_bridge, std::move(content), this);
}

bool ValvePage::addValve() {
    const project::Project& project = m_bridge.project();
    if (!m_table->settleEdit()) {
        return false;
    }
    ValveModel valve;
    valve.id = m_bridge.newId();
    valve.coefficientUnit =
        project.job().units == project::UnitSystem::US ? quantity::Unit::Cv : quantity::Unit::Kv;
    if (const ValveModel* beside = inHand()) {
        valve.scale = beside->scale;
        valve.coefficientUnit = beside->coefficientUnit;
        valve.accuracy = beside->accuracy;
    }
    for (std::size_t number = project.valves().size() + 1; valve.model.empty(); ++number) {
        const std::string name = "V-" + std::to_string(number);
        bool isTaken = false;
        for (const ValveModel& other : project.valves()) {
            isTaken = isTaken || other.model == name;
        }
        valve.model = isTaken ? std::string() : name;
    }
    if (!m_bridge.tellOrClear(
            m_bridge.apply({project::label(project::labels::kNewValve, {valve.model}), {valve}, {}, true}))) {
        return false;
    }
    m_table->setFocus(Qt::OtherFocusReason);
    m_table->beginEdit(m_model->index(m_model->rowCount() - 1, 0));
    return true;
}

bool ValvePage::removeValve() {
    const ValveModel* valve = inHand();
    return valve != nullptr && m_bridge.tellOrClear(m_bridge.apply(
                                   {project::label(project::labels::kRemoveValve, {nameOfValve(*valve)}),
                                    {},
                                    {{project::RecordKind::ValveModel, valve->id}},
                                    true}));
}

void ValvePage::paste() {
    const QString text = QApplication::clipboard()->text();
    if (m_points->table()->hasFocus()) {
        pastePoints(text);
    } else {
        emit tablePasted(text);
    }
}

bool ValvePage::pastePoints(const QString& text) {
    const ValveModel* before = inHand();
    if (before == nullptr || m_bridge.isReadOnly()) {
        return false;
    }
    auto points = pastedPoints(text, *before);
    if (!points) {
        return m_bridge.tell(nothingPasted(points.fault()));
    }
    ValveModel valve = *before;
    valve.rows = std::move(*points);
    return m_bridge.tellOrClear(m_bridge.apply(
        {project::label(project::labels::kPastedTable, {nameOfValve(valve)}), {valve}, {}, true}));
}

void ValvePage::fit() {
    constexpr int kNameDigits = 12;
    constexpr int kDigits = 7;
    const int columns = m_model->columnCount();
    const int width = m_table->viewport()->width();
    std::vector<int> leasts;
    const auto leastIn = [&](int headLetters) {
        leasts.clear();
        for (int column = 0; column < columns; ++column) {
            leasts.push_back(leastColumnWidth(*m_table, column, {headLetters}));
        }
        return std::accumulate(leasts.begin(), leasts.end(), 0);
    };
    int least = leastIn(100);
    // Where the table of the model leaves them too little it stands below.
    m_content->setFirstWidth(least + m_table->width() - width);
    if (least <= width) {
        std::vector<int> digits(static_cast<std::size_t>(columns), kDigits);
        digits.front() = kNameDigits;
        setHeadFont(*m_table, QFont());
        fitColumns(*m_table, digits, 0);
        m_table->setMinimumWidth(0);
        return;
    }
    const auto head = text::widestThatFits(QFont(), [&](const QFont& tried) {
        least = leastIn(text::stretchOf(tried));
        return least <= width;
    });
    setHeadFont(*m_table, head.value_or(text::narrowest(QFont())));
    for (int column = 0; column < columns; ++column) {
        m_table->setColumnWidth(column, width * leasts[static_cast<std::size_t>(column)] / least);
    }
    heightenWhereCut(*m_table);
}

void ValvePage::refresh() {
    const ValveModel* valve = inHand();
    m_add->setEnabled(m_bridge.isOpen() && !m_bridge.isReadOnly());
    offerRemoval(*m_remove, !m_bridge.isReadOnly(), valve != nullptr);
    m_points->setTitle(valve == nullptr ? tr("Table of the model")
                                        : QString::fromStdString(nameOfValve(*valve)));
    m_chart->setFigure(valve == nullptr ? noValveChart() : valveChart(*valve));
}

void ValvePage::takeFocus() {
    if (m_model->rowCount() == 0) {
        m_add->setFocus(Qt::OtherFocusReason);
        return;
    }
    if (!m_table->currentIndex().isValid()) {
        m_table->setCurrentIndex(m_model->index(0, 0));
    }
    m_table->setFocus(Qt::OtherFocusReason);
}

void ValvePage::setTokens(const theme::Tokens& tokens) {
    m_delegate->setTokens(tokens);
    m_points->setTokens(tokens);
    m_chart->setTokens(tokens);
    m_table->viewport()->update();
}

void ValvePage::setMetrics(const theme::Metrics& metrics) {
    setRowHeight(*m_table, metrics);
    m_points->setMetrics(metrics);
    fit();
}

}  // namespace ww::ui
