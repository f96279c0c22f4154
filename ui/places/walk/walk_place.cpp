#include "ui/places/walk/walk_place.h"

#include <QRegularExpression>
#include <algorithm>

#include "core/balancing/standing_readings.h"
#include "core/balancing/walk_forms.h"
#include "core/balancing/walk_progress.h"
#include "ui/charts/chart_view.h"
#include "ui/places/reading_fix.h"
#include "ui/text/format.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

/// Branches whose reading of the round is doubtful, by itself or beside the others: those that the closing of
/// the round lists as such.
std::size_t countDoubts(const LoopAdvisor& advisor, const project::Project& project,
                        const balancing::Assessment& all) {
    const auto own =
        std::count_if(all.branches.begin(), all.branches.end(), [](const balancing::BranchResult& branch) {
            return branch.state == balancing::State::Doubtful && !branch.isFromEarlierRound;
        });
    return static_cast<std::size_t>(own) +
           (all.round ? doubtsOf(advisor, project, *all.round).size() : std::size_t{0});
}

constexpr base::MessageForm kValveNotFound{
    "valve_not_found", "no valve of the route is called \"{1}\"; type its tag or its number"};

constexpr base::MessageForm kFlowWithoutMethod{"flow_without_method",
                                               "the flow is stored, but not how it was measured; write that "
                                               "into its note (Shift+Enter, Ctrl+M), or choose "
                                               "the flow meter before you read (menu Round)"};

/// Whether the counting reading of a branch is a flow that names neither its meter nor, in a note, its
/// method.
bool isMethodMissing(const project::Project& project, const base::Id& branch) {
    const project::Reading* reading = balancing::countingReading(project, project.lastRound()->id, branch);
    return reading != nullptr && reading->flow && !reading->dp && !reading->instrument &&
           reading->note.empty();
}

}  // namespace

void WalkPlace::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    m_grid->setTokens(tokens, m_metrics);
    if (m_card != nullptr) {
        m_card->setTokens(tokens, m_metrics);
    }
    m_valve->setTokens(tokens, m_metrics);
    if (m_convergence != nullptr) {
        m_convergence->setTokens(tokens);
    }
    refreshTotals();
}

void WalkPlace::takeFocus() {
    if (m_side->currentWidget() == m_opening) {
        m_opening->begin();
    } else if (m_side->currentWidget() == m_notes) {
        m_notes->begin();
    } else if (m_content->currentWidget() == m_gridPage) {
        focusEntry();
    } else if (isConvergenceShown()) {
        m_convergence->setFocus(Qt::OtherFocusReason);
    }
}

void WalkPlace::focusEntry() {
    m_isCard ? m_card->takeFocus() : m_grid->setFocus(Qt::OtherFocusReason);
}

void WalkPlace::refresh(const project::ChangeSet& changes) {
    if (changes.isEmpty()) {
        m_repeatBranch.reset();
        m_askedAgain.reset();
        if (m_card != nullptr) {
            m_card->forgetTyped();
        }
        showPanel(m_valve);
    }
    if (changes.isEmpty() || !m_grid->currentIndex().isValid()) {
        m_grid->goToRow(std::max(0, rowToBeginAt()), false);
    }
    showWhatThereIs();
    refreshTotals();
}

int WalkPlace::rowToBeginAt() const {
    if (const auto selected = m_bridge.selectedBranch()) {
        return m_model->rowOf(*selected);
    }
    const bool isWalked = m_bridge.openRoundOrNull() != nullptr && !m_bridge.walkProgress().unread.empty();
    return isWalked ? m_model->rowOf(m_bridge.walkProgress().unread.front()) : 0;
}

void WalkPlace::showWhatThereIs() {
    const project::Project& project = m_bridge.project();
    const project::Round* last = project.lastRound();
    const bool isOpen = m_bridge.openRoundOrNull() != nullptr;
    QString missing;
    if (!m_bridge.isOpen()) {
        missing =
            tr("No workbook is open. Open one (Ctrl+O), make a new job (Ctrl+N), or practice on a "
               "simulated building (Ctrl+Shift+P). F1 shows the handbook.");
    } else if (m_model->rowCount() == 0) {
        missing = tr("No valve to read yet. Add the branches in System (Alt+2).");
    } else if (last == nullptr) {
        missing = tr("No round yet. Open Round 1 (Ctrl+Shift+N).");
    }
    m_empty->setText(missing);
    if (!missing.isEmpty() || !isConvergenceShown()) {
        m_content->setCurrentWidget(missing.isEmpty() ? static_cast<QWidget*>(m_gridPage) : m_empty);
    } else {
        showConvergence();
    }
    m_roundButton->setText(isOpen            ? tr("Close Round %1…").arg(last->number)
                           : last == nullptr ? tr("Open Round 1…")
                                             : tr("Open Round %1…").arg(last->number + 1));
    m_roundButton->setEnabled(!m_bridge.isReadOnly() && m_model->rowCount() > 0);
    m_roundButton->setVisible(m_side->currentWidget() == m_valve);
    m_find->setEnabled(missing.isEmpty());
}

