// Two copies come together: what is added, what is left to decide, and what is refused. Which side stands
// until a person picks is a decision of this project; no outside source.

#include <gtest/gtest.h>

#include <map>
#include <set>

#include "core/balancing/standing_readings.h"
#include "core/store/database.h"
#include "core/store/store_messages.h"
#include "core/workbook/cell_history.h"
#include "core/workbook/merge_settlement.h"
#include "tests/support/two_laptops.h"
#include "tests/support/whole_job.h"

namespace ww::workbook {
namespace {

using project::ConflictChoice;
using project::MergeConflict;
using project::ReadingStatus;
using project::RoundState;
using support::Laptop;

class Merge : public testing::Test {
  protected:
    MergeReport merge(Laptop& into, const std::string& file) {
        auto report = into.job->merge(m_two.fileOf(file));
        EXPECT_TRUE(report.ok()) << base::englishWithSubject(report.ok() ? base::Fault{} : report.fault());
        return report ? std::move(*report) : MergeReport{};
    }
    MergeReport mergeBIntoA() { return merge(a, "b"); }
    /// The chain and every row, as `verify` sees them.
    void expectIntact(const std::string& file) {
        const auto verification = verify(m_two.fileOf(file));
        ASSERT_TRUE(verification.ok());
        for (const base::Fault& finding : verification->findings) {
            ADD_FAILURE() << base::english(finding);
        }
    }
    static const MergeConflict* conflictOf(const std::vector<MergeConflict>& conflicts,
                                           const std::string& place) {
        for (const MergeConflict& conflict : conflicts) {
            if (conflict.place == place) {
                return &conflict;
            }
        }
        return nullptr;
    }
    using Values = std::set<std::string>;

    /// The dp of every reading of a branch in the last round, struck ones among them.
    static Values valuesOf(const Laptop& laptop, const std::string& tag) {
        Values values;
        for (const std::size_t index : laptop.project().readingsOf(laptop.project().lastRound()->id)) {
            const project::Reading& reading = laptop.project().readings()[index];
            if (reading.branch == laptop.branch(tag).id) {
                values.insert(reading.dp->digits.text());
            }
        }
        return values;
    }
    /// That the history of a branch tells of both values who stored them and when, and that one was struck.
    void expectInHistory(const std::string& tag, const std::string& ours, const std::string& theirs,
                         bool isTheirsStruck) {
        const auto history = cellHistory(*a.job, a.branch(tag).id);
        ASSERT_TRUE(history.ok());
        std::map<std::string, const CellValue*> first;
        std::map<std::string, ReadingStatus> last;
        for (const CellValue& value : *history) {
            first.emplace(value.reading.dp->digits.text(), &value);
            last[value.reading.dp->digits.text()] = value.reading.status;
        }
        ASSERT_TRUE(first.contains(ours) && first.contains(theirs));
        EXPECT_EQ(first[ours]->person, "A. Fields");
        EXPECT_EQ(first[theirs]->person, "K. Meyer");
        EXPECT_EQ(first[ours]->stored, m_stored[ours]);
        EXPECT_EQ(first[theirs]->stored, m_stored[theirs]);
        EXPECT_EQ(last[ours], isTheirsStruck ? ReadingStatus::Standing : ReadingStatus::Struck);
        EXPECT_EQ(last[theirs], isTheirsStruck ? ReadingStatus::Struck : ReadingStatus::Standing);
    }
    void expectNothingToDo(Laptop& into, const std::string& file) {
        const std::size_t before = into.job->journal().size();
        EXPECT_EQ(merge(into, file).actions, 0u);
        EXPECT_EQ(into.job->journal().size(), before);
    }

