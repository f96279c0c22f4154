#include "ui/places/review/decision_panel.h"

#include <QEvent>
#include <QMenu>
#include <QVBoxLayout>
#include <algorithm>

#include "core/balancing/design_changes.h"
#include "core/balancing/review_steps.h"
#include "core/project/earlier_design.h"
#include "core/project/edit_label.h"
#include "core/project/review.h"
#include "core/workbook/review_rules.h"
#include "ui/mnemonics.h"
#include "ui/text/conflict_text.h"
#include "ui/text/format.h"
#include "ui/text/words.h"
#include "ui/widgets/hinted_field.h"

namespace ww::ui {
namespace {

using project::RoundState;

QString whenText(const std::optional<base::Instant>& time) {
    return time ? text::timeOf(*time) : QString();
}

}  // namespace

DecisionPanel::DecisionPanel(WorkbookBridge& bridge, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_state(new QLabel(this)),
      m_reason(new HintedField(tr("reason, to send back or withdraw"), this)),
      m_send(new QPushButton(tr("Send Round"), this)),
      m_accept(new QPushButton(tr("Accept Round"), this)),
      m_person(new QPushButton(tr("Change Person"), this)),
      m_people(new QPushButton(tr("To the People of the Job"), this)),
      m_sendBack(new QPushButton(tr("Send Back"), this)),
      m_withdraw(new QPushButton(tr("Withdraw"), this)),
      m_hint(new QLabel(this)) {
    m_state->setWordWrap(true);
    m_state->setTextFormat(Qt::PlainText);
    m_state->setAccessibleName(tr("State of the round"));
    m_hint->setWordWrap(true);
    m_reason->setAccessibleName(tr("Reason for sending back or withdrawing"));
    // The texts stand above the buttons, which stay where they are whatever is said. Buttons never widen the
    // side: two stand beside one another where both have room in it.
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    for (QWidget* part : std::initializer_list<QWidget*>{m_state, m_hint, m_person, m_people, m_reason}) {
        layout->addWidget(part);
    }
    m_steps = new QGridLayout;
    m_steps->setSpacing(6);
    layout->addLayout(m_steps);
    for (QPushButton* step : steps()) {
        step->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    }
    placeSteps(1);
    m_person->setMenu(new QMenu(m_person));
    m_person->setAccessibleDescription(tr("Lists who may decide on this round"));
    connect(m_people, &QPushButton::clicked, this, &DecisionPanel::peopleWanted);
    connect(m_send, &QPushButton::clicked, this, &DecisionPanel::send);
    connect(m_accept, &QPushButton::clicked, this, &DecisionPanel::accept);
    connect(m_sendBack, &QPushButton::clicked, this, [this] {
        take(balancing::sendBackRound(m_bridge.project(), *m_round, reason(), m_bridge.reviewContext()));
    });
    connect(m_withdraw, &QPushButton::clicked, this, [this] {
        take(balancing::withdrawRound(m_bridge.project(), *m_round, reason(), m_bridge.reviewContext()));
    });
    connect(m_reason, &QLineEdit::textChanged, this, &DecisionPanel::refresh);
    refresh();
}

std::array<QPushButton*, 4> DecisionPanel::steps() const {
    return {m_send, m_accept, m_withdraw, m_sendBack};
}

void DecisionPanel::placeSteps(int columns) {
    if (columns == m_columns) {
        return;
    }
    m_columns = columns;
    m_steps->setColumnStretch(0, 1);
    m_steps->setColumnStretch(1, columns - 1);
    int at = 0;
    for (QPushButton* step : steps()) {
        m_steps->removeWidget(step);
        m_steps->addWidget(step, at / columns, at % columns);
        ++at;
    }
}

bool DecisionPanel::event(QEvent* event) {
    const bool isTaken = QWidget::event(event);
    if (event->type() == QEvent::Resize || event->type() == QEvent::LayoutRequest) {
        int widest = 0;
        for (const QPushButton* step : steps()) {
            widest = std::max(widest, step->sizeHint().width());
        }
        setMinimumWidth(widest);
        placeSteps(2 * widest + m_steps->horizontalSpacing() <= width() ? 2 : 1);
    }
    return isTaken;
}

void DecisionPanel::setRound(std::optional<base::Id> round) {
    m_round = round;
    refresh();
}

bool DecisionPanel::waitsToBeSent(const project::Round& round) {
    return round.state == RoundState::Closed || round.state == RoundState::SentBack;
}

bool DecisionPanel::waitsForDecision(const project::Round& round) {
    return round.state == RoundState::Sent;
}

void DecisionPanel::send() {
    const project::Round* round = roundInHand();
    if (round != nullptr && waitsToBeSent(*round)) {
        take(balancing::sendRound(m_bridge.project(), *m_round, m_bridge.reviewContext()));
    }
}

void DecisionPanel::accept() {
    const project::Round* round = roundInHand();
    if (round != nullptr && waitsForDecision(*round)) {
        take(balancing::acceptRound(m_bridge.project(), *m_round, reason(), m_bridge.reviewContext()));
    }
}

const project::Round* DecisionPanel::roundInHand() const {
    return m_round && !m_bridge.isReadOnly() ? m_bridge.project().rounds().find(*m_round) : nullptr;
}

void DecisionPanel::offer(QPushButton& button, bool isNext, const std::optional<base::Fault>& refusal) {
    button.setEnabled(isNext && !refusal);
    button.setToolTip(isNext && refusal ? text::sentence(*refusal) : QString());
    button.setAccessibleDescription(button.toolTip());
}

void DecisionPanel::refresh() {
    const project::Project& project = m_bridge.project();
    const project::Round* round = roundInHand();
    const bool isToSend = round != nullptr && waitsToBeSent(*round);
    const bool isToDecide = round != nullptr && waitsForDecision(*round);
    const bool isToWithdraw = isToDecide || (round != nullptr && round->state == RoundState::Accepted);
    const bool hasReason = !reason().empty();
    const auto refusalOf = [&](const project::Edit& edit) { return workbook::reviewRefusal(project, edit); };
    offer(*m_send, isToSend, isToSend ? balancing::unansweredFault(project, round->id) : std::nullopt);
    const auto refusal =
        isToDecide ? refusalOf(balancing::acceptRound(project, round->id, reason(), m_bridge.reviewContext()))
                   : std::nullopt;
    offer(*m_accept, isToDecide, refusal);
    offerPersons(round, refusal);
    offer(*m_sendBack, isToDecide,
          isToDecide ? refusalOf(balancing::sendBackRound(project, round->id, {}, m_bridge.reviewContext()))
                     : std::nullopt);
    m_withdraw->setEnabled(isToWithdraw && hasReason);
    m_reason->setEnabled(isToWithdraw);
    // What is waited for stands above the buttons too: a disabled one takes no keys.
    QStringList waits;
    for (const QPushButton* button : {m_send, m_accept, m_sendBack}) {
        waits << button->toolTip();
    }
    waits << (isToWithdraw && !hasReason ? tr("Withdrawing needs a reason.") : QString());
    waits.removeAll(QString());
    m_hint->setText(waits.value(0));
    m_hint->setVisible(!waits.isEmpty());
    showState();
}

void DecisionPanel::offerPersons(const project::Round* round, const std::optional<base::Fault>& refusal) {
    const bool isOfPerson =
        refusal && (refusal->is(workbook::kDeciderNotAtDesk) || refusal->is(workbook::kDeciderIsSender) ||
                    refusal->is(workbook::kDeciderIsReader));
    m_person->setVisible(isOfPerson);
    m_people->setVisible(
        refusal && (refusal->is(workbook::kDeciderWithoutRole) || refusal->is(workbook::kNobodyElseDecides)));
    m_person->menu()->clear();
    if (!isOfPerson) {
        return;
    }
    for (const project::Person* person : project::decidersOf(m_bridge.project(), *round)) {
        QAction* change = m_person->menu()->addAction(withoutLetter(QString::fromStdString(person->name)));
        connect(change, &QAction::triggered, this, [this, id = person->id] { m_bridge.setPerson(id); });
    }
}

std::optional<DecisionPanel::StepBack> DecisionPanel::stepTakenBack(const project::Round& round) {
    const std::int64_t newest = m_bridge.workbook()->newestEntry().sequence;
    if (m_lookedFor == std::pair(round.id, newest)) {
        return m_stepBack;
    }
    m_lookedFor = std::pair(round.id, newest);
    m_stepBack.reset();
    const std::vector<std::string> number{std::to_string(round.number)};
    const std::string withdrawal = project::label(project::labels::kWithdrawRound, number);
    const std::string sendingBack = project::label(project::labels::kSendBackRound, number);
    const std::vector<workbook::JournalEntry>& journal = m_bridge.workbook()->journal();
    const auto found = std::find_if(journal.rbegin(), journal.rend(), [&](const auto& entry) {
        return entry.label == withdrawal || entry.label == sendingBack;
    });
    if (found != journal.rend()) {
        m_stepBack = StepBack{found->label == withdrawal, found->person, found->time};
    }
    return m_stepBack;
}

void DecisionPanel::showState() {
    const project::Round* round = m_round ? m_bridge.project().rounds().find(*m_round) : nullptr;
    m_state->clear();
    if (round == nullptr) {
        return;
    }
    QStringList lines{tr("Round %1: %2").arg(round->number).arg(text::nameOf(round->state))};
    const auto by = [](const QString& what, const std::string& who,
                       const std::optional<base::Instant>& time) {
        return QStringLiteral("%1 %2, %3").arg(what, QString::fromStdString(who), whenText(time));
    };
    if (!round->sentBy.empty()) {
        lines << by(tr("sent by"), round->sentBy, round->sent);
    }
    QString ofReason;
    if (!round->decidedBy.empty()) {
        ofReason = by(round->state == RoundState::SentBack ? tr("sent back by") : tr("accepted by"),
                      round->decidedBy, round->decided);
    } else if (const auto step = round->reason.empty() ? std::nullopt : stepTakenBack(*round)) {
        ofReason = by(step->isWithdrawal ? tr("withdrawn by") : tr("sent back by"), step->person, step->time);
    }
    const QString reason =
        round->reason.empty() ? QString() : tr("reason: %1").arg(text::reason(round->reason));
    QStringList decision{ofReason, reason};
    decision.removeAll(QString());
    if (!decision.isEmpty()) {
        lines << decision.join(QStringLiteral(", "));
    }
    if (round->state == RoundState::Accepted) {
        const project::Limits limits = project::limitsFor(m_bridge.project(), *round);
        const auto digits = [](const auto& limit) { return QString::fromStdString(limit.digits.text()); };
        lines << tr("accepted by the limits: share ±%1 %, of design %2 to +%3 %")
                     .arg(digits(limits.matchingBand), digits(limits.toleranceLow),
                          digits(limits.toleranceHigh));
    }
    for (const base::Fault& change : balancing::changesSince(m_bridge.project(), round->number)) {
        lines << text::sentence(change);
    }
    if (!round->readiness.empty()) {
        lines << tr("begun early: %1").arg(QString::fromStdString(round->readiness));
    }
    const QString person = QString::fromStdString(m_bridge.reviewContext().person);
    lines << (m_bridge.isNobodyChosen() ? tr("no person chosen: decisions name the account %1").arg(person)
                                        : tr("at this desk: %1").arg(person));
    m_state->setText(lines.join('\n'));
}

void DecisionPanel::take(const base::Result<project::Edit>& edit) {
    const base::Outcome done = edit ? m_bridge.apply(*edit) : base::Outcome(edit.fault());
    if (!done) {
        emit m_bridge.messageRaised(done.fault());
        return;
    }
    m_reason->clear();
    emit m_bridge.messageCleared();
    emit decided();
}

}  // namespace ww::ui
