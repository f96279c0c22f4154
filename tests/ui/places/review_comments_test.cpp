// Comments of the review: written, answered, resolved, gone to; what a round waits for. The source of these
// checks is the interaction design of this project.
#include <gtest/gtest.h>

#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <algorithm>

#include "core/project/review.h"
#include "tests/ui/support/pump_rig.h"
#include "tests/ui/support/review_desk.h"
#include "ui/widgets/hinted_field.h"

namespace ww::ui {
namespace {

using project::RoundState;
using support::DeskWindow;
using support::ReviewDesk;

TEST(ReviewPlace, sendBackWaitsForACommentAndTheTechnicianFindsItAtItsCell) {
    ReviewDesk desk;
    desk.actAs(true);
    desk.review();
    QPushButton* sendBack = desk.button("Send Back");
    EXPECT_FALSE(sendBack->isEnabled());
    EXPECT_TRUE(sendBack->accessibleDescription().contains("no open comment")) << "it says what is missing";
    EXPECT_TRUE(sendBack->accessibleDescription().contains("Ctrl+Alt+C")) << "and what to do";
    desk.comment("B-05", "Meter zeroed?");
    ASSERT_EQ(desk.project().comments().size(), 1U);
    EXPECT_EQ(desk.project().comments()[0].branch, desk.branch("B-05"));
    EXPECT_EQ(desk.project().comments()[0].field, "dp");
    EXPECT_EQ(desk.project().comments()[0].person, "K. Moor");
    EXPECT_TRUE(sendBack->isEnabled());
    desk.comment("B-01", "Valve fully open?");
    sendBack->click();
    EXPECT_EQ(desk.state(), RoundState::SentBack);
    EXPECT_EQ(desk.project().lastRound()->decidedBy, "K. Moor");

    // The technician opens a copy of it on his own laptop.
    const QString copy = QString::fromStdString(desk.folder.file("back.wwj"));
    ASSERT_TRUE(desk.bridge().saveCopy(copy).ok());
    MainWindow technician(Desk{desk.clock, desk.ids, "A. Fields", "LT-2"}, desk.preferences);
    technician.resize(1366, 694);
    technician.show();
    technician.activateWindow();
    ASSERT_TRUE(technician.openFile(copy));
    EXPECT_EQ(technician.notice().toStdString(),
              "Open comments: 2, the first on B-01, DP, round 2; Ctrl+Shift+Down goes to it, and from one to "
              "the next along the route.");
    const auto* places = technician.findChild<QListWidget*>("side_list");
    ASSERT_NE(places, nullptr);
    EXPECT_EQ(places->item(MainWindow::Review)->text(), "6  Review 2");
    EXPECT_TRUE(places->item(MainWindow::Review)
                    ->data(Qt::AccessibleTextRole)
                    .toString()
                    .startsWith("Review, Alt+6, 2 open comment"));
    technician.showPlace(MainWindow::Walk);
    QTest::qWait(0);
    // The first of the route, although it was written last and its valve is in hand already.
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(technician.bridge().selectedBranch(), desk.branch("B-01"));
    EXPECT_TRUE(technician.notice().contains("Valve fully open?")) << technician.notice().toStdString();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(technician.bridge().selectedBranch(), desk.branch("B-05"));
    EXPECT_TRUE(technician.notice().contains("Meter zeroed?")) << technician.notice().toStdString();
    WalkModel& model = *technician.walk()->model();
    const int row = model.rowOf(desk.branch("B-05"));
    EXPECT_TRUE(model.index(row, WalkModel::Dp)
                    .data(Qt::AccessibleTextRole)
                    .toString()
                    .contains("comment: Meter zeroed?"));
    EXPECT_TRUE(model.index(row, WalkModel::Route).data().toString().endsWith("!"));
    // He reads the valve again: a correction, the old value stays, and he is asked for the reason.
    for (const char c : {'3', '3', '.', '1'}) {
        QTest::keyClick(QApplication::focusWidget(), c);
    }
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(technician.notice().contains("Ctrl+M")) << technician.notice().toStdString();
    EXPECT_TRUE(technician.bridge().storeDp(desk.branch("B-05"), "33.3").ok());
    EXPECT_FALSE(technician.bridge().storeDp(desk.branch("B-05"), "not a number").ok());
}

TEST(ReviewPlace, aRoundWithAnOpenCommentIsNotAcceptedUntilItIsResolved) {
    ReviewDesk desk;
    desk.actAs(true);
    desk.review();
    QPushButton* accept = desk.button("Accept Round");
    EXPECT_TRUE(accept->isEnabled());
    desk.comment("B-03", "Which meter?");
    EXPECT_FALSE(accept->isEnabled());
    EXPECT_TRUE(accept->toolTip().contains("Which meter?")) << accept->toolTip().toStdString();
    EXPECT_TRUE(support::textsOf(*desk.window.findChild<DecisionPanel*>()).contains(accept->toolTip()));
    desk.window.commands().acceptRound->trigger();
    EXPECT_EQ(desk.state(), RoundState::Sent);
    EXPECT_TRUE(desk.window.notice().contains("answer and resolve each"))
        << desk.window.notice().toStdString();
    desk.button("Resolve")->click();
    EXPECT_TRUE(accept->isEnabled());
    accept->click();
    EXPECT_EQ(desk.state(), RoundState::Accepted);
}

TEST(ReviewPlace, commentsAreAnsweredAndResolved) {
    ReviewDesk desk;
    desk.actAs(true);
    desk.comment("B-03", "Which meter?");
    auto* panel = desk.window.findChild<CommentPanel*>();
    auto* field = panel->findChild<QLineEdit*>();
    desk.actAs(false);
    field->setText("M-1, as before");
    desk.button("Answer")->click();
    ASSERT_EQ(desk.project().comments().size(), 2U);
    EXPECT_EQ(desk.project().comments()[1].answers, desk.project().comments()[0].id);
    EXPECT_EQ(desk.project().comments()[1].person, "A. Fields");
    EXPECT_TRUE(panel->list()->item(0)->text().contains("M-1, as before"));
    desk.actAs(true);
    desk.button("Resolve")->click();
    EXPECT_TRUE(desk.project().comments()[0].isResolved);
    EXPECT_EQ(desk.project().comments()[0].resolvedBy, "K. Moor");
    EXPECT_TRUE(project::openComments(desk.project(), desk.project().lastRound()->id).empty());
    EXPECT_TRUE(desk.bridge().undo().ok());
    EXPECT_FALSE(desk.project().comments()[0].isResolved) << "a review action is undone as any other";
}

TEST(ReviewPlace, enterAnswersTheCommentThatWasChosenAndSaysSoBefore) {
    ReviewDesk desk;
    desk.actAs(true);
    desk.comment("B-03", "Which meter?");
    desk.comment("B-04", "Zeroed?");
    auto* panel = desk.window.findChild<CommentPanel*>();
    auto* field = panel->findChild<HintedField*>();
    const auto says = [&](const QString& words) {
        const auto labels = panel->findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(),
                           [&](const QLabel* label) { return label->text().contains(words); });
    };
    // The first of the list is in hand, but nobody chose it.
    EXPECT_TRUE(says("Comment on B-04")) << support::textsOf(*panel).toStdString();
    EXPECT_EQ(field->hint(), "new comment, Enter");
    desk.actAs(false);
    panel->list()->setFocus();
    desk.key(panel->list()->item(0)->text().contains("Zeroed?") ? Qt::Key_Down : Qt::Key_Up);
    EXPECT_TRUE(says("Answer K. Moor on B-03")) << support::textsOf(*panel).toStdString();
    EXPECT_EQ(field->hint(), "answer, Enter");
    field->setFocus();
    desk.type("M-1, as before");
    desk.key(Qt::Key_Return);
    ASSERT_EQ(desk.project().comments().size(), 3U);
    EXPECT_EQ(desk.project().comments()[2].answers, desk.project().comments()[0].id);
    // A comment that is begun is a new one again.
    desk.comment("B-05", "And this one?");
    ASSERT_EQ(desk.project().comments().size(), 4U);
    EXPECT_FALSE(desk.project().comments()[3].answers.has_value());
    EXPECT_EQ(desk.project().comments()[3].branch, desk.branch("B-05"));
}

TEST(ReviewPlace, aRoundThatWasSentBackIsSentAgainOnceItsCommentsAreAnswered) {
    ReviewDesk desk;
    desk.actAs(true);
    desk.comment("B-03", "Which meter?");
    desk.button("Send Back")->click();
    desk.actAs(false);
    QPushButton* send = desk.button("Send Round");
    EXPECT_FALSE(send->isEnabled());
    EXPECT_TRUE(send->toolTip().contains("Which meter?")) << send->toolTip().toStdString();
    desk.window.commands().sendRound->trigger();
    EXPECT_EQ(desk.state(), RoundState::SentBack);
    EXPECT_TRUE(desk.window.notice().contains("answer or resolve each"))
        << desk.window.notice().toStdString();
    desk.window.findChild<CommentPanel*>()->findChild<QLineEdit*>()->setText("M-1, as before");
    desk.button("Answer")->click();
    EXPECT_TRUE(send->isEnabled());
    send->click();
    EXPECT_EQ(desk.state(), RoundState::Sent);
}

TEST(ReviewPlace, aDoubtfulCorrectionIsGivenItsReasonBeforeTheRoundIsSentAgain) {
    ReviewDesk desk;
    desk.actAs(true);
    desk.comment("B-03", "Meter zeroed?");
    desk.button("Send Back")->click();
    desk.actAs(false);
    desk.window.findChild<CommentPanel*>()->findChild<QLineEdit*>()->setText("read anew");
    desk.button("Answer")->click();
    ASSERT_TRUE(desk.bridge().storeDp(desk.branch("B-03"), "-3.2").ok());
    desk.window.commands().sendRound->trigger();
    ASSERT_EQ(desk.state(), RoundState::SentBack) << "a doubt without a reason holds it";
    ASSERT_TRUE(desk.window.commands().closeRound->isEnabled());
    desk.key(Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
    QTest::qWait(20);
    auto* reason = support::named<QLineEdit>(desk.window, "Reason for B-03");
    ASSERT_NE(reason, nullptr);
    EXPECT_TRUE(reason->hasFocus());
    for (const QPushButton* button : desk.window.walk()->findChildren<QPushButton*>()) {
        EXPECT_FALSE(button->isVisible() && button->text().startsWith("Close Round"));
    }
    desk.enter("hoses reversed");
    QTest::qWait(20);
    ASSERT_TRUE(desk.bridge().undo().ok());
    ASSERT_TRUE(desk.bridge().redo().ok());
    desk.window.commands().sendRound->trigger();
    EXPECT_EQ(desk.state(), RoundState::Sent) << desk.window.notice().toStdString();
}

TEST(ReviewPlace, afterAnAnswerTheKeysStayInTheComments) {
    ReviewDesk desk;
    desk.actAs(true);
    desk.comment("B-03", "Which meter?");
    auto* panel = desk.window.findChild<CommentPanel*>();
    panel->findChild<QLineEdit*>()->setFocus();
    desk.type("M-1");
    desk.button("Answer")->setFocus();
    desk.key(Qt::Key_Space);
    ASSERT_EQ(desk.project().comments().size(), 2U);
    QCoreApplication::processEvents();
    EXPECT_TRUE(panel->isAncestorOf(QApplication::focusWidget()));
}

}  // namespace
}  // namespace ww::ui
