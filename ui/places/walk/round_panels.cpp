#include "ui/places/walk/round_panels.h"

#include <QKeyEvent>
#include <algorithm>
#include <utility>

#include "core/balancing/closed_round.h"
#include "core/balancing/walk_progress.h"
#include "core/project/calibration.h"
#include "core/project/review.h"
#include "ui/places/reading_fix.h"
#include "ui/text/words.h"
#include "ui/widgets/entry_field.h"
#include "ui/widgets/hinted_field.h"
#include "ui/widgets/panel_title.h"
#include "ui/widgets/patient_area.h"
#include "ui/widgets/place_area.h"

namespace ww::ui {
namespace {

constexpr base::MessageForm kNoReadinessList{"no_readiness_list",
                                             "this survey begins without a readiness list; see that the loop "
                                             "is clean, filled, vented and safe to run, "
                                             "and note it: Job, Readiness, Take Usual List"};

QLabel* head(QWidget* parent) {
    QLabel* label = panelTitle({}, parent);
    label->setWordWrap(true);
    return label;
}

constexpr base::MessageForm kMeterOverdue{
    "meter_overdue",
    "meter {1} was due for calibration on {2}, {3} days ago; readings are kept and listed in the "
    "report, take another meter (menu Round, Meter) or give the reason (Job, If overdue, why)"};

/// That the meter of a round is overdue and nobody said why; nothing for any other.
std::optional<base::Fault> overdueMeter(const WorkbookBridge& bridge) {
    const auto id = bridge.instrument();
    const project::Instrument* meter = id ? bridge.project().instruments().find(*id) : nullptr;
    if (meter == nullptr || !project::isOverdueUnexplained(*meter, bridge.now())) {
        return std::nullopt;
    }
    const std::string days = std::to_string(*project::daysSinceDue(*meter, bridge.now()));
    return base::Fault{&kMeterOverdue, {}, {meter->tag, meter->due->date(), days}};
}

QLabel* labelOf(const QString& text, QWidget* buddy, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setBuddy(buddy);
    return label;
}

}  // namespace

OpenRoundPanel::OpenRoundPanel(WorkbookBridge& bridge, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_head(head(this)),
      m_kind(new QuietCombo(this)),
      m_meter(new QuietCombo(this)),
      m_person(new QuietCombo(this)),
      m_speeds(new SpeedFields(bridge, this)),
      m_readiness(new QLabel(this)),
      m_override(new HintedField(tr("name: reason"), this)),
      m_open(new QPushButton(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    layout->addWidget(m_head);
    const struct {
        QuietCombo* combo;
        QString label;
        QString name;
    } kChoices[] = {{m_kind, tr("&Kind of round"), tr("Kind of round")},
                    {m_meter, tr("&Meter"), tr("Meter")},
                    {m_person, tr("&Person"), tr("Person")}};
    for (const auto& choice : kChoices) {
        layout->addWidget(labelOf(choice.label, choice.combo, this));
        layout->addWidget(choice.combo);
        choice.combo->setAccessibleName(choice.name);
        choice.combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    }
    layout->addWidget(m_speeds);
    m_readiness->setWordWrap(true);
    m_readiness->setTextFormat(Qt::PlainText);
    m_override->setAccessibleName(tr("Who lets the survey begin, and why"));
    layout->addWidget(m_readiness);
    layout->addWidget(m_override);
    layout->addSpacing(8);
    layout->addWidget(m_open);
    layout->addStretch(1);
    m_open->setDefault(true);
    m_open->setAutoDefault(true);
    connect(m_open, &QPushButton::clicked, this, &OpenRoundPanel::open);
    connect(m_speeds, &SpeedFields::done, m_open, [this] { m_open->setFocus(Qt::OtherFocusReason); });
    connect(m_kind, &QComboBox::currentIndexChanged, this, &OpenRoundPanel::showReadiness);
}

void OpenRoundPanel::begin() {
    const project::Project& project = m_bridge.project();
    const project::Round* last = project.lastRound();
    const int number = last != nullptr ? last->number + 1 : 1;
    m_head->setText(tr("Open round %1").arg(number));
    m_open->setText(tr("Open Round %1").arg(number));
    // Asked for once more, what was chosen for this round stays.
    const std::string round = m_bridge.workbook()->workbookId().text() + '/' + std::to_string(number);
    const bool isAgain = std::exchange(m_begun, round) == round;
    const int chosen = m_kind->currentIndex();
    m_kind->clear();
    for (const project::RoundKind kind : {project::RoundKind::Survey, project::RoundKind::Adjusting,
                                          project::RoundKind::Final, project::RoundKind::Witness}) {
        m_kind->addItem(text::word(kind), static_cast<int>(kind));
    }
    const bool isEven = last != nullptr && m_bridge.assessment().verdict == balancing::Verdict::Accepted;
    m_kind->setCurrentIndex(isAgain ? chosen : last == nullptr ? 0 : isEven ? 2 : 1);
    m_meter->clear();
    for (const project::Instrument& meter : project.instruments()) {
        QString words = QString::fromStdString(meter.tag);
        if (meter.due) {
            words += project::isOverdue(meter, m_bridge.now())
                         ? tr(", was due %1").arg(QString::fromStdString(meter.due->date()))
                         : tr(", calibrated to %1").arg(QString::fromStdString(meter.due->date()));
        }
        m_meter->addItem(words, QString::fromStdString(meter.id.text()));
    }
    m_person->clear();
    for (const project::Person& person : project.people()) {
        m_person->addItem(QString::fromStdString(person.name), QString::fromStdString(person.id.text()));
    }
    const auto select = [](QComboBox* combo, const std::optional<base::Id>& id) {
        combo->setEnabled(combo->count() > 0);
        combo->setCurrentIndex(id ? combo->findData(QString::fromStdString(id->text())) : 0);
    };
    select(m_meter, m_bridge.instrument());
    select(m_person, m_bridge.nextReader());
    m_speeds->begin(isAgain);
    showReadiness();
    m_open->setFocus(Qt::OtherFocusReason);
}

void OpenRoundPanel::showReadiness() {
    const bool isSurvey = m_kind->currentData().toInt() == static_cast<int>(project::RoundKind::Survey);
    const auto open = project::openMandatory(m_bridge.project());
    const bool isGated = isSurvey && !open.empty();
    m_readiness->setVisible(isGated);
    m_override->setVisible(isGated);
    if (isGated) {
        m_readiness->setText(tr("%n mandatory line(s) of readiness are open, the first: %1. A supervisor may "
                                "let the survey begin and say why.",
                                nullptr, static_cast<int>(open.size()))
                                 .arg(text::readinessLine(open.front()->text)));
    }
}

void OpenRoundPanel::open() {
    const auto speeds = m_speeds->read();
    if (!speeds) {
        emit m_bridge.messageRaised(speeds.fault());
        return;
    }
    m_bridge.setInstrument(base::Id::fromText(m_meter->currentData().toString().toStdString()));
    m_bridge.setPerson(base::Id::fromText(m_person->currentData().toString().toStdString()));
    const base::Outcome done =
        m_bridge.openRound(static_cast<project::RoundKind>(m_kind->currentData().toInt()),
                           m_override->isVisibleTo(this) ? m_override->text() : QString(), *speeds);
    if (!done) {
        emit m_bridge.messageRaised(done.fault());
        return;
    }
    m_override->clear();
    m_begun.clear();
    emit opened();
    // The meter that is overdue stands in the strip too, so this is said first.
    const bool isSurvey = m_kind->currentData().toInt() == static_cast<int>(project::RoundKind::Survey);
    if (isSurvey && m_bridge.project().readiness().empty()) {
        emit m_bridge.messageRaised(base::Fault{&kNoReadinessList, {}, {}});
    } else if (const auto overdue = overdueMeter(m_bridge)) {
        emit m_bridge.messageRaised(*overdue);
    }
}

void OpenRoundPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        m_override->clear();
        m_begun.clear();
        emit givenUp();
        return;
    }
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        open();
        return;
    }
    QWidget::keyPressEvent(event);
}

