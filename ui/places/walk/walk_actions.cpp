// What the commands of the place Walk do with the valve in hand, and its chart.
#include <QApplication>
#include <QClipboard>
#include <QDragEnterEvent>
#include <QMimeData>
#include <QPlainTextEdit>
#include <algorithm>

#include "core/balancing/advice/advice.h"
#include "core/balancing/aim.h"
#include "core/balancing/standing_readings.h"
#include "ui/charts/chart_view.h"
#include "ui/charts/convergence_chart_data.h"
#include "ui/models/branch_roles.h"
#include "ui/places/reading_fix.h"
#include "ui/places/walk/walk_place.h"
#include "ui/text/format.h"

namespace ww::ui {
namespace {

constexpr base::MessageForm kTypeAgain{
    "type_again", "the next value typed is kept beside the first, the mean counts; type it and press Enter"};
constexpr base::MessageForm kTypeOver{
    "type_over", "the next value typed takes the place of the doubtful one; type it and press Enter"};
constexpr base::MessageForm kTypeFlow{
    "type_flow", "the next flow typed takes the place of the one before; type it and press Enter"};
constexpr base::MessageForm kNoSettingToStep{
    "no_setting_to_step", "this valve has no scale or no setting to step from; type its setting (Tab)"};

}  // namespace

void WalkPlace::readAgain() {
    // Offered for the valve just left, the key goes back to it.
    if (const auto& offered = m_readingNotice.offeredAgain();
        offered && m_model->rowOf(*offered) == m_grid->currentRow() - 1) {
        m_grid->goToRow(m_model->rowOf(*offered), false);
    }
    const auto branch = branchInHand();
    if (!branch) {
        return;
    }
    // A doubtful value must not enter a mean: what is typed now takes its place.
    const balancing::DoubtfulReading* doubtful = doubtfulAt(m_advisor, m_bridge.project(), *branch);
    const project::Round* round = m_bridge.openRoundOrNull();
    const project::Reading* counting =
        round != nullptr ? balancing::countingReading(m_bridge.project(), round->id, *branch) : nullptr;
    const bool isDoubted = m_model->index(m_grid->currentRow(), WalkModel::State).data(StateRole).toInt() ==
                               static_cast<int>(balancing::State::Doubtful) ||
                           (doubtful != nullptr && counting != nullptr &&
                            std::find(doubtful->readings.begin(), doubtful->readings.end(), counting->id) !=
                                doubtful->readings.end());
    const std::string tag = m_bridge.project().branches().at(*branch).tag;
    const bool isFlow = m_model->entryColumn(m_grid->currentRow()) == WalkModel::Flow;
    if (!isDoubted && !isFlow) {
        m_repeatBranch = branch;
    }
    m_lastByMeter.reset();
    m_askedAgain = branch;
    emit m_bridge.messageRaised(base::Fault{isFlow      ? &kTypeFlow
                                            : isDoubted ? &kTypeOver
                                                        : &kTypeAgain,
                                            tag,
                                            {}});
    if (m_isCard) {
        m_card->beginDp();
        return;
    }
    const QString nothing;
    m_grid->beginEdit(m_model->entryCell(m_grid->currentRow()), &nothing);
}

void WalkPlace::takeFix() {
    // The fix belongs to the valve in hand or, right after Enter, to the one just left.
    for (const int row : {m_grid->currentRow(), m_grid->currentRow() - 1}) {
        if (row < 0) {
            continue;
        }
        const base::Id branch = m_model->branchAt(row);
        if (const auto taken = takeFixOf(m_bridge, m_advisor, branch)) {
            if (m_bridge.tell(*taken)) {
                m_grid->flash(row);
                m_readingNotice.tell(branch);
            }
            return;
        }
    }
    emit m_bridge.messageRaised(base::Fault{&kNoFixOffered, {}, {}});
}

void WalkPlace::toggleDoubtful() {
    if (const auto branch = branchInHand()) {
        m_bridge.tell(m_bridge.toggleDoubtful(*branch));
    }
}

void WalkPlace::stepSetting(int steps) {
    const auto branch = branchInHand();
    const project::Round* round = m_bridge.openRoundOrNull();
    if (!branch || round == nullptr) {
        m_bridge.tell(base::Fault{&kNoRoundOpen, {}, {}});
        return;
    }
    const project::Project& project = m_bridge.project();
    const project::Branch& record = project.branches().at(*branch);
    const auto standing = balancing::standingSetting(project, round->id, *branch);
    if (project.characteristicOf(record) == nullptr || !standing) {
        m_bridge.tell(base::Fault{&kNoSettingToStep, record.tag, {}});
        return;
    }
    const quantity::Setting step = balancing::readableStep(project, record);
    const quantity::Setting setting = balancing::steppedSetting(
        project, project.branches().indexOf(*branch), quantity::Setting::si(standing->value()), step, steps);
    m_bridge.tell(m_bridge.storeSetting(*branch, text::setting(setting, project, record)));
}

void WalkPlace::recordNotReadable() {
    if (const auto branch = branchInHand()) {
        m_bridge.tell(m_bridge.storeCannotBeRead(*branch));
    }
}

bool WalkPlace::takesPaste(const QWidget* inHand) const {
    if (m_card != nullptr && inHand == m_card->dp()) {
        return WalkField::isColumn(QApplication::clipboard()->text());
    }
    return qobject_cast<const QLineEdit*>(inHand) == nullptr &&
           qobject_cast<const QPlainTextEdit*>(inHand) == nullptr;
}

void WalkPlace::paste() {
    const QStringList lines = QApplication::clipboard()->text().trimmed().split('\n');
    std::vector<base::Id> branches;
    for (int row = std::max(0, m_grid->currentRow()); row < m_model->rowCount(); ++row) {
        branches.push_back(m_model->branchAt(row));
    }
    const int from = m_grid->currentRow();
    if (m_bridge.tell(m_bridge.storeColumn(branches, lines))) {
        if (m_card != nullptr) {
            m_card->dropTypedDp();
        }
        m_grid->goToRow(std::min(from + static_cast<int>(lines.size()), m_model->rowCount() - 1), false);
    }
}

std::optional<base::Id> WalkPlace::branchAt(const QPoint& point) const {
    if (m_bridge.isReadOnly()) {
        return std::nullopt;
    }
    if (!m_grid->isVisible() ||
        !m_grid->viewport()->rect().contains(m_grid->viewport()->mapFrom(this, point))) {
        return branchInHand();
    }
    const QModelIndex cell = m_grid->indexAt(m_grid->viewport()->mapFrom(this, point));
    return cell.isValid() ? std::optional(m_model->branchAt(cell.row())) : std::nullopt;
}

void WalkPlace::dragEnterEvent(QDragEnterEvent* event) {
    const QList<QUrl> urls = event->mimeData()->urls();
    if (urls.size() == 1 && isPhotoName(urls.front().toLocalFile())) {
        event->acceptProposedAction();
    }
}

void WalkPlace::dragMoveEvent(QDragMoveEvent* event) {
    // Where there is no valve the pointer says that nothing can be dropped.
    event->setAccepted(branchAt(event->position().toPoint()).has_value());
}

void WalkPlace::dropEvent(QDropEvent* event) {
    const auto branch = branchAt(event->position().toPoint());
    if (branch && m_bridge.tellOrClear(
                      keepPhoto(m_bridge, {branch, {}}, event->mimeData()->urls().front().toLocalFile()))) {
        showBranch(*branch);
        event->acceptProposedAction();
    }
}

void WalkPlace::takeMeter(PracticeDesk& desk) {
    const auto branch = branchInHand();
    if (!branch) {
        return;
    }
    // What is typed comes first: it is stored, or refused with its reason.
    if (m_grid->isEditing()) {
        m_grid->commitEdit();
        return;
    }
    if (m_isCard && m_card->isVisible() && m_card->isTyped()) {
        if (m_card->setting()->commit()) {
            m_card->dp()->commit();
        }
        return;
    }
    const int row = m_grid->currentRow();
    const bool isLast = row + 1 == m_model->rowCount();
    // At the end of the route the key does not go on storing at the last valve.
    if (m_bridge.openRoundOrNull() != nullptr && m_lastByMeter == branch && m_repeatBranch != branch &&
        isLast && m_model->unreadAfter(row) < 0) {
        emit m_bridge.messageRaised(base::Fault{&kAllReadByMeter, {}, {}});
        return;
    }
    const auto taken = desk.takeDp(*branch, m_repeatBranch == branch);
    if (!taken) {
        emit m_bridge.messageRaised(taken.fault());
        return;
    }
    m_repeatBranch.reset();
    m_askedAgain.reset();
    m_lastByMeter = branch;
    m_grid->flash(row);
    const bool isDoubtful = m_readingNotice.tell(*branch);
    if (*taken) {
        emit m_bridge.messageRaised(**taken);
    }
    const int next = isLast ? m_model->unreadAfter(row) : row + 1;
    m_grid->goToRow(next, false);
    if (next < 0 && !isDoubtful && !*taken) {
        emit m_bridge.messageRaised(base::Fault{&kAllReadByMeter, {}, {}});
    }
}

bool WalkPlace::isConvergenceShown() const {
    return m_convergence != nullptr && m_content->currentWidget() == m_convergence;
}

void WalkPlace::showConvergence() {
    const project::Project& project = m_bridge.project();
    std::vector<const balancing::Assessment*> rounds;
    for (const std::size_t i : project.roundsByNumber()) {
        rounds.push_back(&m_rounds.shown(project.rounds()[i].id));
    }
    convergence()->setFigure(charts::convergenceChartOver(project, rounds, m_bridge.selectedBranch()));
}

void WalkPlace::toggleConvergence() {
    if (isConvergenceShown()) {
        m_content->setCurrentWidget(m_gridPage);
    } else if (m_content->currentWidget() == m_gridPage) {
        showConvergence();
        m_content->setCurrentWidget(m_convergence);
    }
    takeFocus();
    emit hintChanged();
}

void WalkPlace::toggleTable() {
    if (isConvergenceShown()) {
        m_convergence->toggleTable();
    }
}

}  // namespace ww::ui
