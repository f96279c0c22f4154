// The steps of a round on the place Review: sent, accepted, sent back, withdrawn, and who may. The source of
// these checks is the interaction design of this project.
#include "ui/places/review/review_place.h"

#include <gtest/gtest.h>

#include <QPushButton>

#include "core/project/review.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/pump_rig.h"
#include "tests/ui/support/review_desk.h"
#include "ui/places/job/job_place.h"

namespace ww::ui {
namespace {

using project::RoundState;
using support::DeskWindow;
using support::ReviewDesk;

TEST(ReviewDecision, aRoundIsSentAndAcceptedFromTheMenuAndWithdrawnNotUndone) {
    ReviewDesk desk(false);
    desk.actAs(false);
    desk.window.showPlace(MainWindow::Walk);
    const Commands& commands = desk.window.commands();
    ASSERT_TRUE(commands.acceptRound->isEnabled()) << "it has something to say";
    commands.acceptRound->trigger();
    EXPECT_EQ(desk.state(), RoundState::Closed);
    EXPECT_TRUE(desk.window.notice().contains("send it first")) << desk.window.notice().toStdString();
    commands.sendRound->trigger();
    EXPECT_EQ(desk.state(), RoundState::Sent);
    EXPECT_EQ(desk.window.place(), MainWindow::Review) << "where it can be seen";
    commands.sendRound->trigger();
    EXPECT_EQ(desk.state(), RoundState::Sent);
    EXPECT_TRUE(desk.window.notice().contains("is sent already")) << desk.window.notice().toStdString();
    ASSERT_TRUE(commands.undo->isEnabled()) << "it has something to say";
    commands.undo->trigger();
    EXPECT_EQ(desk.state(), RoundState::Sent);
    EXPECT_TRUE(desk.window.notice().contains("withdraw")) << desk.window.notice().toStdString();
    commands.acceptRound->trigger();
    EXPECT_TRUE(desk.window.notice().contains("K. Moor"))
        << "who may: " << desk.window.notice().toStdString();
    desk.actAs(true);
    EXPECT_EQ(desk.window.notice(), "") << "somebody who may is at the desk";
    commands.acceptRound->trigger();
    EXPECT_EQ(desk.state(), RoundState::Accepted);
    for (QAction* action : {commands.sendRound, commands.acceptRound}) {
        emit desk.bridge().messageCleared();
        action->trigger();
        EXPECT_TRUE(desk.window.notice().contains("accepted already")) << desk.window.notice().toStdString();
    }
}

TEST(ReviewDecision, whatWasSaidOfARoundIsOverWhenAnotherIsChosen) {
    ReviewDesk desk;
    desk.actAs(true);
    desk.review();
    desk.window.commands().sendRound->trigger();
    ASSERT_TRUE(desk.window.notice().contains("is sent already")) << desk.window.notice().toStdString();
    for (QTableView* table : desk.window.findChildren<QTableView*>()) {
        if (table->accessibleName() == "Rounds") {
            table->setCurrentIndex(table->model()->index(0, 0));
        }
    }
    EXPECT_EQ(desk.window.notice(), "");
}

TEST(ReviewDecision, whereNobodyMayDecideAButtonLeadsToThePeopleOfTheJob) {
    ReviewDesk desk;
    desk.actAs(true);
    project::Person boss = *project::decidersOf(desk.project(), *desk.project().lastRound()).front();
    boss.role = project::PersonRole::Technician;
    ASSERT_TRUE(desk.bridge().apply({"role", {boss}, {}, true}).ok());
    desk.review();
    EXPECT_FALSE(desk.button("Accept Round")->isEnabled());
    QPushButton* people = desk.button("To the People of the Job");
    ASSERT_NE(people, nullptr);
    people->click();
    EXPECT_EQ(desk.window.place(), MainWindow::Job);
    const auto* table = support::named<QTableView>(*desk.window.job(), "People");
    ASSERT_NE(table, nullptr);
    EXPECT_TRUE(table->hasFocus());
    boss.role = project::PersonRole::Engineer;
    ASSERT_TRUE(desk.bridge().apply({"role", {boss}, {}, true}).ok());
    desk.review();
    EXPECT_TRUE(desk.button("Accept Round")->isEnabled());
    EXPECT_FALSE(people->isVisible());
}

TEST(ReviewDecision, theButtonsOfADecisionStayWhereTheyAre) {
    ReviewDesk desk;
    desk.actAs(true);
    desk.review();
    const auto places = [&] {
        QCoreApplication::processEvents();
        std::vector<QPoint> all;
        for (const char* text : {"Send Round", "Accept Round", "Withdraw", "Send Back"}) {
            all.push_back(desk.button(text)->mapTo(&desk.window, QPoint()));
        }
        return all;
    };
    const auto before = places();
    desk.comment("B-03", "Which meter was this read with, and was its zero looked at before the walk began?");
    EXPECT_EQ(places(), before) << "a reason more";
    desk.actAs(false);
    EXPECT_EQ(places(), before) << "and a button to change the person";
    desk.actAs(true);
    desk.button("Send Back")->click();
    EXPECT_EQ(places(), before);
}

TEST(ReviewDecision, afterADecisionTheKeysAreInTheListOfRoundsAndNotOnTheNextButton) {
    ReviewDesk desk;
    desk.actAs(true);
    desk.comment("B-03", "Which meter?");
    desk.button("Resolve")->click();
    auto* panel = desk.window.findChild<DecisionPanel*>();
    const auto* rounds = support::named<QTableView>(desk.review(), "Rounds");
    ASSERT_NE(rounds, nullptr);
    const auto press = [&](const QString& text) {
        desk.button(text)->setFocus();
        desk.key(Qt::Key_Return);
        QCoreApplication::processEvents();
        EXPECT_TRUE(rounds->hasFocus()) << text.toStdString();
    };
    press("Accept Round");
    EXPECT_EQ(desk.state(), RoundState::Accepted);
    panel->findChild<QLineEdit*>()->setFocus();
    desk.type("wrong meter");
    desk.key(Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), desk.button("Withdraw"));
    press("Withdraw");
    EXPECT_EQ(desk.state(), RoundState::Sent);
    desk.key(Qt::Key_Return);
    EXPECT_EQ(desk.state(), RoundState::Sent) << "nothing is sent back by a second press";
    const QString said = support::textsOf(*panel);
    EXPECT_TRUE(said.contains("sent by A. Fields")) << said.toStdString();
    const qsizetype withdrawn = said.indexOf("withdrawn by K. Moor, ");
    ASSERT_GE(withdrawn, 0) << said.toStdString();
    EXPECT_TRUE(said.mid(withdrawn).section('\n', 0, 0).endsWith("reason: wrong meter"))
        << said.toStdString();
    desk.comment("B-03", "And its zero?");
    press("Send Back");
    EXPECT_EQ(desk.state(), RoundState::SentBack);
}

TEST(ReviewDecision, anOpenRoundSaysThatItIsClosedFirst) {
    DeskWindow desk({.terminals = 6});
    desk.window.showPlace(MainWindow::Review);
    QCoreApplication::processEvents();
    for (QAction* action : {desk.window.commands().sendRound, desk.window.commands().acceptRound}) {
        ASSERT_TRUE(action->isEnabled()) << "it has something to say";
        emit desk.bridge().messageCleared();
        action->trigger();
        EXPECT_TRUE(desk.window.notice().contains("close it first")) << desk.window.notice().toStdString();
    }
    EXPECT_EQ(desk.project().lastRound()->state, RoundState::Open);
    // Nothing is read in it: what stands in for its readings is neither a state nor a spread.
    ReviewPlace& place = *desk.window.review();
    const TextRow row = place.comparison()->row(0);
    EXPECT_TRUE(row.cells.value(ReviewPlace::State).replace(QChar(QChar::Nbsp), ' ').endsWith("Not read"))
        << row.cells.value(ReviewPlace::State).toStdString();
    const auto* rounds = support::named<QTableView>(place, "Rounds");
    EXPECT_EQ(rounds->model()->index(1, 3).data().toString(), "");
    EXPECT_NE(rounds->model()->index(0, 3).data().toString(), "");
}

}  // namespace
}  // namespace ww::ui
