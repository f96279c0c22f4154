// The commands of the main window that belong to a review and to the report: comments, history, open items,
// deficiencies, signing.
#include <algorithm>
#include <utility>

#include "core/balancing/review_steps.h"
#include "core/balancing/walk_progress.h"
#include "core/project/review.h"
#include "ui/history_dialog.h"
#include "ui/journal_dialog.h"
#include "ui/main_window.h"
#include "ui/places/job/job_place.h"
#include "ui/places/reading_fix.h"
#include "ui/places/report/report_place.h"
#include "ui/places/report/signing_panel.h"
#include "ui/places/review/review_place.h"
#include "ui/places/walk/walk_place.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

constexpr base::MessageForm kNothingOpen{
    "nothing_open",
    "no comment is open and no item waits; open the next round (Ctrl+Shift+N), or go on with the report "
    "(Alt+7)"};
constexpr base::MessageForm kRoundToClose{
    "nothing_open_but_round", "no comment is open and no item waits; close round {1} with Ctrl+Shift+W"};
constexpr base::MessageForm kUnreadHere{
    "unread_here",
    "not read in round {1}, {2} of {3} valves are; read it, or say why not when the round is closed "
    "(Ctrl+Shift+W)"};
constexpr base::MessageForm kCommentHere{
    "comment_here", "{1} asks: \"{2}\"; correct the reading, or answer on the place Review (Alt+6)"};
constexpr base::MessageForm kCommentsWait{
    "comments_wait",
    "open comments: {1}, the first on {2}; Ctrl+Shift+Down goes to it, and from one to the next along the "
    "route"};
constexpr base::MessageForm kNoBranchInHand{"no_branch_in_hand",
                                            "no valve is in hand; choose one on the place Walk or Review"};

constexpr base::MessageForm kCloseFirst{
    "close_first", "round {1} is open; close it first (Ctrl+Shift+W), then it is sent and decided on"};
constexpr base::MessageForm kSendFirst{
    "send_first",
    "round {1} is not sent; send it first (Ctrl+Alt+R), then a supervisor or engineer accepts it"};
constexpr base::MessageForm kSentAlready{
    "sent_already", "round {1} is sent already; have it accepted or sent back on the place Review (Alt+6)"};
constexpr base::MessageForm kAcceptedAlready{
    "accepted_already",
    "round {1} is accepted already; open the next round (Ctrl+Shift+N), or go on with the report (Alt+7)"};
constexpr base::MessageForm kWithdrawInstead{"withdraw_instead",
                                             "a step of a review is not undone; withdraw it with a reason on "
                                             "the place Review (Alt+6), below the rounds"};

/// Why sending, or accepting, is not the next step of a round; nothing where it is.
const base::MessageForm* notNext(const project::Round& round, bool isSending) {
    switch (round.state) {
        case project::RoundState::Open:
            return &kCloseFirst;
        case project::RoundState::Closed:
        case project::RoundState::SentBack:
            return isSending ? nullptr : &kSendFirst;
        case project::RoundState::Sent:
            return isSending ? &kSentAlready : nullptr;
        case project::RoundState::Accepted:
            break;
    }
    return &kAcceptedAlready;
}

}  // namespace

void MainWindow::connectReviewCommands() {
    onDecision(m_commands->sendRound, &DecisionPanel::send);
    onDecision(m_commands->acceptRound, &DecisionPanel::accept);
    connect(m_commands->comment, &QAction::triggered, this, [this] {
        showPlace(Review);
        review()->comment();
    });
    connect(m_commands->history, &QAction::triggered, this, &MainWindow::showHistory);
    connect(m_commands->journal, &QAction::triggered, this, &MainWindow::showJournal);
    connect(m_commands->nextOpen, &QAction::triggered, this, [this] { goToOpenItem(true); });
    connect(m_commands->previousOpen, &QAction::triggered, this, [this] { goToOpenItem(false); });
    connect(m_commands->deficiency, &QAction::triggered, this, &MainWindow::listDeficiency);
}

const project::Round* MainWindow::roundToDecide() const {
    const auto* review = place() == Review ? there<ReviewPlace>(Review) : nullptr;
    const auto shown = review != nullptr ? review->round() : std::nullopt;
    return shown ? m_bridge.project().rounds().find(*shown) : m_bridge.project().lastRound();
}

