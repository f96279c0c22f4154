#include "ui/places/pump/test_page.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "core/balancing/pump_doubts.h"
#include "core/balancing/walk_forms.h"
#include "core/project/edit_label.h"
#include "core/pump_room/test_entry.h"
#include "core/pump_room/test_sheet.h"
#include "ui/text/words.h"
#include "ui/widgets/side_by_side.h"

namespace ww::ui {

namespace {

/// Six columns of values, and the cautions of a shutoff test beside them.
constexpr int kTestWidth = 560;
constexpr int kCautionsWidth = 240;

using project::PumpPoint;
using project::PumpReading;
using quantity::Unit;

constexpr base::MessageForm kNoPumpToTest{"pump_test_no_pump",
                                          "the job has no pump yet; add one on the page Pump Data"};
constexpr base::MessageForm kGaugeUnknown{"pump_test_gauge_unknown",
                                          "no instrument is called \"{1}\"; type a tag of the place Job"};

constexpr base::MessageForm kPointNotRead{"pump_test_round_closed",
                                          "round {1} is closed and has no reading of this point; open the "
                                          "next round (Ctrl+Shift+N) and read it there"};
constexpr base::MessageForm kBackCorrectedHere{
    "pump_test_round_back",
    "round {1} was sent back, so this corrects its reading and the old value stays on record; say why in the "
    "field Note"};

constexpr std::array kPoints{PumpPoint::Static,   PumpPoint::Shutoff,
                             PumpPoint::FullOpen, PumpPoint::ThrottledToDesign,
                             PumpPoint::Final,    PumpPoint::Running};

std::vector<RecordField<PumpReading>> testFields() {
    using fields::measured;
    const FieldSign least = FieldSign::NotNegative;
    return {
        measured(base::term("Suction"), &PumpReading::suction, fields::gaugeUnit),
        measured(base::term("Discharge"), &PumpReading::discharge, fields::gaugeUnit),
        measured(base::term("Or rise, one gauge"), &PumpReading::gaugeRise, fields::gaugeUnit),
        measured(base::term("Speed"), &PumpReading::speed, Unit::RevolutionPerMinute, least),
        fields::number(base::term("Discharge valve at"), &PumpReading::throttle, least),
        measured(base::term("Flow by meter"), &PumpReading::flow, text::flowUnit, least),
        measured(base::term("Volts, phases 1-2"), &PumpReading::volts, Unit::Volt, least),
        measured(base::term("Volts, phases 2-3"), &PumpReading::voltsSecond, Unit::Volt, least),
        measured(base::term("Volts, phases 3-1"), &PumpReading::voltsThird, Unit::Volt, least),
        measured(base::term("Amps, phase 1"), &PumpReading::amps, Unit::Ampere, least),
        measured(base::term("Amps, phase 2"), &PumpReading::ampsSecond, Unit::Ampere, least),
        measured(base::term("Amps, phase 3"), &PumpReading::ampsThird, Unit::Ampere, least),
        measured(base::term("Power factor"), &PumpReading::powerFactor, Unit::One, least),
        measured(base::term("Input power"), &PumpReading::power, Unit::Kilowatt, least),
        fields::reference(base::term("Gauge"), &PumpReading::instrument, &project::Project::instruments,
                          kGaugeUnknown),
        fields::words(base::term("Note"), &PumpReading::note),
        fields::words(base::term("Reason, if doubted"), &PumpReading::reason),
    };
}

}  // namespace

TestPage::TestPage(WorkbookBridge& bridge, QWidget* parent)
    : PumpPage(parent),
      m_bridge(bridge),
      m_fields(testFields()),
      m_chooser(new PumpChooser(bridge, this)),
      m_model(new FieldTableModel(
          bridge,
          {[this] { return titlesOf(m_fields); },
           [] {
               return QStringList{tr("Pumps off"), tr("Shutoff"), tr("Full open"),
                                  tr("Throttled"), tr("Final"),   tr("As it runs")};
           },
           [this](int field, int point) { return text(field, point); },
           [this](int field, int point, const QString& typed) { return store(field, point, typed); },
           {project::RecordKind::PumpReading, project::RecordKind::Round, project::RecordKind::Instrument},
           [this](int point) { return takes(point); }},
          this)),
      m_table(new EntryTable(this)),
      m_delegate(new BranchDelegate(this)),
      m_round(new QLabel(this)),
      m_cautions(new SectionView(this)) {
    setUpEntry(*m_table, *m_model, *m_delegate, bridge, tr("Pump test sheet"));
    m_table->setStore([this](const QModelIndex& cell, const QString& typed) {
        const std::vector<base::Fault> before = doubtsAt(cell.column() - 1);
        const bool isStored = m_bridge.tellOrClear(m_model->store(cell, typed));
        // As Walk does for a dp: what was typed is stored, and what is odd about it is said at once.
        for (const base::Fault& doubt : isStored ? doubtsAt(cell.column() - 1) : std::vector<base::Fault>()) {
            if (std::find(before.begin(), before.end(), doubt) == before.end()) {
                emit m_bridge.messageRaised(doubt);
                return isStored;
            }
        }
        if (isStored) {
            tellCorrection();
        }
        return isStored;
    });
    connect(m_table, &EntryTable::typingRefused, this, &TestPage::tellWhyNot);
    m_table->setAccessibleDescription(tr("Type to enter a value; Enter goes down, Tab goes right"));
    m_round->setWordWrap(true);
    auto* label = new QLabel(tr("Pump"), this);
    label->setBuddy(m_chooser);
    auto* top = new QHBoxLayout;
    top->addWidget(label);
    top->addWidget(m_chooser);
    top->addWidget(m_round, 1);
    auto* sheet = new QWidget(this);
    auto* left = new QVBoxLayout(sheet);
    left->setContentsMargins(0, 0, 0, 0);
    left->addLayout(top);
    left->addWidget(m_table, 1);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 6, 8, 6);
    row->addWidget(new SideBySide({sheet, kTestWidth, 7, kSheetHeight},
                                  {m_cautions, kCautionsWidth, 3, SideBySide::kAsItAsks}, this));
    connect(m_table, &EntryTable::resized, this, [this] { fitFieldColumns(*m_table, 18, 13); });
    connect(m_chooser, &PumpChooser::chosen, this, [this] {
        m_model->renew();
        refresh();
    });
    // A page that is not seen is refreshed by show().
    connect(&bridge, &WorkbookBridge::changed, this, [this] {
        if (isVisible()) {
            refresh();
        }
    });
    refresh();
}

