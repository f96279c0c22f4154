// Two copies come together: what is added, what is left to decide, and what is refused. Which side stands
// until a person picks is a decision of this project; no outside source.

#include <gtest/gtest.h>

#include <atomic>
#include <functional>
#include <thread>

#include "core/store/database.h"
#include "core/store/store_messages.h"
#include "core/workbook/merge_settlement.h"
#include "tests/core/workbook/two_copies.h"
#include "tests/support/whole_job.h"

namespace ww::workbook {
namespace {

using project::ConflictChoice;
using project::MergeConflict;
using project::ReadingStatus;
using support::Laptop;

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

// A window goes on while its merge is made beside it, and may ask what the journal tells.
TEST_F(Merge, whatIsAskedWhileItIsMadeWaitsForIt) {
    for (const char* tag : {"B-13", "B-14", "B-15", "B-16"}) {
        b.read(tag, "33.5");
    }
    std::size_t asked = 0;
    const auto beside = [&](const std::function<void()>& work) {
        std::atomic<bool> isDone = false;
        const std::jthread thread([&] {
            work();
            isDone = true;
        });
        do {
            EXPECT_TRUE(a.job->historyOfAll(project::RecordKind::Reading).ok());
            ++asked;
        } while (!isDone);
    };
    const auto report = a.job->merge(m_two.fileOf("b"), beside);
    ASSERT_TRUE(report.ok()) << base::english(report.fault());
    EXPECT_EQ(report->readingsAdded, 4U);
    EXPECT_GT(asked, 0U);
    expectIntact("a");
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
