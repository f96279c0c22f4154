// What closed rounds keep of a design that changes after them: stored, undone, merged. Which design counts is
// a decision of this project; no outside source.
#include "core/workbook/kept_designs.h"

#include <gtest/gtest.h>

#include "core/balancing/assess.h"
#include "core/balancing/design_changes.h"
#include "core/balancing/walk_progress.h"
#include "core/project/earlier_design.h"
#include "tests/core/workbook/two_copies.h"
#include "tests/support/whole_job.h"

namespace ww::workbook {
namespace {

using project::Branch;
using project::RoundState;
using support::Laptop;

quantity::Measured<quantity::VolumeFlow> flowTyped(std::string_view digits, quantity::Unit unit) {
    return quantity::measured<quantity::VolumeFlow>(*base::Decimal::parse(digits), unit);
}

/// A terminal like B-24, added at the end.
base::Id addZone(Laptop& laptop, const std::string& tag = "Z-01") {
    Branch zone = laptop.branch("B-24");
    zone.id = laptop.nextId();
    zone.tag = tag;
    zone.position += 1;
    zone.earlierDesigns.clear();
    laptop.apply("zone", {zone});
    return zone.id;
}

void setDesign(Laptop& laptop, const std::string& tag, const std::string& digits) {
    laptop.change(laptop.branch(tag),
                  [&](Branch& branch) { branch.designFlow = flowTyped(digits, branch.designFlow->unit); });
}

void setBand(Laptop& laptop, const char* percent) {
    laptop.change(laptop.project().job(), [&](project::Job& job) {
        job.matchingBand =
            quantity::measured<quantity::Ratio>(*base::Decimal::parse(percent), quantity::Unit::Percent);
    });
}

/// What a round says: how many terminals, their design, and each share of target.
std::vector<double> saidOf(const Laptop& laptop, int number) {
    const auto round = balancing::assess(laptop.project(), laptop.project().roundNumbered(number)->id,
                                         {.numbersOnly = true});
    std::vector<double> said{static_cast<double>(round.terminalCount),
                             static_cast<double>(round.onShareCount), round.totalDesign.si()};
    for (const balancing::BranchResult& branch : round.branches) {
        if (branch.isInLoop && branch.isTerminal) {
            said.push_back(branch.ofTarget ? branch.ofTarget->si() : -1);
        }
    }
    return said;
}

std::vector<std::string> codesOf(const Laptop& laptop) {
    std::vector<std::string> codes;
    for (const base::Fault& change : balancing::changesSince(laptop.project(), 0)) {
        codes.emplace_back(change.code());
    }
    return codes;
}

using Codes = std::vector<std::string>;

TEST_F(Merge, aClosedRoundIsJudgedByTheDesignOfItsClosing) {
    const auto before = saidOf(a, 1);
    const std::size_t journal = a.job->journal().size();
    const base::Id zone = addZone(a);
    setDesign(a, "B-03", "9.90");
    EXPECT_EQ(a.job->journal().size(), journal + 2) << "kept in the same action";
    EXPECT_EQ(saidOf(a, 1), before);
    EXPECT_EQ(saidOf(a, 2).front(), 25) << "the open round has the design of today";
    EXPECT_EQ(a.project().branches().at(zone).earlierDesigns.size(), 1u);
    EXPECT_EQ(codesOf(a), (Codes{"branches_added_after_round", "design_changed_after_round"}));
    a.open(m_two.fileOf("a"));
    EXPECT_EQ(saidOf(a, 1), before) << "read back from the file";
    expectIntact("a");
}

TEST_F(Merge, undoTakesTheKeptDesignBackWithTheChange) {
    const auto records = support::recordsOf(a.project());
    addZone(a);
    setDesign(a, "B-03", "9.90");
    const auto changed = support::recordsOf(a.project());
    ASSERT_TRUE(a.job->undo().ok());
    ASSERT_TRUE(a.job->undo().ok());
    EXPECT_EQ(support::recordsOf(a.project()), records);
    EXPECT_FALSE(a.project().hasEarlierDesigns());
    ASSERT_TRUE(a.job->redo().ok());
    ASSERT_TRUE(a.job->redo().ok());
    EXPECT_EQ(support::recordsOf(a.project()), changed);
    expectIntact("a");
}

TEST_F(Merge, theFirstDesignIsKeptHoweverOftenItChanges) {
    const auto before = saidOf(a, 1);
    setDesign(a, "B-03", "9.90");
    const base::Id second = a.project().lastRound()->id;
    a.moveRound(second, RoundState::Closed);
    const auto ofSecond = saidOf(a, 2);
    setDesign(a, "B-03", "0.50");
    EXPECT_EQ(saidOf(a, 1), before);
    EXPECT_EQ(saidOf(a, 2), ofSecond);
    EXPECT_EQ(a.branch("B-03").earlierDesigns.size(), 2u);
    EXPECT_EQ(project::changesAfterRounds(a.project()).size(), 2u);
    a.change(a.branch("B-03"), [](Branch& branch) { branch.serves = "attic"; });
    EXPECT_EQ(a.branch("B-03").earlierDesigns.size(), 2u) << "no change of design";
}

TEST_F(Merge, aRoundThatIsOpenedAgainHasTheDesignOfToday) {
    setDesign(a, "B-03", "9.90");
    addZone(a);
    setBand(a, "8");
    const base::Id first = a.project().roundNumbered(1)->id;
    ASSERT_TRUE(a.project().rounds().at(first).matchingBand.has_value());
    a.moveRound(first, RoundState::Open);
    EXPECT_FALSE(a.project().hasEarlierDesigns());
    EXPECT_FALSE(a.project().rounds().at(first).matchingBand.has_value());
    a.moveRound(first, RoundState::Closed);
    EXPECT_EQ(saidOf(a, 1).front(), 25);
    EXPECT_TRUE(codesOf(a).empty());
    expectIntact("a");
}

/// S. Olsen sends a round back that waits for a decision.
void sendBack(Laptop& laptop, const base::Id& id) {
    project::Comment comment;
    comment.id = laptop.nextId();
    comment.round = id;
    comment.text = "B-03 takes 9.90";
    comment.person = "S. Olsen";
    laptop.apply("comment", {comment});
    laptop.change(laptop.project().rounds().at(id), [](project::Round& round) {
        round.state = RoundState::SentBack;
        round.decidedBy = "S. Olsen";
        round.reason = "design";
    });
}

TEST_F(Merge, aRoundThatIsSentBackIsCorrectedByTheDesignOfToday) {
    const base::Id first = a.project().roundNumbered(1)->id;
    a.moveRound(first, RoundState::Sent);
    const auto before = saidOf(a, 1);
    setDesign(a, "B-03", "9.90");
    EXPECT_EQ(saidOf(a, 1), before);
    sendBack(a, first);
    EXPECT_FALSE(a.project().hasEarlierDesigns());
    setDesign(a, "B-04", "9.90");
    EXPECT_FALSE(a.project().hasEarlierDesigns());
    EXPECT_NE(saidOf(a, 1), before);
    expectIntact("a");
}

TEST_F(Merge, aRoundThatIsSentBackAsksForNoBranchThatCameLater) {
    const base::Id first = a.project().roundNumbered(1)->id;
    const auto asked = [&] {
        return balancing::walkProgress(a.project(), a.project().rounds().at(first)).all;
    };
    const std::size_t before = asked();
    a.moveRound(first, RoundState::Sent);
    addZone(a);
    setDesign(a, "B-03", "9.90");
    sendBack(a, first);
    EXPECT_EQ(asked(), before);
    EXPECT_EQ(saidOf(a, 1).front(), 24);
    EXPECT_TRUE(a.branch("B-03").earlierDesigns.empty()) << "it is corrected by the design of today";
    addZone(a, "Z-02");
    EXPECT_EQ(asked(), before) << "nor one that comes while it is corrected";
    a.moveRound(first, RoundState::Sent);
    EXPECT_EQ(asked(), before);
    EXPECT_EQ(saidOf(a, 1).front(), 24);
    EXPECT_EQ(saidOf(a, 2).front(), 26) << "the open round asks for both";
    expectIntact("a");
    a.moveRound(first, RoundState::Closed);
    a.moveRound(first, RoundState::Open);
    EXPECT_EQ(asked(), before + 2) << "opened again, both can be read";
    EXPECT_FALSE(a.project().hasEarlierDesigns());
}

TEST_F(Merge, anAcceptedRoundKeepsItsLimits) {
    const base::Id first = a.project().roundNumbered(1)->id;
    a.moveRound(first, RoundState::Sent);
    a.moveRound(first, RoundState::Accepted);
    const auto before = balancing::assess(a.project(), first);
    const auto onShare = saidOf(a, 1);
    setBand(a, "45");
    EXPECT_EQ(saidOf(a, 1), onShare);
    EXPECT_EQ(balancing::assess(a.project(), first).reasons, before.reasons);
    EXPECT_EQ(project::limitsFor(a.project(), a.project().rounds().at(first)).matchingBand.digits.text(),
              "5");
    const auto told = balancing::changesSince(a.project(), 1);
    ASSERT_EQ(told.size(), 1u);
    EXPECT_EQ(
        base::english(told[0]),
        "limits changed after round 1 was closed: share ±45 %, was ±5 %; of design -10 to +10 %, was -10 to "
        "+10 %; round 1 was accepted by those before");
    setBand(a, "5");
    EXPECT_TRUE(codesOf(a).empty()) << "as it was";
    expectIntact("a");
}

TEST_F(Merge, eachSidesRoundsKeepThatSidesDesign) {
    // A adds a zone and narrows the band; B, who knows nothing of it, closes round 2.
    setBand(a, "3");
    addZone(a);
    setDesign(a, "B-03", "9.90");
    b.moveRound(b.project().lastRound()->id, RoundState::Closed);
    const auto ofB = saidOf(b, 2);
    merge(a, "b");
    EXPECT_EQ(saidOf(a, 2), ofB);
    EXPECT_EQ(saidOf(a, 2).front(), 24);
    expectIntact("a");
    // The other way round the same comes out.
    merge(b, "a");
    EXPECT_EQ(saidOf(b, 2), ofB);
    EXPECT_EQ(saidOf(b, 1), saidOf(a, 1));
    expectIntact("b");
    expectNothingToDo(a, "b");
}

TEST_F(Merge, theSameDesignChangedOnBothSidesIsOneConflictOfItsFlow) {
    const auto before = saidOf(a, 1);
    setDesign(a, "B-03", "9.90");
    setDesign(b, "B-03", "8.80");
    const MergeReport report = mergeBIntoA();
    ASSERT_EQ(report.conflicts.size(), 1u);
    EXPECT_EQ(report.conflicts[0].field, "design_flow");
    const base::Id second = a.project().lastRound()->id;
    a.moveRound(second, RoundState::Closed);
    const auto ofSecond = saidOf(a, 2);
    ASSERT_TRUE(a.job->choose(report.conflicts[0].id, project::ConflictChoice::Theirs).ok());
    EXPECT_EQ(a.branch("B-03").designFlow->digits.text(), "8.80");
    EXPECT_EQ(saidOf(a, 1), before);
    EXPECT_EQ(saidOf(a, 2), ofSecond) << "closed while ours stood";
    expectIntact("a");
}

}  // namespace
}  // namespace ww::workbook
