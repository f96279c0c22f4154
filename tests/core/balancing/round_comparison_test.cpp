// Comparing two rounds: what is seeded as changed is found, and nothing else. Own cases.
#include "core/balancing/round_comparison.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/balancing/locked_note.h"
#include "core/balancing/round_facts.h"
#include "core/balancing/standing_readings.h"
#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

TEST(RoundComparison, findsExactlyWhatChanged) {
    FieldJob job = flatLoop(5);
    const auto readAll = [&] {
        for (const char* tag : {"A", "B", "C", "D", "E"}) {
            readAs(job, tag, 1.0, "3");
        }
    };
    const Id first = job.round(project::RoundKind::Survey);
    readAll();
    job.round(project::RoundKind::Adjusting);
    readAll();
    const auto rows = [&] {
        return compareRounds(job.project(), assess(job.project(), first), assessNewest(job));
    };
    EXPECT_EQ(rows().size(), 5U);
    for (const ComparedBranch& row : rows()) {
        EXPECT_FALSE(row.isChanged());
    }
    const Id second = job.newestRound();
    const auto readingAt = [&](const char* tag) {
        for (const std::size_t i : job.project().readingsOf(second)) {
            if (job.project().readings()[i].branch == job.idOf(tag)) {
                return job.project().readings()[i];
            }
        }
        return project::Reading{};
    };
    // B: other digits. D: a slip that was corrected back to what was read before.
    job.change(readingAt("B"), [&](project::Reading& r) { r.dp = job.pressure("99.2"); });
    project::Reading slip = readingAt("D");
    const auto right = slip.dp;
    slip.dp = job.pressure("9.99");
    slip.status = project::ReadingStatus::Superseded;
    slip.reason = "lost a digit";
    job.project().put(slip);
    project::Reading correction = slip;
    correction.id = job.ids().next();
    correction.sequence = 900;
    correction.status = project::ReadingStatus::Standing;
    correction.supersedes = slip.id;
    correction.dp = right;
    job.project().put(correction);
    for (const ComparedBranch& row : rows()) {
        const bool isB = row.branch == job.idOf("B");
        const bool isD = row.branch == job.idOf("D");
        EXPECT_EQ(row.isDpChanged, isB);
        EXPECT_FALSE(row.isSettingChanged);
        EXPECT_EQ(row.corrections.size(), isD ? 1U : 0U);
        if (isD) {
            EXPECT_EQ(row.corrections.front().reading, slip.id);
            EXPECT_EQ(row.corrections.front().replacement, correction.id);
        }
    }
}

TEST(RoundComparison, countsWhoReadARoundAndWhatBecameOfIt) {
    FieldJob job = flatLoop(3);
    const base::Id meter = job.instrument("1", "");
    const base::Id round = job.round(project::RoundKind::Survey);
    const base::Id old = job.dp("A", "24.0", "4");
    const base::Id kept = job.dp("B", "25.0", "4");
    job.dp("C", "25.0", "4");
    project::Person person;
    person.id = job.ids().next();
    person.name = "A. Fields";
    job.project().put(person);
    job.change(job.project().readings().at(kept), [&](project::Reading& reading) {
        reading.person = person.id;
        reading.reason = "strainer dirty";
    });
    const base::Id fresh = job.dp("A", "25.0", "4");
    job.change(job.project().readings().at(old),
               [](project::Reading& reading) { reading.status = project::ReadingStatus::Superseded; });
    job.change(job.project().readings().at(fresh),
               [&](project::Reading& reading) { reading.supersedes = old; });
    EXPECT_EQ(correctionCount(job.project(), round), 1U);
    const RoundFacts facts = roundFacts(job.project(), assess(job.project(), round));
    EXPECT_EQ(facts.readers, std::vector<std::string>{"A. Fields"});
    EXPECT_EQ(facts.meters, std::vector<std::string>{job.project().instruments().at(meter).tag});
    EXPECT_EQ(facts.doubtful, 1U) << "kept with a reason";
    EXPECT_EQ(facts.corrected, 1U);
}

