#include "ui/places/adjust/adjust_place.h"

#include <QEvent>
#include <QHeaderView>
#include <QScrollArea>
#include <cmath>

#include "core/project/review.h"
#include "ui/mnemonics.h"
#include "ui/places/adjust/adjust_words.h"
#include "ui/text/format.h"
#include "ui/text/words.h"
#include "ui/widgets/text_scale.h"

namespace ww::ui {
namespace {

constexpr base::MessageForm kHandleMoved{
    "handle_moved",
    "{1} was turned to {2} but not read there; the record still says {3}, go back and read it"};

constexpr int kSecond = 1000;
constexpr int kRestMilliseconds = 20 * kSecond;
constexpr double kFindWidth = 140.0;

}  // namespace

void AdjustPlace::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    for (BigFigure* figure : {m_setting, m_aim, m_reading}) {
        figure->setTokens(tokens);
    }
    m_word->setTokens(tokens);
    m_ladder->setTokens(tokens);
    m_stripDelegate->setTokens(tokens);
    m_advice->setTokens(tokens);
    m_strip->viewport()->update();
}

void AdjustPlace::setMetrics(const theme::Metrics& metrics) {
    QFont large = font();
    large.setPointSizeF(metrics.textPoints * 1.3);
    large.setBold(true);
    m_title->setFont(large);
    m_find->setFixedWidth(static_cast<int>(kFindWidth * textScale(font())));
    const int row = std::max(22, fontMetrics().height() + 6);
    m_strip->verticalHeader()->setMinimumSectionSize(row);
    m_strip->verticalHeader()->setDefaultSectionSize(row);
    m_strip->verticalHeader()->setFixedWidth(
        QFontMetrics(font()).horizontalAdvance(tr("expect %1").arg(QStringLiteral("ftH₂O"))) + 20);
    m_hold->setText(tr("Hold Here, Next Valve"));
    m_hold->setMinimumWidth(0);
    m_hold->setMinimumWidth(m_hold->sizeHint().width());
    m_advice->setMetrics(metrics);
    fit();
}

void AdjustPlace::takeFocus() {
    startAtFirst();
    m_content->currentWidget() == m_page ? m_field->setFocus(Qt::OtherFocusReason)
                                         : m_find->setFocus(Qt::OtherFocusReason);
    // The valve, the word and the aim stand at the top, wherever the advice was scrolled to.
    for (QWidget* up = parentWidget(); up != nullptr; up = up->parentWidget()) {
        if (auto* area = qobject_cast<QScrollArea*>(up)) {
            area->ensureVisible(0, 0, 0, 0);
            break;
        }
    }
}

bool AdjustPlace::isValveShown() const {
    return m_content->currentWidget() == m_page && m_valve.branch() && m_valve.hasAim();
}

bool AdjustPlace::takesReadings() const {
    const project::Round* round = project::roundInHand(m_bridge.project());
    return !m_bridge.isReadOnly() && isValveShown() &&
           (round == nullptr || round->kind == project::RoundKind::Adjusting);
}

void AdjustPlace::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    m_clock.start(kSecond);
    if (parentWidget() != nullptr) {
        parentWidget()->installEventFilter(this);
    }
}

void AdjustPlace::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    m_clock.stop();
}

void AdjustPlace::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit();
}

bool AdjustPlace::eventFilter(QObject* watched, QEvent* event) {
    // The place keeps its height where the window becomes lower than it.
    if (watched == parentWidget() && event->type() == QEvent::Resize) {
        fit();
    }
    return QWidget::eventFilter(watched, event);
}

void AdjustPlace::tick() {
    // Ages grow; what rests on them is asked for now and then only.
    const auto& last = m_valve.last();
    const bool isFresh =
        last && last->reading->time && m_bridge.now().seconds - last->reading->time->seconds < 60;
    m_clock.setInterval(isFresh ? kSecond : kRestMilliseconds);
    if (!m_field->text().isEmpty() || m_content->currentWidget() != m_page || isReadingApart()) {
        return;
    }
    isFresh ? showFigures() : refresh();
}

void AdjustPlace::refreshWhenShown() {
    m_shown->want();
    if (isVisible()) {
        m_clock.start(kSecond);
    }
}

void AdjustPlace::takePicture() {
    m_isPictureWaiting = false;
    refreshWhenShown();
}

