// Where both sides changed the same, both values stay until a person picks one. Which side stands until then
// is a decision of this project; no outside source.
#include <gtest/gtest.h>

#include "core/balancing/standing_readings.h"
#include "core/workbook/merge_settlement.h"
#include "tests/core/workbook/two_copies.h"

namespace ww::workbook {
namespace {

using project::ConflictChoice;
using project::MergeConflict;
using project::ReadingStatus;
using project::RoundState;
using support::Laptop;

TEST_F(Merge, bothValuesOfEachOfThreeDifferingStayWhicheverIsChosen) {
    for (int i = 6; i <= 8; ++i) {
        a.read(support::walkTag(i), "30." + std::to_string(i));
        m_stored["30." + std::to_string(i)] = a.clock.now();
        b.clock.advance(std::chrono::minutes(7));
        b.read(support::walkTag(i), "40." + std::to_string(i));
        m_stored["40." + std::to_string(i)] = b.clock.now();
    }
    ASSERT_EQ(mergeBIntoA().conflicts.size(), 3u);
    const base::Id round = a.project().lastRound()->id;
    for (int i = 6; i <= 8; ++i) {
        const std::string tag = support::walkTag(i);
        SCOPED_TRACE(tag);
        const bool isTheirs = i == 7;
        const std::string ours = "30." + std::to_string(i);
        const std::string theirs = "40." + std::to_string(i);
        const MergeConflict conflict = *conflictOf(openConflicts(a.project()), tag + ", DP, round 2");
        EXPECT_EQ(conflict.choice, ConflictChoice::Open);
        EXPECT_EQ(valuesOf(a, tag), Values({ours, theirs}));
        ASSERT_TRUE(
            a.job->choose(conflict.id, isTheirs ? ConflictChoice::Theirs : ConflictChoice::Ours).ok());
        // What was chosen stands by itself; the other is struck, not gone.
        const auto standing = balancing::standingReadings(a.project(), round, a.branch(tag).id);
        ASSERT_EQ(standing.size(), 1u);
        EXPECT_EQ(standing[0]->dp->text(), (isTheirs ? theirs : ours) + " kPa");
        EXPECT_EQ(balancing::countingReading(a.project(), round, a.branch(tag).id), standing[0]);
        EXPECT_EQ(valuesOf(a, tag), Values({ours, theirs}));
        expectInHistory(tag, ours, theirs, !isTheirs);
        const MergeConflict& decided = a.project().mergeConflicts().at(conflict.id);
        EXPECT_EQ(decided.ours, ours + " kPa, setting 4");
        EXPECT_EQ(decided.theirs, theirs + " kPa, setting 4");
        EXPECT_EQ(decided.decidedBy, "A. Fields");
        EXPECT_TRUE(decided.decided.has_value());
    }
    EXPECT_TRUE(openConflicts(a.project()).empty());
    expectIntact("a");
}

TEST_F(Merge, aFieldThatBothChangedKeepsBothValuesUntilChosen) {
    a.change(a.branch("B-02"), [](project::Branch& branch) { branch.serves = "Kitchen"; });
    b.change(b.branch("B-02"), [](project::Branch& branch) {
        branch.serves = "Laundry";
        branch.setting = *base::Decimal::parse("2.5");
    });
    const MergeReport report = mergeBIntoA();
    ASSERT_EQ(report.conflicts.size(), 1u);
    const MergeConflict& conflict = report.conflicts[0];
    EXPECT_EQ(conflict.place, "B-02, serves");
    EXPECT_EQ(conflict.ours, "Kitchen");
    EXPECT_EQ(conflict.theirs, "Laundry");
    EXPECT_EQ(conflict.ourPerson, "A. Fields");
    EXPECT_EQ(conflict.theirPerson, "K. Meyer");
    EXPECT_EQ(conflict.theirTime->text(), "2026-03-02T08:01:00Z");
    EXPECT_EQ(a.branch("B-02").serves, "Kitchen");
    EXPECT_EQ(a.branch("B-02").setting->text(), "2.5") << "what does not conflict is taken";
    ASSERT_TRUE(a.job->choose(conflict.id, ConflictChoice::Both).ok());
    EXPECT_EQ(a.branch("B-02").serves, "Kitchen\nLaundry");
    ASSERT_TRUE(a.job->undo().ok());
    ASSERT_TRUE(a.job->choose(conflict.id, ConflictChoice::Theirs).ok());
    EXPECT_EQ(a.branch("B-02").serves, "Laundry");
    expectIntact("a");
    // The other laptop learns of the choice.
    a.job.reset();
    const MergeReport back = merge(b, "a");
    EXPECT_TRUE(back.conflicts.empty());
    EXPECT_EQ(b.branch("B-02").serves, "Laundry");
    EXPECT_TRUE(openConflicts(b.project()).empty());
    expectIntact("b");
}

TEST_F(Merge, aChoiceForOursReachesTheOtherLaptopToo) {
    a.change(a.branch("B-02"), [](project::Branch& branch) { branch.serves = "Kitchen"; });
    b.change(b.branch("B-02"), [](project::Branch& branch) { branch.serves = "Laundry"; });
    const base::Id conflict = mergeBIntoA().conflicts.at(0).id;
    ASSERT_TRUE(a.job->choose(conflict, ConflictChoice::Ours).ok());
    a.job.reset();
    EXPECT_TRUE(merge(b, "a").conflicts.empty());
    EXPECT_EQ(b.branch("B-02").serves, "Kitchen");
    EXPECT_TRUE(openConflicts(b.project()).empty());
}

TEST_F(Merge, digitsAndUnitAreOneValue) {
    a.change(a.branch("B-02"),
             [](project::Branch& branch) { branch.designFlow->digits = *base::Decimal::parse("1.11"); });
    b.change(b.branch("B-02"),
             [](project::Branch& branch) { branch.designFlow->unit = quantity::Unit::LitrePerSecond; });
    const std::string digits = b.branch("B-02").designFlow->digits.text();
    const MergeReport report = mergeBIntoA();
    ASSERT_EQ(report.conflicts.size(), 1u);
    EXPECT_EQ(report.conflicts[0].ours, "1.11 m3/h");
    EXPECT_EQ(report.conflicts[0].theirs, digits + " L/s");
    EXPECT_EQ(a.branch("B-02").designFlow->text(), "1.11 m3/h");
}

TEST_F(Merge, tablesOfRowsAreOneValue) {
    const auto changeRow = [](Laptop& laptop, std::size_t row, const char* coefficient) {
        laptop.change(laptop.project().valves()[0], [&](project::ValveModel& valve) {
            valve.rows[row].coefficient = *base::Decimal::parse(coefficient);
        });
    };
    changeRow(a, 1, "1.12");
    changeRow(b, 3, "4.15");
    const MergeReport report = mergeBIntoA();
    ASSERT_EQ(report.conflicts.size(), 1u);
    EXPECT_EQ(a.project().valves()[0].rows[3].coefficient.text(), "4.1");
    ASSERT_TRUE(a.job->choose(report.conflicts[0].id, ConflictChoice::Theirs).ok());
    EXPECT_EQ(a.project().valves()[0].rows[1].coefficient.text(), "1.1");
    EXPECT_EQ(a.project().valves()[0].rows[3].coefficient.text(), "4.15");
    expectIntact("a");
}

void eraseBranch(Laptop& laptop, std::string_view tag) {
    const base::Id id = laptop.branch(tag).id;
    std::vector<project::RecordRef> erase;
    for (const project::Reading& reading : laptop.project().readings()) {
        if (reading.branch == id) {
            erase.push_back({project::RecordKind::Reading, reading.id});
        }
    }
    erase.push_back({project::RecordKind::Branch, id});
    laptop.apply("erase", {}, erase);
}

TEST(MergeRemoval, whatOneRemovedAndTheOtherUsedIsKeptUntilChosen) {
    // Without a survey: readings of a closed round are not removed.
    for (const bool isRemovedHere : {true, false}) {
        support::TemporaryFolder folder;
        Laptop a("A. Fields", "LT-1", 2'000'000);
        Laptop b("K. Meyer", "LT-2", 3'000'000);
        auto made =
            Workbook::create(folder.file("a.wwj"), support::walkJob({.hasSurvey = false}), a.session());
        ASSERT_TRUE(made.ok());
        a.job = std::move(*made);
        a.openRound();
        a.read("B-02", "20.5");
        std::filesystem::copy_file(folder.file("a.wwj"), folder.file("b.wwj"));
        b.open(folder.file("b.wwj"));
        Laptop& remover = isRemovedHere ? a : b;
        Laptop& user = isRemovedHere ? b : a;
        const base::Id branch = a.branch("B-02").id;
        eraseBranch(remover, "B-02");
        const base::Id reading = user.read("B-02", "21.5");
        auto report = a.job->merge(folder.file("b.wwj"));
        ASSERT_TRUE(report.ok()) << base::english(report.fault());
        ASSERT_EQ(report->conflicts.size(), 1u);
        EXPECT_EQ(report->conflicts[0].place, "B-02, removed");
        EXPECT_EQ(report->conflicts[0].ours, isRemovedHere ? "removed" : "kept, changed or used");
        EXPECT_TRUE(a.project().branches().contains(branch));
        EXPECT_TRUE(a.project().readings().contains(reading));
        EXPECT_EQ(a.project().readings().size(), 2u) << "the branch keeps all its readings";
        // Still used: it cannot be removed before its readings.
        const auto removal = isRemovedHere ? ConflictChoice::Ours : ConflictChoice::Theirs;
        const auto keeping = isRemovedHere ? ConflictChoice::Theirs : ConflictChoice::Ours;
        EXPECT_EQ(a.job->choose(report->conflicts[0].id, removal).fault().code(), "still_in_use");
        ASSERT_TRUE(a.job->choose(report->conflicts[0].id, keeping).ok());
        EXPECT_TRUE(openConflicts(a.project()).empty());
        EXPECT_TRUE(verify(folder.file("a.wwj"))->isIntact);
    }
}

TEST_F(Merge, equalTagsAndRoundNumbersAreToldApartAndListed) {
    const auto addBranch = [](Laptop& laptop, const char* serves) {
        project::Branch branch = laptop.branch("B-24");
        branch.id = laptop.nextId();
        branch.tag = "B-25";
        branch.serves = serves;
        laptop.apply("add", {branch});
        return branch.id;
    };
    const base::Id here = addBranch(a, "Gym");
    const base::Id there = addBranch(b, "Pool");
    const base::Id ourRound = a.openRound();
    const base::Id theirRound = b.openRound();
    const MergeReport report = mergeBIntoA();
    EXPECT_EQ(a.project().branches().at(here).tag, "B-25");
    EXPECT_EQ(a.project().branches().at(there).tag, "B-25 (LT-2)");
    EXPECT_EQ(a.project().rounds().at(ourRound).number, 3);
    EXPECT_EQ(a.project().rounds().at(theirRound).number, 4);
    ASSERT_EQ(report.conflicts.size(), 2u);
    const MergeConflict* tag = conflictOf(report.conflicts, "B-25");
    ASSERT_NE(tag, nullptr);
    ASSERT_TRUE(a.job->choose(tag->id, ConflictChoice::Theirs).ok());
    EXPECT_EQ(a.project().branches().at(there).tag, "B-25");
    EXPECT_EQ(a.project().branches().at(here).tag, "B-25 (LT-2)");
    const MergeConflict* round = conflictOf(report.conflicts, "round 3");
    ASSERT_NE(round, nullptr);
    ASSERT_TRUE(a.job->choose(round->id, ConflictChoice::Ours).ok());
    EXPECT_EQ(a.project().rounds().at(ourRound).number, 3);
    expectIntact("a");
}

TEST_F(Merge, anAcceptedRoundTakesNoReadingOfTheOtherSideUntilChosen) {
    const base::Id round = a.project().lastRound()->id;
    const base::Id seen = a.read("B-01", "21.5");
    for (const RoundState state : {RoundState::Closed, RoundState::Sent, RoundState::Accepted}) {
        a.moveRound(round, state);
    }
    const base::Id late = b.read("B-02", "22.5");
    const base::Id lateToo = b.read("B-01", "23.5");
    const MergeReport report = mergeBIntoA();
    ASSERT_EQ(report.conflicts.size(), 1u);
    EXPECT_EQ(report.conflicts[0].place, "round 2, readings");
    EXPECT_EQ(report.conflicts[0].theirs, "2 readings more or changed");
    EXPECT_EQ(a.project().rounds().at(round).state, RoundState::Accepted);
    EXPECT_EQ(a.project().readings().at(late).status, ReadingStatus::Struck);
    EXPECT_EQ(a.project().readings().at(late).dp->digits.text(), "22.5");
    EXPECT_EQ(a.project().readings().at(seen).sequence, 1);
    ASSERT_TRUE(a.job->choose(report.conflicts[0].id, ConflictChoice::Theirs).ok());
    EXPECT_EQ(a.project().rounds().at(round).state, RoundState::SentBack);
    EXPECT_EQ(a.project().readings().at(late).status, ReadingStatus::Standing);
    EXPECT_EQ(a.project().readings().at(lateToo).status, ReadingStatus::Standing);
    EXPECT_FALSE(a.job->undoLabel().has_value()) << "a withdrawn acceptance is not undone";
    expectIntact("a");
}

TEST_F(Merge, anAcceptanceThatArrivesDoesNotSwallowReadings) {
    const base::Id round = a.project().lastRound()->id;
    const base::Id unseen = a.read("B-02", "22.5");
    for (const RoundState state : {RoundState::Closed, RoundState::Sent, RoundState::Accepted}) {
        b.moveRound(round, state);
    }
    const MergeReport report = mergeBIntoA();
    ASSERT_EQ(report.conflicts.size(), 1u);
    EXPECT_EQ(report.conflicts[0].ours, "1 reading more or changed");
    EXPECT_EQ(a.project().readings().at(unseen).status, ReadingStatus::Struck);
    ASSERT_TRUE(a.job->choose(report.conflicts[0].id, ConflictChoice::Ours).ok());
    EXPECT_EQ(a.project().readings().at(unseen).status, ReadingStatus::Standing);
    EXPECT_EQ(a.project().readings().at(unseen).reason, "");
    EXPECT_EQ(a.project().rounds().at(round).state, RoundState::SentBack);
}

}  // namespace
}  // namespace ww::workbook