TEST(RoundComparison, aNoteToALockedReadingIsItsWhyAndCorrectsNothing) {
    FieldJob job = flatLoop(1);
    const base::Id round = job.round(project::RoundKind::Survey, project::RoundState::SentBack);
    const base::Id old = job.dp("A", "2.4", "4");
    const base::Id fresh = job.dp("A", "24.0", "4");
    job.change(job.project().readings().at(old),
               [](project::Reading& reading) { reading.status = project::ReadingStatus::Superseded; });
    job.change(job.project().readings().at(fresh),
               [&](project::Reading& reading) { reading.supersedes = old; });
    for (const char* note : {"lost a digit", "lost a digit, twice"}) {
        const project::Reading* counting =
            countingReading(job.project(), round, job.project().branches()[0].id);
        const project::Edit edit = noteAnew(job.project(), counting->id, note, job.ids());
        ASSERT_EQ(edit.put.size(), 2U);
        for (const project::AnyRecord& record : edit.put) {
            job.project().put(std::get<project::Reading>(record));
        }
    }
    const project::Reading& noted = *countingReading(job.project(), round, job.project().branches()[0].id);
    EXPECT_EQ(noted.dp->digits.text(), "24.0");
    EXPECT_TRUE(noteAnew(job.project(), noted.id, noted.note, job.ids()).put.empty());
    const Assessment all = assess(job.project(), round);
    const auto rows = compareRounds(job.project(), all, all);
    ASSERT_EQ(rows.size(), 1U);
    ASSERT_EQ(rows[0].corrections.size(), 1U);
    EXPECT_EQ(rows[0].corrections[0].reading, old);
    EXPECT_EQ(rows[0].corrections[0].replacement, noted.id);
}

TEST(RoundComparison, aReadingThatCompletesASettingEnteredAloneCorrectsNothing) {
    FieldJob job = flatLoop(3);
    const Id first = job.round(project::RoundKind::Survey);
    readAs(job, "A", 1.0, "3");
    const Id second = job.round(project::RoundKind::Adjusting);
    readAs(job, "A", 1.0, "3");
    project::Reading read = job.project().readings()[job.project().readingsOf(second)[0]];
    project::Reading alone = read;
    alone.id = job.ids().next();
    alone.dp.reset();
    alone.status = project::ReadingStatus::Superseded;
    read.supersedes = alone.id;
    const auto corrections = [&](const char* setting) {
        alone.setting = job.decimal(setting);
        job.project().put(alone);
        job.project().put(read);
        const auto rows = compareRounds(job.project(), assess(job.project(), first), assessNewest(job));
        return rows.at(0).corrections.size();
    };
    EXPECT_EQ(corrections("3"), 0U);
    EXPECT_EQ(corrections("2.8"), 1U) << "another setting was meant";
}

TEST(RoundComparison, whatFillsTheGapsOfAnOpenRoundWasNotReadInIt) {
    FieldJob job = flatLoop(3);
    const Id first = job.round(project::RoundKind::Survey);
    for (const char* tag : {"A", "B", "C"}) {
        readAs(job, tag, 1.0, "3");
    }
    const Id second = job.round(project::RoundKind::Adjusting, project::RoundState::Open);
    readAs(job, "A", 1.0, "3");
    const auto rows =
        compareRounds(job.project(), assess(job.project(), first), assessAsShown(job.project(), second));
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_NE(rows[0].stateAfter, State::NotRead);
    EXPECT_EQ(rows[1].stateAfter, State::NotRead);
    EXPECT_TRUE(rows[1].isStateChanged);
}

TEST(RoundComparison, anotherInstrumentAndANewRemarkAreChanges) {
    FieldJob job = flatLoop(5);
    const Id first = job.round(project::RoundKind::Survey);
    for (const char* tag : {"A", "B", "C", "D", "E"}) {
        readAs(job, tag, 1.0, "3");
    }
    const Id second = job.round(project::RoundKind::Adjusting);
    for (const char* tag : {"A", "B", "C", "D", "E"}) {
        readAs(job, tag, 1.0, "3");
    }
    const Id other = job.instrument("2", "0.1");
    const auto change = [&](const Id& round, const char* tag, const auto& how) {
        for (const std::size_t i : job.project().readingsOf(round)) {
            if (job.project().readings()[i].branch == job.idOf(tag)) {
                job.change(job.project().readings()[i], how);
                return;
            }
        }
    };
    change(second, "A", [&](project::Reading& r) { r.instrument = other; });
    change(second, "B", [](project::Reading& r) { r.note = "strainer cleaned"; });
    change(second, "C", [](project::Reading& r) { r.reason = "read twice"; });
    // A note of the earlier round alone is none of the later one, and one that stands in both is not new.
    change(first, "D", [](project::Reading& r) { r.note = "hot"; });
    change(first, "E", [](project::Reading& r) { r.note = "lagged"; });
    change(second, "E", [](project::Reading& r) { r.note = "lagged"; });
    for (const ComparedBranch& row :
         compareRounds(job.project(), assess(job.project(), first), assessNewest(job))) {
        const std::string& tag = job.project().branches().at(row.branch).tag;
        EXPECT_EQ(row.isInstrumentChanged, tag == "A") << tag;
        EXPECT_EQ(row.isRemarked, tag == "B" || tag == "C") << tag;
        EXPECT_EQ(row.isChanged(), tag == "A" || tag == "B" || tag == "C") << tag;
    }
}