void MainWindow::onDecision(QAction* action, void (DecisionPanel::*step)()) {
    connect(action, &QAction::triggered, this, [this, action, step] {
        const project::Round* round = roundToDecide();
        if (round == nullptr) {
            return;
        }
        if (const auto* why = notNext(*round, action == m_commands->sendRound)) {
            raise(base::Fault{why, {}, {std::to_string(round->number)}});
            return;
        }
        const base::Id id = round->id;
        showPlace(Review);
        review()->showRound(id);
        (review()->decision()->*step)();
    });
}

void MainWindow::refreshReviewCommands() {
    // Where another step comes first both say which.
    const bool isWritable = m_bridge.isOpen() && !m_bridge.isReadOnly() && roundToDecide() != nullptr;
    m_commands->sendRound->setEnabled(isWritable);
    m_commands->acceptRound->setEnabled(isWritable);
}

bool MainWindow::isReviewStepNewest() const {
    const project::Round* round = m_bridge.isOpen() ? m_bridge.project().lastRound() : nullptr;
    return round != nullptr && !m_bridge.isReadOnly() && round->state != project::RoundState::Open &&
           round->state != project::RoundState::Closed && !m_bridge.workbook()->newestEntry().canUndo;
}

void MainWindow::tellOfWithdrawing() {
    raise(base::Fault{&kWithdrawInstead, {}, {}});
}

void MainWindow::showHistory() {
    const auto branch = m_bridge.selectedBranch();
    if (!branch || !m_bridge.project().branches().contains(*branch)) {
        raise(base::Fault{&kNoBranchInHand, {}, {}});
        return;
    }
    HistoryDialog(m_bridge, *branch, this).exec();
}

void MainWindow::showJournal() {
    if (m_bridge.isOpen()) {
        JournalDialog(m_bridge, this).exec();
    }
}

void MainWindow::sayNextStep() {
    const project::Project& project = m_bridge.project();
    const project::Round* round = project::roundInHand(project);
    if (round == nullptr) {
        raise(base::Fault{&kNothingOpen, {}, {}});
        return;
    }
    raise(base::Fault{&kRoundToClose, {}, {std::to_string(round->number)}});
}

void MainWindow::tellUnread(const base::Id& branch) {
    const project::Project& project = m_bridge.project();
    const project::Round* round = project::roundInHand(project);
    if (round == nullptr) {
        return;
    }
    const balancing::WalkProgress& progress = m_bridge.walkProgress();
    if (std::find(progress.unread.begin(), progress.unread.end(), branch) != progress.unread.end()) {
        raise(base::Fault{
            &kUnreadHere,
            project.branches().at(branch).tag,
            {std::to_string(round->number), std::to_string(progress.read), std::to_string(progress.all)}});
    }
}

void MainWindow::countOpenComments() {
    const int count = static_cast<int>(project::openComments(m_bridge.project()).size());
    const bool isChanged = m_sideList->setWaiting(Review, count, tr("%n open comment(s)", nullptr, count));
    // One digit has room always: the list keeps its width until a longer count needs more.
    if (isChanged && m_sideList->wantedWidth() > m_sideList->width()) {
        fitSideList();
    }
}

void MainWindow::tellOpenComments() {
    const auto open = project::openComments(m_bridge.project());
    m_isFirstCommentNext = !open.empty();
    if (!open.empty()) {
        raise(base::Fault{&kCommentsWait,
                          {},
                          {std::to_string(open.size()),
                           balancing::placeText(m_bridge.project(), *open.front(), text::wording())}});
    }
}

void MainWindow::showComment(const project::Comment& comment) {
    const project::Project& project = m_bridge.project();
    if (comment.branch && project.branches().contains(*comment.branch)) {
        if (place() != Review) {
            showPlace(Walk);
        }
        m_bridge.selectBranch(comment.branch);
        place() == Review ? review()->showBranch(*comment.branch) : walk()->showBranch(*comment.branch);
    } else if (comment.round && project.rounds().contains(*comment.round)) {
        showPlace(Review);
        review()->showRound(*comment.round);
    }
    raise(base::Fault{&kCommentHere,
                      balancing::placeText(project, comment, text::wording()),
                      {comment.person, comment.text}});
}