QString TestPage::text(int field, int point) const {
    const project::Pump* pump = m_chooser->pump();
    const project::Round* round = m_bridge.project().lastRound();
    if (pump == nullptr || round == nullptr) {
        return {};
    }
    const PumpReading* reading = pump_room::testReading(m_bridge.project(), round->id, pump->id,
                                                        kPoints[static_cast<std::size_t>(point)]);
    return reading != nullptr ? m_fields[static_cast<std::size_t>(field)].text(m_bridge.project(), *reading)
                              : QString();
}

base::Outcome TestPage::store(int fieldIndex, int point, const QString& typed) {
    const project::Project& project = m_bridge.project();
    const project::Pump* pump = m_chooser->pump();
    const project::Round* round = project.lastRound();
    if (pump == nullptr) {
        return base::Fault{&kNoPumpToTest, {}, {}};
    }
    if (round == nullptr) {
        return base::Fault{&pump_room::kTestNoRound, pump->tag, {}};
    }
    const RecordField<PumpReading>& field = m_fields[static_cast<std::size_t>(fieldIndex)];
    const PumpReading before = pump_room::testReadingToFill(
        project, round->id, pump->id, kPoints[static_cast<std::size_t>(point)], m_bridge.context());
    PumpReading reading = before;
    if (auto refusal = field.take(project, reading, typed)) {
        refusal->subject = pump->tag;
        return *refusal;
    }
    if (reading == before) {
        return base::Done{};
    }
    const bool isAdded = field.text(project, before).isEmpty();
    const pump_room::TestedValue value{project::fieldInLabel(field.title.english),
                                       field.text(project, reading).replace(QChar(0xA0), ' ').toStdString()};
    return m_bridge.apply(
        pump_room::storeTestReading(project, std::move(reading), isAdded, value, m_bridge.context()));
}