void AdjustPlace::refresh() {
    auto branch = m_bridge.selectedBranch();
    if (!branch && m_bridge.isOpen()) {
        const auto order = workingOrder();
        branch =
            order.empty() ? std::nullopt : std::optional(m_bridge.project().branches()[order.front()].id);
    }
    if (m_valve.branch() != branch) {
        if (m_valve.branch()) {
            tellMoved();
        }
        exchangeTyped(branch);
    }
    m_valve.take(branch);
    const QString missing = whatIsMissing();
    m_empty->setText(missing);
    m_content->setCurrentWidget(missing.isEmpty() ? m_page : static_cast<QWidget*>(m_empty));
    if (missing.isEmpty()) {
        findOfferElsewhere();
        showValve();
    } else {
        m_advice->setWork(workingOrder(), m_order.isChanged(), {});
        m_advice->refresh(branch);
        const project::Branch* record = branch ? m_bridge.project().branches().find(*branch) : nullptr;
        m_title->setText(record != nullptr ? QString::fromStdString(record->tag) : tr("No valve in hand"));
        m_state->setWords({});
        emit hintChanged();
    }
}

void AdjustPlace::tellMoved() {
    if (m_bridge.project().branches().contains(*m_valve.branch()) && m_valve.isMoved()) {
        const project::Branch& branch = m_bridge.project().branches().at(*m_valve.branch());
        emit m_bridge.messageRaised(base::Fault{&kHandleMoved,
                                                branch.tag,
                                                {branch.tag, m_valve.settingText(m_valve.setting()).text(),
                                                 m_valve.settingText(m_valve.standing()).text()}});
    }
}

QString AdjustPlace::whatIsMissing() const {
    if (!m_bridge.isOpen()) {
        return tr("No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).");
    }
    if (m_bridge.project().branches().empty()) {
        return tr("No valve to adjust yet. Add the branches in System (Alt+2).");
    }
    if (!m_valve.branch() || m_bridge.project().rounds().empty()) {
        return tr("Read one full round first (Alt+3); the aim needs every branch.");
    }
    if (!m_valve.hasAim()) {
        return m_valve.aim().faults.empty() ? tr("This branch has no valve to adjust. Find another (Ctrl+J).")
                                            : tr("%1 Find another valve with Ctrl+J.")
                                                  .arg(text::sentence(m_valve.aim().faults.front()));
    }
    return {};
}

void AdjustPlace::showValve() {
    const int before = heightToEntry(AimStripModel::RowCount, false);
    m_hasNext = next().has_value();
    showHead();
    showFigures();
    showLadder();
    m_stripDelegate->setSoft(!m_valve.aim().stale.empty() || isReadingApart());
    m_stripModel->refresh();
    fitNeighbors();
    m_tries->setWords(triesWords(m_bridge, m_valve));
    m_proposal->setWords(proposalWords(m_bridge, m_valve, m_hasNext));
    m_advice->setWork(workingOrder(), m_order.isChanged(), offered());
    m_advice->refresh(m_valve.branch(), m_valve.besideAdvice());
    showEntry();
    showApart();
    if (heightToEntry(AimStripModel::RowCount, false) != before) {
        fit(false);
    }
    emit hintChanged();
}

void AdjustPlace::showHead() {
    const project::Branch& branch = m_bridge.project().branches().at(*m_valve.branch());
    QString title = QString::fromStdString(branch.tag);
    if (!branch.serves.empty()) {
        title += QStringLiteral("   ") + QString::fromStdString(branch.serves);
    }
    m_title->setText(title);
    m_state->setWords(stateWords(m_bridge, m_valve));
    m_basis->setWords(basisWords(m_bridge, m_valve).join('\n'));
    m_basis->setToolTip(m_basis->text());
}