void MainWindow::goToOpenItem(bool isForward) {
    const project::Project& project = m_bridge.project();
    const auto comments = project::openComments(project);
    if (std::exchange(m_isFirstCommentNext, false) && isForward && !comments.empty()) {
        showComment(*comments.front());
        return;
    }
    const project::Round* inHand = project::roundInHand(project);
    std::vector<base::Id> doubted;
    if (inHand != nullptr) {
        for (const balancing::DoubtfulReading* doubt : doubtsOf(m_advisor, project, inHand->id)) {
            doubted.push_back(project.branches()[doubt->branch].id);
        }
    }
    const std::vector<base::Id> open = balancing::openBranches(project, doubted);
    if (open.empty()) {
        // A comment on a pump or a round as a whole is at no valve.
        comments.empty() ? sayNextStep() : showComment(*comments.front());
        return;
    }
    const auto order = project.tree().walkingOrder();
    const auto rank = [&](const base::Id& branch) {
        return std::find(order.begin(), order.end(), project.branches().indexOf(branch)) - order.begin();
    };
    const auto selected = m_bridge.selectedBranch();
    const std::ptrdiff_t here = selected && project.branches().contains(*selected)
                                    ? rank(*selected)
                                    : (isForward ? -1 : static_cast<std::ptrdiff_t>(order.size()));
    // From the last on to the first again, and back.
    base::Id target = isForward ? open.front() : open.back();
    for (std::size_t i = 0; i < open.size(); ++i) {
        const base::Id& candidate = isForward ? open[i] : open[open.size() - 1 - i];
        if (isForward ? rank(candidate) > here : rank(candidate) < here) {
            target = candidate;
            break;
        }
    }
    const auto comment = std::find_if(comments.begin(), comments.end(),
                                      [&](const project::Comment* one) { return one->branch == target; });
    if (comment != comments.end()) {
        showComment(**comment);
        return;
    }
    if (place() != Review) {
        showPlace(Walk);
    }
    m_bridge.selectBranch(target);
    place() == Review ? review()->showBranch(target) : walk()->showBranch(target);
    const bool isDoubted = std::find(doubted.begin(), doubted.end(), target) != doubted.end();
    isDoubted ? raise(doubtfulAt(m_advisor, project, target)->why) : tellUnread(target);
}

void MainWindow::listDeficiency() {
    const auto selected = m_bridge.selectedBranch();
    const bool isKnown = selected && m_bridge.project().branches().contains(*selected);
    showPlace(Job);
    job()->addDeficiency(isKnown ? selected : std::nullopt);
}

void MainWindow::connectReportCommands() {
    const auto onReport = [this](QAction* action, auto act) {
        connect(action, &QAction::triggered, this, [this, act] {
            showPlace(Report);
            act();
        });
    };
    onReport(m_commands->exportReport, [this] { report()->exportReport(); });
    onReport(m_commands->signReport, [this] { report()->signing()->sign(); });
    onReport(m_commands->makeCertificate, [this] { report()->signing()->askCertificate(); });
    onReport(m_commands->verifyReport, [this] { report()->verifyReport(); });
}

void MainWindow::connectReadyList(const ReadyList& ready) {
    connect(&ready, &ReadyList::placeWanted, this, [this](ReadyList::Target target) {
        switch (target) {
            case ReadyList::Target::Job:
                // What a report wants of this place is its readiness list.
                showPlace(Job);
                return job()->showReadiness();
            case ReadyList::Target::System:
                return showPlace(System);
            case ReadyList::Target::Walk:
                return showPlace(Walk);
            case ReadyList::Target::Pump:
                return showPlace(Pump);
            case ReadyList::Target::Review:
                return showPlace(Review);
            case ReadyList::Target::Merge:
                return m_commands->decideConflicts->trigger();
        }
    });
    connect(&ready, &ReadyList::branchWanted, this, [this](const base::Id& branch) {
        showPlace(Walk);
        m_bridge.selectBranch(branch);
        walk()->showBranch(branch);
    });
    connect(&ready, &ReadyList::deficiencyWanted, this, [this](const base::Id& branch) {
        m_bridge.selectBranch(branch);
        listDeficiency();
    });
}

}  // namespace ww::ui