std::vector<base::Fault> TestPage::doubtsAt(int point) const {
    const project::Project& project = m_bridge.project();
    const project::Pump* pump = m_chooser->pump();
    const project::Round* round = project.lastRound();
    const PumpReading* reading =
        pump != nullptr && round != nullptr
            ? pump_room::testReading(project, round->id, pump->id, kPoints[static_cast<std::size_t>(point)])
            : nullptr;
    return reading != nullptr && reading->reason.empty() ? balancing::pumpDoubts(project, *reading)
                                                         : std::vector<base::Fault>();
}

bool TestPage::takes(int point) const {
    const project::Pump* pump = m_chooser->pump();
    const project::Round* round = m_bridge.project().lastRound();
    if (pump == nullptr || round == nullptr || round->state == project::RoundState::Open) {
        return true;  // What is missing is told at Enter.
    }
    return m_bridge.roundToCorrectOrNull() != nullptr &&
           pump_room::testReading(m_bridge.project(), round->id, pump->id,
                                  kPoints[static_cast<std::size_t>(point)]) != nullptr;
}

void TestPage::tellWhyNot(const QModelIndex& cell) {
    if (cell.column() <= 0 || m_bridge.isReadOnly()) {
        return;
    }
    const project::Round* round = m_bridge.project().lastRound();
    const bool isCorrectable = m_bridge.roundToCorrectOrNull() != nullptr;
    const bool isAccepted = round->state == project::RoundState::Accepted;
    m_bridge.tell(base::Fault{isCorrectable ? &kPointNotRead
                              : isAccepted  ? &balancing::kRoundAccepted
                                            : &kRoundNotOpen,
                              {},
                              {std::to_string(round->number)}});
}

void TestPage::tellCorrection() {
    const project::Round& round = *m_bridge.project().lastRound();
    if (round.state == project::RoundState::Closed || round.state == project::RoundState::SentBack) {
        const bool isBack = round.state == project::RoundState::SentBack;
        emit m_bridge.messageRaised(base::Fault{
            isBack ? &kBackCorrectedHere : &kClosedCorrected, {}, {std::to_string(round.number)}});
    }
}

/// In a new round the keys stand where its first value belongs.
void TestPage::beginRound(const project::Round* round) {
    const auto id = round != nullptr ? std::optional(round->id) : std::nullopt;
    if (id == m_begun) {
        return;
    }
    m_begun = id;
    for (int column = 1; column < m_model->columnCount(); ++column) {
        for (int row = 0; row < m_model->rowCount(); ++row) {
            const QModelIndex cell = m_model->index(row, column);
            if (m_model->data(cell, Qt::DisplayRole).toString().isEmpty()) {
                m_table->setCurrentIndex(cell);
                return;
            }
        }
    }
}

void TestPage::refresh() {
    const project::Round* round = m_bridge.project().lastRound();
    beginRound(round);
    const bool isOpen = round != nullptr && round->state == project::RoundState::Open;
    m_round->setText(
        round == nullptr
            ? tr("Open a round first (Ctrl+Shift+N): readings are kept with one.")
            : (isOpen ? tr("Readings of round %1, %2.")
                      : tr("Readings of round %1, %2. New ones need the next round (Ctrl+Shift+N)."))
                  .arg(round->number)
                  .arg(text::nameOf(round->state)));
    fitFieldColumns(*m_table, 18, 13);
    ww::report::Section section;
    section.title = base::Fault{&pump_room::kShutoffTitle, {}, {}};
    const auto index = m_chooser->index();
    if (index) {
        const energy::ShutoffAdvice advice = pump_room::shutoffAdviceFor(m_bridge.project(), *index);
        section.statements.push_back({&pump_room::shutoffVerdict(advice), {}, {}});
        section.closing = advice.cautions;
    }
    m_cautions->show(section);
}

void TestPage::show(const pump_room::PumpPicture*) {
    refresh();
}

void TestPage::setTokens(const theme::Tokens& tokens) {
    m_delegate->setTokens(tokens);
    m_cautions->setTokens(tokens);
    m_table->viewport()->update();
}

void TestPage::setMetrics(const theme::Metrics& metrics) {
    setRowHeight(*m_table, metrics);
    fitFieldColumns(*m_table, 18, 13);
}

}  // namespace ww::ui
