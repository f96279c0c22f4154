// Places and values of conflicts are told by their stored English, part by part. What stands in them is this
// project's own; no outside source.
#include "core/workbook/conflict_parts.h"

#include <gtest/gtest.h>

#include "core/workbook/merge_settlement.h"
#include "tests/support/two_laptops.h"

namespace ww::workbook {
namespace {

using project::MergeConflict;
using project::RecordKind;

MergeConflict conflictIn(RecordKind kind, std::string_view field, std::string place, std::string ours,
                         std::string theirs) {
    MergeConflict conflict;
    conflict.recordKind = kind;
    conflict.field = field;
    conflict.place = std::move(place);
    conflict.ours = std::move(ours);
    conflict.theirs = std::move(theirs);
    return conflict;
}

ConflictPart columnPart(std::string name, std::string text = {}) {
    return {std::move(name), {}, std::move(text)};
}
ConflictPart saidPart(const base::MessageForm& form, std::vector<std::string> arguments = {}) {
    return {{}, base::Fault{&form, {}, std::move(arguments)}, {}};
}
ConflictPart givenPart(std::string text) {
    return {{}, {}, std::move(text)};
}
using PartList = std::vector<ConflictPart>;

TEST(ConflictParts, ofAColumnAreNameTitleAndRound) {
    const auto serves =
        partsOf(conflictIn(RecordKind::Branch, "serves", "B, 2, serves", "Kitchen, north", ""));
    EXPECT_EQ(serves.place, (PartList{givenPart("B, 2"), columnPart("serves")}));
    EXPECT_EQ(serves.ours, PartList{givenPart("Kitchen, north")}) << "a person's text stays whole";
    EXPECT_TRUE(serves.theirs.empty());
    const auto dp = partsOf(conflictIn(RecordKind::Reading, "dp", "B-04, DP, round 3", "48 kPa", "49 kPa"));
    EXPECT_EQ(dp.place,
              (PartList{givenPart("B-04"), columnPart("dp"), saidPart(conflict_forms::kRound, {"3"})}));
    const auto state =
        partsOf(conflictIn(RecordKind::Round, "state", "round 2, state", "sent back", "accepted"));
    EXPECT_EQ(state.place, (PartList{saidPart(conflict_forms::kRound, {"2"}), columnPart("state")}));
    EXPECT_EQ(state.ours, PartList{saidPart(conflict_forms::kWord, {"sent back"})});
}

TEST(ConflictParts, tellWordsOfTheProgramFromTextsOfAPerson) {
    // The kind of a branch is a word of the program, that of an instrument is what a person wrote.
    const auto branch = partsOf(conflictIn(RecordKind::Branch, "kind", "B-1, kind", "manual", "picv"));
    EXPECT_EQ(branch.theirs, PartList{saidPart(conflict_forms::kWord, {"picv"})});
    const auto meter = partsOf(conflictIn(RecordKind::Instrument, "kind", "M-1, kind", "manual", "none"));
    EXPECT_EQ(meter.ours, PartList{givenPart("manual")});
    const auto running = partsOf(conflictIn(RecordKind::Pump, "is_running", "P-1, is running", "yes", "no"));
    EXPECT_EQ(running.ours, PartList{saidPart(conflict_forms::kYes)});
    EXPECT_EQ(running.theirs, PartList{saidPart(conflict_forms::kNo)});
    const auto rows =
        partsOf(conflictIn(RecordKind::Pump, "pump_rows", "P-1, pump rows", "4 rows", "5 rows"));
    EXPECT_EQ(rows.place, (PartList{givenPart("P-1"), columnPart("pump_rows")}));
    EXPECT_EQ(rows.theirs, PartList{saidPart(conflict_forms::kRows, {"5"})});
}

TEST(ConflictParts, ofTwoReadingsAreTitlesWithTheirValues) {
    const auto two = partsOf(conflictIn(RecordKind::Reading, kTwoReadingsField, "B-06, DP, setting, round 2",
                                        "30.5 kPa, setting 4", "cannot be read"));
    EXPECT_EQ(two.place, (PartList{givenPart("B-06"), columnPart("dp"), columnPart("setting"),
                                   saidPart(conflict_forms::kRound, {"2"})}));
    EXPECT_EQ(two.ours, (PartList{givenPart("30.5 kPa"), columnPart("setting", "4")}));
    EXPECT_EQ(two.theirs, PartList{saidPart(conflict_forms::kCannotBeRead)});
    const auto pump = partsOf(conflictIn(RecordKind::PumpReading, kTwoReadingsField,
                                         "P-1, gauge rise, round 2", "gauge rise 180 kPa", "speed 1450 rpm"));
    EXPECT_EQ(pump.ours, PartList{columnPart("gauge_rise", "180 kPa")});
    EXPECT_EQ(pump.theirs, PartList{columnPart("speed", "1450 rpm")});
}

TEST(ConflictParts, ofWhatIsNoColumnAreSentences) {
    const auto removed = partsOf(
        conflictIn(RecordKind::Branch, kRemovedField, "B-02, removed", "removed", "kept, changed or used"));
    EXPECT_EQ(removed.place, (PartList{givenPart("B-02"), saidPart(conflict_forms::kRemoved)}));
    EXPECT_EQ(removed.theirs, PartList{saidPart(conflict_forms::kKept)});
    const auto late = partsOf(conflictIn(RecordKind::Round, kLateReadingsField, "round 2, readings",
                                         "accepted without them", "3 readings more or changed"));
    EXPECT_EQ(late.place,
              (PartList{saidPart(conflict_forms::kRound, {"2"}), saidPart(conflict_forms::kReadings)}));
    EXPECT_EQ(late.ours, PartList{saidPart(conflict_forms::kWithoutThem, {"accepted"})});
    EXPECT_EQ(late.theirs, PartList{saidPart(conflict_forms::kMoreReadings, {"3"})});
    const auto revision = partsOf(conflictIn(RecordKind::SignedReport, kSameRevisionField,
                                             "signed report, revision 1", "A. Fields", "K. Meyer"));
    EXPECT_EQ(revision.place, (PartList{saidPart(conflict_forms::kSignedReport),
                                        saidPart(conflict_forms::kRevision, {"1"})}));
    const auto ring = partsOf(conflictIn(RecordKind::Branch, "parent", "B-1, fed from", "the pump", "B-2"));
    EXPECT_EQ(ring.place, (PartList{givenPart("B-1"), saidPart(conflict_forms::kFedFrom)}));
    EXPECT_EQ(ring.ours, PartList{saidPart(conflict_forms::kThePump)});
    EXPECT_EQ(ring.theirs, PartList{givenPart("B-2")});
}

TEST(ConflictParts, ofUnknownFormStayAsTheyAreStored) {
    const auto unknown =
        partsOf(conflictIn(RecordKind::Branch, "later_column", "what another program wrote", "7", "8"));
    EXPECT_EQ(unknown.place, PartList{givenPart("what another program wrote")});
    EXPECT_EQ(unknown.ours, PartList{givenPart("7")});
}

// Behind a choice in the journal a place stands alone; the values that run into it are told as well.
TEST(ConflictParts, ofAPlaceAloneAreToldByTheirTitles) {
    EXPECT_EQ(partsOfPlace("B-04, design flow"), (PartList{givenPart("B-04"), columnPart("design_flow")}));
    EXPECT_EQ(partsOfPlace("setting 4, B-06, DP, round 2"),
              (PartList{columnPart("setting", "4"), givenPart("B-06"), columnPart("dp"),
                        saidPart(conflict_forms::kRound, {"2"})}));
    EXPECT_EQ(partsOfPlace("B-02, removed"),
              (PartList{givenPart("B-02"), saidPart(conflict_forms::kRemoved)}));
    EXPECT_EQ(partsOfPlace("what another program wrote"), PartList{givenPart("what another program wrote")});
}

// What merging itself writes is read back.
TEST(ConflictParts, ofAMergeAreFound) {
    support::TwoLaptops two;
    two.a.read("B-06", "30.5");
    two.b.read("B-06", "40.5");
    two.a.change(two.a.branch("B-02"), [](project::Branch& branch) { branch.serves = "Kitchen"; });
    two.b.change(two.b.branch("B-02"), [](project::Branch& branch) { branch.serves = "Hall"; });
    const auto report = two.a.job->merge(two.fileOf("b"));
    ASSERT_TRUE(report.ok());
    ASSERT_EQ(report->conflicts.size(), 2u);
    for (const MergeConflict& conflict : report->conflicts) {
        const ConflictParts parts = partsOf(conflict);
        ASSERT_GE(parts.place.size(), 2u) << conflict.place;
        EXPECT_EQ(parts.place[1], columnPart(conflict.field == kTwoReadingsField ? "dp" : "serves"));
    }
}

}  // namespace
}  // namespace ww::workbook