void AdjustPlace::showFigures() {
    const project::Project& project = m_bridge.project();
    const project::Branch& branch = project.branches().at(*m_valve.branch());
    const project::ValveModel& valve = project.valves().at(*branch.valve);
    const bool isSoft = !m_valve.aim().stale.empty();
    const curve::ValveCharacteristic& curve = *project.characteristicOf(branch);
    const QString scale = tr("of %1 %2")
                              .arg(QString::fromStdString(m_valve.settingText(curve.fullyOpen()).text()),
                                   text::nameOf(valve.scale));
    m_setting->show(
        QString::fromStdString(m_valve.settingText(m_valve.setting()).text()),
        {scale,
         m_valve.setting() >= curve.fullyOpen() ? tr("fully open")
         : m_valve.isAtStop()                   ? tr("lowest setting")
         : m_valve.isMoved()
             ? tr("not read here yet")
             : tr("Up, Down %1").arg(QString::fromStdString(m_valve.settingText(m_valve.step()).text()))},
        false);
    const QString unit = text::symbol(text::dpUnit(project, m_bridge.instrument()));
    if (const auto& row = m_valve.row(); row && m_valve.isAimBeyond()) {
        m_aim->show(dpNumber(m_bridge, row->dp),
                    {unit, tr("only %1 available").arg(dpNumber(m_bridge, m_valve.available()->head))}, true);
    } else if (row) {
        m_aim->show(dpNumber(m_bridge, row->dp),
                    {unit, tr("hold %1–%2").arg(dpNumber(m_bridge, row->low), dpNumber(m_bridge, row->high))},
                    isSoft);
    } else {
        m_aim->show(QString(QChar(0x2013)), {unit, tr("the valve is shut")}, true);
    }
    const auto& last = m_valve.last();
    const bool isHere =
        last && !m_valve.tries().empty() && std::abs((last->setting - m_valve.setting()).si()) < 1e-6;
    m_reading->show(last ? readNumber(m_bridge, *last) : QString(QChar(0x2013)),
                    readingNotes(m_bridge, m_valve), !isHere);
    const auto word = m_valve.word();
    m_word->show(word, word ? text::word(*word) : QString(), wordNote(m_bridge, m_valve));
}

void AdjustPlace::showLadder() {
    const quantity::Unit unit = text::dpUnit(m_bridge.project(), m_bridge.instrument());
    if (!m_valve.row()) {
        m_ladder->show(std::nullopt, text::symbol(unit), tr("the valve is shut"));
        return;
    }
    const balancing::AimRow& row = *m_valve.row();
    const auto mark = [&](quantity::PressureDifference dp) {
        return LadderMark{dp.si(), dpNumber(m_bridge, dp)};
    };
    LadderMarks marks;
    marks.aim = mark(row.dp);
    marks.low = mark(row.low);
    marks.high = mark(row.high);
    marks.isSoft = !m_valve.aim().stale.empty();
    const auto& tries = m_valve.tries();
    for (std::size_t i = 0; i < tries.size(); ++i) {
        marks.tries.push_back({tries[i].dp.si(), QString::number(i + 1)});
    }
    m_ladder->show(std::move(marks), text::symbol(unit),
                   tr("aim %1, hold %2 to %3").arg(marks.aim.words, marks.low.words, marks.high.words));
}

void AdjustPlace::showEntry() {
    const QString unit = text::symbol(text::dpUnit(m_bridge.project(), m_bridge.instrument()));
    QString label = tr("&DP %1").arg(unit);
    if (m_what == TypedDp::Reference) {
        const auto tagged = reference();
        label = tr("&DP %1 at reference %2")
                    .arg(unit, tagged ? withoutLetter(QString::fromStdString(
                                            m_bridge.project().branches().at(*tagged).tag))
                                      : QString());
    } else if (m_what == TypedDp::ShutValve) {
        label = tr("&DP %1, valve shut").arg(unit);
    } else if (m_what == TypedDp::RepeatedTry) {
        label = tr("&DP %1, read again").arg(unit);
    }
    m_fieldLabel->setText(label);
    m_settingField->setPlaceholderText(QString::fromStdString(m_valve.settingText(m_valve.setting()).text()));
    const auto following = next();
    m_next->setWords(following
                         ? tr("next: %1, %2")
                               .arg(QString::fromStdString(m_bridge.project().branches()[*following].tag),
                                    shareWords(m_bridge, *following))
                         : tr("no valve is left to adjust"));
    m_hold->setText(following ? tr("Hold Here, Next Valve") : tr("Hold Here"));
    m_hold->setEnabled(!m_bridge.isReadOnly());
    m_field->setEnabled(!m_bridge.isReadOnly());
}

void AdjustPlace::showBranch(const base::Id& branch) {
    m_bridge.selectBranch(branch);
    refreshWhenShown();
}

}  // namespace ww::ui