TEST(RoundComparison, isSortedByDistanceFromTargetOrByChange) {
    const auto row = [](int number, std::optional<double> before, std::optional<double> after) {
        ComparedBranch made;
        made.branch.bytes[15] = static_cast<std::uint8_t>(number);
        made.ofTargetBefore = before ? std::optional(Ratio::si(*before)) : std::nullopt;
        made.ofTargetAfter = after ? std::optional(Ratio::si(*after)) : std::nullopt;
        return made;
    };
    const std::vector<ComparedBranch> route{
        row(1, 1.0, 1.25), row(2, 0.5, std::nullopt), row(3, 0.25, 0.75),         row(4, std::nullopt, 2.0),
        row(5, 1.0, 1.0),  row(6, 1.25, 0.5),         row(7, std::nullopt, 1.125)};
    const auto numbers = [&](ComparisonOrder order) {
        std::vector<int> found;
        for (const ComparedBranch& one : inOrder(route, order)) {
            found.push_back(one.branch.bytes[15]);
        }
        return found;
    };
    EXPECT_EQ(numbers(ComparisonOrder::AlongRoute), (std::vector{1, 2, 3, 4, 5, 6, 7}));
    // 1 and 3 are equally far on either side of the target: along the route. 2 was not read: last.
    EXPECT_EQ(numbers(ComparisonOrder::FarthestFromTarget), (std::vector{4, 6, 1, 3, 7, 5, 2}));
    // Without a value in either round there is no change to sort by.
    EXPECT_EQ(numbers(ComparisonOrder::LargestChange), (std::vector{6, 3, 1, 5, 2, 4, 7}));
}

TEST(RoundComparison, tellsTheSettingsAndLeavesOutWhatNeitherRead) {
    FieldJob job = flatLoop(3);
    const Id first = job.round(project::RoundKind::Survey);
    readAs(job, "A", 1.0, "4");
    job.round(project::RoundKind::Adjusting);
    readAs(job, "A", 0.9, "3");
    readAs(job, "B", 1.0, "4");
    const auto rows = compareRounds(job.project(), assess(job.project(), first), assessNewest(job));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_TRUE(rows[0].isSettingChanged);
    EXPECT_EQ(rows[0].settingBefore->si(), 4);
    EXPECT_EQ(rows[0].settingAfter->si(), 3);
    EXPECT_FALSE(rows[1].readingBefore.has_value());
    EXPECT_TRUE(rows[1].isDpChanged);
}

TEST(RoundComparison, whatFillsAGapOfTheOpenRoundIsNoneOfItsReadings) {
    FieldJob job = flatLoop(2);
    const Id first = job.round(project::RoundKind::Survey);
    readAs(job, "A", 1.0);
    readAs(job, "B", 1.0);
    job.round(project::RoundKind::Adjusting, project::RoundState::Open);
    readAs(job, "A", 1.0);
    job.cannotBeRead("B", "hatch locked");
    const Assessment shown = assessAsShown(job.project(), job.newestRound());
    ASSERT_TRUE(resultOf(job, shown, "B").isFromEarlierRound);
    const auto rows = compareRounds(job.project(), assess(job.project(), first), shown);
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].stateAfter, State::OnShare);
    EXPECT_TRUE(rows[0].ofTargetAfter);
    EXPECT_EQ(rows[1].stateAfter, State::NotRead);
    EXPECT_FALSE(rows[1].ofTargetAfter);
}

TEST(RoundComparison, tellsTheStateInBothRounds) {
    FieldJob job = flatLoop(3);
    const Id first = job.round(project::RoundKind::Survey);
    readAs(job, "A", 2.0, "4");
    readAs(job, "B", 1.0, "4");
    job.round(project::RoundKind::Adjusting);
    for (const char* tag : {"A", "B", "C"}) {
        readAs(job, tag, 1.0, "4");
    }
    const Assessment before = assess(job.project(), first);
    const Assessment after = assessNewest(job);
    const auto rows = compareRounds(job.project(), before, after);
    ASSERT_EQ(rows.size(), 3U);
    for (const ComparedBranch& row : rows) {
        const std::size_t index = job.project().branches().indexOf(row.branch);
        EXPECT_EQ(row.stateBefore, before.branches[index].state);
        EXPECT_EQ(row.stateAfter, after.branches[index].state);
        EXPECT_EQ(row.isStateChanged, row.stateBefore != row.stateAfter);
    }
    EXPECT_EQ(rows[2].stateBefore, State::NotRead) << "C was read in the later round only";
    EXPECT_NE(rows[2].stateAfter, State::NotRead);
}

}  // namespace
}  // namespace ww::balancing
