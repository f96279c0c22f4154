// What is kept of the rounds that were judged, and when it is judged anew. Own cases.
#include "ui/assessed_rounds.h"

#include <gtest/gtest.h>

#include "core/balancing/adjusting.h"
#include "core/balancing/share_count.h"
#include "tests/ui/support/desk_window.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

project::Edit commentOn(DeskWindow& desk) {
    project::Comment comment;
    comment.id = desk.bridge().newId();
    comment.round = desk.project().rounds()[0].id;
    comment.branch = desk.project().branchTagged("B-01")->id;
    comment.text = "Which meter?";
    return {"comment", {comment}, {}, true};
}

TEST(AssessedRounds, areKeptUntilAReadingOrTheDesignChanges) {
    DeskWindow desk({.terminals = 6});
    AssessedRounds rounds(desk.bridge());
    const base::Id survey = desk.project().rounds()[0].id;
    const balancing::Assessment* kept = &rounds.of(survey);
    EXPECT_EQ(&rounds.of(survey), kept) << "asked for again";
    const int edition = rounds.edition();
    ASSERT_TRUE(desk.bridge().apply(commentOn(desk)).ok());
    EXPECT_EQ(&rounds.of(survey), kept) << "a comment moves no number";
    EXPECT_EQ(rounds.edition(), edition);
    ASSERT_TRUE(desk.bridge().storeDp(desk.project().branchTagged("B-01")->id, "20.1").ok());
    EXPECT_NE(rounds.edition(), edition);
    const base::Id newest = desk.project().lastRound()->id;
    EXPECT_EQ(rounds.of(newest).readCount, 1U);
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_EQ(rounds.of(newest).readCount, 0U) << "undone";
    project::Branch larger = *desk.project().branchTagged("B-01");
    const auto targetIn = [&](const base::Id& round) {
        return rounds.of(round).branches[desk.project().branches().indexOf(larger.id)].targetShare.si();
    };
    const double target = targetIn(newest);
    larger.designFlow = desk.project().branchTagged("B-02")->designFlow;
    ASSERT_TRUE(desk.bridge().apply({"design flow", {larger}, {}, true}).ok());
    EXPECT_NE(targetIn(newest), target);
    EXPECT_EQ(targetIn(survey), target) << "closed: judged by the design of its closing";
}

TEST(AssessedRounds, ofRoundsBeforeTheOneThatIsReadStand) {
    DeskWindow desk({.terminals = 6, .adjustingRounds = 1});
    AssessedRounds rounds(desk.bridge());
    const base::Id survey = desk.project().rounds()[0].id;
    const base::Id closed = desk.project().rounds()[1].id;
    const balancing::Assessment* ofSurvey = &rounds.of(survey);
    const balancing::Assessment* ofClosed = &rounds.of(closed);
    const base::Id branch = desk.project().branchTagged("B-01")->id;
    ASSERT_TRUE(desk.bridge().storeDp(branch, "20.1").ok());
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_EQ(&rounds.of(survey), ofSurvey);
    EXPECT_EQ(&rounds.of(closed), ofClosed);
    const project::Reading old = desk.project().readings()[desk.project().readingsOf(closed).front()];
    const auto edit =
        balancing::correctReading(desk.project(), old.id, old.dp, old.setting, desk.bridge().context());
    ASSERT_TRUE(edit.ok());
    ASSERT_TRUE(desk.bridge().apply(*edit).ok());
    EXPECT_EQ(&rounds.of(survey), ofSurvey);
    EXPECT_FALSE(rounds.isJudged(closed));
}

TEST(AssessedRounds, ofTheOpenRoundAreShownWithItsGapsFilled) {
    DeskWindow desk({.terminals = 6});
    AssessedRounds rounds(desk.bridge());
    const base::Id open = desk.project().lastRound()->id;
    ASSERT_TRUE(desk.bridge().storeDp(desk.project().branchTagged("B-01")->id, "20.1").ok());
    EXPECT_TRUE(rounds.isJudged(open));
    EXPECT_EQ(balancing::shareCount(rounds.of(open)).onShare, std::nullopt);
    EXPECT_EQ(balancing::shareCount(rounds.shown(open)).onShare,
              balancing::shareCount(desk.bridge().assessment()).onShare);
    EXPECT_TRUE(balancing::shareCount(rounds.shown(open)).onShare.has_value());
    EXPECT_EQ(&rounds.shown(desk.project().rounds()[0].id), &rounds.of(desk.project().rounds()[0].id));
}

TEST(AssessedRounds, sayWhatAssessingSays) {
    DeskWindow desk({.terminals = 6, .adjustingRounds = 1}, false);
    AssessedRounds rounds(desk.bridge());
    for (const project::Round& round : desk.project().rounds()) {
        const balancing::Assessment anew =
            balancing::assess(desk.project(), round.id, {.fillGaps = false, .numbersOnly = true});
        const balancing::Assessment& kept = rounds.of(round.id);
        EXPECT_EQ(kept.roundNumber, anew.roundNumber);
        EXPECT_EQ(kept.spread, anew.spread);
        EXPECT_EQ(kept.onShareCount, anew.onShareCount);
    }
}

TEST(AssessedRounds, ofAnotherJobAreJudgedAnew) {
    DeskWindow desk({.terminals = 6}, false);
    AssessedRounds rounds(desk.bridge());
    EXPECT_EQ(rounds.of(desk.project().rounds()[0].id).terminalCount, 6U);
    const std::string other = desk.folder.file("other.wwj");
    ASSERT_TRUE(desk.bridge().create(QString::fromStdString(other), support::walkJob({.terminals = 4})).ok());
    EXPECT_EQ(rounds.of(desk.project().rounds()[0].id).terminalCount, 4U);
}

}  // namespace
}  // namespace ww::ui
