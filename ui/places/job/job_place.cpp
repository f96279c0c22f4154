#include "ui/places/job/job_place.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QShortcut>
#include <QTabBar>
#include <algorithm>
#include <vector>

#include "core/balancing/aim.h"
#include "core/project/edit_label.h"
#include "ui/places/column_fit.h"
#include "ui/places/row_removal.h"
#include "ui/text/words.h"
#include "ui/widgets/focus_ring.h"
#include "ui/widgets/laid_out_later.h"
#include "ui/widgets/panel_title.h"
#include "ui/widgets/side_by_side.h"

namespace ww::ui {
namespace {

/// Room for a name of usual length beside its label.
constexpr int kFactsWidth = 340;
constexpr int kPagesWidth = 420;
constexpr int kPagesHeight = 340;

}  // namespace

JobPlace::JobPlace(WorkbookBridge& bridge, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_fields(new JobFields(bridge, this)),
      m_units(new QuietCombo(this)),
      m_fluid(new QuietCombo(this)),
      m_instruments(new InstrumentModel(bridge, this)),
      m_people(new PeopleModel(bridge, this)),
      m_instrumentTable(new EntryTable(this)),
      m_peopleTable(new EntryTable(this)),
      m_delegate(new BranchDelegate(this)),
      m_addInstrument(new QPushButton(tr("Add Instrument"), this)),
      m_addPerson(new QPushButton(tr("Add Person"), this)),
      m_removeInstrument(new QPushButton(tr("Remove Instrument"), this)),
      m_removePerson(new QPushButton(tr("Remove Person"), this)),
      m_others(new QPushButton(tr("Show Other Columns"), this)),
      m_pages(new QTabWidget(this)),
      m_empty(new QLabel(this)),
      m_readiness(new ReadinessPage(bridge, m_delegate, this)),
      m_deficiencies(new DeficiencyPage(bridge, m_delegate, this)) {
    setAccessibleName(tr("Job"));
    m_pages->setAccessibleName(tr("Pages of the job"));
    new FocusRing(m_pages->tabBar());
    m_pages->setDocumentMode(true);
    m_pages->setUsesScrollButtons(false);
    m_pages->setElideMode(Qt::ElideNone);
    m_pages->addTab(laidOutLater(buildTables()), tr("Instruments and people"));
    m_pages->addTab(m_readiness, tr("Readiness"));
    m_pages->addTab(m_deficiencies, tr("Deficiencies"));
    // The whole place scrolls, so that its parts need not.
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(16, 8, 12, 8);
    m_parts = new SideBySide({buildFacts(), kFactsWidth, 0, SideBySide::kAsItAsks},
                             {m_pages, kPagesWidth, 1, kPagesHeight}, this);
    whole->addWidget(m_parts);
    m_empty->setText(tr("No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N)."));
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setWordWrap(true);
    m_empty->setObjectName(QStringLiteral("empty_state"));
    m_empty->setAccessibleName(tr("What is missing here"));
    whole->addWidget(m_empty);
    m_others->setCheckable(true);
    m_others->hide();
    connect(m_others, &QPushButton::toggled, this, &JobPlace::fitColumns);
    connect(m_instrumentTable, &EntryTable::resized, this, &JobPlace::fitColumns);
    connect(m_fields, &JobFields::refreshed, this, &JobPlace::refresh);
    refresh();
}

void JobPlace::buildChoices(QFormLayout* form) {
    for (const auto units : {project::UnitSystem::SI, project::UnitSystem::US}) {
        m_units->addItem(text::nameOf(units), static_cast<int>(units));
    }
    for (const auto kind :
         {fluid::FluidKind::Water, fluid::FluidKind::EthyleneGlycol, fluid::FluidKind::PropyleneGlycol}) {
        m_fluid->addItem(text::word(kind), static_cast<int>(kind));
    }
    m_units->setAccessibleName(tr("Units"));
    m_fluid->setAccessibleName(tr("Fluid"));
    form->addRow(tr("&Units shown"), m_units);
    form->addRow(tr("&Fluid"), m_fluid);
    connect(m_units, &QComboBox::activated, this, [this] {
        project::Job job = m_bridge.project().job();
        job.units = static_cast<project::UnitSystem>(m_units->currentData().toInt());
        m_fields->storeJob(job, project::label(project::labels::kUnits));
    });
    connect(m_fluid, &QComboBox::activated, this, [this] {
        const auto kind = static_cast<fluid::FluidKind>(m_fluid->currentData().toInt());
        m_fields->storeJob(withFluid(m_bridge.project().job(), kind),
                           project::label(project::labels::kFluid));
    });
}

QWidget* JobPlace::buildFacts() {
    auto* page = new QWidget(this);
    // One form for all sections, so that the fields stand in one line.
    auto* form = new QFormLayout(page);
    form->setContentsMargins(0, 0, 8, 0);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->setVerticalSpacing(4);
    form->setHorizontalSpacing(12);
    const auto section = [&](const QString& title) {
        QLabel* label = panelTitle(title, page);
        label->setContentsMargins(0, form->rowCount() > 0 ? 8 : 0, 0, 0);
        form->addRow(label);
    };
    section(tr("Job"));
    m_fields->add(form, JobField::Name, tr("&Name"));
    m_fields->add(form, JobField::Site, tr("&Site"));
    m_fields->add(form, JobField::Client, tr("C&lient"));
    section(tr("Loop"));
    buildChoices(form);
    m_fields->add(form, JobField::Concentration, tr("&Glycol by mass"));
    m_fields->add(form, JobField::Temperature, tr("&Temperature"));
    m_fields->add(form, JobField::FillPressure, tr("F&ill pressure"));
    m_fields->add(form, JobField::Altitude, tr("&Altitude"));
    section(tr("Limits"));
    m_fields->add(form, JobField::ToleranceLow, tr("Off design, l&owest"));
    m_fields->add(form, JobField::ToleranceHigh, tr("Off design, &highest"));
    m_fields->add(form, JobField::MatchingBand, tr("&Band of target, ±"));
    // While it is empty the usual limit holds.
    m_fields->add(form, JobField::ReadingAgeLimit, tr("Old after, &minutes"))
        ->setHint(QString::number(balancing::AimOptions().limit.si() / 60));
    section(tr("Pump energy"));
    m_fields->add(form, JobField::PowerPrice, tr("&Price of a kWh"));
    m_fields->add(form, JobField::Currency, tr("Currenc&y"));
    m_fields->add(form, JobField::HoursPerYear, tr("Hours a yea&r"));
    return page;
}

QWidget* JobPlace::buildTables() {
    auto* page = new QWidget(this);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 6, 0, 0);
    column->setSpacing(8);
    const auto rowOf = [page](const std::vector<QWidget*>& widgets) {
        auto* row = new QWidget(page);
        auto* line = new QHBoxLayout(row);
        line->setContentsMargins(0, 0, 0, 0);
        for (QWidget* widget : widgets) {
            line->addWidget(widget);
        }
        line->insertStretch(1, 1);
        return row;
    };
    const auto add = [&](const std::vector<QWidget*>& head, const QString& title, EntryTable* table,
                         const std::vector<QWidget*>& buttons, int stretch) {
        column->addWidget(new SideBySide({rowOf(head), 0, 1, 0}, {rowOf(buttons), 0, 0, 0}, page));
        column->addWidget(table, stretch);
        table->setAccessibleName(title);
        table->setItemDelegate(m_delegate);
        table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
        table->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    };
    const QString instruments = tr("Instruments");
    const QString people = tr("People");
    add({panelTitle(instruments, page), m_others}, instruments, m_instrumentTable,
        {m_addInstrument, m_removeInstrument}, 3);
    add({panelTitle(people, page)}, people, m_peopleTable, {m_addPerson, m_removePerson}, 2);
    m_instrumentTable->setModel(m_instruments);
    m_peopleTable->setModel(m_people);
    m_peopleTable->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_instrumentTable->setStore([this](const QModelIndex& cell, const QString& text) {
        return m_bridge.tellOrClear(m_instruments->store(cell, text));
    });
    m_peopleTable->setStore([this](const QModelIndex& cell, const QString& text) {
        return m_bridge.tellOrClear(m_people->store(cell, text));
    });
    connectRows(m_instrumentTable, m_instruments, m_addInstrument, m_removeInstrument);
    connectRows(m_peopleTable, m_people, m_addPerson, m_removePerson);
    return page;
}

template <class Model>
void JobPlace::connectRows(EntryTable* table, Model* model, QPushButton* add, QPushButton* remove) {
    connect(add, &QPushButton::clicked, this, [this, table, model] {
        if (table->settleEdit() && m_bridge.tellOrClear(model->add())) {
            table->setFocus(Qt::OtherFocusReason);
            table->beginEdit(model->index(model->rowCount() - 1, 0));
        }
    });
    const auto offer = [this, model, remove] {
        offerRemoval(*remove, !m_bridge.isReadOnly(), model->rowCount() > 0);
    };
    connect(model, &QAbstractItemModel::modelReset, this, offer);
    connect(&m_bridge, &WorkbookBridge::changed, this, offer);
    offer();
    const auto takeOut = [this, table, model] {
        const QModelIndex cell = table->currentIndex();
        if (!cell.isValid()) {
            m_bridge.tell(base::Fault{&kNoRowInHand, {}, {}});
        } else if (m_bridge.tellOrClear(model->remove(cell.row()))) {
            table->setCurrentIndex(model->index(std::min(cell.row(), model->rowCount() - 1), cell.column()));
        }
    };
    connect(remove, &QPushButton::clicked, this, takeOut);
    auto* key = new QShortcut(QKeySequence::Delete, table, nullptr, nullptr, Qt::WidgetShortcut);
    connect(key, &QShortcut::activated, this, takeOut);
}

void JobPlace::setTokens(const theme::Tokens& tokens) {
    m_delegate->setTokens(tokens);
    m_instrumentTable->viewport()->update();
    m_peopleTable->viewport()->update();
    m_readiness->table()->viewport()->update();
    m_deficiencies->table()->viewport()->update();
}

void JobPlace::setMetrics(const theme::Metrics& metrics) {
    for (EntryTable* table :
         {m_instrumentTable, m_peopleTable, m_readiness->table(), m_deficiencies->table()}) {
        table->verticalHeader()->setMinimumSectionSize(metrics.rowHeight);
        table->verticalHeader()->setDefaultSectionSize(metrics.rowHeight);
    }
    m_fields->fitWidths();
    fitColumns();
}

void JobPlace::fitColumns() {
    const int digits[InstrumentModel::ColumnCount] = {6, 18, 8, 7, 8, 8, 11, 11, 11, 15};
    m_others->setVisible(
        ui::fitColumnsInTurn(*m_instrumentTable, digits, InstrumentModel::Kind, m_others->isChecked()));
}

void JobPlace::addDeficiency(std::optional<base::Id> branch) {
    m_pages->setCurrentWidget(m_deficiencies);
    m_deficiencies->add(branch);
}

void JobPlace::showPeople() {
    m_pages->setCurrentIndex(0);
    (m_people->rowCount() > 0 ? static_cast<QWidget*>(m_peopleTable) : m_addPerson)
        ->setFocus(Qt::OtherFocusReason);
}

void JobPlace::showReadiness() {
    m_pages->setCurrentWidget(m_readiness);
    m_readiness->takeFocus();
}

void JobPlace::showChanged(const project::ChangeSet& changes) {
    const auto show = [&](EntryTable* table, const auto& records) {
        m_pages->setCurrentIndex(0);
        for (const project::RecordRef& ref : changes.put) {
            if (records.contains(ref.id)) {
                const int row = static_cast<int>(records.indexOf(ref.id));
                table->setCurrentIndex(table->model()->index(row, 0));
            }
        }
    };
    const project::Project& project = m_bridge.project();
    if (changes.touches(project::RecordKind::Deficiency)) {
        m_pages->setCurrentWidget(m_deficiencies);
    } else if (changes.touches(project::RecordKind::ReadinessLine)) {
        m_pages->setCurrentWidget(m_readiness);
    } else if (changes.touches(project::RecordKind::Instrument)) {
        show(m_instrumentTable, project.instruments());
    } else if (changes.touches(project::RecordKind::Person)) {
        show(m_peopleTable, project.people());
    }
    m_pages->tabBar()->setFocus(Qt::OtherFocusReason);
}

bool JobPlace::canRemoveRow(const QWidget* inHand) const {
    const auto isIn = [inHand](const EntryTable* table) {
        return inHand == table && table->currentIndex().isValid();
    };
    return !m_bridge.isReadOnly() && (isIn(m_instrumentTable) || isIn(m_peopleTable));
}

void JobPlace::takeFocus() {
    m_fields->first()->setFocus(Qt::OtherFocusReason);
}

void JobPlace::refresh() {
    const project::Job& job = m_bridge.project().job();
    const bool isWritable = !m_bridge.isReadOnly();
    m_units->setCurrentIndex(m_units->findData(static_cast<int>(job.units)));
    m_fluid->setCurrentIndex(m_fluid->findData(static_cast<int>(job.fluid)));
    field(JobField::Concentration)->setEnabled(job.fluid != fluid::FluidKind::Water);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_units, m_fluid, m_addInstrument, m_addPerson}) {
        widget->setEnabled(isWritable);
    }
    m_empty->setVisible(!m_bridge.isOpen());
    m_parts->setVisible(m_bridge.isOpen());
}

}  // namespace ww::ui