CloseRoundPanel::CloseRoundPanel(WorkbookBridge& bridge, const LoopAdvisor& advisor, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_advisor(advisor),
      m_head(head(this)),
      m_area(new PatientArea(this)),
      m_close(new QPushButton(this)),
      m_back(new QPushButton(tr("Go Back to Grid"), this)),
      m_notTurned(new QPushButton(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    layout->addWidget(m_head);
    layout->addWidget(m_notTurned);
    layout->addWidget(m_area, 1);
    layout->addWidget(m_close);
    layout->addWidget(m_back);
    m_area->setWidgetResizable(true);
    m_area->setFrameShape(QFrame::NoFrame);
    m_area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_area->setFocusPolicy(Qt::NoFocus);
    m_area->setAccessibleName(tr("Open items of the round"));
    connect(m_close, &QPushButton::clicked, this, [this] {
        const base::Outcome done = m_bridge.closeRound();
        if (!done) {
            emit m_bridge.messageRaised(done.fault());
            return;
        }
        emit closed();
        if (const auto note = balancing::closedRoundNote(m_bridge.project(), m_bridge.assessment())) {
            emit m_bridge.messageRaised(*note);
        }
    });
    connect(m_notTurned, &QPushButton::clicked, this, [this] { m_bridge.tell(m_bridge.storeNotTurned()); });
    connect(m_back, &QPushButton::clicked, this, &CloseRoundPanel::givenUp);
    connect(&bridge, &WorkbookBridge::changed, this, [this] {
        if (isVisible()) {
            listLater();
        }
    });
    connect(&advisor, &LoopAdvisor::changed, this, [this] {
        const auto fields = m_area->findChildren<EntryField*>();
        const bool isTyped = std::any_of(fields.begin(), fields.end(),
                                         [](const EntryField* field) { return field->isTyped(); });
        // A reason that is being typed stays; the list follows once it is stored.
        if (isVisible() && !isTyped) {
            listLater();
        }
    });
}

/// A field that is just being left, or that is getting the keys, must outlive its own event.
void CloseRoundPanel::listLater() {
    QMetaObject::invokeMethod(this, &CloseRoundPanel::list, Qt::QueuedConnection);
}

void CloseRoundPanel::begin(bool isOutOfWalk) {
    list();
    if (m_close->isEnabled()) {
        (isOutOfWalk ? m_back : m_close)->setFocus(Qt::OtherFocusReason);
    } else if (auto* first = m_area->findChild<EntryField*>()) {
        first->setFocus(Qt::OtherFocusReason);
    }
}

void CloseRoundPanel::list() {
    const project::Round* round = m_bridge.roundToCorrectOrNull();
    if (round == nullptr) {
        return;
    }
    const bool isOpen = round->state == project::RoundState::Open;
    constexpr std::size_t kShown = 40;
    std::vector<balancing::Finding> items = balancing::openItems(m_bridge.project(), round->id);
    const std::vector<balancing::Finding> doubted = doubts(*round);
    m_close->setText(tr("Close Round %1").arg(round->number));
    m_close->setEnabled(isOpen && items.empty());
    m_close->setVisible(isOpen);
    const int count = static_cast<int>(items.size());
    m_head->setText(
        (!items.empty() && !isOpen
             ? tr("%n item(s) need a reading or a reason before round %1 is sent.", nullptr, count)
         : !items.empty()
             ? tr("%n item(s) need a reading or a reason before round %1 is closed.", nullptr, count)
         : doubted.empty() || !isOpen ? tr("Round %1 has no open items.")
                                      : tr("Round %1 can be closed; %n reading(s) do not fit the others.",
                                           nullptr, static_cast<int>(doubted.size())))
            .arg(round->number));
    const std::size_t notTurned = isOpen ? m_bridge.notTurned().size() : 0;
    m_notTurned->setText(tr("Mark %n as Not Turned", nullptr, static_cast<int>(notTurned)));
    m_notTurned->setVisible(notTurned > 1);
    items.insert(items.end(), doubted.begin(), doubted.end());
    auto* page = new QWidget;
    auto* rows = new QVBoxLayout(page);
    rows->setContentsMargins(0, 0, 4, 0);
    std::vector<base::Fault> ofAll = shiftsOf(m_advisor, m_bridge.project(), round->id);
    if (auto lost = balancing::lostByGaps(m_bridge.project(), round->id)) {
        ofAll.insert(ofAll.begin(), std::move(*lost));
    }
    for (const base::Fault& said : ofAll) {
        auto* words = new QLabel(text::sentence(said), page);
        words->setWordWrap(true);
        words->setTextFormat(Qt::PlainText);
        rows->addWidget(words);
    }
    for (std::size_t i = 0; i < std::min(items.size(), kShown); ++i) {
        addItem(items[i], page, rows);
    }
    if (items.size() > kShown) {
        rows->addWidget(new QLabel(tr("and %1 more").arg(items.size() - kShown), page));
    }
    rows->addStretch(1);
    const bool hadFocus = m_area->isAncestorOf(focusWidget());
    m_area->setWidget(page);
    if (hadFocus) {
        auto* first = page->findChild<EntryField*>();
        (first != nullptr ? static_cast<QWidget*>(first)
         : isOpen         ? m_close
                          : m_back)
            ->setFocus(Qt::OtherFocusReason);
    }
    emit listed();
}

std::vector<balancing::Finding> CloseRoundPanel::doubts(const project::Round& round) const {
    std::vector<balancing::Finding> found;
    for (const balancing::DoubtfulReading* doubt : doubtsOf(m_advisor, m_bridge.project(), round.id)) {
        found.push_back({doubt->why, balancing::Severity::Note,
                         m_bridge.project().branches()[doubt->branch].id, doubt->readings.back()});
    }
    return found;
}

void CloseRoundPanel::addItem(const balancing::Finding& item, QWidget* page, QVBoxLayout* rows) {
    auto* words = new QLabel(text::text(item.fault), page);
    words->setWordWrap(true);
    words->setTextFormat(Qt::PlainText);
    rows->addWidget(words);
    const QString tag = QString::fromStdString(item.fault.subject);
    auto* reason = new EntryField(page);
    reason->setHint(tr("reason"));
    reason->setAccessibleName(tr("Reason for %1").arg(tag));
    reason->setStore([this, item](const QString& text) { return giveReason(item, text); });
    auto* read = new QPushButton(tr("Read"), page);
    read->setAutoDefault(true);
    read->setAccessibleName(tr("Read %1").arg(tag));
    read->setEnabled(item.branch.has_value());
    connect(read, &QPushButton::clicked, this, [this, item] { emit valveWanted(*item.branch); });
    for (QWidget* control : std::initializer_list<QWidget*>{reason, read}) {
        seeTogether(*control, *words);
    }
    auto* line = new QHBoxLayout;
    line->addWidget(reason, 1);
    line->addWidget(read);
    rows->addLayout(line);
}

bool CloseRoundPanel::giveReason(const balancing::Finding& item, const QString& reason) {
    base::Outcome done = base::Done{};
    if (item.reading) {
        done = m_bridge.giveReason(*item.reading, reason);
    } else if (item.branch) {
        done = m_bridge.storeCannotBeRead(*item.branch, reason);
    }
    if (!done) {
        emit m_bridge.messageRaised(done.fault());
    }
    return done.ok();
}

void CloseRoundPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        emit givenUp();
        return;
    }
    QWidget::keyPressEvent(event);
}

}  // namespace ww::ui