    std::map<std::string, base::Instant> m_stored;  ///< when which dp was stored, by its digits
    support::TwoLaptops m_two;
    Laptop& a = m_two.a;
    Laptop& b = m_two.b;
};

TEST_F(Merge, readingsOfBothComeTogetherWithPersonMachineAndTime) {
    const base::Id here = a.read("B-01", "21.5");
    b.clock.advance(std::chrono::seconds(30));
    const base::Id there = b.read("B-13", "33.5");
    const base::Id further = b.read("B-14", "34.5");
    const MergeReport report = mergeBIntoA();
    EXPECT_EQ(report.actions, 2u);
    EXPECT_EQ(report.machine, "LT-2");
    EXPECT_EQ(report.readingsAdded, 2u);
    EXPECT_TRUE(report.conflicts.empty());
    ASSERT_TRUE(a.project().readings().contains(there));
    EXPECT_EQ(a.project().readings().at(there).dp->digits.text(), "33.5");
    // 8:01 here, 8:01:30 and 8:02:30 there.
    EXPECT_EQ(a.project().readings().at(here).sequence, 1);
    EXPECT_EQ(a.project().readings().at(there).sequence, 2);
    EXPECT_EQ(a.project().readings().at(further).sequence, 3);
    const auto journal = a.job->journal();
    const JournalEntry& taken = journal[journal.size() - 3];
    EXPECT_EQ(taken.person, "K. Meyer");
    EXPECT_EQ(taken.machine, "LT-2");
    EXPECT_EQ(taken.label, "DP 33.5 kPa, B-13");
    EXPECT_TRUE(taken.isPartOfMerge);
    EXPECT_EQ(journal.back().person, "A. Fields");
    EXPECT_EQ(journal.back().label, "merge of 2 actions of LT-2");
    expectIntact("a");
    expectNothingToDo(a, "b");
}

TEST_F(Merge, isOneStepForUndoAndRedoAlsoAfterReopening) {
    a.read("B-01", "21.5");
    b.read("B-13", "33.5");
    b.change(b.branch("B-02"), [](project::Branch& branch) { branch.serves = "Plant room"; });
    const auto before = support::recordsOf(a.project());
    mergeBIntoA();
    const auto merged = support::recordsOf(a.project());
    EXPECT_EQ(a.job->undoLabel(), "merge of 2 actions of LT-2");
    ASSERT_TRUE(a.job->undo().ok());
    EXPECT_EQ(support::recordsOf(a.project()), before);
    EXPECT_EQ(a.job->undoLabel(), "DP 21.5 kPa, B-01");
    a.open(m_two.fileOf("a"));
    ASSERT_TRUE(a.job->redo().ok());
    EXPECT_EQ(support::recordsOf(a.project()), merged);
    a.open(m_two.fileOf("a"));
    ASSERT_TRUE(a.job->undo().ok());
    EXPECT_EQ(support::recordsOf(a.project()), before);
    expectIntact("a");
    // What was taken back can be merged again.
    EXPECT_EQ(mergeBIntoA().actions, 2u);
    EXPECT_EQ(support::recordsOf(a.project()), merged);
    expectIntact("a");
}

TEST_F(Merge, tenNewFiveSameThreeDiffering) {
    for (int i = 1; i <= 8; ++i) {
        a.read(support::walkTag(i), i <= 5 ? "20.5" : "30.5");
    }
    for (int i = 1; i <= 18; ++i) {
        b.read(support::walkTag(i), i <= 5 ? "20.5" : "40.5");
    }
    const auto preview = a.job->previewMerge(m_two.fileOf("b"));
    ASSERT_TRUE(preview.ok());
    EXPECT_EQ(preview->conflicts.size(), 3u);
    EXPECT_TRUE(a.project().mergeConflicts().empty()) << "a preview stores nothing";
    const MergeReport report = mergeBIntoA();
    EXPECT_EQ(report.readingsAdded, 18u);
    EXPECT_EQ(report.readingsIdentical, 5u);
    ASSERT_EQ(report.conflicts.size(), 3u);
    EXPECT_EQ(a.project().readingsOf(a.project().lastRound()->id).size(), 26u);
    const MergeConflict* conflict = conflictOf(report.conflicts, "B-06, DP, round 2");
    ASSERT_NE(conflict, nullptr);
    EXPECT_EQ(conflict->ours, "30.5 kPa, setting 4");
    EXPECT_EQ(conflict->theirs, "40.5 kPa, setting 4");
    EXPECT_EQ(conflict->ourInstrument, "M-1");
    EXPECT_EQ(conflict->choice, ConflictChoice::Open);
    EXPECT_EQ(openConflicts(a.project()).size(), 3u);
    // The union holds what either read.
    for (int i = 1; i <= 18; ++i) {
        SCOPED_TRACE(support::walkTag(i));
        EXPECT_EQ(valuesOf(a, support::walkTag(i)), i <= 5   ? Values({"20.5"})
                                                    : i <= 8 ? Values({"30.5", "40.5"})
                                                             : Values({"40.5"}));
    }
    // Choosing strikes the other; both stay in the record.
    const base::Id ours = conflict->record;
    ASSERT_TRUE(a.job->choose(conflict->id, ConflictChoice::Theirs).ok());
    EXPECT_EQ(a.project().readings().at(ours).status, ReadingStatus::Struck);
    EXPECT_EQ(a.project().readings().at(ours).dp->digits.text(), "30.5");
    EXPECT_EQ(openConflicts(a.project()).size(), 2u);
    EXPECT_EQ(a.project().mergeConflicts().size(), 3u);
    EXPECT_EQ(a.project().mergeConflicts().at(conflict->id).decidedBy, "A. Fields");
    ASSERT_TRUE(a.job->undo().ok());
    EXPECT_EQ(openConflicts(a.project()).size(), 3u);
    EXPECT_EQ(a.project().readings().at(ours).status, ReadingStatus::Standing);
    expectIntact("a");
}

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

TEST_F(Merge, whatEitherSideTookBackIsNoConflict) {
    a.change(a.branch("B-02"), [](project::Branch& branch) { branch.serves = "Kitchen"; });
    ASSERT_TRUE(a.job->undo().ok());
    b.change(b.branch("B-02"), [](project::Branch& branch) { branch.serves = "Laundry"; });
    a.change(a.branch("B-03"), [](project::Branch& branch) { branch.serves = "Office"; });
    b.change(b.branch("B-03"), [](project::Branch& branch) { branch.serves = "Store"; });
    ASSERT_TRUE(b.job->undo().ok());
    EXPECT_TRUE(mergeBIntoA().conflicts.empty());
    EXPECT_EQ(a.branch("B-02").serves, "Laundry");
    EXPECT_EQ(a.branch("B-03").serves, "Office");
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

TEST_F(Merge, aRepeatIsNeverAveragedWithTheOtherSidesReading) {
    b.read("B-01", "30.5");
    a.clock.advance(std::chrono::seconds(90));
    a.read("B-01", "20.5");
    b.clock.advance(std::chrono::seconds(200));
    const base::Id repeat = b.read("B-01", "30.9");
    b.change(b.project().readings().at(repeat), [](project::Reading& reading) { reading.isRepeat = true; });
    mergeBIntoA();
    const auto& indices = a.project().readingsOf(a.project().lastRound()->id);
    ASSERT_EQ(indices.size(), 3u);
    EXPECT_EQ(a.project().readings()[indices[0]].dp->digits.text(), "30.5");
    EXPECT_EQ(a.project().readings()[indices[1]].dp->digits.text(), "30.9");
    EXPECT_EQ(a.project().readings()[indices[2]].dp->digits.text(), "20.5");
}

TEST_F(Merge, chainsOfMergesEndAlikeWhereverTheyBegan) {
    a.read("B-01", "21.5");
    b.read("B-02", "22.5");
    Laptop& c = m_two.third();
    c.read("B-03", "23.5");
    a.change(a.branch("B-09"), [](project::Branch& branch) { branch.serves = "Gym"; });
    c.change(c.branch("B-09"), [](project::Branch& branch) { branch.serves = "Pool"; });
    mergeBIntoA();
    EXPECT_EQ(merge(a, "c").conflicts.size(), 1u);
    // The others take everything from A: what A has from them is nothing new.
    EXPECT_EQ(merge(b, "a").conflicts.size(), 0u);
    merge(c, "a");
    EXPECT_EQ(openConflicts(b.project()).size(), 1u);
    EXPECT_EQ(openConflicts(c.project()).size(), 1u);
    for (Laptop* laptop : {&a, &b, &c}) {
        EXPECT_EQ(laptop->project().readingsOf(laptop->project().lastRound()->id).size(), 3u);
    }
    const base::Id conflict = openConflicts(a.project()).at(0).id;
    ASSERT_TRUE(a.job->choose(conflict, ConflictChoice::Theirs).ok());
    merge(b, "a");
    merge(c, "b");
    for (Laptop* laptop : {&a, &b, &c}) {
        EXPECT_EQ(laptop->branch("B-09").serves, "Pool");
        EXPECT_TRUE(openConflicts(laptop->project()).empty());
    }
    expectNothingToDo(b, "a");
    expectIntact("a");
    expectIntact("b");
    expectIntact("c");
    merge(a, "c");
    merge(a, "b");
    merge(b, "c");
    merge(c, "a");
    expectNothingToDo(a, "c");
    expectNothingToDo(c, "a");
}

TEST_F(Merge, aMergeTakenBackOnTheOtherSideLeavesOursAlone) {
    a.read("B-01", "21.5");
    b.read("B-02", "22.5");
    merge(b, "a");
    ASSERT_TRUE(b.job->undo().ok());
    const base::Id later = b.read("B-03", "23.5");
    const MergeReport report = mergeBIntoA();
    EXPECT_EQ(report.actions, 2u);
    EXPECT_TRUE(a.project().readings().contains(later));
    EXPECT_EQ(a.project().readingsOf(a.project().lastRound()->id).size(), 3u);
    expectIntact("a");
}

TEST_F(Merge, filesThatAreNoCopiesAreRefused) {
    const std::string stranger = m_two.folder.file("stranger.wwj");
    {
        Laptop other("S. Olsen", "LT-3", 5'000'000);
        ASSERT_TRUE(Workbook::create(stranger, support::walkJob(), other.session()).ok());
    }
    const auto before = a.job->journal().size();
    EXPECT_EQ(a.job->merge(stranger).fault().code(), kNotACopy.code);
    EXPECT_EQ(a.job->merge(m_two.fileOf("a")).fault().code(), kMergeWithItself.code);
    EXPECT_EQ(a.job->merge(m_two.fileOf("none")).fault().code(), store::kFileMissing.code);
    m_two.folder.write("text.wwj", "tag,parent\r\n");
    EXPECT_EQ(a.job->merge(m_two.fileOf("text")).fault().code(), store::kNotAWorkbook.code);
    EXPECT_EQ(a.job->journal().size(), before);
}

TEST_F(Merge, aCopyChangedBehindItsJournalIsRefusedByTheRow) {
    b.read("B-13", "33.5");
    b.job.reset();
    {
        auto database = store::Database::open(m_two.fileOf("b"), store::Access::Write);
        ASSERT_TRUE(database->execute("UPDATE readings SET dp='99.9' WHERE dp='33.5'").ok());
    }
    const auto refused = a.job->merge(m_two.fileOf("b"));
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.fault().code(), store::kRowChanged.code);
    {
        auto database = store::Database::open(m_two.fileOf("b"), store::Access::Write);
        ASSERT_TRUE(database->execute("UPDATE journal SET person='X' WHERE sequence=1").ok());
    }
    EXPECT_EQ(a.job->merge(m_two.fileOf("b")).fault().code(), store::kChainBroken.code);
    EXPECT_EQ(a.job->journal().size(), 1u);
    expectIntact("a");
}

TEST_F(Merge, twoFilesBecomeAThirdAndStayAsTheyAre) {
    a.read("B-01", "21.5");
    b.read("B-01", "22.5");
    a.job.reset();
    b.job.reset();
    const std::string before = m_two.folder.read("a.wwj") + m_two.folder.read("b.wwj");
    Laptop office("Office", "PC", 6'000'000);
    const std::string out = m_two.fileOf("out");
    const auto merged = mergeFiles(m_two.fileOf("a"), m_two.fileOf("b"), out, office.session());
    ASSERT_TRUE(merged.ok()) << base::english(merged.fault());
    EXPECT_EQ(merged->open.size(), 1u);
    EXPECT_EQ(m_two.folder.read("a.wwj") + m_two.folder.read("b.wwj"), before);
    expectIntact("out");
    EXPECT_EQ(mergeFiles(m_two.fileOf("a"), m_two.fileOf("b"), out, office.session()).fault().code(),
              store::kFileExists.code);
    EXPECT_EQ(mergeFiles(m_two.fileOf("a"), m_two.fileOf("a"), m_two.fileOf("new"), office.session())
                  .fault()
                  .code(),
              kMergeWithItself.code);
    EXPECT_FALSE(m_two.folder.has("new.wwj"));
}

}  // namespace
}  // namespace ww::workbook