void WalkPlace::showPanel(QWidget* panel) {
    m_side->setCurrentWidget(panel);
    m_roundButton->setVisible(panel == m_valve);
    arrange();
    emit hintChanged();
}

bool WalkPlace::takesReadings() const {
    return !m_bridge.isReadOnly() && m_bridge.openRoundOrNull() != nullptr && branchInHand() &&
           m_content->currentWidget() == m_gridPage && m_side->currentWidget() == m_valve;
}

void WalkPlace::refreshTotals() {
    const balancing::Assessment& all = m_bridge.assessment();
    const project::Project& project = m_bridge.project();
    // Figures that rest partly on an earlier round are marked and drawn soft.
    const QString about = all.isComplete ? QString() : QStringLiteral("~");
    const QString color = (all.isComplete ? m_tokens.ink : m_tokens.soft).name();
    const project::Round* open = m_bridge.openRoundOrNull();
    if (open != nullptr && m_bridge.walkProgress().read == 0) {
        // Every figure would be that of the round before.
        m_totals->setText(tr("Round %1: nothing read yet").arg(open->number));
        return;
    }
    QStringList parts;
    const auto part = [&](const QString& label, QString value) {
        // A number keeps its unit beside it.
        static const QRegularExpression kBeforeUnit(QStringLiteral("(?<=\\d) (?=\\S+$)"));
        value.replace(kBeforeUnit, QString(QChar::Nbsp));
        parts << QStringLiteral("%1 <b style='color:%2'>%3</b>").arg(label.toHtmlEscaped(), color, value);
    };
    if (all.totalFlow) {
        const QString total =
            about + text::flow(*all.totalFlow, project) + QChar(0xA0) + text::symbol(text::flowUnit(project));
        const std::size_t doubtful = balancing::doubtfulInTotal(all);
        part(tr("total flow"),
             doubtful > 0 ? tr("%1, %2 doubtful in it").arg(total, QString::number(doubtful)) : total);
        if (all.totalDesign.si() > 0.0) {
            part(tr("of design"),
                 about + text::percent(quantity::Ratio::si(*all.totalFlow / all.totalDesign)) + tr(" %"));
        }
    }
    if (all.round) {
        const balancing::ShareCount count = balancing::shareCount(all);
        if (!count.isComplete()) {
            part(tr("terminals read"), QStringLiteral("%1/%2").arg(count.read).arg(count.all));
        }
        part(tr("on share"), text::onShare(count));
    }
    const auto carried = std::count_if(
        all.branches.begin(), all.branches.end(),
        [](const balancing::BranchResult& branch) { return branch.isTerminal && branch.isFromEarlierRound; });
    if (carried > 0) {
        part(tr("carried over"), tr("%1 of %2 terminals").arg(carried).arg(all.terminalCount));
    }
    if (all.spread) {
        part(tr("spread"), about + text::percent(*all.spread) + tr(" %"));
    }
    if (const std::size_t doubts = countDoubts(m_advisor, project, all); doubts > 0) {
        part(tr("doubts"), QString::number(doubts));
    }
    if (all.oldestReading && open != nullptr) {
        part(tr("oldest reading"), text::age(*all.oldestReading, m_bridge.now()));
    }
    m_totals->setText(parts.join(QStringLiteral("&nbsp;&nbsp; ")));
}

std::optional<base::Id> WalkPlace::branchInHand() const {
    const int row = m_grid->currentRow();
    return row >= 0 ? std::optional(m_model->branchAt(row)) : std::nullopt;
}

bool WalkPlace::isReadAnew(const QModelIndex& cell) const {
    if (cell.column() == WalkModel::Setting) {
        return false;
    }
    const base::Id branch = m_model->branchAt(cell.row());
    const project::Round* round = m_bridge.project().lastRound();
    if (m_repeatBranch == branch || round == nullptr) {
        return m_repeatBranch == branch;
    }
    const project::Reading* standing = balancing::countingReading(m_bridge.project(), round->id, branch);
    return standing != nullptr && m_bridge.isWithAnotherMeter(*standing);
}

bool WalkPlace::store(const QModelIndex& cell, const QString& text) {
    const base::Id branch = m_model->branchAt(cell.row());
    if (text.trimmed().isEmpty()) {
        return true;  // Enter alone walks past
    }
    const bool isSetting = cell.column() == WalkModel::Setting;
    const bool isFlow = cell.column() == WalkModel::Flow;
    const bool isRead = text.trimmed().compare(QStringLiteral("x"), Qt::CaseInsensitive) != 0;
    const base::Outcome done = isSetting                  ? m_bridge.storeSetting(branch, text)
                               : !isRead                  ? m_bridge.storeCannotBeRead(branch)
                               : isFlow                   ? m_bridge.storeFlow(branch, text)
                               : m_repeatBranch == branch ? m_bridge.storeRepeat(branch, text)
                                                          : m_bridge.storeDp(branch, text);
    if (!done) {
        // It may be read in another place, where the cell is not seen.
        base::Fault refusal = done.fault();
        if (refusal.subject.empty()) {
            refusal.subject = m_bridge.project().branches().at(branch).tag;
        }
        return m_bridge.tell(refusal);
    }
    if (!isSetting && !isFlow && isRead) {
        m_repeatBranch.reset();
    }
    if (!isSetting) {
        m_askedAgain.reset();
    }
    m_grid->flash(cell.row());
    const bool isDoubtful = m_readingNotice.tell(branch);
    const bool isWithoutMethod = !isDoubtful && isMethodMissing(m_bridge.project(), branch);
    if (isWithoutMethod) {
        emit m_bridge.messageRaised(
            base::Fault{&kFlowWithoutMethod, m_bridge.project().branches().at(branch).tag, {}});
    }
    const project::Round& last = *m_bridge.project().lastRound();
    if (last.state == project::RoundState::Closed) {
        emit m_bridge.messageRaised(base::Fault{&kClosedCorrected, {}, {std::to_string(last.number)}});
    } else if (last.state == project::RoundState::SentBack && !isDoubtful && !isWithoutMethod) {
        emit m_bridge.messageRaised(base::Fault{&kBackCorrected, {}, {std::to_string(last.number)}});
    }
    return true;
}

void WalkPlace::findValve() {
    m_find->setFocus(Qt::ShortcutFocusReason);
    m_find->selectAll();
}

void WalkPlace::jump() {
    const int row = m_model->rowFound(m_find->text());
    if (row < 0) {
        emit m_bridge.messageRaised(base::Fault{&kValveNotFound, {}, {m_find->text().toStdString()}});
        m_find->selectAll();
        return;
    }
    // Setting a text also ends the line's own undo: a tag that was found does not come back.
    m_find->setText(QString());
    m_grid->goToRow(row, true);
    focusEntry();
}

void WalkPlace::editNote() {
    showPanel(notes());
    m_notes->begin();
}

void WalkPlace::beginRound() {
    if (const project::Round* open = m_bridge.openRoundOrNull()) {
        emit m_bridge.messageRaised(
            base::Fault{&balancing::kAnotherRoundOpen, {}, {std::to_string(open->number)}});
        return;
    }
    showPanel(opening());
    m_opening->begin();
}

void WalkPlace::beginClosing() {
    listOpenItems(false);
}

void WalkPlace::listOpenItems(bool isOutOfWalk) {
    // A correction may be doubtful too: without a reason its round could not be sent.
    const project::Round* round = m_bridge.roundToCorrectOrNull();
    if (round == nullptr || (round->state != project::RoundState::Open &&
                             balancing::openItems(m_bridge.project(), round->id).empty())) {
        emit m_bridge.messageRaised(base::Fault{&kNoRoundOpen, {}, {}});
        return;
    }
    showPanel(closing());
    m_closing->begin(isOutOfWalk);
}

void WalkPlace::markNotTurned() {
    if (m_bridge.notTurned().empty() || m_bridge.tell(m_bridge.storeNotTurned())) {
        beginClosing();
    }
}

void WalkPlace::showBranch(const base::Id& branch) {
    m_grid->goToRow(m_model->rowOf(branch), false);
}

}  // namespace ww::ui
